package camberwell.saying;

import java.util.List;
import java.util.Set;

/**
 * Words that are two words, or are written for another, told apart by those beside them: "right after the apex" is no
 * turn, "nothing left" neither, "I loose the rear" is no loose rear, "the breaks" brake. Common practice, no source.
 */
final class Homographs {

    private static final Set<String> NOUN_OR_WAY = Set.of("the", "a", "to", "turn", "left", "and", "or", "long", "fast", "slow",
            "tight", "quick", "medium", "pull", "run", "move", "drift", "drag", "veer", "go", "steer", "dart", "tug", "lean",
                    "in", "hand", "last",
            "first", "next", "every", "hard", "off", "of", "double", "final", "front", "rear", "back");
    private static final Set<String> JUST_THERE = Set.of("at", "after", "befor", "when", "as", "there", "where",
            "from", "until", "till", "up", "through", "on", "in", "past", "once", "round", "about", "down", "across", "off",
                    "out",
            "over", "into", "to", "along", "behind", "under");
    private static final Set<String> TALK = Set.of(",", "so", "then", "ok", "okay", "well", "first", "basically", "mate", "guy");
    private static final Set<String> SPARE = Set.of("nothing", "no", "grip", "tyre", "rubber", "get", "much", "little", "bite",
            "fuel", "any", "anything", "lap", "hold", "have", "traction");
    /** What would not be done is no more than said. */
    private static final Set<String> UNDONE = Set.of("hurt", "mind", "say", "call", "chang", "change", "be", "want", "complain",
            "need", "know");
    /** Where "so" joins two statements and raises nothing. */
    private static final Set<String> CLAUSES = Set.of("no", "not", "the", "it", "that", "there", "when", "if", "now", "my",
            "then", "basically");
    /** How much there is of what is left. */
    private static final Set<String> AMOUNTS = Set.of("no", "not", "nothing", "any", "much", "little", "hardly", "some", "plenty",
            "lot", "bit", "enough", "more", "barely", "without", "few");
    private static final Set<String> GOING = Set.of("go", "fade", "drop", "fall");
    private static final Set<String> PUT_BY = Set.of("it", "the", "me", "us", "him", "too", "brake", "braking", "myself");
    private static final Set<String> IS = Set.of("is", "be", "are", "was", "too", "very", "bit", "so", "really", "little",
            "slightly", "still", "quite", "more", "feel", "way", "super");
    private static final Set<String> WHERE = Set.of(",", "on", "in", "at", "off", "under", "out", "when", "mid", "through", "and",
            "entry", "exit", "everywhere", "but", "into", "from", "around", "over");
    private static final Set<String> TELLERS = Set.of("i", "we", "you");
    /** "Breaks away", "breaks traction". */
    private static final Set<String> APART = Set.of("away", "out", "traction");
    private static final Set<String> END_AS_NOUN = Set.of("the", "by", "at", "rear", "front", "back");
    private static final Set<String> LOSABLE = Set.of("rear", "back", "front", "nose", "tail", "grip", "traction", "control",
            "time", "it", "line");
    private static final Set<String> HOW_TO_BRAKE = Set.of("hard", "harder", "late", "later", "deep", "deeper", "early",
            "earlier",
            "for", "into", "pedal", "point", "zone", "bias", "balanc", "in");
    private static final Set<String> THE_BRAKE = Set.of("on", "under", "the", "trail", "off", "hit", "my", "release");
    private static final Set<String> HOW_IT_IS = Set.of("tight", "much", "nervous", "sharp", "sensitive", "stiff", "heavy",
            "lazy",
            "twitchy", "pushy", "edgy", "snappy", "lively");

    private final List<Token> sentence;
    private final String loose;
    private final String lose;

    private Homographs(List<Token> sentence, String loose, String lose) {
        this.sentence = sentence;
        this.loose = loose;
        this.lose = lose;
    }

