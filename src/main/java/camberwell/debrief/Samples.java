package camberwell.debrief;

import camberwell.car.TyreSpec;
import camberwell.run.Case;
import camberwell.run.TyreReading;
import camberwell.saying.Heard;
import camberwell.saying.Told;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Wheel;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Readings that stand for all that an instrument may show, so that a question that is answered by numbers can be
 * weighed like one that is answered by words: one reading for each thing that a rule can see in it. The figures lie
 * well inside what counts as clear: common practice, no source.
 */
final class Samples {

    /** Taken for the middle of a window that nobody gave, °C. */
    private static final double USUAL_TREAD = 80;
    /** Off the window's end, K. */
    private static final double OUTSIDE = 15;
    /** Off the target, bar. */
    private static final double OFF_TARGET = 0.15;
    private static final List<Double> TRACKS = List.of(8.0, 25.0, 45.0);

    private Samples() {
    }

    /** An answer, and what it is called where it stands for others. */
    record Sample(String label, Answer answer) {
    }

    /** An answer that somebody may give in so many words. */
    static Sample spoken(Answer answer) {
        return new Sample("", answer);
    }

    /** What a tread may look like, at each end of the car. */
    static List<Sample> looks() {
        List<Sample> looks = new ArrayList<>();
        for (Place place : List.of(Place.FRONT, Place.REAR)) {
            for (Symptom symptom : List.of(Symptom.HOT_INNER_EDGE, Symptom.HOT_OUTER_EDGE, Symptom.HOT_MIDDLE,
                    Symptom.GRAINING, Symptom.OVERHEATING)) {
                looks.add(new Sample(look(symptom) + " at the " + place.id(), new Answer.InWords(Heard.of(
                        new Told(symptom, List.of(place), List.of())))));
            }
        }
        return looks;
    }

    private static String look(Symptom symptom) {
        return symptom == Symptom.GRAINING ? "grained" : symptom == Symptom.OVERHEATING ? "blistered"
                : symptom == Symptom.HOT_MIDDLE ? "worn in the middle"
                : symptom == Symptom.HOT_INNER_EDGE ? "worn inside" : "worn outside";
    }

    /** Cold, mild and hot tracks. */
    static List<Sample> tracks() {
        return TRACKS.stream().map(track -> spoken(new Answer.Measured(new Quantity(track, Unit.CELSIUS)))).toList();
    }

    /** What the pyrometer may show, and what the gauge may show where the car has a target. */
    static List<Sample> tyres(Case run) {
        List<Sample> tyres = treads(run);
        tyres.addAll(pressures(run));
        return tyres;
    }

    /** Even tyres in their window; and for each axle a hot edge, a hot or cool middle, too hot, too cold. */
    private static List<Sample> treads(Case run) {
        List<Sample> treads = new ArrayList<>();
        treads.add(new Sample("all even and in their window", treads(run, Axle.FRONT, 0, 0, 0, 0)));
        for (Axle axle : Axle.values()) {
            treads.add(new Sample(axle.id() + " inner edge hot", treads(run, axle, 8, 0, -8, 0)));
            treads.add(new Sample(axle.id() + " outer edge hot", treads(run, axle, -5, 0, 5, 0)));
            treads.add(new Sample(axle.id() + " middle hot", treads(run, axle, -4, 6, -4, 0)));
            treads.add(new Sample(axle.id() + " middle cool", treads(run, axle, 4, -6, 4, 0)));
            treads.add(new Sample(axle.id() + " too hot", treads(run, axle, 0, 0, 0, 1)));
            treads.add(new Sample(axle.id() + " too cold", treads(run, axle, 0, 0, 0, -1)));
        }
        return treads;
    }

    /** One axle as said, the other one even and in its window; {@code side} is above or below the window. */
    private static Answer treads(Case run, Axle axle, double inner, double middle, double outer, int side) {
        Map<Wheel, TyreReading> tyres = new EnumMap<>(Wheel.class);
        for (Wheel wheel : Wheel.values()) {
            boolean chosen = wheel.axle() == axle;
            TyreSpec spec = run.car().tyres(wheel.axle());
            double low = spec.windowLow().map(it -> it.in(Unit.CELSIUS)).orElse(USUAL_TREAD);
            double high = spec.windowHigh().map(it -> it.in(Unit.CELSIUS)).orElse(USUAL_TREAD);
            double level = !chosen || side == 0 ? (low + high) / 2 : side > 0 ? high + OUTSIDE : low - OUTSIDE;
            tyres.put(wheel, new TyreReading(celsius(level + (chosen ? inner : 0)),
                    celsius(level + (chosen ? middle : 0)),
                    celsius(level + (chosen ? outer : 0)), Optional.empty(), Optional.empty()));
        }
        return new Answer.Read(tyres);
    }

    private static Optional<Quantity> celsius(double temperature) {
        return Optional.of(new Quantity(temperature, Unit.CELSIUS));
    }

    /** At the target; and for each axle, both tyres above or below it. None where no target is known. */
    private static List<Sample> pressures(Case run) {
        List<Sample> pressures = new ArrayList<>();
        if (run.car().tyres(Axle.FRONT).hotTarget().isPresent() || run.car().tyres(Axle.REAR).hotTarget().isPresent()) {
            pressures.add(new Sample("all at the target pressure", pressures(run, Axle.FRONT, 0)));
            for (Axle axle : Axle.values()) {
                pressures.add(new Sample(axle.id() + " above the target pressure", pressures(run, axle, OFF_TARGET)));
                pressures.add(new Sample(axle.id() + " below the target pressure", pressures(run, axle, -OFF_TARGET)));
            }
        }
        return pressures;
    }

    private static Answer pressures(Case run, Axle axle, double off) {
        Map<Wheel, TyreReading> tyres = new EnumMap<>(Wheel.class);
        for (Wheel wheel : Wheel.values()) {
            run.car().tyres(wheel.axle()).hotTarget(wheel).ifPresent(target -> {
                double bar = target.in(Unit.BAR) + (wheel.axle() == axle ? off : 0);
                tyres.put(wheel, new TyreReading(Optional.empty(), Optional.empty(), Optional.empty(),
                        Optional.empty(), Optional.of(new Quantity(bar, Unit.BAR))));
            });
        }
        return new Answer.Read(tyres);
    }
}
