package camberwell.saying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.problem.ProblemsException;
import camberwell.saying.Corpus.Verdict;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("What drivers say, and what is understood of it")
class SayingsTest {

    private static final Listener LISTENER = Corpus.listener();

    private static Heard hear(String said) {
        return LISTENER.hear(said);
    }

    /** At least nine in ten understood, at most one in a hundred misread, and nothing swallowed. */
    @ParameterizedTest
    @ValueSource(strings = {"known.txt", "set-aside.txt", "other-voices.txt", "voices.txt", "voices-set-aside.txt",
        "second-voices.txt", "third-voices.txt", "fourth-voices.txt", "fifth-voices.txt", "sixth-voices.txt",
                "seventh-voices.txt", "eighth-voices.txt",
        "ninth-voices.txt", "tenth-voices.txt", "eleventh-voices.txt", "twelfth-voices.txt", "thirteenth-voices.txt"})
    @DisplayName("the sayings of a corpus are understood, or refused aloud")
    void corpus(String name) {
        List<Corpus.Entry> entries = Corpus.read(name);
        List<String> failures = new ArrayList<>();
        Map<Verdict, Integer> counts = Corpus.counts(entries, LISTENER, failures);
        String all = counts + "\n" + String.join("\n", failures);
        assertTrue(counts.get(Verdict.UNDERSTOOD) >= 0.9 * entries.size(), all);
        assertTrue(counts.get(Verdict.MISREAD) <= 0.01 * entries.size(), all);
        assertTrue(counts.get(Verdict.SWALLOWED) <= 0.01 * entries.size(), all);
    }

    /**
     * Sets that keep the meaning that was written before they were measured, also where people differ on it: that something
     * is called bad, or that it is over a crest. At least nine in ten understood, at most three in a hundred misread.
     */
    @ParameterizedTest
    @ValueSource(strings = {"paddock-d.txt", "paddock-e.txt", "paddock-f.txt", "paddock-g.txt", "paddock-h.txt",
        "paddock-i.txt", "paddock-j.txt", "paddock-k.txt"})
    @DisplayName("paddock talk is understood, or refused aloud")
    void paddock(String name) {
        List<Corpus.Entry> entries = Corpus.read(name);
        List<String> failures = new ArrayList<>();
        Map<Verdict, Integer> counts = Corpus.counts(entries, LISTENER, failures);
        String all = counts + "\n" + String.join("\n", failures);
        assertTrue(counts.get(Verdict.UNDERSTOOD) >= 0.9 * entries.size(), all);
        assertTrue(counts.get(Verdict.MISREAD) <= 0.03 * entries.size(), all);
        assertTrue(counts.get(Verdict.SWALLOWED) <= 0.03 * entries.size(), all);
    }

    /**
     * Sets by somebody who has never seen the program, in voices of his own, who counts each detail, the kind of corner and how
     * bad it is among them: at least nine in ten understood, at most five in a hundred misread, and those in a detail or for a
     * reason.
     */
    @ParameterizedTest
    @ValueSource(strings = {"paddock-l.txt", "paddock-m.txt", "paddock-n.txt"})
    @DisplayName("strangers are understood, or refused aloud")
    void strangers(String name) {
        List<Corpus.Entry> entries = Corpus.read(name);
        List<String> failures = new ArrayList<>();
        Map<Verdict, Integer> counts = Corpus.counts(entries, LISTENER, failures);
        String all = counts + "\n" + String.join("\n", failures);
        assertTrue(counts.get(Verdict.UNDERSTOOD) >= 0.9 * entries.size(), all);
        assertTrue(counts.get(Verdict.MISREAD) <= 0.05 * entries.size(), all);
        assertTrue(counts.get(Verdict.SWALLOWED) <= 0.03 * entries.size(), all);
    }

