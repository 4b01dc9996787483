package camberwell.debrief;

import camberwell.car.Car;
import camberwell.saying.Heard;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads single words and figures that somebody typed as an answer; sentences are read by {@code saying}. */
final class Reply {

    /** What is plausible, as in a case file; common practice, no source. */
    private static final double COLDEST_TRACK = -20;
    private static final double HOTTEST_TRACK = 80;
    private static final int SHORTEST_BEGINNING = 3;
    private static final Set<String> YES = Set.of("yes", "y", "yep", "yeah", "yup", "sure", "ja", "oui", "si", "right",
            "correct", "ok", "okay", "that is right", "that's right");
    private static final Set<String> NO = Set.of("no", "n", "nope", "none", "nobody", "never", "nothing", "not really", "nein",
            "non", "no one", "noone", "neither", "nothing else", "no more", "that is all", "that's all", "thats all");
    private static final Set<String> CLOSING = Set.of("that's it", "thats it", "that is it", "that's all", "thats all",
            "that is all",
            "thanks", "thank you", "mate", "all good", "it's fine", "nothing else", "nothing more", "that was it",
                    "that's everything", "cheers", "bye", "goodbye", "great thanks", "ok thanks", "just that", "only that",
            "just the one", "that's the lot", "thats the lot", "the rest is fine", "nothing much", "nothing really");
    private static final Set<String> NO_MORE = Set.of("nothing more", "nothing else", "no more", "that is all", "that's all",
            "thats all", "that's it", "that is it");
    private static final Set<String> ALL = Set.of("both", "all", "all of them", "everywhere", "all four", "any", "either",
            "both of them", "all of it", "the lot");
    private static final Set<String> TWO = Set.of("both", "both of them", "either");
    private static final Set<String> BOTH_ENDS = Set.of("both ends", "front and rear", "front and back", "all round",
            "all around", "all four corners", "the whole car");
    private static final Set<String> WHOLE_CORNER = Set.of("the whole corner", "the whole way", "all the way", "all through",
            "all the way through", "all the way round", "start to finish", "the whole way round");
    /** Says that somebody is not sure, before what is thought all the same: "not sure, maybe entry". */
    private static final Pattern HEDGE = Pattern.compile("^(?:(?:well|um+|erm*|hmm+),? *)?(?:(?:i'?m |i am )?"
            + "not (?:really |too |so )?(?:sure|certain)|dunno|(?:i )?(?:do not|don'?t) (?:really )?know|no idea|no clue"
            + "|hard to say)\\b[\\s,.;:-]+(?:but )?"
            + "(?:(?:maybe|perhaps|possibly|probably|i think|i guess|i'?d say|could be|might be)\\b,? *)*",
            Pattern.CASE_INSENSITIVE);

    private static final List<String> EACH = List.of("both ", "both, ", "both: ", "all of them ",
            "each of them ");

    private Reply() {
    }

    /** What was typed is no answer; the message says why and what is. */
    static final class NoAnswer extends Exception {

        private static final long serialVersionUID = 1;

        /** What was most likely meant; empty where nothing was. */
        private final transient Optional<String> meant;
        /** What is asked back, one after the other; none where nothing is. */
        private final transient List<Heard.Unclear> askedBack;
        /** What was not understood besides. */
        private final transient List<String> besides;

        NoAnswer(String message) {
            this(message, Optional.empty());
        }

        /** One that is asked back about. */
        NoAnswer(List<Heard.Unclear> askedBack, List<String> besides) {
            super(askedBack.get(0).words());
            this.meant = Optional.empty();
            this.askedBack = List.copyOf(askedBack);
            this.besides = List.copyOf(besides);
        }

        NoAnswer(String message, Optional<String> meant) {
            super(message);
            this.meant = meant;
            this.askedBack = List.of();
            this.besides = List.of();
        }

        List<Heard.Unclear> askedBack() {
            return askedBack;
        }

        List<String> besides() {
            return besides;
        }

        Optional<String> meant() {
            return meant;
        }
    }

    /** What is thought by somebody who is not sure; the same where nobody says that. */
    static String unhedged(String typed) {
        String rest = HEDGE.matcher(typed.strip().replace('\u2019', '\'')).replaceFirst("");
        return rest.isBlank() || rest.length() == typed.strip().length() ? typed : rest;
    }

    static boolean yes(String typed) {
        return says(YES, typed);
    }

    static boolean no(String typed) {
        return says(NO, typed);
    }

    /** "Nope, that's it", "no thanks, all good": what is added to the word says no more than the word. */
    private static boolean says(Set<String> words, String typed) {
        String rest = plain(typed);
        if (words.contains(rest)) {
            return true;
        }
        int end = rest.indexOf(' ');
        if (end < 0 || !words.contains(plain(rest.substring(0, end)))) {
            return false;
        }
        return Stream.of(rest.substring(end).split(",")).map(String::strip)
                .allMatch(added -> words.contains(added) || CLOSING.contains(added));
    }

    /** Whether it is a word to part with. */
    static boolean closes(String typed) {
        return CLOSING.contains(plain(typed));
    }

    /** Whether it says that there is no more to say. */
    static boolean noMore(String typed) {
        return NO_MORE.contains(plain(typed));
    }

