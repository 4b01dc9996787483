package camberwell.advice;

import camberwell.advice.HowFarOff.Place;
import camberwell.model.CarModel;
import camberwell.model.Figures;
import camberwell.model.Noticed;
import camberwell.model.ProvingGround;
import camberwell.physics.CornerSpeed;
import camberwell.run.Report;
import camberwell.units.Quantity;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiFunction;

/**
 * What is left of the complaints after a change, by this very car in the driven model: how far it moves what is told, whether
 * that turns round, and what it brings where nothing was told. All in words, of which one is just worth saying
 * ({@link Noticed}); how many there are now is taken from all runs together ({@link HowFarOff}).
 */
final class Forecast {

    /** The middle of what he means, of which the strongest is open to where a car is lost. */
    private static final Map<Severity, Double> WORDS =
            Map.of(Severity.SLIGHT, 1.5, Severity.CLEAR, 3.0, Severity.STRONG, 8.0);
    /** What a driver hardly notices: a quarter of a word. */
    private static final double LEAST = 0.25;
    /** What he hardly notices of all that he tells. */
    private static final double LEAST_PART = 0.05;
    /** What nobody complains of counts half: who tells of one place has not said that all else is right. */
    private static final double UNTOLD = 0.5;
    private static final List<Phase> BALANCE = List.of(Phase.ENTRY, Phase.LIFT_OFF, Phase.MID_CORNER, Phase.EXIT);

    private final ProvingGround track;
    private final BiFunction<Change, Quantity, Optional<CarModel>> changed;
    private final List<Complaint> complaints;
    private final List<HowFarOff.Run> runs;
    private final Map<Place, HowFarOff> places = new LinkedHashMap<>();

    /**
     * @param track the car as it stands, and where it is driven
     * @param changed the same car with a change made, always the same one for the same change
     * @param complaints of the case
     * @param runs what was told of the same car, this run included
     */
    Forecast(ProvingGround track, BiFunction<Change, Quantity, Optional<CarModel>> changed, List<Complaint> complaints,
            List<HowFarOff.Run> runs) {
        this.track = track;
        this.changed = changed;
        this.complaints = complaints.stream().filter(Complaint::reported).toList();
        this.runs = runs;
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
        return complaints.stream().mapToDouble(it -> WORDS.get(it.report().orElseThrow().severity())).sum();
    }

    /** All that was told of a run, in words: what is told of a corner without a speed is told of slow, medium and fast ones. */
    static double words(List<Report> told) {
        return told.stream().mapToDouble(report -> WORDS.get(report.severity()) * (report.speed().isEmpty()
                && report.phase().filter(BALANCE::contains).isPresent() ? CornerSpeed.values().length : 1)).sum();
    }

    /** Whether noticeably less is left after a change, or the model does not know what is changed. */
    boolean worthARun(Change change, Quantity to) {
        return gain(change, to).orElse(Double.POSITIVE_INFINITY) >= noticeable();
    }

    /** What a driver hardly notices of all that he tells, words. */
    double noticeable() {
        return Math.max(LEAST, LEAST_PART * told());
    }

    /** By how many words less is expected to be left after a change; empty where the model does not know what is changed. */
    OptionalDouble gain(Change change, Quantity to) {
        return gain(change, to, UNTOLD);
    }

    /** The same by a driver who has told of all that he felt. */
    OptionalDouble gainEverywhere(Change change, Quantity to) {
        return gain(change, to, 1);
    }

    /** The same where something is told, and nowhere else: for a drive or two. What is told of no speed is looked at once. */
    OptionalDouble gainWhereTold(Change change, Quantity to) {
        Optional<CarModel> with = changed.apply(change, to);
        if (with.isEmpty()) {
            return OptionalDouble.empty();
        }
        List<Place> places = placesTold();
        drive(List.of(track.car(), with.get()), places);
        return OptionalDouble.of(places.stream().mapToDouble(place -> gain(place, places().get(place), with.get())).sum());
    }

    /** Drives at once what {@link #gainWhereTold} will be asked about. */
    void driveWhereTold(List<RankedChange> changes) {
        List<CarModel> cars = new ArrayList<>(List.of(track.car()));
        for (RankedChange change : changes) {
            change.size().to().flatMap(to -> changed.apply(change.change(), to)).ifPresent(cars::add);
        }
        drive(cars, placesTold());
    }

