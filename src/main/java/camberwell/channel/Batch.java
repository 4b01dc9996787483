package camberwell.channel;

/**
 * Rows on their way from the reader to the clock.
 *
 * @param values row by row, a number for each binding, not a number where there is none
 * @param rows how many
 * @param anew whether a new run begins with the first of them
 */
record Batch(double[] values, int rows, boolean anew) {
}
