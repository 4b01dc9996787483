package camberwell.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.input.CaseReader;
import camberwell.report.Page;
import camberwell.run.Case;
import camberwell.run.Report;
import camberwell.saying.Listener;
import camberwell.saying.Sayings;
import camberwell.vocabulary.Audience;
import camberwell.vocabulary.Surface;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("At the prompt of a debrief")
class TalkTest {

    private static final Paddock PADDOCK = new Paddock();
    private static final Listener LISTENER = listener();

    private int width = 80;
    private Debrief debrief;
    private Talk talk;

    private static Listener listener() {
        Path file = Path.of("knowledge-notes", Sayings.FILE);
        try {
            return new Listener(Sayings.read(Map.of(file.toString(), Files.readString(file))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @BeforeEach
    void begin() {
        Case run = Paddock.untold(new CaseReader().read(Path.of("demo-cases/pushes-in-snaps-out.yaml")).run());
        debrief = PADDOCK.debrief(run);
        talk = new Talk(debrief, () -> LISTENER, () -> PADDOCK.notes, Audience.CLUB, () -> new Page(width, false));
        talk.ask();
        talk.take();
    }

    @AfterEach
    void end() {
        debrief.close();
    }

    private String say(String line) {
        talk.reply(line);
        return talk.take();
    }

    private List<String> told() {
        return debrief.run().reports().stream().map(Report::text).toList();
    }

    private Field asked() {
        return talk.question().orElseThrow().topic().field();
    }

    @ParameterizedTest
    @ValueSource(strings = {"it pushes on the way in and snaps on the way out", "understeer entry, snap oversteer exit",
        "understeer at entry; snap-oversteer at exit"})
    @DisplayName("what the car did is told in one's own words, and echoed")
    void ownWords(String said) {
        assertTrue(say(said).startsWith("Heard: understeer at entry; snap oversteer at exit.\n"));
        assertEquals(2, told().size());
    }

    @Test
    @DisplayName("a screen that was made narrower is written on as it is now, from the next line on")
    void narrower() {
        width = 40;
        String said = say("it pushes on the way in and snaps on the way out");
        assertTrue(said.lines().allMatch(line -> line.length() <= 40), said);
    }

    @Test
    @DisplayName("where in the corner is asked before the tyres, and only where it was not said")
    void whereFirst() {
        say("oversteer");
        assertEquals(Field.PHASE, asked());
        say("when I lift, in the fast ones");
        assertEquals(List.of("oversteer at lift-off in fast corners"), told());
    }

    @Test
    @DisplayName("the day and another complaint may be said at any prompt, and the question stays")
    void anyWord() {
        say("oversteer");
        Field open = asked();
        say("also bottoming over the crest");
        say("it was wet");
        assertEquals(Surface.WET, debrief.run().conditions().surface());
        assertEquals(2, told().size());
        assertEquals(open, asked());
        say("add");
        say("it pulls to the left under braking");
        assertEquals(3, told().size());
    }

    @Test
    @DisplayName("a suggestion is taken with y, and what is not understood is named")
    void suggestion() {
        assertTrue(say("undrsteer").startsWith("Heard: understeer"), "a slip of one letter is mended");
        assertTrue(say("zzz qqq").contains("Not understood: \"zzz qqq\""));
        assertTrue(say("unknwn").contains("did you mean unknown? y takes it."));
        Field open = asked();
        say("y");
        assertFalse(talk.question().map(it -> it.topic().field() == open
                && it.topic().complaint() == 0).orElse(false));
    }

    @ParameterizedTest
    @CsvSource({"ent, entry", "fas, fast", "stro, strong"})
    @DisplayName("the beginning of a word that tells where or how bad asks what the car did there")
    void whereWithoutWhat(String said, String word) {
        assertEquals("Heard: " + word + "; but what did the car do there?\n", say(said));
        assertEquals(Field.DOING, asked());
        say("understeer");
        assertEquals(1, told().size());
    }

    @Test
    @DisplayName("what may be either end is asked back, and an end answers it")
    void eitherEnd() {
        assertTrue(say("it slides on exit").contains("understeer or oversteer?"));
        assertTrue(say("the rear").startsWith("Heard: oversteer at exit"), told().toString());
    }

    @Test
    @DisplayName("a phase in which nobody can mean it is asked about once more")
    void senseless() {
        say("wheelspin");
        if (asked() == Field.PHASE) {
            assertTrue(say("braking").contains("without power no wheel spins"));
        }
        assertEquals(List.of("wheelspin"), told());
    }

    @Test
    @DisplayName("what nobody said is taken in one line at the end, with whether there was more")
    void closing() {
        say("understeer at entry in slow corners");
        String last = "";
        for (int i = 0; i < 8 && talk.question().isPresent() && asked() != Field.ELSE; i++) {
            last = say(asked() == Field.SIMULATOR ? "car" : "no");
        }
        assertTrue(last.replaceAll("\\s+", " ").contains("I take it: dry, plain to feel, on every lap, all run, left and right "
                + "alike. Anything else it did? Enter if that is right and all."), last);
        say("only in the first laps");
        assertEquals(List.of("understeer at entry in slow corners, in the first laps"), told());
    }

    @ParameterizedTest
    @CsvSource({"no, false", "nobody, false", "none, false", "yes, true", "92 84 78, true"})
    @DisplayName("whether the tyres were read is answered with yes and no, or with the figures at once")
    void tyres(String said, boolean stays) {
        say("understeer at entry in slow corners");
        for (int i = 0; i < 5 && asked() != Field.TYRES; i++) {
            say(asked() == Field.SIMULATOR ? "car" : "unknown");
        }
        say(said);
        assertEquals(stays, asked() == Field.TYRES);
        if (said.startsWith("92")) {
            assertTrue(say("front-right 90 84 80").startsWith("Heard: front-right 90 / 84 / 80 °C."));
            assertTrue(say("back").contains("The last line of figures is taken back."));
            say("that is all");
            assertEquals(1, debrief.run().tyres().size());
        }
    }

    @Test
    @DisplayName("tyres that overheat with treads below their window are asked about once")
    void doubt() {
        say("the fronts overheat");
        for (int i = 0; i < 6 && talk.question().isPresent() && asked() != Field.TYRES; i++) {
            say(asked() == Field.SIMULATOR ? "car" : "unknown");
        }
        String asked = say("56 56 56 56 56 56 56 56 56 56 56 56");
        assertTrue(asked.contains("Those two do not go together"), asked);
        say("figures");
        assertEquals(List.of(), told());
    }

    @Test
    @DisplayName("back, change and why do what they say")
    void commands() {
        say("understeer at entry");
        String listed = say("change");
        assertTrue(listed.contains("doing: understeer at entry"), listed);
        say("change doing");
        say("oversteer at exit");
        assertEquals(List.of("oversteer at exit"), told());
        say("back");
        assertEquals(List.of(), told());
        assertTrue(say("back").contains("This is the first question."));
        assertTrue(say("change of direction is slow").startsWith("Heard: slow turn-in"));
    }
}
