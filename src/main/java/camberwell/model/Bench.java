package camberwell.model;

import camberwell.physics.AxleEnd;
import camberwell.physics.CornerPhase;
import camberwell.physics.Equilibrium;
import camberwell.physics.HandlingModel;
import camberwell.physics.NoEquilibrium;
import camberwell.physics.OperatingPoint;
import camberwell.physics.VehicleModel;
import camberwell.physics.Wheels;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Quality;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** One car on the bench: what is asked of it is remembered, to compare many changes with it. For one thread. */
public final class Bench {

    private static final double BRAKING_PART = 0.6;
    private static final double TRACTION_PART = 0.6;
    private static final int TRACTION_ROUNDS = 14;
    /** A change of less is nothing: a part, newtons, radians. */
    private static final double LEAST_PART = 0.001;
    private static final double LEAST_DRAG = 0.02;
    private static final double LEAST_LEAN = Math.toRadians(0.01);
    /** Heats a tyre by flexing it: cold rubber grains. */
    private static final Set<Adjuster.Kind> FLEXES = EnumSet.of(Adjuster.Kind.PRESSURE, Adjuster.Kind.WING);
    private static final Set<Adjuster.Kind> LIMITS_TRACTION = EnumSet.of(Adjuster.Kind.DIFFERENTIAL, Adjuster.Kind.WING,
            Adjuster.Kind.CAMBER, Adjuster.Kind.PRESSURE);

    private final CarModel car;
    private final Map<Double, Double> steadyGrip = new HashMap<>();
    private final Map<Spot, Optional<Behaviour.Question>> questions = new HashMap<>();
    private final Map<Spot, Optional<Behaviour>> behaviours = new HashMap<>();

    private final Map<Double, OptionalDouble> tractions = new HashMap<>();
    private final Map<Double, OptionalDouble> powers = new HashMap<>();
    private final Map<Spot, OptionalDouble> limitBalances = new HashMap<>();
    private final Map<Shift, OptionalDouble> shifts = new HashMap<>();
    private final Map<Pair, Optional<Prediction>> predictions = new HashMap<>();

    private record Spot(CornerPhase phase, double speed) {
        @Override
        public int hashCode() {
            return 31 * phase.ordinal() + Double.hashCode(speed);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Spot spot && phase == spot.phase && speed == spot.speed;
        }
    }

    private record Shift(Change change, Spot spot) {
        @Override
        public int hashCode() {
            return 31 * change.hashCode() + spot.hashCode();
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Shift shift && change.equals(shift.change) && spot.equals(shift.spot);
        }
    }

    private record Pair(CarModel changed, Spot spot) {
        @Override
        public int hashCode() {
            return 31 * System.identityHashCode(changed) + spot.hashCode();
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Pair pair && changed == pair.changed && spot.equals(pair.spot);
        }
    }

    /** What a change does to a complaint. */
    public enum Relief {
        BETTER, WORSE, NONE;

        static Relief of(double gain, double least) {
            return gain > least ? BETTER : gain < -least ? WORSE : NONE;
        }

        /** The other way. */
        public Relief opposite() {
            return this == BETTER ? WORSE : this == WORSE ? BETTER : NONE;
        }
    }

    /** @param car the car as it stands */
    public Bench(CarModel car) {
        this.car = car;
    }

    /** The car as it stands. */
    public CarModel car() {
        return car;
    }

    /** What the car is asked to do in that part of a corner at that speed, m/s; empty where it cannot. */
    public Optional<Behaviour.Question> question(CornerPhase phase, double speed) {
        return questions.computeIfAbsent(new Spot(phase, speed),
                spot -> Behaviour.Question.about(car, phase, speed, steadyGrip.computeIfAbsent(speed,
                        fresh -> Behaviour.steadyGrip(car, fresh))));
    }

    /** The car's behaviour as it stands; empty where the car cannot hold what is asked. */
    public Optional<Behaviour> behaviour(CornerPhase phase, double speed) {
        Spot spot = new Spot(phase, speed);
        Optional<Behaviour> known = behaviours.get(spot);
        if (known == null) {
            known = question(phase, speed).flatMap(question -> Behaviour.of(car, question));
            behaviours.put(spot, known);
        }
        return known;
    }

