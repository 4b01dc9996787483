/**
 * Pure functions of vehicle dynamics: tyre pressure, alignment geometry, load transfer, tyre force, handling balance.
 *
 * <p>Everything is in SI units and radians unless a method's name says otherwise. Axes and signs follow ISO 8855:
 * x forward, y left, z up; steer, lateral acceleration and yaw rate are positive in a left turn; toe-in is positive
 * and is the toe of one wheel; camber is positive when the wheel's top leans out; caster is positive when the top of
 * the steering axis leans back; kingpin inclination is positive when that top leans in.
 */
package camberwell.physics;
