/**
 * What a logger wrote: its columns made out by name, unit and sign, and brought onto one clock. Signs as in ISO 8855:2011
 * (x forward, y to the left, yaw and steering-wheel angle positive for a left turn).
 */
package camberwell.channel;
