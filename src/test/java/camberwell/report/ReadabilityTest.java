package camberwell.report;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.explain.DemoCases;
import camberwell.explain.Reasoning;
import camberwell.knowledge.Note;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A newcomer reads advice as easily as a general newspaper. */
class ReadabilityTest {

    /** The easy end of Flesch's "standard", of general magazines and newspapers. */
    private static final double EASE = 65;
    private static final double GRADE = 8;
    /** A note of two or three sentences may have one long word more; one below "fairly difficult" is not plain. */
    private static final double EASE_OF_A_NOTE = 60;

    @ParameterizedTest
    @CsvSource({"tyre,1", "camber,2", "pressure,2", "pushed,1", "loaded,2", "little,2", "edges,2", "brakes,1",
        "temperature,4", "toe-in,2", "stiffer,2", "before,2", "rule,1", "steering,2", "wheels,1", "the,1", "cooler,2"})
    @DisplayName("Syllables of words that are common here, against a dictionary's (cited from memory)")
    void syllables(String word, int syllables) {
        assertEquals(syllables, Readability.syllables(word), word);
    }

    @Test
    @DisplayName("Six short words of one syllable: 206.835 - 1.015 x 6 - 84.6 = 116.145, grade -1.45")
    void formula() {
        Readability cat = Readability.of("The cat sat on the mat.");
        assertEquals(116.145, cat.ease(), 1e-9);
        assertEquals(-1.45, cat.grade(), 1e-9);
    }

    @Test
    @DisplayName("An engineer's sentence does not pass for a newcomer's")
    void engineersSentence() {
        assertTrue(Readability.of("Reducing differential preload decreases the stabilising yaw moment that the axle "
                + "generates during corner entry under trailing throttle.").ease() < EASE_OF_A_NOTE);
    }

    @Test
    @DisplayName("Advice for a newcomer reads like a newspaper, for every demo case and every drawn one")
    void newspaper() {
        assertAll(Stream.concat(DemoCases.reasoned(), DemoCases.drawn()).map(reasoning -> () -> {
            Readability read = Readability.of(newcomer(reasoning));
            assertTrue(read.ease() >= EASE && read.grade() <= GRADE, reasoning.run().title() + ": ease "
                    + Words.two(read.ease()) + ", grade " + Words.two(read.grade()));
        }));
    }

    @Test
    @DisplayName("Every text that a newcomer may be shown is plain by itself")
    void everyText() {
        Map<String, String> texts = new LinkedHashMap<>();
        for (String name : DemoCases.NOTES.names()) {
            Note note = DemoCases.NOTES.get(name);
            texts.put(name + ", plain", note.plain());
            note.ways().forEach((direction, way) -> {
                texts.put(name + " " + direction.id() + ", plain", way.plain());
                texts.put(name + " " + direction.id() + ", watch and put back", way.watch() + " " + way.putBack());
            });
            note.practice().ifPresent(practice -> {
                texts.put(name + ", statement", note.statement());
                texts.put(name + ", try", practice.tryNext());
                texts.put(name + ", feel", practice.feel());
                texts.put(name + ", car or driver", practice.carOrDriver());
            });
        }
        assertAll(texts.entrySet().stream().filter(text -> !text.getValue().isBlank()).map(text -> () -> {
            double ease = Readability.of(text.getValue()).ease();
            assertTrue(ease >= EASE_OF_A_NOTE, text.getKey() + ": " + Words.two(ease));
        }));
    }

    /** The sentences of the text: its lines, but for headings. */
    private static String newcomer(Reasoning reasoning) {
        Page page = new Page(100_000, false);
        new NewcomerText(DemoCases.NOTES, DemoCases.TERMS).write(reasoning.advice(), page);
        return page.toString().lines().filter(line -> line.endsWith(".")).collect(Collectors.joining("\n"));
    }
}
