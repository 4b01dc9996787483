package camberwell.vocabulary;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The word that somebody most likely meant. */
public final class Nearest {

    private Nearest() {
    }

    /**
     * The word of {@code known} that is nearest to {@code word}, if one is near: at most a third of its letters
     * are wrong, missing, too many or swapped with their neighbour (the restricted distance of Damerau, 1964).
     * Capitals do not count. Of words that are equally near, the first wins.
     */
    public static Optional<String> to(String word, Collection<String> known) {
        String wanted = word.toLowerCase(Locale.ROOT);
        String best = null;
        int least = Math.max(1, wanted.length() / 3) + 1;
        for (String candidate : known) {
            int shorter = Math.min(wanted.length(), candidate.length());
            if (Math.abs(wanted.length() - candidate.length()) < least) {
                int distance = distance(wanted, candidate.toLowerCase(Locale.ROOT), least);
                if (distance < least && (distance < shorter || distance == 0)) {
                    least = distance;
                    best = candidate;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /**
     * How many letters are wrong, missing, too many or swapped with their neighbour (the restricted distance of Damerau, 1964).
     */
    public static int distance(String a, String b) {
        return distance(a, b, Integer.MAX_VALUE);
    }

    /** The same where it is below {@code limit}; of words that are further apart, some number that is not. */
    private static int distance(String a, String b, int limit) {
        int from = 0;
        int shorter = Math.min(a.length(), b.length());
        while (from < shorter && a.charAt(from) == b.charAt(from)) {
            from++;
        }
        int alike = 0;
        while (alike < shorter - from && a.charAt(a.length() - 1 - alike) == b.charAt(b.length() - 1 - alike)) {
            alike++;
        }
        // How both begin and end alike costs nothing.
        return between(a.substring(from, a.length() - alike), b.substring(from, b.length() - alike), limit);
    }

    private static int between(String a, String b, int limit) {
        int[] beforeLast = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        int[] cost = new int[b.length() + 1];
        int before = 0;
        for (int i = 0; i <= a.length(); i++) {
            int least = Integer.MAX_VALUE;
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    cost[j] = i + j;
                } else {
                    int replaced = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                    cost[j] = Math.min(Math.min(last[j], cost[j - 1]) + 1, last[j - 1] + replaced);
                    if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                        cost[j] = Math.min(cost[j], beforeLast[j - 2] + 1);
                    }
                }
                least = Math.min(least, cost[j]);
            }
            // A way leads through this row or, where two letters are swapped, over it from the one before.
            if (least >= limit && before >= limit) {
                return limit;
            }
            before = least;
            int[] free = beforeLast;
            beforeLast = last;
            last = cost;
            cost = free;
        }
        return last[b.length()];
    }
}
