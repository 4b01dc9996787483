package camberwell.channel;

import camberwell.problem.ProblemsException;
import camberwell.units.Figures;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Brings a log's channels into SI units and one set of signs, by what they have to do with each other: a car that does not
 * slide has a lateral acceleration of speed times yaw rate, its speed adds up to its distance, and it turns the way it is
 * steered. A stated unit stands, and is doubted aloud where the data contradict it.
 */
public final class Consistency {

    private static final List<LoggedUnit> SPEEDS = List.of(LoggedUnit.METRE_PER_SECOND, LoggedUnit.KILOMETRE_PER_HOUR,
            LoggedUnit.MILE_PER_HOUR);
    private static final List<LoggedUnit> YAWS = List.of(LoggedUnit.RADIAN_PER_SECOND, LoggedUnit.DEGREE_PER_SECOND);
    private static final List<LoggedUnit> ACCELERATIONS = List.of(LoggedUnit.METRE_PER_SECOND_SQUARED,
            LoggedUnit.GRAVITY);
    /** Nothing can be held against anything in less, s. */
    private static final double SHORTEST = 5;
    /** Times the mean distance from the line beyond which a car slides rather than travels. */
    private static final double FAR = 2.0;
    /** More of a pedal than all of it shows where the largest that was held is a little less than what it reached. */
    private static final double MOST = 1.1;

    private final Log log;
    private final double fits;
    private final double alike;
    private final double moving;

    private Consistency(Log log, Limits limits) {
        this.log = log;
        fits = limits.of("signs.fits");
        alike = limits.of("signs.alike");
        moving = limits.of("signs.moving");
    }

    /**
     * Settles units and signs in place.
     *
     * @return whether left and right are certain, from positions or by somebody's word
     * @throws ProblemsException if channels that are needed are not of one car
     */
    public static boolean settle(Log log, ChannelMap map, Limits limits) {
        if (log.size() < SHORTEST * log.rate()) {
            throw new ProblemsException(log.problem("the log is shorter than five seconds"));
        }
        Consistency consistency = new Consistency(log, limits);
        consistency.speedFromWheels();
        consistency.motion();
        consistency.others();
        boolean signed = consistency.signs(map);
        consistency.longitudinal();
        return signed;
    }

    private float[] of(Kind kind) {
        return log.samples(kind);
    }

    private void speedFromWheels() {
        if (log.has(Kind.SPEED)) {
            return;
        }
        List<Channel> wheels = log.bindings().keySet().stream().filter(it -> it.kind() == Kind.WHEEL_SPEED).toList();
        float[] mean = new float[log.size()];
        for (int i = 0; i < log.size(); i++) {
            float sum = 0;
            for (Channel wheel : wheels) {
                sum += log.samples(wheel)[i];
            }
            mean[i] = sum / wheels.size();
        }
        Channel speed = Channel.of(Kind.SPEED);
        log.put(speed, mean);
        Binding first = log.bindings().get(wheels.get(0));
        log.bind(new Binding(speed, "mean of " + wheels.size() + " wheel speeds", first.index(),
                first.unit().filter(unit -> unit.scale() == Scale.SPEED), 1, true));
        log.doubt("no speed of the car: the mean of the wheel speeds stands for it, so that a wheel that locks or spins "
                + "shows less than it is");
    }

