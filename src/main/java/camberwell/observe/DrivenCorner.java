package camberwell.observe;

/**
 * How a corner was driven in one lap; not a number where it cannot be told.
 *
 * @param entrySpeed speed where the path begins to bend, m/s
 * @param throttleAt where the throttle was opened for good, m from the middle of the apex; less is earlier
 * @param release the largest share of the brake that was let go at once on the way in
 * @param stabs how often the throttle was opened at once and let go again
 * @param lockHeld seconds of power in which the steering was not opened while the front slid
 */
record DrivenCorner(double entrySpeed, double throttleAt, double release, int stabs, double lockHeld) {
}
