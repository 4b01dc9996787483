package camberwell.debrief;

import camberwell.car.Car;
import camberwell.run.TyreReading;
import camberwell.units.Measure;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads what somebody typed as an answer. */
public final class Reply {

    private static final double LIKE_A_TREAD = 45;
    private static final double BEYOND_A_TREAD = 130;

    private Reply() {
    }

    /** What was typed is no answer; the message says why and what is. */
    public static final class NoAnswer extends Exception {

        private static final long serialVersionUID = 1;

        NoAnswer(String message) {
            super(message);
        }
    }

    /**
     * Words by their numbers in {@code listed}, by themselves or by an unambiguous beginning, with commas or
     * {@code and} between them.
     *
     * @param known every word that may be said
     * @param several whether more than one may be said
     */
    public static List<String> words(String typed, List<String> listed, List<String> known, boolean several)
            throws NoAnswer {
        List<String> words = new ArrayList<>();
        for (String part : typed.trim().toLowerCase(Locale.ROOT)
                .split("\\s*(,|;|\\+|&|\\band\\b)\\s*|(?<=\\d)\\s+(?=\\d)")) {
            String word = part.matches("\\d+") ? numbered(part, listed) : word(part.replaceAll("[\\s_]+", "-"), known);
            if (!words.contains(word)) {
                words.add(word);
            }
        }
        if (words.size() > 1 && !several) {
            throw new NoAnswer("One answer will do here: " + String.join(", ", listed) + ".");
        }
        return words;
    }

    private static String numbered(String number, List<String> listed) throws NoAnswer {
        int index = number.length() > 3 ? 0 : Integer.parseInt(number);
        if (index < 1 || index > listed.size()) {
            throw new NoAnswer("There is no answer " + number + "; the numbers go from 1 to " + listed.size() + ".");
        }
        return listed.get(index - 1);
    }

    private static String word(String typed, List<String> known) throws NoAnswer {
        if (known.contains(typed)) {
            return typed;
        }
        for (boolean inside : new boolean[] {false, true}) {
            List<String> begun = typed.isEmpty() ? List.of() : known.stream().filter(word -> word.startsWith(typed)
                    || inside && word.contains("-" + typed)).toList();
            if (begun.size() == 1) {
                return begun.get(0);
            }
            if (begun.size() > 1) {
                throw new NoAnswer("\"" + typed + "\" may be " + begun.stream().limit(6)
                        .collect(Collectors.joining(", ")) + (begun.size() > 6 ? ", …" : "") + ".");
            }
        }
        Optional<String> meant = Nearest.to(typed, known);
        throw new NoAnswer("\"" + typed + "\" is no answer here" + meant.map(word -> "; did you mean " + word + "?")
                .orElse("; type its number or its word, or unknown, or help."));
    }

    /**
     * Words of the vocabulary. One that answers the same as a word before it begins another group: {@code entry slow,
     * mid-corner fast} is two.
     *
     * @param listed those that may be said by their numbers
     */
    public static Answer said(String typed, Field field, List<Word> listed) throws NoAnswer {
        List<Word> own = field.words();
        List<Word> more = field.alongside().stream().flatMap(with -> with.words().stream()).toList();
        List<List<Word>> groups = new ArrayList<>();
        for (Word word : flat(typed, own, more, listed)) {
            List<Word> last = groups.isEmpty() ? List.of() : groups.get(groups.size() - 1);
            if (groups.isEmpty() || last.stream().anyMatch(said -> field.of(said) == field.of(word))) {
                // "entry slow fast": the second kind of corner is on entry as well.
                List<Word> group = new ArrayList<>(last.stream().filter(said -> field.of(said) == field
                        && field.of(word) != field).toList());
                groups.add(group);
            }
            groups.get(groups.size() - 1).add(word);
        }
        if (field == Field.DOING && groups.stream().anyMatch(group -> own.stream().noneMatch(group::contains))) {
            throw new NoAnswer("Say what the car was doing first, then where: understeer entry slow.");
        }
        if (groups.size() > 1 && !field.several()) {
            throw new NoAnswer("One answer will do here: " + ids(listed) + ".");
        }
        return new Answer.Said(groups.stream().<List<Word>>map(List::copyOf).distinct().toList());
    }

    private static List<Word> flat(String typed, List<Word> own, List<Word> more, List<Word> listed) throws NoAnswer {
        List<String> tokens = Stream.of(typed.trim().toLowerCase(Locale.ROOT)
                .split("[\\s,;+&_]+|\\.$"))
                .filter(token -> !List.of("", "and", "in", "on", "at", "the", "corners").contains(token)).toList();
        List<String> all = Stream.concat(own.stream(), more.stream()).map(Word::id).toList();
        List<Word> words = new ArrayList<>();
        int at = 0;
        while (at < tokens.size()) {
            int length = Math.min(3, tokens.size() - at);
            while (length > 1 && !all.contains(String.join("-", tokens.subList(at, at + length)))) {
                length--;
            }
            String token = String.join("-", tokens.subList(at, at + length));
            String id;
            if (token.matches("\\d+")) {
                id = numbered(token, listed.stream().map(Word::id).toList());
            } else if (all.contains(token)) {
                id = token;
            } else {
                List<String> begun = begun(token, own);
                id = begun.size() == 1 || more.isEmpty() ? word(token, own.stream().map(Word::id).toList())
                        : begun.isEmpty() && begun(token, more).isEmpty() ? word(token, all)
                        : word(token, (begun.isEmpty() ? more : own).stream().map(Word::id).toList());
            }
            words.add(Stream.concat(own.stream(), more.stream()).filter(word -> word.is(id)).findFirst().orElseThrow());
            at += length;
        }
        if (words.isEmpty()) {
            throw new NoAnswer("Type a number or a word of the list.");
        }
        return words;
    }

