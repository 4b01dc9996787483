package camberwell.language;

import camberwell.vocabulary.Nearest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a line was most likely meant to be, when no sentence reads so. A suggestion never turns a rule round: it has the
 * line's own verb, its nouns and its sign. Where no sentence has, the line is told what comes next, or which sentences
 * are about the same things.
 */
final class Meant {

    /** Words that carry no meaning of their own, so that one too many or one missing does no harm. */
    private static final Set<String> SMALL = Set.of("a", "an", "the", "is", "are", "was", "were", "be", "its", "their",
            "than", "those", "that", "of", "to", "with", "by", "and", "do", "does", "has", "have");
    private static final Set<String> DENYING = Set.of("no", "not", "never", "without", "nobody");
    private static final int MOST_OFFERED = 3;
    /** Where more sentences are about the same, none of them is a help. */
    private static final int MOST_ALIKE = 8;
    private static final String CERTAINTY = "{certainty}";

    private final Dictionary dictionary;
    private final boolean condition;
    private final Set<String> known = new HashSet<>();

    /**
     * @param suggestion the sentence in full, or empty
     * @param hint what to do, where no sentence can be suggested; empty for nothing better
     */
    record Answer(Optional<String> suggestion, String hint) {
    }

    Meant(Dictionary dictionary, boolean condition) {
        this.dictionary = dictionary;
        this.condition = condition;
        for (Sentence sentence : dictionary.sentences()) {
            for (String word : sentence.template().split(" ")) {
                known.add(word);
            }
            sentence.gaps().forEach(gap -> known.addAll(gap.words()));
        }
    }

    /** @param text with single spaces between its words */
    Answer by(String text) {
        List<String> words = List.of(text.split(" "));
        Optional<String> next = continued(words);
        if (next.isPresent()) {
            return new Answer(Optional.empty(), next.get());
        }
        Optional<String> spread = spread(words);
        if (spread.isPresent()) {
            return new Answer(spread, "");
        }
        Optional<String> same = dictionary.sentences().stream().filter(sentence -> sentence.condition() == condition)
                .map(sentence -> Map.entry(sentence, aligned(words, sentence)))
                .filter(entry -> entry.getValue().isPresent())
                .min(Comparator.comparingDouble(entry -> entry.getValue().get().cost()))
                .map(entry -> entry.getKey().filled(entry.getValue().get().words()));
        return same.isPresent() ? new Answer(same, "") : new Answer(Optional.empty(), about(words));
    }

    /** A report that is misspelt, with what narrows it on the same line. */
    private Optional<String> spread(List<String> words) {
        for (int i = words.size() - 1; condition && i > 2; i--) {
            List<String> head = words.subList(0, i);
            String rest = String.join(" ", words.subList(i, words.size()));
            if (dictionary.narrows(rest)) {
                Optional<String> meant = dictionary.sentences().stream().filter(Sentence::narrowable)
                        .map(sentence -> Map.entry(sentence, aligned(head, sentence)))
                        .filter(entry -> entry.getValue().isPresent())
                        .min(Comparator.comparingDouble(entry -> entry.getValue().get().cost()))
                        .map(entry -> entry.getKey().filled(entry.getValue().get().words()) + " " + rest);
                if (meant.isPresent()) {
                    return meant;
                }
            }
        }
        return Optional.empty();
    }

    /** What a report is narrowed by stands on lines of its own. */
    private Optional<String> continued(List<String> words) {
        for (int i = words.size() - 1; condition && i > 0; i--) {
            String head = String.join(" ", words.subList(0, i));
            String rest = "- " + String.join(" ", words.subList(i, words.size()));
            if (dictionary.match(true, head).filter(match -> match.getKey().narrowable()).isPresent()
                    && dictionary.match(true, rest).isPresent()) {
                return Optional.of("write \"" + rest + "\" on the next line");
            }
        }
        return Optional.empty();
    }

    /** How far a line is from a sentence, with the words for its gaps. */
    private record Alignment(double cost, Map<String, String> words) {
    }

