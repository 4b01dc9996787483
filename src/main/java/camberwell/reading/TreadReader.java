package camberwell.reading;

import static camberwell.physics.TreadRead.ramp;

import camberwell.fact.Reading.State;
import camberwell.physics.TreadRead;
import camberwell.run.Case;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Turn;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * Reads the pyrometer: edges and middle of each tread, the window, left against right, front against rear. Limits without a
 * source beside them are common practice, no source.
 */
final class TreadReader {

    /** How far one tyre of an axle counts whose partner does not show the same. */
    private static final double ONE_OF_TWO = 0.6;
    /** Kelvin outside the window from which it is clear. */
    static final double WINDOW_FULL = 10;
    /** Kelvin outside the window up to which a tyre may still be called inside it. */
    private static final double WINDOW_NEAR = 3;
    static final double HOTTER_AXLE_STARTS = 5;
    static final double HOTTER_AXLE_FULL = 15;
    static final double SIDES_STARTS = 8;
    static final double SIDES_FULL = 20;
    /** A side that the circuit works less ought not to be the hotter one at all. */
    private static final double WRONG_SIDE_STARTS = 3;
    private static final double WRONG_SIDE_FULL = 12;
    /** Bar off the target from which the gauge counts whatever the tread shows. */
    private static final double GAUGE_DECIDES = 0.25;
    /** Clearness of a hot edge or middle from which nobody calls the tread even. */
    private static final double EVEN_ENDS = 0.3;
    /** Inner less outer that the two tyres of an axle may differ by on a circuit that turns both ways, K. */
    private static final double UNLIKE_EDGES = 12;
    /** Clearness from which a contradiction is told. */
    private static final double WORTH_TELLING = 0.25;

    private final Case run;
    private final Optional<HotCorner> hotCorner;
    private final Notepad notes;
    private final ReadIn in;

    TreadReader(Case run, Optional<HotCorner> hotCorner, Notepad notes) {
        this.run = run;
        this.hotCorner = hotCorner;
        this.notes = notes;
        in = ReadIn.of(run);
    }

    /** Reads the tyres of one axle. */
    void read(Axle axle, List<WheelFigures> wheels) {
        edges(axle, wheels);
        window(axle, wheels);
    }

    /**
     * The loaded tyres are judged: the others hardly work.
     */
    private void edges(Axle axle, List<WheelFigures> wheels) {
        List<WheelFigures> read = withTread(wheels);
        List<WheelFigures> loaded = read.stream().filter(WheelFigures::loaded).toList();
        if (loaded.isEmpty()) {
            if (!read.isEmpty()) {
                notes.doubt("the tread of the loaded " + axle.id() + " tyre was not read; its partner says little about "
                        + "camber and pressure");
            }
            return;
        }
        List<TreadRead> treads = loaded.stream().map(wheel -> wheel.tread().orElseThrow()).toList();
        double difference = TyreReadings.innerMinusOuter(treads).orElseThrow();
        double inner = clear(treads, difference, TreadRead::innerHotClearness);
        double outer = clear(treads, difference, TreadRead::outerHotClearness);
        // One camber serves both wheels: what the less loaded one says against it counts for less, not for nothing.
        double innerAnywhere = most(loaded, TreadRead::innerHotClearness);
        double outerAnywhere = most(loaded, TreadRead::outerHotClearness);
        String figures = figures(loaded);
        double insideHot = inner * (1 - outerAnywhere / 2);
        double outsideHot = outer * (1 - innerAnywhere / 2);
        boolean byWheel = run.car().camberByWheel(axle) && !LoadedSide.of(run).turns().oneSided();
        if (byWheel) {
            // Where each wheel has a camber of its own, only what both show is the axle's.
            loaded.forEach(wheel -> alone(wheel, loaded));
            insideHot = least(loaded, TreadRead::innerHotClearness);
            outsideHot = least(loaded, TreadRead::outerHotClearness);
        }
        if (insideHot >= outsideHot) {
            notes.note(axle.id(), State.INNER_EDGE_HOT, insideHot, axle.id() + " inner edge " + in.difference(difference)
                    + " hotter than the outer" + figures);
        } else {
            notes.note(axle.id(), State.OUTER_EDGE_HOT, outsideHot, axle.id() + " outer edge " + in.difference(-difference)
                    + " hotter than the inner" + figures);
        }
        if (loaded.size() == 2 && !byWheel) {
            double unlike = loaded.get(0).tread().orElseThrow().innerMinusOuter()
                    - loaded.get(1).tread().orElseThrow().innerMinusOuter();
            if (Math.abs(unlike) > UNLIKE_EDGES) {
                notes.doubt("the two " + axle.id() + " tyres differ by " + in.difference(Math.abs(unlike)) + " in inner less "
                        + "outer edge" + figures + ": measure the camber of each wheel before both are changed"
                        + "; the hotter tyre counts for more, since it does more of the work");
            }
        }
        middle(axle, loaded, AxlePressures.of(loaded), Math.max(innerAnywhere, outerAnywhere));
    }

