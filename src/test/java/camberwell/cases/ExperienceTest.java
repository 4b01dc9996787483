package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.advice.Advice;
import camberwell.advice.Learned;
import camberwell.advice.RankedChange;
import camberwell.advice.Withheld;
import camberwell.learning.Belief;
import camberwell.run.Case;
import camberwell.run.Tried;
import camberwell.units.Quantity;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@Label("What came of a change is remembered")
class ExperienceTest {

    private static final String CASE = "pushes-in-snaps-out";

    private static Case run() {
        return Paddock.run(CASE);
    }

    private static Change first(Case run) {
        return Paddock.advise(run).changes().get(0).change();
    }

    private static Case with(Case run, Tried... tried) {
        List<Tried> all = new ArrayList<>(run.tried());
        all.addAll(List.of(tried));
        return run.withTried(all);
    }

    private static Optional<RankedChange> ranked(Advice advice, Change change) {
        return advice.changes().stream().filter(it -> it.change().equals(change)).findFirst();
    }

    private static Optional<Withheld> withheld(Advice advice, Change change) {
        return advice.withheld().stream().filter(it -> it.change().equals(change)).findFirst();
    }

    private static Tried on(Change change, Outcome outcome, Symptom symptom, Phase phase) {
        return new Tried(change, Tried.Moved.UNNOTED, outcome, new Tried.On(Optional.of(symptom), Optional.empty(),
                Optional.of(phase), Optional.empty()), Tried.Trial.UNNOTED);
    }

    @Test
    @DisplayName("what did nothing is not proposed again, and the advice says why and moves to the next lever")
    void noEffect() {
        Advice before = Paddock.advise(run());
        Change useless = before.changes().get(0).change();
        Advice after = Paddock.advise(with(run(), Tried.of(useless, Outcome.SAME)));
        assertTrue(ranked(after, useless).isEmpty());
        assertEquals("tried before: no effect; put it back, unless something else needs it",
                withheld(after, useless).orElseThrow().reason());
        assertEquals(before.changes().get(1).change(), after.changes().get(0).change());
        Learned learned = after.experience().of(useless).orElseThrow();
        assertEquals(before.changes().get(0).score().certainty(), learned.before());
        assertEquals(new Belief(learned.before(), 0, 1, 4).certainty(), learned.after(), 1e-9);
    }

    /** A wing does little in a slow corner, so no rule is for it there; it was tried all the same. */
    @Test
    @DisplayName("what no rule is for and did nothing is told to be put back too, as long as it is on; once it is off, nothing")
    void leftOn() {
        String push = PanelCase.told("understeer, phase: mid-corner, speed: slow") + "tried:\n"
                + "  - {change: front-wing more, from: %s, to: %s, outcome: same}\n";
        Change wing = Change.parse("front-wing more").orElseThrow();
        Advice on = PanelCase.advise("tessel-single-seater", "setup: {front-wing: 14 deg}\n" + push.formatted("13 deg",
                "14 deg"));
        assertEquals("tried before: no effect; put it back, unless something else needs it",
                withheld(on, wing).orElseThrow().reason());
        assertTrue(withheld(PanelCase.advise("tessel-single-seater", "setup: {front-wing: 13 deg}\n" + push.formatted(
                "13 deg", "14 deg")), wing)
                .isEmpty());
    }

    @Test
    @DisplayName("what helped goes on, more certain than before")
    void better() {
        Advice before = Paddock.advise(run());
        Change useful = before.changes().get(0).change();
        Advice after = Paddock.advise(with(run(), Tried.of(useful, Outcome.BETTER)));
        assertEquals(useful, after.changes().get(0).change());
        assertEquals(new Belief(before.changes().get(0).score().certainty(), 1, 0, 4).certainty(),
                after.changes().get(0).score().certainty(), 1e-9);
        assertTrue(after.changes().get(0).score().total() > before.changes().get(0).score().total());
    }

