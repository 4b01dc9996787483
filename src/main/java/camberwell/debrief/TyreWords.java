package camberwell.debrief;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A line of figures as people type it, brought to the form that {@link TyreLine} reads: a wheel before its figures, decimals with
 * a point, a cold pressure before the hot one with a slash between: {@code 1,50 cold and 1,85 hot all round} is {@code all
 * 1.50/1.85}. How people say it: common practice, no source.
 *
 * @param words wheels, and figures behind the wheel that they are of
 * @param cold whether all pressures that stand by themselves were read before the run
 */
record TyreWords(List<String> words, boolean cold) {

    private static final String COLD = "cold";
    private static final String HOT = "hot";
    private static final String ALL = "all";
    private static final Pattern BREAK = Pattern.compile("[\\s,;:|]+");
    private static final Pattern UNIT_APART = pattern("(?<=[0-9])\\s+(?=(?:°|[cf]\\b|bar|kpa|psi))");
    private static final Pattern DASHED = Pattern.compile("(?<=\\d)\\s*-\\s*(?=\\d)");
    /** "1,8" and "92,5" are one figure; "92,84,78" are three, and so are "1,8,1" and "1.8,1.9". */
    private static final Pattern BAR_WITH_COMMA = Pattern.compile("(?<![\\d.,])([0-5]),(\\d{1,2})(?![\\d.]|,\\d)");
    private static final Pattern TENTH_WITH_COMMA = Pattern.compile("(?<![\\d.,])(\\d{2,3}),(\\d)(?![\\d.]|,\\d)");
    private static final Pattern EACH_OF_ALL = pattern("\\b(?:(?:on|at|of|for|the|same) )*(?:all (?:round|around|over"
            + "|four (?:corners|of them|tyres|tires|wheels)|four|corners|of them|tyres|tires|wheels)|everywhere|everything"
            + "|the lot"
            + "|(?:each|every)(?: (?:one|tyre|tire|corner|wheel))?)\\b(?: (?:the )?same\\b)?");
    private static final Pattern BEFORE = pattern("\\b(?:started|set(?: (?:them|it|all))?|went out|began|left(?: the pits))"
            + "(?: all)?(?: at| on| to| with)\\b|\\bbefore the run\\b");
    private static final Pattern AFTER = pattern("\\b(?:came (?:back|in)|ended(?: up)?|finished|grew|rose|went up)"
            + "(?: at| on| to| with)\\b|\\bafter the run\\b");
    private static final Pattern ISH = pattern("(?<=\\d)ish\\b");
    private static final Pattern END_BEHIND = pattern("\\b([0-5]\\.\\d{1,2})f\\b(.*\\b[0-5]\\.\\d{1,2})r\\b");
    private static final Pattern ENDS = pattern("(?<![\\d°]\\s{0,2})\\bf\\s+\\d.*\\br\\s+\\d");
    private static final Pattern END_FIRST = pattern("\\b(front|rear)[ -](left|right)\\b");
    private static final Pattern SIDE_FIRST = pattern("(?<!-)\\b(left|right)[ -](front|rear)\\b");
    private static final Pattern SEVERAL = pattern("\\bpressures\\b|\\b(?:tyres|tires) (?:were|are|at)\\b");
    private static final Set<String> FILLERS = Set.of("and", "the", "is", "are", "was", "were", "at", "tyre", "tyres", "temps",
            "temp", "temperatures", "tread", "treads", "pressure", "pressures", "bar", "psi", "kpa", "with", "in", "mid", "out",
            "inner", "middle", "outer", "inside", "outside", "yes", "then", "about", "i", "we", "read", "got", "had", "readings",
            "degrees", "deg", "four", "on", "of", "only", "just", "them", "they", "it", "both", "to", "around", "roughly", "but",
            "same", "for", "tires");
    /** A tread and the pressure that was read with it. */
    private static final int TREAD_AND_PRESSURE = 4;

    private static Pattern pattern(String words) {
        return Pattern.compile(words, Pattern.CASE_INSENSITIVE);
    }

    /** Copies the list. */
    TyreWords {
        words = List.copyOf(words);
    }

