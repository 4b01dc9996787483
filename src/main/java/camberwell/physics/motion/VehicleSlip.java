package camberwell.physics.motion;

/** How hard the tyres are worked at an instant, by axle. */
record VehicleSlip(Motion motion) {

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
}
