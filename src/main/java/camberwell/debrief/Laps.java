package camberwell.debrief;

import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Symptom;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A number of laps and nothing else, as an answer: {@code about 5 laps}, {@code a dozen}, {@code lap 6}. Whoever is asked since
 * when, and says five laps, means after five laps.
 */
final class Laps {

    private static final Pattern COUNT = Pattern.compile("(?:about|around|roughly|maybe|perhaps|some|like|say|at|nearly|almost|i "
            + "think|i guess|it was|\\s)*(?:(?:\\d{1,3}|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|twenty"
            + "|thirty)(?:\\s*(?:-|to|or)\\s*(?:\\d{1,3}|three|four|five|six|seven|eight|nine|ten|twelve))?\\s+laps?(?: or so)?"
            + "|(?:half )?a dozen(?: laps)?(?: or so)?|(?:a )?(?:couple|few)(?: of)?(?: laps)|lap (?:\\d{1,3}|two|three|four|five"
            + "|six|seven|eight|nine|ten|eleven|twelve|fifteen|twenty)(?: or so)?)");
    private static final Pattern FROM = Pattern.compile("^(?:after|since|from)\\b\\s*");
    private static final Pattern ALL = Pattern.compile("(?:right |straight )?(?:since|from)(?: the)? (?:very )?"
            + "(?:start|beginning|off|first lap|lap one|lap 1|word go)(?: on)?|all along|right away|straight away|always");
    private static final Pattern ONE = Pattern.compile("(?:just |only )*(?:one|a single|1) lap");

    private Laps() {
    }

    /** Whether a line is a number of laps. */
    static boolean are(String typed) {
        return COUNT.matcher(plain(typed)).matches();
    }

    /** Since when a complaint is there that comes so many laps into the run; of tyres that are slow to warm up, until when. */
    static Optional<Since> since(String typed, Symptom symptom) {
        String plain = plain(typed);
        return ALL.matcher(plain).matches() ? Optional.of(Since.WHOLE_RUN)
                : !are(FROM.matcher(plain).replaceFirst("")) ? Optional.empty()
                : Optional.of(symptom == Symptom.SLOW_WARM_UP ? Since.FIRST_LAPS : Since.LATE_RUN);
    }

    /** How often it is felt that is felt on so many laps. */
    static Optional<Occurrence> often(String typed) {
        return ONE.matcher(plain(typed)).matches() ? Optional.of(Occurrence.ONCE)
                : are(typed) ? Optional.of(Occurrence.SOME_LAPS) : Optional.empty();
    }

    private static String plain(String typed) {
        return typed.strip().toLowerCase(Locale.ROOT).replaceAll("[.,!?]+$", "").replaceAll("\\s+", " ");
    }
}
