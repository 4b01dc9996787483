package camberwell.physics.motion;

import static camberwell.physics.motion.State.COURSE;
import static camberwell.physics.motion.State.DISTANCE;
import static camberwell.physics.motion.State.HEAVE;
import static camberwell.physics.motion.State.HEAVE_RATE;
import static camberwell.physics.motion.State.LAG_ACROSS;
import static camberwell.physics.motion.State.LAG_ALONG;
import static camberwell.physics.motion.State.OFFSET;
import static camberwell.physics.motion.State.PITCH;
import static camberwell.physics.motion.State.PITCH_RATE;
import static camberwell.physics.motion.State.ROLL;
import static camberwell.physics.motion.State.ROLL_RATE;
import static camberwell.physics.motion.State.SPEED;
import static camberwell.physics.motion.State.SPIN;
import static camberwell.physics.motion.State.SWAY;
import static camberwell.physics.motion.State.WHEEL;
import static camberwell.physics.motion.State.WHEEL_RATE;
import static camberwell.physics.motion.State.YAW_RATE;

import camberwell.physics.AxleModel;
import camberwell.physics.MagicFormula;
import camberwell.physics.VehicleModel;

/**
 * The equations of motion: the rate of change of the state from the state and the controls, and nothing else.
 *
 * <p>Plane motion with wheel spins: M. Abe, Vehicle Handling Dynamics, ch. 3, and R. Rajamani, Vehicle Dynamics and
 * Control, ch. 2; the body on its springs: G. Genta, Motor Vehicle Dynamics (all from memory). Each wheel has a mass
 * of its own between spring and tyre, so that a tyre's load follows from how far it is pressed in: the load needs no
 * iteration over the lateral acceleration that it causes, and a wheel leaves the road of itself. Forces in the links
 * pass to the wheels what the roll centres and the wheels' own masses ask for, as in
 * {@link camberwell.physics.LoadTransfer}. Longitudinal and lateral tyre forces share the friction ellipse of
 * {@link MagicFormula}; as it closes, the force turns to oppose the sliding.
 *
 * <p>The springs carry no anti-dive, the wheels steer in parallel, and nothing bends but springs and tyres. Air adds
 * downforce and drag, without heights. Below {@link #SLOWEST} the slips are those of that speed.
 *
 * <p>Mutable for its working space alone; not to be shared between threads.
 */
final class Dynamics {

    /** Below this speed a tyre's slip has no sense, m/s. */
    static final double SLOWEST = 3.0;
    /** Where the brake lets go of a wheel that comes to rest, rad/s. */
    private static final double RESTS = 1.5;
    /** A differential sets in over this speed difference, rad/s, or more where the step would be too long for it. */
    private static final double SETS_IN = 0.2;
    private static final double FASTEST_LOCK = 1200.0;

    final MovingCar car;
    /** Load of each tyre at the last evaluation, N. */
    final double[] load = new double[4];
    /** Force of each tyre along and across its wheel, N. */
    final double[] along = new double[4];
    final double[] across = new double[4];
    /** Slip angle of each wheel, rad, and longitudinal slip, as they are and not as the tyre answers. */
    final double[] slip = new double[4];
    final double[] kappa = new double[4];
    /** Travel of each wheel towards the body from rest, m. */
    final double[] compression = new double[4];
    /** Lateral and longitudinal acceleration along the car's axes, m/s². */
    double lateral;
    double longitudinal;
    /** Vertical acceleration of the body, m/s². */
    double vertical;

    private final double mass;
    private final double sprungMass;
    private final double sprungHeight;
    private final double leaning;
    private final double radius;
    private final double wheelbase;
    private final double[] ahead = new double[4];
    private final double[] aside = new double[4];
    private final double[] toeCosine = new double[4];
    private final double[] toeSine = new double[4];
    private final double[] wheelMass = new double[4];
    private final double[] springLoad = new double[4];
    private final double[] tyreLoad = new double[4];
    private final double[] tyreRate = new double[4];
    private final double[] linkMass = new double[4];
    private final double[] geometric = new double[4];
    private final double[] lever = new double[4];
    private final double[] wheelRate = new double[4];
    private final double[] bump = new double[4];
    private final double[] rebound = new double[4];
    private final double[] bar = new double[4];
    private final double[] overTrack = new double[4];
    private final double[] gain = new double[4];
    private final double[] camber = new double[4];
    private final double[] brakePart = new double[4];
    private final MagicFormula[] tyre = new MagicFormula[4];
    private final double caster;
    private final double kingpin;
    private final double acrossLength;
    private final double alongLength;
    private final double overInertia;
    private double steerSine;
    private double steerCosine;
    private final double[] velocity = new double[4];
    private final double[] sliding = new double[4];
    private final double[] heading = new double[8];
    private final double[] force = new double[4];
    private final double[] rolled = new double[4];
    private final double[] stiffness = new double[4];
    private final double[] shift = new double[4];
    private final double[] torque = new double[4];
    private final double[] curve = new double[MagicFormula.FACTORS];
    private final Shape[] shape = new Shape[4];
    private final double frontSetsIn;
    private final double centreSetsIn;
    private final double rearSetsIn;
    private Course course = Course.STRAIGHT;

