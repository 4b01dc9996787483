package camberwell.report;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * How hard a text is to read.
 *
 * <p>Reading Ease: R. Flesch, "A new readability yardstick", Journal of Applied Psychology 32(3), 1948, 221-233: 60 to
 * 70 is "standard", what the eighth and ninth grades and general magazines read. Grade: J. P. Kincaid, R. P. Fishburne,
 * R. L. Rogers, B. S. Chissom, "Derivation of new readability formulas for Navy enlisted personnel", Research Branch
 * Report 8-75, 1975. Constants and bands cited from memory. As Flesch says, a unit that ends with a colon or a
 * semicolon counts as a sentence.
 *
 * <p>Syllables are counted by a rule of thumb: runs of vowels, less a silent final e or ed, one at least; a compound
 * counts the parts between its hyphens. Figures and units are no words: they read alike in every style.
 */
record Readability(int sentences, int words, int syllables) {

    private static final Pattern WORD = Pattern.compile("[A-Za-z]+(?:['-][A-Za-z]+)*");
    private static final Pattern FIGURE =
            Pattern.compile("-?[0-9]+(?:\\.[0-9]+)? ?(?:deg|bar|psi|mm|N/mm|Nm|lb/in|%|°C)?");
    private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");

    static Readability of(String text) {
        String read = FIGURE.matcher(text).replaceAll(" ");
        int sentences = (int) Stream.of(read.split("[.!?:;]+(?=\\s|$)"))
                .filter(part -> WORD.matcher(part).find()).count();
        List<String> words = WORD.matcher(read).results().map(result -> result.group()).toList();
        return new Readability(sentences, words.size(), words.stream().mapToInt(Readability::syllables).sum());
    }

    static int syllables(String word) {
        int syllables = 0;
        for (String part : word.toLowerCase(Locale.ROOT).split("[-']")) {
            syllables += part(part);
        }
        return Math.max(1, syllables);
    }

    private static int part(String part) {
        if (part.length() < 2) {
            return part.matches("[aeiouy]") ? 1 : 0;
        }
        String spoken = part.replaceFirst("(?<=[^aeiouytd])ed$|(?<=[^aeiouyl])e$|(?<=[aeiouy][lr])e$"
                + "|(?<=[^aeiouyscxzgh])es$", "");
        Matcher vowels = VOWELS.matcher(spoken);
        int runs = 0;
        while (vowels.find()) {
            runs++;
        }
        return Math.max(1, runs);
    }

    double ease() {
        return 206.835 - 1.015 * words / sentences - 84.6 * syllables / words;
    }

    double grade() {
        return 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
    }
}
