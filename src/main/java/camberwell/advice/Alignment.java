package camberwell.advice;

import camberwell.physics.RollCamber;
import camberwell.physics.SteeringAxis;
import camberwell.physics.Toe;
import camberwell.units.Figures;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Alignment geometry as a person asks for it. Angles in the signs of ISO 8855: toe-in positive, camber negative when
 * the top leans in, caster positive when the steering axis' top leans back.
 */
public final class Alignment {

    private static final double[] USUAL_STEER = {5, 10, 15, 20};

    private Alignment() {
    }

    /**
     * The toe of an axle's two wheels as angles and as lengths.
     *
     * @param left toe of the left wheel, an angle or a length
     * @param right toe of the right wheel, an angle or a length
     * @param across reference diameter; needed as soon as a length is given or asked for
     * @throws IllegalArgumentException if a length is given without a diameter, or does not fit on it
     */
    public static List<Worked> toe(Quantity left, Quantity right, Optional<Quantity> across) {
        double leftDegrees = degrees(left, across);
        double rightDegrees = degrees(right, across);
        List<Worked> figures = new ArrayList<>();
        if (left.equals(right)) {
            toeOfOne(figures, "wheel", "a wheel", left, leftDegrees, across);
        } else {
            toeOfOne(figures, "left", "of the left wheel", left, leftDegrees, across);
            toeOfOne(figures, "right", "of the right wheel", right, rightDegrees, across);
        }
        figures.add(new Worked("total-toe", "Total toe", leftDegrees + rightDegrees, "deg", 3,
                "the sum of both wheels; "
                + minutes(leftDegrees + rightDegrees)));
        across.ifPresent(diameter -> {
            double d = diameter.in(Unit.MILLIMETRE);
            figures.add(new Worked("total-toe-length", "Total toe, as a length",
                    Toe.totalMillimetres(leftDegrees, rightDegrees, d), "mm", 2,
                            Figures.fill("%.1f mm x (sin %.3f° + sin %.3f°), rear less front", d, leftDegrees, rightDegrees)));
        });
        return List.copyOf(figures);
    }

    /**
     * Toe of one wheel in degrees.
     *
     * @throws IllegalArgumentException if it is a length and no diameter is given, or it does not fit on it
     */
    public static double degrees(Quantity toe, Optional<Quantity> across) {
        if (toe.unit().dimension() == Unit.Dimension.ANGLE) {
            return toe.in(Unit.DEGREE);
        }
        double diameter = across.orElseThrow(() -> new IllegalArgumentException("toe as a length means nothing without "
                + "the diameter that it is measured across")).in(Unit.MILLIMETRE);
        return Toe.degreesFromMillimetres(toe.in(Unit.MILLIMETRE), diameter);
    }

    private static void toeOfOne(List<Worked> figures, String id, String whose, Quantity given, double degrees,
            Optional<Quantity> across) {
        String diameter = across.map(d -> Worked.number(d.in(Unit.MILLIMETRE), 1)).orElse("");
        boolean angle = given.unit().dimension() == Unit.Dimension.ANGLE;
        figures.add(new Worked("toe-" + id, "Toe " + whose, degrees, "deg", 3, (angle ? "as given"
                : "arcsin(" + Worked.number(given.in(Unit.MILLIMETRE), 2) + " mm / " + diameter + " mm)") + "; "
                + minutes(degrees) + (degrees > 0 ? ", toe-in" : degrees < 0 ? ", toe-out" : "")));
        across.ifPresent(d -> figures.add(new Worked("toe-length-" + id, "Toe " + whose + ", as a length",
                Toe.millimetresFromDegrees(degrees, d.in(Unit.MILLIMETRE)), "mm", 2, angle ? diameter + " mm x sin "
                + Worked.number(degrees, 3) + "°, rear less front" : "as given")));
    }

    private static String minutes(double degrees) {
        return Worked.number(degrees * 60, 1) + " minutes of arc";
    }

    /**
     * Camber of both front wheels in steer, exactly, with the handbooks' small-angle form beside it.
     *
     * @param steer of the wheels; the usual angles where none is given
     * @throws IllegalArgumentException if the angles are out of the formula's range
     */
    public static List<Worked> camberInSteer(Quantity caster, Quantity kingpin, Quantity camber,
            Optional<Quantity> steer) {
        SteeringAxis axis = new SteeringAxis(caster.si(), kingpin.si());
        double[] angles = steer.map(one -> new double[] {Math.abs(one.in(Unit.DEGREE))}).orElse(USUAL_STEER);
        List<Worked> figures = new ArrayList<>();
        for (double angle : angles) {
            figures.add(inSteer(axis, camber, "outer", -angle));
            figures.add(inSteer(axis, camber, "inner", angle));
        }
        return List.copyOf(figures);
    }

    private static Worked inSteer(SteeringAxis axis, Quantity camber, String which, double angle) {
        double steer = Math.toRadians(angle);
        double exact = Math.toDegrees(axis.camber(camber.si(), steer));
        String at = Worked.number(Math.abs(angle), Quantity.decimalsOf(angle));
        return new Worked(which + "-at-" + at, "Camber of the " + which + " wheel at " + at + "° of steer", exact,
                "deg", 3,
                Figures.fill("%+.3f° from straight ahead, by exact rotation; the small-angle form "
                        + "%.3f° %s %.3f° x sin %s° + %.3f° x (1 - cos %s°) gives %.3f°",
                        exact - camber.in(Unit.DEGREE), camber.in(Unit.DEGREE), angle < 0 ? "-" : "+",
                        Math.toDegrees(axis.caster()), at, Math.toDegrees(axis.kingpinInclination()), at,
                        Math.toDegrees(axis.camberSmallAngle(camber.si(), steer))));
    }