    /** What one tyre's edges show and its partner's do not. */
    private void alone(WheelFigures wheel, List<WheelFigures> loaded) {
        List<WheelFigures> partner = loaded.stream().filter(other -> other != wheel).toList();
        TreadRead tread = wheel.tread().orElseThrow();
        String figures = figures(loaded);
        double difference = tread.innerMinusOuter();
        notes.note(wheel.wheel().id(), State.INNER_EDGE_HOT_ALONE, tread.innerHotClearness()
                * (1 - most(partner, TreadRead::innerHotClearness)), wheel.wheel().id() + " inner edge "
                + in.difference(difference) + " hotter than the outer" + figures);
        notes.note(wheel.wheel().id(), State.OUTER_EDGE_HOT_ALONE, tread.outerHotClearness()
                * (1 - most(partner, TreadRead::outerHotClearness)), wheel.wheel().id() + " outer edge "
                + in.difference(-difference) + " hotter than the inner" + figures);
    }

    /**
     * The middle tells of pressure, and so does the gauge of the same tyres: where one clearly says the opposite of the
     * other, the rules trust neither.
     */
    private void middle(Axle axle, List<WheelFigures> loaded, AxlePressures pressures, double edges) {
        String figures = figures(loaded);
        double middle = mean(loaded, TreadRead::middleMinusEdges);
        TreadRead across = new TreadRead(0, middle, 0);
        double hot = across.middleHotClearness();
        double cold = across.middleCoolClearness();
        // A gauge at its target makes the middle less telling; one far off it, the other way, takes it back.
        double against = hot > 0 ? pressures.below() : pressures.above();
        double opposed = Math.min(Math.max(hot, cold), against);
        double trust = 1 - Math.max(pressures.atTarget() / 2,
                ramp(hot > 0 ? -pressures.off() : pressures.off(), AxlePressures.FULL, GAUGE_DECIDES));
        notes.note(axle.id(), State.MIDDLE_HOT, hot * trust, axle.id() + " middle " + in.difference(middle)
                + " hotter than the mean of the edges" + figures);
        notes.note(axle.id(), State.MIDDLE_COLD, cold * trust, axle.id() + " middle " + in.difference(-middle)
                + " cooler than the mean of the edges" + figures);
        notes.note(axle.id(), State.EVEN_TREAD, 1 - ramp(Math.max(edges, Math.max(hot, cold)), 0, EVEN_ENDS), axle.id()
                + " tread even across its width" + figures);
        if (Math.max(hot, cold) < WORTH_TELLING || opposed < WORTH_TELLING
                && pressures.atTarget() < WORTH_TELLING) {
            return;
        }
        notes.doubt(axle.id() + " middle " + in.difference(Math.abs(middle)) + (hot > 0 ? " hotter" : " cooler")
                + " than the edges says too " + (hot > 0 ? "much" : "little") + " air, but the gauge reads "
                + pressures.against() + (Math.abs(pressures.off()) >= GAUGE_DECIDES
                ? ": the gauge decides. Set the pressure, and read the tread again after the next run"
                : ": trust neither yet. Check the gauge, and read the tread again straight after a hard lap; if both "
                + "stay so, the target may not suit this tyre and rim"));
    }

