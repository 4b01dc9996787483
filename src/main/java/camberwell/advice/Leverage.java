package camberwell.advice;

import camberwell.model.Bench;
import camberwell.model.CarModel;
import camberwell.physics.CornerPhase;
import camberwell.physics.CornerSpeed;
import camberwell.run.Case;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How much bars and springs move this very car, by the handling model. Rules know which lever acts; how much it does
 * depends on what share of its axle's roll stiffness it is. So of the levers that rules propose for the same way of the
 * balance, one that hardly acts on this car gives way to one that does, where the complaint is strong; and where the car
 * is at or beyond neutral, so that a step may turn it round, the one that moves it least comes first. Empty-handed where
 * the car's file tells too little.
 */
final class Leverage {

    /** A lever of which another one is so many times the stronger hardly acts. */
    private static final double MUCH = 3;
    /** What is stronger by less than a half is no stronger: the model is not that sure, and a spring is more work than a bar. */
    private static final double MORE = 1.5;
    /** What is so much weaker is finer. */
    private static final double FINER = 0.5;
    private static final double LEAST = 0.0005;
    private static final List<CornerPhase> EDGES = List.of(CornerPhase.LIFT_OFF, CornerPhase.MID_CORNER, CornerPhase.EXIT);

    private final Optional<Bench> bench;
    private final Predictions predictions;
    private final boolean driven;

    /**
     * @param predictions of the car as the handling model sees it
     * @param driven whether the car may be driven too, which takes its time
     */
    Leverage(Predictions predictions, boolean driven) {
        this.bench = predictions.bench();
        this.predictions = predictions;
        this.driven = driven;
    }

    /** The car as the handling model sees it, to be driven; empty where its file tells too little, or it may not be. */
    Optional<CarModel> toDrive() {
        return driven ? bench.map(Bench::car) : Optional.empty();
    }

    /** What will be left of the complaints of a run by the same car driven; empty as above. */
    Optional<Forecast> forecast(Case run, List<Complaint> complaints) {
        return driven ? predictions.forecast(run, complaints) : Optional.empty();
    }

    /** A change that is put first, and why. */
    record Choice(Change change, String why) {
    }

    /** Which of the changes is to come first instead of the first one; empty where that may stay. */
    Optional<Choice> instead(List<RankedChange> ranked) {
        if (bench.isEmpty() || ranked.isEmpty() || !ofRollStiffness(ranked.get(0).change())
                || !ranked.get(0).firstBy().isEmpty()) {
            return Optional.empty();
        }
        RankedChange first = ranked.get(0);
        List<Complaint> helped = first.score().helped();
        Situation situation = Situation.of(first.change().adjuster(), helped.stream().findFirst());
        OptionalDouble shift = shift(first.change(), situation);
        if (shift.isEmpty()) {
            return Optional.empty();
        }
        double own = shift.getAsDouble() * first.size().steps();
        return Complaint.mostlyStrong(helped) ? stronger(ranked, situation, own)
                : own < 0 && beyondNeutral(situation, own) ? weaker(ranked, situation, own) : Optional.empty();
    }

    /** Of bars and springs, the one that moves the balance most the way of the first change, after one that was not felt. */
    Optional<Choice> strongest(List<RankedChange> ranked) {
        if (bench.isEmpty() || ranked.isEmpty() || !ofRollStiffness(ranked.get(0).change())
                || !ranked.get(0).firstBy().isEmpty()) {
            return Optional.empty();
        }
        RankedChange first = ranked.get(0);
        Situation situation = Situation.of(first.change().adjuster(),
                first.score().helped().stream().findFirst());
        RankedChange most = extreme(ranked, situation, whole(first, situation), 1);
        return Math.abs(whole(most, situation)) < MORE * Math.abs(whole(first, situation)) ? Optional.empty()
                : Optional.of(new Choice(most.change(), "what was tried before it was not felt, and by the model this is the "
                        + "bar or spring that moves the balance of this car most"));
    }

    private Optional<Choice> stronger(List<RankedChange> ranked, Situation situation, double own) {
        RankedChange most = extreme(ranked, situation, own, 1);
        double other = whole(most, situation);
        return Math.abs(other) > MUCH * Math.abs(own) ? Optional.of(new Choice(most.change(),
                "by the model it moves the balance of this car " + Math.round(other / own) + " times as much as "
                        + ranked.get(0).change().adjuster().spoken() + " would")) : Optional.empty();
    }

