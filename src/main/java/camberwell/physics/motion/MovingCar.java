package camberwell.physics.motion;

import camberwell.physics.AxleModel;
import camberwell.physics.VehicleModel;
import java.util.function.UnaryOperator;

/**
 * A car as the transient model sees it: that of the steady model, and what only shows while something changes.
 *
 * @param vehicle the car of the steady model; its axles' locking torques are not read, the differentials are
 * @param inertia moments of inertia
 * @param front damper of each front wheel
 * @param rear damper of each rear wheel
 * @param differentials those of the car
 * @param relaxation how soon the tyres answer
 * @param sprungAhead how far the body's centre of gravity is ahead of the whole car's, m
 * @param drag air resistance over the square of the speed, N/(m/s)², not negative
 */
public record MovingCar(VehicleModel vehicle, Inertia inertia, Damper front, Damper rear,
        Differentials differentials, Relaxation relaxation, double sprungAhead, double drag) {

    /**
     * The differentials of a car; one that is not driven through does not act.
     *
     * @param front between the front wheels
     * @param centre between the axles
     * @param rear between the rear wheels
     */
    public record Differentials(Differential front, Differential centre, Differential rear) {

        /** None of them locks. */
        public static final Differentials OPEN =
                new Differentials(Differential.OPEN, Differential.OPEN, Differential.OPEN);
    }

    /** Refuses a car whose unsprung masses cannot move. */
    public MovingCar {
        if (!(vehicle.front().unsprungMass() > 0.0 && vehicle.rear().unsprungMass() > 0.0)) {
            throw new IllegalArgumentException("a moving car needs the unsprung mass of its axles");
        }
        if (!(Double.isFinite(vehicle.front().tyreRate() + vehicle.rear().tyreRate()))) {
            throw new IllegalArgumentException("a moving car needs the vertical rate of its tyres");
        }
        if (!(Double.isFinite(sprungAhead) && drag >= 0.0 && Double.isFinite(drag))) {
            throw new IllegalArgumentException("lever and drag must be finite, drag not negative");
        }
    }

    /** A car whose body sits where the axles' unsprung masses leave it, without drag. */
    public static MovingCar of(VehicleModel vehicle, Inertia inertia, Damper front, Damper rear,
            Differentials differentials, Relaxation relaxation) {
        double unsprung = vehicle.front().unsprungMass() + vehicle.rear().unsprungMass();
        double moment = vehicle.rear().unsprungMass() * vehicle.cgToRear()
                - vehicle.front().unsprungMass() * vehicle.cgToFront();
        return new MovingCar(vehicle, inertia, front, rear, differentials, relaxation,
                moment / (vehicle.mass() - unsprung), 0.0);
    }

    /** The same car with another steady part. */
    public MovingCar withVehicle(UnaryOperator<VehicleModel> change) {
        return new MovingCar(change.apply(vehicle), inertia, front, rear, differentials, relaxation, sprungAhead,
                drag);
    }

    /** The same car with its front dampers changed. */
    public MovingCar withFront(UnaryOperator<Damper> change) {
        return new MovingCar(vehicle, inertia, change.apply(front), rear, differentials, relaxation, sprungAhead,
                drag);
    }

    /** The same car with its rear dampers changed. */
    public MovingCar withRear(UnaryOperator<Damper> change) {
        return new MovingCar(vehicle, inertia, front, change.apply(rear), differentials, relaxation, sprungAhead,
                drag);
    }

    /** The same car with other differentials. */
    public MovingCar withDifferentials(Differentials others) {
        return new MovingCar(vehicle, inertia, front, rear, others, relaxation, sprungAhead, drag);
    }

    /** The same car on tyres that answer otherwise. */
    public MovingCar withRelaxation(Relaxation other) {
        return new MovingCar(vehicle, inertia, front, rear, differentials, other, sprungAhead, drag);
    }

    /** Mass on springs, kg. */
    double sprungMass() {
        return vehicle.mass() - vehicle.front().unsprungMass() - vehicle.rear().unsprungMass();
    }

    AxleModel axle(int wheel) {
        return wheel < 2 ? vehicle.front() : vehicle.rear();
    }
}
