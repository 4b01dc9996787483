package camberwell.language;

import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a condition asks of one fact: for each property that it names, the values that it lets pass. It is read off
 * what the sentence means to Drools, so that a new sentence is understood when it asks by known methods; what is not
 * known is held to be a property of its own.
 *
 * @param about what the fact is about: two that differ can both be there
 * @param single whether there is only one fact of it, so that all conditions about it meet on the same one
 * @param negative whether it asks that there is no such fact
 * @param passes the values that pass, by property
 */
public record Asked(String about, boolean single, boolean negative, Map<String, Passing> passes) {

    private static final Pattern CALL = Pattern.compile("(\\w+)\\(([^()]*)\\)");
    private static final Set<String> DRIVES = Set.of("front", "rear", "all");

    /** Values that pass: of a closed list, or of a range of numbers with open ends. */
    public record Passing(Set<String> words, double above, double below) {

        public static Passing words(Set<String> words) {
            return new Passing(new TreeSet<>(words), 0, 0);
        }

        public static Passing between(double above, double below) {
            return new Passing(Set.of(), above, below);
        }

        private boolean isRange() {
            return above != 0 || below != 0;
        }

        public boolean nothing() {
            return isRange() ? Math.nextUp(above) >= below : words.isEmpty();
        }

        public Passing and(Passing other) {
            if (isRange()) {
                return between(Math.max(above, other.above), Math.min(below, other.below));
            }
            Set<String> both = new TreeSet<>(words);
            both.retainAll(other.words);
            return words(both);
        }

        /** Whether all that passes here passes there too. */
        public boolean within(Passing other) {
            return isRange() ? above >= other.above && below <= other.below : other.words.containsAll(words);
        }
    }

    /** What {@code condition} asks. */
    public static Asked of(Condition condition) {
        String drl = condition.head().sentence().drl();
        boolean negative = drl.startsWith("not ");
        String pattern = filled(condition.head());
        String type = pattern.substring(negative ? 4 : 0, pattern.indexOf('('));
        List<Call> calls = new ArrayList<>();
        calls(pattern.substring(pattern.indexOf('(') + 1, pattern.lastIndexOf(')')), calls);
        condition.narrowings().forEach(line -> calls(filled(line), calls));
        Map<String, Passing> passes = new TreeMap<>();
        return switch (type) {
            case "Reported" -> {
                calls.forEach(call -> reported(call, passes));
                yield new Asked("report", false, negative, passes);
            }
            case "Setup" -> {
                calls.forEach(call -> setup(call, passes));
                yield new Asked("car", true, negative, passes);
            }
            case "Day" -> {
                calls.forEach(call -> day(call, passes));
                yield new Asked("day", true, negative, passes);
            }
            case "Reading" -> {
                reading(calls, passes);
                yield new Asked("reading", true, false, passes);
            }
            case "Finding" -> finding(calls.get(0), negative, pattern, passes);
            default -> {
                calls.forEach(call -> unknown(call, passes));
                yield new Asked(type, false, negative, passes);
            }
        };
    }

    /** Whether a fact that it asks for is always one that {@code other} asks for. */
    public boolean within(Asked other) {
        if (negative != other.negative) {
            return false;
        }
        return negative ? other.facts(this) : facts(other);
    }

    /** Whether a fact with what this lets pass always passes {@code other}, signs aside. */
    public boolean facts(Asked other) {
        return about.equals(other.about) && other.passes.entrySet().stream().allMatch(entry ->
                passes.containsKey(entry.getKey()) && passes.get(entry.getKey()).within(entry.getValue()));
    }

    /** Whether nothing can pass. */
    public boolean nothing() {
        return passes.values().stream().anyMatch(Passing::nothing);
    }

    /** What passes both, for two that meet on one fact. */
    public Asked and(Asked other) {
        Map<String, Passing> both = new TreeMap<>(passes);
        other.passes.forEach((property, passing) -> both.merge(property, passing, Passing::and));
        return new Asked(about, single, negative, both);
    }

    private record Call(String method, List<String> arguments) {
    }

    private static String filled(Line line) {
        String drl = line.sentence().drl();
        for (Map.Entry<String, String> word : line.words().entrySet()) {
            drl = drl.replace("{" + word.getKey() + "}", word.getValue());
        }
        return drl;
    }

    private static void calls(String drl, List<Call> calls) {
        Matcher matcher = CALL.matcher(drl);
        while (matcher.find()) {
            List<String> arguments = new ArrayList<>();
            for (String argument : matcher.group(2).split(",")) {
                if (!argument.isBlank()) {
                    arguments.add(argument.strip().replace("\"", ""));
                }
            }
            calls.add(new Call(matcher.group(1), arguments));
        }
    }

    private static void put(Map<String, Passing> passes, String property, Passing passing) {
        passes.merge(property, passing, Passing::and);
    }

    private static void words(Map<String, Passing> passes, String property, Set<String> words) {
        put(passes, property, Passing.words(words));
    }

    private static void unknown(Call call, Map<String, Passing> passes) {
        words(passes, call.toString(), Set.of("yes"));
    }

    private static Set<String> without(List<String> all, String word) {
        Set<String> others = new TreeSet<>(all);
        others.remove(word);
        return others;
    }