    private Optional<Choice> weaker(List<RankedChange> ranked, Situation situation, double own) {
        RankedChange least = extreme(ranked, situation, own, -1);
        return least == ranked.get(0) ? Optional.empty() : Optional.of(new Choice(least.change(),
                "by the model the car is at neutral or beyond, where a step turns it round: of the bars and springs this one "
                        + "moves it least"));
    }

    /** The one that moves the balance the same way, and most or least. */
    private RankedChange extreme(List<RankedChange> ranked, Situation situation, double own, int sign) {
        RankedChange found = ranked.get(0);
        for (RankedChange change : ranked) {
            double shift = ofRollStiffness(change.change()) ? whole(change, situation) : 0;
            if (shift * own > 0 && sign * Math.abs(shift) > sign * Math.abs(whole(found, situation))) {
                found = change;
            }
        }
        return found;
    }

    /** Whether the rear gives up first, or would after the step; nobody knows where the car's own file tells no stiffness. */
    private boolean beyondNeutral(Situation situation, double shift) {
        OptionalDouble balance = bench.isEmpty() || !bench.get().car().ownStiffness() ? OptionalDouble.empty()
                : bench.get().limitBalance(situation.phase(), situation.speed().metresPerSecond());
        return balance.isPresent() && balance.getAsDouble() + shift < 0;
    }

    /** Whether the rear of the car as it stands gives up first somewhere in a corner. */
    boolean beyondNeutral() {
        for (CornerSpeed speed : bench.isPresent() ? CornerSpeed.values() : new CornerSpeed[0]) {
            for (CornerPhase phase : EDGES) {
                if (beyondNeutral(new Situation(phase, speed), 0)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The same where a car is loose first, off the throttle in fast corners: for one that may be driven, and in a moment. */
    boolean looseOffThrottle() {
        return driven && beyondNeutral(new Situation(CornerPhase.LIFT_OFF, CornerSpeed.FAST), 0);
    }

    /** Whether the car is at or beyond neutral where it is complained of, or comes there by a step of a bar or spring. */
    boolean onEdge(Change change, List<Complaint> complaints) {
        Situation situation = Situation.of(change.adjuster(), complaints.stream().findFirst());
        OptionalDouble shift = ofRollStiffness(change) ? shift(change, situation) : OptionalDouble.empty();
        return shift.isPresent() && beyondNeutral(situation, -Math.abs(shift.getAsDouble()));
    }

    /** Whether one step of a bar or spring moves the car much less than one of another change, which turned it round. */
    boolean finer(Change change, Change other) {
        OptionalDouble times = ofRollStiffness(change) ? times(change, other) : OptionalDouble.empty();
        return times.isPresent() && times.getAsDouble() < FINER;
    }

    /** Whether one step of a change moves the car much more than one of another. */
    boolean muchStronger(Change change, Change other) {
        OptionalDouble times = times(change, other);
        return times.isPresent() && times.getAsDouble() > MUCH;
    }

    /** How many times as much as one step of another change one step of a change moves the car; empty where nobody knows. */
    OptionalDouble times(Change change, Change other) {
        Situation situation = Situation.of(change.adjuster(), Optional.empty());
        OptionalDouble one = shift(change, situation);
        OptionalDouble two = shift(other, situation);
        return one.isPresent() && two.isPresent() ? OptionalDouble.of(Math.abs(one.getAsDouble() / two.getAsDouble()))
                : OptionalDouble.empty();
    }

    private double whole(RankedChange change, Situation situation) {
        return shift(change.change(), situation).orElse(0) * change.size().steps();
    }

    private OptionalDouble shift(Change change, Situation situation) {
        OptionalDouble shift = bench.isEmpty() ? OptionalDouble.empty() : bench.get().limitBalanceShift(change,
                situation.phase(), situation.speed().metresPerSecond());
        return shift.isPresent() && Math.abs(shift.getAsDouble()) >= LEAST ? shift : OptionalDouble.empty();
    }

    /** Bars and springs. */
    static boolean ofRollStiffness(Change change) {
        return change.adjuster().kind() == Adjuster.Kind.STIFFNESS && !change.adjuster().adjustment().damping();
    }
}
