/**
 * What the car did in a logged run: laps, corners and phases, the axle that slid, and the complaints that follow, each with
 * its certainty and the corner and lap it was seen in. A log shows which axle slides, never why.
 */
package camberwell.observe;
