package camberwell.observe;

import camberwell.channel.Channel;
import camberwell.channel.Kind;
import camberwell.channel.Log;

/**
 * The motion of the car at each sample of a log, in SI units and the signs of ISO 8855. What was not logged is taken from
 * what was, where a car that does not slide would have it so.
 */
final class Trace {

    private static final Channel FRONT_BRAKE = Channel.of(Kind.BRAKE, camberwell.vocabulary.Place.FRONT);

    private final Log log;
    private final float[] speed;
    private final float[] yaw;
    private final float[] side;
    private final float[] yawChange;
    private final float[] gain;
    private final boolean sideslip;
    /** Null where they were not logged; looked up once, as they are asked for at every sample. */
    private final float[] steering;
    private final float[] throttle;
    private final float[] brake;

    /** @param log with its units and signs settled */
    Trace(Log log) {
        this.log = log;
        this.speed = log.samples(Kind.SPEED);
        boolean hasYaw = log.has(Kind.YAW_RATE);
        boolean hasSide = log.has(Kind.LATERAL_ACCELERATION);
        this.yaw = hasYaw ? log.samples(Kind.YAW_RATE) : new float[log.size()];
        this.side = hasSide ? log.samples(Kind.LATERAL_ACCELERATION) : new float[log.size()];
        for (int i = 0; i < log.size(); i++) {
            if (!hasYaw) {
                yaw[i] = side[i] / Math.max(1, speed[i]);
            }
            if (!hasSide) {
                side[i] = yaw[i] * speed[i];
            }
        }
        this.sideslip = hasYaw && hasSide;
        this.steering = log.has(Kind.STEERING) ? log.samples(Kind.STEERING) : null;
        this.throttle = log.has(Kind.THROTTLE) ? log.samples(Kind.THROTTLE) : null;
        this.brake = log.has(Kind.BRAKE) ? log.samples(Kind.BRAKE) : log.has(FRONT_BRAKE) ? log.samples(FRONT_BRAKE) : null;
        this.yawChange = slope(yaw, log.size(), log.rate());
        this.gain = slope(speed, log.size(), log.rate());
    }

    /** Central differences over a twelfth of a second or two samples, whichever is longer. */
    private static float[] slope(float[] values, int size, double rate) {
        int step = Math.max(1, (int) Math.round(rate / 24));
        float[] slope = new float[size];
        for (int i = 0; i < size; i++) {
            int from = Math.max(0, i - step);
            int to = Math.min(size - 1, i + step);
            slope[i] = to > from ? (float) ((values[to] - values[from]) * rate / (to - from)) : Float.NaN;
        }
        return slope;
    }

    Log log() {
        return log;
    }

    int size() {
        return log.size();
    }

    double rate() {
        return log.rate();
    }

    /** Samples in so many seconds, at least one. */
    int samples(double seconds) {
        return Math.max(1, (int) Math.round(seconds * log.rate()));
    }

    /** m/s. */
    double speed(int i) {
        return speed[i];
    }

    /** rad/s, positive in a left turn. */
    double yaw(int i) {
        return yaw[i];
    }

    /** rad/s². */
    double yawChange(int i) {
        return yawChange[i];
    }

    /** Lateral acceleration, m/s², positive in a left turn. */
    double side(int i) {
        return side[i];
    }

    /** Curvature of the path, 1/m. */
    double curvature(int i) {
        return side[i] / Math.max(25.0, (double) speed[i] * speed[i]);
    }

    /** Change of speed, m/s². */
    double gain(int i) {
        return gain[i];
    }

    /** Rate of the sideslip angle, rad/s; not a number unless both yaw rate and lateral acceleration were logged. */
    double sideslipRate(int i) {
        return sideslip ? side[i] / Math.max(5, speed[i]) - yaw[i] : Double.NaN;
    }

    boolean hasSideslip() {
        return sideslip;
    }

    boolean hasSteering() {
        return steering != null;
    }

    /** Angle of the steering wheel, rad. */
    double steering(int i) {
        return steering[i];
    }

    boolean hasThrottle() {
        return throttle != null;
    }

    /** Whether it was measured all the way; of what stands for it no habit is read. */
    boolean throttleMeasured(int from, int to) {
        return measured(throttle, from, to);
    }

    /** Whether it was measured all the way. */
    boolean brakeMeasured(int from, int to) {
        return measured(brake, from, to);
    }

    private static boolean measured(float[] values, int from, int to) {
        boolean all = values != null;
        for (int i = Math.max(0, from); all && i <= to; i++) {
            all = !Float.isNaN(values[i]);
        }
        return all;
    }

    /** 0 to 1; from the change of speed where it was not measured. */
    double throttle(int i) {
        return throttle != null && !Float.isNaN(throttle[i]) ? throttle[i] : gain[i] > 0.3 ? 1 : 0;
    }

    boolean hasBrake() {
        return brake != null;
    }

    /** 0 to 1; from the change of speed where it was not measured. */
    double brake(int i) {
        return brake != null && !Float.isNaN(brake[i]) ? brake[i] : gain[i] < -2.5 ? 0.5 : 0;
    }
}
