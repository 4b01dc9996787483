package camberwell.physics.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.physics.HandlingModel;
import camberwell.physics.Pac2002;
import camberwell.physics.VehicleModel;
import camberwell.physics.motion.MovingCar.Differentials;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What changes do in the manoeuvres of the standards, on the three open cars at two lateral accelerations. A plus is a
 * car that turns more, its steering held. Windows and signs: where a source is named beside one, it says so; the
 * others are the mechanism's.
 */
class ManoeuvresTest {

    private static final double SPEED = 25;

    private static List<MovingCar> cars() {
        List<MovingCar> cars = new ArrayList<>();
        for (MovingCar open : OpenCars.all(Pac2002.ROAD_245_40R18)) {
            cars.add(MovingCar.of(open.vehicle(), open.inertia(), open.front(), open.rear(),
                    new Differentials(new Differential(60, 0.1, 0.2), Differential.OPEN,
                            new Differential(60, 0.1, 0.2)), Relaxation.USUAL));
        }
        return cars;
    }

    private enum Way { MORE, LESS }

    /** Mean change of the yaw rate over a window, relative to the yaw rate of the turn. */
    private static void turns(Way way, UnaryOperator<MovingCar> change, InATurn.Kind what, double asked, double from,
            double to) {
        for (MovingCar car : cars()) {
            for (double lateral : new double[] {4, 6}) {
                InATurn turn = new InATurn(what, SPEED * SPEED / lateral, SPEED, asked, false);
                double shift = shift(turn, car, change, from, to, lateral / SPEED);
                assertTrue(way == Way.MORE ? shift > 1e-4 : shift < -1e-4,
                        what + " at " + lateral + " on " + car.vehicle().mass() + " kg: " + shift);
            }
        }
    }

    private static double shift(Manoeuvre manoeuvre, MovingCar car, UnaryOperator<MovingCar> change, double from,
            double to, double scale) {
        Manoeuvre.Part window = new Manoeuvre.Part(Manoeuvre.Phase.ENTRY, Channel.TIME, from, to);
        History before = manoeuvre.drive(car);
        History after = manoeuvre.drive(change.apply(car));
        // Against its own start: steer is held at what the turn needed.
        double was = Measures.mean(before, window, Channel.YAW_RATE) / before.at(Channel.YAW_RATE, 0);
        double is = Measures.mean(after, window, Channel.YAW_RATE) / after.at(Channel.YAW_RATE, 0);
        return manoeuvre instanceof InATurn ? is - was : (Measures.mean(after, window, Channel.YAW_RATE)
                - Measures.mean(before, window, Channel.YAW_RATE)) / scale;
    }

    private static void turnsIn(Way way, UnaryOperator<MovingCar> change, double from, double to) {
        for (MovingCar car : cars()) {
            for (double lateral : new double[] {4, 6}) {
                double radius = SPEED * SPEED / lateral;
                double steer = car.vehicle().bicycle().steer(radius, SPEED);
                double shift = shift(new StepSteer(SPEED, steer), car, change, from, to, lateral / SPEED);
                assertTrue(way == Way.MORE ? shift > 1e-4 : shift < -1e-4,
                        "at " + lateral + " on " + car.vehicle().mass() + " kg: " + shift);
            }
        }
    }

    private static UnaryOperator<MovingCar> rearDifferential(UnaryOperator<Differential> change) {
        return car -> car.withDifferentials(new Differentials(change.apply(car.differentials().front()),
                car.differentials().centre(), change.apply(car.differentials().rear())));
    }

    // Nordstrom and Sinha, VTI (abstract): brakes biased to the rear turn a braked car in.
    @Test
    @DisplayName("braking in a turn with more of the brake in front turns in less")
    void brakeBias() {
        turns(Way.LESS, car -> car.withVehicle(vehicle -> vehicle
                .withBrakeFrontFraction(vehicle.brakeFrontFraction() + 0.05)), InATurn.Kind.BRAKING, -3, 0.1, 0.6);
    }

