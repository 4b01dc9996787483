package camberwell.channel;

import camberwell.units.Figures;

/** One set of signs: the car turns the way it is steered, and forwards is where it gains speed. */
final class Signs {

    private final Log log;
    private final double alike;
    private final double moving;

    private Signs(Log log, Limits limits) {
        this.log = log;
        alike = limits.of("signs.alike");
        moving = limits.of("signs.moving");
    }

    /**
     * Settles them in place.
     *
     * @return whether left and right are certain, from positions or by somebody's word
     */
    static boolean settle(Log log, ChannelMap map, Limits limits) {
        Signs signs = new Signs(log, limits);
        boolean known = signs.settle(map);
        signs.longitudinal();
        return known;
    }

    private float[] of(Kind kind) {
        return log.samples(kind);
    }

    /** One turn, one sign: the steering and the lateral acceleration follow the yaw rate. */
    private boolean settle(ChannelMap map) {
        Kind lead = log.has(Kind.YAW_RATE) ? Kind.YAW_RATE : Kind.LATERAL_ACCELERATION;
        boolean said = map.columns().entrySet().stream().anyMatch(it -> it.getKey().kind() == lead
                && it.getValue().sign().isPresent());
        if (lead == Kind.YAW_RATE && log.has(Kind.LATERAL_ACCELERATION)) {
            Fit fit = Fit.of(of(Kind.SPEED), of(Kind.YAW_RATE), of(Kind.LATERAL_ACCELERATION), log.size(), alike);
            if (fit.slope() < 0) {
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
            double with = Fit.withSteering(log, lead, lead != Kind.YAW_RATE);
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
        Sums sums = new Sums();
        for (int i = step; i + step < log.size(); i++) {
            double ax = x[i] - x[i - step];
            double ay = y[i] - y[i - step];
            double bx = x[i + step] - x[i];
            double by = y[i + step] - y[i];
            double turned = Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
            double other = of(lead)[i] / (lead == Kind.YAW_RATE ? 1 : Math.max(moving, of(Kind.SPEED)[i]));
            if (of(Kind.SPEED)[i] > moving) {
                sums.add(turned, other);
            }
        }
        return sums.correlation();
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
        Sums sums = new Sums();
        for (int i = step; i + step < log.size(); i++) {
            double gain = (speed[i + step] - speed[i - step]) * log.rate() / (2 * step);
            if (Math.abs(gain) < 40) {
                sums.add(gain, values[i]);
            }
        }
        double slope = sums.slope();
        if (Math.abs(sums.correlation()) < 0.6) {
            log.doubt("the longitudinal acceleration does not go with the speed and is left out");
            log.drop(channel);
            return;
        }
        log.settle(channel, log.bindings().get(channel).unit().orElse(LoggedUnit.nearest(
                MotionUnits.ACCELERATIONS, Math.abs(1 / slope)).orElseThrow()));
        if (slope < 0 != log.bindings().get(channel).sign() < 0) {
            turn(Kind.LONGITUDINAL_ACCELERATION, "the change of speed");
        }
    }
}
