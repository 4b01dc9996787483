package camberwell.vocabulary;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** The known word that a misspelt one was most likely meant to be. */
public final class Nearest {

    private Nearest() {
    }

    /**
     * The word of {@code known} with the fewest letters to insert, delete, replace or swap with their neighbour,
     * if that is no more than a third of the longer one's letters. Ties go to the first in alphabetical order.
     */
    public static Optional<String> to(String word, Collection<String> known) {
        return known.stream()
                .filter(candidate -> distance(word, candidate) * 3 <= Math.max(word.length(), candidate.length()))
                .min(Comparator.<String>comparingInt(candidate -> distance(word, candidate))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** Optimal string alignment distance (G. Navarro, "A guided tour to approximate string matching", 2001). */
    static int distance(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    cost[i][j] = i + j;
                    continue;
                }
                int replace = cost[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                cost[i][j] = Math.min(replace, Math.min(cost[i - 1][j], cost[i][j - 1]) + 1);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    cost[i][j] = Math.min(cost[i][j], cost[i - 2][j - 2] + 1);
                }
            }
        }
        return cost[a.length()][b.length()];
    }
}
