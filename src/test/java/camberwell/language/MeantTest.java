package camberwell.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What a line was meant to be")
class MeantTest {

    private static final Set<String> TURNING = Set.of("not", "no", "above", "below", "more", "less", "inner", "outer",
            "hotter", "cooler", "cold", "hot", "in", "out", "front", "rear", "propose", "oppose", "withhold", "find",
            "speak", "higher", "lower", "softer", "stiffer", "dry", "wet", "damp", "likely", "driven");

    private final Dictionary dictionary = read();

    private static Dictionary read() {
        try {
            return Dictionary.read(Path.of(System.getProperty("camberwell.home"), "rules", "dictionary.dsl"));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private Meant.Answer when(String line) {
        return new Meant(dictionary, true).by(line);
    }

    private Meant.Answer then(String line) {
        return new Meant(dictionary, false).by(line);
    }

    @ParameterizedTest
    @DisplayName("a misspelt word, a small word too many or too few: the sentence is suggested")
    @CsvSource(delimiter = '|', value = {
        "the drivr reports understeer | the driver reports understeer",
        "the driver reports the understeer | the driver reports understeer",
        "driver reports understeer | the driver reports understeer",
        "the driver repots undersetter | the driver reports understeer",
        "the front tyres are below the window | the front tyres are below their window",
        "the front tyres are bellow their window | the front tyres are below their window",
        "front tread is hotter at inner edge | the front tread is hotter at the inner edge",
        "the surface was wet | the surface is wet",
        "- at the exit | - at exit",
        "- at leest clear | - at least clear"})
    void suggested(String line, String meant) {
        assertEquals(new Meant.Answer(Optional.of(meant), ""), when(line));
    }

    @Test
    @DisplayName("a conclusion without its certainty gets one to think about")
    void withoutCertainty() {
        assertEquals(Optional.of("propose front-bump softer with certainty 0.5"),
                then("propose front-bump softer").suggestion());
        assertEquals(Optional.of("find front-tyres-cold with certainty 0.5"),
                then("find front-tyres-cold").suggestion());
    }

    @ParameterizedTest
    @DisplayName("what narrows a report belongs on the next line, and it is said how")
    @CsvSource(delimiter = '|', value = {
        "the driver reports understeer at entry | write \"- at entry\" on the next line",
        "the driver reports snap-oversteer in fast corners | write \"- in fast corners\" on the next line",
        "the driver reports overheating at the rear tyres | write \"- at the rear tyres\" on the next line",
        "the driver reports graining late in the run | write \"- late in the run\" on the next line"})
    void onTheNextLine(String line, String hint) {
        assertEquals(new Meant.Answer(Optional.empty(), hint), when(line));
    }

    @ParameterizedTest
    @DisplayName("another sign, verb or noun is another rule: nothing is suggested, the like sentences are named")
    @CsvSource(delimiter = '|', value = {
        "the front tyres are over their window | the front tyres are above their window",
        "the car is heavier than 1000 kg | the car weighs more than 1000 kg",
        "the track is warm | the track is cold"})
    void namedOnly(String line, String like) {
        Meant.Answer answer = when(line);
        assertEquals(Optional.empty(), answer.suggestion());
        assertTrue(answer.hint().contains(like) || answer.hint().equals("camberwell rules sentences lists them all"),
                answer.hint());
    }

    @Test
    @DisplayName("whatever is dropped, doubled or put in the place of another: no suggestion turns a sentence round")
    void neverTurnsRound() {
        Random random = new Random(7);
        for (Sentence sentence : dictionary.sentences()) {
            String[] words = sentence.example().split(" ");
            for (int i = 0; i < 40; i++) {
                String[] spoilt = words.clone();
                int at = random.nextInt(words.length);
                String[] others = dictionary.sentences().get(random.nextInt(dictionary.sentences().size())).example()
                        .split(" ");
                spoilt[at] = random.nextBoolean() ? "" : others[random.nextInt(others.length)];
                String line = String.join(" ", spoilt).replaceAll(" +", " ").strip();
                if (line.isEmpty() || dictionary.match(sentence.condition(), line).isPresent()) {
                    continue;
                }
                new Meant(dictionary, sentence.condition()).by(line).suggestion().ifPresent(meant -> {
                    List<String> before = List.of(line.split(" "));
                    List<String> after = List.of(meant.split(" "));
                    TURNING.forEach(word -> assertFalse(before.contains(word) != after.contains(word),
                            line + " -> " + meant));
                });
            }
        }
    }
}