    // More brake in front may lock the fronts: of a driver who cannot tell whether they do one takes neither word for it.
    @Test
    @DisplayName("a harm of which nobody could tell is weighed: less certain, half as far, and looked for first")
    void unclearHarm() {
        Change forward = Change.parse("brake-bias forward").orElseThrow();
        Tried better = on(forward, Outcome.BETTER, Symptom.REAR_LOCKING, Phase.BRAKING);
        Case run = Paddock.run("rear-locks-into-the-hairpin");
        RankedChange sure = ranked(Paddock.advise(with(run, better)), forward).orElseThrow();
        RankedChange unsure = ranked(Paddock.advise(with(run, better, on(forward, Outcome.UNCLEAR, Symptom.FRONT_LOCKING,
                Phase.BRAKING))), forward).orElseThrow();
        assertTrue(unsure.score().certainty() < sure.score().certainty());
        assertEquals(sure.size().steps() / 2, unsure.size().steps());
        assertTrue(unsure.size().computation().contains("1 step: nobody could tell whether front locking under braking came of "
                + "it: half as far, and look for that first"), unsure.size().computation().toString());
    }

    @Test
    @DisplayName("what nobody could tell of what the change does not harm weighs nothing")
    void unclearGood() {
        Change forward = Change.parse("brake-bias forward").orElseThrow();
        Tried better = on(forward, Outcome.BETTER, Symptom.REAR_LOCKING, Phase.BRAKING);
        Case run = Paddock.run("rear-locks-into-the-hairpin");
        assertEquals(ranked(Paddock.advise(with(run, better)), forward).orElseThrow().score(), ranked(Paddock.advise(with(run,
                better, on(forward, Outcome.UNCLEAR, Symptom.UNSTABLE_BRAKING, Phase.BRAKING))), forward).orElseThrow().score());
    }

    @Test
    @DisplayName("what made it worse is put back first, by as many steps, and not proposed again")
    void worse() {
        Case run = run();
        RankedChange harmful = Paddock.advise(run).changes().get(0);
        Quantity old = harmful.size().from().orElseThrow();
        Case driven = run.withSetup(Map.of(harmful.change().adjuster(), harmful.size().to().orElseThrow()));
        Tried.Moved steps = new Tried.Moved(Optional.of(harmful.size().steps()), Optional.empty(), Optional.empty(),
                false);
        Advice after = Paddock.advise(with(driven, new Tried(harmful.change(), steps, Outcome.WORSE, Tried.On.ALL,
                Tried.Trial.UNNOTED)));
        RankedChange undo = after.changes().get(0);
        assertEquals(harmful.change().opposite(), undo.change());
        assertEquals(old, undo.size().to().orElseThrow());
        assertEquals(1, undo.rank());
        assertEquals(List.of(Learned.RULE), undo.rules());
        assertEquals(0.889, undo.score().certainty(), 5e-4);
        assertTrue(after.experience().of(undo.change()).orElseThrow().undo());
        assertTrue(withheld(after, harmful.change()).orElseThrow().reason().startsWith("tried before: it got worse"));
        for (int i = 0; i < after.changes().size(); i++) {
            assertEquals(i + 1, after.changes().get(i).rank());
        }
    }

    @Test
    @DisplayName("the exact old value is restored where it was noted, whatever the steps")
    void exactOldValue() {
        Case run = run();
        RankedChange harmful = Paddock.advise(run).changes().get(0);
        Quantity now = run.car().setting(harmful.change().adjuster()).orElseThrow().now();
        Quantity old = now.withValue(now.value() - 0.07);
        Tried tried = new Tried(harmful.change(), new Tried.Moved(Optional.empty(), Optional.of(old), Optional.of(now),
                false), Outcome.WORSE, Tried.On.ALL, Tried.Trial.UNNOTED);
        assertEquals(old, Paddock.advise(with(run, tried)).changes().get(0).size().to().orElseThrow());
    }

