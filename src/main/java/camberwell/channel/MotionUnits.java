package camberwell.channel;

import camberwell.problem.ProblemsException;
import camberwell.units.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The units of speed, yaw rate and lateral acceleration: those that fit each other best. A stated one stands. */
final class MotionUnits {

    private static final List<LoggedUnit> SPEEDS = List.of(LoggedUnit.METRE_PER_SECOND, LoggedUnit.KILOMETRE_PER_HOUR,
            LoggedUnit.MILE_PER_HOUR);
    private static final List<LoggedUnit> YAWS = List.of(LoggedUnit.RADIAN_PER_SECOND, LoggedUnit.DEGREE_PER_SECOND);
    static final List<LoggedUnit> ACCELERATIONS = List.of(LoggedUnit.METRE_PER_SECOND_SQUARED,
            LoggedUnit.GRAVITY);

    private final Log log;
    private final double fits;
    private final double alike;

    private MotionUnits(Log log, Limits limits) {
        this.log = log;
        fits = limits.of("signs.fits");
        alike = limits.of("signs.alike");
    }

    /**
     * Settles them in place.
     *
     * @throws ProblemsException if the channels are not of one car
     */
    static void settle(Log log, Limits limits) {
        new MotionUnits(log, limits).settle();
    }

    private float[] of(Kind kind) {
        return log.samples(kind);
    }

    /** Speed, lateral acceleration and yaw rate: the units that fit each other best. */
    private void settle() {
        List<LoggedUnit> speeds = candidates(Kind.SPEED, SPEEDS);
        if (speeds.size() > 1) {
            speeds = byDistance().map(List::of).orElse(plausible(speeds));
        }
        boolean both = log.has(Kind.YAW_RATE) && log.has(Kind.LATERAL_ACCELERATION);
        List<LoggedUnit> yaws = candidates(Kind.YAW_RATE, YAWS);
        List<LoggedUnit> accelerations = candidates(Kind.LATERAL_ACCELERATION, ACCELERATIONS);
        if (!both) {
            log.settle(Kind.SPEED, speeds.get(0));
            bySize(yaws, accelerations);
            return;
        }
        Fit fit = Fit.of(of(Kind.SPEED), of(Kind.YAW_RATE), of(Kind.LATERAL_ACCELERATION), log.size(), alike);
        if (!fit.goes(alike)) {
            log.settle(Kind.SPEED, speeds.get(0));
            dropTheOdd(fit, yaws, accelerations);
            return;
        }
        double best = Double.MAX_VALUE;
        LoggedUnit[] chosen = new LoggedUnit[3];
        for (LoggedUnit speed : speeds) {
            for (LoggedUnit yaw : yaws) {
                for (LoggedUnit acceleration : accelerations) {
                    double off = Math.abs(Math.log(Math.abs(fit.slope()) * acceleration.factor() / yaw.factor()
                            / speed.factor()));
                    if (off < best) {
                        best = off;
                        chosen = new LoggedUnit[] {speed, yaw, acceleration};
                    }
                }
            }
        }
        if (best > Math.log(fits)) {
            contradiction(Math.exp(best), chosen);
        }
        log.settle(Kind.SPEED, chosen[0]);
        log.settle(Kind.YAW_RATE, chosen[1]);
        log.settle(Kind.LATERAL_ACCELERATION, chosen[2]);
    }

    private void contradiction(double off, LoggedUnit[] chosen) {
        String what = "speed in " + chosen[0].symbol() + ", yaw rate in " + chosen[1].symbol() + " and lateral "
                + "acceleration in " + chosen[2].symbol() + " do not fit each other: one is "
                + Figures.fixed(off, 1) + " times too large";
        if (stated(Kind.SPEED) && stated(Kind.YAW_RATE) && stated(Kind.LATERAL_ACCELERATION)) {
            log.doubt(what + "; the stated units stand");
        } else {
            throw new ProblemsException(log.problem(what + "; state the units in a file for --channels, for "
                    + "instance \"yaw-rate: {column: NAME, unit: deg/s}\""));
        }
    }

    private boolean stated(Kind kind) {
        return log.binding(kind).flatMap(Binding::unit).isPresent();
    }