    /** Speed, lateral acceleration and yaw rate: the units that fit each other best. */
    private void motion() {
        List<LoggedUnit> speeds = candidates(Kind.SPEED, SPEEDS);
        if (speeds.size() > 1) {
            speeds = byDistance().map(List::of).orElse(plausible(speeds));
        }
        boolean both = log.has(Kind.YAW_RATE) && log.has(Kind.LATERAL_ACCELERATION);
        List<LoggedUnit> yaws = candidates(Kind.YAW_RATE, YAWS);
        List<LoggedUnit> accelerations = candidates(Kind.LATERAL_ACCELERATION, ACCELERATIONS);
        if (!both) {
            decide(Kind.SPEED, speeds.get(0));
            decide(Kind.YAW_RATE, yaws.size() == 1 || largest(Kind.YAW_RATE) < 3 ? yaws.get(0) : yaws.get(1));
            decide(Kind.LATERAL_ACCELERATION, accelerations.size() == 1 || largest(Kind.LATERAL_ACCELERATION) > 4.5
                    ? accelerations.get(0) : accelerations.get(1));
            return;
        }
        Fit fit = fit(of(Kind.SPEED), of(Kind.YAW_RATE), of(Kind.LATERAL_ACCELERATION));
        if (Math.abs(fit.correlation) < alike) {
            decide(Kind.SPEED, speeds.get(0));
            dropTheOdd(fit, yaws, accelerations);
            return;
        }
        double best = Double.MAX_VALUE;
        LoggedUnit[] chosen = new LoggedUnit[3];
        for (LoggedUnit speed : speeds) {
            for (LoggedUnit yaw : yaws) {
                for (LoggedUnit acceleration : accelerations) {
                    double off = Math.abs(Math.log(Math.abs(fit.slope) * acceleration.factor() / yaw.factor()
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
        decide(Kind.SPEED, chosen[0]);
        decide(Kind.YAW_RATE, chosen[1]);
        decide(Kind.LATERAL_ACCELERATION, chosen[2]);
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
        boolean swapped = log.has(Kind.LONGITUDINAL_ACCELERATION) && Math.abs(fit(of(Kind.SPEED), of(Kind.YAW_RATE),
                of(Kind.LONGITUDINAL_ACCELERATION)).correlation) > alike;
        double yaw = log.has(Kind.STEERING) ? Math.abs(fit(of(Kind.SPEED), of(Kind.STEERING), null).correlation(
                of(Kind.YAW_RATE), false)) : 0;
        double side = log.has(Kind.STEERING) ? Math.abs(fit(of(Kind.SPEED), of(Kind.STEERING), null).correlation(
                of(Kind.LATERAL_ACCELERATION), true)) : 0;
        String what = "speed times yaw rate and the lateral acceleration do not go together (correlation "
                + Figures.fixed(fit.correlation, 2) + ")";
        if (swapped) {
            String lateral = log.binding(Kind.LATERAL_ACCELERATION).orElseThrow().heading();
            String along = log.binding(Kind.LONGITUDINAL_ACCELERATION).orElseThrow().heading();
            throw new ProblemsException(log.problem(what + ", but they do with the column \"" + along
                    + "\"; if the two are swapped, write into a file for --channels\n    lateral-acceleration: {column: \""
                    + along + "\"}\n    longitudinal-acceleration: {column: \"" + lateral + "\"}"));
        }
        if (Math.max(yaw, side) < 0.7) {
            throw new ProblemsException(log.problem(what + ", and neither goes with the steering; name the right "
                    + "columns in a file for --channels, for instance \"yaw-rate: {column: NAME, unit: deg/s}\""));
        }
        Kind odd = yaw >= side ? Kind.LATERAL_ACCELERATION : Kind.YAW_RATE;
        log.doubt(what + "; the " + odd.spoken() + " goes less with the steering and is left out");
        log.drop(Channel.of(odd));
        decide(Kind.YAW_RATE, yaws.size() == 1 || largest(Kind.YAW_RATE) < 3 ? yaws.get(0) : yaws.get(1));
        decide(Kind.LATERAL_ACCELERATION, accelerations.size() == 1 || largest(Kind.LATERAL_ACCELERATION) > 4.5
                ? accelerations.get(0) : accelerations.get(1));
    }

    private List<LoggedUnit> candidates(Kind kind, List<LoggedUnit> usual) {
        return log.binding(kind).flatMap(Binding::unit).map(List::of).orElse(usual);
    }

    /** Notes the unit of a channel and brings it into SI. */
    private void decide(Kind kind, LoggedUnit unit) {
        decide(Channel.of(kind), unit);
    }

    private void decide(Channel channel, LoggedUnit unit) {
        if (!log.has(channel)) {
            return;
        }
        Binding binding = log.bindings().get(channel);
        if (binding.unit().isEmpty()) {
            log.clean("the " + channel.spoken() + " is read " + (unit.symbol().isEmpty() ? "as it is, from 0 to 1"
                    : "in " + unit.symbol()) + ": it states no unit, and that fits the other channels");
        }
        float[] values = log.samples(channel);
        if (unit.offset() != 0) {
            for (int i = 0; i < log.size(); i++) {
                values[i] += (float) unit.offset();
            }
        }
        log.scale(channel, unit.factor() * binding.sign());
        log.decided(channel, unit, 1);
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
        return nearest(SPEEDS, factor).filter(unit -> Math.abs(Math.log(unit.factor() / factor)) < Math.log(1.15));
    }

    private static Optional<LoggedUnit> nearest(List<LoggedUnit> units, double factor) {
        return units.stream().min((one, other) -> Double.compare(Math.abs(Math.log(one.factor() / factor)),
                Math.abs(Math.log(other.factor() / factor))));
    }

    /** The units of speed in which a racing car would go as fast, likeliest first. */
    private List<LoggedUnit> plausible(List<LoggedUnit> speeds) {
        double largest = largest(Kind.SPEED);
        List<LoggedUnit> likely = new ArrayList<>(speeds.stream()
                .filter(unit -> largest * unit.factor() > 12 && largest * unit.factor() < 110).toList());
        if (largest > 75 && likely.contains(LoggedUnit.KILOMETRE_PER_HOUR)) {
            likely.remove(LoggedUnit.METRE_PER_SECOND);
        }
        return likely.isEmpty() ? speeds : likely;
    }

    /** What only two in a hundred samples exceed, in size and as it was read. */
    private double largest(Kind kind) {
        return log.has(kind) ? largest(of(kind)) : 0;
    }

    private double largest(float[] values) {
        int step = Math.max(1, log.size() / 20_000);
        double[] some = new double[log.size() / step];
        int count = 0;
        for (int i = 0; i < some.length; i++) {
            double value = Math.abs(values[i * step]);
            if (!Double.isNaN(value)) {
                some[count++] = value;
            }
        }
        Arrays.sort(some, 0, count);
        return count == 0 ? 0 : some[(int) (count * 0.98)];
    }

    /** The regression through the origin of one channel on speed times another. */
    private record Fit(Log log, float[] speed, float[] other, double slope, double correlation) {

        /** Correlation of a third channel with the other times speed, or times speed squared. */
        double correlation(float[] third, boolean squared) {
            double xx = 0;
            double xy = 0;
            double yy = 0;
            for (int i = 0; i < log.size(); i++) {
                double x = other[i] * speed[i] * (squared ? speed[i] : 1);
                if (!Double.isNaN(x * third[i])) {
                    xx += x * x;
                    xy += x * third[i];
                    yy += (double) third[i] * third[i];
                }
            }
            return xx * yy > 0 ? xy / Math.sqrt(xx * yy) : 0;
        }
    }

    private Fit fit(float[] speed, float[] yaw, float[] side) {
        double[] sums = side == null ? new double[3] : sums(speed, yaw, side, log.size());
        Fit fit = line(speed, yaw, sums);
        if (side == null || Math.abs(fit.correlation) >= alike || fit.slope == 0) {
            return fit;
        }
        // A car that slides about turns otherwise than it travels: what lies far from the line is left out once.
        Fit held = line(speed, yaw, near(speed, yaw, side, fit.slope));
        return Math.abs(held.correlation) >= alike ? held : fit;
    }

    private Fit line(float[] speed, float[] yaw, double[] sums) {
        double both = Math.sqrt(sums[0] * sums[2]);
        return new Fit(log, speed, yaw, sums[0] > 0 ? sums[1] / sums[0] : 0, both > 0 ? sums[1] / both : 0);
    }

    /** The same sums over the samples within so many times the mean distance from a line. */
    private double[] near(float[] speed, float[] yaw, float[] side, double slope) {
        double sum = 0;
        int count = 0;
        for (int i = 0; i < log.size(); i++) {
            double off = Math.abs(side[i] - slope * speed[i] * yaw[i]);
            if (!Double.isNaN(off)) {
                sum += off;
                count++;
            }
        }
        double most = FAR * sum / Math.max(1, count);
        float[] kept = new float[log.size()];
        for (int i = 0; i < kept.length; i++) {
            kept[i] = Math.abs(side[i] - slope * speed[i] * yaw[i]) <= most ? side[i] : Float.NaN;
        }
        return sums(speed, yaw, kept, kept.length);
    }

    /** Sums of squares and products of speed times yaw rate and of the lateral acceleration. */
    static double[] sums(float[] speed, float[] yaw, float[] side, int size) {
        double[] sums = new double[3];
        for (int i = 0; i < size; i++) {
            double x = (double) speed[i] * yaw[i];
            if (!Double.isNaN(x * side[i])) {
                sums[0] += x * x;
                sums[1] += x * side[i];
                sums[2] += (double) side[i] * side[i];
            }
        }
        return sums;
    }

    /** One turn, one sign: the steering and the lateral acceleration follow the yaw rate. */
    private boolean signs(ChannelMap map) {
        Kind lead = log.has(Kind.YAW_RATE) ? Kind.YAW_RATE : Kind.LATERAL_ACCELERATION;
        boolean said = map.columns().entrySet().stream().anyMatch(it -> it.getKey().kind() == lead
                && it.getValue().sign().isPresent());
        if (lead == Kind.YAW_RATE && log.has(Kind.LATERAL_ACCELERATION)) {
            Fit fit = fit(of(Kind.SPEED), of(Kind.YAW_RATE), of(Kind.LATERAL_ACCELERATION));
            if (fit.slope < 0) {
                boolean other = map.columns().entrySet().stream().anyMatch(
                        it -> it.getKey().kind() == Kind.LATERAL_ACCELERATION && it.getValue().sign().isPresent());
                turn(other && !said ? Kind.YAW_RATE : Kind.LATERAL_ACCELERATION, "speed times "
                        + (other && !said ? "lateral acceleration" : "yaw rate"));
                said |= other;
            }
        }
        boolean known = said;
        double course = course(lead);
        if (!known && Math.abs(course) > 0.5) {
            known = true;
            if (course < 0) {
                turn(Kind.YAW_RATE, "the course over the ground");
                turn(Kind.LATERAL_ACCELERATION, "the course over the ground");
            }
        }
        if (log.has(Kind.STEERING)) {
            double with = fit(of(Kind.SPEED), of(Kind.STEERING), null).correlation(of(lead), lead != Kind.YAW_RATE);
            if (with < 0) {
                turn(Kind.STEERING, "the " + lead.spoken());
            }
            if (Math.abs(with) < 0.6) {
                log.doubt("the steering goes little with the " + lead.spoken() + " (correlation "
                        + Figures.fixed(Math.abs(with), 2) + "); is the column \""
                        + log.binding(Kind.STEERING).orElseThrow().heading() + "\" the angle of the steering wheel?");
            }
        }
        if (!known) {
            log.doubt("nothing in the log tells left from right; positive is taken to be left. Positions would tell, or "
                    + "\"sign: 1\" or \"sign: -1\" with the " + lead.spoken() + " in a file for --channels");
        }
        return known;
    }

    private void turn(Kind kind, String against) {
        if (log.has(kind)) {
            log.scale(Channel.of(kind), -1);
            log.decided(Channel.of(kind), log.binding(kind).flatMap(Binding::unit).orElse(LoggedUnit.ONE), -1);
            log.clean("the sign of the " + kind.spoken() + " is turned: it goes against " + against);
        }
    }

    /** How the rate at which the course over the ground turns goes with a channel, as a correlation. */
    private double course(Kind lead) {
        float[] x;
        float[] y;
        if (log.has(Kind.LATITUDE) && log.has(Kind.LONGITUDE)) {
            x = of(Kind.LONGITUDE);
            y = of(Kind.LATITUDE);
        } else if (log.has(Kind.POSITION_X) && log.has(Kind.POSITION_Y)) {
            x = of(Kind.POSITION_X);
            y = of(Kind.POSITION_Y);
        } else {
            return 0;
        }
        int step = Math.max(1, (int) Math.round(log.rate() * 0.4));
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (int i = step; i + step < log.size(); i++) {
            double ax = x[i] - x[i - step];
            double ay = y[i] - y[i - step];
            double bx = x[i + step] - x[i];
            double by = y[i + step] - y[i];
            double turned = Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
            double other = of(lead)[i] / (lead == Kind.YAW_RATE ? 1 : Math.max(moving, of(Kind.SPEED)[i]));
            if (!Double.isNaN(turned * other) && of(Kind.SPEED)[i] > moving) {
                xx += turned * turned;
                xy += turned * other;
                yy += other * other;
            }
        }
        return xx * yy > 0 ? xy / Math.sqrt(xx * yy) : 0;
    }

    /** What has to do with no other channel goes by its size. */
    private void others() {
        for (Channel channel : List.copyOf(log.bindings().keySet())) {
            Kind kind = channel.kind();
            Optional<LoggedUnit> unit = log.bindings().get(channel).unit();
            switch (kind) {
                case TIME, LAP, LAP_TIME, SPEED, YAW_RATE, LATERAL_ACCELERATION, LONGITUDINAL_ACCELERATION, LATITUDE,
                        LONGITUDE, WHEEL_SPEED -> { }
                case THROTTLE, BRAKE -> pedal(channel);
                case STEERING -> decide(channel, unit.orElse(LoggedUnit.DEGREE));
                case VERTICAL_ACCELERATION -> decide(channel, unit.orElse(largest(log.samples(channel)) > 4.5
                        ? LoggedUnit.METRE_PER_SECOND_SQUARED : LoggedUnit.GRAVITY));
                case DISTANCE, POSITION_X, POSITION_Y -> decide(channel, unit.orElse(LoggedUnit.METRE));
                case DAMPER, RIDE_HEIGHT -> decide(channel, unit.orElse(largest(log.samples(channel)) > 1
                        ? LoggedUnit.MILLIMETRE : LoggedUnit.METRE));
                case TREAD, TREAD_INNER, TREAD_MIDDLE, TREAD_OUTER -> decide(channel, unit.orElse(
                        largest(log.samples(channel)) > 160 ? LoggedUnit.FAHRENHEIT : LoggedUnit.CELSIUS));
                case TYRE_PRESSURE -> {
                    double size = largest(log.samples(channel));
                    decide(channel, unit.orElse(size < 6 ? LoggedUnit.BAR : size < 80 ? LoggedUnit.PSI
                            : size < 700 ? LoggedUnit.KILOPASCAL : LoggedUnit.PASCAL));
                }
            }
        }
    }

    /** A pedal from 0 to 1: a share as it is, a pressure or a force by the largest there is. */
    private void pedal(Channel channel) {
        float[] values = log.samples(channel);
        // A foot stays longer than one sample; a single cell that leaps is none.
        double largest = 0;
        double least = Double.MAX_VALUE;
        for (int i = 1; i + 1 < log.size(); i++) {
            float lower = Math.min(values[i], Math.min(values[i - 1], values[i + 1]));
            float upper = Math.max(values[i], Math.max(values[i - 1], values[i + 1]));
            if (!Float.isNaN(lower)) {
                largest = Math.max(largest, lower);
                least = Math.min(least, upper);
            }
        }
        boolean share = log.bindings().get(channel).unit().map(LoggedUnit::scale).orElse(Scale.RATIO) == Scale.RATIO;
        double full = share && largest > 0.5 && largest <= 1.1 ? 1 : share && largest > 40 && largest <= 110 ? 100
                : Math.max(largest, 1e-9);
        // A pedal at rest that does not read nought.
        double rest = least > 0.02 * full && least < 0.3 * full ? least : 0;
        for (int i = 0; i < log.size(); i++) {
            values[i] = (float) Math.max(0, Math.min(MOST, (values[i] - rest) / (full - rest)));
        }
        log.decided(channel, full == 100 ? LoggedUnit.PERCENT : LoggedUnit.ONE, 1);
    }

    /** Forwards is where the car gains speed. */
    private void longitudinal() {
        Channel channel = Channel.of(Kind.LONGITUDINAL_ACCELERATION);
        if (!log.has(channel)) {
            return;
        }
        float[] values = log.samples(channel);
        float[] speed = of(Kind.SPEED);
        int step = Math.max(1, (int) Math.round(log.rate() * 0.1));
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (int i = step; i + step < log.size(); i++) {
            double gain = (speed[i + step] - speed[i - step]) * log.rate() / (2 * step);
            if (!Double.isNaN(gain * values[i]) && Math.abs(gain) < 40) {
                xx += gain * gain;
                xy += gain * values[i];
                yy += (double) values[i] * values[i];
            }
        }
        double slope = xx > 0 ? xy / xx : 0;
        if (!(xx * yy > 0) || Math.abs(xy) < 0.6 * Math.sqrt(xx * yy)) {
            log.doubt("the longitudinal acceleration does not go with the speed and is left out");
            log.drop(channel);
            return;
        }
        decide(channel, log.bindings().get(channel).unit().orElse(nearest(ACCELERATIONS, Math.abs(1 / slope))
                .orElseThrow()));
        if (slope < 0 != log.bindings().get(channel).sign() < 0) {
            turn(Kind.LONGITUDINAL_ACCELERATION, "the change of speed");
        }
    }
}
