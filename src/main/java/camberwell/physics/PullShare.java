package camberwell.physics;

/** How the wheels of a car in a left turn share what drives or brakes it: by axle, by differential, and by what each can take. */
final class PullShare {

    /** Part of the inner wheel's grip that the differential uses before it shifts torque to the outer one. */
    private static final double INNER_WHEEL_SPINS_FROM = 0.9;
    /** Part of a wheel's grip that braking may use; what a wheel cannot take, the others must. */
    private static final double BRAKED_PART = 0.95;
    private static final double DRIVEN_PART = 0.999;
    /** Lateral acceleration, m/s², about which the wheels' speed difference makes a differential lock. */
    private static final double LOCKING_SETS_IN = 0.5;

    private final VehicleModel car;
    private final FourWheels wheels;
    private final double[] force;
    private double lateral;
    private boolean brakesShort;
    private boolean frontTractionShort;
    private boolean rearTractionShort;

    PullShare(VehicleModel car, FourWheels wheels) {
        this.car = car;
        this.wheels = wheels;
        this.force = wheels.longitudinalForce;
    }

    /** Whether all four wheels together cannot brake as hard. */
    boolean brakesShort() {
        return brakesShort;
    }

    /** Whether a front wheel spins. */
    boolean frontTractionShort() {
        return frontTractionShort;
    }

    /** Whether a rear wheel spins. */
    boolean rearTractionShort() {
        return rearTractionShort;
    }

    /**
     * Shares the pull among the wheels.
     *
     * @param pull what the wheels have to push the car with, N; negative where they brake it
     * @param lateral acceleration in m/s², which tells the wheels' speeds apart
     */
    void share(double pull, double lateral) {
        this.lateral = lateral;
        brakesShort = false;
        double driveFront = car.driveFrontFraction();
        if (pull >= 0.0) {
            frontTractionShort = drive(FourWheels.FRONT_LEFT, pull * driveFront, driveFront > 0.0 ? car.front() : null);
            rearTractionShort = drive(FourWheels.REAR_LEFT, pull * (1.0 - driveFront), driveFront < 1.0 ? car.rear() : null);
        } else {
            frontTractionShort = false;
            rearTractionShort = false;
            double front = pull * car.brakeFrontFraction();
            split(FourWheels.FRONT_LEFT, front, driveFront > 0.0 ? car.front() : null);
            split(FourWheels.REAR_LEFT, pull - front, driveFront < 1.0 ? car.rear() : null);
            passOnBraking();
        }
        for (int i = 0; i < 4; i++) {
            wheels.ellipse[i] = MagicFormula.ellipse(force[i], wheels.curve[i]);
        }
    }

    /** Shares an axle's drive; true if a wheel spins. */
    private boolean drive(int left, double owed, AxleModel driven) {
        split(left, owed, driven);
        int right = left + 1;
        boolean spins = limit(left);
        if (spins && driven != null) {
            // The outer wheel gets no more than the spinning one and the lock.
            double most = force[left] + 2.0 * locked(driven);
            force[right] = Math.min(force[right], most);
        }
        return limit(right) || spins;
    }

    private boolean limit(int wheel) {
        double most = DRIVEN_PART * wheels.grip(wheel);
        if (Math.abs(force[wheel]) <= most) {
            return false;
        }
        force[wheel] = Math.copySign(most, force[wheel]);
        return true;
    }

    /** Force that the differential takes from one wheel and gives to the other at most, N. */
    private double locked(AxleModel driven) {
        return driven.lockingTorque() / (2.0 * car.wheelRadius()) * lateral / Math.hypot(lateral, LOCKING_SETS_IN);
    }

    /**
     * Shares an axle's force between its wheels. While both wheels grip, the outer one is faster and a locking
     * differential takes torque from it (against the turn); as the inner one nears its grip, it turns that round.
     */
    private void split(int left, double owed, AxleModel driven) {
        double half = owed / 2.0;
        double inner = half;
        if (driven != null && driven.lockingTorque() > 0.0) {
            double locked = locked(driven);
            inner = Math.max(half - locked, Math.min(half + locked, INNER_WHEEL_SPINS_FROM * wheels.grip(left)));
        }
        force[left] = inner;
        force[left + 1] = owed - inner;
    }

    private void passOnBraking() {
        double left = 0.0;
        double room = 0.0;
        for (int i = 0; i < 4; i++) {
            double most = -BRAKED_PART * wheels.grip(i);
            if (force[i] < most) {
                left += most - force[i];
                force[i] = most;
            }
            room += force[i] - most;
        }
        if (left > 0.0) {
            brakesShort = left > room;
            double part = brakesShort || room == 0.0 ? 1.0 : left / room;
            for (int i = 0; i < 4; i++) {
                force[i] -= part * (force[i] + BRAKED_PART * wheels.grip(i));
            }
        }
    }
}
