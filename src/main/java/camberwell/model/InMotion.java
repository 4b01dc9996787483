package camberwell.model;

import camberwell.car.Dimension;
import camberwell.car.Setting;
import camberwell.physics.CornerPhase;
import camberwell.physics.VehicleModel;
import camberwell.physics.motion.Damper;
import camberwell.physics.motion.Differential;
import camberwell.physics.motion.Inertia;
import camberwell.physics.motion.MovingCar;
import camberwell.physics.motion.Relaxation;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Axle;
import java.util.Optional;

/**
 * A car's file as a car of the transient model. What a file does not tell is estimated: moments of inertia as the
 * three open multi-body cars have them (CommonRoad vehicle models, Technical University of Munich: yaw 0.94 to 1.10
 * times {@code m a b}, the body's pitch 0.92 to 0.99 times, its roll with a radius of 0.34 to 0.39 of the track),
 * dampers by the damping ratio of a class of car, in the middle of their range, with three times the force at the
 * stiff end of it as at the soft end (common practice, no source).
 */
final class InMotion {

    private static final double YAW = 1.0;
    private static final double PITCH = 0.95;
    private static final double ROLL_RADIUS = 0.35;
    /** Of the unsprung mass, at the wheel's radius. */
    private static final double WHEEL = 0.35;
    /** Damping in rebound over that in bump. */
    private static final double REBOUND = 1.6;
    private static final double RANGE = 3.0;
    /** Rise of a roll centre over that of the body. */
    private static final double LINKS = 1.5;
    /** Part of the downforce that goes forward, for each metre of rake. */
    private static final double RAKE = 2.5;

    private InMotion() {
    }

    static MovingCar of(CarModel model) {
        VehicleModel vehicle = raised(model, model.vehicle(CornerPhase.MID_CORNER));
        double unsprung = vehicle.front().unsprungMass() + vehicle.rear().unsprungMass();
        double body = vehicle.mass() - unsprung;
        double levers = vehicle.cgToFront() * vehicle.cgToRear();
        double radius = ROLL_RADIUS * (vehicle.front().track() + vehicle.rear().track()) / 2;
        Inertia inertia = new Inertia(YAW * vehicle.mass() * levers, body * radius * radius, PITCH * body * levers,
                WHEEL * unsprung / 4 * vehicle.wheelRadius() * vehicle.wheelRadius());
        double front = vehicle.mass() * vehicle.frontWeightFraction() - vehicle.front().unsprungMass();
        return MovingCar.of(vehicle, inertia,
                damper(model, front, Adjuster.FRONT_BUMP, Adjuster.FRONT_REBOUND),
                damper(model, body - front, Adjuster.REAR_BUMP, Adjuster.REAR_REBOUND),
                differentials(model, vehicle), Relaxation.USUAL);
    }

    /**
     * The centre of gravity rises with the axle, its roll centre half as much again, as the links turn (between the body's
     * own and the twofold of a strut: common practice, no source). Where the air presses the car down, a nose that comes
     * lower or a tail that comes higher moves that forward (J. Katz, Race Car Aerodynamics, 1995, from memory; by a percent
     * in four millimetres: common practice, no source).
     */
    private static VehicleModel raised(CarModel model, VehicleModel vehicle) {
        double front = model.raised(Axle.FRONT);
        double rear = model.raised(Axle.REAR);
        double weight = vehicle.frontWeightFraction();
        double forward = RAKE * (rear - front) * Math.max(0, vehicle.front().downforce() + vehicle.rear().downforce());
        return front == 0 && rear == 0 ? vehicle
                : vehicle.withCgHeight(vehicle.cgHeight() + weight * front + (1 - weight) * rear)
                        .withFront(axle -> axle.withRollCentreHeight(axle.rollCentreHeight() + LINKS * front)
                                .withDownforce(axle.downforce() + forward))
                        .withRear(axle -> axle.withRollCentreHeight(axle.rollCentreHeight() + LINKS * rear)
                                .withDownforce(axle.downforce() - forward));
    }

    private static Damper damper(CarModel model, double carried, Adjuster bump, Adjuster rebound) {
        Dimension spring = bump == Adjuster.FRONT_BUMP ? Dimension.FRONT_WHEEL_RATE : Dimension.REAR_WHEEL_RATE;
        // A change of spring leaves the dampers as they were.
        double critical = 2 * Math.sqrt(model.origin().dimension(spring).orElseThrow().si() * carried / 2);
        double mean = model.damping() * critical;
        double asBump = 2 / (1 + REBOUND) * mean;
        return new Damper(asBump * turned(model, bump), REBOUND * asBump * turned(model, rebound));
    }

    /** Force of a damper at its setting over that in the middle of its range. */
    private static double turned(CarModel model, Adjuster adjuster) {
        Optional<Setting> setting = model.car().setting(adjuster);
        if (setting.isEmpty() || !(setting.get().max().value() > setting.get().min().value())) {
            return 1;
        }
        double low = setting.get().min().value();
        double high = setting.get().max().value();
        double place = (setting.get().now().value() - (low + high) / 2) / (high - low);
        return Math.pow(RANGE, setting.get().largerIsSofter() ? -place : place);
    }

    private static MovingCar.Differentials differentials(CarModel model, VehicleModel vehicle) {
        double share = vehicle.driveFrontFraction() < 1 ? 1 - vehicle.driveFrontFraction() : 1;
        double overrun = share * vehicle.mass() * CornerPhase.OVERRUN * vehicle.wheelRadius();
        CarModel.Lock lock = model.lock();
        Differential driven = new Differential(lock.preload(), model.powerRamp(),
                Math.max(0, Math.min(1, (lock.coast() - lock.preload()) / overrun)));
        return vehicle.driveFrontFraction() < 1
                ? new MovingCar.Differentials(Differential.OPEN, Differential.OPEN, driven)
                : new MovingCar.Differentials(driven, Differential.OPEN, Differential.OPEN);
    }
}
