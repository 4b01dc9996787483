package camberwell.advice;

import camberwell.engine.Conclusions;
import camberwell.engine.Consultation;
import camberwell.engine.Firing;
import camberwell.engine.RuleBase;
import camberwell.fact.Caution;
import camberwell.fact.Certainty;
import camberwell.fact.Driving;
import camberwell.fact.Finding;
import camberwell.fact.Withholding;
import camberwell.knowledge.Circumstances;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.model.BrakeBalance;
import camberwell.reading.CamberByWheel;
import camberwell.reading.TyreReader;
import camberwell.reading.TyreReadings;
import camberwell.run.Case;
import camberwell.vocabulary.Change;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;

/** Advises on a case: fires the rules, then ranks, sizes and weighs what they propose. Safe for several threads. */
public final class Advisor {

    private final RuleBase rules;
    private final Notes notes;
    private final Weights weights;
    private final RecentCars cars;
    private final boolean drives;

    /** @param weights of the ranking */
    public Advisor(RuleBase rules, Notes notes, Weights weights) {
        this(rules, notes, weights, new RecentCars(), true);
    }

    private Advisor(RuleBase rules, Notes notes, Weights weights, RecentCars cars, boolean drives) {
        this.rules = rules;
        this.notes = notes;
        this.weights = weights;
        this.cars = cars;
        this.drives = drives;
    }

    /** One that never drives the model of a car, which takes its time: what it puts first may be second once that is asked. */
    public Advisor undriven() {
        return new Advisor(rules, notes, weights, cars, false);
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

    /** The advice that follows from what the rules concluded on the case that was told. */
    public Advice weigh(Case told, TyreReadings tyres, Conclusions conclusions) {
        Case run = CamberByWheel.judged(told);
        List<Complaint> complaints = Complaint.of(run, tyres, weights);
        Predictions predictions = cars.of(run.car(), run.conditions().surface());
        List<Finding> findings = conclusions.findings().stream().filter(Finding::likely).toList();
        Surroundings surroundings = new Surroundings(run, findings);
        Optional<Note> halt = halt(conclusions.cautions(), surroundings);
        Weighing weighing = new Weighing(run, complaints, conclusions, surroundings,
                new Sizer(run, tyres, predictions), new Leverage(predictions, drives), notes, rules, weights, halt);
        weighing.rank();
        List<Note> cautions = cautions(conclusions.cautions(), surroundings, weighing.advised(), halt);
        Circumstances beside = surroundings.beside(cautions);
        List<DrivingAdvice> driving = halt.isPresent() ? List.of() : driving(conclusions.driving(), beside);
        boolean drivingFirst = driving.stream().anyMatch(habit -> habit.certainty() >= weights.drivingFirst());
        Advice advice = new Advice(told, tyres, complaints, findings, weighing.changes(), weighing.withheld(),
                weighing.conflicts(), driving, drivingFirst,
                cautions, halt, List.of(), doubts(run, tyres, complaints), beside, predictions,
                weighing.experience());
        return advice.withAnswers(Answer.of(advice, weighing.candidates(), conclusions.cautions()));
    }

    /** Whether that withholding holds that change back in the case of {@code advice}. */
    public boolean holds(Advice advice, Withholding withholding, Change change) {
        Surroundings surroundings = new Surroundings(advice.run(), advice.findings());
        return withholding.certainty() >= weights.leastCertainty()
                && withholding.holds(change, axle -> Worth.loads(notes, surroundings, change, axle));
    }

    /** The surest caution before which nothing else is done. */
    private Optional<Note> halt(List<Caution> concluded, Surroundings surroundings) {
        return concluded.stream().filter(caution -> caution.certainty() >= weights.halt())
                .sorted(Comparator.comparingDouble(Caution::certainty).reversed().thenComparing(Caution::note))
                .map(caution -> notes.get(caution.note())).filter(Note::halts)
                .filter(note -> note.when().holds(surroundings.all()))
                .map(note -> note.fitting(surroundings.all())).findFirst();
    }

    /** Those of the tyres; and where brakes are complained of, what the car's own figures say of its brake balance. */
    private static List<String> doubts(Case run, TyreReadings tyres, List<Complaint> complaints) {
        List<String> doubts = new ArrayList<>(tyres.doubts());
        boolean braking = complaints.stream().anyMatch(Complaint::braking);
        if (braking) {
            BrakeBalance.of(run.car(), run.conditions().surface()).filter(balance -> balance.sparePercent() < 0)
                    .ifPresent(balance -> doubts.add(balance.text() + ": by that the rear wheels lock first. Check the "
                            + "brake bias in the car's file, and whether it counts force or pressure (brake-bias-of)"));
        }
        return List.copyOf(doubts);
    }

    /** What a change would help and cost in the case of {@code advice}, whether rules propose it or not. */
    public Score worth(Advice advice, Change change) {
        Note note = notes.get(change.adjuster().note());
        return Score.of(note, note.ways().get(change.direction()), 1, advice.complaints().stream()
                .filter(complaint -> complaint.isWithinReachOf(change.adjuster())).toList(),
                new Surroundings(advice.run(), advice.findings()).of(change.adjuster()), weights);
    }

    /** The habits that apply, what keeps the car on the road first: none that a caution beside it forbids. */
    private List<DrivingAdvice> driving(List<Driving> concluded, Circumstances circumstances) {
        Map<String, List<Driving>> byNote = new TreeMap<>();
        concluded.forEach(advice -> byNote.computeIfAbsent(advice.note(), key -> new ArrayList<>()).add(advice));
        List<DrivingAdvice> driving = new ArrayList<>();
        byNote.forEach((note, reasons) -> {
            double certainty = Certainty.ofRules(reasons);
            if (certainty >= weights.leastDriving() && notes.get(note).when().holds(circumstances)) {
                driving.add(new DrivingAdvice(notes.get(note).fitting(circumstances), certainty,
                        List.copyOf(reasons)));
            }
        });
        driving.sort(Comparator.comparingInt((DrivingAdvice advice) -> advice.note().order())
                .thenComparing(Comparator.comparingDouble(DrivingAdvice::certainty).reversed())
                .thenComparing(advice -> advice.note().name()));
        return List.copyOf(driving);
    }

    /** The one that halts, those that go with the changes, then those that rules draw. */
    private List<Note> cautions(List<Caution> concluded, Surroundings surroundings, List<Change> changes,
            Optional<Note> halt) {
        Map<String, Note> cautions = new LinkedHashMap<>();
        halt.ifPresent(note -> cautions.put(note.name(), note));
        for (String name : generalCautions(notes)) {
            caution(name, surroundings.changing(changes)).ifPresent(note -> cautions.putIfAbsent(name, note));
        }
        concluded.stream().filter(caution -> caution.certainty() >= weights.leastCertainty()).map(Caution::note).sorted()
                .forEach(name -> caution(name, surroundings.changing(Change.all()))
                        .ifPresent(note -> cautions.putIfAbsent(name, note)));
        return List.copyOf(cautions.values());
    }

    private Optional<Note> caution(String name, Circumstances circumstances) {
        Note note = notes.get(name);
        return note.when().holds(circumstances) ? Optional.of(note.fitting(circumstances)) : Optional.empty();
    }
}