    private List<Place> placesTold() {
        return places().keySet().stream().filter(place -> complaints.stream().map(it -> it.report().orElseThrow())
                .anyMatch(report -> place.in(report)
                        && (report.speed().isPresent() || place.speed() == CornerSpeed.MEDIUM))).toList();
    }

    /** The same after two changes that are made as one. */
    OptionalDouble gain(Change one, Quantity to, Change other, Quantity otherTo) {
        return gain(changed.apply(one, to).flatMap(car -> car.withInMotion(other.adjuster(), otherTo)), UNTOLD);
    }

    private OptionalDouble gain(Change change, Quantity to, double untold) {
        return gain(changed.apply(change, to), untold);
    }

    private OptionalDouble gain(Optional<CarModel> with, double untold) {
        if (with.isEmpty()) {
            return OptionalDouble.empty();
        }
        drive(List.of(track.car(), with.get()), places().keySet());
        double gain = 0;
        for (Map.Entry<Place, HowFarOff> each : places().entrySet()) {
            gain += (told(each.getKey()) ? 1 : untold) * gain(each.getKey(), each.getValue(), with.get());
        }
        return OptionalDouble.of(gain);
    }

    private boolean told(Place place) {
        return complaints.stream().anyMatch(complaint -> place.in(complaint.report().orElseThrow()));
    }

    private double gain(Place place, HowFarOff far, CarModel with) {
        Optional<Figures> was = figures(track.car(), place);
        Optional<Figures> is = figures(with, place);
        boolean lost = was.isEmpty() || was.get().lost();
        if (is.isEmpty() || is.get().lost()) {
            return lost || !place.balance() ? 0 : far.after(0) - HowFarOff.LOST;
        }
        return lost ? far.after(0) / 2 : far.after(0) - far.after(Noticed.more(place.of(), was.get(), is.get()));
    }

    private Map<Place, HowFarOff> places() {
        if (places.isEmpty()) {
            List<Place> all = looked();
            List<CarModel> then = runs.stream().map(HowFarOff.Run::car).distinct().toList();
            if (then.stream().anyMatch(car -> car != track.car())) {
                drive(then, all);
            }
            all.forEach(this::add);
        }
        return places;
    }

    /** Where the car is looked at: one that has become loose in fast corners is not worth what it gained in slow ones. */
    private List<Place> looked() {
        List<Place> all = new ArrayList<>();
        for (CornerSpeed speed : CornerSpeed.values()) {
            for (Phase phase : BALANCE) {
                all.add(new Place(Symptom.UNDERSTEER, phase, speed));
            }
            all.add(new Place(Symptom.WHEELSPIN, Phase.EXIT, speed));
        }
        all.add(new Place(Symptom.FRONT_LOCKING, Phase.BRAKING, CornerSpeed.MEDIUM));
        all.add(new Place(Symptom.REAR_LOCKING, Phase.BRAKING, CornerSpeed.MEDIUM));
        if (complaints.stream().anyMatch(it -> it.symptom() == Symptom.KERB_INSTABILITY)) {
            all.add(new Place(Symptom.KERB_INSTABILITY, Phase.KERBS, CornerSpeed.MEDIUM));
        }
        return all;
    }

    private void add(Place place) {
        HowFarOff far = new HowFarOff(place, told() / Math.max(1, complaints.size()));
        for (HowFarOff.Run run : runs) {
            shift(place, run.car()).ifPresent(shift -> far.heard(run.told(), shift));
        }
        places.put(place, far);
    }

    /** By how many words more it is now than with the settings of another run; empty where one of both is lost. */
    private OptionalDouble shift(Place place, CarModel then) {
        if (then == track.car()) {
            return OptionalDouble.of(0);
        }
        Optional<Figures> was = figures(then, place);
        Optional<Figures> is = was.isEmpty() || was.get().lost() ? Optional.empty() : figures(track.car(), place);
        return is.isEmpty() || is.get().lost() ? OptionalDouble.empty()
                : OptionalDouble.of(Noticed.more(place.of(), was.get(), is.get()));
    }

    private void drive(List<CarModel> cars, Collection<Place> places) {
        Set<ProvingGround.Asked> asked = new LinkedHashSet<>();
        for (Place place : places) {
            asked.add(ProvingGround.Asked.of(place.phase(), place.speed().metresPerSecond()));
        }
        track.driveAhead(cars, asked);
    }

    private Optional<Figures> figures(CarModel car, Place place) {
        return track.figures(car, place.phase(), place.speed().metresPerSecond());
    }
}
