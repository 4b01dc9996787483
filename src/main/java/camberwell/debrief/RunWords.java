package camberwell.debrief;

import camberwell.run.Pupil;
import camberwell.run.Stint;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Compound;
import camberwell.vocabulary.Level;
import camberwell.vocabulary.Wish;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is said of the day, the run and the driver: {@code air 20}, {@code 14 laps on mediums}, {@code new tyres}, {@code I am a
 * newcomer}, {@code I want it calmer}. How people say it: common practice, no source.
 */
final class RunWords {

    /** What is plausible in °C; common practice, no source. */
    private static final double COLDEST_AIR = -20;
    private static final double HOTTEST_AIR = 50;
    private static final int MOST_LAPS = 200;

    private static final Pattern AIR = pattern("(?:it was |the |an )*(?:air|ambient|outside)(?: temp| temperature)?"
            + "(?: is| was| at| of| about| around)*[ :=]*(-?\\d+(?:\\.\\d+)?) ?(?:°|deg|degrees)? ?([cf]|celsius|fahrenheit)?");
    private static final Pattern LAPS = pattern("(?:that was |it was |this is |after |a run of |we did |i did |did |ran )*"
            + "(\\d{1,3}) laps?(?: on (?:the )?(soft|medium|hard|intermediate|inter|wet)s?(?: tyres| tires)?)?");
    private static final Pattern NEW = pattern("(?:on |with |the |a |they were |it was )*(?:brand )?(?:new|fresh|sticker) "
            + "(?:tyres|tires|rubber|set|set of tyres)");
    private static final Pattern DAY = pattern("(?:it was |on |a |quite |rather |very |really )*"
            + "(?:warm|hot|cold|cool|mild|sunny|cloudy|overcast|windy) (?:day|weather|morning|afternoon|evening)");
    private static final Pattern LEVEL = pattern("(?:i am|i'm|im|he is|he's|she is|she's|the driver is|my driver is) "
            + "(?:just |still |only |quite )?(?:a |an )?(?:complete |total |absolute )?"
            + "(newcomer|beginner|novice|rookie|new to this|club driver|club racer"
            + "|experienced driver|experienced racer|experienced)");
    private static final Pattern WISH = pattern("(?:i|we|he|she|the driver) (?:just |only )?"
            + "(?:want|wants|would like|need|needs|wish for|prefer) (?:for )?"
            + "(?:it|the car|a car|her|my car|something|a|the)?(?: that is| to be| to)? ?(?:a bit |a little |much |far )?(.+)");
    private static final Map<Pattern, Wish> WISHES = Map.of(
            pattern("calmer|more calm|calm|more forgiving|forgiving|more stable|easier to drive|easier|safer|more predictable"),
            Wish.MORE_CALM,
            pattern("more rotation|rotate more|rotate better|turn more|turn better|turn in better|more agile|livelier"),
            Wish.MORE_ROTATION,
            pattern("(?:the )?tyres (?:to|that) last(?: longer)?|longer tyre life|easier on (?:its|the) tyres"),
            Wish.LONGER_TYRE_LIFE,
            pattern("more top speed|faster on the straights?|more straight(?:-line)? speed|quicker on the straights?"),
            Wish.MORE_STRAIGHT_SPEED,
            pattern("lighter steering|(?:the )?steering (?:to be )?lighter|a lighter wheel"), Wish.LIGHTER_STEERING);

    private RunWords() {
    }

    private static Pattern pattern(String words) {
        return Pattern.compile(words, Pattern.CASE_INSENSITIVE);
    }

    /**
     * What these words say, if they say nothing else.
     *
     * @param readings whether they stand beside readings of the tyres, where a number of laps is how far these had run
     */
    static Optional<Answer> of(String words, boolean readings) {
        String plain = words.strip().replace('\u2019', '\'').replaceAll("[.!]+$", "");
        Matcher air = AIR.matcher(plain);
        if (air.matches()) {
            return air(Double.parseDouble(air.group(1)), air.group(2));
        }
        Matcher laps = LAPS.matcher(plain);
        if (laps.matches() && (readings || laps.group(2) != null)) {
            int count = Integer.parseInt(laps.group(1));
            Optional<Compound> compound = Optional.ofNullable(laps.group(2)).map(RunWords::compound);
            return count < 1 || count > MOST_LAPS ? Optional.empty() : Optional.of(new Answer.OfRun(Optional.empty(),
                    new Stint(compound, Optional.empty(), Optional.of(count), Optional.empty()), Pupil.UNKNOWN,
                    "a run of " + count + (count == 1 ? " lap" : " laps")
                            + compound.map(it -> " on " + it.id() + " tyres").orElse("")));
        }
        if (NEW.matcher(plain).matches()) {
            return Optional.of(new Answer.OfRun(Optional.empty(), new Stint(Optional.empty(), Optional.of(0), Optional.empty(),
                    Optional.empty()), Pupil.UNKNOWN, "new tyres"));
        }
        if (DAY.matcher(plain).matches()) {
            // Nothing is concluded from it: a day is told by its temperatures.
            return Optional.of(new Answer.OfRun(Optional.empty(), Stint.UNKNOWN, Pupil.UNKNOWN, plain.toLowerCase(Locale.ROOT)
                    + "; a temperature says more, for instance air 24, track 34"));
        }
        Matcher level = LEVEL.matcher(plain);
        if (level.matches()) {
            Level is = level(level.group(1).toLowerCase(Locale.ROOT));
            return Optional.of(new Answer.OfRun(Optional.empty(), Stint.UNKNOWN,
                    new Pupil(Optional.empty(), Optional.of(is), List.of()), "a driver at " + is.id() + " level"));
        }
        Matcher wish = WISH.matcher(plain);
        return !wish.matches() ? Optional.empty() : WISHES.entrySet().stream()
                .filter(entry -> entry.getKey().matcher(wish.group(1).strip()).matches()).findFirst()
                .map(entry -> new Answer.OfRun(Optional.empty(), Stint.UNKNOWN, new Pupil(Optional.empty(), Optional.empty(),
                        List.of(entry.getValue())), "wanted: " + entry.getValue().spoken()));
    }

    private static Optional<Answer> air(double value, String unit) {
        boolean fahrenheit = unit == null ? value > HOTTEST_AIR : unit.toLowerCase(Locale.ROOT).startsWith("f");
        Quantity air = new Quantity(value, fahrenheit ? Unit.FAHRENHEIT : Unit.CELSIUS);
        return air.in(Unit.CELSIUS) < COLDEST_AIR || air.in(Unit.CELSIUS) > HOTTEST_AIR ? Optional.empty()
                : Optional.of(new Answer.OfRun(Optional.of(air), Stint.UNKNOWN, Pupil.UNKNOWN, "air " + air));
    }

    private static Compound compound(String word) {
        return switch (word.toLowerCase(Locale.ROOT)) {
            case "soft" -> Compound.SOFT;
            case "medium" -> Compound.MEDIUM;
            case "hard" -> Compound.HARD;
            case "wet" -> Compound.WET;
            default -> Compound.INTERMEDIATE;
        };
    }

    private static Level level(String word) {
        return word.startsWith("club") ? Level.CLUB : word.startsWith("experienced") ? Level.EXPERIENCED : Level.NEWCOMER;
    }
}
