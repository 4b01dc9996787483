package camberwell.fact;

import camberwell.car.Car;
import camberwell.car.Dimension;
import camberwell.car.Setting;
import camberwell.units.Measure;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Aid;
import camberwell.vocabulary.CarKind;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The car as it ran, as the rules ask about it. */
public record Setup(Car car) implements Premise {

    /**
     * What a car can be asked: its driven wheels; {@code adjustable front-toe}, {@code yes} or {@code no}, of each
     * adjuster; where its toe, camber and caster stand, by the adjuster's name; where each adjuster stands in a unit,
     * {@code front-springs:in N/mm}; and the steps that are left, {@code steps left of front-bump:towards softer}.
     */
    public static final Kind KIND = new Kind("Setup", true, attributes(), Setup::figure);

    /** 18 inches, in m. */
    private static final double USUAL_RIM = 0.4572;
    private static final String ADJUSTABLE = "adjustable ";
    private static final String AID = "aid ";
    private static final String IN = " in ";
    private static final String POSITION = "position";
    private static final String SIDES = "sides";
    private static final String MASS = "mass in kg";
    private static final String LEFT = "steps left of ";
    private static final String TOWARDS = " towards ";
    private static final Measure STEPS = Measure.in("a number of steps", Unit.POSITION, 0, 1000);

    private static List<Attribute> attributes() {
        List<Attribute> attributes = new ArrayList<>();
        attributes.add(Attribute.of("drive", Drive.class));
        attributes.add(Attribute.of("kind", CarKind.class));
        attributes.add(Attribute.of("wings", "yes", "no"));
        attributes.add(Attribute.of("simulator", "yes", "no"));
        for (Aid aid : Aid.values()) {
            attributes.add(Attribute.of(AID + aid.id(), "yes"));
        }
        attributes.add(Attribute.of(SIDES, "alike", "unlike"));
        for (Adjuster adjuster : Adjuster.values()) {
            attributes.add(Attribute.of(adjustable(adjuster), "yes", "no"));
            if (isAngle(adjuster)) {
                attributes.add(Attribute.number(adjuster.id(), Unit.DEGREE));
            }
        }
        return List.copyOf(attributes);
    }

    private static Attribute figure(String written) {
        // A gap of the dictionary is followed by a colon: after a space Drools puts another one.
        String name = written.replace(':', ' ');
        if (name.equals(MASS)) {
            return Attribute.measured(written, Unit.KILOGRAM, Dimension.MASS.measure());
        }
        if (name.startsWith(LEFT)) {
            return left(name) == null ? null : Attribute.measured(written, Unit.POSITION, STEPS);
        }
        int in = name.indexOf(IN);
        Adjuster adjuster = in < 0 ? null : adjuster(name.substring(0, in));
        if (adjuster == null) {
            return null;
        }
        String symbol = name.substring(in + IN.length());
        Optional<Unit> unit = symbol.equals(POSITION) ? Optional.of(Unit.POSITION) : Unit.withSymbol(symbol);
        // Toe may stand as a length at the rim and as an angle; anything may be counted in clicks.
        Optional<Measure> measure = unit.flatMap(it -> it == Unit.POSITION ? Optional.of(adjuster.clicks())
                : adjuster.measure().range(it).map(range -> adjuster.measure()));
        return measure.isEmpty() ? null : Attribute.measured(written, unit.get(), measure.get());
    }

    /** The adjuster that a figure of the car is about; empty for its mass. */
    public static Optional<Adjuster> adjusterOf(String written) {
        String attribute = written.replace(':', ' ');
        if (attribute.startsWith(LEFT)) {
            return Optional.ofNullable(left(attribute)).map(Change::adjuster);
        }
        int in = attribute.indexOf(IN);
        return Optional.ofNullable(adjuster(in < 0 ? attribute : attribute.substring(0, in)));
    }

