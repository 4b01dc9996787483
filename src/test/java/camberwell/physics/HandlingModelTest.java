package camberwell.physics;

import static camberwell.physics.VehicleModel.GRAVITY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.physics.NoEquilibrium.Reason;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class HandlingModelTest {

    private static final double MEDIUM = CornerSpeed.MEDIUM.metresPerSecond();

    // ---- Textbook limits -------------------------------------------------------------------------------------

    // T. D. Gillespie, Fundamentals of Vehicle Dynamics, ch. 6: K = Wf/Cf - Wr/Cr at small angles.
    @Property(tries = 200)
    @Label("at small angles the four-wheel car has the bicycle model's understeer gradient within 2 %")
    void bicycleLimit(@ForAll @DoubleRange(min = 0.46, max = 0.62) double weight,
            @ForAll @DoubleRange(min = 20, max = 50) double speed) {
        VehicleModel car = upright(ReferenceCars.VEHICLE_2).withFrontWeightFraction(weight)
                .withFront(axle -> axle.withTyre(Pac2002.ROAD_185_80R14));
        double textbook = car.bicycle().understeerGradient();
        assertTrue(Math.toDegrees(textbook * GRAVITY) > 0.5, "a gradient that is not a difference of equals");
        assertEquals(textbook, solve(car, speed, 0.2, 0).understeerGradient(), 0.02 * textbook);
    }

    // ISO 4138's steady circle: steer L/R + K ay, sideslip c/R less the rear slip angle.
    @Test
    @DisplayName("at small angles steer and sideslip are the bicycle model's")
    void bicycleSteer() {
        VehicleModel car = upright(ReferenceCars.VEHICLE_1);
        Equilibrium turn = solve(car, 20, 0.2, 0);
        double radius = turn.point().radius();
        double steer = car.bicycle().steer(radius, 20);
        assertEquals(steer, turn.steer(), 0.005 * steer);
        assertEquals(car.bicycle().sideslip(radius, 20), turn.sideslip(), 2e-5);
        assertEquals(car.bicycle().staticMargin(), turn.staticMargin(), 1e-3);
    }

    @Property(tries = 300)
    @Label("forces balance: the tyres carry the car, turn it, and turn it no faster")
    void newton(@ForAll("cars") VehicleModel car, @ForAll @DoubleRange(min = 15, max = 60) double speed,
            @ForAll @DoubleRange(min = -0.98, max = 0.98) double fraction,
            @ForAll @DoubleRange(min = -4, max = 2) double longitudinal) {
        double lateral = fraction * HandlingModel.maxLateralAcceleration(car, speed, longitudinal);
        Solution solution = HandlingModel.solve(car, new OperatingPoint(speed, lateral, longitudinal));
        if (!(solution instanceof Equilibrium turn)) {
            assertEquals(0.0, lateral, "below its limit a car has an equilibrium");
            return;
        }
        double downforce = (car.front().downforce() + car.rear().downforce()) * speed * speed;
        assertEquals(car.mass() * GRAVITY + downforce, turn.load().sum(), 1e-6);
        double frontLeft = turn.steer() - car.front().toe();
        double frontRight = turn.steer() + car.front().toe();
        double rearLeft = -car.rear().toe();
        double rearRight = car.rear().toe();
        Wheels y = new Wheels(
                across(turn.lateralForce().frontLeft(), turn.longitudinalForce().frontLeft(), frontLeft),
                across(turn.lateralForce().frontRight(), turn.longitudinalForce().frontRight(), frontRight),
                across(turn.lateralForce().rearLeft(), turn.longitudinalForce().rearLeft(), rearLeft),
                across(turn.lateralForce().rearRight(), turn.longitudinalForce().rearRight(), rearRight));
        Wheels x = new Wheels(
                along(turn.lateralForce().frontLeft(), turn.longitudinalForce().frontLeft(), frontLeft),
                along(turn.lateralForce().frontRight(), turn.longitudinalForce().frontRight(), frontRight),
                along(turn.lateralForce().rearLeft(), turn.longitudinalForce().rearLeft(), rearLeft),
                along(turn.lateralForce().rearRight(), turn.longitudinalForce().rearRight(), rearRight));
        assertEquals(car.mass() * lateral, y.sum(), 0.01);
        boolean hangs = Math.min(turn.load().frontLeft(), turn.load().frontRight()) < 1
                || Math.min(turn.load().rearLeft(), turn.load().rearRight()) < 1;
        if (longitudinal > 0 || mostUsed(turn) < 0.99 && !hangs) {
            assertEquals(car.mass() * longitudinal, x.sum(), 0.01);
        } else {
            assertTrue(x.sum() < car.mass() * longitudinal + 0.01, "an unloaded driven wheel lets the car slow down");
        }
        double moment = car.cgToFront() * y.sum(AxleEnd.FRONT) - car.cgToRear() * y.sum(AxleEnd.REAR)
                + car.front().track() / 2 * (x.frontRight() - x.frontLeft())
                + car.rear().track() / 2 * (x.rearRight() - x.rearLeft());
        assertEquals(0.0, moment, 0.05);
    }

    @Property(tries = 200)
    @Label("each wheel's slip is its heading less the direction in which its own place on the car travels")
    void kinematics(@ForAll("cars") VehicleModel car, @ForAll @DoubleRange(min = 12, max = 60) double speed,
            @ForAll @DoubleRange(min = 0.1, max = 0.98) double fraction) {
        double lateral = fraction * HandlingModel.maxLateralAcceleration(car, speed, 0);
        Equilibrium turn = solve(car, speed, lateral, 0);
        double front = car.front().track() / 2;
        double rear = car.rear().track() / 2;
        double a = car.cgToFront();
        double b = -car.cgToRear();
        assertEquals(turn.steer() - car.front().toe() - travel(turn, a, front), turn.slip().frontLeft(), 1e-8);
        assertEquals(turn.steer() + car.front().toe() - travel(turn, a, -front), turn.slip().frontRight(), 1e-8);
        assertEquals(-car.rear().toe() - travel(turn, b, rear), turn.slip().rearLeft(), 1e-8);
        assertEquals(car.rear().toe() - travel(turn, b, -rear), turn.slip().rearRight(), 1e-8);
    }

    @Property(tries = 200)
    @Label("camber to the road is that of roll and of steer together, on the outer wheel as on the inner one")
    void camberToTheRoad(@ForAll("cars") VehicleModel car,
            @ForAll @DoubleRange(min = 0.1, max = 0.98) double fraction) {
        double lateral = fraction * HandlingModel.maxLateralAcceleration(car, 20, 0);
        Equilibrium turn = solve(car, 20, lateral, 0);
        SteeringAxis axis = car.steeringAxis();
        AxleModel front = car.front();
        AxleModel rear = car.rear();
        double roll = turn.roll();
        assertTrue(roll > 0, "the body leans out of the turn");
        assertEquals(RollCamber.outer(rear.camber(), roll, rear.camberGain()), turn.camber().rearRight(), 1e-12);
        assertEquals(RollCamber.inner(rear.camber(), roll, rear.camberGain()), turn.camber().rearLeft(), 1e-12);
        assertEquals(RollCamber.outer(axis.camber(front.camber(), -turn.steer()), roll, front.camberGain()),
                turn.camber().frontRight(), 1e-8);
        assertEquals(RollCamber.inner(axis.camber(front.camber(), turn.steer()), roll, front.camberGain()),
                turn.camber().frontLeft(), 1e-8);
    }

    @Property(tries = 200)
    @Label("each tyre's force is the Magic Formula's at its load, slip and lean, inside the friction ellipse")
    void tyres(@ForAll("cars") VehicleModel car, @ForAll @DoubleRange(min = 0.1, max = 0.98) double fraction) {
        double lateral = fraction * HandlingModel.maxLateralAcceleration(car, MEDIUM, 1);
        Solution solution = HandlingModel.solve(car, new OperatingPoint(MEDIUM, lateral, 1));
        if (solution instanceof Equilibrium turn) {
            MagicCurve outer = car.rear().tyre().at(turn.load().rearRight(), -turn.camber().rearRight());
            double ellipse = MagicFormula.ellipse(turn.longitudinalForce().rearRight(), outer);
            assertEquals(ellipse * outer.force(turn.slip().rearRight()), turn.lateralForce().rearRight(), 1e-6);
            MagicCurve inner = car.front().tyre().at(turn.load().frontLeft(), turn.camber().frontLeft());
            ellipse = MagicFormula.ellipse(turn.longitudinalForce().frontLeft(), inner);
            assertEquals(ellipse * inner.force(turn.slip().frontLeft()), turn.lateralForce().frontLeft(),
                    1e-4 * car.mass());
        }
    }

    @Property(tries = 200)
    @Label("what leaves the inner wheels arrives on the outer ones, wheel in the air or not")
    void rollMoment(@ForAll("cars") VehicleModel car, @ForAll @DoubleRange(min = 0, max = 0.99) double fraction) {
        double lateral = fraction * HandlingModel.maxLateralAcceleration(car, 25, 0);
        Equilibrium turn = solve(car, 25, lateral, 0);
        Wheels load = turn.load();
        double moment = (load.frontRight() - load.frontLeft()) * car.front().track() / 2
                + (load.rearRight() - load.rearLeft()) * car.rear().track() / 2;
        double front = car.mass() * car.frontWeightFraction() - car.front().unsprungMass();
        double body = car.mass() - car.front().unsprungMass() - car.rear().unsprungMass();
        double arm = body * car.sprungHeight() - front * car.front().rollCentreHeight()
                - (body - front) * car.rear().rollCentreHeight();
        // The body's centre of gravity moves outwards as it leans (T. D. Gillespie, Fundamentals of Vehicle Dynamics,
        // ch. 6, from memory).
        double expected = car.mass() * car.cgHeight() * lateral + GRAVITY * arm * turn.roll();
        assertEquals(expected, moment, 1e-6 * (1 + expected));
        assertTrue(Math.min(load.frontLeft(), load.rearLeft()) >= -1e-9);
    }

    @Property(tries = 200)
    @Label("a right turn is the mirror image of a left one")
    void mirror(@ForAll("cars") VehicleModel car, @ForAll @DoubleRange(min = 0.5, max = 7) double lateral,
            @ForAll @DoubleRange(min = -3, max = 1.5) double longitudinal) {
        Solution left = HandlingModel.solve(car, new OperatingPoint(MEDIUM, lateral, longitudinal));
        Solution right = HandlingModel.solve(car, new OperatingPoint(MEDIUM, -lateral, longitudinal));
        if (left instanceof NoEquilibrium none) {
            assertEquals(none.reason(), assertInstanceOf(NoEquilibrium.class, right).reason());
            return;
        }
        Equilibrium l = (Equilibrium) left;
        Equilibrium r = (Equilibrium) right;
        assertEquals(l.steer(), -r.steer());
        assertEquals(l.sideslip(), -r.sideslip());
        assertEquals(l.load().frontLeft(), r.load().frontRight());
        assertEquals(l.load().rearRight(), r.load().rearLeft());
        assertEquals(l.slip().rearLeft(), -r.slip().rearRight());
        assertEquals(l.camber().frontRight(), r.camber().frontLeft());
        assertEquals(l.understeerGradient(), r.understeerGradient());
        assertEquals(l.limitBalance(), r.limitBalance());
    }

    @Property(tries = 400)
    @Label("whatever is asked, the answer is an equilibrium in plain numbers or a reason")
    void neverNotANumber(@ForAll("cars") VehicleModel car, @ForAll @DoubleRange(min = 2, max = 80) double speed,
            @ForAll @DoubleRange(min = -20, max = 20) double lateral,
            @ForAll @DoubleRange(min = -15, max = 10) double longitudinal) {
        Solution solution = HandlingModel.solve(car, new OperatingPoint(speed, lateral, longitudinal));
        if (solution instanceof Equilibrium e) {
            double everything = e.steer() + e.sideslip() + e.roll() + e.slip().sum() + e.camber().sum()
                    + e.load().sum() + e.lateralForce().sum() + e.longitudinalForce().sum() + e.utilisation().sum()
                    + e.limitBalance().value() + e.understeerGradient() + e.staticMargin() + e.yawStiffness()
                    + e.scrubPower().sum() + e.toeDrag() + e.frontUtilisation() + e.rearUtilisation();
            assertTrue(Double.isFinite(everything), () -> e.toString());
            assertTrue(e.margin(AxleEnd.FRONT) >= 0 && e.margin(AxleEnd.REAR) >= 0);
        } else {
            assertNotNull(((NoEquilibrium) solution).reason());
        }
    }

    // The limit is where the equilibria that hang together with straight running end. A car whose load transfer takes
    // from one axle and gives to the other may have a gap there and others behind it; no driver crosses the gap.
    // Where both axles are within three percent of their ends, either may go: as the rear slides the driver takes steer
    // off, the front tyres drag less against the turn, and the rear owes what they no longer do. So a car whose front has
    // the less in hand may lose its rear all the same, and which axle is named then no balance can foretell.
    @Property(tries = 200)
    @Label("the limit is where equilibria end, and the axle named there has next to nothing left")
    void limitIsTheLimit(@ForAll("cars") VehicleModel car, @ForAll @DoubleRange(min = 15, max = 50) double speed) {
        CorneringLimit limit = HandlingModel.limit(car, speed, 0);
        for (double part : new double[] {0.9, 0.97, 0.99, 1.0}) {
            solve(car, speed, part * limit.lateral(), 0);
        }
        assertTrue(DoubleStream.iterate(0.01, beyond -> beyond > 1e-5, beyond -> beyond / 2).anyMatch(beyond ->
                HandlingModel.solve(car, new OperatingPoint(speed, (1 + beyond) * limit.lateral(), 0))
                        instanceof NoEquilibrium), "past its limit a car has no equilibrium");
        Equilibrium last = solve(car, speed, limit.lateral(), 0);
        limit.reason().axle().ifPresent(named -> {
            assertTrue(last.margin(named) < 0.1);
            if (Math.abs(last.limitBalance().value()) > 0.03) {
                AxleEnd busier = last.frontUtilisation() > last.rearUtilisation() ? AxleEnd.FRONT : AxleEnd.REAR;
                assertEquals(busier, last.limitBalance().first());
                assertEquals(busier, named);
            }
        });
    }

    @Test
    @DisplayName("a front with the less in hand, a rear that lets go: steer taken off asks more of the rear")
    void rearGoesWithTheFrontAtItsEdge() {
        Pac2002 softer = new Pac2002(2575, 1.3507, 1.0489, -0.18033, 6.7436, -0.00747, -21.92, 2.0012, -0.0248, 0.0314,
                -0.3293, -0.6955, 1.125, 1.108);
        VehicleModel car = new VehicleModel(1010, 2.632, 0.422, 0.54, 0.3, new SteeringAxis(0.0742, 0.09), 0.5, 0.68,
                new AxleModel(1.38, 0.078, 41_600, 32_000, 4.9, -0.00642, -0.01117, 0.135, 1, 0,
                        Pac2002.ROAD_245_40R18),
                new AxleModel(1.587, 0.0096, 24_800, 13_000, 65.1, -0.00419, -0.00349, 0.045, 0, 0, softer));
        CorneringLimit limit = HandlingModel.limit(car, 15.33, 0);
        Equilibrium last = solve(car, 15.33, limit.lateral(), 0);
        assertTrue(last.frontUtilisation() > last.rearUtilisation() && last.rearUtilisation() > 0.97);
        assertEquals(Reason.REAR_GRIP, limit.reason());
        assertTrue(last.steer() < solve(car, 15.33, 0.95 * limit.lateral(), 0).steer(), "steer falls: a rear that goes");
    }

    // ---- Facts that independent models agree on, on open vehicle data ----------------------------------------

    @Test
    @DisplayName("more front roll stiffness understeers more, more rear less, mid-corner and at the limit")
    void bars() {
        towardsUndersteer(car -> car.withFront(axle -> axle.withBarRate(axle.barRate() + 6000)));
        towardsOversteer(car -> car.withRear(axle -> axle.withBarRate(axle.barRate() + 6000)));
        towardsUndersteer(car -> car.withFront(axle -> axle.withWheelRate(1.2 * axle.wheelRate())));
        towardsOversteer(car -> car.withRear(axle -> axle.withWheelRate(1.2 * axle.wheelRate())));
    }

    @Test
    @DisplayName("a raised roll centre takes load transfer to its own end")
    void rollCentres() {
        towardsUndersteer(car -> car.withFront(axle -> axle.withRollCentreHeight(0.05)));
        towardsOversteer(car -> car.withRear(axle -> axle.withRollCentreHeight(0.05)));
    }

    @Test
    @DisplayName("weight moved rearward understeers less")
    void weight() {
        towardsOversteer(car -> car.withFrontWeightFraction(car.frontWeightFraction() - 0.02));
    }

    @Test
    @DisplayName("more negative front camber, below its optimum, understeers less; rear camber more")
    void camber() {
        UnaryOperator<VehicleModel> front = car -> car.withFront(axle -> axle.withCamber(Math.toRadians(-1)));
        UnaryOperator<VehicleModel> rear = car -> car.withRear(axle -> axle.withCamber(Math.toRadians(-1)));
        towardsOversteerInTheMiddle(front);
        towardsUndersteerInTheMiddle(rear);
        // Near the limit on a tyre with an optimum: the open file's friction grows with lean to either side, and far
        // from upright that outweighs its camber thrust.
        Pac2002 tyre = Pac2002.normalised(3000, 1.05, 1, Math.toRadians(4));
        for (VehicleModel open : ReferenceCars.ALL) {
            VehicleModel car = open.withFront(axle -> axle.withTyre(tyre)).withRear(axle -> axle.withTyre(tyre));
            double near = 0.93 * HandlingModel.maxLateralAcceleration(car, MEDIUM, 0);
            double before = solve(car, MEDIUM, near, 0).limitBalance().value();
            assertTrue(solve(front.apply(car), MEDIUM, near, 0).limitBalance().value() < before);
            assertTrue(solve(rear.apply(car), MEDIUM, near, 0).limitBalance().value() > before);
        }
    }

    // The loaded outer wheel steers less with toe-out (racetrackdriving.com, "Track Alignment"); rear toe-in
    // stabilises (carssimplified.com, rec-sec.com).
    @Test
    @DisplayName("in mid-corner front toe-out understeers and rear toe-in stabilises: the loaded outer tyre decides")
    void toe() {
        towardsUndersteerInTheMiddle(car -> car.withFront(axle -> axle.withToe(Math.toRadians(-0.2))));
        towardsOversteerInTheMiddle(car -> car.withFront(axle -> axle.withToe(Math.toRadians(0.2))));
        towardsUndersteerInTheMiddle(car -> car.withRear(axle -> axle.withToe(Math.toRadians(0.2))));
        towardsOversteerInTheMiddle(car -> car.withRear(axle -> axle.withToe(Math.toRadians(-0.2))));
    }

    @Test
    @DisplayName("more camber than the tyre's optimum costs grip again")
    void tooMuchCamber() {
        double best = frontLimitWithCamber(-3);
        assertTrue(best > frontLimitWithCamber(0));
        assertTrue(best > frontLimitWithCamber(-11));
    }

    @Test
    @DisplayName("caster leans the steered front wheels into the turn and frees the front in a slow corner")
    void caster() {
        for (VehicleModel car : ReferenceCars.ALL) {
            double slow = CornerSpeed.SLOW.metresPerSecond();
            VehicleModel more = car.withSteeringAxis(new SteeringAxis(Math.toRadians(8), 0));
            Equilibrium before = solve(car, slow, 6, 0);
            Equilibrium after = solve(more, slow, 6, 0);
            assertTrue(after.camber().frontRight() < before.camber().frontRight());
            assertTrue(after.camber().frontLeft() > before.camber().frontLeft());
            assertTrue(after.limitBalance().value() < before.limitBalance().value());
        }
    }

    @Test
    @DisplayName("brakes take grip where they bite: more brake at the front understeers on the way in")
    void brakeBalance() {
        for (VehicleModel car : ReferenceCars.ALL) {
            double forward = solve(car.withBrakeFrontFraction(0.8), MEDIUM, 5, -3).limitBalance().value();
            double rearward = solve(car.withBrakeFrontFraction(0.6), MEDIUM, 5, -3).limitBalance().value();
            assertTrue(forward > rearward);
        }
    }

    @Test
    @DisplayName("trail braking loosens the car, power ties a front-driven car's nose")
    void phases() {
        VehicleModel frontDriven = ReferenceCars.VEHICLE_1;
        double entry = solve(frontDriven, MEDIUM, 5, -3).limitBalance().value();
        double middle = solve(frontDriven, MEDIUM, 5, 0).limitBalance().value();
        double exit = solve(frontDriven, MEDIUM, 5, 1.5).limitBalance().value();
        assertTrue(entry < middle && middle < exit);
    }

    @Test
    @DisplayName("drive at the rear oversteers under power, against drive at the front")
    void drivenAxle() {
        for (VehicleModel car : ReferenceCars.ALL) {
            double rear = solve(car.withDriveFrontFraction(0), MEDIUM, 5, 1.5).limitBalance().value();
            double front = solve(car.withDriveFrontFraction(1), MEDIUM, 5, 1.5).limitBalance().value();
            assertTrue(rear < front);
        }
    }

    @Test
    @DisplayName("a locking differential works against the turn while both wheels grip")
    void lockingDifferential() {
        VehicleModel open = ReferenceCars.VEHICLE_2;
        VehicleModel locking = open.withRear(axle -> axle.withLockingTorque(300));
        for (double longitudinal : new double[] {-2, 0}) {
            Equilibrium before = solve(open, MEDIUM, 4, longitudinal);
            Equilibrium after = solve(locking, MEDIUM, 4, longitudinal);
            assertTrue(after.steer() > before.steer());
            assertTrue(after.limitBalance().value() > before.limitBalance().value());
            assertTrue(after.longitudinalForce().rearLeft() > after.longitudinalForce().rearRight());
        }
    }

    @Test
    @DisplayName("where the inner wheel of an open differential spins, a locking one drives through the outer wheel")
    void lockingDifferentialUnderPower() {
        VehicleModel open = ReferenceCars.VEHICLE_2.withRear(axle -> axle.withBarRate(40_000));
        OperatingPoint exit = new OperatingPoint(15, 7, 2.5);
        assertEquals(Reason.REAR_TRACTION,
                assertInstanceOf(NoEquilibrium.class, HandlingModel.solve(open, exit)).reason());
        Equilibrium locking = assertInstanceOf(Equilibrium.class,
                HandlingModel.solve(open.withRear(axle -> axle.withLockingTorque(1500)), exit));
        assertTrue(locking.longitudinalForce().rearRight() > locking.longitudinalForce().rearLeft());
    }

    @Test
    @DisplayName("downforce at one end sticks that end down, the more the faster")
    void downforce() {
        VehicleModel car = ReferenceCars.VEHICLE_2;
        VehicleModel winged = car.withRear(axle -> axle.withDownforce(0.8));
        double slowGain = balance(winged, 15) - balance(car, 15);
        double fastGain = balance(winged, 50) - balance(car, 50);
        assertTrue(slowGain > 0 && fastGain > 4 * slowGain);
        assertTrue(HandlingModel.maxLateralAcceleration(winged.withFront(axle -> axle.withDownforce(0.8)), 50, 0)
                > HandlingModel.maxLateralAcceleration(car, 50, 0) + 1);
    }

    @Test
    @DisplayName("toe drags on the straight and scrubs in the corner")
    void scrub() {
        VehicleModel car = ReferenceCars.VEHICLE_2;
        double toe = Math.toRadians(0.25);
        VehicleModel toed = car.withFront(axle -> axle.withToe(toe));
        Equilibrium straight = solve(toed, 40, 0, 0);
        double stiffness = car.front().tyre().corneringStiffness(car.mass() * GRAVITY * 0.546 / 2);
        assertEquals(2 * Toe.drag(stiffness, toe), straight.toeDrag(), 1e-9);
        assertEquals(straight.toeDrag() * 40, straight.scrubPower().sum(AxleEnd.FRONT),
                0.1 * straight.toeDrag() * 40, "toe taken for slip angle is a good estimate");
        assertEquals(0.0, solve(car, 40, 0, 0).toeDrag());
        assertTrue(solve(car, 40, 7, 0).scrubPower().frontRight() > solve(car, 40, 5, 0).scrubPower().frontRight());
    }

    // ---- Corner phases ---------------------------------------------------------------------------------------

    @Test
    @DisplayName("entry brakes, exit pulls, and every phase of every corner can be driven near the limit")
    void cornerPhases() {
        for (VehicleModel car : ReferenceCars.ALL) {
            for (CornerSpeed corner : CornerSpeed.values()) {
                double speed = corner.metresPerSecond();
                for (CornerPhase phase : CornerPhase.values()) {
                    OperatingPoint point = phase.at(car, speed, CornerPhase.NEAR_THE_LIMIT);
                    Equilibrium turn = assertInstanceOf(Equilibrium.class, HandlingModel.solve(car, point));
                    assertTrue(point.lateral() > 4, phase + " " + corner);
                    int expected = phase == CornerPhase.EXIT ? 1 : phase == CornerPhase.MID_CORNER ? 0 : -1;
                    assertEquals(expected, (int) Math.signum(point.longitudinal()));
                    assertTrue(Math.max(turn.frontUtilisation(), turn.rearUtilisation()) > 0.7);
                }
            }
        }
    }

    // ---- Reasons ---------------------------------------------------------------------------------------------

    @Test
    @DisplayName("a car asked for too much says what ran out")
    void reasons() {
        VehicleModel car = ReferenceCars.VEHICLE_2;
        assertEquals(Reason.FRONT_GRIP, reason(car, MEDIUM, 9.6, 0));
        assertEquals(Reason.REAR_GRIP,
                reason(car.withRear(axle -> axle.withTyre(Pac2002.ROAD_245_40R18.withFriction(0.7))), MEDIUM, 8, 0));
        assertEquals(Reason.REAR_TRACTION, reason(car, MEDIUM, 2, 8));
        assertEquals(Reason.FRONT_TRACTION, reason(car.withDriveFrontFraction(1), MEDIUM, 2, 8));
        assertEquals(Reason.BRAKING, reason(car, MEDIUM, 1, -13));
        assertEquals(Reason.ROLLOVER, reason(car.withCgHeight(1.2), MEDIUM, 8, 0));
        assertEquals(Reason.TURN_TOO_TIGHT, reason(car, 3, 5, 0));
        assertEquals(AxleEnd.REAR, Reason.REAR_TRACTION.axle().orElseThrow());
    }

    @Test
    void refusesWhatIsNoCar() {
        VehicleModel car = ReferenceCars.VEHICLE_1;
        assertThrows(IllegalArgumentException.class, () -> car.withFrontWeightFraction(1));
        assertThrows(IllegalArgumentException.class, () -> car.withCgHeight(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> car.withFront(axle -> axle.withToe(1)));
        assertThrows(IllegalArgumentException.class, () -> new OperatingPoint(0, 1, 0));
    }

    // ---- Helpers ---------------------------------------------------------------------------------------------

    @Provide
    Arbitrary<VehicleModel> cars() {
        Arbitrary<AxleModel> front = axles();
        Arbitrary<AxleModel> rear = axles();
        Arbitrary<double[]> body = Arbitraries.doubles().between(0, 1).array(double[].class).ofSize(7);
        return Combinators.combine(front, rear, body).as((f, r, b) -> new VehicleModel(600 + 1000 * b[0],
                2.2 + 0.8 * b[1], 0.42 + 0.2 * b[2], 0.30 + 0.25 * b[3], 0.30,
                new SteeringAxis(0.14 * b[4], 0.2 * b[5]), Math.round(2 * b[6]) / 2.0, 0.6 + 0.15 * b[4], f, r));
    }

    private static Arbitrary<AxleModel> axles() {
        return Arbitraries.doubles().between(0, 1).array(double[].class).ofSize(10).map(a -> new AxleModel(
                1.35 + 0.3 * a[0], 0.12 * a[1], 20_000 + 80_000 * a[2], 50_000 * a[3], 70 * a[4],
                Math.toRadians(-0.4 + 0.8 * a[5]), Math.toRadians(-4 * a[6]), 0.9 * a[7], a[8] < 0.5 ? 0 : a[8],
                a[9] < 0.5 ? 0 : 300 * a[9], a[0] < 0.5 ? Pac2002.ROAD_245_40R18
                        : Pac2002.normalised(2500 + 1500 * a[9], 1.0 + 0.5 * a[8], 1.0 + 0.3 * a[8],
                                Math.toRadians(3))));
    }

    private static void towardsUndersteer(UnaryOperator<VehicleModel> change) {
        towardsUndersteerInTheMiddle(change);
        for (VehicleModel car : ReferenceCars.ALL) {
            double near = CornerPhase.NEAR_THE_LIMIT * HandlingModel.maxLateralAcceleration(car, MEDIUM, 0);
            near = Math.min(near, 0.98 * HandlingModel.maxLateralAcceleration(change.apply(car), MEDIUM, 0));
            assertTrue(solve(change.apply(car), MEDIUM, near, 0).limitBalance().value()
                    > solve(car, MEDIUM, near, 0).limitBalance().value());
        }
    }

    private static void towardsOversteer(UnaryOperator<VehicleModel> change) {
        towardsOversteerInTheMiddle(change);
        for (VehicleModel car : ReferenceCars.ALL) {
            double near = CornerPhase.NEAR_THE_LIMIT * HandlingModel.maxLateralAcceleration(car, MEDIUM, 0);
            assertTrue(solve(change.apply(car), MEDIUM, near, 0).limitBalance().value()
                    < solve(car, MEDIUM, near, 0).limitBalance().value());
        }
    }

    private static void towardsUndersteerInTheMiddle(UnaryOperator<VehicleModel> change) {
        for (VehicleModel car : ReferenceCars.ALL) {
            assertTrue(solve(change.apply(car), MEDIUM, 5, 0).understeerGradient()
                    > solve(car, MEDIUM, 5, 0).understeerGradient());
        }
    }

    private static void towardsOversteerInTheMiddle(UnaryOperator<VehicleModel> change) {
        for (VehicleModel car : ReferenceCars.ALL) {
            assertTrue(solve(change.apply(car), MEDIUM, 5, 0).understeerGradient()
                    < solve(car, MEDIUM, 5, 0).understeerGradient());
        }
    }

    private static double frontLimitWithCamber(double degrees) {
        Pac2002 tyre = Pac2002.normalised(2900, 1.05, 1, Math.toRadians(4));
        return solve(ReferenceCars.VEHICLE_2.withFront(axle -> axle.withTyre(tyre).withCamber(Math.toRadians(degrees))),
                MEDIUM, 7, 0).limitBalance().front();
    }

    private static double balance(VehicleModel car, double speed) {
        return solve(car, speed, 6, 0).limitBalance().value();
    }

    /** Nothing but load, slip and stiffness, as in the textbook: upright wheels that stay upright. */
    private static VehicleModel upright(VehicleModel car) {
        return car.withFront(HandlingModelTest::upright).withRear(HandlingModelTest::upright);
    }

    private static AxleModel upright(AxleModel axle) {
        return new AxleModel(axle.track(), axle.rollCentreHeight(), axle.wheelRate(), axle.barRate(),
                axle.unsprungMass(), 0, 0, 1, 0, 0, axle.tyre());
    }

    private static double mostUsed(Equilibrium turn) {
        Wheels used = turn.utilisation();
        return Math.max(Math.max(used.frontLeft(), used.frontRight()), Math.max(used.rearLeft(), used.rearRight()));
    }

    private static double travel(Equilibrium turn, double ahead, double aside) {
        double speed = turn.point().speed();
        double yawRate = turn.point().yawRate();
        return Math.atan2(speed * Math.sin(turn.sideslip()) + yawRate * ahead,
                speed * Math.cos(turn.sideslip()) - yawRate * aside);
    }

    private static double across(double lateral, double longitudinal, double heading) {
        return lateral * Math.cos(heading) + longitudinal * Math.sin(heading);
    }

    private static double along(double lateral, double longitudinal, double heading) {
        return longitudinal * Math.cos(heading) - lateral * Math.sin(heading);
    }

    private static Reason reason(VehicleModel car, double speed, double lateral, double longitudinal) {
        Solution solution = HandlingModel.solve(car, new OperatingPoint(speed, lateral, longitudinal));
        return assertInstanceOf(NoEquilibrium.class, solution).reason();
    }

    private static Equilibrium solve(VehicleModel car, double speed, double lateral, double longitudinal) {
        Solution solution = HandlingModel.solve(car, new OperatingPoint(speed, lateral, longitudinal));
        return assertInstanceOf(Equilibrium.class, solution, solution::toString);
    }
}