    Dynamics(MovingCar car) {
        this.car = car;
        VehicleModel vehicle = car.vehicle();
        mass = vehicle.mass();
        sprungMass = car.sprungMass();
        sprungHeight = vehicle.sprungHeight();
        radius = vehicle.wheelRadius();
        wheelbase = vehicle.wheelbase();
        double sprungFront = sprungMass * (vehicle.cgToRear() + car.sprungAhead()) / wheelbase;
        leaning = VehicleModel.GRAVITY * (sprungMass * sprungHeight
                - sprungFront * vehicle.front().rollCentreHeight()
                - (sprungMass - sprungFront) * vehicle.rear().rollCentreHeight());
        for (int i = 0; i < 4; i++) {
            AxleModel axle = car.axle(i);
            boolean left = (i & 1) == 0;
            ahead[i] = i < 2 ? vehicle.cgToFront() : -vehicle.cgToRear();
            aside[i] = (left ? 0.5 : -0.5) * axle.track();
            double toe = left ? -axle.toe() : axle.toe();
            toeCosine[i] = Math.cos(toe);
            toeSine[i] = Math.sin(toe);
            wheelMass[i] = axle.unsprungMass() / 2.0;
            double carried = i < 2 ? sprungFront : sprungMass - sprungFront;
            springLoad[i] = VehicleModel.GRAVITY * carried / 2.0;
            tyreLoad[i] = springLoad[i] + VehicleModel.GRAVITY * wheelMass[i];
            tyreRate[i] = axle.tyreRate();
            geometric[i] = carried * axle.rollCentreHeight();
            linkMass[i] = (left ? 1.0 : -1.0) * (geometric[i] + axle.unsprungMass() * radius) / axle.track();
            lever[i] = ahead[i] - car.sprungAhead();
            wheelRate[i] = axle.wheelRate();
            Damper damper = i < 2 ? car.front() : car.rear();
            bump[i] = damper.bump();
            rebound[i] = damper.rebound();
            bar[i] = axle.barRate() / (axle.track() * axle.track());
            overTrack[i] = 1.0 / axle.track();
            gain[i] = axle.camberGain();
            camber[i] = axle.camber();
            double front = vehicle.brakeFrontFraction();
            brakePart[i] = 0.5 * (i < 2 ? front : 1.0 - front);
            tyre[i] = axle.tyre();
            axle.tyre().factors(tyreLoad[i], 0.0, curve);
            Shape same = i == 0 ? null : shape[i - 1];
            shape[i] = same != null && same.is(curve[1], curve[3]) ? same : new Shape(curve[1], curve[3]);
        }
        overInertia = 1.0 / car.inertia().wheel();
        caster = vehicle.steeringAxis().caster();
        kingpin = vehicle.steeringAxis().kingpinInclination();
        acrossLength = car.relaxation().across();
        alongLength = car.relaxation().along();
        double most = 2.0 * VehicleModel.GRAVITY * mass * radius;
        frontSetsIn = setsIn(car.differentials().front(), most);
        centreSetsIn = setsIn(car.differentials().centre(), most);
        rearSetsIn = setsIn(car.differentials().rear(), most);
    }

    private double setsIn(Differential differential, double most) {
        double locking = Math.max(differential.locking(0.3 * most), differential.locking(-0.1 * most));
        return Math.max(SETS_IN, locking / (FASTEST_LOCK * car.inertia().wheel()));
    }

    /** Lays the course that distance, offset and course angle are measured on. */
    void follow(Course other) {
        course = other;
    }

    Course course() {
        return course;
    }

    /** Height of the static wheel load, N. */
    double staticLoad(int wheel) {
        return tyreLoad[wheel];
    }

