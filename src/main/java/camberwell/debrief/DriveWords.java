package camberwell.debrief;

import camberwell.vocabulary.Drive;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Which wheels are driven, as it is said of a car: {@code rwd}, {@code a front-wheel drive hatch}, {@code the driven wheels are
 * the rears}.
 *
 * @param rest what else the line says, without what only describes the car; empty where that is all
 */
record DriveWords(Drive drive, String rest) {

    private static final Pattern CUT = Pattern.compile("\\s*[,;.](?=\\s)\\s*|\\s+(?:and|with|but)\\s+");
    private static final Pattern SAID = Pattern.compile("\\b(?:(front|rear|back|all|four|4)(?:[- ]wheels?)?[- ]?"
            + "(?:drive|driven)\\b(?![- ]?(?:shaft|train|out))|([rfa4])wd\\b"
            + "|(?:driven wheels are|(?:drive|power) (?:is |goes )?(?:to|at|on|through)|driven (?:at|by|through)"
            + "|(?:engine|motor)s? (?:drives?|turns?|powers?)) (?:the |its )?(front|rear|back|all|four)s?(?: four)?"
            + "(?: wheels?| axle)?\\b)", Pattern.CASE_INSENSITIVE);
    /** "No rear drive out of the hairpin" tells of grip, "not rwd" of another car. */
    private static final Set<String> NOT_OF_THE_CAR = Set.of("no", "not", "isn't", "never", "lost", "lose", "loses", "losing",
            "lack", "lacks", "of", "more", "less", "poor", "bad", "little", "without", "any", "enough", "want", "need", "find",
            "under", "or");
    private static final Set<String> OF_CARS = Set.of("a", "an", "the", "my", "our", "this", "that", "it", "it's", "its", "is",
            "i", "have", "got", "drive", "we", "mine", "car", "cars", "hatch", "hatchback", "saloon", "sedan", "coupe", "coupé",
            "roadster", "tourer", "electric", "ev", "hybrid", "turbo", "diesel", "petrol", "old", "little", "small", "big",
            "light", "heavy", "engine", "engined", "mid", "front", "rear", "back", "so", "just", "think", "guess", "one",
            "thing", "normal", "plain", "ordinary", "only", "no", "sorry", "wait", "actually", "oh", "well");

    /** What a line says of the driven wheels; empty where it says nothing of them, or two things. */
    static Optional<DriveWords> of(String typed) {
        Set<Drive> drives = EnumSet.noneOf(Drive.class);
        List<String> rest = new ArrayList<>();
        for (String clause : CUT.split(typed.strip().replace('\u2019', '\''))) {
            String left = without(clause, drives);
            if (!left.isEmpty() && !Stream.of(left.toLowerCase(Locale.ROOT).split("[\\s-]+")).allMatch(OF_CARS::contains)) {
                rest.add(left);
            }
        }
        return drives.size() == 1 ? Optional.of(new DriveWords(drives.iterator().next(), String.join(", ", rest)))
                : Optional.empty();
    }

    private static String without(String clause, Set<Drive> into) {
        Matcher said = SAID.matcher(clause);
        StringBuilder left = new StringBuilder();
        int from = 0;
        while (said.find()) {
            String[] before = clause.substring(0, said.start()).toLowerCase(Locale.ROOT).strip().split("\\s+");
            if (!NOT_OF_THE_CAR.contains(before[before.length - 1])) {
                into.add(drive(Stream.of(1, 2, 3).map(said::group).filter(group -> group != null).findFirst().orElseThrow()));
                left.append(clause, from, said.start());
                from = said.end();
            }
        }
        return left.append(clause.substring(from)).toString().strip().replaceAll("\\s+", " ").replaceAll("[.!?]+$", "");
    }

    private static Drive drive(String word) {
        return switch (word.toLowerCase(Locale.ROOT)) {
            case "front", "f" -> Drive.FRONT;
            case "rear", "back", "r" -> Drive.REAR;
            default -> Drive.ALL;
        };
    }
}