    static boolean all(String typed) {
        return ALL.contains(plain(typed));
    }

    /** Whether it says that it is two of several. */
    static boolean two(String typed) {
        return TWO.contains(plain(typed));
    }

    /** Whether it says of the car that it is both ends of it. */
    static boolean bothEnds(String typed) {
        return BOTH_ENDS.contains(plain(typed));
    }

    /** Whether it says of a corner that it is all of it. */
    static boolean wholeCorner(String typed) {
        return WHOLE_CORNER.contains(plain(typed));
    }

    /** Whether it says of each of several what follows: "both every lap". */
    static boolean ofEach(String typed) {
        String small = plain(typed);
        return EACH.stream().anyMatch(word -> small.startsWith(word) && small.length() > word.length() + 1);
    }

    private static String plain(String typed) {
        return typed.strip().toLowerCase(Locale.ROOT).replaceAll("[.,!]+$", "");
    }

    /** The things that were chosen by their numbers: {@code 1}, {@code 1 3}, {@code 1,3}; empty where there is another word. */
    static <T> List<T> numbered(String typed, List<T> listed) throws NoAnswer {
        List<T> chosen = new ArrayList<>();
        for (String part : typed.strip().split("\\s*(?:,|;|\\+|&|\\band\\b)\\s*|\\s+")) {
            if (part.isEmpty() || !part.chars().allMatch(Character::isDigit)) {
                return List.of();
            }
            int index = part.length() > 3 ? 0 : Integer.parseInt(part);
            if (index < 1 || index > listed.size()) {
                throw new NoAnswer(listed.isEmpty() ? "A number is no answer here." : "There is no answer " + part
                        + "; the numbers go from 1 to " + listed.size() + ".");
            }
            if (!chosen.contains(listed.get(index - 1))) {
                chosen.add(listed.get(index - 1));
            }
        }
        return chosen;
    }

    /**
     * The one of {@code known} that was typed, or that begins so; of fewer than three letters nothing is made.
     *
     * @throws NoAnswer if there is none, or several, with what was most likely meant
     */
    static String begun(String typed, List<String> known) throws NoAnswer {
        String word = plain(typed).replaceAll("[\\s_]+", "-");
        if (known.contains(word)) {
            return word;
        }
        List<String> begun = word.length() < SHORTEST_BEGINNING ? List.of()
                : known.stream().filter(each -> each.startsWith(word)).toList();
        if (begun.size() == 1) {
            return begun.get(0);
        }
        if (begun.size() > 1) {
            throw new NoAnswer("\"" + typed.strip() + "\" may be " + begun.stream().limit(6)
                    .collect(Collectors.joining(", ")) + (begun.size() > 6 ? ", …" : "") + ".");
        }
        Optional<String> meant = word.length() < SHORTEST_BEGINNING ? Optional.empty() : Nearest.to(word, known);
        throw new NoAnswer("\"" + typed.strip() + "\" is not understood" + meant.map(near -> "; did you mean "
                + near.replace('-', ' ') + "? y takes it.").orElse("."), meant.map(near -> near.replace('-', ' ')));
    }

    /**
     * Words that answer one question. One that answers the same as a word before it begins another group: {@code entry
     * slow, mid-corner fast} is two.
     */
    static Answer grouped(List<Word> words, Field field) {
        List<List<Word>> groups = new ArrayList<>();
        for (Word word : words) {
            List<Word> last = groups.isEmpty() ? List.of() : groups.get(groups.size() - 1);
            if (groups.isEmpty() || last.stream().anyMatch(said -> field.of(said) == field.of(word))) {
                // "entry slow fast": the second kind of corner is on entry as well.
                groups.add(new ArrayList<>(last.stream().filter(said -> field.of(said) == field
                        && field.of(word) != field).toList()));
            }
            groups.get(groups.size() - 1).add(word);
        }
        return new Answer.Said(groups.stream().<List<Word>>map(List::copyOf).distinct().toList());
    }

    /** A temperature of the track; °C unless a unit is typed, or it can only be °F. */
    static Answer track(String typed) throws NoAnswer {
        Quantity parsed = parsed(typed.strip());
        Quantity track = parsed.unit() != Unit.POSITION ? parsed
                : new Quantity(parsed.value(), parsed.value() > HOTTEST_TRACK ? Unit.FAHRENHEIT : Unit.CELSIUS);
        if (track.unit().dimension() != Unit.Dimension.TEMPERATURE || track.in(Unit.CELSIUS) < COLDEST_TRACK
                || track.in(Unit.CELSIUS) > HOTTEST_TRACK) {
            throw new NoAnswer(track + " is no temperature of a track.");
        }
        return new Answer.Measured(track);
    }

    static Quantity parsed(String figure) throws NoAnswer {
        return Quantity.parse(figure).orElseThrow(() -> new NoAnswer("\"" + figure + "\" is no number"
                + (figure.contains(",") ? "; decimals are written with a point." : " with a unit that is known.")));
    }

    /** The unit in which the car's file has its pressures. */
    static Unit pressureUnit(Car car) {
        return car.tyres(Axle.FRONT).hotTarget().or(() -> car.pressureSetting(Wheel.FRONT_LEFT)
                .map(setting -> setting.now())).map(Quantity::unit).orElse(Unit.BAR);
    }
}
