package camberwell.language;

import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Nearest;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Words that the trade uses beside those of the vocabulary, for a word that fits no list: what to write instead. */
final class Synonyms {

    private static final Map<String, String> WORDS = new HashMap<>();
    private static final List<String[]> ENDINGS = List.of(new String[][] {{"-bar", "-anti-roll-bar"},
        {"-bars", "-anti-roll-bar"}, {"-arb", "-anti-roll-bar"}, {"-roll-bar", "-anti-roll-bar"}, {"-spring", "-springs"},
        {"-tyre-pressure", "-pressure"}, {"-tire-pressure", "-pressure"}, {"-tyre-pressures", "-pressure"},
        {"-pressures", "-pressure"}, {"-height", "-ride-height"}, {"-heights", "-ride-height"},
        {"-ride-heights", "-ride-height"}, {"-wings", "-wing"}, {"-flap", "-wing"}, {"-compression", "-bump"}});

    static {
        enter("mid-corner", "apex", "midcorner", "middle", "mid");
        enter("entry", "turn-in", "corner-entry");
        enter("exit", "power", "corner-exit", "throttle");
        enter("lift-off", "lift", "liftoff", "lifting");
        enter("braking", "brakes", "braking-zone");
        enter("understeer", "push", "pushing", "pushes", "ploughing", "plowing", "tight", "understeering");
        enter("oversteer", "loose", "slide", "sliding", "oversteering", "tail-happy");
        enter("snap-oversteer", "snap", "snapping");
        enter("front-locking", "front-lock-up", "front-lockup");
        enter("rear-locking", "rear-lock-up", "rear-lockup");
        enter("strong", "severe", "bad", "heavy");
        enter("slight", "mild", "light", "small");
        enter("clear", "moderate");
        enter("hatch", "hatchback");
        enter("saloon", "sedan");
        enter("single-seater", "formula", "open-wheeler");
        enter("newcomer", "beginner", "novice", "rookie");
        enter("experienced", "expert", "pro", "professional");
        enter("wet", "rainy", "rain");
        enter("all", "four", "4", "all-wheel");
        enter("°C", "C", "celsius", "degrees");
        enter("°F", "F", "fahrenheit");
        enter("deg", "degree", "°");
        enter("fast", "quick", "high-speed");
        enter("slow", "low-speed", "tight");
        enter("brake-bias", "brake-balance", "bias");
        enter("differential-preload", "preload", "diff-preload");
        enter("differential-power", "diff-power", "power-ramp");
        enter("differential-coast", "diff-coast", "coast-ramp");
        enter("left", "left-hand", "left-handed");
        enter("right", "right-hand", "right-handed");
        enter("more-rotation", "rotation", "agility");
        enter("more-calm", "calm", "stability", "more-stability");
        enter("longer-tyre-life", "tyre-life");
        enter("better", "good", "improved");
        enter("worse", "bad");
    }

    private Synonyms() {
    }

    private static void enter(String meant, String... said) {
        for (String word : said) {
            WORDS.putIfAbsent(word, meant);
        }
    }

    /** The way of the adjuster that a word tells which is none of its directions; empty where it may be either. */
    static Optional<String> direction(String word, Adjuster adjuster) {
        List<String> ways = adjuster.directions().stream().map(Direction::id).toList();
        List<String> meant = switch (word) {
            case "up", "higher", "more", "raise", "raised", "increase", "increased", "plus" -> List.of("higher", "more");
            case "down", "lower", "less", "drop", "lowered", "decrease", "reduce", "reduced", "minus" -> List.of("lower", "less");
            case "soft", "soften", "weaker" -> List.of("softer");
            case "stiff", "hard", "harder", "firmer", "stiffen" -> List.of("stiffer");
            case "negative" -> List.of("more-negative");
            case "in" -> List.of("toe-in");
            case "out" -> List.of("toe-out");
            case "forwards", "front", "frontward" -> List.of("forward");
            case "back", "backward", "backwards", "rear", "rearwards" -> List.of("rearward");
            default -> Nearest.to(word, ways).map(List::of).orElse(List.of());
        };
        return meant.stream().filter(ways::contains).findFirst();
    }

    /** What is most likely meant by a word that is in none of those lists. */
    static Optional<String> of(String word, List<String> list) {
        String meant = WORDS.get(word);
        if (meant != null && list.contains(meant)) {
            return Optional.of(meant);
        }
        if (word.equals("degrees") && list.contains("deg")) {
            return Optional.of("deg");
        }
        for (String[] ending : ENDINGS) {
            if (word.endsWith(ending[0])) {
                String other = word.substring(0, word.length() - ending[0].length()) + ending[1];
                if (list.contains(other)) {
                    return Optional.of(other);
                }
            }
        }
        return Optional.empty();
    }
}