    /** What a line says, with "front left" as one word and every word that is neither wheel nor figure left out. */
    static TyreWords of(String typed) throws Reply.NoAnswer {
        String line = plain(typed);
        List<String> words = new ArrayList<>();
        for (String typedWord : BREAK.split(line)) {
            String word = figure(typedWord) ? typedWord : typedWord.toLowerCase(Locale.ROOT);
            boolean marks = word.equals(COLD) || word.equals(HOT);
            boolean again = word.equals(ALL) && words.contains(ALL);
            if (marks || figure(word) || wheel(word) && !again) {
                words.add(word);
            } else if (!again && !word.isEmpty() && !FILLERS.contains(word)) {
                throw new Reply.NoAnswer("\"" + word + "\" is no figure; for instance 92 84 78 1.95, or fl 92 84 78.");
            }
        }
        boolean cold = words.contains(COLD);
        boolean hot = words.contains(HOT);
        List<List<String>> groups = groups(words);
        List<String> plain = new ArrayList<>();
        for (List<String> group : groups) {
            plain.addAll(cold && hot ? paired(group) : group.stream().filter(word -> !word.equals(COLD) && !word.equals(HOT))
                    .toList());
        }
        if (plain.size() == 1 && !wheel(plain.get(0)) && SEVERAL.matcher(line).find()) {
            plain.add(0, ALL);
        }
        return new TyreWords(plain, cold && !hot);
    }

    /** The words of a line, with wheels of two words in one. */
    static List<String> apart(String typed) {
        return List.of(BREAK.split(joined(typed.toLowerCase(Locale.ROOT))));
    }

    private static String plain(String typed) {
        String line = typed.strip().replaceAll("\\s+", " ").replaceAll("[.!?]+$", "").replaceAll("(?i)kpa\\b", "kPa");
        line = BAR_WITH_COMMA.matcher(line).replaceAll("$1.$2");
        line = TENTH_WITH_COMMA.matcher(line).replaceAll("$1.$2");
        line = UNIT_APART.matcher(line).replaceAll("");
        line = BEFORE.matcher(ISH.matcher(line).replaceAll("")).replaceAll(COLD);
        line = AFTER.matcher(line).replaceAll(HOT);
        line = EACH_OF_ALL.matcher(line).replaceAll(ALL);
        line = END_BEHIND.matcher(line).replaceAll("$1 front$2 rear");
        line = DASHED.matcher(line).replaceAll(" ");
        return ends(joined(line));
    }

    private static String joined(String line) {
        return SIDE_FIRST.matcher(END_FIRST.matcher(line).replaceAll("$1-$2")).replaceAll("$2-$1");
    }

    /** The line with "f 2.0 r 1.9" in whole words; an "r" by itself may be the right. */
    private static String ends(String line) {
        return ENDS.matcher(line).find() ? line.replaceAll("(?i)\\bf\\b", "front").replaceAll("(?i)\\br\\b", "rear") : line;
    }

    private static boolean figure(String word) {
        return word.chars().anyMatch(Character::isDigit);
    }

    private static boolean wheel(String word) {
        return !TyreLine.named(word).isEmpty();
    }

    /** Each wheel with its figures behind it: of "1.9 front, 1.8 rear" as of "front 1.9, rear 1.8". */
    private static List<List<String>> groups(List<String> words) {
        List<String> told = words.stream().filter(word -> figure(word) || wheel(word)).toList();
        boolean behind = !told.isEmpty() && figure(told.get(0)) && wheel(told.get(told.size() - 1));
        List<List<String>> groups = new ArrayList<>(List.of(new ArrayList<>()));
        for (String word : words) {
            if (wheel(word) && !behind) {
                groups.add(new ArrayList<>());
            }
            List<String> group = groups.get(groups.size() - 1);
            group.add(wheel(word) ? 0 : group.size(), word);
            if (wheel(word) && behind) {
                groups.add(new ArrayList<>());
            }
        }
        return groups;
    }

    /** A wheel's cold and hot pressures in the form that tells which is which. */
    private static List<String> paired(List<String> group) {
        List<String> cold = new ArrayList<>();
        List<String> hot = new ArrayList<>();
        List<String> rest = new ArrayList<>();
        boolean behind = !group.isEmpty() && !figure(group.get(group.size() - 1));
        List<String> since = rest;
        List<String> open = new ArrayList<>();
        for (String word : group) {
            boolean marks = word.equals(COLD) || word.equals(HOT);
            List<String> marked = word.equals(COLD) ? cold : hot;
            if (marks && behind) {
                int from = open.size() == TREAD_AND_PRESSURE ? TREAD_AND_PRESSURE - 1 : 0;
                rest.addAll(open.subList(0, from));
                marked.addAll(open.subList(from, open.size()));
                open.clear();
            } else if (marks) {
                since = marked;
            } else if (figure(word) && behind) {
                open.add(word);
            } else {
                (figure(word) ? since : rest).add(word);
            }
        }
        rest.addAll(open);
        int most = Math.max(cold.size(), hot.size());
        for (int i = 0; i < most; i++) {
            rest.add(of(cold, i) + "/" + of(hot, i));
        }
        return rest;
    }

    /** One figure counts for all. */
    private static String of(List<String> figures, int index) {
        return figures.isEmpty() ? "" : figures.get(figures.size() == 1 ? 0 : Math.min(index, figures.size() - 1));
    }
}
