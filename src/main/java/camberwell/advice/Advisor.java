package camberwell.advice;

import camberwell.engine.Conclusions;
import camberwell.engine.Consultation;
import camberwell.engine.Firing;
import camberwell.engine.RuleBase;
import camberwell.fact.Caution;
import camberwell.fact.Certainty;
import camberwell.fact.Driving;
import camberwell.fact.Finding;
import camberwell.fact.Proposal;
import camberwell.fact.Withholding;
import camberwell.knowledge.Circumstances;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.reading.TyreReader;
import camberwell.reading.TyreReadings;
import camberwell.run.Case;
import camberwell.vocabulary.Change;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;

/** Advises on a case: fires the rules, then ranks, sizes and weighs what they propose. Safe for several threads. */
public final class Advisor {

    /** A change on an adjuster that the car lacks is worth a word only when it would have stood this high. */
    private static final int WORTH_A_WORD = 3;

    private final RuleBase rules;
    private final Notes notes;
    private final Weights weights;
    private final RecentCars cars = new RecentCars();

    /** @param weights of the ranking */
    public Advisor(RuleBase rules, Notes notes, Weights weights) {
        this.rules = rules;
        this.notes = notes;
        this.weights = weights;
    }

    /** The names of the cautions that go with changes, whatever the rules say; the one to be shown first, first. */
    public static List<String> generalCautions(Notes notes) {
        List<Note> general = new ArrayList<>();
        for (String name : notes.names(Note.Kind.CAUTION)) {
            if (notes.get(name).goesWithChanges()) {
                general.add(notes.get(name));
            }
        }
        general.sort(Comparator.comparingInt(Note::order));
        List<String> names = new ArrayList<>();
        general.forEach(note -> names.add(note.name()));
        return names;
    }

    /** The weights that it ranks by. */
    public Weights weights() {
        return weights;
    }

    /** The advice on {@code run}. */
    public Advice advise(Case run) {
        return advise(run, firing -> { });
    }

    /** The advice on {@code run}; {@code listener} is told of every rule that fires, in order. */
    public Advice advise(Case run, Consumer<Firing> listener) {
        TyreReadings tyres = TyreReader.read(run);
        try (Consultation consultation = rules.consult(Facts.of(run, tyres, weights))) {
            consultation.listen(listener);
            return weigh(run, tyres, consultation.conclude());
        }
    }

    /** The advice that follows from what the rules concluded on {@code run}. */
    public Advice weigh(Case run, TyreReadings tyres, Conclusions conclusions) {
        List<Complaint> complaints = Complaint.of(run, tyres, weights);
        Predictions predictions = cars.of(run.car(), run.conditions().surface());
        List<Finding> findings = conclusions.findings().stream().filter(Finding::likely).toList();
        Surroundings surroundings = new Surroundings(run, findings);
        Weighing weighing = new Weighing(run, tyres, complaints, conclusions, surroundings, predictions);
        weighing.rank();
        List<DrivingAdvice> driving = driving(conclusions.driving(), surroundings.all());
        boolean drivingFirst = !driving.isEmpty() && driving.get(0).certainty() >= weights.drivingFirst();
        return new Advice(run, tyres, complaints, findings, weighing.changes, weighing.withheld(),
                weighing.conflicts, driving, drivingFirst,
                cautions(conclusions.cautions(), surroundings, weighing.advised()), surroundings.all(),
                predictions, weighing.experience);
    }

    /** What a change would help and cost in the case of {@code advice}, whether rules propose it or not. */
    public Score worth(Advice advice, Change change) {
        Note note = notes.get(change.adjuster().note());
        return Score.of(note, note.ways().get(change.direction()), 1, advice.complaints(),
                new Surroundings(advice.run(), advice.findings()).of(change.adjuster()), weights);
    }

    private List<DrivingAdvice> driving(List<Driving> concluded, Circumstances circumstances) {
        Map<String, List<Driving>> byNote = new TreeMap<>();
        concluded.forEach(advice -> byNote.computeIfAbsent(advice.note(), key -> new ArrayList<>()).add(advice));
        List<DrivingAdvice> driving = new ArrayList<>();
        byNote.forEach((note, reasons) -> {
            double certainty = Certainty.ofRules(reasons);
            if (certainty >= weights.leastCertainty()) {
                driving.add(new DrivingAdvice(notes.get(note).fitting(circumstances), certainty, List.copyOf(reasons)));
            }
        });
        driving.sort(Comparator.comparingDouble(DrivingAdvice::certainty).reversed()
                .thenComparing(advice -> advice.note().name()));
        return List.copyOf(driving);
    }