    @Test
    @DisplayName("what was put back already is not put back twice, and the way back is no discovery")
    void putBack() {
        Change harmful = first(run());
        Tried.Moved putBack = new Tried.Moved(Optional.empty(), Optional.empty(), Optional.empty(), true);
        Advice said = Paddock.advise(with(run(), new Tried(harmful, putBack, Outcome.WORSE, Tried.On.ALL,
                Tried.Trial.UNNOTED)));
        Advice driven = Paddock.advise(with(run(), Tried.of(harmful, Outcome.WORSE),
                Tried.of(harmful.opposite(), Outcome.BETTER)));
        for (Advice advice : List.of(said, driven)) {
            assertTrue(ranked(advice, harmful.opposite()).isEmpty());
            assertTrue(withheld(advice, harmful).isPresent());
            assertEquals(Paddock.advise(run()).changes().get(1).change(), advice.changes().get(0).change());
        }
    }

    @Test
    @DisplayName("an outcome for one complaint says nothing of another")
    void otherComplaint() {
        Change rearToe = first(run());
        Advice advice = Paddock.advise(with(run(), on(rearToe, Outcome.SAME, Symptom.UNDERSTEER, Phase.ENTRY)));
        assertEquals(rearToe, advice.changes().get(0).change());
        Learned learned = advice.experience().of(rearToe).orElseThrow();
        assertEquals(0, learned.evidence());
        assertEquals(learned.before(), learned.after());
        Advice same = Paddock.advise(with(run(), on(rearToe, Outcome.SAME, Symptom.SNAP_OVERSTEER, Phase.EXIT)));
        assertTrue(ranked(same, rearToe).isEmpty());
    }

    @Test
    @DisplayName("one trial judged for two complaints counts once")
    void twoComplaintsOneTrial() {
        Change change = first(run());
        Tried[] both = {on(change, Outcome.WORSE, Symptom.UNDERSTEER, Phase.ENTRY),
            on(change, Outcome.WORSE, Symptom.SNAP_OVERSTEER, Phase.EXIT)};
        assertEquals(Paddock.advise(with(run(), Tried.of(change, Outcome.WORSE))).experience().of(change).orElseThrow()
                .after(), Paddock.advise(with(run(), both)).experience().of(change).orElseThrow().after(), 1e-9);
    }

    @Test
    @DisplayName("what helped one complaint and brought another is neither taken further nor put back")
    void mixed() {
        Change change = first(run());
        Advice advice = Paddock.advise(with(run(), on(change, Outcome.BETTER, Symptom.SNAP_OVERSTEER, Phase.EXIT),
                on(change, Outcome.WORSE, Symptom.UNDERSTEER, Phase.ENTRY)));
        assertTrue(ranked(advice, change).isEmpty());
        assertTrue(ranked(advice, change.opposite()).isEmpty());
        assertTrue(withheld(advice, change).orElseThrow().reason().startsWith(
                "tried before: it helped, snap oversteer at exit; it got worse, understeer at entry"));
    }

    @Test
    @DisplayName("what could not be told, or happened on a wet track or long ago, does not stand in the way")
    void notBinding() {
        Change change = first(run());
        Tried.Trial wet = new Tried.Trial(Optional.empty(), Optional.empty(), Optional.empty(), 1, Optional.empty(),
                Optional.of(Surface.WET), false);
        Tried.Trial longAgo = new Tried.Trial(Optional.empty(), Optional.of(30), Optional.empty(), 1, Optional.empty(),
                Optional.empty(), false);
        for (Tried.Trial trial : List.of(wet, longAgo)) {
            Advice advice = Paddock.advise(with(run(), new Tried(change, Tried.Moved.UNNOTED, Outcome.SAME,
                    Tried.On.ALL, trial)));
            assertTrue(ranked(advice, change).isPresent(), trial.toString());
            assertTrue(advice.experience().of(change).orElseThrow().evidence() < 0);
        }
        assertEquals(0, Paddock.advise(with(run(), Tried.of(change, Outcome.UNCLEAR))).experience().of(change)
                .orElseThrow().evidence());
    }