    /**
     * Puts the word that is meant in the place of the one that is written.
     *
     * @param loose the stem of "loose"
     * @param lose that of "lose"
     */
    static void settle(List<Token> sentence, String loose, String lose) {
        Homographs homographs = new Homographs(sentence, loose, lose);
        for (int at = 0; at < sentence.size(); at++) {
            if (homographs.startsAndEnds(at)) {
                continue;
            }
            if (homographs.wearsOff(at)) {
                sentence.add(at + 1, new Token("", "tyre"));
            }
            String meant = homographs.meant(at);
            if (meant != null) {
                sentence.set(at, new Token(sentence.get(at).typed(), meant));
            }
        }
    }

    /** The stem that is meant; null where it is the one that stands there. */
    private String meant(int at) {
        String stem = stem(at);
        String before = stem(at - 1);
        String after = stem(at + 1);
        return switch (stem) {
            case "right" -> before.equals(",") && after.equals(",") && sentence.size() > 2 && at > 0 || at == 0
                    && TALK.contains(after) || !NOUN_OR_WAY.contains(before) && JUST_THERE.contains(after) ? "just" : null;
            case "would" -> after.equals("not") && !UNDONE.contains(stem(at + 2)) && !conditional() ? "will" : null;
            case "so" -> CLAUSES.contains(after) && !before.equals("not") ? "just"
                    : at > 0 && !before.equals(",") && TELLERS.contains(after) ? "then" : null;
            case "left" -> SPARE.contains(before) || after.equals(",") && amount(at)
                    || PUT_BY.contains(after) && !NOUN_OR_WAY.contains(before) ? "remain" : null;
            case "break" -> HOW_TO_BRAKE.contains(after)
                    || THE_BRAKE.contains(before) && !after.equals(loose) && !APART.contains(after) ? "brak" : null;
            case "to" -> HOW_IT_IS.contains(after) || after.equals(loose) ? "too" : null;
            default -> stem.equals(lose) && !sentence.get(at).typed().equalsIgnoreCase("lost") && IS.contains(before)
                    && WHERE.contains(after) ? loose
                    : stem.equals(loose) && !IS.contains(before) && (after.equals("the") || after.equals("my"))
                    && LOSABLE.contains(stem(at + 2)) ? lose : null;
        };
    }

    /** Whether it tells what would be if something were. */
    private boolean conditional() {
        return sentence.stream().anyMatch(token -> token.stem().equals("if"));
    }

    /** "Hardly any understeer left." */
    private boolean amount(int at) {
        for (int before = at - 1; before >= 0 && before > at - 5 && !stem(before).equals(","); before--) {
            if (AMOUNTS.contains(stem(before))) {
                return true;
            }
        }
        return false;
    }

    /** "Starts neutral, ends up pushing": early and late in the run. */
    private boolean startsAndEnds(int at) {
        boolean starts = (stem(at).equals("start") || stem(at).equals("begin"))
                && !Set.of("from", "the", "at", "to").contains(stem(at - 1))
                && at + 1 < sentence.size() && !sentence.get(at + 1).typed().endsWith("ing");
        for (int end = at + 1; starts && end < sentence.size(); end++) {
            boolean verb = (stem(end).equals("end") || stem(end).equals("finish")) && !END_AS_NOUN.contains(stem(end - 1));
            boolean time = stem(end).equals("end") && stem(end - 1).equals("the") && !stem(end + 1).equals("of")
                    && !stem(end - 2).equals("at");
            if (verb) {
                sentence.set(end, new Token(sentence.get(end).typed(), "late"));
                sentence.add(end + 1, new Token("", "run"));
            }
            if (verb || time) {
                sentence.set(at, new Token(sentence.get(at).typed(), "initially"));
                return true;
            }
        }
        return false;
    }

    /** "The rears go away": more than one of an end are its tyres. */
    private boolean wearsOff(int at) {
        String typed = sentence.get(at).typed();
        return (typed.equalsIgnoreCase("rears") || typed.equalsIgnoreCase("fronts"))
                && (GOING.contains(stem(at + 1)) || GOING.contains(stem(at + 2)));
    }

    /** The stem there; a comma before the first and after the last. */
    private String stem(int at) {
        return at < 0 || at >= sentence.size() || sentence.get(at).asked() ? "," : sentence.get(at).stem();
    }
}
