package camberwell.physics;

import camberwell.physics.NoEquilibrium.Reason;

/** How a car stands in a left turn: what each wheel carries, how far the body rolls, and how the wheels lean with it. */
final class Stance {

    private final VehicleModel car;
    private final FourWheels wheels;
    private double roll;
    private double frontTravel;
    private double rearTravel;

    Stance(VehicleModel car, FourWheels wheels) {
        this.car = car;
        this.wheels = wheels;
    }

    /** Roll angle of the body, rad. */
    double roll() {
        return roll;
    }

    /**
     * Places the loads.
     *
     * @param speed in m/s
     * @param lateral in m/s², to the left
     * @param longitudinal in m/s², forward
     * @return null when every axle stands on its wheels, else what does not
     */
    Reason place(double speed, double lateral, double longitudinal) {
        double front = car.mass() * VehicleModel.GRAVITY * car.frontWeightFraction();
        double rear = car.mass() * VehicleModel.GRAVITY - front;
        double moved = LoadTransfer.longitudinal(car.mass(), car.cgHeight(), car.wheelbase(), longitudinal);
        front += car.front().downforce() * speed * speed - moved;
        rear += car.rear().downforce() * speed * speed + moved;
        if (!(front > 0.0)) {
            return Reason.FRONT_GRIP;
        }
        if (!(rear > 0.0)) {
            return Reason.REAR_GRIP;
        }
        LoadTransfer.Lateral transfer = car.lateralTransfer(lateral);
        roll = transfer.roll();
        frontTravel = transfer.frontTravel();
        rearTravel = transfer.rearTravel();
        double acrossFront = transfer.front().total();
        double acrossRear = transfer.rear().total();
        double trackRatio = car.front().track() / car.rear().track();
        if (acrossFront > front / 2.0) {
            // The inner front wheel hangs: the rear axle carries what is left of the roll moment.
            acrossRear += (acrossFront - front / 2.0) * trackRatio;
            acrossFront = front / 2.0;
        } else if (acrossRear > rear / 2.0) {
            acrossFront += (acrossRear - rear / 2.0) / trackRatio;
            acrossRear = rear / 2.0;
        }
        if (acrossFront > front / 2.0 || acrossRear > rear / 2.0) {
            return Reason.ROLLOVER;
        }
        wheels.load[FourWheels.FRONT_LEFT] = front / 2.0 - acrossFront;
        wheels.load[FourWheels.FRONT_RIGHT] = front / 2.0 + acrossFront;
        wheels.load[FourWheels.REAR_LEFT] = rear / 2.0 - acrossRear;
        wheels.load[FourWheels.REAR_RIGHT] = rear / 2.0 + acrossRear;
        return null;
    }

    /** Leans the wheels and shapes their tyres for a steer angle of the axle's middle in rad. */
    void shapeTyres(double steer) {
        AxleModel front = car.front();
        AxleModel rear = car.rear();
        SteeringAxis axis = car.steeringAxis();
        // The suspension takes back a part of its own travel alone; what the tyres give, the wheels lean with.
        double frontLean = roll - front.camberGain() * frontTravel;
        double rearLean = roll - rear.camberGain() * rearTravel;
        wheels.lean[FourWheels.FRONT_LEFT] = RollCamber.inner(axis.camber(front.camber(), steer), frontLean, 0.0);
        wheels.lean[FourWheels.FRONT_RIGHT] = -RollCamber.outer(axis.camber(front.camber(), -steer), frontLean, 0.0);
        wheels.lean[FourWheels.REAR_LEFT] = RollCamber.inner(rear.camber(), rearLean, 0.0);
        wheels.lean[FourWheels.REAR_RIGHT] = -RollCamber.outer(rear.camber(), rearLean, 0.0);
        for (int i = 0; i < 4; i++) {
            wheels.curve[i] = (i < FourWheels.REAR_LEFT ? front : rear).tyre().at(wheels.load[i], wheels.lean[i]);
        }
    }
}
