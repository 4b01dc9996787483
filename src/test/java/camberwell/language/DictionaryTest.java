package camberwell.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.fact.Reading;
import camberwell.problem.ProblemsException;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Aid;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Group;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Word;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
        Map<String, List<String>> vocabulary = new HashMap<>(Map.of("symptom", Word.ids(Symptom.class),
                "phase", Word.ids(Phase.class), "speed", Word.ids(CornerSpeed.class), "severity", Word.ids(Severity.class),
                "axle", Word.ids(Axle.class), "wheel", Word.ids(Wheel.class), "adjuster", Word.ids(Adjuster.class),
                "direction", Word.ids(Direction.class), "drive", Word.ids(Drive.class),
                "surface", Word.ids(Surface.class)));
        vocabulary.put("group", Word.ids(Group.class));
        vocabulary.put("aid", Word.ids(Aid.class));
        vocabulary.forEach((gap, words) -> dictionary.sentences().stream().flatMap(it -> it.gaps().stream())
                .filter(it -> it.name().equals(gap)).forEach(it -> assertEquals(words, it.words(), gap)));
        assertTrue(dictionary.lists().keySet().containsAll(vocabulary.keySet()));
    }

    @Test
    @DisplayName("asks for every state that a reading can have, and for no other")
    void states() {
        List<String> asked = dictionary.sentences().stream().filter(Sentence::condition)
                .map(sentence -> dictionary.match(true, sentence.example()).orElseThrow())
                .map(match -> (Question) match.getKey().mapping().filled(match.getValue()))
                .flatMap(question -> question.word("shows").stream()).distinct().sorted().toList();
        assertEquals(Word.ids(Reading.State.class).stream().sorted().toList(), asked);
    }

    @Test
    @DisplayName("asks each fact only for what it can answer, with every word that fits")
    void problems() {
        assertEquals(List.of(), dictionary.problems());
    }

    @Test
    @DisplayName("tells which line has to be written where, when a sentence asks for what no fact has")
    void unknownAttribute() {
        Dictionary strange = new Dictionary("# The day\n[when]the air is hot=Day(above(\"air\", 30))\n"
                + "[when]the {axle:front|rear} tread is bald=Reading(is(\"place\", \"{axle}\"), is(\"shows\", \"bald\"))\n");
        assertEquals(List.of("dictionary line 2: a Day has no attribute \"air\"; write Attribute.of(\"air\", ...) or "
                + "Attribute.number(\"air\", ...) among those of camberwell.fact.Day, and what it answers",
                "dictionary line 3: \"shows\" is never \"bald\": " + String.join(", ", Word.ids(Reading.State.class))),
                strange.problems());
    }

    @Test
    @DisplayName("is read no further than it makes sense")
    void nonsense() {
        Map<String, String> wrong = Map.of("[when]it rains=Weather(is(\"surface\", \"wet\"))",
                "rules/dictionary.dsl:1:1: there is no fact \"Weather\": Reported, Reading, Setup, Day, Outing, Finding",
                "[when]it rains=Day(was(\"surface\", \"wet\"))",
                "rules/dictionary.dsl:1:1: a fact is asked is, isNot, atLeast, atMost, above or below, not was",
                "[when]it rains=Day(is(\"surface\"))", "rules/dictionary.dsl:1:1: is(\"surface\") names no answer",
                "[when]it rains=Day(is(\"surface\", \"wet\")) and so on",
                "rules/dictionary.dsl:1:1: expected nothing more at \" and so on\"",
                "[then]sing=Conclude.sing(drools);", "rules/dictionary.dsl:1:1: camberwell.engine.Conclude has no \"sing\"",
                "[then]caution all=Conclude.caution(drools);", "rules/dictionary.dsl:1:1: caution takes 1 arguments");
        wrong.forEach((line, message) -> assertEquals(message,
                assertThrows(ProblemsException.class, new Dictionary(line)::sentences).getMessage()));
    }

    @Test
    @DisplayName("understands the example of each of its sentences as that sentence")
    void examples() {
        dictionary.sentences().forEach(sentence -> assertEquals(sentence,
                dictionary.match(sentence.condition(), sentence.example()).orElseThrow().getKey()));
    }
}
