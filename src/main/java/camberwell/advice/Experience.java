package camberwell.advice;

import camberwell.car.Car;
import camberwell.car.Ordinary;
import camberwell.fact.Certainty;
import camberwell.fact.Proposal;
import camberwell.learning.Belief;
import camberwell.learning.Trials;
import camberwell.run.Tried;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * What came of earlier changes, as it bears on a case: one more witness for or against a change, and a reason not to
 * try again what did nothing. Without trials it says nothing.
 */
public final class Experience {

    /** The experience of a case on which nothing was tried. */
    public static final Experience NONE = new Experience(Map.of(), Map.of(), Map.of());
    /** A change that did nothing for this share of what it is for is let go. */
    private static final double MOST_OF_IT = 0.5;
    /** So many times what is moved by little at a time may have done nothing before it is let go. */
    private static final int TELLING = 3;
    /** What a harm weighs of which nobody could tell whether the change brought it: it is as likely as not. */
    private static final double UNCLEAR_HARM = 0.5;

    private final Map<Change, Learned> learned;
    private final Map<Change, String> objections;
    private final Map<Change, String> leftOn;

    private Experience(Map<Change, Learned> learned, Map<Change, String> objections, Map<Change, String> leftOn) {
        this.learned = learned;
        this.objections = objections;
        this.leftOn = leftOn;
    }

    /** What trials say of {@code change}, if it was tried. */
    public Optional<Learned> of(Change change) {
        return Optional.ofNullable(learned.get(change));
    }

    /** Whether {@code change} was let go because it did nothing that was felt the one time it was tried. */
    boolean onceMore(Change change) {
        Learned said = learned.get(change);
        return said != null && objections.containsKey(change) && said.outcome() == Outcome.SAME && said.judged() == 1
                && !change.adjuster().adjustment().damping();
    }

    /** Why {@code change} is not tried again, where it is not. */
    Optional<String> objection(Change change) {
        return Optional.ofNullable(objections.get(change));
    }

    /** What no rule is for, did nothing when it was tried, and is still on the car, each with a word on that. */
    Map<Change, String> leftOn() {
        return leftOn;
    }

    /** The same with what is said of the ways back. */
    Experience with(List<Learned> undos) {
        if (undos.isEmpty()) {
            return this;
        }
        Map<Change, Learned> all = new TreeMap<>(learned);
        undos.forEach(undo -> all.put(undo.change(), undo));
        return new Experience(all, objections, leftOn);
    }

    /**
     * Weighs the trials of {@code run} and lets them speak: each change that they bear on gets one proposal more.
     *
     * @param proposals of the rules, by change; what trials say is added
     * @param worth what a change is worth by its note
     * @param doubt what is no word against a change
     * @param car as it stands
     */
    static Experience of(List<Complaint> complaints, Map<Change, List<Proposal>> proposals,
            Function<Change, Score> worth, Weights weights, Trials trials, Doubt doubt, Car car) {
        return new Making(complaints, proposals, worth, weights, trials, doubt, car).made();
    }

    /** One case's experience in the making. */
    private static final class Making {
        private final Car car;
        private final Trials trials;
        private final Doubt doubt;
        private final List<Complaint> complaints;
        private final Map<Change, List<Proposal>> proposals;
        private final Function<Change, Score> worth;
        private final Weights weights;
        private final Map<Change, Learned> learned = new TreeMap<>();
        private final Map<Change, String> objections = new TreeMap<>();

        Making(List<Complaint> complaints, Map<Change, List<Proposal>> proposals, Function<Change, Score> worth,
                Weights weights, Trials trials, Doubt doubt, Car car) {
            this.car = car;
            this.trials = trials;
            this.doubt = doubt;
            this.complaints = complaints;
            this.proposals = proposals;
            this.worth = worth;
            this.weights = weights;
        }

        Experience made() {
            Set<Change> touched = new TreeSet<>();
            for (int i = 0; i < trials.count(); i++) {
                Tried trial = trials.get(i);
                touched.add(trial.change());
                if (trial.outcome() == Outcome.WORSE && !doubt.of(i)) {
                    touched.add(trial.change().opposite());
                }
            }
            touched.forEach(this::learn);
            dampers();
            return new Experience(learned, objections, leftOn());
        }