    @Test
    @DisplayName("when nothing ever helps, every lever is tried once, then once more, and then the car is left as it is")
    void nothingHelps() {
        for (String name : List.of(CASE, "ploughs-through-hairpins", "it-just-slides", "pushes-fast-and-slow")) {
            Case run = Paddock.run(name);
            Set<Change> once = new HashSet<>();
            Set<Change> again = new HashSet<>();
            List<RankedChange> left = Paddock.advise(run).changes();
            while (!left.isEmpty()) {
                Change change = left.get(0).change();
                if (once.add(change)) {
                    assertEquals(Set.of(), again, name + ": " + change + " comes before anything comes again");
                } else {
                    assertTrue(again.add(change), name + ": for the third time " + change);
                }
                run = with(run, Tried.of(change, Outcome.SAME));
                left = Paddock.advise(run).changes();
            }
            assertNotEquals(0, once.size());
        }
    }

    @Test
    @DisplayName("a lever that helped, then twice no longer, goes on and then stops")
    void helpsAndThenNot() {
        Change change = first(run());
        Case helped = with(run(), Tried.of(change, Outcome.BETTER), Tried.of(change, Outcome.BETTER));
        assertEquals(change, first(helped));
        Case once = with(helped, Tried.of(change, Outcome.SAME));
        assertTrue(ranked(Paddock.advise(once), change).isPresent());
        Advice stopped = Paddock.advise(with(once, Tried.of(change, Outcome.SAME)));
        assertTrue(withheld(stopped, change).orElseThrow().reason().startsWith(
                "tried before: no effect; helped 2 of 4 times"));
    }

    @Property(tries = 60)
    @Label("whatever was tried, nothing that failed twice running is advised, nothing that failed just now while anything else "
            + "is left, and no adjuster twice")
    void anyTrials(@ForAll long seed) {
        Random random = new Random(seed);
        List<String> names = List.copyOf(Paddock.cases().keySet());
        Case run = Paddock.run(names.get(random.nextInt(names.size())));
        List<Change> possible = Change.all().stream()
                .filter(change -> run.car().setting(change.adjuster()).isPresent()).toList();
        List<Tried> tried = new ArrayList<>();
        for (int i = random.nextInt(8); i >= 0 && !possible.isEmpty(); i--) {
            tried.add(Tried.of(possible.get(random.nextInt(possible.size())),
                    Outcome.values()[random.nextInt(Outcome.values().length)]));
        }
        Advice advice = Paddock.advise(run.withTried(tried));
        Set<Object> adjusters = new HashSet<>();
        advice.changes().forEach(change -> assertTrue(adjusters.add(change.change().adjuster())));
        for (RankedChange change : advice.changes()) {
            Optional<Learned> learned = advice.experience().of(change.change());
            if (learned.isPresent() && !learned.get().undo() && learned.get().of().equals(change.change())) {
                List<Outcome> outcomes = tried.stream().filter(trial -> trial.change().equals(change.change()))
                        .map(Tried::outcome).filter(outcome -> outcome != Outcome.UNCLEAR).toList();
                int count = outcomes.size();
                boolean twiceInVain = count > 1 && outcomes.get(count - 1) == Outcome.SAME
                        && outcomes.get(count - 2) != Outcome.BETTER;
                assertFalse(twiceInVain && learned.get().evidence() < 0, change.toString());
                assertFalse(count == 1 && outcomes.get(0) == Outcome.SAME
                        && tried.get(tried.size() - 1).change().equals(change.change())
                        && learned.get().evidence() < 0 && advice.changes().size() > 1, change.toString());
                assertFalse(learned.get().outcome() == Outcome.WORSE, change.toString());
            }
        }
    }
}