    /**
     * The line laid along a sentence, word by word: the same words, misspelt ones, and small ones too many or missing.
     * Empty where anything else differs.
     */
    private Optional<Alignment> aligned(List<String> words, Sentence sentence) {
        String[] template = sentence.template().split(" ");
        Map<String, String> filled = new LinkedHashMap<>();
        double cost = 0;
        int i = 0;
        int j = 0;
        while (i < words.size() || j < template.length) {
            String word = i < words.size() ? words.get(i) : "";
            String wanted = j < template.length ? template[j] : "";
            Optional<Double> step = word.isEmpty() || wanted.isEmpty() ? Optional.empty()
                    : step(word, wanted, sentence, filled);
            if (step.isPresent()) {
                cost += step.get();
                i++;
                j++;
            } else if (SMALL.contains(word) && (!SMALL.contains(wanted) || wanted.isEmpty())) {
                cost += 0.5;
                i++;
            } else if (SMALL.contains(wanted)) {
                cost += 0.5;
                j++;
            } else if (i == words.size() && missingCertainty(template, j)) {
                filled.put("certainty", "0.5");
                cost += 0.5;
                j = template.length;
            } else {
                return Optional.empty();
            }
        }
        return filled.size() == sentence.gaps().size() ? Optional.of(new Alignment(cost, filled)) : Optional.empty();
    }

    private static boolean missingCertainty(String[] template, int from) {
        return template.length - from <= 2 && from > 0 && template[template.length - 1].equals(CERTAINTY);
    }

    private Optional<Double> step(String word, String wanted, Sentence sentence, Map<String, String> filled) {
        for (Sentence.Gap gap : sentence.gaps()) {
            String place = "{" + gap.name() + "}";
            if (wanted.contains(place)) {
                int at = wanted.indexOf(place);
                String after = wanted.substring(at + place.length());
                if (!word.startsWith(wanted.substring(0, at)) || !word.endsWith(after)
                        || word.length() <= at + after.length()) {
                    return Optional.empty();
                }
                String inside = word.substring(at, word.length() - after.length());
                Optional<String> fits = gap.takes(inside) ? Optional.of(inside) : known.contains(inside)
                        ? Optional.empty() : Nearest.to(inside, gap.words());
                fits.ifPresent(fit -> filled.put(gap.name(), fit));
                return fits.map(fit -> fit.equals(inside) ? 0.0 : 0.3);
            }
        }
        if (word.equals(wanted)) {
            return Optional.of(0.0);
        }
        if (word.equals(wanted + "s") || wanted.equals(word + "s")) {
            return Optional.of(0.2);
        }
        // Whoever wrote a word that some sentence has meant that word.
        return known.contains(word) || Nearest.to(word, List.of(wanted)).isEmpty() ? Optional.empty()
                : Optional.of(0.4);
    }

    /** The sentences that are about most of the same things, those first that say least else. */
    private String about(List<String> words) {
        List<Sentence> offered = new ArrayList<>();
        int most = 0;
        for (Sentence sentence : dictionary.sentences()) {
            if (sentence.condition() == condition && sentence.narrowing() == words.get(0).equals("-")
                    && denies(List.of(sentence.template().split(" "))) == denies(words)) {
                int common = common(words, sentence);
                if (common > most) {
                    offered.clear();
                    most = common;
                }
                if (common == most && common > 0) {
                    offered.add(sentence);
                }
            }
        }
        if (offered.isEmpty() || offered.size() > MOST_ALIKE) {
            return "camberwell rules sentences lists them all";
        }
        return "about the same: " + offered.stream().sorted(Comparator.comparingInt(sentence ->
                sentence.template().split(" ").length - common(words, sentence))).limit(MOST_OFFERED)
                .map(sentence -> "\"" + withWordsOf(words, sentence) + "\"").collect(Collectors.joining(", "));
    }

    /** Whether a line says that something is not so: no help is one that says the contrary. */
    private static boolean denies(List<String> words) {
        return words.stream().anyMatch(word -> DENYING.contains(word) || word.endsWith("n't"));
    }

    private static int common(List<String> words, Sentence sentence) {
        List<String> template = List.of(sentence.template().split(" "));
        return (int) words.stream().filter(word -> !SMALL.contains(word) && !word.equals("-"))
                .filter(word -> template.contains(word) || fitting(word, sentence).isPresent()).count();
    }

    private static Optional<Sentence.Gap> fitting(String word, Sentence sentence) {
        return sentence.gaps().stream().filter(gap -> gap.words().contains(word)).findFirst();
    }

    private static String withWordsOf(List<String> words, Sentence sentence) {
        Map<String, String> filled = new LinkedHashMap<>();
        words.forEach(word -> fitting(word, sentence).ifPresent(gap -> filled.putIfAbsent(gap.name(), word)));
        return sentence.filled(filled);
    }
}
