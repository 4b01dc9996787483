package camberwell.saying;

import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Change;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** How people name what is moved on a car, and which way; common practice, no source. */
public final class MovedWords {

    /** An end of the car or one of its wheels, before what is adjusted there. */
    private static final String END = "((?:front|rear)(?:-(?:left|right))?)[- ]";
    /** How people say it, and how the vocabulary has it; in this order. */
    private static final String[][] SAID = {
        {"\\b(?:we|i|they|it|have|had|has|was|were|is|the|a|an|by|of|on|at|to|set|put|went|made|more "
                + "step|steps?|clicks?|notch(?:es)?"
            + "|hole)\\b", " "},
        {"\\bone\\b", "1"}, {"\\btwo\\b", "2"}, {"\\bthree\\b", "3"}, {"\\bfour\\b", "4"},
        {"\\b(?:anti[- ]?roll[- ]?bars?|arbs?|sway[- ]?bars?|roll[- ]?bars?|bars?)\\b", "anti-roll-bar"},
        {"\\bpressures\\b", "pressure"}, {"\\bspring\\b", "springs"}, {"\\bride[- ]heights?\\b", "ride-height"},
        {"\\bbrake[- ]?(?:bias|balance)\\b", "brake-bias"}, {"\\bbias\\b", "brake-bias"},
                {"\\bbrake-brake-bias\\b", "brake-bias"},
        {"\\b(?:softened|softer|soften)\\b", "softer"}, {"\\b(?:stiffened|stiffer|harder|stiffen)\\b", "stiffer"},
        {"\\b(?:raised|raise|up|upwards)\\b", "higher"}, {"\\b(?:lowered|lower|down|reduced|dropped)\\b", "lower"},
        {"\\b(?:backwards?|rearwards?|back)\\b", "rearward"}, {"\\bforwards\\b", "forward"},
        {"\\b(front|rear) toe (in|out)\\b", "$1-toe toe-$2"}, {"\\bmore toe (in|out) (?:at )?(front|rear)\\b", "$2-toe toe-$1"},
        {"\\b(left|right)[- ](front|rear)\\b", "$2-$1"}, {"\\b(front|rear) (left|right)\\b", "$1-$2"},
        {"\\bmore " + END + "camber\\b", "$1-camber more-negative"}, {"\\bless " + END + "camber\\b", "$1-camber less-negative"},
        {"\\b" + END + "camber more(?:[- ]negative)?\\b", "$1-camber more-negative"},
        {"\\b" + END + "camber less(?:[- ]negative)?\\b", "$1-camber less-negative"},
        {"\\b((?:front|rear)-(?:left|right)) (camber|pressure)\\b", "$1-$2"},
        {"\\b(front|rear)[- ]wing higher\\b", "$1-wing more"}, {"\\b(front|rear)[- ]wing lower\\b", "$1-wing less"},
        {"\\b(front|rear) and (front|rear) (anti-roll-bar|springs|bump|rebound|ride-height|pressure|toe|camber|wing)\\b",
            "$1-$3 $2-$3"},
        {"\\b(front|rear) (anti-roll-bar|springs|bump|rebound|ride-height|pressure|toe|camber|wing)\\b", "$1-$2"},
        {"\\s+", " "}};

    /** What goes by a shorter word. */
    private static final Map<String, Set<Adjustment>> MEANT = Map.of(
            "diff", Set.of(Adjustment.DIFFERENTIAL_PRELOAD, Adjustment.DIFFERENTIAL_POWER, Adjustment.DIFFERENTIAL_COAST),
            "differential", Set.of(Adjustment.DIFFERENTIAL_PRELOAD, Adjustment.DIFFERENTIAL_POWER, Adjustment.DIFFERENTIAL_COAST),
            "dampers", Set.of(Adjustment.BUMP, Adjustment.REBOUND), "shocks", Set.of(Adjustment.BUMP, Adjustment.REBOUND),
            "wings", Set.of(Adjustment.WING), "aero", Set.of(Adjustment.WING), "air", Set.of(Adjustment.PRESSURE),
            "tyres", Set.of(Adjustment.PRESSURE), "tires", Set.of(Adjustment.PRESSURE));

    private MovedWords() {
    }

    /** {@code part} in small letters, with adjusters and directions as the vocabulary has them. */
    public static String plain(String part) {
        String words = part.toLowerCase(Locale.ROOT);
        for (String[] said : SAID) {
            words = words.replaceAll(said[0], said[1]);
        }
        return words.strip();
    }

    /**
     * The changes that {@code typed} may mean: the adjuster it names, at the end of the car that it names or else at both, moved
     * as it says or else both ways; none where it names none.
     */
    public static List<Change> named(String typed) {
        String words = " " + plain(typed.replaceAll("[^\\p{Alnum}' -]", " ")).replace("camber more ", "camber more-negative ")
                + " ";
        List<Change> exact = Change.all().stream().filter(change -> words.contains(change.adjuster().id())).toList();
        List<Change> meant = Change.all().stream().filter(change -> exact.contains(change)
                || exact.stream().noneMatch(it -> it.adjuster().adjustment() == change.adjuster().adjustment())
                        && change.adjuster().wheel().isEmpty() && isMeant(change.adjuster().adjustment(), words)
                        && change.adjuster().axle().map(axle -> words.contains(axle.id())
                                || !words.contains(axle.other().id())).orElse(true))
                .toList();
        List<Change> directed = meant.stream().filter(change -> words.contains(" " + change.direction().id() + " ")).toList();
        return directed.isEmpty() ? meant : directed;
    }

    private static boolean isMeant(Adjustment adjustment, String words) {
        return words.contains(adjustment.id()) || MEANT.entrySet().stream()
                .anyMatch(meant -> words.contains(" " + meant.getKey() + " ") && meant.getValue().contains(adjustment));
    }
}