    private static void reported(Call call, Map<String, Passing> passes) {
        Set<String> said = new TreeSet<>(call.arguments());
        String word = said.isEmpty() ? "" : call.arguments().get(0);
        switch (call.method()) {
            case "is" -> words(passes, "symptom", said);
            case "inPhase" -> words(passes, "phase", said);
            case "notInPhase" -> words(passes, "phase", without(
                    Word.ids(Phase.class), word));
            case "inCorners" -> words(passes, "speed", said);
            case "on" -> words(passes, "where", switch (word) {
                case "front" -> Set.of("front", "front-left", "front-right");
                case "rear" -> Set.of("rear", "rear-left", "rear-right");
                default -> Set.of(word);
            });
            case "atLeast" -> {
                List<String> grades = Word.ids(Severity.class);
                words(passes, "severity", new TreeSet<>(grades.subList(grades.indexOf(word), grades.size())));
            }
            case "onEveryLap" -> words(passes, "occurrence", Set.of("every-lap"));
            case "notOnEveryLap" -> words(passes, "occurrence", Set.of("some-laps", "once"));
            case "onlyOnce" -> words(passes, "occurrence", Set.of("once"));
            case "since" -> words(passes, "since", said);
            case "notSince" -> words(passes, "since", without(
                    Word.ids(Since.class), word));
            case "inOneDirectionOnly" -> words(passes, "turn", Set.of("left", "right"));
            default -> unknown(call, passes);
        }
    }

    private static void setup(Call call, Map<String, Passing> passes) {
        String word = call.arguments().isEmpty() ? "" : call.arguments().get(0);
        switch (call.method()) {
            case "drives" -> words(passes, "drive", Set.of(word));
            case "drivesOtherThan" -> words(passes, "drive", without(List.copyOf(DRIVES), word));
            case "driven" -> words(passes, "drive", Set.of(word, "all"));
            case "undriven" -> words(passes, "drive", Set.of(word.equals("front") ? "rear" : "front"));
            case "adjusts" -> words(passes, "adjustable " + word, Set.of("yes"));
            case "lacks" -> words(passes, "adjustable " + word, Set.of("no"));
            case "toedIn" -> known(passes, word + " toe", Passing.between(0, Double.MAX_VALUE));
            case "toedOut" -> known(passes, word + " toe", Passing.between(-Double.MAX_VALUE, 0));
            case "camberBeyond" -> known(passes, word + " camber", above(call.arguments().get(1)));
            case "camberShortOf" -> known(passes, word + " camber", below(call.arguments().get(1)));
            case "casterAbove" -> known(passes, "caster", above(word));
            case "casterBelow" -> known(passes, "caster", below(word));
            default -> unknown(call, passes);
        }
    }

    /** A setting that is asked about is one that the car has. */
    private static void known(Map<String, Passing> passes, String setting, Passing passing) {
        put(passes, setting, passing);
        words(passes, "adjustable " + setting.replace(' ', '-'), Set.of("yes"));
    }

    private static Passing above(String number) {
        return Passing.between(Double.parseDouble(number), Double.MAX_VALUE);
    }

    private static Passing below(String number) {
        return Passing.between(-Double.MAX_VALUE, Double.parseDouble(number));
    }

    private static void day(Call call, Map<String, Passing> passes) {
        switch (call.method()) {
            case "surfaceIs" -> words(passes, "surface", new TreeSet<>(call.arguments()));
            case "surfaceIsNot" -> words(passes, "surface", without(
                    Word.ids(Surface.class), call.arguments().get(0)));
            case "coldTrack" -> words(passes, "track", Set.of("cold"));
            case "hotTrack" -> words(passes, "track", Set.of("hot"));
            default -> unknown(call, passes);
        }
    }

    /**
     * All readings of a tyre are taken as one fact, since some exclude each other. Being inside the window or at the
     * target goes over into being outside by a ramp, so that for a while both are so.
     */
    private static void reading(List<Call> calls, Map<String, Passing> passes) {
        String place = "";
        for (Call call : calls) {
            if (call.method().equals("of")) {
                place = call.arguments().get(0);
            } else if (call.method().equals("temperature") || call.method().equals("pressure")) {
                words(passes, place + " " + call.method() + " read", Set.of("no"));
            } else if (call.method().equals("shows")) {
                String state = call.arguments().get(0);
                boolean pressure = state.contains("target");
                String axle = place.contains("-") ? place.substring(0, place.indexOf('-')) : place;
                words(passes, axle + (pressure ? " pressure" : " temperature") + " read", Set.of("yes"));
                switch (state) {
                    case "below-window", "above-window" -> words(passes, place + " window", Set.of(state));
                    case "inner-edge-hot", "outer-edge-hot" -> words(passes, place + " edges", Set.of(state));
                    case "middle-hot", "middle-cold" -> words(passes, place + " middle", Set.of(state));
                    case "above-target", "below-target" -> words(passes, place + " target", Set.of(state));
                    case "above-target-alone", "below-target-alone" -> words(passes, axle + " alone",
                            Set.of(place + " " + state));
                    case "hotter-axle" -> words(passes, "hotter axle", Set.of(place));
                    default -> words(passes, place + " " + state, Set.of("yes"));
                }
            } else {
                unknown(call, passes);
            }
        }
    }

    private static Asked finding(Call is, boolean negative, String pattern, Map<String, Passing> passes) {
        String number = pattern.substring(pattern.indexOf(">=") + 2, pattern.lastIndexOf(')'));
        double from = Double.parseDouble(number.strip());
        // That a finding is not likely is said of the finding, which is there or is not.
        put(passes, "certainty", negative ? Passing.between(-Double.MAX_VALUE, from)
                : Passing.between(Math.nextDown(from), Double.MAX_VALUE));
        return new Asked("finding " + is.arguments().get(0), true, false, passes);
    }
}