    private void window(Axle axle, List<WheelFigures> wheels) {
        List<WheelFigures> read = withTread(wheels);
        Optional<Quantity> low = run.car().tyres(axle).windowLow();
        Optional<Quantity> high = run.car().tyres(axle).windowHigh();
        if (read.isEmpty() || low.isEmpty() || high.isEmpty()) {
            return;
        }
        double mean = worked(read);
        double below = low.get().in(Unit.CELSIUS) - mean;
        double above = mean - high.get().in(Unit.CELSIUS);
        String window = "; their window is " + low.get() + " to " + high.get();
        // In the unit of the window that it is held against.
        String tyres = axle.id() + " tyres " + new Quantity(mean, Unit.CELSIUS).to(low.get().unit()).text(0) + " on average";
        notes.note(axle.id(), State.BELOW_WINDOW, dryWindow(run) ? ramp(below, 0, WINDOW_FULL) : 0, tyres + window);
        notes.note(axle.id(), State.ABOVE_WINDOW, ramp(above, 0, WINDOW_FULL), tyres + window);
        // What is outside by a few kelvin is no evidence that it is inside: one reading does not speak against itself.
        notes.note(axle.id(), State.INSIDE_WINDOW, dryWindow(run) ? 1 - ramp(Math.max(below, above), 0, WINDOW_NEAR) : 0,
                tyres + window);
        if (read.size() == 2) {
            double first = read.get(0).offWindow().orElseThrow();
            double second = read.get(1).offWindow().orElseThrow();
            if (first * second < 0) {
                notes.doubt("one " + axle.id() + " tyre is below its window and the other above it; their mean of "
                        + in.temperature(mean) + " is neither's temperature");
            }
        }
    }

    /** A wet tyre on a wet road runs cooler than a window that was given for the dry, and is none the worse for it. */
    static boolean dryWindow(Case run) {
        return run.conditions().surface() != Surface.WET && !run.onRainTyres();
    }

    /**
     * Left against right. What both axles share on a circuit that turns both ways is the circuit's; on one that mostly
     * turns one way the side that it works less ought not to be the hotter one at all.
     */
    void sides(TyreReadings figures) {
        double shared = run.conditions().turns() == Turn.BOTH ? shared(leftOver(figures.wheels(Axle.FRONT)),
                leftOver(figures.wheels(Axle.REAR))) : 0;
        if (Math.abs(shared) >= SIDES_STARTS) {
            notes.doubt("the " + (shared > 0 ? "left" : "right") + " tyres are the hotter ones at both ends, by "
                    + in.difference(Math.abs(shared)) + " at least: that is what a circuit does that mostly turns "
                    + (shared > 0 ? "right" : "left") + "; say which way it turns");
        }
        for (Axle axle : Axle.values()) {
            leftOver(figures.wheels(axle)).ifPresent(left -> sides(axle, withTread(figures.wheels(axle)), left, shared));
        }
    }

    private static double shared(OptionalDouble front, OptionalDouble rear) {
        if (front.isEmpty() || rear.isEmpty() || front.getAsDouble() * rear.getAsDouble() <= 0) {
            return 0;
        }
        return Math.signum(front.getAsDouble())
                * Math.min(Math.abs(front.getAsDouble()), Math.abs(rear.getAsDouble()));
    }

    /** How much hotter the left tyre is, K; empty where not both were read. */
    private static OptionalDouble leftOver(List<WheelFigures> wheels) {
        List<WheelFigures> read = withTread(wheels);
        return read.size() < 2 ? OptionalDouble.empty() : OptionalDouble.of(meanOf(read, true) - meanOf(read, false));
    }

    private void sides(Axle axle, List<WheelFigures> read, double left, double shared) {
        double clear = switch (run.conditions().turns()) {
            case BOTH -> ramp(Math.abs(left - shared), SIDES_STARTS, SIDES_FULL);
            case LEFT -> ramp(left, WRONG_SIDE_STARTS, WRONG_SIDE_FULL);
            case RIGHT -> ramp(-left, WRONG_SIDE_STARTS, WRONG_SIDE_FULL);
        };
        double corner = hotCorner.filter(hot -> hot.wheel().axle() == axle).map(HotCorner::clearness).orElse(0.0);
        notes.note(axle.id(), State.SIDES_DIFFER, Math.max(clear, corner), axle.id() + " left tyre "
                + in.temperature(meanOf(read, true)) + ", right tyre " + in.temperature(meanOf(read, false))
                + (run.conditions().turns() == Turn.BOTH ? ""
                        : ", on a circuit that mostly turns " + run.conditions().turns().id()));
    }

