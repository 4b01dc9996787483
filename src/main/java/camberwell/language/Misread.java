package camberwell.language;

import camberwell.vocabulary.Nearest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Tells in the rule's own terms why a line is no sentence: a word that is wrong, or the sentence, once and with what was meant.
 */
final class Misread {

    /** Longer lines resemble no sentence. */
    private static final int LONGEST_SENTENCE = 200;
    private static final String ONE_A_LINE = "one sentence a line: what follows \"and\" stands on the next line";
    private static final String REPORTS = "the driver reports ";
    private static final Pattern GAP = Pattern.compile("\\{[A-Za-z-]+}");

    private final Dictionary dictionary;
    private final Names names;
    private final SentenceReader.Problems problems;

    Misread(Dictionary dictionary, Names names, SentenceReader.Problems problems) {
        this.dictionary = dictionary;
        this.names = names;
        this.problems = problems;
    }

    /**
     * Tells what is wrong with a line that no sentence matches.
     *
     * @param condition whether it stands in {@code when}
     * @param text as it was written
     */
    void tell(boolean condition, String text, int number, int column) {
        Matcher gap = GAP.matcher(text);
        if (gap.find()) {
            problems.tell(number, column + gap.start(), "there is no " + gap.group() + "; a rule for both ends has {axle}, "
                    + "{Axle}, {other-axle} and {Other-axle}", Optional.empty());
            return;
        }
        if (text.contains(" //")) {
            problems.tell(number, column + text.indexOf(" //") + 1, "a comment stands on a line of its own", Optional.empty());
            return;
        }
        String spaced = SentenceReader.spaced(text);
        if (inCapitals(condition, spaced, number, column)) {
            return;
        }
        String no = "no sentence of the dictionary reads \"" + text + "\"";
        Optional<String> same = saying(condition, spaced);
        if (same.isPresent()) {
            problems.tell(number, column, no, same);
            return;
        }
        Optional<String> advice = advice(condition, spaced);
        if (advice.isPresent()) {
            problems.tell(number, column, no + "; " + advice.get(), Optional.empty());
            return;
        }
        Optional<String> slip = slipOf(condition, spaced);
        if (slip.isPresent()) {
            problems.tell(number, column, no, slip);
            return;
        }
        if (new WrongWords(dictionary, problems).tell(condition, text, spaced, number, column)) {
            return;
        }
        if (SentenceReader.RAW.matcher(text).matches()) {
            problems.tell(number, column, SentenceReader.raw(text), Optional.empty());
        } else if (dictionary.match(!condition, spaced).isPresent()) {
            problems.tell(number, column, "this sentence belongs into " + (condition ? "then" : "when") + ": "
                    + text, Optional.empty());
        } else if (spaced.length() > LONGEST_SENTENCE) {
            problems.tell(number, column, no, Optional.empty());
        } else {
            Meant.Answer meant = new Meant(dictionary, condition).by(spaced);
            if (condition && meant.suggestion().isEmpty() && spaced.startsWith(REPORTS) && dictionary.reported(spaced) == 0) {
                String said = spaced.substring(REPORTS.length());
                problems.tell(number, column + Math.max(0, text.indexOf(said)), "\"" + said + "\" is no symptom; one of your "
                        + "own is brought by the file symptoms.yaml", symptomOf(said));
                return;
            }
            problems.tell(number, column, no + (meant.hint().isEmpty() ? "" : "; " + meant.hint()), meant.suggestion());
        }
    }

    /** The sentence without gaps of which a line is one letter short or off: it is meant, rather than one with a gap. */
    private Optional<String> slipOf(boolean condition, String spaced) {
        return dictionary.sentences().stream().filter(it -> it.condition() == condition && it.gaps().isEmpty())
                .map(Sentence::template).filter(it -> Nearest.distance(it, spaced) == 1).findFirst();
    }

    private boolean inCapitals(boolean condition, String spaced, int number, int column) {
        String small = spaced.toLowerCase(Locale.ROOT);
        boolean sentence = !small.equals(spaced) && (dictionary.match(condition, small).isPresent()
                || condition && dictionary.spread(small).isPresent());
        if (sentence) {
            problems.tell(number, column, "sentences are written in small letters", Optional.of(small));
        }
        return sentence;
    }

    /** The sentence that says the very same, be it put together otherwise, be it in other words. */
    private Optional<String> saying(boolean condition, String spaced) {
        String joined = Rewording.joined(spaced, dictionary);
        if (!joined.equals(spaced) && reads(condition, joined)) {
            return Optional.of(joined);
        }
        OtherWords others = new OtherWords(condition);
        List<String> lines = new ArrayList<>(joined.equals(spaced) ? List.of(spaced) : List.of(joined, spaced));
        for (int at = 0; at < lines.size(); at++) {
            String line = lines.get(at);
            if (!line.equals(spaced) && !line.equals(joined) && reads(condition, line)) {
                return Optional.of(line);
            }
            others.sentences(line).stream().flatMap(said -> List.of(said, Rewording.joined(said, dictionary)).stream())
                    .filter(said -> !lines.contains(said)).forEach(lines::add);
        }
        return Optional.empty();
    }

    /** Whether a line would be read; what narrows a report is read below one. */
    private boolean reads(boolean condition, String line) {
        return line.startsWith("- ") ? dictionary.match(true, line).isPresent()
                : SentenceReader.reads(dictionary, names, condition, line);
    }

    private Optional<String> advice(boolean condition, String spaced) {
        OtherWords others = new OtherWords(condition);
        Optional<String> joinedBy = condition ? either(spaced).or(() -> both(spaced)) : Optional.empty();
        return joinedBy.or(() -> others.advice(Rewording.joined(spaced, dictionary))).or(() -> others.advice(spaced));
    }

    /** The symptom that has most of those words in its name; empty where none has one of them. */
    private Optional<String> symptomOf(String said) {
        Set<String> words = Set.copyOf(List.of(said.split("[ -]+")).stream().distinct().toList());
        return dictionary.sentences().stream().flatMap(sentence -> sentence.gaps().stream())
                .filter(gap -> gap.name().equals("symptom")).flatMap(gap -> gap.words().stream()).distinct()
                .filter(symptom -> shared(symptom, words) > 0).max(Comparator.comparingLong(symptom -> shared(symptom, words)));
    }

    private static long shared(String symptom, Set<String> words) {
        return List.of(symptom.split("-")).stream().filter(words::contains).count();
    }

    /** Two sentences that an "and" stands between. */
    private Optional<String> both(String line) {
        for (int at = line.indexOf(" and "); at > 0; at = line.indexOf(" and ", at + 1)) {
            if (reads(true, line.substring(0, at)) && reads(true, line.substring(at + " and ".length()))) {
                return Optional.of(ONE_A_LINE);
            }
        }
        return Optional.empty();
    }

    /** Two sentences that an "or" stands between. */
    private Optional<String> either(String line) {
        int at = line.indexOf(" or ");
        while (at > 0) {
            String left = line.startsWith("either ") ? line.substring("either ".length(), at) : line.substring(0, at);
            String right = line.substring(at + " or ".length());
            if (!left.startsWith("- ") && reads(true, left) && reads(true, right)) {
                return Optional.of("write \"either " + left + "\" and below it \"or " + right + "\"");
            }
            at = line.indexOf(" or ", at + 1);
        }
        return Optional.empty();
    }
}
