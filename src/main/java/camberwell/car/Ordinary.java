package camberwell.car;

import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Standing;
import java.util.EnumSet;
import java.util.Set;

/**
 * How an adjuster stands against what is ordinary. Toe, camber and caster are held against ranges of angles, which are
 * those of cars on tyres for the track (a single-seater on slicks takes more camber, a road car less); everything else is
 * held against the middle half of the adjuster's own range, and one step off its middle is never far: of a bar with three
 * holes every one is ordinary. All ranges are common practice, no source.
 */
public final class Ordinary {

    private static final double TOE_IN_FRONT = 0.10;
    private static final double TOE_OUT_FRONT = 0.20;
    private static final double TOE_IN_REAR = 0.30;
    private static final double CAMBER_LEAST = 1.0;
    private static final double CAMBER_MOST = 3.5;
    private static final double CAMBER_LEAST_REAR = 0.5;
    private static final double CAMBER_MOST_REAR = 3.0;
    private static final double CASTER_LEAST = 3.5;
    private static final double CASTER_MOST = 8.0;
    private static final double QUARTER = 0.25;
    /** Steps off the middle of the range up to which no setting is far off; a hair more. */
    private static final double NEAR = 1 + 1e-9;

    private Ordinary() {
    }

    /** How {@code adjuster} stands on {@code car}; nothing where nobody knows. */
    public static Set<Standing> standing(Car car, Adjuster adjuster) {
        if (car.generic() || car.setting(adjuster).isEmpty()) {
            return Set.of();
        }
        Setting setting = car.setting(adjuster).get();
        return switch (adjuster.kind()) {
            case TOE -> toe(setting, adjuster.axle().orElseThrow());
            case CAMBER -> camber(setting, adjuster.axle().orElseThrow(), adjuster.wheel().isPresent());
            case CASTER -> angular(setting) ? between(setting.now().in(Unit.DEGREE), CASTER_LEAST, CASTER_MOST)
                    : inRange(setting, true);
            default -> inRange(setting, true);
        };
    }

    /** Whether the setting stands outside what is ordinary, and {@code change} leads back there. */
    public static boolean leadsBack(Car car, Change change) {
        Set<Standing> standing = standing(car, change.adjuster());
        boolean more = change.direction().raises() != (change.adjuster().kind() == Adjuster.Kind.CAMBER);
        return standing.contains(Standing.FAR_TOED_IN) && change.direction() == Direction.TOE_OUT
                || standing.contains(Standing.FAR_TOED_OUT) && change.direction() == Direction.TOE_IN
                || standing.contains(Standing.BEYOND_ORDINARY) && !more
                || standing.contains(Standing.SHORT_OF_ORDINARY) && more;
    }

    private static boolean angular(Setting setting) {
        return setting.now().unit().dimension() == Unit.Dimension.ANGLE;
    }

    private static Set<Standing> camber(Setting setting, Axle axle, boolean oneWheel) {
        if (!angular(setting)) {
            return inRange(setting, false);
        }
        double negative = -setting.now().in(Unit.DEGREE);
        if (oneWheel && negative < 0) {
            // The inner wheel of a car for ovals leans out on purpose.
            return Set.of();
        }
        return axle == Axle.FRONT ? between(negative, CAMBER_LEAST, CAMBER_MOST)
                : between(negative, CAMBER_LEAST_REAR, CAMBER_MOST_REAR);
    }

    private static Set<Standing> toe(Setting setting, Axle axle) {
        Quantity now = setting.now();
        if (now.unit().dimension() == Unit.Dimension.COUNT) {
            // Clicks count from nowhere in particular: they do not tell whether the wheels point in or out.
            return Set.of();
        }
        EnumSet<Standing> standing = EnumSet.of(now.value() > 0 ? Standing.TOED_IN
                : now.value() < 0 ? Standing.TOED_OUT : Standing.STRAIGHT);
        if (angular(setting)) {
            double most = axle == Axle.FRONT ? TOE_IN_FRONT : TOE_IN_REAR;
            double least = axle == Axle.FRONT ? -TOE_OUT_FRONT : 0;
            double toe = now.in(Unit.DEGREE);
            standing.add(toe > most ? Standing.FAR_TOED_IN : toe < least ? Standing.FAR_TOED_OUT : Standing.ORDINARY);
        }
        return standing;
    }

    private static Set<Standing> between(double value, double least, double most) {
        return Set.of(value > most ? Standing.BEYOND_ORDINARY
                : value < least ? Standing.SHORT_OF_ORDINARY : Standing.ORDINARY);
    }

    /** @param raised whether beyond the ordinary is where the adjuster's raising direction leads */
    private static Set<Standing> inRange(Setting setting, boolean raised) {
        double range = setting.max().value() - setting.min().value();
        if (range <= 0) {
            return Set.of();
        }
        double part = (setting.now().value() - setting.min().value()) / range;
        double up = setting.largerIsSofter() == raised ? 1 - part : part;
        double stepsOff = Math.abs(part - 0.5) * range / setting.step().value();
        return stepsOff <= NEAR ? Set.of(Standing.ORDINARY) : between(up, QUARTER, 1 - QUARTER);
    }
}