    /**
     * Sets that nothing is learned from: a stranger's at its first hearing, as DEVELOPERS.md has it. It may only get better, but
     * for the two or three that any other lesson moves.
     */
    @ParameterizedTest
    @CsvSource({"paddock-o.txt, 67, 3", "paddock-p.txt, 110, 2", "paddock-q.txt, 96, 2", "paddock-r.txt, 97, 1",
        "paddock-s.txt, 86, 1", "paddock-t.txt, 83, 4", "paddock-u.txt, 105, 3", "paddock-v.txt, 97, 3", "paddock-w.txt, 92, 5",
        "paddock-x.txt, 71, 3", "paddock-y.txt, 105, 4", "paddock-z.txt, 99, 3", "paddock-aa.txt, 94, 3",
        "paddock-ab.txt, 71, 4", "paddock-ac.txt, 96, 5", "paddock-ad.txt, 96, 3"})
    @DisplayName("a stranger's set that was measured and not learned from is understood no worse than then")
    void notLearned(String name, int understood, int misread) {
        List<Corpus.Entry> entries = Corpus.read(name);
        List<String> failures = new ArrayList<>();
        Map<Verdict, Integer> counts = Corpus.counts(entries, LISTENER, failures);
        String all = counts + "\n" + String.join("\n", failures);
        assertTrue(counts.get(Verdict.UNDERSTOOD) >= understood - 3, all);
        assertTrue(counts.get(Verdict.MISREAD) <= misread + 2, all);
    }

