package camberwell.vocabulary;

import camberwell.units.Measure;
import camberwell.units.Range;
import camberwell.units.Unit;
import java.util.List;

/**
 * What is adjusted, at whichever end of the car: all that its adjusters have in common. Ranges and common steps are
 * common practice, no source.
 */
public enum Adjustment implements Word {
    /** Of one wheel; at the rim's edge also as a length. */
    TOE("toe", Direction.TOE_OUT, Direction.TOE_IN, Acts.ON_THE_TYRE, Counted.ONE_WAY, "step",
            "a common step is 0.05 to 0.1° a wheel, about half a millimetre to one at the rim",
            Typical.of(0.0, -0.3, 0.3, 0.05, Unit.DEGREE), "a toe setting",
            Range.in(Unit.DEGREE, -3, 3), new Range(List.of(Unit.MILLIMETRE), -25, 25)),
    CAMBER("camber", Direction.MORE_NEGATIVE, Direction.LESS_NEGATIVE, Acts.ON_THE_TYRE, Counted.ONE_WAY, "step",
            "a common step is 0.25 to 0.5°",
            Typical.of(-2.6, -4, -1, 0.1, Unit.DEGREE), "a camber", Range.in(Unit.DEGREE, -8, 3)),
    CASTER("caster", Direction.LESS, Direction.MORE, Acts.ON_THE_BALANCE, Counted.ONE_WAY, "step",
            "a common step is 0.5°",
            Typical.of(6, 3, 9, 0.5, Unit.DEGREE), "a caster", Range.in(Unit.DEGREE, -2, 15)),
    PRESSURE("pressure", Direction.LOWER, Direction.HIGHER, Acts.ON_THE_TYRE, Counted.ONE_WAY, "step",
            "a common step is 0.05 to 0.1 bar cold, about 1 psi",
            Typical.of(1.6, 1.4, 2.2, 0.05, Unit.BAR), Measure.PRESSURE.noun(),
            Measure.PRESSURE.ranges().get(0)),
    ANTI_ROLL_BAR("anti-roll-bar", Direction.SOFTER, Direction.STIFFER, Acts.ON_THE_BALANCE, Counted.EITHER_WAY,
            "step", Say.POSITION_OR_CLICKS, Say.IN_POSITIONS, "", Say.POSITIONS),
    SPRINGS("springs", Direction.SOFTER, Direction.STIFFER, Acts.ON_THE_BALANCE, Counted.EITHER_WAY, "step",
            "a common step is one spring rate, about a tenth",
            Say.IN_POSITIONS, "a spring", Range.in(Unit.NEWTON_PER_MILLIMETRE, 5, 600), Say.POSITIONS),
    BUMP("bump", Direction.SOFTER, Direction.STIFFER, Acts.ON_THE_BALANCE, Counted.EITHER_WAY, "click",
            Say.POSITION_OR_CLICKS, Say.IN_POSITIONS, "", Say.POSITIONS),
    REBOUND("rebound", Direction.SOFTER, Direction.STIFFER, Acts.ON_THE_BALANCE, Counted.EITHER_WAY, "click",
            Say.POSITION_OR_CLICKS, Say.IN_POSITIONS, "", Say.POSITIONS),
    RIDE_HEIGHT("ride-height", Direction.LOWER, Direction.HIGHER, Acts.ON_THE_BALANCE, Counted.ONE_WAY, "step",
            "a common step is 2 to 3 mm", Typical.of(80, 60, 100, 2, Unit.MILLIMETRE), "a ride height",
            new Range(List.of(Unit.MILLIMETRE, Unit.INCH), 5, 500)),
    WING("wing", Direction.LESS, Direction.MORE, Acts.ON_THE_BALANCE, Counted.EITHER_WAY, "step",
            "a common step is one hole, or one degree", Say.IN_POSITIONS, "a wing setting",
            Range.in(Unit.DEGREE, -20, 60), Say.POSITIONS),
    /** The front axle's share of the braking. */
    BRAKE_BIAS("brake-bias", Direction.REARWARD, Direction.FORWARD, Acts.ON_THE_BALANCE, Counted.ONE_WAY, "step",
            "a common step is half a per cent to one",
            Typical.of(60, 50, 70, 1, Unit.PERCENT), "a brake bias", Range.in(Unit.PERCENT, 20, 90)),
    DIFFERENTIAL_PRELOAD("differential-preload", Direction.LESS, Direction.MORE, Acts.ON_THE_BALANCE,
            Counted.EITHER_WAY, "step", Say.ONE_POSITION, Say.IN_POSITIONS, "a preload",
            Range.in(Unit.NEWTON_METRE, 0, 1000), Say.POSITIONS),
    /** Locking while the engine drives. */
    DIFFERENTIAL_POWER("differential-power", Direction.LESS, Direction.MORE, Acts.ON_THE_BALANCE,
            Counted.EITHER_WAY, "step", Say.ONE_POSITION, Say.IN_POSITIONS, "", Say.POSITIONS, Say.LOCKING,
            Say.RAMP_ANGLE),
    /** Locking while the engine holds back. */
    DIFFERENTIAL_COAST("differential-coast", Direction.LESS, Direction.MORE, Acts.ON_THE_BALANCE,
            Counted.EITHER_WAY, "step", Say.ONE_POSITION, Say.IN_POSITIONS, "", Say.POSITIONS, Say.LOCKING,
            Say.RAMP_ANGLE);

