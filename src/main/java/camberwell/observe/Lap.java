package camberwell.observe;

import java.util.Optional;

/**
 * One lap of a log.
 *
 * @param number as it is told: the log's own, or counted from 1
 * @param from its first sample
 * @param to the sample after its last
 * @param seconds how long it took
 * @param metres how far it went, by its speed
 * @param leftOut why nothing is read from it; empty for a lap that counts
 */
record Lap(int number, int from, int to, double seconds, double metres, Optional<String> leftOut) {

    boolean counts() {
        return leftOut.isEmpty();
    }

    Lap leavingOut(String why) {
        return new Lap(number, from, to, seconds, metres, Optional.of(why));
    }
}