    /** Of two channels that cannot be of one car, the one that goes with the steering stays. */
    private void dropTheOdd(Fit fit, List<LoggedUnit> yaws, List<LoggedUnit> accelerations) {
        boolean swapped = log.has(Kind.LONGITUDINAL_ACCELERATION) && Fit.of(of(Kind.SPEED), of(Kind.YAW_RATE),
                of(Kind.LONGITUDINAL_ACCELERATION), log.size(), alike).goes(alike);
        double yaw = log.has(Kind.STEERING) ? Math.abs(Fit.withSteering(log, Kind.YAW_RATE, false)) : 0;
        double side = log.has(Kind.STEERING) ? Math.abs(Fit.withSteering(log, Kind.LATERAL_ACCELERATION, true)) : 0;
        String what = "speed times yaw rate and the lateral acceleration do not go together (correlation "
                + Figures.fixed(fit.correlation(), 2) + ")";
        if (swapped) {
            String lateral = log.binding(Kind.LATERAL_ACCELERATION).orElseThrow().heading();
            String along = log.binding(Kind.LONGITUDINAL_ACCELERATION).orElseThrow().heading();
            throw new ProblemsException(log.problem(what + ", but they do with the column \"" + along
                    + "\"; if the two are swapped, write into a file for --channels the lines  lateral-acceleration: {column: \""
                    + along + "\"}  and  longitudinal-acceleration: {column: \"" + lateral + "\"}"));
        }
        if (Math.max(yaw, side) < 0.7) {
            throw new ProblemsException(log.problem(what + ", and neither goes with the steering; name the right "
                    + "columns in a file for --channels, for instance \"yaw-rate: {column: NAME, unit: deg/s}\""));
        }
        Kind odd = yaw >= side ? Kind.LATERAL_ACCELERATION : Kind.YAW_RATE;
        log.doubt(what + "; the " + odd.spoken() + " goes less with the steering and is left out");
        log.drop(Channel.of(odd));
        bySize(yaws, accelerations);
    }

    /** Where the two cannot be held against each other: no car turns faster than 3 rad/s, or corners at 4.5 g. */
    private void bySize(List<LoggedUnit> yaws, List<LoggedUnit> accelerations) {
        log.settle(Kind.YAW_RATE, yaws.size() == 1 || log.largest(Kind.YAW_RATE) < 3 ? yaws.get(0) : yaws.get(1));
        log.settle(Kind.LATERAL_ACCELERATION, accelerations.size() == 1 || log.largest(Kind.LATERAL_ACCELERATION) > 4.5
                ? accelerations.get(0) : accelerations.get(1));
    }

    private List<LoggedUnit> candidates(Kind kind, List<LoggedUnit> usual) {
        return log.binding(kind).flatMap(Binding::unit).map(List::of).orElse(usual);
    }

    /** The unit of speed in which it adds up to the distance. */
    private Optional<LoggedUnit> byDistance() {
        if (!log.has(Kind.DISTANCE)) {
            return Optional.empty();
        }
        double metres = 0;
        double sum = 0;
        float[] distance = of(Kind.DISTANCE);
        float[] speed = of(Kind.SPEED);
        for (int i = 1; i < log.size(); i++) {
            double step = distance[i] - distance[i - 1];
            if (step > 0 && step < 1000 && speed[i] > 0) {
                metres += step;
                sum += speed[i] / log.rate();
            }
        }
        double factor = metres / sum * log.binding(Kind.DISTANCE).flatMap(Binding::unit).map(LoggedUnit::factor)
                .orElse(1.0);
        return LoggedUnit.nearest(SPEEDS, factor).filter(unit -> Math.abs(Math.log(unit.factor() / factor)) < Math.log(1.15));
    }

    /** The units of speed in which a racing car would go as fast, likeliest first. */
    private List<LoggedUnit> plausible(List<LoggedUnit> speeds) {
        double largest = log.largest(Kind.SPEED);
        List<LoggedUnit> likely = new ArrayList<>(speeds.stream()
                .filter(unit -> largest * unit.factor() > 12 && largest * unit.factor() < 110).toList());
        if (largest > 75 && likely.contains(LoggedUnit.KILOMETRE_PER_HOUR)) {
            likely.remove(LoggedUnit.METRE_PER_SECOND);
        }
        return likely.isEmpty() ? speeds : likely;
    }
}
