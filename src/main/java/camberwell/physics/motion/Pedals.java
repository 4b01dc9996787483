package camberwell.physics.motion;

import camberwell.physics.VehicleModel;

/** A foot that holds a speed, for test runs without a driver. */
final class Pedals {

    private static final double GAIN = 1.0;

    private final VehicleModel vehicle;
    private double force;

    Pedals(MovingCar car) {
        vehicle = car.vehicle();
    }

    void hold(Motion motion, double speed) {
        force = vehicle.mass() * GAIN * (speed - motion.speed());
    }

    void at(Controls controls) {
        controls.drive = vehicle.wheelRadius() * force;
        controls.brake = 0.0;
    }
}