    private static List<String> begun(String token, List<Word> words) {
        return words.stream().map(Word::id).filter(id -> id.startsWith(token)).toList();
    }

    private static String ids(List<Word> words) {
        return words.stream().map(Word::id).collect(Collectors.joining(", "));
    }

    /** A temperature of the track; °C unless a unit is typed. */
    public static Answer track(String typed) throws NoAnswer {
        Quantity track = quantity(typed.trim(), Unit.CELSIUS);
        if (!Measure.TRACK.holds(track)) {
            throw new NoAnswer(track + " is no temperature of a track.");
        }
        return new Answer.Measured(track);
    }

    /**
     * The figures of one wheel or of several: three temperatures, three temperatures and a pressure, or a pressure.
     * What has no unit is taken in the units of the car's file, or in °C and bar.
     *
     * @param wheels those that are left, the next one first
     */
    public static Map<Wheel, TyreReading> tyres(String typed, List<Wheel> wheels, Car car) throws NoAnswer {
        List<String> figures = Stream.of(typed.trim().replaceAll("(?<=[0-9])\\s+(?=[a-zA-Z°])", "")
                .split("[\\s,;]+")).filter(it -> !it.isEmpty())
                .flatMap(it -> it.split("/").length == 3 ? Stream.of(it.split("/")) : Stream.of(it)).toList();
        Map<Wheel, TyreReading> read = new LinkedHashMap<>();
        int at = 0;
        for (Wheel wheel : wheels) {
            if (at == figures.size()) {
                break;
            }
            int temperatures = 0;
            while (temperatures < 3 && at + temperatures < figures.size()
                    && temperature(figures.get(at + temperatures), car, wheel.axle()).isPresent()) {
                temperatures++;
            }
            boolean pressed = at + temperatures < figures.size() && isPressure(figures.get(at + temperatures), car);
            if (temperatures != 0 && temperatures != 3 || temperatures == 0 && !pressed) {
                throw new NoAnswer("The " + wheel.spoken() + " tyre wants three temperatures, or three and a pressure, "
                        + "or a pressure: for instance 92 84 78 1.95.");
            }
            List<Optional<Quantity>> tread = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                tread.add(temperatures == 3 ? temperature(figures.get(at + i), car, wheel.axle()) : Optional.empty());
            }
            at += temperatures;
            Optional<Quantity> cold = Optional.empty();
            Optional<Quantity> hot = Optional.empty();
            if (pressed) {
                String[] pair = figures.get(at++).split("/");
                hot = Optional.of(pressure(pair[pair.length - 1], car));
                cold = pair.length == 2 ? Optional.of(pressure(pair[0], car)) : Optional.empty();
                if (cold.isPresent() && cold.get().compareTo(hot.get()) > 0) {
                    throw new NoAnswer("The cold pressure " + cold.get() + " is above the hot one, " + hot.get() + ".");
                }
            }
            read.put(wheel, new TyreReading(tread.get(0), tread.get(1), tread.get(2), cold, hot));
        }
        if (at < figures.size()) {
            throw new NoAnswer("There are more figures than wheels left.");
        }
        return read;
    }

    private static Optional<Quantity> temperature(String figure, Car car, Axle axle) throws NoAnswer {
        if (figure.contains("/")) {
            return Optional.empty();
        }
        Quantity quantity = quantity(figure, car.tyres(axle).windowLow().map(Quantity::unit).orElse(Unit.CELSIUS));
        if (quantity.unit().dimension() != Unit.Dimension.TEMPERATURE) {
            return Optional.empty();
        }
        // What could be either is taken for what it is like: treads come in between 45 and 130 °C, or °F.
        boolean bare = Quantity.parse(figure).filter(it -> it.unit() == Unit.POSITION).isPresent();
        if (bare && isPressure(figure, car) && (quantity.value() < LIKE_A_TREAD || quantity.value() > BEYOND_A_TREAD)) {
            return Optional.empty();
        }
        if (!Measure.TREAD.holds(quantity)) {
            throw new NoAnswer(quantity + " is no temperature of a tread.");
        }
        return Optional.of(quantity);
    }

    private static boolean isPressure(String figure, Car car) {
        try {
            for (String part : figure.split("/")) {
                pressure(part, car);
            }
            return true;
        } catch (NoAnswer e) {
            return false;
        }
    }

    private static Quantity pressure(String figure, Car car) throws NoAnswer {
        Quantity pressure = quantity(figure, pressureUnit(car));
        if (!Measure.PRESSURE.holds(pressure)) {
            throw new NoAnswer(pressure + " is no pressure of a tyre; type the unit where it is not "
                    + pressureUnit(car).symbol() + ".");
        }
        return pressure;
    }

    /** The unit in which bare pressures are taken. */
    public static Unit pressureUnit(Car car) {
        return car.tyres(Axle.FRONT).hotTarget().or(() -> car.pressureSetting(Wheel.FRONT_LEFT)
                .map(setting -> setting.now())).map(Quantity::unit).orElse(Unit.BAR);
    }

    private static Quantity quantity(String figure, Unit unit) throws NoAnswer {
        Quantity quantity = Quantity.parse(figure).orElseThrow(() -> new NoAnswer("\"" + figure + "\" is no number"
                + (figure.contains(",") ? "; decimals are written with a point." : " with a unit that is known.")));
        return quantity.unit() == Unit.POSITION ? new Quantity(quantity.value(), unit) : quantity;
    }
}
