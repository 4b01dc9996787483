package camberwell.advice;

import camberwell.fact.Reading;
import camberwell.knowledge.Circumstances;
import camberwell.knowledge.Effect;
import camberwell.reading.TyreReadings;
import camberwell.run.Case;
import camberwell.run.Report;
import camberwell.run.Tried;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Wheel;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Something to be relieved: what a person reported, or what the tyres show by themselves.
 *
 * @param weight what it is worth to relieve it
 * @param text in words
 * @param report what a person said; empty where only the tyres show it
 * @param alone the one tyre that shows it, where its partner does not
 */
public record Complaint(Symptom symptom, Optional<Axle> where, Optional<Phase> phase, Optional<CornerSpeed> speed,
        double weight, String text, Optional<Report> report, Optional<Wheel> alone) {

    /** The weight of a strong complaint on every lap. */
    private static final double STRONG = 1.5;
    private static final double MOSTLY = 1.25;
    /** In the order of the vocabulary, whatever order they were written down in. */
    private static final Comparator<Complaint> ORDER = Comparator.comparing((Complaint complaint) -> !complaint.reported())
            .thenComparing(Complaint::symptom).thenComparing(complaint -> complaint.phase.map(Phase::ordinal).orElse(-1))
            .thenComparing(Complaint::text);

    /** One that no single tyre shows. */
    public Complaint(Symptom symptom, Optional<Axle> where, Optional<Phase> phase, Optional<CornerSpeed> speed, double weight,
            String text, Optional<Report> report) {
        this(symptom, where, phase, speed, weight, text, report, Optional.empty());
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    /** Stated, since what a record has of itself is put together at its first use, which every start would wait for. */
    @Override
    public boolean equals(Object other) {
        return this == other || other instanceof Complaint complaint && symptom.equals(complaint.symptom)
                && Double.compare(weight, complaint.weight) == 0 && text.equals(complaint.text)
                && where.equals(complaint.where) && phase.equals(complaint.phase) && speed.equals(complaint.speed)
                && report.equals(complaint.report) && alone.equals(complaint.alone);
    }

    /** All complaints of a case: the reports, and the readings that nobody reported in words. */
    static List<Complaint> of(Case run, TyreReadings tyres, Weights weights) {
        List<Complaint> complaints = new ArrayList<>();
        for (Report report : run.reports()) {
            if (report.measured().isEmpty() || run.reports().stream().noneMatch(said -> said.measured().isEmpty()
                    && said.alike(report))) {
                complaints.add(new Complaint(report.symptom(), report.where().map(Place::axle), report.phase(),
                        report.speed(), worth(report, run.reports(), weights), report.text(), Optional.of(report)));
            }
        }
        for (Complaint shown : ofReadings(tyres, weights)) {
            boolean said = false;
            for (int i = 0; i < complaints.size(); i++) {
                Complaint other = complaints.get(i);
                if (other.reported() && other.symptom == shown.symptom
                        && (other.where.isEmpty() || other.where.equals(shown.where))) {
                    // A reading that agrees with what was said makes it no less.
                    complaints.set(i, other.weighing(Math.max(other.weight, shown.weight)));
                    said = true;
                }
            }
            if (!said) {
                complaints.add(shown);
            }
        }
        complaints.sort(ORDER);
        return List.copyOf(complaints);
    }

    /**
     * What it is worth to relieve it on the car: as severe as it is, as certain as driver and log together make it, and less
     * what the log puts down to the driving. A complaint of the driver that the log bears out counts once.
     */
    private static double worth(Report report, List<Report> all, Weights weights) {
        double drivers = 0;
        for (Report witness : all) {
            if (witness.measured().isPresent() && witness.alike(report)) {
                drivers = Math.max(drivers, witness.measured().get().driver());
            }
        }
        return weights.severity().get(report.severity()) * Facts.reported(report, all, weights).certainty()
                * (1 - drivers);
    }

    /** What the tyres show, once a symptom and axle: where several readings say so, by the clearest. */
    private static Collection<Complaint> ofReadings(TyreReadings tyres, Weights weights) {
        Map<String, Complaint> clearest = new LinkedHashMap<>();
        for (Reading reading : tyres.readings()) {
            symptom(reading.state()).ifPresent(symptom -> {
                Axle axle = reading.place().axle();
                Optional<Wheel> alone = ofOneTyresEdge(reading.state()) ? reading.place().wheel() : Optional.empty();
                clearest.merge(symptom.id() + (alone.isPresent() ? alone.get().id() : axle.id()),
                        new Complaint(symptom, Optional.of(axle), Optional.empty(),
                        Optional.empty(), weights.severity().get(Severity.CLEAR) * reading.certainty(),
                        reading.statement(), Optional.empty(), alone),
                        (one, other) -> other.weight > one.weight ? other : one);
            });
        }
        return clearest.values();
    }

    /** Whether one of them is strong and comes on every lap. */
    static boolean strong(List<Complaint> complaints) {
        return complaints.stream().anyMatch(complaint -> complaint.weight >= STRONG);
    }

    /**
     * Whether they are strong on the whole. What is strong in one part of the corner and clear or slight in others is near
     * to a balance that turns round within a step.
     */
    static boolean mostlyStrong(List<Complaint> complaints) {
        return strong(complaints) && complaints.stream().filter(Complaint::reported)
                .mapToDouble(Complaint::weight).average().orElse(0) >= MOSTLY;
    }

    /**
     * Whether they are strong on the whole, all of one way of the balance, and not of one phase alone: such a car is
     * far from turning round.
     */
    static boolean farOff(List<Complaint> complaints) {
        boolean pushes = complaints.stream().anyMatch(it -> it.reported() && it.symptom() == Symptom.UNDERSTEER);
        boolean loose = complaints.stream().anyMatch(it -> it.reported() && it.symptom().loose());
        return pushes != loose && mostlyStrong(complaints) && !ofOnePhase(complaints);
    }

    private static boolean ofOnePhase(List<Complaint> complaints) {
        return complaints.stream().filter(Complaint::reported).map(Complaint::phase).distinct().count() == 1
                && complaints.stream().filter(Complaint::reported).allMatch(it -> it.phase().isPresent());
    }

    private Complaint weighing(double other) {
        return new Complaint(symptom, where, phase, speed, other, text, report, alone);
    }

    /** Whether an adjuster acts on it: the camber of one wheel does not on what another wheel shows. */
    boolean isWithinReachOf(Adjuster adjuster) {
        Optional<Wheel> shows = alone.isPresent() ? alone : report.flatMap(Report::where).flatMap(Place::wheel);
        return adjuster.adjustment() != Adjustment.CAMBER || adjuster.wheel().isEmpty() || shows.isEmpty()
                || shows.equals(adjuster.wheel());
    }

    private static boolean ofOneTyresEdge(Reading.State state) {
        return state == Reading.State.INNER_EDGE_HOT_ALONE || state == Reading.State.OUTER_EDGE_HOT_ALONE;
    }

    /** Whether it is about the brakes. */
    boolean braking() {
        return symptom == Symptom.FRONT_LOCKING || symptom == Symptom.REAR_LOCKING
                || symptom == Symptom.UNSTABLE_BRAKING || phase.filter(Phase.BRAKING::equals).isPresent();
    }

    /** Whether a person said so. */
    public boolean reported() {
        return report.isPresent();
    }

    private static Optional<Symptom> symptom(Reading.State state) {
        return Optional.ofNullable(switch (state) {
            case BELOW_WINDOW -> Symptom.SLOW_WARM_UP;
            case ABOVE_WINDOW -> Symptom.OVERHEATING;
            case INNER_EDGE_HOT, INNER_EDGE_HOT_ALONE -> Symptom.HOT_INNER_EDGE;
            case OUTER_EDGE_HOT, OUTER_EDGE_HOT_ALONE -> Symptom.HOT_OUTER_EDGE;
            case MIDDLE_HOT, ABOVE_TARGET, ABOVE_TARGET_ALONE -> Symptom.HOT_MIDDLE;
            case MIDDLE_COLD, BELOW_TARGET, BELOW_TARGET_ALONE, BELOW_MINIMUM -> Symptom.COLD_MIDDLE;
            case INSIDE_WINDOW, HOTTER_AXLE, EVEN_TREAD, SIDES_DIFFER, AT_TARGET, NO_GROWTH -> null;
        });
    }

    /** Whether what came of a change is told of this complaint; what either leaves open is any. */
    boolean is(Tried.On on) {
        return on.symptom().filter(it -> it != symptom).isEmpty()
                && agree(on.where().map(Place::axle), where) && agree(on.phase(), phase) && agree(on.speed(), speed);
    }

    private static <T> boolean agree(Optional<T> one, Optional<T> other) {
        return one.isEmpty() || other.isEmpty() || one.equals(other);
    }

    /**
     * How well an effect fits this complaint on this car and day, in [0, 1]: 1 when every circumstance that the effect
     * names is the complaint's own, less for one that the complaint leaves open, 0 for another one.
     */
    double fit(Effect effect, Circumstances circumstances, Weights weights) {
        if (effect.on() != symptom || !effect.when().holds(circumstances)) {
            return 0;
        }
        return fit(effect.where(), where, weights) * fit(effect.phase(), phase, weights)
                * fit(effect.speed(), speed, weights);
    }

    private static <T> double fit(Optional<T> named, Optional<T> said, Weights weights) {
        if (named.isEmpty()) {
            return 1;
        }
        return said.map(word -> word == named.get() ? 1.0 : 0.0).orElse(weights.openCircumstance());
    }
}
