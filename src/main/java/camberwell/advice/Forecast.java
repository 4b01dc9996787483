package camberwell.advice;

import camberwell.model.CarModel;
import camberwell.model.Figures;
import camberwell.model.Noticed;
import camberwell.model.ProvingGround;
import camberwell.physics.CornerSpeed;
import camberwell.units.Quantity;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Symptom;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;

/**
 * What is left of the complaints after a change, by this very car in the driven model: how far it moves what is told, whether
 * that turns round, and what it brings where nothing was told. All in words, of which one is just worth saying
 * ({@link Noticed}). That a driver calls two of them clear and four of them strong is common practice, no source.
 */
final class Forecast {

    /** The middle of what he means, of which the strongest is open to where a car is lost. */
    private static final Map<Severity, Double> WORDS =
            Map.of(Severity.SLIGHT, 1.5, Severity.CLEAR, 3.0, Severity.STRONG, 8.0);
    /** What a driver hardly notices: a quarter of a word. */
    private static final double LEAST = 0.25;
    /** What he hardly notices of all that he tells. */
    private static final double LEAST_PART = 0.1;
    /** Where nothing is told there may be up to a word of either kind, so that so much more is not heard of. */
    private static final double UNHEARD = 0.5;
    /** A car that is lost is worse than any that is not. */
    private static final double LOST = 12;
    private static final List<Phase> BALANCE = List.of(Phase.ENTRY, Phase.LIFT_OFF, Phase.MID_CORNER, Phase.EXIT);

    private final ProvingGround track;
    private final BiFunction<Change, Quantity, Optional<CarModel>> changed;
    private final List<Complaint> complaints;

    /**
     * @param track the car as it stands, and where it is driven
     * @param changed the same car with a change made, always the same one for the same change
     * @param complaints of the case
     */
    Forecast(ProvingGround track, BiFunction<Change, Quantity, Optional<CarModel>> changed, List<Complaint> complaints) {
        this.track = track;
        this.changed = changed;
        this.complaints = complaints.stream().filter(Complaint::reported).toList();
    }

    /** Whether the model shows all that is told, and somebody said where it is. */
    boolean shows() {
        return !complaints.isEmpty() && complaints.stream().allMatch(it -> Noticed.shows(it.symptom())
                && it.phase().filter(phase -> phase != Phase.STRAIGHT).isPresent());
    }

    /** Whether some of what is told is of the balance. */
    boolean ofBalance() {
        return complaints.stream().anyMatch(it -> it.symptom().ofBalance());
    }

    /** All that is told, in words. */
    double told() {
        return complaints.stream().mapToDouble(Forecast::words).sum();
    }

    /** Whether noticeably less is left after a change, or the model does not know what is changed. */
    boolean worthARun(Change change, Quantity to) {
        return gain(change, to).orElse(Double.POSITIVE_INFINITY) >= Math.max(LEAST, LEAST_PART * told());
    }

    /** By how many words less is left after a change; empty where the model does not know what is changed. */
    OptionalDouble gain(Change change, Quantity to) {
        Optional<CarModel> with = changed.apply(change, to);
        if (with.isEmpty()) {
            return OptionalDouble.empty();
        }
        double left = 0;
        for (Complaint complaint : complaints) {
            left += left(complaint, with.get());
        }
        // A car that has become loose in fast corners is not worth what it gained in slow ones.
        for (CornerSpeed speed : CornerSpeed.values()) {
            for (Phase phase : BALANCE) {
                left += told(phase, speed) ? 0 : brought(phase, speed, with.get());
            }
        }
        return OptionalDouble.of(told() - left);
    }

    private double left(Complaint complaint, CarModel with) {
        Phase phase = complaint.phase().orElseThrow();
        double speed = speed(complaint).metresPerSecond();
        double told = words(complaint);
        Optional<Figures> was = track.figures(track.car(), phase, speed);
        Optional<Figures> is = track.figures(with, phase, speed);
        if (was.isEmpty() || was.get().lost()) {
            return is.isPresent() && !is.get().lost() ? told / 2 : told;
        }
        if (is.isEmpty() || is.get().lost()) {
            return LOST;
        }
        double left = told + Noticed.more(complaint.symptom(), was.get(), is.get());
        return complaint.symptom().ofBalance() ? Math.abs(left) : Math.max(0, left);
    }

    private boolean told(Phase phase, CornerSpeed speed) {
        return complaints.stream().anyMatch(it -> it.symptom().ofBalance() && it.phase().get() == phase
                && it.speed().map(said -> CornerSpeed.valueOf(said.name()) == speed).orElse(true));
    }

    /** What a change brings of the balance where nobody spoke of it. */
    private double brought(Phase phase, CornerSpeed speed, CarModel with) {
        Optional<Figures> was = track.figures(track.car(), phase, speed.metresPerSecond());
        if (was.isEmpty() || was.get().lost()) {
            return 0;
        }
        Optional<Figures> is = track.figures(with, phase, speed.metresPerSecond());
        return is.isEmpty() || is.get().lost() ? LOST
                : Math.max(0, Math.abs(Noticed.more(Symptom.UNDERSTEER, was.get(), is.get())) - UNHEARD);
    }

    private static CornerSpeed speed(Complaint complaint) {
        return complaint.speed().map(said -> CornerSpeed.valueOf(said.name())).orElse(CornerSpeed.MEDIUM);
    }

    private static double words(Complaint complaint) {
        return WORDS.get(complaint.report().orElseThrow().severity());
    }
}
