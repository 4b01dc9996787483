package camberwell.cli;

import camberwell.model.Behaviour;
import camberwell.model.CarModel;
import camberwell.model.ProvingGround.Exercise;
import camberwell.physics.CornerPhase;
import camberwell.physics.CornerSpeed;
import camberwell.units.Quantity;
import camberwell.vocabulary.Surface;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The turn that a car is asked to drive: how fast, how tight, in which part of it and on what. */
final class TurnOptions {

    @Option(names = "--speed", paramLabel = "SPEED", converter = Amount.CornerSpeed.class,
            description = "Speed in the corner with its unit; 110 km/h by default, or what the radius allows.")
    private Optional<Quantity> speed;

    @Option(names = "--radius", paramLabel = "RADIUS", converter = Amount.Radius.class,
            description = "Radius of the turn with its unit. With a speed, the car is held to that very turn.")
    private Optional<Quantity> radius;

    @Option(names = "--phase", defaultValue = "mid-corner", paramLabel = "PHASE", converter = OfPhase.class,
            description = "entry (braking), lift-off, mid-corner or exit (on the power).")
    private CornerPhase phase;

    @Option(names = "--surface", defaultValue = "dry", paramLabel = "SURFACE", converter = OfSurface.class,
            description = "dry, damp or wet.")
    private Surface surface;

    CornerPhase phase() {
        return phase;
    }

    Surface surface() {
        return surface;
    }

    /** As it was said, or that of a corner of medium speed, m/s. */
    double speed() {
        return speed.map(Quantity::si).orElse(CornerSpeed.MEDIUM.metresPerSecond());
    }

    /** What {@code car} is asked to do in that turn; empty where it cannot. */
    Optional<Behaviour.Question> of(CarModel car) {
        if (radius.isEmpty()) {
            return Behaviour.Question.about(car, phase, speed());
        }
        double metres = radius.get().si();
        double fast = speed.isPresent() ? speed() : Behaviour.Question.speedFor(car, phase, metres);
        return Behaviour.Question.inTurn(car, phase, fast, metres);
    }

    static final class OfPhase extends TypedWord<CornerPhase> {
        OfPhase() {
            super(CornerPhase.class);
        }
    }

    static final class OfSurface extends TypedWord<Surface> {
        OfSurface() {
            super(Surface.class);
        }
    }

    static final class OfExercise extends TypedWord<Exercise> {
        OfExercise() {
            super(Exercise.class);
        }
    }
}
