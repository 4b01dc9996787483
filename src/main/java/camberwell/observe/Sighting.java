package camberwell.observe;

import camberwell.vocabulary.Phase;

/**
 * The most of something that was seen in one phase of one corner in one lap.
 *
 * @param lap place among the laps that count, from 0
 * @param corner place among the corners, from 0
 * @param figure how much, in the unit of its measure
 * @param sample of the log at which it was most
 */
record Sighting(int lap, int corner, Phase phase, double figure, int sample) {
}