    /** Those that go with the changes, then those that rules draw. */
    private List<Note> cautions(List<Caution> concluded, Surroundings surroundings, List<Change> changes) {
        Set<Note> cautions = new LinkedHashSet<>();
        for (String name : generalCautions(notes)) {
            caution(name, surroundings.changing(changes)).ifPresent(cautions::add);
        }
        concluded.stream().filter(caution -> caution.certainty() >= weights.leastCertainty()).map(Caution::note)
                .sorted().forEach(name -> caution(name, surroundings.changing(Change.all())).ifPresent(cautions::add));
        return List.copyOf(cautions);
    }

    private Optional<Note> caution(String name, Circumstances circumstances) {
        Note note = notes.get(name);
        return note.when().holds(circumstances) ? Optional.of(note.fitting(circumstances)) : Optional.empty();
    }

    /** One case's ranking in the making. */
    private final class Weighing {
        private final Case run;
        private final List<Complaint> complaints;
        private final Conclusions conclusions;
        private final Surroundings surroundings;
        private final Sizer sizer;
        private final Map<Change, List<Proposal>> proposals = new TreeMap<>();
        private final Map<Change, Withheld> withheld = new LinkedHashMap<>();
        private final List<Conflict> conflicts = new ArrayList<>();
        private List<RankedChange> changes = List.of();
        private Experience experience = Experience.NONE;

        Weighing(Case run, TyreReadings tyres, List<Complaint> complaints, Conclusions conclusions,
                Surroundings surroundings, Predictions predictions) {
            this.run = run;
            this.complaints = complaints;
            this.conclusions = conclusions;
            this.surroundings = surroundings;
            this.sizer = new Sizer(run, tyres, complaints, predictions);
            conclusions.proposals().forEach(proposal ->
                    proposals.computeIfAbsent(proposal.change(), key -> new ArrayList<>()).add(proposal));
            if (!run.tried().isEmpty()) {
                experience = Experience.of(run, complaints, proposals, this::worth, weights);
            }
        }

        void rank() {
            List<RankedChange> candidates = new ArrayList<>();
            for (Change change : proposals.keySet()) {
                if (experience.objection(change).isPresent()) {
                    withhold(change, experience.objection(change).get(), List.of());
                    continue;
                }
                double certainty = certainty(change);
                if (certainty < weights.leastCertainty() || losesToOpposite(change, certainty)) {
                    continue;
                }
                candidates.add(candidate(change, certainty));
            }
            candidates.sort(Comparator.comparingDouble((RankedChange ranked) -> -ranked.score().total())
                    .thenComparing(RankedChange::change));
            List<RankedChange> ranked = new ArrayList<>();
            int position = 0;
            for (RankedChange candidate : candidates) {
                position++;
                place(candidate, position, ranked);
            }
            changes = run.tried().isEmpty() ? List.copyOf(ranked) : undoFirst(ranked);
            addConflicts(candidates);
        }

        List<Change> advised() {
            return changes.stream().map(RankedChange::change).toList();
        }

        /** What made things worse is put back before anything else is tried. */
        private List<RankedChange> undoFirst(List<RankedChange> ranked) {
            Undo undo = new Undo(run, complaints, notes, weights);
            List<RankedChange> all = new ArrayList<>(undo.all());
            experience = experience.with(all.stream().map(undo::learned).toList());
            all.forEach(back -> withheld.remove(back.change()));
            ranked.stream().filter(other -> all.stream().noneMatch(back ->
                    back.change().adjuster() == other.change().adjuster())).toList().forEach(all::add);
            for (int i = 0; i < all.size(); i++) {
                all.set(i, all.get(i).at(i + 1));
            }
            return List.copyOf(all);
        }

        private double certainty(Change change) {
            return Certainty.ofRules(proposals.getOrDefault(change, List.of()));
        }

        /** Of two directions of one adjuster at most one is advised. */
        private boolean losesToOpposite(Change change, double certainty) {
            double opposite = certainty(change.opposite());
            if (opposite < weights.leastCertainty() || certainty - opposite >= weights.clearMajority()) {
                return false;
            }
            boolean clear = opposite - certainty >= weights.clearMajority();
            withheld.put(change, new Withheld(change, clear
                    ? "more speaks for the other way, " + change.opposite().direction().id()
                    : "as much speaks for " + change.opposite().direction().id() + ": leave it, and look for a lever "
                            + "that serves one complaint alone", List.of()));
            if (conflicts.stream().noneMatch(conflict -> conflict.changes().contains(change))) {
                conflicts.add(new Conflict("what is complained of pulls the " + change.adjuster().spoken()
                        + " both ways", List.of(change, change.opposite())));
            }
            return true;
        }