    // JSAE 55(6), 2024 (abstract): a locked axle damps yaw.
    @Test
    @DisplayName("more preload turns in less off the throttle and on the brakes")
    void preload() {
        UnaryOperator<MovingCar> more = rearDifferential(differential -> new Differential(differential.preload() + 60,
                differential.power(), differential.coast()));
        turns(Way.LESS, more, InATurn.Kind.POWER_OFF, -1, 0.1, 0.6);
        turns(Way.LESS, more, InATurn.Kind.BRAKING, -3, 0.1, 0.6);
    }

    // The same source.
    @Test
    @DisplayName("more lock on the overrun turns in less off the throttle")
    void coastLock() {
        turns(Way.LESS, rearDifferential(differential -> new Differential(differential.preload(),
                differential.power(), 0.6)), InATurn.Kind.POWER_OFF, -1, 0.1, 0.6);
    }

    // W. F. and D. L. Milliken, Race Car Vehicle Dynamics, ch. 22 (from memory): the stiffer end takes more of the load
    // while the car rolls.
    @Test
    @DisplayName("stiffer front dampers turn in less, stiffer rear ones more, while the car rolls")
    void dampers() {
        turnsIn(Way.LESS, car -> car.withFront(damper -> damper.withRebound(1.5).withBump(1.5)), 0.1, 0.6);
        turnsIn(Way.MORE, car -> car.withRear(damper -> damper.withRebound(1.5).withBump(1.5)), 0.1, 0.6);
    }

    // Sources at the steady model's test.
    @Test
    @DisplayName("rear toe-in turns in less")
    void rearToe() {
        turnsIn(Way.LESS, car -> car.withVehicle(vehicle -> vehicle.withRear(axle -> axle.withToe(0.005))), 0.2, 1.0);
    }

    // ISO 9816: the turning after power-off is what the standard measures; a car with its weight in front turns in.
    @Test
    @DisplayName("the throttle closed in a turn slows the car and draws it inwards, and the body nods")
    void powerOff() {
        for (MovingCar car : cars()) {
            History run = new InATurn(InATurn.Kind.POWER_OFF, 125, SPEED, -1, false).drive(car);
            Measures.Deviation after = Measures.deviation(run, 125, 1);
            assertEquals(1, after.deceleration(), 0.4);
            assertTrue(after.yaw() > 1.01, "turns in: " + after.yaw());
            assertTrue(after.inside() > 0, "inside its course: " + after.inside());
            assertTrue(run.at(Channel.PITCH, run.moment(1)) > run.at(Channel.PITCH, 0));
        }
    }

    // ISO 7401. The yaw rate of an understeering car overshoots and comes back.
    @Test
    @DisplayName("a step of steer is answered within half a second")
    void stepSteer() {
        for (MovingCar car : cars()) {
            double steer = car.vehicle().bicycle().steer(StepSteer.SPEED * StepSteer.SPEED / 4, StepSteer.SPEED);
            Measures.StepResponse answer = Measures.stepResponse(new StepSteer(StepSteer.SPEED, steer).drive(car),
                    Channel.YAW_RATE);
            assertTrue(answer.response() > 0.1 && answer.response() < 0.5, answer.toString());
            assertTrue(answer.peak() > answer.response() && answer.overshoot() >= 0, answer.toString());
        }
    }

    @ParameterizedTest(name = "at {0} m/s")
    @CsvSource({"16.7", "30.6", "47.2"})
    @DisplayName("a driver takes every car round a corner at nine tenths of its grip, within a lane")
    void corner(double speed) {
        for (MovingCar car : cars()) {
            VehicleModel vehicle = car.vehicle();
            double grip = HandlingModel.maxLateralAcceleration(vehicle, speed, 0);
            Corner corner = new Corner(speed, new Pace.Demand(0.9 * grip, 0.6 * grip, 0.35 * grip, 150));
            History run = corner.drive(car);
            assertFalse(run.lost());
            for (Manoeuvre.Part part : corner.parts()) {
                assertTrue(Measures.most(run, part, Channel.OFFSET) < 3.5, part.toString());
                assertTrue(Measures.least(run, part, Channel.OFFSET) > -3.5, part.toString());
            }
            Manoeuvre.Part middle = corner.parts().get(2);
            assertEquals(0.9 * grip, Measures.mean(run, middle, Channel.LATERAL), 0.06 * grip);
            assertTrue(Measures.mean(run, corner.parts().get(0), Channel.LONGITUDINAL) < -0.3 * grip);
            assertTrue(Measures.mean(run, corner.parts().get(3), Channel.LONGITUDINAL) > 0.05 * grip);
        }
    }