    /** Rates of change of a state under the controls. */
    void rates(double[] x, Controls controls, double[] out) {
        double u = x[SPEED];
        double v = x[SWAY];
        double r = x[YAW_RATE];
        kinematics(x, controls.steer, u, v, r);
        suspension(x);
        tyres(x, controls);
        drive(x, controls);
        plane(x, out, u, v, r);
        body(x, out);
        for (int i = 0; i < 4; i++) {
            double brake = brakePart[i] * controls.brake;
            double turning = Math.max(-1.0, Math.min(1.0, x[SPIN + i] / RESTS));
            out[SPIN + i] = (torque[i] - brake * turning - radius * along[i]) * overInertia;
        }
    }

    private void kinematics(double[] x, double steer, double u, double v, double r) {
        double cosine = Math.cos(steer);
        double sine = Math.sin(steer);
        steerCosine = cosine;
        steerSine = sine;
        for (int i = 0; i < 4; i++) {
            double c = i < 2 ? cosine * toeCosine[i] - sine * toeSine[i] : toeCosine[i];
            double s = i < 2 ? sine * toeCosine[i] + cosine * toeSine[i] : toeSine[i];
            heading[2 * i] = c;
            heading[2 * i + 1] = s;
            double vx = u - r * aside[i];
            double vy = v + r * ahead[i];
            double forward = vx * c + vy * s;
            double speed = Math.max(Math.abs(forward), SLOWEST);
            velocity[i] = speed;
            slip[i] = -arcTangent((vy * c - vx * s) / speed);
            sliding[i] = radius * x[SPIN + i] - forward;
            kappa[i] = sliding[i] / speed;
        }
    }

    private static double arcTangent(double x) {
        if (!(Math.abs(x) < 0.3)) {
            return Math.atan(x);
        }
        double s = x * x;
        return x * (1.0 + s * (-1.0 / 3 + s * (1.0 / 5 + s * (-1.0 / 7 + s * (1.0 / 9 + s * (-1.0 / 11
                + s * (1.0 / 13 + s * (-1.0 / 15 + s * (1.0 / 17 + s * (-1.0 / 19))))))))));
    }

    private void suspension(double[] x) {
        for (int i = 0; i < 4; i++) {
            compression[i] = x[WHEEL + i] - (x[HEAVE] + aside[i] * x[ROLL] - lever[i] * x[PITCH]);
            double rate = x[WHEEL_RATE + i] - (x[HEAVE_RATE] + aside[i] * x[ROLL_RATE] - lever[i] * x[PITCH_RATE]);
            force[i] = springLoad[i] + wheelRate[i] * compression[i] + (rate > 0.0 ? bump[i] : rebound[i]) * rate;
        }
        for (int left = 0; left < 4; left += 2) {
            double apart = compression[left + 1] - compression[left];
            rolled[left] = x[ROLL] - gain[left] * apart * overTrack[left];
            force[left] -= bar[left] * apart;
            force[left + 1] += bar[left] * apart;
        }
    }

    private void tyres(double[] x, Controls controls) {
        // The handbooks' small-angle form, see SteeringAxis.
        double tilt = kingpin * (1.0 - steerCosine);
        double lean = caster * steerSine;
        for (int i = 0; i < 4; i++) {
            boolean left = (i & 1) == 0;
            load[i] = Math.max(0.0, tyreLoad[i] + tyreRate[i] * (controls.road[i] - x[WHEEL + i]));
            double upright = i < 2 ? camber[i] + tilt : camber[i];
            double leant = (left ? upright : -upright) + (i < 2 ? lean : 0.0) - rolled[i & 2];
            tyre[i].factors(load[i], leant, curve);
            double b = curve[0];
            double d = curve[2];
            double a = b * ((acrossLength > 0.0 ? x[LAG_ACROSS + i] : slip[i]) + curve[4]);
            double k = b * (alongLength > 0.0 ? x[LAG_ALONG + i] : kappa[i]);
            double pull = shape[i].at(k);
            double open = Math.abs(k) < shape[i].peak() ? Math.sqrt(Math.max(0.0, 1.0 - pull * pull)) : 0.0;
            along[i] = MagicFormula.LONGITUDINAL_GRIP * d * pull;
            across[i] = open * (d * shape[i].at(a) + curve[5]);
            if (open < 0.95) {
                across[i] += sliding(open, d * pull, a, k);
            }
            stiffness[i] = b;
            shift[i] = curve[4];
        }
    }

    /** What is left across as the ellipse closes: a wheel that spins or is locked pulls against its sliding. */
    private static double sliding(double open, double force, double across, double along) {
        double closed = 1.0 - open / 0.95;
        double slide = Math.sqrt(across * across + along * along);
        return slide > 0.0 ? closed * closed * Math.abs(force) * across / slide : 0.0;
    }