    /**
     * The model's prediction for the car with a change made.
     *
     * @param adjuster what was changed
     * @param changed the same car with the change made
     * @param phase part of the corner
     * @param speed speed in the corner, m/s
     * @return the prediction; empty where one of both cars cannot hold what is asked
     */
    public Optional<Prediction> predict(Adjuster adjuster, CarModel changed, CornerPhase phase, double speed) {
        Pair pair = new Pair(changed, new Spot(phase, speed));
        Optional<Prediction> known = predictions.get(pair);
        if (known == null) {
            known = behaviour(phase, speed).flatMap(from -> Behaviour.of(changed, question(phase, speed).orElseThrow())
                    .map(to -> new Prediction(adjuster, phase, from, to, car.lent())));
            predictions.put(pair, known);
        }
        return known;
    }

    /** The prediction for {@code steps} of the car's own; empty also where the model does not know the adjuster. */
    public Optional<Prediction> predict(Change change, int steps, CornerPhase phase, double speed) {
        return car.with(change, steps).flatMap(changed -> predict(change.adjuster(), changed, phase, speed));
    }

    /**
     * What one step of a change does to the limit balance alone, a part of the grip, positive towards understeer; in a
     * fraction of the time of a prediction.
     *
     * @return empty where the model cannot tell: also where a wheel hangs, which hides it
     */
    public OptionalDouble limitBalanceShift(Change change, CornerPhase phase, double speed) {
        Optional<Behaviour.Question> question = question(phase, speed);
        Optional<CarModel> changed = car.with(change, 1);
        if (question.isEmpty() || changed.isEmpty()) {
            return OptionalDouble.empty();
        }
        Spot spot = new Spot(phase, speed);
        return shifts.computeIfAbsent(new Shift(change, spot), fresh -> shift(spot, changed.get(), question.get()));
    }

    /**
     * The car's limit balance as it stands, a part of the grip, positive where the front gives up first.
     *
     * @return empty where the car cannot hold what is asked, or a wheel hangs, which hides it
     */
    public OptionalDouble limitBalance(CornerPhase phase, double speed) {
        Optional<Behaviour.Question> question = question(phase, speed);
        return question.isEmpty() ? OptionalDouble.empty() : limitBalance(new Spot(phase, speed), question.get());
    }

    private OptionalDouble limitBalance(Spot spot, Behaviour.Question question) {
        return limitBalances.computeIfAbsent(spot, fresh -> limitBalance(car, question));
    }

    private OptionalDouble shift(Spot spot, CarModel changed, Behaviour.Question question) {
        OptionalDouble before = limitBalance(spot, question);
        OptionalDouble after = limitBalance(changed, question);
        return before.isPresent() && after.isPresent()
                ? OptionalDouble.of(after.getAsDouble() - before.getAsDouble()) : OptionalDouble.empty();
    }

    private static OptionalDouble limitBalance(CarModel model, Behaviour.Question question) {
        return HandlingModel.solveQuickly(model.vehicle(question.phase()), question.near())
                instanceof Equilibrium held && !Behaviour.wheelHangs(held)
                ? OptionalDouble.of(held.limitBalance().value()) : OptionalDouble.empty();
    }

