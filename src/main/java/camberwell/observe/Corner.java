package camberwell.observe;

import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Turn;

/**
 * A corner of the circuit, the same in all laps. Distances are those of the median lap, m.
 *
 * @param number counted from 1 in the order they come after the line
 * @param from where the path begins to bend
 * @param apexFrom where the curvature first reaches most of its greatest value
 * @param apexTo where it leaves it for the last time
 * @param to where the path is straight again
 * @param turn left or right
 * @param slowest lowest speed of the median lap in it, m/s
 * @param speed what that is called
 * @param firm whether it is so by a clear margin
 * @param linked whether it follows an opposite corner at once
 */
record Corner(int number, double from, double apexFrom, double apexTo, double to, Turn turn, double slowest,
        CornerSpeed speed, boolean firm, boolean linked) {
}