        /** What no rule is for any more, or never was, is still to be told of as long as it is on the car in vain. */
        private Map<Change, String> leftOn() {
            Map<Change, String> leftOn = new TreeMap<>();
            for (int i = 0; i < trials.count(); i++) {
                Change change = trials.get(i).change();
                List<Tried> trial = trials.trial(i);
                double before = learned.containsKey(change) ? learned.get(change).before()
                        : Certainty.ofRules(proposals.getOrDefault(change, List.of()));
                boolean on = trials.binding(i) && trials.stillOn(i) && !trials.isUndo(i);
                if (on && before < weights.leastCertainty() && !objections.containsKey(change)
                        && trial.stream().allMatch(entry -> entry.outcome() == Outcome.SAME)) {
                    leftOn.put(change, "tried " + Tried.text(trial) + wayBack(change, trial));
                }
            }
            return leftOn;
        }

        /** One damper that did nothing for a complaint speaks for all: it is steady, and dampers act while something moves. */
        private void dampers() {
            for (Change tried : List.copyOf(objections.keySet())) {
                if (tried.adjuster().adjustment().damping() && learned.get(tried).outcome() == Outcome.SAME) {
                    proposals.keySet().stream().filter(other -> other.adjuster().adjustment().damping())
                            .filter(other -> !objections.containsKey(other) && sameKind(worth.apply(other), tried))
                            .forEach(other -> objections.put(other, "another damper did nothing for this: "
                                    + objections.get(tried)));
                }
            }
        }

        /** Whether all that a change helps is what that trial told of. */
        private boolean sameKind(Score score, Change tried) {
            List<Tried> told = learned.get(tried).last();
            return score.helps().stream().allMatch(help -> told.stream().anyMatch(entry ->
                    help.complaint().is(entry.on())));
        }

        private void learn(Change change) {
            List<Score.Help> helps = worth.apply(change).helps();
            Tally tally = tally(change, helps);
            List<Proposal> ofRules = proposals.getOrDefault(change, List.of());
            if (tally.told() < 0 || ofRules.isEmpty() && !goesOn(tally.last, helps) && !turnedBack(tally, helps)) {
                return;
            }
            double before = Certainty.ofRules(ofRules);
            Belief belief = new Belief(before, tally.helped, tally.failed, weights.learning().priorRuns());
            double after = before;
            if (belief.evidence() != 0) {
                List<Proposal> all = new ArrayList<>(ofRules);
                all.add(new Proposal(change, belief.evidence(), Learned.RULE, List.of()));
                proposals.put(change, all);
                after = Certainty.ofRules(all);
            }
            List<Tried> told = trials.trial(tally.told());
            Learned said = new Learned(change, told.get(0).change(), tally.last < 0 ? Outcome.WORSE
                    : outcome(tally.last, helps), told, tally.better, tally.judged, before, belief.evidence(), after,
                    false);
            learned.put(change, said);
            if (before >= weights.leastCertainty() && tally.last >= 0) {
                object(said, tally.last, helps);
            }
        }

        /** A change that helped goes on while there is something left to complain of, whoever thought of it. */
        private boolean goesOn(int last, List<Score.Help> helps) {
            return last >= 0 && outcome(last, helps) == Outcome.BETTER && share(last, helps) > 0
                    && trials.stillOn(last) && !complaints.isEmpty();
        }

        /**
         * Whether the way there, put back since, made worse what this way helps by its note, and this way was not tried yet: the
         * car answers to it, whoever thought of it. Common practice, no source.
         */
        private boolean turnedBack(Tally tally, List<Score.Help> helps) {
            return tally.last < 0 && tally.wayThere >= 0 && trials.binding(tally.wayThere) && !trials.stillOn(tally.wayThere)
                    && trials.trial(tally.wayThere).stream().anyMatch(entry -> entry.outcome() == Outcome.WORSE
                    && helps.stream().anyMatch(help -> help.complaint().reported() && help.complaint().is(entry.on())));
        }

