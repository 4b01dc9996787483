package camberwell.saying;

/**
 * A word without its ending, so that push, pushes, pushed and pushing are one. English endings only, and no more than is
 * needed to compare words: a stem is nothing to show.
 */
final class Stem {

    private Stem() {
    }

    /** The stem of a word in small letters. */
    static String of(String word) {
        String stem = word;
        if (stem.length() < 4 || stem.endsWith("thing")) {
            return stem;
        }
        if (stem.endsWith("ies") || stem.endsWith("ied")) {
            return stem.substring(0, stem.length() - 3) + "y";
        }
        if (stem.endsWith("oes")) {
            return stem.substring(0, stem.length() - 2);
        }
        if (stem.endsWith("sses") || stem.endsWith("shes") || stem.endsWith("ches") || stem.endsWith("xes")) {
            stem = stem.substring(0, stem.length() - 2);
        } else if (stem.endsWith("s") && !stem.endsWith("ss") && !stem.endsWith("us") && !stem.endsWith("is")) {
            stem = stem.substring(0, stem.length() - 1);
        }
        stem = without(stem, "ing");
        stem = stem.endsWith("eed") ? stem : without(stem, "ed");
        return stem.length() > 4 && stem.endsWith("e") ? stem.substring(0, stem.length() - 1) : stem;
    }

    /** Leaves at least three letters, one of them a vowel; a consonant doubled before the ending becomes one. */
    private static String without(String word, String ending) {
        int length = word.length() - ending.length();
        if (!word.endsWith(ending) || length < 3 || !hasVowel(word, length)) {
            return word;
        }
        char last = word.charAt(length - 1);
        boolean doubled = last == word.charAt(length - 2) && "aeioulsf".indexOf(last) < 0;
        return word.substring(0, doubled ? length - 1 : length);
    }

    private static boolean hasVowel(String word, int length) {
        for (int i = 0; i < length; i++) {
            if ("aeiouy".indexOf(word.charAt(i)) >= 0) {
                return true;
            }
        }
        return false;
    }
}
