package camberwell.advice;

import camberwell.car.Setting;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import java.util.Optional;

/**
 * How far a change may go at once, whatever else is computed: what moves a car further is another car, of which the next
 * run tells nothing of this one. All bounds are common practice, no source.
 */
final class Bounds {

    private static final double HAIR = 1e-9;
    private static final double TOE_DEGREES = 0.2;
    private static final double TOE_MILLIMETRES = 1.5;
    private static final double CAMBER_DEGREES = 0.5;
    private static final double CASTER_DEGREES = 1.0;
    private static final double PRESSURE_BAR = 0.5;
    /** Of a spring's rate, and of it the next spring on the shelf where that is a little further. */
    private static final double SPRING_PART = 0.1;
    private static final double NEXT_SPRING_PART = 0.15;
    private static final double HEIGHT_PART = 0.1;
    private static final double HEIGHT_MILLIMETRES = 10;
    private static final double WING_DEGREES = 3;
    private static final double BIAS_PERCENT = 1.0;
    private static final double PRELOAD_PART = 0.25;
    private static final double PRELOAD_NEWTON_METRES = 15;
    private static final double RAMP_DEGREES = 15;
    private static final double RAMP_PERCENT = 15;
    /** Of what is counted in positions, at a range this many steps long two may be taken, else one. */
    private static final int LONG_RANGE = 5;

    private Bounds() {
    }

    /** The most that the adjuster may be moved at once, in the setting's own unit. */
    static double most(Adjuster adjuster, Setting setting) {
        Quantity now = setting.now();
        return switch (now.unit().dimension()) {
            case ANGLE -> now.unit().fromSi(Unit.DEGREE.toSi(switch (adjuster.kind()) {
                case TOE -> TOE_DEGREES;
                case CAMBER -> CAMBER_DEGREES;
                case CASTER -> CASTER_DEGREES;
                case WING -> WING_DEGREES;
                default -> RAMP_DEGREES;
            }));
            case LENGTH -> now.unit().fromSi(Unit.MILLIMETRE.toSi(adjuster.kind() == Adjuster.Kind.TOE
                    ? TOE_MILLIMETRES : height(now.in(Unit.MILLIMETRE))));
            case PRESSURE -> now.unit().fromSi(Unit.BAR.toSi(PRESSURE_BAR));
            case STIFFNESS -> SPRING_PART * now.value();
            case RATIO -> now.unit().fromSi(Unit.PERCENT.toSi(adjuster.kind() == Adjuster.Kind.BRAKE_BIAS
                    ? BIAS_PERCENT : RAMP_PERCENT));
            case TORQUE -> Math.max(PRELOAD_PART * now.value(), now.unit().fromSi(PRELOAD_NEWTON_METRES));
            default -> setting.step().value() * (range(setting) >= LONG_RANGE ? 2 : 1);
        };
    }

    /** A tenth of the clearance; a number that is no clearance, such as one that counts from zero, gets the most. */
    private static double height(double millimetres) {
        return millimetres <= 0 ? HEIGHT_MILLIMETRES : Math.min(HEIGHT_MILLIMETRES, HEIGHT_PART * millimetres);
    }

    private static double range(Setting setting) {
        return (setting.max().value() - setting.min().value()) / setting.step().value();
    }

    /** How many of the car's steps stay within the bound. */
    static int steps(Adjuster adjuster, Setting setting) {
        int steps = (int) Math.floor(most(adjuster, setting) / setting.step().value() + HAIR);
        boolean nextSpring = steps == 0 && setting.now().unit().dimension() == Unit.Dimension.STIFFNESS
                && setting.step().value() <= NEXT_SPRING_PART * setting.now().value() + HAIR;
        return nextSpring ? 1 : steps;
    }

    /** Why the adjuster cannot be moved sensibly at all, when one step of it is more than may be. */
    static Optional<String> tooCoarse(Adjuster adjuster, Setting setting) {
        if (steps(adjuster, setting) > 0) {
            return Optional.empty();
        }
        Quantity most = setting.step().withValue(Math.rint(most(adjuster, setting) * 100) / 100);
        return Optional.of("one step of " + setting.step() + " is more than the " + most + " that are sensible at once"
                + (adjuster.kind() == Adjuster.Kind.STIFFNESS ? ": find a spring between" : ": check the step in the "
                + "car's file, or find a finer one"));
    }
}