        private Tally tally(Change change, List<Score.Help> helps) {
            Tally tally = new Tally();
            for (int i = 0; i < trials.count(); i++) {
                Tried trial = trials.get(i);
                boolean again = i > 0 && trials.sameTrial(i - 1, i);
                boolean toldAlready = again && trial.outcome() == Outcome.WORSE
                        && trials.get(i - 1).outcome() == Outcome.WORSE;
                if (trials.isUndo(i)) {
                    continue;
                }
                if (trial.change().equals(change)) {
                    double share = toldAlready ? 0 : share(i, helps);
                    double telling = trial.outcome() == Outcome.SAME && small(List.of(trial)) ? 1.0 / TELLING : 1;
                    tally.add(i, trial.outcome(), share, trials.weight(i) * share * telling, again);
                    tally.failed += doubt.mayHaveHarmed(trial) ? UNCLEAR_HARM * trials.weight(i) : 0;
                } else if (trial.change().equals(change.opposite()) && trial.outcome() == Outcome.WORSE
                        && !doubt.of(i)) {
                    tally.helped += toldAlready ? 0 : weights.learning().opposite() * trials.weight(i);
                    tally.wayThere = i;
                }
            }
            return tally;
        }

        /**
         * What was tried and judged is not tried again, unless it helped, or was tried elsewhere or long ago. What helped
         * the time before may do nothing once: a grade that is told the same hides a small gain.
         */
        private void object(Learned said, int last, List<Score.Help> helps) {
            boolean inVain = said.outcome() == Outcome.WORSE
                    || said.outcome() == Outcome.SAME && shareOf(Outcome.SAME, last, helps) >= MOST_OF_IT
                    && !helpedBefore(last) && !(small(trials.trial(last)) && said.judged() < TELLING)
                    && !hiddenByTheGrade(said.change(), last);
            if (inVain && trials.binding(last)) {
                objections.put(said.change(), "tried " + said.text() + (trials.stillOn(last)
                        && said.outcome() == Outcome.SAME && !trials.any(last, Outcome.BETTER)
                        ? wayBack(said.change(), trials.trial(last)) : ""));
            } else if (said.after() < weights.leastCertainty() && !(fine(said.change()) && eased(last))) {
                objections.put(said.change(), "tried " + said.text() + "; too little speaks for it now");
            }
        }

        /** What did nothing is put back, unless it has come away from where nobody would have set it. */
        private String wayBack(Change change, List<Tried> trial) {
            boolean strange = trial.stream().filter(entry -> entry.change().equals(change))
                    .flatMap(entry -> entry.moved().from().stream()).anyMatch(from -> car.setting(change.adjuster())
                            .map(setting -> car.withSetting(change.adjuster(), setting.withNow(from)))
                            .filter(before -> Ordinary.leadsBack(before, change)).isPresent());
            return strange ? "; it may stay, for where it stood before is far from what is ordinary"
                    : "; put it back, unless something else needs it";
        }

        /** Brake balance is what locking asks for, and is moved by little at a time: it may take more than once to be felt. */
        private static boolean small(List<Tried> trial) {
            return trial.stream().anyMatch(entry -> entry.change().adjuster().kind() == Adjuster.Kind.BRAKE_BIAS
                    && entry.on().symptom().filter(it -> it == Symptom.FRONT_LOCKING || it == Symptom.REAR_LOCKING)
                    .isPresent());
        }

        /**
         * Whether what stayed the same may be less: where nothing got worse, and a fine lever eased the same complaint in
         * another part of the corner; or it is strong, above which there is no grade, while the lever did something or still
         * stands far from what is ordinary.
         */
        private boolean hiddenByTheGrade(Change change, int last) {
            return fine(change) && eased(last) || strong() && !trials.any(last, Outcome.WORSE)
                    && (trials.any(last, Outcome.BETTER) || Ordinary.leadsBack(car, change));
        }

        /** Whether the same complaint went or eased in another part of the corner, and nothing got worse. */
        private boolean eased(int last) {
            return !trials.any(last, Outcome.WORSE) && trials.trial(last).stream().anyMatch(entry ->
                    entry.outcome() == Outcome.BETTER && complaints.stream().anyMatch(complaint -> complaint.reported()
                    && entry.on().symptom().filter(it -> it == complaint.symptom()).isPresent()));
        }

        /** What moves the balance by little a step, so that it goes on for several. */
        private static boolean fine(Change change) {
            return change.adjuster().kind() == Adjuster.Kind.TOE || change.adjuster().kind() == Adjuster.Kind.CAMBER;
        }

        private boolean strong() {
            return complaints.stream().flatMap(complaint -> complaint.report().stream())
                    .anyMatch(report -> report.severity() == Severity.STRONG);
        }

