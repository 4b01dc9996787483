package camberwell.physics.motion;

/** Figures of a run, for one part of it. */
public final class Measures {

    private Measures() {
    }

    /** Mean of a channel over a part; not a number where the run has no moment in it. */
    public static double mean(History run, Manoeuvre.Part part, Channel channel) {
        double sum = 0.0;
        int count = 0;
        for (int i = 0; i < run.size(); i++) {
            if (part.holds(run, i)) {
                sum += run.at(channel, i);
                count++;
            }
        }
        return count == 0 ? Double.NaN : sum / count;
    }

    /** Greatest of a channel over a part. */
    public static double most(History run, Manoeuvre.Part part, Channel channel) {
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < run.size(); i++) {
            if (part.holds(run, i)) {
                most = Math.max(most, run.at(channel, i));
            }
        }
        return most;
    }

    /** Least of a channel over a part. */
    public static double least(History run, Manoeuvre.Part part, Channel channel) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < run.size(); i++) {
            if (part.holds(run, i)) {
                least = Math.min(least, run.at(channel, i));
            }
        }
        return least;
    }

    /** Root mean square of a channel about its mean over a part. */
    public static double variation(History run, Manoeuvre.Part part, Channel channel) {
        double mean = mean(run, part, channel);
        double sum = 0.0;
        int count = 0;
        for (int i = 0; i < run.size(); i++) {
            if (part.holds(run, i)) {
                double off = run.at(channel, i) - mean;
                sum += off * off;
                count++;
            }
        }
        return count == 0 ? Double.NaN : Math.sqrt(sum / count);
    }

    /** Way that the steering goes over a part, to and fro, rad: the work of the driver's hands. */
    public static double steeringWork(History run, Manoeuvre.Part part) {
        double way = 0.0;
        for (int i = 1; i < run.size(); i++) {
            if (part.holds(run, i)) {
                way += Math.abs(run.at(Channel.STEER, i) - run.at(Channel.STEER, i - 1));
            }
        }
        return way;
    }

    /** Time that a wheel is in the air over a part, s. */
    public static double inTheAir(History run, Manoeuvre.Part part, int wheel) {
        int count = 0;
        for (int i = 0; i < run.size(); i++) {
            if (part.holds(run, i) && run.at(Channel.load(wheel), i) <= 0.0) {
                count++;
            }
        }
        return count * History.INTERVAL;
    }

    /**
     * How a channel answers a step, ISO 7401.
     *
     * @param steady value that it settles at
     * @param response time from half the steer until 90 % of that, s
     * @param peak time from half the steer until its first peak, s
     * @param overshoot how far the peak is above the steady value, over it
     */
    public record StepResponse(double steady, double response, double peak, double overshoot) {
    }

    /** The answer of a channel to a step at time zero; the steady value is the mean of the last half second. */
    public static StepResponse stepResponse(History run, Channel channel) {
        int last = run.size() - 1;
        int from = Math.max(0, last - (int) Math.round(0.5 / History.INTERVAL));
        double steady = 0.0;
        for (int i = from; i <= last; i++) {
            steady += run.at(channel, i) / (last - from + 1);
        }
        double response = Double.NaN;
        int highest = 0;
        double side = Math.signum(steady);
        for (int i = 1; i <= last; i++) {
            double value = side * run.at(channel, i);
            double before = side * run.at(channel, i - 1);
            double wanted = 0.9 * side * steady;
            if (Double.isNaN(response) && before < wanted && value >= wanted) {
                response = run.at(Channel.TIME, i - 1)
                        + History.INTERVAL * (wanted - before) / (value - before);
            }
            if (value > side * run.at(channel, highest)) {
                highest = i;
            }
        }
        return new StepResponse(steady, response, run.at(Channel.TIME, highest),
                side * run.at(channel, highest) / (side * steady) - 1.0);
    }

    /**
     * How a car turns after the pedals changed in a turn, ISO 9816 and ISO 7975.
     *
     * @param deceleration mean over the time, m/s²
     * @param yaw yaw rate at that time over that of the course at the present speed
     * @param sideslip sideslip angle less that at the start, rad; below zero the tail comes out in a left turn
     * @param inside how far the car is inside its old course, m
     */
    public record Deviation(double deceleration, double yaw, double sideslip, double inside) {
    }

    /** The deviation at a time after the change, s; the last known where the car was lost before. */
    public static Deviation deviation(History run, double radius, double time) {
        int then = run.moment(time);
        double speed = run.at(Channel.SPEED, then);
        double passed = Math.max(History.INTERVAL, run.at(Channel.TIME, then) - run.at(Channel.TIME, 0));
        return new Deviation((run.at(Channel.SPEED, 0) - speed) / passed,
                run.at(Channel.YAW_RATE, then) * radius / speed,
                run.at(Channel.SIDESLIP, then) - run.at(Channel.SIDESLIP, 0),
                run.at(Channel.OFFSET, then) - run.at(Channel.OFFSET, 0));
    }
}
