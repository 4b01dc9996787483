package camberwell.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.input.CaseReader;
import camberwell.report.Page;
import camberwell.run.Case;
import camberwell.run.Report;
import camberwell.run.TyreReading;
import camberwell.saying.Listener;
import camberwell.saying.Sayings;
import camberwell.units.Quantity;
import camberwell.vocabulary.Audience;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Wheel;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"damp in the morning but dry when I went out | DRY",
        "rained overnight but the track was dry | DRY", "it had been raining but it dried out | DRY",
        "it was dry this morning, wet by the time I went out | WET", "mostly dry, a few damp patches | DRY"})
    @DisplayName("what the track was on the driver's own run counts")
    void ownTrack(String line, Surface expected) {
        say("understeer on entry in slow corners");
        say(line);
        assertEquals(List.of("understeer at entry in slow corners"), told());
        assertEquals(Optional.of(expected), debrief.run().conditions().said());
    }

    @Test
    @DisplayName("a track that changed in the course of the run is asked about")
    void trackThatChanged() {
        say("understeer on entry in slow corners");
        assertTrue(say("dry at first, then it rained").contains("Dry or wet for most of the run?"));
        say("wet");
        assertEquals(Optional.of(Surface.WET), debrief.run().conditions().said());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"mid-corner, tight right-hander | slow", "mid-corner in a fast left | fast",
        "mid-corner, a tight left | slow"})
    @DisplayName("a corner that is tight is slow, and where it was is no complaint to who asked where")
    void tight(String where, String speed) {
        say("it pushes");
        say(where);
        assertTrue(told().get(0).startsWith("understeer at mid-corner in " + speed + " corners"), told().toString());
        assertEquals(1, told().size());
    }

    @Test
    @DisplayName("where it was is kept while it is asked what it was, and both is told of both")
    void placeOfBoth() {
        say("it slides");
        assertTrue(say("mid-corner").contains("understeer or oversteer"));
        say("both");
        assertEquals(List.of("understeer at mid-corner", "oversteer at mid-corner"), told());
    }

    @Test
    @DisplayName("of three, both is asked back about, and the whole corner is asked once how fast it is")
    void both() {
        say("it pushes");
        assertTrue(say("both").contains("Which two?"));
        say("the whole corner");
        assertEquals("understeer in all of the corner", debrief.complaint(new Topic(Field.SPEED, 1)));
        debrief.answer(new Topic(Field.SPEED, 0), Answer.Said.of(CornerSpeed.SLOW));
        assertEquals(List.of("understeer at entry in slow corners", "understeer at mid-corner in slow corners",
                "understeer at exit in slow corners"), told());
    }

    @ParameterizedTest
    @ValueSource(strings = {"none of that", "none of these", "nothing of the list"})
    @DisplayName("nothing of a list of complaints is not that nothing was wrong")
    void noneOfThem(String line) {
        assertTrue(say(line).contains("in your own words"));
        assertEquals(Field.DOING, asked());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"the rear bottoms over the crest | rear", "the front bottoms out in the dip | front",
        "it bottoms at the rear over the crest | rear"})
    @DisplayName("the end that is named as what does it belongs to it")
    void endOfIt(String line, String end) {
        say(line);
        assertTrue(told().get(0).startsWith("bottoming at the " + end), told().toString());
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

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"front | front tyres", "rear | rear tyres", "the front | front tyres",
        "fronts | front tyres", "rear tyres | rear tyres", "rear axle | rear tyres", "just the back | rear tyres",
        "front left | front-left tyre", "front-left | front-left tyre", "right rear | rear-right tyre",
        "LF. | front-left tyre", "it's the front ones | front tyres", "the front end, I think | front tyres"})
    @DisplayName("front or rear, or one of the wheels, is an answer where that is asked, and no complaint")
    void whichEnd(String said, String place) {
        say("overheating");
        assertEquals(Field.WHERE, asked());
        assertFalse(say(said).contains("steer"), said);
        assertEquals(List.of("overheating at the " + place), told());
    }

    @Test
    @DisplayName("both ends are two complaints, and another complaint is none of the ends")
    void bothEnds() {
        say("overheating");
        say("fronts and rears");
        assertEquals(List.of("overheating at the front tyres", "overheating at the rear tyres"), told());
        talk.reply("back");
        say("the front locks on the brakes");
        assertTrue(told().stream().anyMatch(text -> text.startsWith("front locking")), told().toString());
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
    @DisplayName("what is said of both complaints counts for both")
    void ofBoth() {
        say("it pushes on the way in and snaps on the way out");
        say("both every lap, medium corners");
        assertEquals(List.of("understeer at entry in medium corners", "snap oversteer at exit in medium corners"),
                told().stream().map(text -> text.replace(", on every lap", "")).toList());
        assertTrue(debrief.run().reports().stream().allMatch(report -> report.occurrence() == Occurrence.EVERY_LAP));
    }

    @Test
    @DisplayName("a temperature of the track is echoed as that, and that no tyre was read as that")
    void echoed() {
        say("oversteer at exit in slow corners");
        assertTrue(say("track 34").startsWith("Heard: track 34 \u00b0C.\n"));
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
        talk.ask();
        talk.take();
        assertTrue(talk.question().isEmpty() || say("just that").startsWith("Heard: nothing else."));
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

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "lf 92 88 84, rf 86 84 83, lr 95 96 94, rr 90 92 91 | 4 | false",
        "yes, hot: lf 92 88 84, rf 86 84 83, lr 95 96 94, rr 90 92 91 | 4 | false",
        "92 88 84 86 84 83 95 96 94 90 92 91 | 4 | false",
        "the fronts 92 88 84 2.0 | 2 | false",
        "pressures 2.0 2.0 2.1 2.1 | 4 | false",
        "fronts 2.1 rears 2.0 | 4 | false",
        "all four 2.1 | 4 | false",
        "hot pressures were 29 29 30 30 psi | 4 | false",
        "it also bottoms on the straight, fl 92 88 84, fr 86 84 83 | 2 | true"})
    @DisplayName("what was read of the tyres may be said at any prompt, by itself or after a complaint")
    void tyresAtAnyPrompt(String said, int tyres, boolean more) {
        say("understeer at entry");
        Field open = asked();
        assertNotEquals(Field.TYRES, open);
        String answer = say(said);
        assertEquals(tyres, debrief.run().tyres().size(), answer);
        assertEquals(more ? 2 : 1, told().size(), answer);
        assertFalse(answer.contains("Not understood"), answer);
    }

    @Test
    @DisplayName("treads and pressures that are told apart are kept together, and cold pressures are cold")
    void treadsThenPressures() {
        say("fl 92 88 84, fr 86 84 83");
        say("pressures 2.0 2.0 2.1 2.1");
        say("cold pressures 1.7 1.7 1.8 1.8");
        TyreReading left = debrief.run().tyres().get(Wheel.FRONT_LEFT);
        assertEquals("front-left 92 / 88 / 84 °C, 1.7 bar cold, 2 bar hot", Spoken.text(
                new Answer.Read(Map.of(Wheel.FRONT_LEFT, left))));
        assertEquals(4, debrief.run().tyres().size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"2", "1 2", "medium", "the rear 2 clicks softer", "turns 1 3 5", "the fronts are over 100 degrees",
        "from lap 5", "rears 2"})
    @DisplayName("a number of the list, of a turn, a click or a lap is no tyre's")
    void noTyres(String said) {
        say("understeer at entry");
        say(said);
        assertEquals(Map.of(), debrief.run().tyres());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"track 34 | 34 °C", "the track was 34 degrees | 34 °C", "track temp 95 F | 95 °F",
        "it also bottoms on the straight, track temperature: 34 | 34 °C"})
    @DisplayName("so may the temperature of the track")
    void trackAtAnyPrompt(String said, String track) {
        say("understeer at entry");
        String answer = say(said);
        assertEquals(Optional.of(track), debrief.run().conditions().track().map(Quantity::toString), answer);
        assertEquals(said.contains("bottoms") ? 2 : 1, told().size(), answer);
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

    /** Answers what is asked until that is asked; what is not asked after all leaves the test without meaning. */
    private void until(Field field) {
        for (int i = 0; i < 8 && talk.question().isPresent() && asked() != field; i++) {
            say(asked() == Field.SIMULATOR ? "car" : "unknown");
        }
        assertEquals(Optional.of(field), talk.question().map(it -> it.topic().field()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"it's on my pc | true", "in a sim | true", "no idea, it's a sim | true",
        "just a game | true", "sim rig at home | true", "a real car, dry | false", "real car | false", "it was a track day | false"})
    @DisplayName("a simulator or a real car is understood as people say it, with what else is said")
    void simulator(String said, boolean simulated) {
        say("understeer at entry");
        until(Field.SIMULATOR);
        String answer = say(said);
        assertEquals(Optional.of(simulated), debrief.run().car().simulated(), answer);
        assertFalse(answer.contains("Not understood"), answer);
        assertNotEquals(Optional.of(Field.SIMULATOR), talk.question().map(it -> it.topic().field()), answer);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"clockwise | right", "anti-clockwise | left", "counterclockwise | left", "right | right",
        "mostly lefts | left", "more rights than lefts | right", "about the same both ways | both", "lefts and rights | both"})
    @DisplayName("which way a circuit goes is understood as people say it")
    void circuit(String said, String turns) {
        assertEquals(Optional.of(turns), WayRound.said(said).map(it -> it.id()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"it pushes in the rights", "the right front is hot", "same as before", "no idea"})
    @DisplayName("what tells of something else does not tell which way a circuit goes")
    void noCircuit(String said) {
        assertEquals(Optional.empty(), WayRound.said(said));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"about 5 laps | late-run", "15 laps | late-run", "a dozen laps | late-run",
        "after a dozen laps | late-run", "lap 6 | late-run", "a couple of laps | late-run", "since the start | whole-run",
        "for the first 3 laps | first-laps"})
    @DisplayName("so many laps, where it is asked since when, is since when")
    void since(String said, String since) {
        debrief.answer(Topic.of(Field.DOING), Answer.Said.of(Symptom.UNDERSTEER, Phase.ENTRY));
        Understanding understanding = new Understanding(debrief, () -> LISTENER);
        Question question = new Question(new Topic(Field.SINCE, 0), List.of(), null);
        Answer answer;
        try {
            answer = understanding.of(question, List.of(Since.values()), said).answer();
        } catch (Reply.NoAnswer e) {
            throw new AssertionError(e.getMessage());
        }
        assertEquals(since, ((Answer.Said) answer).groups().get(0).get(0).id());
    }

    @Test
    @DisplayName("a number of laps where it is not asked since when is asked about")
    void laps() {
        say("understeer at entry");
        assertTrue(say("about 5 laps").startsWith("Only in the first of them, or from there on?"));
        say("the first laps");
        assertEquals(List.of("understeer at entry, in the first laps"), told());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"both ends | understeer at exit; oversteer at exit",
        "both | understeer at exit; oversteer at exit", "the rear | oversteer at exit"})
    @DisplayName("of two that are asked between, both may be meant")
    void bothEnds(String said, String taken) {
        say("it slides on exit");
        assertEquals("Heard: " + taken + ".", say(said).lines().findFirst().orElseThrow());
    }

    @Test
    @DisplayName("who is not sure and thinks something is heard; who is not sure and says no more does not know")
    void hedged() {
        say("oversteer");
        assertEquals(Field.PHASE, asked());
        assertTrue(say("not sure, maybe entry").startsWith("Heard: entry."));
        assertEquals(List.of("oversteer at entry"), told());
        say("back");
        say("dunno mate");
        assertTrue(debrief.entries().get(1).answer() instanceof Answer.Unknown);
    }

    @Test
    @DisplayName("what stands behind \"dunno\" and is not clear is named, and no later line is taken for an answer to it")
    void behindDunno() {
        say("understeer at entry in slow corners");
        assertTrue(say("dunno, every lap, bit slippy").startsWith("Not understood: \"every lap, bit slippy\"."));
        assertTrue(say("it was wet, tyres were cold").startsWith("Heard: slow warm-up; wet track."));
    }

    @Test
    @DisplayName("of a car in which something is loose or broken nothing more is asked")
    void mechanicalFault() {
        say("the brake pedal goes long after five laps");
        assertEquals(Field.SIMULATOR, asked());
        say("a real car");
        assertTrue(debrief.next().isEmpty());
        assertEquals("come-in-and-look", debrief.advice().halt().orElseThrow().name());
    }

    @Test
    @DisplayName("who does not understand a question is asked once more in plain words, and told why")
    void notUnderstood() {
        say("oversteer");
        assertTrue(say("eh?").replaceAll("\\s+", " ").startsWith("Where in the corner did you feel it, and in what kind of "
                + "corner? (oversteer) "));
        assertTrue(say("why do you ask?").startsWith("The answer decides what comes first."));
        assertTrue(say("same as before").startsWith("What it was before is not known here"));
        assertEquals(Field.PHASE, asked());
    }

    @Test
    @DisplayName("figures that are given before the order of a tread was told are taken inner edge first, which is said once")
    void order() {
        assertTrue(say("lf 82 85 91").startsWith("Heard: front-left 82 / 85 / 91 °C. Taken as inner, middle, outer edge.\n"));
        assertTrue(say("rf 95 90 84").startsWith("Heard: front-right 95 / 90 / 84 °C.\n"));
        assertTrue(say("f 2.0 r 1.9").contains("front-right 2 bar hot; rear-left 1.9 bar hot"));
    }

    @Test
    @DisplayName("what was said of one complaint is taken otherwise for the other")
    void otherwise() {
        say("it pushes on entry in the first laps and it snaps on exit");
        assertTrue(Phrases.taken(debrief.taken(), Audience.CLUB).contains("otherwise all run"),
                Phrases.taken(debrief.taken(), Audience.CLUB));
    }

    @Test
    @DisplayName("of two halves that are heard as one the other is asked about, and yes takes it with when it was")
    void halves() {
        String answer = say("the front just carries on when I turn and the back gets nervous when I get off the gas, "
                + "late in the run");
        assertTrue(answer.startsWith("Heard: oversteer at lift-off, late in the run.\n"), answer);
        assertTrue(answer.replaceAll("\\s+", " ").contains("\"the front just carries on when I turn\": did you mean "
                + "understeer at entry, late in the run?"),
                answer);
        say("yes");
        assertEquals(List.of("oversteer at lift-off, late in the run", "understeer at entry, late in the run"), told());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"all the way through | 3", "both ends | 1", "the lot | 3"})
    @DisplayName("all of a corner is every part of it, and both ends of the car are no part of a corner")
    void wholeCorner(String said, int complaints) {
        say("oversteer");
        assertEquals(Field.PHASE, asked());
        say(said);
        assertEquals(complaints, told().size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"I meant understeer, not oversteer", "no, understeer", "sorry, the front",
        "not oversteer but understeer", "no wait, it is the front that slides", "scratch that, it pushes",
        "change it to understeer", "correction: the front", "no, I meant it pushes", "it isn't oversteer, it's understeer"})
    @DisplayName("a correction takes the place of the complaint that it corrects, and what still fits stays")
    void corrected(String said) {
        say("it is loose in the fast left");
        String answer = say(said);
        assertEquals(List.of("understeer in fast corners in left turns only"), told(), answer);
        assertTrue(answer.contains("instead of oversteer"), answer);
        assertTrue(say("back").startsWith("Taken back: corrected (oversteer in fast corners): understeer."));
        assertEquals(List.of("oversteer in fast corners in left turns only"), told());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "and it understeers on entry, I mean mid corner | understeer at mid-corner",
        "it is loose in slow corners, no, fast ones | oversteer in fast corners",
        "it locks the fronts under braking, sorry, the rears lock | rear locking under braking",
        "no grip at the front on entry | understeer at entry"})
    @DisplayName("a line that corrects itself says what it ends on")
    void correctsItself(String said, String heard) {
        say(said);
        assertEquals(List.of(heard), told());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"it is loose; exit; no, entry | oversteer at entry",
        "it is loose in the fast left; no, slow corners | oversteer in slow corners in left turns only",
        "very loose on exit in slow corners; no, it was slight | slight oversteer at exit in slow corners",
        "it pushes on entry and snaps on exit; no, it pushes mid corner | "
                + "understeer at mid-corner & snap oversteer at exit",
        "it is loose; exit; not exit but entry | oversteer at entry",
        "it pushes on entry; it's not the front, it's the rear | oversteer at entry",
        "it pushes on entry; wrong, oversteer | oversteer at entry",
        "the tyres overheat; front; no, the rear | overheating at the rear tyres",
        "it pushes on entry in slow corners; no, medium, and only in the lefts | "
                + "understeer at entry in medium corners in left turns only",
        "it snaps on exit; sorry, and it pushes on entry | snap oversteer at exit & understeer at entry",
        "it pushes on entry; no, the rear locks too | understeer at entry & rear locking",
        "it pushes on entry; actually it wanders on the straight | understeer at entry & wandering on the straight"})
    @DisplayName("where, how fast and how bad are corrected as well, and what is told besides is told besides")
    void correctedDetail(String said, String told) {
        for (String line : said.split("; ")) {
            say(line);
        }
        assertEquals(told, String.join(" & ", told()));
    }

    @Test
    @DisplayName("how bad it was is corrected at the last question, whether it was said or taken")
    void correctedAtLast() {
        say("oversteer at exit in slow corners");
        until(Field.ELSE);
        say("no, it was slight");
        assertEquals(List.of("slight oversteer at exit in slow corners"), told());
    }

    @ParameterizedTest
    @ValueSource(strings = {"actually it does not wander", "it doesn't wander at all", "no, it does not wander"})
    @DisplayName("what was told and is denied afterwards is taken back")
    void denied(String said) {
        say("it wanders on the straight and pushes on entry");
        assertTrue(say(said).startsWith("Heard: no wandering on the straight; that is taken back."));
        assertEquals(List.of("understeer at entry"), told());
    }

    @Test
    @DisplayName("a complaint that is told where something else is asked is not kept as the answer to that")
    void elsewhere() {
        say("it's loose when I brake for the fast left");
        until(Field.SIMULATOR);
        say("it also bottoms on the straight");
        say("car, sorry simulator");
        assertEquals(Optional.of(true), debrief.run().car().simulated());
        say("change simulator");
        assertEquals(Field.SIMULATOR, asked());
        say("real, no, rig");
        assertEquals(2, told().size(), told().toString());
        assertFalse(say("so far").contains("simulator: bottoming"));
        assertEquals(Optional.of(true), debrief.run().car().simulated());
    }

    @Test
    @DisplayName("back takes back what is asked back about, and says so")
    void backFromAskedBack() {
        say("the front just carries on when I turn and the back gets nervous when I get off the gas, late in the run");
        assertTrue(say("back").startsWith("Taken back: \"the front just carries on when I turn\", which was not sure."));
        assertEquals(List.of("oversteer at lift-off, late in the run"), told());
        assertTrue(say("back").startsWith("Taken back: doing: oversteer at lift-off, late in the run."));
        assertEquals(List.of(), told());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"fl 92 84 78 1.95, air 20 | 1 | 20 °C", "fl 92 84 78 1.95, ambient 20 | 1 | 20 °C",
        "fl 92 84 78 1.95, after 8 laps | 1 |", "fl 92 84 78, new tyres | 1 |", "air 20 °C, fl 92 84 78 1.95 | 1 | 20 °C",
        "left front 92 84 78, right front 90 82 77 | 2 |", "92 84 78 1.95 | 1 |", "197 183 172 28 | 1 |",
        "rear right 88 90 91, track 34, air 75 F | 1 | 75 °F"})
    @DisplayName("readings are taken with what stands beside them, be they asked for or not, and are no complaint")
    void readings(String said, int tyres, String air) {
        for (boolean asked : new boolean[] {false, true}) {
            begin();
            say("understeer at entry in slow corners");
            if (asked) {
                until(Field.TYRES);
            }
            String answer = say(said);
            if (asked) {
                say("that is all");
            }
            assertEquals(tyres, debrief.run().tyres().size(), answer);
            // The case has its own air, 18 °C.
            assertEquals(Optional.of(air == null ? "18 °C" : air),
                    debrief.run().conditions().air().map(Quantity::toString), answer);
            assertEquals(1, told().size(), answer);
            assertFalse(answer.contains("did you mean") || answer.contains("Not understood"), answer);
        }
    }

    @Test
    @DisplayName("one tread after the other may be read off before it is asked, and what is said between them loses none")
    void treadByTread() {
        say("understeer at entry in slow corners");
        say("92 84 78 1.95");
        say("90 82 77 1.97");
        assertEquals(List.of(Wheel.FRONT_LEFT, Wheel.FRONT_RIGHT), List.copyOf(debrief.run().tyres().keySet()));
        end();
        begin();
        say("understeer at entry in slow corners");
        until(Field.TYRES);
        say("92 84 78 1.95");
        say("air 20");
        say("90 82 77 1.97");
        say("that is all");
        assertEquals(2, debrief.run().tyres().size());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"I am a newcomer | newcomer | ", "I'm an experienced driver | experienced |",
        "I want it calmer | | more-calm", "I want the car to turn more |  | more-rotation",
        "it pushes on exit too, I want it calmer | | more-calm", "warm day | |", "14 laps on mediums | |"})
    @DisplayName("who drove, what is wanted and what sort of day it was are heard, and are no complaint")
    void driverAndDay(String said, String level, String wish) {
        say("understeer at entry");
        String answer = say(said);
        assertTrue(answer.startsWith("Heard: "), answer);
        assertEquals(Optional.ofNullable(level), debrief.run().background().pupil().level().map(it -> it.id()), answer);
        assertEquals(Optional.ofNullable(wish),
                debrief.run().background().pupil().wants().stream().findFirst().map(it -> it.id()));
        assertEquals(said.contains("pushes") ? 2 : 1, told().size(), answer);
        assertFalse(debrief.run().talked().answered().contains("besides"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"no, nobody can measure in a sim", "we couldn't take any readings", "nobody had a pyrometer"})
    @DisplayName("who says that nobody could measure has answered whether the tyres were read")
    void notRead(String said) {
        say("understeer at entry in slow corners");
        until(Field.TYRES);
        assertTrue(say(said).startsWith("Heard: not read."));
        assertEquals(1, told().size());
    }

    @Test
    @DisplayName("what is said besides which way a circuit goes is no complaint")
    void circuitBesides() {
        say("understeer at entry in slow corners");
        say("fl 96 91 84, fr 88 86 83, rl 92 93 90, rr 94 95 91");
        for (int i = 0; i < 8 && talk.question().isPresent() && asked() != Field.CIRCUIT; i++) {
            say(asked() == Field.SIMULATOR ? "car" : "unknown");
        }
        if (talk.question().isPresent()) {
            String answer = say("mostly rights, the car is set up the same on both sides");
            assertEquals("right", debrief.run().conditions().turns().id(), answer);
            assertFalse(answer.contains("did you mean"), answer);
        }
        assertEquals(1, told().size());
    }

    @Test
    @DisplayName("that there is nothing more to say does not say that the treads show nothing")
    void nothingMore() {
        say("understeer at entry in slow corners");
        until(Field.LOOK);
        assertTrue(say("nothing more").startsWith("That stays open."));
    }

    @Test
    @DisplayName("what is written down is what was asked, said and heard")
    void written() {
        say("it is loose in the fast left");
        say("no, understeer");
        until(Field.SIMULATOR);
        say("in some laps");
        List<Talk.Written> written = talk.written(Audience.CLUB);
        assertEquals(new Talk.Written("Told otherwise (oversteer in fast corners)", "no, understeer", "understeer"),
                written.get(1));
        assertTrue(written.stream().noneMatch(it -> it.question().contains("simulator")), written.toString());
    }

    @ParameterizedTest
    @CsvSource({"a real car, true", "a simulator, false"})
    @DisplayName("nobody is told to shake the wheels of a car in a simulator")
    void noStandsInASimulator(String said, boolean shaken) {
        say("it wanders on the straight");
        say(said);
        assertEquals(shaken, debrief.advice().cautions().stream().anyMatch(note -> note.name().equals("look-for-play")));
    }

    @Test
    @DisplayName("a newcomer who asks why the tyres are asked for is told it in plain words")
    void plainReadings() {
        talk = new Talk(debrief, () -> LISTENER, () -> PADDOCK.notes, Audience.NEWCOMER, () -> new Page(width, false));
        talk.ask();
        say("understeer at entry in slow corners");
        until(Field.TYRES);
        String why = say("why").replaceAll("\\s+", " ");
        assertTrue(why.contains("front tyres hottest at the edge that faces the car"), why);
        assertFalse(why.contains("edge hot"), why);
    }
}
