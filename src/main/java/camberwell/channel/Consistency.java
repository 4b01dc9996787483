package camberwell.channel;

import camberwell.problem.ProblemsException;
import java.util.List;
import java.util.Optional;

/**
 * Brings a log's channels into SI units and one set of signs, by what they have to do with each other: a car that does not
 * slide has a lateral acceleration of speed times yaw rate, its speed adds up to its distance, and it turns the way it is
 * steered. A stated unit stands, and is doubted aloud where the data contradict it.
 */
public final class Consistency {

    /** Nothing can be held against anything in less, s. */
    private static final double SHORTEST = 5;
    /** More of a pedal than all of it shows where the largest that was held is a little less than what it reached. */
    private static final double MOST = 1.1;

    private final Log log;

    private Consistency(Log log) {
        this.log = log;
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
        Consistency consistency = new Consistency(log);
        StuckChannels.blank(log, limits);
        consistency.speedFromWheels();
        MotionUnits.settle(log, limits);
        consistency.others();
        return Signs.settle(log, map, limits);
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

    /** What has to do with no other channel goes by its size. */
    private void others() {
        for (Channel channel : List.copyOf(log.bindings().keySet())) {
            Kind kind = channel.kind();
            Optional<LoggedUnit> unit = log.bindings().get(channel).unit();
            switch (kind) {
                case TIME, LAP, LAP_TIME, SPEED, YAW_RATE, LATERAL_ACCELERATION, LONGITUDINAL_ACCELERATION, LATITUDE,
                        LONGITUDE, WHEEL_SPEED -> { }
                case THROTTLE, BRAKE -> pedal(channel);
                case STEERING -> log.settle(channel, unit.orElse(LoggedUnit.DEGREE));
                case VERTICAL_ACCELERATION -> log.settle(channel, unit.orElse(log.largest(channel) > 4.5
                        ? LoggedUnit.METRE_PER_SECOND_SQUARED : LoggedUnit.GRAVITY));
                case DISTANCE, POSITION_X, POSITION_Y -> log.settle(channel, unit.orElse(LoggedUnit.METRE));
                case DAMPER, RIDE_HEIGHT -> log.settle(channel, unit.orElse(log.largest(channel) > 1
                        ? LoggedUnit.MILLIMETRE : LoggedUnit.METRE));
                case TREAD, TREAD_INNER, TREAD_MIDDLE, TREAD_OUTER -> log.settle(channel, unit.orElse(
                        log.largest(channel) > 160 ? LoggedUnit.FAHRENHEIT : LoggedUnit.CELSIUS));
                case TYRE_PRESSURE -> {
                    double size = log.largest(channel);
                    log.settle(channel, unit.orElse(size < 6 ? LoggedUnit.BAR : size < 80 ? LoggedUnit.PSI
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
}