        private Score worth(Change change) {
            Note note = notes.get(change.adjuster().note());
            return Score.of(note, note.ways().get(change.direction()), 1, complaints,
                    surroundings.of(change.adjuster()), weights);
        }

        private RankedChange candidate(Change change, double certainty) {
            Note note = notes.get(change.adjuster().note());
            Note.Way way = note.ways().get(change.direction());
            Score score = Score.of(note, way, certainty, complaints, surroundings.of(change.adjuster()), weights);
            Size none = new Size(Optional.empty(), Optional.empty(), 0, List.of(), List.of());
            Note fitting = note.fitting(surroundings.of(change.adjuster(),
                    score.helps().stream().map(Score.Help::complaint).toList()));
            return new RankedChange(0, change, none, score, List.copyOf(proposals.get(change)), fitting,
                    fitting.ways().get(change.direction()));
        }

        private void place(RankedChange candidate, int position, List<RankedChange> ranked) {
            Change change = candidate.change();
            List<String> holding = conclusions.withholdings().stream()
                    .filter(withholding -> withholding.certainty() >= weights.leastCertainty())
                    .filter(withholding -> withholding.holds(change)).map(Withholding::rule).distinct().toList();
            boolean wanted = holding.isEmpty() && candidate.score().total() > 0;
            Optional<Sized> sized = sizer.size(change, wanted);
            if (sized.isEmpty()) {
                if (position <= WORTH_A_WORD) {
                    withhold(change, run.car().lacking(change.adjuster()), List.of());
                }
            } else if (!holding.isEmpty()) {
                withhold(change, reasonOf(holding.get(0)), holding);
            } else if (sized.get() instanceof Sized.Impossible impossible) {
                withhold(change, impossible.reason(), List.of());
            } else if (candidate.score().total() <= 0) {
                withhold(change, "it would cost more than it brings in this case", List.of());
            } else if (sized.get() instanceof Sized.Possible possible) {
                ranked.add(new RankedChange(ranked.size() + 1, change, possible.size(), candidate.score(),
                        candidate.proposals(), candidate.note(), candidate.way()));
            }
        }

        /** Raw Drools in a trusted folder has no reason that could be read. */
        private String reasonOf(String rule) {
            return rules.rules().containsKey(rule) ? rules.rules().get(rule).because()
                    : "the rule \"" + rule + "\" holds it back";
        }

        private void withhold(Change change, String reason, List<String> by) {
            withheld.putIfAbsent(change, new Withheld(change, reason, by));
        }

        private List<Withheld> withheld() {
            return withheld.values().stream().sorted(Comparator.comparing(Withheld::change)).toList();
        }

        /**
         * Two complaints of which a change helps one and harms the other ask for opposite things. Only what a driver
         * feels of the balance can conflict; what a tyre shows is a cost.
         */
        private void addConflicts(List<RankedChange> candidates) {
            List<Complaint> felt = complaints.stream()
                    .filter(complaint -> complaint.reported() && complaint.where().isEmpty()).toList();
            for (int i = 0; i < felt.size(); i++) {
                for (int j = i + 1; j < felt.size(); j++) {
                    Complaint one = felt.get(i);
                    Complaint other = felt.get(j);
                    List<Change> trading = candidates.stream().filter(candidate -> trades(candidate, one, other))
                            .map(RankedChange::change).toList();
                    if (trading.size() > 1 || trading.stream().anyMatch(this::advised)) {
                        conflicts.add(new Conflict(one.text() + " and " + other.text() + " ask for opposite changes; "
                                + "what acts on one of them alone comes first", trading));
                    }
                }
            }
        }

        private boolean advised(Change change) {
            return changes.stream().anyMatch(ranked -> ranked.change().equals(change));
        }

        private static boolean trades(RankedChange candidate, Complaint one, Complaint other) {
            return helps(candidate, one) && costs(candidate, other) || helps(candidate, other) && costs(candidate, one);
        }

        private static boolean helps(RankedChange candidate, Complaint complaint) {
            return candidate.score().helps().stream().anyMatch(help -> help.complaint().equals(complaint));
        }

        private static boolean costs(RankedChange candidate, Complaint complaint) {
            return candidate.score().costs().stream().anyMatch(cost -> cost.on().equals(complaint.text()));
        }
    }
}
