package camberwell.saying;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.vocabulary.CornerKind;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A saying and what it means, to learn from. A line {@code SAYING | MEANING}: complaints with ";" between them, each a symptom
 * and the words that narrow it, "?" behind those that people differ on; {@code surface: wet} of the day; {@code nothing} where
 * nothing is wrong, {@code refused} where it is no complaint; "||" between meanings that are as right as each other.
 *
 * @param labels what it certainly means
 * @param open what it may mean
 * @param pairs each symptom that it certainly means with each word that narrows it, as {@link #pair} has them
 * @param openPairs those that it may mean
 * @param met whether the grammar was made with it, so that what the grammar makes of it proves nothing
 */
record Lesson(String saying, Set<String> labels, Set<String> open, Set<String> pairs, Set<String> openPairs, boolean met) {

    /** That nothing is wrong. */
    static final String NOTHING = "nothing";
    /** That it is no complaint. */
    static final String REFUSED = "refused";
    /** That only the track's surface is told. */
    static final String DAY = "day";
    /** That there is more than one complaint. */
    static final String SEVERAL = "several";
    static final Set<String> NO_COMPLAINT = Set.of(NOTHING, REFUSED, DAY);
    /** The words that narrow a complaint, and those of the day. */
    static final Set<String> DETAILS = details();

    private static final String BETWEEN = " | ";
    private static final String MET = "# The grammar was made with these.";
    private static final String CORNERS = "# Kinds of corners count.";
    private static final String SURFACE = "surface:";

    private static Set<String> details() {
        Set<String> details = new TreeSet<>(Word.ids(Phase.class));
        details.addAll(Word.ids(CornerSpeed.class));
        details.addAll(Word.ids(CornerKind.class));
        details.addAll(Word.ids(Place.class));
        details.addAll(Word.ids(Severity.class));
        details.addAll(Word.ids(Occurrence.class));
        details.addAll(Word.ids(Since.class));
        details.addAll(Word.ids(Turn.class));
        details.addAll(Word.ids(Surface.class));
        details.add(SEVERAL);
        return Set.copyOf(details);
    }

    /**
     * The lessons of a file; of one that does not say that kinds of corners count, each may mean any of them.
     *
     * @param file as problems name it
     * @throws ProblemsException with everything that is wrong with it
     */
    static List<Lesson> read(String file, String text) {
        List<Lesson> lessons = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        boolean met = text.contains(MET);
        Set<String> open = text.contains(CORNERS) ? Set.of() : Set.copyOf(Word.ids(CornerKind.class));
        List<String> lines = text.lines().toList();
        for (int at = 0; at < lines.size(); at++) {
            String line = lines.get(at);
            int bar = line.indexOf(BETWEEN);
            if (line.startsWith("#") || line.isBlank()) {
                continue;
            }
            if (bar < 1) {
                problems.add(Problem.error(file, at + 1, 1, "a saying and its meaning have \" | \" between them"));
                continue;
            }
            String meaning = line.substring(bar + BETWEEN.length());
            problem(file, at + 1, bar + BETWEEN.length() + 1, meaning).ifPresent(problems::add);
            lessons.add(lesson(line.substring(0, bar), meaning, open, met));
        }
        if (!problems.isEmpty()) {
            throw new ProblemsException(problems);
        }
        return lessons;
    }

    /** Whether that is what is meant: every symptom, and nothing else; words that narrow may be missing. */
    boolean isMeant(Heard heard) {
        Set<String> told = new HashSet<>();
        for (Told one : heard.told()) {
            told.add(one.symptom().id());
            for (Word word : one.words()) {
                if (!mayNarrow(one, word)) {
                    return false;
                }
            }
        }
        if (heard.fine()) {
            told.add(NOTHING);
        }
        Set<String> certain = new HashSet<>(labels);
        certain.removeAll(DETAILS);
        boolean all = told.containsAll(certain) || told.size() == 1 && open.containsAll(told);
        return all && told.stream().allMatch(this::mayBe)
                && heard.surface().filter(surface -> !mayBe(surface.id())).isEmpty();
    }

    private boolean mayBe(String label) {
        return labels.contains(label) || open.contains(label);
    }

    /** Whether a word narrows that complaint, or may, or goes without saying: wheels lock on the brakes, a hairpin is slow. */
    boolean mayNarrow(Told told, Word word) {
        String pair = pair(told.symptom().id(), word.id());
        boolean always = open.contains(word.id()) && word instanceof CornerKind && !pairs.contains(pair);
        return pairs.contains(pair) || openPairs.contains(pair) || always
                || word == CornerSpeed.SLOW && mayBe(CornerKind.HAIRPIN.id()) || Unsaid.phase(told.symptom(), word);
    }

    /** The first word of a meaning that is none. */
    private static Optional<Problem> problem(String file, int line, int column, String meaning) {
        Set<String> known = new TreeSet<>(DETAILS);
        known.addAll(Word.ids(Symptom.class));
        known.addAll(List.of(NOTHING, REFUSED, SURFACE));
        int at = 0;
        for (String word : meaning.split("[ ;|]", -1)) {
            String plain = plain(word);
            if (!plain.isEmpty() && !known.contains(plain)) {
                return Optional.of(Problem.error(file, line, column + at, "\"" + plain + "\" is no word of the vocabulary",
                        Nearest.to(plain, known)));
            }
            at += word.length() + 1;
        }
        return Optional.empty();
    }

    /** A symptom with a word that narrows it, as one label. */
    static String pair(String symptom, String word) {
        return symptom + " " + word;
    }

    private static Lesson lesson(String saying, String meaning, Set<String> alwaysOpen, boolean met) {
        Set<String> certain = new TreeSet<>();
        Set<String> possible = new HashSet<>(alwaysOpen);
        Set<String> pairs = new TreeSet<>();
        Set<String> openPairs = new HashSet<>();
        Set<String> first = Set.of();
        for (String one : meaning.split(" \\|\\| ")) {
            Set<String> here = new TreeSet<>();
            Set<String> pairsHere = new TreeSet<>();
            for (String part : one.strip().split("\\s*;\\s*")) {
                words(part, here, possible);
                pairs(part, alwaysOpen, pairsHere, openPairs);
            }
            if (here.stream().filter(it -> !DETAILS.contains(it)).count() > 1) {
                here.add(SEVERAL);
            }
            if (DETAILS.containsAll(here)) {
                here.add(DAY);
            }
            possible.addAll(here);
            openPairs.addAll(pairsHere);
            if (first.isEmpty()) {
                first = here;
                certain.addAll(here);
                pairs.addAll(pairsHere);
            } else {
                certain.retainAll(here);
                pairs.retainAll(pairsHere);
            }
        }
        if (DETAILS.containsAll(certain)) {
            // Of several meanings that share no complaint the first is learned.
            first.stream().filter(word -> !DETAILS.contains(word)).forEach(certain::add);
        }
        possible.removeAll(certain);
        openPairs.removeAll(pairs);
        return new Lesson(saying, certain, possible, pairs, openPairs, met);
    }

    private static void words(String part, Set<String> here, Set<String> possible) {
        if (part.startsWith(SURFACE)) {
            String surface = part.substring(SURFACE.length()).strip();
            (surface.endsWith("?") ? possible : here).add(plain(surface));
            return;
        }
        for (String word : part.split(" ")) {
            if (word.endsWith("?")) {
                possible.add(plain(word));
            } else {
                here.add(word);
            }
        }
    }

    private static void pairs(String part, Set<String> alwaysOpen, Set<String> here, Set<String> possible) {
        String[] words = part.split(" ");
        if (Word.ids(Symptom.class).contains(plain(words[0]))) {
            String symptom = plain(words[0]);
            for (String word : words) {
                if (DETAILS.contains(plain(word))) {
                    (word.endsWith("?") ? possible : here).add(pair(symptom, plain(word)));
                }
            }
            alwaysOpen.forEach(word -> possible.add(pair(symptom, word)));
        }
    }

    private static String plain(String word) {
        return word.endsWith("?") ? word.substring(0, word.length() - 1) : word;
    }
}