    private static double meanOf(List<WheelFigures> read, boolean left) {
        return mean(read.stream().filter(wheel -> wheel.wheel().left() == left).toList(), TreadRead::mean);
    }

    private static List<WheelFigures> withTread(List<WheelFigures> wheels) {
        return wheels.stream().filter(wheel -> wheel.tread().isPresent()).toList();
    }

    /** Front against rear, each against the middle of its own window where both have one. */
    void axles(TyreReadings figures) {
        List<WheelFigures> front = withTread(figures.wheels(Axle.FRONT));
        List<WheelFigures> rear = withTread(figures.wheels(Axle.REAR));
        if (front.isEmpty() || rear.isEmpty()) {
            return;
        }
        Optional<Double> frontWindow = middleOfWindow(Axle.FRONT);
        Optional<Double> rearWindow = middleOfWindow(Axle.REAR);
        boolean windows = frontWindow.isPresent() && rearWindow.isPresent();
        double difference = worked(front) - worked(rear)
                - (windows ? frontWindow.get() - rearWindow.get() : 0);
        Axle hotter = difference > 0 ? Axle.FRONT : Axle.REAR;
        notes.note(hotter.id(), State.HOTTER_AXLE, ramp(Math.abs(difference), HOTTER_AXLE_STARTS, HOTTER_AXLE_FULL), hotter.id()
                + " tyres " + in.difference(Math.abs(difference)) + " hotter than the " + hotter.other().id() + " tyres"
                + (windows ? ", each against its own window" : ""));
    }

    private Optional<Double> middleOfWindow(Axle axle) {
        return run.car().tyres(axle).windowLow().flatMap(low -> run.car().tyres(axle).windowHigh()
                .map(high -> (low.in(Unit.CELSIUS) + high.in(Unit.CELSIUS)) / 2));
    }

    private static double most(List<WheelFigures> wheels, ToDoubleFunction<TreadRead> clearness) {
        return wheels.stream().mapToDouble(wheel -> clearness.applyAsDouble(wheel.tread().orElseThrow())).max()
                .orElse(0);
    }

    private static double least(List<WheelFigures> wheels, ToDoubleFunction<TreadRead> clearness) {
        return wheels.stream().mapToDouble(wheel -> clearness.applyAsDouble(wheel.tread().orElseThrow())).min()
                .orElse(0);
    }

    /** What both together say, or a little less than what the clearer of them says. */
    private static double clear(List<TreadRead> treads, double difference, ToDoubleFunction<TreadRead> clearness) {
        return Math.max(clearness.applyAsDouble(new TreadRead(difference, 0, 0)),
                ONE_OF_TWO * treads.stream().mapToDouble(clearness).max().orElseThrow());
    }

    /** How hot its own work makes an axle, °C: as far as something else heats a tyre, it counts as its partner does. */
    private double worked(List<WheelFigures> read) {
        double mean = mean(read, TreadRead::mean);
        return read.stream().filter(tyre -> hotCorner.filter(hot -> hot.wheel() != tyre.wheel()
                && hot.wheel().axle() == tyre.wheel().axle()).isPresent()).findFirst()
                .map(partner -> mean + hotCorner.orElseThrow().clearness() * (partner.tread().orElseThrow().mean() - mean))
                .orElse(mean);
    }

    private static double mean(List<WheelFigures> wheels, ToDoubleFunction<TreadRead> figure) {
        return wheels.stream().mapToDouble(wheel -> figure.applyAsDouble(wheel.tread().orElseThrow())).average()
                .orElseThrow();
    }

    private String figures(List<WheelFigures> wheels) {
        List<String> each = wheels.stream().map(wheel -> {
            TreadRead tread = wheel.tread().orElseThrow();
            return wheel.wheel().id() + " " + in.number(tread.inner()) + "/" + in.number(tread.middle()) + "/"
                    + in.number(tread.outer());
        }).toList();
        return " (" + String.join(", ", each) + " " + in.unit().symbol() + ")";
    }
}
