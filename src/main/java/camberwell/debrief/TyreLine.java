package camberwell.debrief;

import camberwell.car.Car;
import camberwell.run.TyreReading;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Wheel;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Figures of tyres as they are read off: of one wheel, of an axle or of all four in a line, in the order front left, front
 * right, rear left, rear right unless a wheel or an axle is named. A wheel has three temperatures, or three and a hot
 * pressure, or a cold pressure besides, or a pressure alone. A figure without a unit is taken by its size, and what it was
 * taken for is said.
 */
final class TyreLine {

    /** What is plausible, as in a case file; common practice, no source. */
    private static final double COLDEST_TREAD = -20;
    private static final double HOTTEST_TREAD = 200;
    private static final double BEYOND_A_TREAD = 130;
    private static final double MOST_BAR = 6;
    private static final double LEAST_BAR = 0.3;
    private static final double LEAST_PSI = 8;
    private static final double MOST_PSI = 60;
    private static final Pattern BREAK = Pattern.compile("[\\s,;:|]+");
    private static final Pattern UNIT_APART = Pattern.compile("(?<=[0-9])\\s+(?=(?:°|[cCfF]\\b|bar|kPa|kpa|psi))");
    private static final Pattern OF_PRESSURE = Pattern.compile("pressure|psi\\b|bar\\b|kpa\\b", Pattern.CASE_INSENSITIVE);
    /** A figure in bar as a gauge shows it; no number of a list or a click has a point. */
    private static final Pattern WITH_A_POINT = Pattern.compile("\\b(?:[01]\\.[3-9]|[1-5]\\.\\d)\\d?\\b");
    /** A temperature of a tread that ran: 30 to 299, in °C or °F. */
    private static final Pattern ONE_TREAD = Pattern.compile("(?:[3-9]\\d|[12]\\d\\d)(?:\\.\\d+)?(?:°?[cCfF])?");
    /** So many figures that name no wheel are all four tyres' tread; fewer may be numbers of a list. */
    private static final int TREADS = 12;

    private final Car car;
    /** Whether a pressure by itself was read before the run. */
    private final boolean cold;
    private final Set<Unit> taken = new LinkedHashSet<>();

    private TyreLine(Car car, boolean cold) {
        this.car = car;
        this.cold = cold;
    }

    /**
     * What a line says.
     *
     * @param taken units that figures without one were taken in
     */
    record Read(Map<Wheel, TyreReading> tyres, Set<Unit> taken) {
    }

    /**
     * The figures of tyres that a line says unasked: wheels that are named, all four treads, pressures that are called so, or
     * one tread after the other.
     *
     * @param unread the wheels that nobody read yet, the next one first
     */
    static Optional<Read> unasked(String line, List<Wheel> unread, Car car) {
        try {
            boolean one = one(line);
            Read read = of(line, one && !unread.isEmpty() ? unread : List.of(Wheel.values()), car);
            return one || sure(line, read) ? Optional.of(read) : Optional.empty();
        } catch (Reply.NoAnswer e) {
            // It says something else.
            return Optional.empty();
        }
    }

    /** Whether it is one tread, with or without a pressure: no number of a list is that high, and none comes in threes. */
    private static boolean one(String line) {
        String[] figures = BREAK.split(UNIT_APART.matcher(line.strip()).replaceAll("").replace("/", " "));
        return (figures.length == 3 || figures.length == 4) && Stream.of(figures).limit(3)
                .allMatch(figure -> ONE_TREAD.matcher(figure).matches()) && (figures.length == 3 || figures(figures[3]));
    }

    private static boolean sure(String line, Read read) {
        long figures = Stream.of(BREAK.split(line)).filter(TyreLine::figures).count();
        if (read.tyres().values().stream().anyMatch(TyreReading::hasTread)) {
            return figures >= TREADS || TyreWords.apart(line).stream().anyMatch(word -> !named(word).isEmpty());
        }
        return OF_PRESSURE.matcher(line).find() || WITH_A_POINT.matcher(line).find() && read.tyres().size() > 1;
    }

    /** Whether a line can be one of figures. */
    static boolean figures(String typed) {
        return typed.chars().anyMatch(Character::isDigit);
    }

