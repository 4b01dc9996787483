package camberwell.physics.motion;

import java.util.Arrays;

/**
 * What was written down of a run, every {@link #INTERVAL}: one row of figures a channel. It ends early where the car
 * was lost: it spun, or left the course.
 */
public final class History {

    /** s. */
    public static final double INTERVAL = 0.005;
    private static final double SPUN = 0.7;
    private static final double OFF = 8.0;

    private final double[][] rows = new double[Channel.count()][];
    private int size;
    private boolean lost;

    private History(int capacity) {
        for (int i = 0; i < rows.length; i++) {
            rows[i] = new double[capacity];
        }
    }

    /**
     * Lets a car run, and writes down what it does.
     *
     * @param motion the car
     * @param until time to stop at, s
     * @param distance way along the course to stop at, m
     * @param step of the integration, s
     */
    static History of(Motion motion, double until, double distance, double step) {
        int each = (int) Math.round(INTERVAL / step);
        History history = new History((int) Math.ceil((until - motion.time()) / INTERVAL) + 2);
        motion.look();
        history.add(motion);
        while (motion.time() < until - step / 2.0 && motion.distance() < distance && !history.lost) {
            for (int i = 0; i < each; i++) {
                motion.step(step);
            }
            motion.look();
            history.add(motion);
            history.lost = Math.abs(motion.sideslip()) > SPUN || Math.abs(motion.offset()) > OFF
                    || motion.speed() < Dynamics.SLOWEST || !Double.isFinite(motion.speed());
        }
        return history;
    }

    private void add(Motion motion) {
        VehicleSlip slip = new VehicleSlip(motion);
        set(Channel.TIME, motion.time());
        set(Channel.DISTANCE, motion.distance());
        set(Channel.OFFSET, motion.offset());
        set(Channel.STEER, motion.steer());
        set(Channel.UNDERSTEER, slip.understeer());
        set(Channel.SPEED, motion.speed());
        set(Channel.SIDESLIP, motion.sideslip());
        set(Channel.YAW_RATE, motion.yawRate());
        set(Channel.LATERAL, motion.lateral());
        set(Channel.LONGITUDINAL, motion.longitudinal());
        set(Channel.VERTICAL, motion.vertical());
        set(Channel.ROLL, motion.roll());
        set(Channel.PITCH, motion.pitch());
        set(Channel.DRIVE, motion.drive());
        set(Channel.BRAKE, motion.brake());
        set(Channel.FRONT_SATURATION, slip.saturation(0));
        set(Channel.REAR_SATURATION, slip.saturation(2));
        set(Channel.FRONT_LOCKING, slip.locking(0));
        set(Channel.REAR_LOCKING, slip.locking(2));
        set(Channel.SPINNING, slip.spinning());
        set(Channel.WHEEL_SPEED_DIFFERENCE, slip.difference());
        set(Channel.STEERING_TORQUE, slip.steeringTorque());
        set(Channel.FRONT_TRAVEL, Math.max(motion.travel(0), motion.travel(1)));
        set(Channel.REAR_TRAVEL, Math.max(motion.travel(2), motion.travel(3)));
        set(Channel.FRONT_SCRUB, slip.scrub(0) + slip.scrub(1));
        set(Channel.REAR_SCRUB, slip.scrub(2) + slip.scrub(3));
        for (int wheel = 0; wheel < 4; wheel++) {
            set(Channel.load(wheel), motion.load(wheel));
        }
        size++;
    }

    private void set(Channel channel, double value) {
        rows[channel.ordinal()][size] = value;
    }

    /** How many moments were written down, at least one. */
    public int size() {
        return size;
    }

    /** Whether the car was lost. */
    public boolean lost() {
        return lost;
    }

    /** A figure at a moment. */
    public double at(Channel channel, int moment) {
        return rows[channel.ordinal()][moment];
    }

    /** A channel over all moments. */
    public double[] of(Channel channel) {
        return Arrays.copyOf(rows[channel.ordinal()], size);
    }

    /** The moment nearest to a time, s. */
    public int moment(double time) {
        int moment = (int) Math.round((time - rows[0][0]) / INTERVAL);
        return Math.max(0, Math.min(size - 1, moment));
    }
}
