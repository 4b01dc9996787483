/**
 * The car in motion: a transient four-wheel model with springs, dampers, tyres that take time to answer, brakes and
 * differentials; a driver, manoeuvres and what is measured in them. Axes and signs are those of ISO 8855: x forward,
 * y left, z up, a left turn positive, roll positive with the right side down, pitch positive with the nose down.
 */
package camberwell.physics.motion;
