package camberwell.reading;

import static camberwell.physics.TreadRead.ramp;
import static camberwell.reading.AxlePressures.text;

import camberwell.fact.Reading.State;
import camberwell.run.Case;
import camberwell.run.TyreReading;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Wheel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads the gauge: pressures against their target, their minimum, each other and the gas law. Limits without a source
 * beside them are common practice, no source.
 */
final class GaugeReader {

    /** Bar between the two tyres of an axle from which one of them is told of alone. */
    static final double ALONE_STARTS = 0.06;
    static final double ALONE_FULL = 0.16;
    /** The gas is cooler than the tread; hotter by more than this and a gauge or a thermometer is wrong, K. */
    private static final double GAS_OVER_TREAD = 10;

    private final Case run;
    private final Notepad notes;
    private final ReadIn in;

    GaugeReader(Case run, Notepad notes) {
        this.run = run;
        this.notes = notes;
        in = ReadIn.of(run);
    }

    /** Reads the tyres of one axle. */
    void read(Axle axle, List<WheelFigures> wheels) {
        target(axle, AxlePressures.of(wheels));
        minimum(axle, wheels);
        lost(axle, wheels);
        filledUnlike(axle, wheels);
    }

    /** Two tyres of one axle that were filled unlike and not read hot: on a circuit that turns both ways nobody means that. */
    private void filledUnlike(Axle axle, List<WheelFigures> wheels) {
        List<WheelFigures> cold = wheels.stream().filter(tyre -> tyre.hot().isEmpty()
                && Optional.ofNullable(run.tyres().get(tyre.wheel())).flatMap(TyreReading::coldPressure).isPresent()).toList();
        if (cold.size() < 2 || run.conditions().turns().oneSided()) {
            return;
        }
        double apart = Math.abs(cold.get(0).cold().orElseThrow().si() - cold.get(1).cold().orElseThrow().si()) / 1e5;
        if (apart >= ALONE_STARTS) {
            notes.doubt("the " + axle.id() + " tyres were filled unlike, " + cold.get(0).wheel().id() + " "
                    + text(cold.get(0).cold().orElseThrow()) + " and " + cold.get(1).wheel().id() + " "
                    + text(cold.get(1).cold().orElseThrow()) + ": set them alike before the car is judged, unless that is meant");
        }
    }

    private void target(Axle axle, AxlePressures pressures) {
        if (pressures.read().isEmpty()) {
            return;
        }
        double alone = 0;
        if (pressures.read().size() == 2) {
            alone = Math.max(alone(pressures.read().get(0), pressures.read().get(1)),
                    alone(pressures.read().get(1), pressures.read().get(0)));
        }
        String statement = axle.id() + " tyres " + pressures.against();
        notes.note(axle.id(), State.ABOVE_TARGET, pressures.above() * (1 - alone), statement);
        notes.note(axle.id(), State.BELOW_TARGET, pressures.below() * (1 - alone), statement);
        notes.note(axle.id(), State.AT_TARGET, pressures.atTarget() * (1 - alone), statement);
    }

    /** A tyre is told of alone as far as its partner does not share what is wrong with it. */
    private double alone(WheelFigures tyre, WheelFigures partner) {
        double off = tyre.overTargetBar().orElseThrow();
        double other = partner.overTargetBar().orElseThrow();
        double shared = Math.max(0, Math.signum(off) * other);
        // Where the partner is further off the other way, it is the one to be looked at.
        double opposite = Math.max(0, -Math.signum(off) * other);
        double blame = opposite > Math.abs(off) ? Math.abs(off) / opposite : 1;
        double alone = blame * ramp(Math.abs(off - other), ALONE_STARTS, ALONE_FULL)
                * Math.max(0, ramp(Math.abs(off), AxlePressures.STARTS, AxlePressures.FULL)
                        - ramp(shared, AxlePressures.STARTS, AxlePressures.FULL));
        notes.note(tyre.wheel().id(), off > 0 ? State.ABOVE_TARGET_ALONE : State.BELOW_TARGET_ALONE, alone, tyre.wheel().id()
                + " tyre " + AxlePressures.against(tyre, off) + "; its partner differs by "
                + AxlePressures.bar(tyre, Math.abs(off - other)));
        return alone;
    }

    private void minimum(Axle axle, List<WheelFigures> wheels) {
        Optional<Quantity> least = run.car().tyres(axle).coldMinimum();
        List<String> below = new ArrayList<>();
        for (Wheel wheel : Wheel.values()) {
            Optional<Quantity> cold = wheels.stream().filter(tyre -> tyre.wheel() == wheel).findFirst()
                    .map(WheelFigures::cold).orElseGet(() -> TyreReader.set(run, wheel));
            if (wheel.axle() == axle && least.isPresent() && cold.filter(it -> it.compareTo(least.get()) < 0).isPresent()) {
                below.add(wheel.id() + " tyre: cold " + text(cold.get()) + " is below its minimum of "
                        + text(least.get()));
            }
        }
        below.forEach(tyre -> notes.doubt(tyre + ": set it before it runs again"));
        notes.note(axle.id(), State.BELOW_MINIMUM, below.isEmpty() ? 0 : 1, String.join("; ", below));
    }

    /** A tyre that is no higher hot than cold leaks, was bled, or was misread: what it reads is not built on. */
    private void lost(Axle axle, List<WheelFigures> wheels) {
        List<String> lost = new ArrayList<>();
        for (WheelFigures tyre : wheels) {
            if (tyre.cold().isPresent() && tyre.hot().filter(hot -> hot.compareTo(tyre.cold().get()) <= 0).isPresent()) {
                lost.add(tyre.wheel().id() + " tyre: hot " + text(tyre.hot().get()) + " is not above cold "
                        + text(tyre.cold().get()));
            }
        }
        lost.forEach(tyre -> notes.doubt(tyre + ": it leaks, it was bled, or a reading is wrong. Look for the leak, and "
                + "measure again before a pressure is set"));
        notes.note(axle.id(), State.NO_GROWTH, lost.isEmpty() ? 0 : 1, String.join("; ", lost));
    }

    /** A growth that no tyre shows is a mistake of the gauge, the thermometer or the pen. */
    void growth(WheelFigures tyre) {
        if (tyre.cold().isEmpty() || tyre.hot().isEmpty()) {
            return;
        }
        if (tyre.hot().get().compareTo(tyre.cold().get()) > 0 && tyre.gas().isPresent() && tyre.tread().isPresent()
                && tyre.gas().get().in(Unit.CELSIUS) > tyre.tread().get().mean() + GAS_OVER_TREAD) {
            notes.doubt(tyre.wheel().id() + " tyre: the growth from " + text(tyre.cold().get()) + " to "
                    + text(tyre.hot().get()) + " would need gas at " + in.temperature(tyre.gas().get().in(Unit.CELSIUS))
                    + ", hotter than its tread at "
                    + in.temperature(tyre.tread().get().mean()) + ": the cold pressure was set in colder tyres than was said, "
                    + "the air in the tyre is damp, the tread was read late, or a gauge is wrong");
        }
    }
}