    @Test
    @DisplayName("a driver steers against a slide: a car with its weight behind gets opposite lock on the power")
    void opposite() {
        MovingCar car = cars().get(1).withVehicle(vehicle -> vehicle.withFrontWeightFraction(0.44));
        InATurn turn = new InATurn(InATurn.Kind.POWER_ON, 60, 19, 5, true);
        History run = turn.drive(car);
        Manoeuvre.Part whole = new Manoeuvre.Part(Manoeuvre.Phase.EXIT, Channel.TIME, 0, 3);
        double least = Measures.least(run, whole, Channel.UNDERSTEER);
        assertTrue(run.at(Channel.UNDERSTEER, 0) > 0 && least < -0.02, "opposite lock of " + -least + " rad");
    }

    @Test
    @DisplayName("stiff rebound lifts the wheels off over a kerb, in the air or nearly, and stiff bump throws the body")
    void kerb() {
        MovingCar car = cars().get(1);
        Kerb kerb = new Kerb(120, 20, 0.03, 1.2);
        MovingCar rebound = car.withFront(damper -> damper.withRebound(2)).withRear(damper -> damper.withRebound(2));
        MovingCar bump = car.withFront(damper -> damper.withBump(2)).withRear(damper -> damper.withBump(2));
        History plain = kerb.drive(car);
        Manoeuvre.Part over = kerb.parts().get(0);
        assertTrue(Measures.inTheAir(kerb.drive(rebound), over, 0) > Measures.inTheAir(plain, over, 0));
        assertTrue(Measures.most(kerb.drive(bump), over, Channel.VERTICAL)
                > Measures.most(plain, over, Channel.VERTICAL));
    }

    // J. C. Dixon, The Shock Absorber Handbook (from memory): too little damping lets the loads swing, too much
    // passes the road on; both cost load on the tyre.
    @Test
    @DisplayName("over bumps the load of a tyre varies most with hardly any damping and with far too much")
    void bumps() {
        MovingCar car = cars().get(1);
        Bumps bumps = new Bumps(25, 1);
        Manoeuvre.Part over = bumps.parts().get(0);
        double[] variation = new double[3];
        double[] damping = {0.15, 1, 6};
        for (int i = 0; i < 3; i++) {
            double factor = damping[i];
            MovingCar damped = car.withFront(damper -> damper.withBump(factor).withRebound(factor))
                    .withRear(damper -> damper.withBump(factor).withRebound(factor));
            variation[i] = Measures.variation(bumps.drive(damped), over, Channel.LOAD_FRONT_LEFT);
        }
        assertTrue(variation[1] < variation[0] && variation[1] < variation[2], Arrays.toString(variation));
    }

    @Test
    @DisplayName("brakes far behind lock the rear wheels first, far in front the front ones")
    void locking() {
        MovingCar car = cars().get(1);
        Corner corner = new Corner(16.7, new Pace.Demand(7, 8.5, 3, 150));
        Manoeuvre.Part braking = corner.parts().get(0);
        History rear = corner.drive(car.withVehicle(vehicle -> vehicle.withBrakeFrontFraction(0.45)));
        History front = corner.drive(car.withVehicle(vehicle -> vehicle.withBrakeFrontFraction(0.85)));
        assertTrue(Measures.most(rear, braking, Channel.REAR_LOCKING)
                > Measures.most(rear, braking, Channel.FRONT_LOCKING));
        assertTrue(Measures.most(front, braking, Channel.FRONT_LOCKING)
                > Measures.most(front, braking, Channel.REAR_LOCKING));
    }
}