    /**
     * What a change does to a complaint or a quality, as far as a steady state can show it.
     *
     * @param adjuster what was changed
     * @param changed the same car with the change made
     * @param on a symptom or a quality
     * @param where the axle it is on, where it is bound to one
     * @param phase part of the corner
     * @param speed speed in the corner, m/s
     * @return empty when the model cannot show it
     */
    public Optional<Relief> relief(Adjuster adjuster, CarModel changed, Word on, Optional<Axle> where,
            CornerPhase phase, double speed) {
        Adjuster.Kind kind = adjuster.kind();
        boolean stiffness = kind == Adjuster.Kind.STIFFNESS;
        if (on instanceof Symptom symptom && symptom.ofBalance()) {
            return balance(adjuster, changed, on == Symptom.UNDERSTEER, phase, speed);
        }
        if (on == Symptom.HOT_OUTER_EDGE || on == Symptom.HOT_INNER_EDGE) {
            // Toe heats an edge by dragging it, which is no matter of lean.
            return where.isEmpty() || kind == Adjuster.Kind.TOE ? Optional.empty()
                    : predict(adjuster, changed, phase, speed).map(prediction -> Relief.of(
                            (on == Symptom.HOT_OUTER_EDGE ? -1 : 1) * outerLeanShift(prediction, where.get()),
                            LEAST_LEAN));
        }
        if (on == Symptom.OVERHEATING || on == Symptom.GRAINING || on == Symptom.SLOW_WARM_UP) {
            return where.isEmpty() ? Optional.empty() : heat(adjuster, changed, where.get(), phase, speed)
                    .map(relief -> on == Symptom.SLOW_WARM_UP || on == Symptom.GRAINING && FLEXES.contains(kind)
                            ? relief.opposite() : relief);
        }
        if (on == Quality.TYRE_LIFE && (kind == Adjuster.Kind.DIFFERENTIAL || kind == Adjuster.Kind.TOE)) {
            return predict(adjuster, changed, phase, speed).map(it -> Relief.of(
                    1 - it.after().near().scrubPower().sum() / it.before().near().scrubPower().sum(), LEAST_PART));
        }
        if (on == Symptom.HEAVY_STEERING || on == Symptom.LIGHT_STEERING) {
            // A tyre's own trail goes with the length of its contact.
            double shorter = 1 - changed.inflation(Axle.FRONT).contactLength();
            return adjuster != Adjuster.FRONT_PRESSURE ? Optional.empty()
                    : Optional.of(Relief.of(on == Symptom.HEAVY_STEERING ? shorter : -shorter, LEAST_PART));
        }
        if (on == Quality.STRAIGHT_LINE_SPEED && kind == Adjuster.Kind.PRESSURE) {
            return Optional.of(Relief.of(1 - changed.inflation(adjuster.axle().orElseThrow()).rollingLoss(), LEAST_PART));
        }
        if (on == Quality.STRAIGHT_LINE_SPEED && kind == Adjuster.Kind.WING) {
            // Lift is paid for with drag, with the square of it (J. D. Anderson, Fundamentals of Aerodynamics, ch. 5, from
            // memory).
            return Optional.of(Relief.of(pressed(car, speed) - pressed(changed, speed), LEAST_DRAG));
        }
        if (on == Quality.STRAIGHT_LINE_SPEED && kind == Adjuster.Kind.TOE) {
            return predict(adjuster, changed, phase, speed).map(it -> Relief.of(-it.toeDragShift(), LEAST_DRAG));
        }
        if ((on == Symptom.WHEELSPIN || on == Quality.TRACTION)
                && (stiffness || LIMITS_TRACTION.contains(kind))) {
            // What locks wheels together or presses both down ends at the axle's grip as a whole.
            boolean wheel = kind != Adjuster.Kind.DIFFERENTIAL && kind != Adjuster.Kind.WING;
            return gain((wheel ? tractions : powers).computeIfAbsent(speed, fresh -> traction(car, fresh, wheel)),
                    traction(changed, speed, wheel));
        }
        if (on == Symptom.FRONT_LOCKING || on == Symptom.REAR_LOCKING || on == Symptom.UNSTABLE_BRAKING) {
            boolean turning = phase == CornerPhase.ENTRY && stiffness;
            if (turning || kind == Adjuster.Kind.BRAKE_BIAS || kind == Adjuster.Kind.WING) {
                AxleEnd end = on == Symptom.FRONT_LOCKING ? AxleEnd.FRONT : AxleEnd.REAR;
                return gain(brakeUse(changed, end, turning, speed), brakeUse(car, end, turning, speed));
            }
        }
        return Optional.empty();
    }

    private Optional<Relief> balance(Adjuster adjuster, CarModel changed, boolean understeer, CornerPhase phase,
            double speed) {
        return predict(adjuster, changed, phase, speed).map(Prediction::way)
                .filter(way -> way != Prediction.Way.UNCLEAR)
                .map(way -> way == Prediction.Way.NEITHER ? Relief.NONE
                        : (way == Prediction.Way.OVERSTEER) == understeer ? Relief.BETTER : Relief.WORSE);
    }

    /** What the air presses the car down with, N. */
    private static double pressed(CarModel model, double speed) {
        VehicleModel vehicle = model.vehicle(CornerPhase.MID_CORNER);
        return speed * speed * (vehicle.front().downforce() + vehicle.rear().downforce());
    }