    /** The change whose room {@code steps left of ... towards ...} is about. */
    private static Change left(String name) {
        return Change.parse(name.substring(LEFT.length()).replace(TOWARDS, " ")).orElse(null);
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
        if (attribute.equals("kind")) {
            return car.kind().isPresent() ? car.kind().get().id() : null;
        }
        if (attribute.equals("wings")) {
            return car.winged() ? "yes" : car.generic() ? null : "no";
        }
        if (attribute.equals("simulator")) {
            return car.simulated().isEmpty() ? null : car.simulator() ? "yes" : "no";
        }
        if (attribute.equals(SIDES)) {
            return car.sidesUnlike() ? "unlike" : "alike";
        }
        if (attribute.startsWith(AID)) {
            return car.aids().contains(aid(attribute)) ? "yes" : null;
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
    public double number(String written) {
        String attribute = written.replace(':', ' ');
        int in = attribute.indexOf(IN);
        if (in >= 0 || attribute.startsWith(LEFT)) {
            return measured(attribute, in);
        }
        Adjuster adjuster = adjuster(attribute);
        if (adjuster == null || !isAngle(adjuster)) {
            throw unasked(attribute);
        }
        Optional<Setting> setting = car.setting(adjuster);
        return car.generic() || setting.isEmpty() ? Double.NaN : degrees(adjuster, setting.get().now());
    }

    private double measured(String attribute, int in) {
        Unit unit = KIND.attribute(attribute).flatMap(Attribute::unit).orElseThrow(() -> unasked(attribute));
        if (car.generic()) {
            return Double.NaN;
        }
        if (attribute.equals(MASS)) {
            return car.dimension(Dimension.MASS).map(mass -> mass.in(unit)).orElse(Double.NaN);
        }
        if (attribute.startsWith(LEFT)) {
            Change change = left(attribute);
            return car.setting(change.adjuster()).map(setting -> (double) setting.stepsLeft(change.direction()))
                    .orElse(Double.NaN);
        }
        Adjuster adjuster = adjuster(attribute.substring(0, in));
        Quantity now = car.setting(adjuster).map(Setting::now).orElse(null);
        if (now == null) {
            return Double.NaN;
        }
        if (now.unit().dimension() == unit.dimension()) {
            return now.in(unit);
        }
        if (isToe(adjuster) && unit.dimension() == Unit.Dimension.ANGLE) {
            return degrees(adjuster, now);
        }
        return isToe(adjuster) && unit.dimension() == Unit.Dimension.LENGTH && now.unit() != Unit.POSITION
                ? unit.fromSi(Math.sin(now.si()) * rim(adjuster)) : Double.NaN;
    }

    private static boolean isToe(Adjuster adjuster) {
        return adjuster.adjustment() == Adjustment.TOE;
    }

    private double rim(Adjuster adjuster) {
        return car.tyres(adjuster.axle().orElseThrow()).rim().map(Quantity::si).orElse(USUAL_RIM);
    }

    /**
     * What is counted in clicks says nothing of the angle. Toe may be given as a length, which is an angle across the rim; across
     * a usual one where none is given.
     */
    private double degrees(Adjuster adjuster, Quantity now) {
        if (now.unit().dimension() == Unit.Dimension.ANGLE) {
            return now.in(Unit.DEGREE);
        }
        if (now.unit().dimension() != Unit.Dimension.LENGTH) {
            return Double.NaN;
        }
        return Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, now.si() / rim(adjuster)))));
    }

    private static Aid aid(String attribute) {
        return Word.of(Aid.class, attribute.substring(AID.length()));
    }

    private static Adjuster adjuster(String id) {
        return Word.find(Adjuster.class, id).orElse(null);
    }

    @Override
    public String says(String written) {
        String attribute = written.replace(':', ' ');
        if (attribute.equals("drive")) {
            return car.drive().isPresent() ? "the car is " + car.driven() : "which wheels are driven is not known";
        }
        if (attribute.equals("kind")) {
            return car.kind().map(kind -> "the car is a " + kind.spoken()).orElse("what kind of car it is is not given");
        }
        if (attribute.equals("wings")) {
            return word(attribute) == null ? "whether it has wings is not known"
                    : car.winged() ? "the car has wings" : "the car has no wings";
        }
        if (attribute.equals("simulator")) {
            return word(attribute) == null ? "whether it is a car of a simulator is not given"
                    : car.simulator() ? "the car is one of a simulator" : "the car is a real one";
        }
        if (attribute.equals(SIDES)) {
            return car.sidesUnlike() ? "the left and the right wheels lean unlike" : "no left wheel leans unlike its right one";
        }
        if (attribute.startsWith(AID)) {
            return car.aids().contains(aid(attribute)) ? "the car has " + aid(attribute).spoken()
                    : "the car's file names no " + aid(attribute).spoken();
        }
        if (attribute.equals(MASS)) {
            return car.dimension(Dimension.MASS).map(mass -> "the car weighs " + mass)
                    .orElse("the car's mass is not given");
        }
        if (attribute.startsWith(LEFT)) {
            double steps = number(attribute);
            return Double.isNaN(steps) ? car.lacking(left(attribute).adjuster())
                    : "steps left for " + left(attribute).id() + ": " + (long) steps;
        }
        if (attribute.contains(IN)) {
            Adjuster adjuster = adjuster(attribute.substring(0, attribute.indexOf(IN)));
            return car.setting(adjuster).map(setting -> "the " + adjuster.spoken() + " stands at " + setting.now())
                    .orElse(car.lacking(adjuster));
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
