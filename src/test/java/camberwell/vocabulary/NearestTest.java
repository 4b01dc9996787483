package camberwell.vocabulary;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {

    @ParameterizedTest
    @DisplayName("a slip of the finger leads to the word that was meant")
    @CsvSource({
        "front-cambre, front-camber",
        "fornt-camber, front-camber",
        "frontcamber, front-camber",
        "front_camber, front-camber",
        "FRONT-CAMBER, front-camber",
        "frnt-cambr, front-camber",
        "castor, caster",
        "rear-camberr, rear-camber",
    })
    void slips(String word, String meant) {
        assertEquals(Optional.of(meant), Nearest.to(word, Word.ids(Adjuster.class)));
    }

    @ParameterizedTest
    @DisplayName("a word that is like no other leads nowhere")
    @CsvSource({"weather", "x", "''", "spoiler", "front"})
    void noGuess(String word) {
        assertEquals(Optional.empty(), Nearest.to(word, Word.ids(Adjuster.class)));
    }

    @Test
    @DisplayName("every word of the vocabulary is nearest to itself")
    void itself() {
        for (Symptom symptom : Symptom.values()) {
            assertEquals(Optional.of(symptom.id()), Nearest.to(symptom.id(), Word.ids(Symptom.class)));
        }
    }

    @Test
    @DisplayName("a swap of neighbours is one slip, so it beats two wrong letters (Damerau 1964)")
    void swap() {
        assertEquals(Optional.of("rear"), Nearest.to("raer", List.of("roar", "rear")));
    }

    @Test
    @DisplayName("one letter is never changed into another one: K is not C")
    void shortWords() {
        assertEquals(Optional.empty(), Nearest.to("K", List.of("C", "F")));
    }

    @Property
    @Label("a comparison that is given up early finds what one to the end finds")
    void early(@ForAll @StringLength(max = 9) @Chars({'a', 'b', 'c'}) String word,
            @ForAll @Size(max = 6) List<@StringLength(max = 9) @Chars({'a', 'b', 'c'}) String> known) {
        String best = null;
        int least = Math.max(1, word.length() / 3) + 1;
        for (String candidate : known) {
            int distance = Nearest.distance(word, candidate);
            if (distance < least && (distance == 0 || distance < Math.min(word.length(), candidate.length()))) {
                least = distance;
                best = candidate;
            }
        }
        assertEquals(Optional.ofNullable(best), Nearest.to(word, known));
    }

    @Property
    @Label("the distance is that of the whole table, whatever both words begin and end with")
    void whole(@ForAll @StringLength(max = 9) @Chars({'a', 'b', 'c'}) String a,
            @ForAll @StringLength(max = 9) @Chars({'a', 'b', 'c'}) String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                cost[i][j] = i == 0 || j == 0 ? i + j : Math.min(Math.min(cost[i - 1][j], cost[i][j - 1]) + 1,
                        cost[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    cost[i][j] = Math.min(cost[i][j], cost[i - 2][j - 2] + 1);
                }
            }
        }
        assertEquals(cost[a.length()][b.length()], Nearest.distance(a, b));
    }
}
