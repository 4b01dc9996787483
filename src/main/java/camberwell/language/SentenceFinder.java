package camberwell.language;

import camberwell.vocabulary.Nearest;
import java.util.List;
import java.util.Optional;

/** Finds the sentence that a line was most likely meant to be, word by word. */
final class SentenceFinder {

    private SentenceFinder() {
    }

    static boolean isSentence(Dictionary dictionary, boolean condition, String text) {
        return dictionary.match(condition, text).isPresent();
    }

    /** The nearest sentence, with the line's own words kept in its gaps where they fit. */
    static Optional<String> nearest(Dictionary dictionary, boolean condition, String text) {
        List<String> words = List.of(text.split("\\s+"));
        double best = Double.MAX_VALUE;
        Sentence nearest = null;
        for (Sentence sentence : dictionary.sentences()) {
            if (sentence.condition() != condition) {
                continue;
            }
            double cost = cost(words, sentence) / Math.max(words.size(), sentence.template().split(" ").length);
            if (cost < best) {
                best = cost;
                nearest = sentence;
            }
        }
        return nearest == null || best > 0.5 ? Optional.empty() : Optional.of(fill(words, nearest));
    }

    private static double cost(List<String> words, Sentence sentence) {
        String[] template = sentence.template().split(" ");
        double[][] cost = new double[words.size() + 1][template.length + 1];
        for (int i = 0; i <= words.size(); i++) {
            for (int j = 0; j <= template.length; j++) {
                if (i == 0 || j == 0) {
                    cost[i][j] = i + j;
                } else {
                    double replace = cost[i - 1][j - 1] + difference(words.get(i - 1), template[j - 1], sentence);
                    cost[i][j] = Math.min(replace, Math.min(cost[i - 1][j], cost[i][j - 1]) + 1);
                }
            }
        }
        return cost[words.size()][template.length];
    }

    /** 0 for the same word or one that fits the gap, up to 1 for an unlike one. */
    private static double difference(String word, String expected, Sentence sentence) {
        Optional<Sentence.Gap> gap = gap(expected, sentence);
        if (gap.isPresent()) {
            return gap.get().takes(stripComma(word)) ? 0
                    : Nearest.to(stripComma(word), gap.get().words()).isPresent() ? 0.3 : 0.8;
        }
        return word.equals(expected) ? 0 : Nearest.to(word, List.of(expected)).isPresent() ? 0.4 : 1;
    }

    private static Optional<Sentence.Gap> gap(String templateWord, Sentence sentence) {
        return sentence.gaps().stream().filter(gap -> stripComma(templateWord).contains("{" + gap.name() + "}"))
                .findFirst();
    }

    private static String stripComma(String word) {
        return word.endsWith(",") ? word.substring(0, word.length() - 1) : word;
    }

    private static String fill(List<String> words, Sentence sentence) {
        String filled = sentence.template();
        for (Sentence.Gap gap : sentence.gaps()) {
            String place = "{" + gap.name() + "}";
            for (String word : words) {
                Optional<String> fits = gap.takes(stripComma(word)) ? Optional.of(stripComma(word))
                        : Nearest.to(stripComma(word), gap.words());
                if (fits.isPresent() && !(gap.words().isEmpty() && sentence.template().contains(word))) {
                    filled = filled.replace(place, fits.get());
                    break;
                }
            }
        }
        return filled;
    }
}