    /**
     * Caster from the cambers that one wheel shows when it is steered as far in as out.
     *
     * @param turnedIn camber with the wheel steered as the inner wheel of a turn
     * @param turnedOut camber with the wheel steered as the outer wheel of a turn
     * @param steer to either side
     * @throws IllegalArgumentException if the steer is not between 0 and a right angle
     */
    public static List<Worked> casterFromSweep(Quantity turnedIn, Quantity turnedOut, Quantity steer) {
        double caster = Math.toDegrees(SteeringAxis.casterFromSweep(turnedIn.si(), turnedOut.si(), steer.si()));
        double factor = 1 / (2 * Math.sin(steer.si()));
        return List.of(Worked.degrees("caster", "Caster", caster,
                Figures.fill("(%.3f° - %.3f°) / (2 x sin %.1f°), a factor of %.4f; "
                        + "workshop rules round the factor, and 1.5 for a "
                        + "sweep of 20° reads 2.6 % high", turnedIn.in(Unit.DEGREE), turnedOut.in(Unit.DEGREE),
                steer.in(Unit.DEGREE), factor)));
    }

    /**
     * Camber to the road in roll.
     *
     * @param camber static camber of the wheel
     * @param roll of the body
     * @param recovery what the suspension takes back of the roll
     */
    public static List<Worked> camberInRoll(Quantity camber, Quantity roll, Recovery recovery) {
        double lean = Math.abs(roll.si());
        double outer = Math.toDegrees(RollCamber.outer(camber.si(), lean, recovery.share()));
        double inner = Math.toDegrees(RollCamber.inner(camber.si(), lean, recovery.share()));
        double left = Math.toDegrees(RollCamber.outer(0, lean, recovery.share()));
        String leaves = Figures.fill("(1 - %.2f) x %.2f° of roll", recovery.share(),
                Math.toDegrees(lean));
        return List.of(new Worked("recovery", "Camber taken back in roll", 100 * recovery.share(), "%", 0,
                        recovery.source()),
                Worked.degrees("outer", "Camber to the road, outer wheel", outer,
                        Figures.fill("%.2f° + %s; the loaded wheel", camber.in(Unit.DEGREE), leaves)),
                Worked.degrees("inner", "Camber to the road, inner wheel", inner,
                        Figures.fill("%.2f° - %s; the one that pays", camber.in(Unit.DEGREE), leaves)),
                Worked.degrees("upright", "Static camber that stands the outer wheel upright", -left, "-" + leaves
                        + "; tyres like to lean in a little, so most cars run somewhat more (common practice, no "
                        + "source)"));
    }

    /**
     * The part of the body's roll that the suspension takes back, so that the wheel does not lean with the body.
     *
     * @param share 0 leans with the body, 1 stays upright
     * @param source how it is known
     */
    public record Recovery(double share, String source) {

        /** As given. */
        public static Recovery given(Quantity percent) {
            return new Recovery(percent.si(), "as given");
        }

        /**
         * From what a jack and a camber gauge show.
         *
         * @param change camber in bump less camber at rest; negative on a usual suspension
         * @param travel of the wheel in bump
         * @param track width
         * @throws IllegalArgumentException if the travel is not positive
         */
        public static Recovery fromTravel(Quantity change, Quantity travel, Quantity track) {
            if (!(travel.si() > 0)) {
                throw new IllegalArgumentException("the travel in bump must be positive, is " + travel);
            }
            return new Recovery(RollCamber.gainFromTravel(change.si() / travel.si(), track.si()),
                    "-(" + change + " for " + travel + " of bump) x half the track of " + track
                            + ": in roll each wheel travels half a track per radian");
        }
    }

    /**
     * What toe costs on the straight, for both wheels of an axle.
     *
     * @param toe of one wheel, degrees
     * @param speed of the car
     * @param tyre its cornering stiffness
     */
    public static List<Worked> drag(double toe, Quantity speed, TyreStiffness tyre) {
        double side = tyre.newtonsPerRadian() * Math.abs(Math.toRadians(toe));
        double drag = 2 * Toe.drag(tyre.newtonsPerRadian(), Math.toRadians(toe));
        double watts = 2 * Toe.dragPower(tyre.newtonsPerRadian(), Math.toRadians(toe), speed.si());
        return List.of(
                new Worked("side-force", "Side force of one tyre", side, "N", 0, tyre.source() + " x "
                        + Worked.number(Math.abs(toe), 3) + "°: the two tyres push against each other"),
                new Worked("drag", "Toe drag of the axle", drag, "N", 2,
                        Figures.fill("2 x %.0f N x sin %.3f°; "
                                + "an estimate that takes toe for slip angle. It grows with the square: "
                                + "twice the toe drags four times as much", side, Math.abs(toe))),
                new Worked("scrub-heat", "Power lost, which heats the tread", watts, "W", 0,
                        Figures.fill("%.2f N x %s; it warms the tyres on a cold track and overheats them on a hot one", drag,
                        speed)));
    }
}