    /** Heat of sliding, on the brakes of braking, and for more or less air of flexing: whichever an adjuster moves. */
    private Optional<Relief> heat(Adjuster adjuster, CarModel changed, Axle where, CornerPhase phase,
            double speed) {
        AxleEnd end = where == Axle.FRONT ? AxleEnd.FRONT : AxleEnd.REAR;
        return switch (adjuster.kind()) {
            case TOE -> predict(adjuster, changed, phase, speed).map(it -> Relief.of(-it.toeDragShift(), LEAST_DRAG));
            case PRESSURE -> adjuster.axle().filter(axle -> axle == where).map(axle -> Relief.of(
                    1 - changed.inflation(axle).rollingLoss(), LEAST_PART));
            case WING -> adjuster.axle().filter(axle -> axle == where).map(axle -> Relief.of(
                    pressed(car, speed) - pressed(changed, speed), LEAST_DRAG));
            case BRAKE_BIAS -> gain(brakeUse(changed, end, false, speed), brakeUse(car, end, false, speed));
            case STIFFNESS -> predict(adjuster, changed, phase, speed).map(it -> Relief.of(
                    -it.scrubShift(end) / it.before().near().scrubPower().sum(end), LEAST_PART));
            default -> Optional.empty();
        };
    }

    private static double outerLeanShift(Prediction prediction, Axle where) {
        Wheels from = prediction.before().near().camber();
        Wheels to = prediction.after().near().camber();
        return where == Axle.FRONT ? to.frontRight() - from.frontRight() : to.rearRight() - from.rearRight();
    }

    private static Optional<Relief> gain(OptionalDouble from, OptionalDouble to) {
        return from.isEmpty() || to.isEmpty() ? Optional.empty()
                : Optional.of(Relief.of((to.getAsDouble() - from.getAsDouble()) / from.getAsDouble(), LEAST_PART));
    }

    /**
     * The longitudinal acceleration at which a driven wheel spins, in a corner that asks for part of the grip, m/s²;
     * empty where something else runs out first, such as the grip of a well locked axle as a whole.
     *
     * @param wheel whether it has to be a wheel that spins; else it is the most that the car can put down
     */
    private OptionalDouble traction(CarModel model, double speed, boolean wheel) {
        Optional<Behaviour.Question> steady = question(CornerPhase.MID_CORNER, speed);
        if (steady.isEmpty()) {
            return OptionalDouble.empty();
        }
        double lateral = TRACTION_PART * steady.get().near().lateral();
        double low = 0;
        double high = 2 * VehicleModel.GRAVITY;
        boolean spins = false;
        for (int round = 0; round < TRACTION_ROUNDS; round++) {
            double middle = (low + high) / 2;
            if (HandlingModel.solveQuickly(model.vehicle(CornerPhase.EXIT), new OperatingPoint(speed, lateral, middle))
                    instanceof NoEquilibrium over) {
                high = middle;
                spins = over.reason() == NoEquilibrium.Reason.FRONT_TRACTION
                        || over.reason() == NoEquilibrium.Reason.REAR_TRACTION;
            } else {
                low = middle;
            }
        }
        return (spins || !wheel) && low > 0 ? OptionalDouble.of(low) : OptionalDouble.empty();
    }

    /** Brake force over load of an axle's busier wheel, turning in or in a straight line. */
    private OptionalDouble brakeUse(CarModel model, AxleEnd end, boolean turning, double speed) {
        Optional<Behaviour.Question> entry = question(CornerPhase.ENTRY, speed);
        if (entry.isEmpty()) {
            return OptionalDouble.empty();
        }
        OperatingPoint point = turning ? entry.get().calm()
                : new OperatingPoint(speed, 0, -BRAKING_PART * entry.get().near().lateral());
        if (!(HandlingModel.solveQuickly(model.vehicle(CornerPhase.ENTRY), point) instanceof Equilibrium held)) {
            return OptionalDouble.empty();
        }
        Wheels force = held.longitudinalForce();
        Wheels load = held.load();
        double left = end == AxleEnd.FRONT ? -force.frontLeft() / load.frontLeft()
                : -force.rearLeft() / load.rearLeft();
        double right = end == AxleEnd.FRONT ? -force.frontRight() / load.frontRight()
                : -force.rearRight() / load.rearRight();
        double use = Math.max(left, right);
        // A wheel in the air brakes nothing, and says nothing.
        return Double.isFinite(use) && use > 0 ? OptionalDouble.of(use) : OptionalDouble.empty();
    }
}