    /**
     * Reads a line.
     *
     * @param left the wheels that are not read yet, the next one first
     */
    static Read of(String typed, List<Wheel> left, Car car) throws Reply.NoAnswer {
        TyreWords said = TyreWords.of(typed);
        TyreLine line = new TyreLine(car, said.cold());
        Map<Wheel, TyreReading> tyres = new LinkedHashMap<>();
        List<Wheel> named = List.of();
        List<String> figures = new ArrayList<>();
        for (String word : said.words()) {
            List<Wheel> wheels = named(word);
            if (!wheels.isEmpty()) {
                line.wheels(named.isEmpty() && figures.isEmpty() ? List.of() : named, left, figures, tyres);
                named = wheels;
                figures = new ArrayList<>();
            } else {
                String[] parts = word.split("/");
                figures.addAll(parts.length == 3 ? List.of(parts) : List.of(word));
            }
        }
        line.wheels(named, left, figures, tyres);
        if (tyres.isEmpty()) {
            throw new Reply.NoAnswer("There is no figure in that.");
        }
        return new Read(tyres, line.taken);
    }

    /** The wheels that a word names; none where it names none. */
    static List<Wheel> named(String word) {
        return switch (word.toLowerCase(Locale.ROOT)) {
            case "fl", "lf", "front-left", "left-front", "vl", "avg" -> List.of(Wheel.FRONT_LEFT);
            case "fr", "rf", "front-right", "right-front", "vr", "avd" -> List.of(Wheel.FRONT_RIGHT);
            case "rl", "lr", "rear-left", "left-rear", "bl", "hl", "arg" -> List.of(Wheel.REAR_LEFT);
            case "rr", "rear-right", "right-rear", "br", "hr", "ard" -> List.of(Wheel.REAR_RIGHT);
            case "front", "fronts", "vorn", "vorne", "avant", "delante", "davanti" ->
                    List.of(Wheel.FRONT_LEFT, Wheel.FRONT_RIGHT);
            case "rear", "rears", "back", "backs", "hinten", "arrière", "arriere", "detrás", "detras", "dietro" ->
                    List.of(Wheel.REAR_LEFT, Wheel.REAR_RIGHT);
            case "all" -> List.of(Wheel.values());
            default -> List.of();
        };
    }

    /** The figures of the wheels that were named, or else of those that are left, as many as they fit. */
    private void wheels(List<Wheel> named, List<Wheel> left, List<String> typed, Map<Wheel, TyreReading> into)
            throws Reply.NoAnswer {
        List<String> figures = named.size() == 2 ? sides(typed) : typed;
        if (figures.isEmpty()) {
            if (!named.isEmpty()) {
                throw new Reply.NoAnswer("What did the " + named.get(0).spoken() + " tyre read?");
            }
            return;
        }
        List<Wheel> free = left.stream().filter(wheel -> !into.containsKey(wheel)).toList();
        int each = named.isEmpty() ? each(figures, free.size()) : each(figures, named);
        int count = named.isEmpty() ? figures.size() / each : named.size();
        List<Wheel> wheels = named.isEmpty() ? free : named;
        if (count > wheels.size()) {
            throw new Reply.NoAnswer("There are more figures than wheels left.");
        }
        boolean same = figures.size() == each && named.size() > 1;
        for (int i = 0; i < count; i++) {
            into.put(wheels.get(i), wheel(wheels.get(i), figures.subList(same ? 0 : i * each, same ? each : (i + 1) * each)));
        }
    }

    /** "Front 1.9/1.8" is left and right: no hot pressure is below the cold one. */
    private List<String> sides(List<String> figures) {
        String[] pair = figures.size() == 1 ? figures.get(0).split("/") : new String[0];
        if (pair.length != 2 || pair[0].isEmpty()) {
            return figures;
        }
        List<Double> values = Stream.of(pair).flatMap(one -> Quantity.parse(one).stream()).map(Quantity::value).toList();
        return values.size() == 2 && values.get(0) >= values.get(1) ? List.of(pair) : figures;
    }

    /** How many figures a wheel has where nobody named one. */
    private int each(List<String> figures, int free) throws Reply.NoAnswer {
        int count = figures.size();
        boolean pressures = figures.stream().allMatch(this::likePressure);
        int each = pressures && count <= free ? 1 : pressures && count == 2 * free ? 2
                : count % 4 == 0 && likePressure(figures.get(3)) ? 4
                : count % 5 == 0 && likePressure(figures.get(3)) && likePressure(figures.get(4)) ? 5
                : count % 3 == 0 ? 3 : 0;
        if (each == 0) {
            throw new Reply.NoAnswer("A tyre wants three temperatures, or three and a pressure, or a pressure: for instance "
                    + "92 84 78 1.95.");
        }
        return each;
    }

