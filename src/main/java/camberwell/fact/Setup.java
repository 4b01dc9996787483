package camberwell.fact;

import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The car as it ran, as the rules ask about it. */
public record Setup(Car car) implements Premise {

    /**
     * What a car can be asked: its driven wheels; {@code adjustable front-toe}, {@code yes} or {@code no}, of each
     * adjuster; and where its toe, camber and caster stand, by the adjuster's name.
     */
    public static final Kind KIND = new Kind("Setup", true, attributes());

    /** 18 inches, in m. */
    private static final double USUAL_RIM = 0.4572;
    private static final String ADJUSTABLE = "adjustable ";

    private static List<Attribute> attributes() {
        List<Attribute> attributes = new ArrayList<>();
        attributes.add(Attribute.of("drive", Drive.class));
        for (Adjuster adjuster : Adjuster.values()) {
            attributes.add(Attribute.of(adjustable(adjuster), "yes", "no"));
            if (isAngle(adjuster)) {
                attributes.add(Attribute.number(adjuster.id(), Unit.DEGREE));
            }
        }
        return List.copyOf(attributes);
    }

    private static boolean isAngle(Adjuster adjuster) {
        return adjuster.typical().now().unit() == Unit.DEGREE;
    }

    /** The name of the attribute whether that can be adjusted. */
    public static String adjustable(Adjuster adjuster) {
        return ADJUSTABLE + adjuster.id();
    }

    @Override
    public Kind kind() {
        return KIND;
    }

    /** Of a car of which not even the driven wheels are known, nobody knows what it lacks. */
    @Override
    public String word(String attribute) {
        if (attribute.equals("drive")) {
            return car.drive().isPresent() ? car.drive().get().id() : null;
        }
        Adjuster adjuster = attribute.startsWith(ADJUSTABLE) ? adjuster(attribute.substring(ADJUSTABLE.length()))
                : null;
        if (adjuster == null) {
            throw unasked(attribute);
        }
        return car.setting(adjuster).isPresent() ? "yes" : car.drive().isPresent() ? "no" : null;
    }

    /** Of a class of car the figures only fill its form. */
    @Override
    public double number(String attribute) {
        Adjuster adjuster = adjuster(attribute);
        if (adjuster == null || !isAngle(adjuster)) {
            throw unasked(attribute);
        }
        Optional<Setting> setting = car.setting(adjuster);
        return car.generic() || setting.isEmpty() ? Double.NaN : degrees(adjuster, setting.get().now());
    }

    /** What is counted in clicks says nothing of the angle. Toe may be given as a length, which is an angle across the rim; across a usual one where none is given. */
    private double degrees(Adjuster adjuster, Quantity now) {
        if (now.unit().dimension() == Unit.Dimension.ANGLE) {
            return now.in(Unit.DEGREE);
        }
        if (now.unit().dimension() != Unit.Dimension.LENGTH) {
            return Double.NaN;
        }
        double rim = car.tyres(adjuster.axle().orElseThrow()).rim().map(Quantity::si).orElse(USUAL_RIM);
        return Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, now.si() / rim))));
    }

    private static Adjuster adjuster(String id) {
        return Word.find(Adjuster.class, id).orElse(null);
    }

    @Override
    public String says(String attribute) {
        if (attribute.equals("drive")) {
            return car.drive().isPresent() ? "the car is " + car.driven() : "which wheels are driven is not known";
        }
        if (attribute.startsWith(ADJUSTABLE)) {
            Adjuster adjuster = adjuster(attribute.substring(ADJUSTABLE.length()));
            return word(attribute) == null || word(attribute).equals("no") ? car.lacking(adjuster)
                    : "the car has an adjustable " + adjuster.spoken();
        }
        double now = number(attribute);
        Adjuster adjuster = adjuster(attribute);
        return "the " + adjuster.spoken() + (Double.isNaN(now) ? " is not known"
                : " stands at " + car.setting(adjuster).orElseThrow().now());
    }

    /** By the name alone: every conclusion carries its premises and is hashed when it is inserted. */
    @Override
    public int hashCode() {
        return car.name().hashCode();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Setup setup && car.equals(setup.car);
    }

    @Override
    public double certainty() {
        return 1;
    }

    @Override
    public String statement() {
        return car.name() + ", " + car.driven();
    }
}
