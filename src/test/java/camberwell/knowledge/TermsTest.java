package camberwell.knowledge;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.explain.DemoCases;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Quality;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TermsTest {

    @Test
    @DisplayName("Every word that a case, a note or a change may say is explained")
    void everyWord() {
        Stream.<List<String>>of(Word.ids(Symptom.class), Word.ids(Phase.class), Word.ids(CornerSpeed.class),
                Word.ids(Severity.class), Word.ids(Occurrence.class), Word.ids(Since.class), Word.ids(Surface.class),
                Word.ids(Adjuster.class), Word.ids(Direction.class), Word.ids(Quality.class)).flatMap(List::stream)
                .forEach(word -> assertTrue(DemoCases.TERMS.find(word).isPresent(), word));
    }

    @Test
    @DisplayName("A newcomer can be told of every symptom, phase and corner in words of its own")
    void felt() {
        Stream.<Word>concat(Stream.of(Symptom.values()), Stream.concat(Stream.of(Phase.values()),
                Stream.concat(Stream.of(CornerSpeed.values()), Stream.of(Occurrence.values())))).forEach(word ->
                assertTrue(DemoCases.TERMS.find(word.id()).flatMap(Term::felt).isPresent(), word.id()));
    }

    @Test
    @DisplayName("What a word points to is explained too")
    void seeAlso() {
        DemoCases.TERMS.all().forEach(term -> term.see().forEach(other ->
                assertTrue(DemoCases.TERMS.find(other).isPresent(), term.name() + " points to " + other)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"toe", "front-toe", "camber", "caster", "braking", "entry", "mid-corner", "exit"})
    @DisplayName("An angle or a phase is drawn, and the drawing fits a narrow screen")
    void drawn(String word) {
        List<String> drawing = DemoCases.TERMS.find(word).orElseThrow().drawing();
        assertFalse(drawing.isEmpty(), word);
        drawing.forEach(line -> assertTrue(line.length() <= 55, line));
    }

    @Test
    @DisplayName("Toed-in wheels point together at the front of the car; cambered ones lean together at the top")
    void leaning() {
        assertTrue(DemoCases.TERMS.find("toe").orElseThrow().drawing().stream()
                .anyMatch(line -> line.matches("\\s*/ +\\\\ +\\| +\\| +\\\\ +/")));
        assertTrue(DemoCases.TERMS.find("camber").orElseThrow().drawing().stream()
                .anyMatch(line -> line.matches("\\s*/ +\\\\ +\\| +\\| +\\\\ +/")));
    }

    @Test
    @DisplayName("A word is found with spaces as with hyphens, and a misspelt one has a nearest")
    void found() {
        assertTrue(DemoCases.TERMS.find("Snap oversteer").isPresent());
        assertTrue(DemoCases.TERMS.nearest("castor").filter("caster"::equals).isPresent());
    }
}