    @ParameterizedTest
    @ValueSource(strings = {"I have a problem with it, otherwise it is fine", "the brakes are fine, my complaint is another one"})
    @DisplayName("all is not well where a problem is named")
    void troubled(String said) {
        assertEquals(false, hear(said).fine());
        assertTrue(!hear(said).refused().isEmpty());
        assertTrue(hear("no problem at all, it is fine").fine());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "it pushes into the hairpin | understeer at entry in slow corners at a hairpin",
        "the back goes light over the crest | oversteer at a crest",
        "the floor hits the road in the compression | bottoming at a dip",
        "pulls to the left under braking | pulling under braking to the left"})
    @DisplayName("a kind of corner is one of its own words, and a pull has a side")
    void corners(String said, String heard) {
        assertEquals(heard, hear(said).text());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "the tail slides after eight or nine laps | oversteer, late in the run",
        "it takes like 3 laps to get tires into the window | slow warm-up",
        "pushin' on the way in | understeer at entry",
        "it slams down so hard my helmet hits the bar | strong bottoming",
        "the middle of the rear tyres is worn right down | hot middle at the rear",
        "a car ahead of me dropped oil and I went straight off | ''"})
    @DisplayName("numbers, letters left out, what comes of it and what came before are no part of the complaint")
    void besides(String said, String heard) {
        assertEquals(heard, hear(said).text());
    }

    @Test
    @DisplayName("one everyday word beside what nobody knows, and both ends at once, are asked about")
    void thin() {
        Listener alone = new Listener(Sayings.read(Corpus.texts()), Optional.empty());
        assertEquals(List.of("oversteer at exit"),
                alone.hear("memorised oversteer on exit").unclear().stream().map(Heard.Unclear::text).toList());
        assertEquals(List.of(), hear("explain oversteer").told());
        assertEquals(List.of("oversteer or understeer"), hear("in practice it was loose, in the race it was tight").unclear()
                .stream()
                .map(Heard.Unclear::text).toList());
        assertEquals("understeer; snap oversteer", hear("first it pushes, then it snaps").text());
        assertEquals("understeer at entry; oversteer at exit", hear("it pushes on entry, loose on exit").text());
    }

    @Test
    @DisplayName("there are 300 of them, and every complaint of the vocabulary that the ear is taught is among them")
    void corpusIsWide() {
        List<Corpus.Entry> entries = new ArrayList<>(Corpus.read("known.txt"));
        entries.addAll(Corpus.read("set-aside.txt"));
        assertTrue(entries.size() >= 300, entries.size() + " sayings");
        Set<Symptom> complaints = new TreeSet<>(List.of(Symptom.values()));
        complaints.remove(Symptom.MECHANICAL_FAULT);
        for (Symptom symptom : complaints) {
            assertTrue(entries.stream().flatMap(entry -> entry.complaints().stream())
                    .anyMatch(words -> words.contains(symptom.id())), symptom.id());
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "it pushes on the way in and snaps on the way out | understeer at entry; snap oversteer at exit",
        "pushes on entry and exit | understeer at entry; understeer at exit",
        "it pushes, but not in the fast ones | understeer, not in fast corners",
        "in the slow corners it pushes on entry and spins its wheels on exit | understeer at entry in slow corners; "
                + "wheelspin at exit in slow corners",
        "under braking the front locks and the rear moves around | front locking under braking; unstable braking under braking",
        "fine at first, then it pushes | understeer, late in the run",
        "the left handers are fine, but in the right handers it pushes | understeer in right turns",
        "no understeer on entry, only on exit | understeer at exit",
        "the rear sometimes steps out when I lift mid-corner | oversteer at lift-off, on some laps",
        "no rear grip in the wet | oversteer; wet track"})
    @DisplayName("where, when, how bad and how often go to the complaint that they were said of")
    void attachment(String said, String heard) {
        assertEquals(heard, hear(said).text());
        assertEquals(List.of(), hear(said).refused());
    }

    @ParameterizedTest
    @ValueSource(strings = {"pushes on the way in\nsnaps on the way out", "pushes on the way in\r\n\r\nsnaps on the way out\n",
        "\npushes on the way in.\nsnaps on the way out"})
    @DisplayName("the end of a line ends a sentence, as a full stop does")
    void lines(String said) {
        assertEquals("understeer at entry; snap oversteer at exit", hear(said).text());
    }

    @ParameterizedTest
    @ValueSource(strings = {"it slides", "it locks up", "no grip"})
    @DisplayName("what may be either end of the car is not guessed, and the choice is named")
    void unclear(String said) {
        Heard heard = hear(said);
        assertEquals(List.of(), heard.told());
        assertEquals(1, heard.unclear().size());
        assertEquals(2, heard.unclear().get(0).mayBe().size(), heard.unclear().toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"the car in front pushes", "I was pushing hard", "pushing the button does nothing",
        "we softened the front bar", "my team mate says his car is loose", "I thought it would understeer",
        "my phone slides off the dash"})
    @DisplayName("what is not about this car, or only thought, is refused aloud")
    void notAboutTheCar(String said) {
        assertEquals(List.of(), hear(said).told());
        assertTrue(!hear(said).refused().isEmpty());
    }

    @Test
    @DisplayName("a German verb in two halves is one, and a class of words stands for each of its words")
    void halvesAndClasses() {
        assertEquals("oversteer at mid-corner", hear("das Heck bricht in der Kurve aus").text());
        assertEquals("slow turn-in", hear("das Auto lenkt tr\u00e4ge ein").text());
        assertEquals("slight understeer", hear("I'd love a bit more grip at the front end").text());
        assertEquals("oversteer", hear("kaum Haftung an der Hinterachse").text());
        Map<String, String> texts = Corpus.texts();
        texts.put("mine/sayings.yaml", "words:\n  barge: barge, tanker\ncomplaints:\n  understeer: goes like {barge}, {ship}\n");
        ProblemsException wrong = assertThrows(ProblemsException.class, () -> Sayings.read(texts));
        assertTrue(wrong.problems().get(0).text().contains("\"ship\" is no class of words"), wrong.problems().toString());
    }

    @Test
    @DisplayName("what turns the meaning is read: a double no, an exception, a dash, what became of what")
    void turns() {
        assertEquals("front locking under braking", hear("I can't brake without locking the fronts").text());
        assertEquals("unstable braking under braking", hear("planted everywhere except under braking, where the tail wags")
                .text());
        assertEquals("oversteer", hear("the understeer turned into oversteer").text());
        assertEquals("rear locking", hear("never the fronts lock, always the rears").text().replace(", on every lap", ""));
        assertEquals(false, hear("no problems except in the last corner").fine());
        assertEquals("", hear("tell me about understeer").text());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "how do I stop it pushing on entry? | understeer at entry",
        "what would make it less loose on the exit? | oversteer at exit",
        "I wish it didn't snap on the power | snap oversteer at exit",
        "is it normal that it pulls on the brakes? | pulling under braking",
        "any idea what makes the front lock? | front locking"})
    @DisplayName("a question or a wish against something takes it for granted")
    void granted(String said, String heard) {
        assertEquals(heard, hear(said).text());
    }

    @ParameterizedTest
    @ValueSource(strings = {"would more wing help?", "should I brake later?", "what does oversteer mean?",
            "will it push with more wing?"})
    @DisplayName("a question that only asks tells nothing, and that is said")
    void asked(String said) {
        assertEquals(List.of(), hear(said).told());
        assertEquals(1, hear(said).refused().size());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "right at the apex it pushes | understeer at mid-corner",
        "hardly any understeer left, but the rear locks | rear locking",
        "I loose the rear on exit | oversteer at exit",
        "on the breaks the front locks | front locking under braking",
        "to tight in the middle | understeer at mid-corner"})
    @DisplayName("a word that is two, or is written for another, is told by those beside it")
    void homographs(String said, String heard) {
        assertEquals(heard, hear(said).text());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "when I lift slightly the rear steps out | oversteer at lift-off",
        "I gave it a bit more throttle and the rear stepped out | oversteer at exit",
        "we went half a second quicker, but the front doesn't stick on turn in | understeer at entry",
        "the front locks and we miss the apex | front locking"})
    @DisplayName("how hard, how much and what came of it for the driver say nothing of the complaint")
    void ofTheDriver(String said, String heard) {
        assertEquals(heard, hear(said).text());
    }

    @Test
    @DisplayName("a word is never matched inside another, nor by its beginning")
    void wholeWords() {
        assertEquals(Optional.of(Phase.BRAKING), hear("oversteer under braking").told().get(0).word(Phase.class));
        assertEquals(1, hear("oversteer under braking").told().size());
        assertEquals(1, hear("overheating rear").told().size());
        assertEquals(Symptom.HEAVY_STEERING, hear("heavy wheel").told().get(0).symptom());
        assertEquals(List.of(), hear("over un sno").told());
    }

    @Test
    @DisplayName("a slip is mended in a whole word, and not where two words are as near")
    void slips() {
        assertEquals("understeer at mid-corner", hear("undersetering mid coner").text());
        assertEquals(List.of(), hear("its bight").told());
    }

    @Test
    @DisplayName("nothing wrong is an answer; the day is one too, and details without a complaint are kept")
    void noComplaint() {
        assertTrue(hear("nothing, it was fine").fine());
        assertEquals(Optional.of(Surface.WET), hear("it was raining").surface());
        assertEquals(List.of(Phase.EXIT), hear("on the way out").loose());
        assertEquals(List.of(), hear("").refused());
    }

    @Test
    @DisplayName("a phase in which nobody can mean it is taken back, with the reason")
    void senseless() {
        Heard heard = hear("the fronts lock on the power");
        assertEquals("front locking", heard.text());
        assertTrue(heard.notUnderstood().get(0).contains("off the brakes no wheel locks"), heard.toString());
    }

    @Test
    @DisplayName("a pack adds phrases; what is wrong with them is named")
    void packs() {
        Map<String, String> texts = Corpus.texts();
        texts.put("mine/sayings.yaml", "complaints:\n  understeer mid-corner: goes like a barge\n");
        Listener listener = new Listener(Sayings.read(texts));
        assertEquals("understeer at mid-corner", listener.hear("it goes like a barge").text());
        texts.put("mine/sayings.yaml", "complaints:\n  undersreer: goes like a barge\n");
        ProblemsException wrong = assertThrows(ProblemsException.class, () -> Sayings.read(texts));
        assertTrue(wrong.problems().get(0).text()
                .startsWith("mine/sayings.yaml:2:3: \"undersreer\" is no symptom; did you mean \"understeer\"?"),
                wrong.problems().get(0).text());
        texts.put("mine/sayings.yaml", "complaints: [a\n");
        assertThrows(ProblemsException.class, () -> Sayings.read(texts));
    }

    @Test
    @DisplayName("every phrase that is said whole means what the file says")
    void everyPhrase() {
        List<String> wrong = new ArrayList<>();
        Corpus.complaints().forEach((phrase, symptom) -> {
            Set<Symptom> heard = new java.util.HashSet<>();
            hear(phrase).told().forEach(told -> heard.add(told.symptom()));
            if (!heard.equals(Set.of(symptom))) {
                wrong.add(phrase + ": " + hear(phrase).text() + " " + hear(phrase).refused());
            }
        });
        assertEquals(List.of(), wrong);
    }
}