    private int each(List<String> figures, List<Wheel> named) throws Reply.NoAnswer {
        int count = figures.size();
        for (int each : new int[] {3, 4, 5, 1, 2}) {
            // One reading for an axle, or for all, counts for each of its wheels.
            if (count == each * named.size() || named.size() > 1 && count == each && each != 2) {
                return each;
            }
        }
        throw new Reply.NoAnswer("A tyre wants three temperatures, or three and a pressure, or a pressure: for instance "
                + named.get(0).id() + " 92 84 78 1.95.");
    }

    private TyreReading wheel(Wheel wheel, List<String> figures) throws Reply.NoAnswer {
        List<Optional<Quantity>> tread = new ArrayList<>();
        int temperatures = figures.size() >= 3 ? 3 : 0;
        for (int i = 0; i < 3; i++) {
            tread.add(temperatures == 3 ? Optional.of(temperature(figures.get(i), wheel.axle())) : Optional.empty());
        }
        List<String> rest = figures.subList(temperatures, figures.size());
        Optional<Quantity> cold = Optional.empty();
        Optional<Quantity> hot = Optional.empty();
        if (rest.size() == 1) {
            int slash = rest.get(0).indexOf('/');
            boolean before = slash < 0 && this.cold && temperatures == 0;
            String first = slash < 0 ? before ? rest.get(0) : "" : rest.get(0).substring(0, slash);
            String last = before ? "" : rest.get(0).substring(slash + 1);
            cold = first.isEmpty() ? Optional.empty() : Optional.of(pressure(first));
            hot = last.isEmpty() ? Optional.empty() : Optional.of(pressure(last));
        } else if (rest.size() == 2) {
            cold = Optional.of(pressure(rest.get(0)));
            hot = Optional.of(pressure(rest.get(1)));
        }
        if (cold.isPresent() && hot.isPresent() && cold.get().compareTo(hot.get()) > 0) {
            throw new Reply.NoAnswer("The cold pressure of the " + wheel.spoken() + ", " + cold.get()
                    + ", is above the hot one, " + hot.get() + ".");
        }
        return new TyreReading(tread.get(0), tread.get(1), tread.get(2), cold, hot);
    }

    /** Whether a figure is more like a pressure than like a temperature of a tread. */
    private boolean likePressure(String figure) {
        if (figure.contains("/")) {
            return true;
        }
        Optional<Quantity> parsed = Quantity.parse(figure);
        if (parsed.isEmpty() || parsed.get().unit() != Unit.POSITION) {
            return parsed.filter(it -> it.unit().dimension() == Unit.Dimension.PRESSURE).isPresent();
        }
        double value = parsed.get().value();
        return value <= MOST_BAR || value >= LEAST_PSI && value < 45 || value > BEYOND_A_TREAD
                && Reply.pressureUnit(car) == Unit.KILOPASCAL;
    }

    private Quantity temperature(String figure, Axle axle) throws Reply.NoAnswer {
        Quantity parsed = Reply.parsed(figure);
        Quantity temperature = parsed;
        if (parsed.unit() == Unit.POSITION) {
            Unit own = car.tyres(axle).windowLow().map(Quantity::unit).orElse(Unit.CELSIUS);
            Unit unit = parsed.value() > BEYOND_A_TREAD ? Unit.FAHRENHEIT : own;
            if (unit != own || unit != Unit.CELSIUS) {
                taken.add(unit);
            }
            temperature = new Quantity(parsed.value(), unit);
        }
        if (temperature.unit().dimension() != Unit.Dimension.TEMPERATURE
                || temperature.in(Unit.CELSIUS) < COLDEST_TREAD || temperature.in(Unit.CELSIUS) > HOTTEST_TREAD) {
            throw new Reply.NoAnswer(parsed + " is no temperature of a tread.");
        }
        return temperature;
    }

    private Quantity pressure(String figure) throws Reply.NoAnswer {
        Quantity parsed = Reply.parsed(figure);
        Quantity pressure = parsed;
        if (parsed.unit() == Unit.POSITION) {
            double value = parsed.value();
            Unit own = Reply.pressureUnit(car);
            Unit unit = value <= MOST_BAR ? Unit.BAR : value >= LEAST_PSI && value <= MOST_PSI ? Unit.PSI
                    : Unit.KILOPASCAL;
            if (unit != own) {
                taken.add(unit);
            }
            pressure = new Quantity(value, unit);
        }
        if (pressure.unit().dimension() != Unit.Dimension.PRESSURE || pressure.in(Unit.BAR) < LEAST_BAR
                || pressure.in(Unit.BAR) > MOST_BAR) {
            throw new Reply.NoAnswer(parsed + " is no pressure of a tyre, be it in bar, psi or kPa.");
        }
        return pressure;
    }
}
