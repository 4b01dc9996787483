package camberwell.physics.motion;

import camberwell.physics.VehicleModel;

/** How hard the tyres are worked at an instant, by axle. */
record VehicleSlip(Motion motion) {

    /** Pneumatic trail of a tyre at a quarter of the car's weight and no slip, m: common practice, no source. */
    private static final double TRAIL = 0.03;

    /** Mean front less mean rear slip angle of the axles' middles, rad. */
    double understeer() {
        double along = motion.speed();
        double across = along * Math.tan(motion.sideslip());
        double front = across + motion.yawRate() * motion.car().vehicle().cgToFront();
        double rear = across - motion.yawRate() * motion.car().vehicle().cgToRear();
        double side = motion.lateral() < 0.0 ? -1.0 : 1.0;
        return side * (motion.steer() - Math.atan2(front, along) + Math.atan2(rear, along));
    }

    /** Slip over the peak's of an axle whose left wheel is given, weighted with the loads. */
    double saturation(int left) {
        double sum = motion.load(left) + motion.load(left + 1);
        return sum > 0.0 ? (motion.load(left) * motion.saturation(left)
                + motion.load(left + 1) * motion.saturation(left + 1)) / sum : 0.0;
    }

    double locking(int left) {
        return Math.max(braking(left), braking(left + 1));
    }

    private double braking(int wheel) {
        return motion.load(wheel) > 1.0 ? Math.max(0.0, -motion.saturationAlong(wheel)) : 0.0;
    }

    double spinning() {
        double share = motion.car().vehicle().driveFrontFraction();
        double most = 0.0;
        for (int wheel = share > 0.0 ? 0 : 2; wheel < (share < 1.0 ? 4 : 2); wheel++) {
            most = Math.max(most, motion.saturationAlong(wheel));
        }
        return most;
    }

    double difference() {
        int left = motion.car().vehicle().driveFrontFraction() < 1.0 ? 2 : 0;
        return motion.car().vehicle().wheelRadius() * (motion.spin(left + 1) - motion.spin(left));
    }

    /**
     * Torque of the side forces about the steering axes: the mechanical trail that the caster gives, and the tyre's own,
     * a part of the half length of its contact that shrinks as it nears its peak (H. B. Pacejka, Tire and Vehicle
     * Dynamics, brush model, from memory).
     */
    double steeringTorque() {
        double caster = motion.car().vehicle().steeringAxis().caster();
        double mechanical = motion.car().vehicle().wheelRadius() * Math.tan(caster);
        double torque = 0.0;
        for (int wheel = 0; wheel < 2; wheel++) {
            double standing = motion.car().vehicle().mass() * VehicleModel.GRAVITY / 4.0;
            double grown = Math.sqrt(motion.load(wheel) / standing);
            double own = TRAIL * grown * Math.max(0.0, 1.0 - motion.saturation(wheel));
            torque += motion.across(wheel) * (mechanical + own);
        }
        return Math.abs(torque);
    }

    /** Power that a tyre's sliding takes, W. */
    double scrub(int wheel) {
        double across = motion.across(wheel) * motion.speed() * Math.sin(motion.slip(wheel));
        double along = motion.along(wheel) * motion.speed() * motion.longitudinalSlip(wheel);
        return Math.abs(across) + Math.abs(along);
    }
}
