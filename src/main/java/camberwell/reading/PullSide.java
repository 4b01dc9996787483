package camberwell.reading;


import camberwell.run.Case;
import camberwell.run.Report;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Wheel;
import java.util.Map;
import java.util.Optional;

/**
 * The side that a car pulls to, against what its front tyres show. A soft tyre drags and pulls to its own side; on the brakes the
 * wheel that brakes more pulls to its own, and its tyre is the hotter. Limits: common practice, no source.
 */
final class PullSide {

    /** Bar between the two front tyres from which the lower one pulls. */
    private static final double SOFT = 0.1;
    /** Kelvin between their treads from which the brake of the hotter one is looked at. */
    private static final double HOTTER = 5;

    private PullSide() {
    }

    /** What is to be said of it; empty where nobody said to which side, or nothing was read that speaks to it. */
    static Optional<String> of(Case run, Map<Wheel, WheelFigures> wheels) {
        for (Report report : run.reports()) {
            Optional<Turn> to = report.turn().filter(Turn::oneSided);
            if (report.symptom() == Symptom.PULLING && to.isPresent()) {
                boolean left = to.get() == Turn.LEFT;
                Wheel own = left ? Wheel.FRONT_LEFT : Wheel.FRONT_RIGHT;
                String soft = soft(wheels, own);
                String brake = report.phase().filter(phase -> phase == Phase.BRAKING).isPresent()
                        ? brake(wheels, own, ReadIn.of(run)) : "";
                String both = soft + (soft.isEmpty() || brake.isEmpty() ? "" : "; ") + brake;
                return both.isEmpty() ? Optional.empty() : Optional.of("the car pulls to the " + to.get().id() + ": " + both);
            }
        }
        return Optional.empty();
    }

    private static String soft(Map<Wheel, WheelFigures> wheels, Wheel own) {
        Wheel other = own.partner();
        Optional<Double> lower = bar(wheels, own).flatMap(here -> bar(wheels, other).map(there -> here - there));
        return lower.filter(by -> by >= SOFT).map(by -> "the " + other.id() + " tyre, which is the softer by "
                + AxlePressures.bar(wheels.get(own), by) + ", would pull to the other side, so its air is not the reason")
                .orElse("");
    }

    private static String brake(Map<Wheel, WheelFigures> wheels, Wheel own, ReadIn in) {
        Optional<Double> hotter = mean(wheels, own).flatMap(here -> mean(wheels, own.partner()).map(there -> here - there));
        return hotter.filter(by -> by >= HOTTER).map(by -> "the " + own.id() + " tyre is hotter than its partner by "
                + in.difference(by) + ": its brake does more than the other, so look at both").orElse("");
    }

    private static Optional<Double> bar(Map<Wheel, WheelFigures> wheels, Wheel wheel) {
        return Optional.ofNullable(wheels.get(wheel)).flatMap(WheelFigures::hot).map(hot -> hot.si() / 1e5);
    }

    private static Optional<Double> mean(Map<Wheel, WheelFigures> wheels, Wheel wheel) {
        return Optional.ofNullable(wheels.get(wheel)).flatMap(WheelFigures::tread).map(tread -> tread.mean());
    }
}