    /** Slip of a wheel across, over that of its tyre's peak. */
    double useAcross(int wheel) {
        return stiffness[wheel] * (slip[wheel] + shift[wheel]) / shape[wheel].peak();
    }

    /** Slip of a wheel along, over that of its tyre's peak. */
    double useAlong(int wheel) {
        return stiffness[wheel] * kappa[wheel] / shape[wheel].peak();
    }

    private void drive(double[] x, Controls controls) {
        double share = car.vehicle().driveFrontFraction();
        double front = share * controls.drive;
        double rear = controls.drive - front;
        MovingCar.Differentials locks = car.differentials();
        if (share > 0.0 && share < 1.0) {
            double faster = 0.5 * (x[SPIN + 2] + x[SPIN + 3] - x[SPIN] - x[SPIN + 1]);
            double moved = locks.centre().shift(controls.drive, faster, centreSetsIn);
            front += moved;
            rear -= moved;
        }
        double acrossFront = share > 0.0 ? locks.front().shift(front, x[SPIN + 1] - x[SPIN], frontSetsIn) : 0.0;
        double acrossRear = share < 1.0 ? locks.rear().shift(rear, x[SPIN + 3] - x[SPIN + 2], rearSetsIn) : 0.0;
        torque[0] = 0.5 * front + acrossFront;
        torque[1] = 0.5 * front - acrossFront;
        torque[2] = 0.5 * rear + acrossRear;
        torque[3] = 0.5 * rear - acrossRear;
    }

    private void plane(double[] x, double[] out, double u, double v, double r) {
        double sumX = -car.drag() * u * Math.abs(u);
        double sumY = 0.0;
        double moment = 0.0;
        for (int i = 0; i < 4; i++) {
            double c = heading[2 * i];
            double s = heading[2 * i + 1];
            double forward = along[i] * c - across[i] * s;
            double left = along[i] * s + across[i] * c;
            sumX += forward;
            sumY += left;
            moment += ahead[i] * left - aside[i] * forward;
            out[LAG_ACROSS + i] = acrossLength > 0.0
                    ? velocity[i] * (slip[i] - x[LAG_ACROSS + i]) / acrossLength : 0.0;
            out[LAG_ALONG + i] = alongLength > 0.0
                    ? (sliding[i] - velocity[i] * x[LAG_ALONG + i]) / alongLength : 0.0;
        }
        longitudinal = sumX / mass;
        lateral = sumY / mass;
        out[SPEED] = longitudinal + r * v;
        out[SWAY] = lateral - r * u;
        out[YAW_RATE] = moment / car.inertia().yaw();
        double cosine = Math.cos(x[COURSE]);
        double sine = Math.sin(x[COURSE]);
        double curvature = course.curvature(x[DISTANCE]);
        double onCourse = (u * cosine - v * sine) / (1.0 - x[OFFSET] * curvature);
        out[DISTANCE] = onCourse;
        out[OFFSET] = u * sine + v * cosine;
        out[COURSE] = r - curvature * onCourse;
    }

    private void body(double[] x, double[] out) {
        double speed = x[SPEED];
        double pressure = speed * speed;
        double frontAir = car.vehicle().front().downforce() * pressure;
        double rearAir = car.vehicle().rear().downforce() * pressure;
        double lift = 0.0;
        double rolling = sprungMass * sprungHeight * lateral + leaning * x[ROLL];
        double pitching = -sprungMass * sprungHeight * longitudinal
                + frontAir * lever[0] + rearAir * lever[2];
        double unsprung = (mass - sprungMass) * radius * longitudinal / (2.0 * wheelbase);
        for (int i = 0; i < 4; i++) {
            double atAxle = lateral + ahead[i] * out[YAW_RATE];
            double link = linkMass[i] * atAxle + (i < 2 ? unsprung : -unsprung);
            lift += force[i];
            rolling += aside[i] * force[i] - 0.5 * geometric[i] * atAxle;
            pitching -= lever[i] * force[i];
            out[WHEEL + i] = x[WHEEL_RATE + i];
            out[WHEEL_RATE + i] = (load[i] - force[i] + link) / wheelMass[i] - VehicleModel.GRAVITY;
        }
        vertical = (lift - frontAir - rearAir) / sprungMass - VehicleModel.GRAVITY;
        out[HEAVE] = x[HEAVE_RATE];
        out[ROLL] = x[ROLL_RATE];
        out[PITCH] = x[PITCH_RATE];
        out[HEAVE_RATE] = vertical;
        out[ROLL_RATE] = rolling / car.inertia().roll();
        out[PITCH_RATE] = pitching / car.inertia().pitch();
    }
}