        /** Whether the trial of the same change before that one helped, and harmed nothing. */
        private boolean helpedBefore(int last) {
            int before = last - 1;
            while (before >= 0 && trials.sameTrial(before, before + 1)) {
                before--;
            }
            while (before >= 0 && trials.get(before).change().adjuster() != trials.get(last).change().adjuster()) {
                before--;
            }
            return before >= 0 && trials.get(before).change().equals(trials.get(last).change())
                    && trials.any(before, Outcome.BETTER) && !trials.any(before, Outcome.WORSE);
        }

        /** The outcome of a trial that may have been judged for several complaints: worse for one is worse. */
        private Outcome outcome(int last, List<Score.Help> helps) {
            if (trials.get(last).outcome() == Outcome.UNCLEAR) {
                return Outcome.UNCLEAR;
            }
            double better = shareOf(Outcome.BETTER, last, helps);
            if (better > 0 && alikeBoth(last)) {
                return Outcome.BETTER;
            }
            return shareOf(Outcome.WORSE, last, helps) > 0 ? Outcome.WORSE
                    : better > 0 && better >= shareOf(Outcome.SAME, last, helps) ? Outcome.BETTER
                    : trials.get(last).outcome() == Outcome.BETTER ? Outcome.BETTER : Outcome.SAME;
        }

        /** Whether all that got worse is of a kind of which more got better: a driver tells the worst, and then the next. */
        private boolean alikeBoth(int last) {
            Set<Symptom> worse = new HashSet<>();
            Set<Symptom> better = new HashSet<>();
            int balance = 0;
            for (Tried entry : trials.trial(last)) {
                if (entry.outcome() == Outcome.WORSE || entry.outcome() == Outcome.BETTER) {
                    (entry.outcome() == Outcome.WORSE ? worse : better).add(entry.on().symptom().orElse(null));
                    balance += entry.outcome() == Outcome.BETTER ? 1 : -1;
                }
            }
            return !worse.isEmpty() && better.containsAll(worse) && balance > 0;
        }

        private double shareOf(Outcome outcome, int last, List<Score.Help> helps) {
            double share = 0;
            for (int i = last; i >= 0 && (i == last || trials.sameTrial(i, i + 1)); i--) {
                share += trials.get(i).outcome() == outcome ? share(i, helps) : 0;
            }
            return share;
        }

        /**
         * The part of what a change is for that a trial tells of, in [0, 1]: all of it where it names no complaint, and
         * where something got worse, for that is a reason against the change whatever it was made for.
         */
        private double share(int index, List<Score.Help> helps) {
            Tried trial = trials.get(index);
            if (trial.on().symptom().isEmpty() || trial.outcome() == Outcome.WORSE) {
                return doubt.of(index) ? 0 : 1;
            }
            double all = 0;
            double told = 0;
            if (helps.isEmpty()) {
                return complaints.stream().anyMatch(complaint -> complaint.is(trial.on())) ? 1 : 0;
            }
            for (Score.Help help : helps) {
                double part = help.effect() * help.complaint().weight();
                all += part;
                told += help.complaint().is(trial.on()) ? part : 0;
            }
            return told / all;
        }
    }

    /** The outcomes of one change, added up. */
    private static final class Tally {
        private double helped;
        private double failed;
        private int better;
        private int judged;
        /** The last trial of the change, one that bears on the case if there is one; -1 for none. */
        private int last = -1;
        private boolean bears;
        /** The last trial of the opposite change that made things worse; -1 for none. */
        private int wayThere = -1;

        void add(int trial, Outcome outcome, double share, double weight, boolean again) {
            helped += outcome == Outcome.BETTER ? weight : 0;
            failed += outcome == Outcome.SAME || outcome == Outcome.WORSE ? weight : 0;
            boolean counts = share > 0 && outcome != Outcome.UNCLEAR;
            if (counts) {
                judged += again && bears ? 0 : 1;
                better += outcome == Outcome.BETTER && !(again && bears) ? 1 : 0;
            }
            if (counts || !bears) {
                last = trial;
                bears |= counts;
            }
        }

        /** The trial to tell of; -1 for none. */
        int told() {
            return last >= 0 ? last : wayThere;
        }
    }
}
