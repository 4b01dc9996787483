package camberwell.observe;

import camberwell.channel.Limits;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;

/**
 * What a car does where nobody turns it: it weaves on the brakes, wanders, or draws to one side. All of it is judgement, no
 * source; {@code rules/observation.yaml} has the limits.
 */
final class StraightRunning {

    private final MappedRun run;
    private final Optional<MappedRun> earlier;
    private final Limits limits;
    private final List<StraightPiece> pieces;

    /** @param earlier a run of the same car, circuit and logger, to hold this one against */
    StraightRunning(MappedRun run, Optional<MappedRun> earlier) {
        this.run = run;
        this.earlier = earlier;
        this.limits = run.limits();
        this.pieces = StraightPiece.of(run);
    }

    /** A complaint with what was seen of it. */
    record Shown(Measure measure, List<Sighting> sightings) {
    }

    /** @param sidesKnown whether left and right are certain */
    List<Shown> all(boolean sidesKnown) {
        List<Shown> all = new ArrayList<>();
        if (run.trace().log().has(camberwell.channel.Kind.YAW_RATE)) {
            all.add(weaving());
        }
        if (run.line().isPresent()) {
            all.add(wandering());
            all.add(pulling(Phase.BRAKING, usual(run, Phase.STRAIGHT), sidesKnown, "beyond what it takes off the brakes"));
            if (earlier.isPresent() && earlier.get().line().isPresent()) {
                double change = earlier.get().line().get().offset() - run.line().get().offset();
                all.add(pulling(Phase.STRAIGHT, change + usual(earlier.get(), Phase.STRAIGHT), sidesKnown, "beyond "
                        + earlier.get().trace().log().name()));
            }
        }
        return all;
    }

    /**
     * How far the yaw rate goes to and fro on the brakes that the steering does not ask for: its standard deviation, less
     * that of the unbraked straights, which is the road's and the sensor's.
     */
    private Shown weaving() {
        IntToDoubleFunction unasked = run.line().isPresent() ? i -> run.trace().yaw(i) - run.asked(i) : run.trace()::yaw;
        double quiet = Robust.median(pieces.stream().filter(it -> !it.braked())
                .map(it -> deviation(it, unasked)).toList());
        List<Sighting> seen = new ArrayList<>();
        for (StraightPiece piece : pieces) {
            if (piece.braked()) {
                double restless = deviation(piece, unasked);
                double own = Double.isNaN(quiet) ? restless : Math.sqrt(Math.max(0, restless * restless - quiet * quiet));
                seen.add(new Sighting(piece.lap(), piece.corner(), Phase.BRAKING, Math.toDegrees(own), piece.middle()));
            }
        }
        return new Shown(measure(Symptom.UNSTABLE_BRAKING, limits.of("straights.weave-starts"),
                limits.of("straights.weave-clear"), "deg/s",
                "yaw rate to and fro on the brakes beyond that off them"), seen);
    }

    /** How far the yaw rate goes to and fro on a straight, and as far as the steering works against it. */
    private Shown wandering() {
        List<Sighting> seen = new ArrayList<>();
        for (StraightPiece piece : pieces) {
            if (!piece.braked()) {
                double least = Double.MAX_VALUE;
                // What dies away on the straight is what the corner before it left over.
                for (StraightPiece third : piece.thirds()) {
                    least = Math.min(least, Math.min(deviation(third, run.trace()::yaw), deviation(third, run::asked)));
                }
                seen.add(new Sighting(piece.lap(), piece.corner(), Phase.STRAIGHT, Math.toDegrees(least), piece.middle()));
            }
        }
        return new Shown(measure(Symptom.WANDERING, limits.of("straights.wander-starts"), limits.of("straights.wander-clear"),
                "deg/s",
                "yaw rate to and fro on the straight, with steering to match"), seen);
    }

    private Shown pulling(Phase phase, double usual, boolean sidesKnown, String beyond) {
        double side = Math.signum(usual(run, phase) - usual);
        List<Sighting> seen = new ArrayList<>();
        for (StraightPiece piece : pieces) {
            if (piece.phase() == phase && !Double.isNaN(side)) {
                // What goes to and fro is no pull.
                double one = side * (held(run, piece) - usual) - limits.of("straights.pull-scatter") * deviation(piece,
                        run::held);
                seen.add(new Sighting(piece.lap(), piece.corner(), phase, Math.toDegrees(one), piece.middle()));
            }
        }
        String where = !sidesKnown ? "held to one side" : side > 0 ? "held to the left against a pull to the right"
                : "held to the right against a pull to the left";
        return new Shown(measure(Symptom.PULLING, limits.of("straights.pull-starts"), limits.of("straights.pull-clear"), "deg",
                "steering wheel " + where + ", " + beyond), seen);
    }

    private static Measure measure(Symptom symptom, double starts, double clear, String unit, String name) {
        return new Measure(symptom, Optional.empty(), starts, clear, unit, name, 1);
    }

    /** Steering held in the pieces of a phase as a rule, rad; nought where there are none but are wanted for comparison. */
    private static double usual(MappedRun run, Phase phase) {
        return Robust.median(StraightPiece.of(run).stream().filter(it -> it.phase() == phase).map(it -> held(run, it)).toList());
    }

    private static double held(MappedRun run, StraightPiece piece) {
        double[] held = new double[piece.to() - piece.from()];
        for (int i = 0; i < held.length; i++) {
            held[i] = run.held(piece.from() + i);
        }
        return Robust.median(held);
    }

    /** Standard deviation about straight lines through pieces of some seconds: slow changes are the road's. */
    private double deviation(StraightPiece piece, IntToDoubleFunction value) {
        int width = run.trace().samples(limits.of("straights.detrend"));
        int parts = Math.max(1, Math.round((float) (piece.to() - piece.from()) / width));
        double squares = 0;
        int count = 0;
        for (int part = 0; part < parts; part++) {
            int from = piece.from() + (piece.to() - piece.from()) * part / parts;
            int to = piece.from() + (piece.to() - piece.from()) * (part + 1) / parts;
            squares += squaresAboutLine(from, to, value);
            count += to - from;
        }
        return Math.sqrt(squares / Math.max(1, count));
    }

    private static double squaresAboutLine(int from, int to, IntToDoubleFunction value) {
        int n = to - from;
        double mean = 0;
        double slope = 0;
        double spread = 0;
        for (int i = from; i < to; i++) {
            mean += value.applyAsDouble(i) / n;
        }
        double middle = (from + to - 1) / 2.0;
        for (int i = from; i < to; i++) {
            slope += (i - middle) * value.applyAsDouble(i);
            spread += (i - middle) * (i - middle);
        }
        slope /= Math.max(1, spread);
        double squares = 0;
        for (int i = from; i < to; i++) {
            double rest = value.applyAsDouble(i) - mean - slope * (i - middle);
            squares += rest * rest;
        }
        return squares;
    }
}