    /** What it is there for: what acts on the tyre itself is looked at before the car's balance. */
    private enum Acts {
        ON_THE_TYRE, ON_THE_BALANCE
    }

    /** Whether the larger number always means the same, or is the maker's choice, as with clicks and holes. */
    private enum Counted {
        ONE_WAY, EITHER_WAY
    }

    /** What several of them say. */
    private static final class Say {
        static final Range POSITIONS = new Range(List.of(Unit.POSITION), -1000, 10_000);
        /** Of the torque; the larger number locks more. */
        static final Range LOCKING = Range.in(Unit.PERCENT, 0, 100);
        /** The angle of a ramp; the smaller one is steeper and locks more. */
        static final Range RAMP_ANGLE = Range.in(Unit.DEGREE, 5, 90);
        /** Of one wheel: on an oval the inner one leans the other way, out at its top. */
        static final Range ONE_WHEELS_CAMBER = Range.in(Unit.DEGREE, -8, 8);
        static final Typical IN_POSITIONS = Typical.of(5, 1, 9, 1, Unit.POSITION);
        static final String POSITION_OR_CLICKS = "a common step is one position, or one or two clicks";
        static final String ONE_POSITION = "a common step is one position";
    }

    private final String id;
    private final List<Direction> directions;
    private final Acts acts;
    private final Counted counted;
    private final String stepWord;
    private final String commonStep;
    private final Typical typical;
    private final String noun;
    private final List<Range> ranges;

    Adjustment(String id, Direction lowers, Direction raises, Acts acts, Counted counted, String stepWord,
            String commonStep, Typical typical, String noun, Range... ranges) {
        this.id = id;
        this.directions = List.of(lowers, raises);
        this.acts = acts;
        this.counted = counted;
        this.stepWord = stepWord;
        this.commonStep = commonStep;
        this.typical = typical;
        this.noun = noun;
        this.ranges = List.of(ranges);
    }

    @Override
    public String id() {
        return id;
    }

    /** The two directions it moves in, first the one that lowers its number. */
    public List<Direction> directions() {
        return directions;
    }

    /** Whether it acts on the tyre itself, so that it is looked at before the car's balance. */
    public boolean ofTyre() {
        return acts == Acts.ON_THE_TYRE;
    }

    /** Whether it is a damper's. */
    public boolean damping() {
        return this == BUMP || this == REBOUND;
    }

    /** Whether a larger number may mean less, as some makers count clicks and holes. */
    public boolean countedEitherWay() {
        return counted == Counted.EITHER_WAY;
    }

    /** What one step of a bare number is called: {@code click} of a damper, else {@code step}. */
    public String stepWord() {
        return stepWord;
    }

    /** How far a person usually goes in one go where nothing is known of the car, in words, with the unit. */
    public String commonStep() {
        return commonStep;
    }

    /** How it stands on a made-up car. */
    public Typical typical() {
        return typical;
    }

    /** Clicks and positions alone, for a car whose file counts what others measure. */
    Measure clicks(Adjuster adjuster) {
        return new Measure("a setting of the " + adjuster.spoken() + " in clicks", List.of(Say.POSITIONS));
    }

    /** What a setting may be; {@code adjuster} names it where no noun does. */
    Measure measure(Adjuster adjuster) {
        return new Measure(noun.isEmpty() ? "a setting of the " + adjuster.spoken() : noun,
                this == CAMBER && adjuster.wheel().isPresent() ? List.of(Say.ONE_WHEELS_CAMBER) : ranges);
    }
}
