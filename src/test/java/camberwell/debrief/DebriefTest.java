package camberwell.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.advice.Advice;
import camberwell.input.CaseReader;
import camberwell.input.CaseWriter;
import camberwell.run.Case;
import camberwell.run.Report;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DebriefTest {

    private static final int MOST_QUESTIONS = 6;
    /** The median of a handful of cases tells nothing. */
    private static final int ENOUGH_CASES = 20;
    /** What is asked whatever hangs on it: what the car did, whether that was all, and what nobody can try. */
    private static final Set<Field> ALWAYS = Set.of(Field.DOING, Field.ELSE, Field.SIMULATOR, Field.DOUBT);
    private static final Paddock PADDOCK = new Paddock();
    private static final Path CASE = Path.of("demo-cases/pushes-in-snaps-out.yaml");

    /** What became of one debrief. */
    private record Played(List<Question> asked, Outcome outcome) {
    }

    private final Map<Case, Played> played = new HashMap<>();
    private final Map<Case, Played> playedMainFirst = new HashMap<>();

    private Played played(Case truth) {
        return played.computeIfAbsent(truth, it -> play(it, false));
    }

    private static Played play(Case truth, boolean mainOnly) {
        Paddock.Truthful driver = new Paddock.Truthful(truth, mainOnly);
        List<Question> asked = new ArrayList<>();
        try (Debrief debrief = PADDOCK.debrief(Paddock.untold(truth))) {
            for (Optional<Question> next = debrief.next(); next.isPresent(); next = debrief.next()) {
                asked.add(next.get());
                debrief.answer(next.get().topic(), driver.to(next.get().topic()));
            }
            return new Played(asked, Outcome.of(debrief.advice()));
        }
    }

    @Test
    @DisplayName("a driver who answers truthfully is told the same first as by the whole case in 98 of 100, in a median of at "
            + "most six questions")
    void reachesTheSame() throws IOException {
        reaches(Paddock.demoCases().stream().collect(Collectors.toMap(truth -> truth, this::played,
                (one, other) -> one, LinkedHashMap::new)));
    }

    @Test
    @DisplayName("and so is one who tells of the main complaint only, until it is asked what else there was")
    void reachesTheSameWhenAskedForMore() throws IOException {
        reaches(Paddock.demoCases().stream().collect(Collectors.toMap(truth -> truth,
                truth -> truth.reports().stream().map(Report::symptom).distinct().count() < 2 ? played(truth)
                        : playedMainFirst.computeIfAbsent(truth, it -> play(it, true)), (one, other) -> one,
                LinkedHashMap::new)));
    }

    private static void reaches(Map<Case, Played> all) {
        List<Integer> counts = new ArrayList<>();
        List<String> missed = new ArrayList<>();
        all.forEach((truth, played) -> {
            counts.add(played.asked().size());
            Advice advice = PADDOCK.advisor.advise(truth);
            Outcome.First whole = Outcome.of(advice).told();
            // Where the car is to be looked at before anything else, that is told without a reading of the tyres.
            boolean stopped = advice.halt().isPresent() && played.outcome().first().isEmpty();
            if (!played.outcome().told().equals(whole) && !stopped) {
                missed.add(truth.title() + ": " + played.outcome().told() + ", not " + whole + " after "
                        + played.asked().stream().map(Question::topic).toList());
            }
        });
        counts.sort(null);
        String told = all.size() - missed.size() + " of " + all.size() + " told the same first, questions " + counts;
        assertTrue(missed.size() <= 0.02 * all.size(), told + "\n" + String.join("\n", missed));
        assertTrue(counts.size() < ENOUGH_CASES || counts.get(counts.size() / 2) <= MOST_QUESTIONS, told);
    }

    @Test
    @DisplayName("of drivers with one or two complaints made up at random, nineteen of twenty are told the same first "
            + "change as by the whole case, in a median of at most six questions")
    void reachesTheSameForOthers() {
        List<Case> cases = madeUp();
        List<Integer> counts = new ArrayList<>();
        List<String> missed = new ArrayList<>();
        for (Case truth : cases) {
            Played played = played(truth);
            counts.add(played.asked().size());
            if (!played.outcome().first().equals(Outcome.of(PADDOCK.advisor.advise(truth)).first())) {
                missed.add(truth.reports().toString());
            }
        }
        assertTrue(missed.size() * 20 <= cases.size(), "missed: " + missed);
        counts.sort(null);
        assertTrue(counts.get(counts.size() / 2) <= MOST_QUESTIONS, "questions asked: " + counts);
    }

    @Test
    @DisplayName("no question is asked whose every answer leaves the ranking as it is")
    void nothingIdle() throws IOException {
        List<Case> cases = new ArrayList<>(Paddock.demoCases());
        cases.addAll(madeUp());
        for (Case truth : cases) {
            for (Question question : played(truth).asked()) {
                assertTrue(ALWAYS.contains(question.topic().field()) || question.movesRanking()
                        || question.decides(), truth.title() + " " + truth.reports() + ": " + question.topic());
            }
        }
    }

    /** Complaints with every detail, on the car and with the tyres of a demo case; a fixed seed. */
    private static List<Case> madeUp() {
        Case demo = new CaseReader().read(CASE).run();
        Random random = new Random(7);
        return IntStream.range(0, 24).mapToObj(i -> demo.withReports(IntStream.rangeClosed(0, i % 4 / 3).mapToObj(j ->
                new Report(List.of(Symptom.UNDERSTEER, Symptom.OVERSTEER, Symptom.WHEELSPIN, Symptom.SLOW_TURN_IN,
                        Symptom.UNSTABLE_BRAKING, Symptom.SNAP_OVERSTEER).get(random.nextInt(3) + 3 * j),
                        Optional.empty(), Optional.of(one(random, Phase.BRAKING, Phase.ENTRY, Phase.MID_CORNER,
                        Phase.EXIT)), Optional.of(one(random, CornerSpeed.values())), one(random, Severity.values()),
                        one(random, Occurrence.EVERY_LAP, Occurrence.SOME_LAPS), Optional.of(one(random,
                        Since.values())), Optional.of(Turn.BOTH))).toList())).toList();
    }

    @SafeVarargs
    private static <W> W one(Random random, W... words) {
        return words[random.nextInt(words.length)];
    }

    @Test
    @DisplayName("the first thing asked is what the car was doing, and it may be several things")
    void opens() {
        try (Debrief debrief = PADDOCK.debrief(Paddock.untold(new CaseReader().read(CASE).run()))) {
            assertEquals(Field.DOING, debrief.next().orElseThrow().topic().field());
            say(debrief, Field.DOING, 0, Symptom.UNDERSTEER, Symptom.SNAP_OVERSTEER);
            assertEquals(2, debrief.run().reports().size());
        }
    }

    @Test
    @DisplayName("back takes the last answer back with all that followed from it")
    void back() {
        try (Debrief debrief = PADDOCK.debrief(Paddock.untold(new CaseReader().read(CASE).run()))) {
            assertFalse(debrief.back());
            say(debrief, Field.DOING, 0, Symptom.UNDERSTEER);
            Advice before = debrief.advice();
            Topic asked = debrief.next().orElseThrow().topic();
            say(debrief, Field.PHASE, 0, Phase.BRAKING);
            assertNotEquals(before.findings(), debrief.advice().findings());
            assertTrue(debrief.back());
            assertEquals(before, debrief.advice());
            assertEquals(asked, debrief.next().orElseThrow().topic());
        }
    }

    @Test
    @DisplayName("a change of phase keeps the severity; a change of the complaint itself withdraws its details")
    void change() {
        try (Debrief debrief = PADDOCK.debrief(Paddock.untold(new CaseReader().read(CASE).run()))) {
            say(debrief, Field.DOING, 0, Symptom.UNDERSTEER);
            say(debrief, Field.PHASE, 0, Phase.ENTRY);
            say(debrief, Field.SEVERITY, 0, Severity.STRONG);
            debrief.change(1, Answer.Said.of(Phase.MID_CORNER));
            assertEquals("strong understeer at mid-corner", debrief.run().reports().get(0).text());
            Question again = debrief.again(0);
            assertEquals(Field.DOING, again.topic().field());
            debrief.change(0, Answer.Said.of(Symptom.WHEELSPIN));
            assertEquals("wheelspin", debrief.run().reports().get(0).text());
            assertEquals(1, debrief.entries().size());
            assertEquals(PADDOCK.advisor.advise(debrief.run()), debrief.advice());
        }
    }

    @Test
    @DisplayName("a push on the way in and in the middle is two complaints, each with details of its own")
    void splits() {
        try (Debrief debrief = PADDOCK.debrief(Paddock.untold(new CaseReader().read(CASE).run()))) {
            say(debrief, Field.DOING, 0, Symptom.UNDERSTEER, Symptom.WHEELSPIN);
            say(debrief, Field.PHASE, 0, Phase.ENTRY, Phase.MID_CORNER);
            say(debrief, Field.SEVERITY, 1, Severity.SLIGHT);
            assertEquals(List.of("understeer at entry", "slight understeer at mid-corner",
                    "wheelspin"), debrief.run().reports().stream().map(Report::text).toList());
        }
    }

    @Test
    @DisplayName("a debrief that was broken off and goes on from its file asks what it would have asked")
    void resumes(@TempDir Path folder) {
        Case truth = new CaseReader().read(CASE).run();
        Paddock.Truthful driver = new Paddock.Truthful(truth);
        try (Debrief debrief = PADDOCK.debrief(Paddock.untold(truth))) {
            // One that a file keeps: a complaint that is clear, or comes every lap, is what a file says of itself.
            Topic first = debrief.next().orElseThrow().topic();
            debrief.answer(first, driver.to(first));
            Path file = folder.resolve("case.yaml");
            new CaseWriter().write(debrief.run(), file);
            Case saved = new CaseReader().read(file).run();
            try (Debrief resumed = PADDOCK.debrief(saved)) {
                assertEquals(debrief.next().map(Question::topic), resumed.next().map(Question::topic));
                assertEquals(debrief.advice().changes(), resumed.advice().changes());
            }
        }
    }

    private static void say(Debrief debrief, Field field, int complaint, Word... words) {
        debrief.answer(new Topic(field, complaint), Answer.Said.each(List.of(words)));
    }
}
