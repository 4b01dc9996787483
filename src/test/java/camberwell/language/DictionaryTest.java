package camberwell.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.fact.Reading;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Word;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The dictionary of sentences")
class DictionaryTest {

    private final Dictionary dictionary = read();

    private static Dictionary read() {
        try {
            return Dictionary.read(Path.of(System.getProperty("camberwell.home"), "rules", "dictionary.dsl"));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    @DisplayName("has the vocabulary's own word lists, so that a rule and a case speak alike")
    void lists() {
        Map<String, List<String>> vocabulary = Map.of("symptom", Word.ids(Symptom.class), "phase", Word.ids(Phase.class),
                "speed", Word.ids(CornerSpeed.class), "severity", Word.ids(Severity.class),
                "axle", Word.ids(Axle.class), "wheel", Word.ids(Wheel.class), "adjuster", Word.ids(Adjuster.class),
                "direction", Word.ids(Direction.class), "drive", Word.ids(Drive.class),
                "surface", Word.ids(Surface.class));
        vocabulary.forEach((gap, words) -> dictionary.sentences().stream().flatMap(it -> it.gaps().stream())
                .filter(it -> it.name().equals(gap)).forEach(it -> assertEquals(words, it.words(), gap)));
        assertTrue(dictionary.lists().keySet().containsAll(vocabulary.keySet()));
    }

    @Test
    @DisplayName("asks for every state that a reading can have, and for no other")
    void states() {
        Pattern state = Pattern.compile("shows\\(\"([a-z-]+)\"\\)");
        List<String> asked = dictionary.sentences().stream().map(Sentence::drl).map(state::matcher)
                .filter(Matcher::find).map(it -> it.group(1)).distinct().sorted().toList();
        assertEquals(Word.ids(Reading.State.class).stream().sorted().toList(), asked);
    }

    @Test
    @DisplayName("understands the example of each of its sentences as that sentence")
    void examples() {
        dictionary.sentences().forEach(sentence -> assertEquals(sentence,
                dictionary.match(sentence.condition(), sentence.example()).orElseThrow().getKey()));
    }
}
