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
}
