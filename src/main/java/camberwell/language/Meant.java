package camberwell.language;

import camberwell.vocabulary.Nearest;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
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
    private static final Set<String> DENYING = Set.of("no", "not", "never", "without", "nobody", "neither", "nor", "cannot");
    private static final int MOST_OFFERED = 3;
    /** Where more sentences are about the same, none of them is a help. */
    private static final int MOST_ALIKE = 8;
    private static final String CERTAINTY = "{certainty}";

    private final Dictionary dictionary;
    private final boolean condition;
    private final Set<String> known = new HashSet<>();
    /** The words of each sentence, by its template. */
    private final Map<String, List<String>> templates = new HashMap<>();

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
            List<String> template = List.of(sentence.template().split(" "));
            templates.put(sentence.template(), template);
            known.addAll(template);
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
        if (same.isPresent()) {
            return new Answer(same, "");
        }
        return new Answer(Optional.empty(), denied(words).orElseGet(() ->
                about(words, List.of(Rewording.joined(text, dictionary).split(" ")))));
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
        if (Opposites.turned(words, templates.get(sentence.template()))) {
            return Optional.empty();
        }
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
                        ? Optional.empty() : Synonyms.of(inside, gap.words()).or(() -> Nearest.to(inside, gap.words()));
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
        return known.contains(word) || Opposites.denies(word, wanted) || Nearest.to(word, List.of(wanted)).isEmpty()
                ? Optional.empty() : Optional.of(0.4);
    }

    /** A sentence that is denied, where nothing denies it. */
    private Optional<String> denied(List<String> words) {
        List<String> without = words.stream().filter(word -> !DENYING.contains(word)).toList();
        String positive = String.join(" ", without);
        if (!condition || without.size() == words.size()
                || dictionary.match(true, positive).isEmpty() && dictionary.spread(positive).isEmpty()) {
            return Optional.empty();
        }
        Optional<String> contrary = Opposites.contrary(without).filter(line -> dictionary.match(true, line).isPresent());
        return Optional.of("nothing denies \"" + positive + "\"; ask for what is so instead"
                + contrary.map(line -> ": \"" + line + "\"").orElse(""));
    }

    /**
     * A sentence laid over a line without regard to order.
     *
     * @param others how many words it has that the line has not
     * @param common how many words of the line that carry meaning it has
     * @param filled the sentence with those of the line's words that go into its gaps
     */
    private record Overlay(int others, int common, String filled) {

        static Overlay of(Sentence sentence, List<String> reads, List<String> words) {
            List<String> template = new ArrayList<>(reads);
            Map<String, String> filled = new LinkedHashMap<>();
            int common = 0;
            Set<String> met = new HashSet<>();
            for (String word : words) {
                if (!SMALL.contains(word) && !word.equals("-")) {
                    boolean there = met.add(word) && (template.remove(word) || template.remove(word + "s"))
                            || sentence.gaps().stream()
                            .filter(gap -> gap.words().contains(word) && !filled.containsKey(gap.name())).findFirst()
                            .map(gap -> filled.put(gap.name(), word) == null).orElse(false);
                    common += there ? 1 : 0;
                }
            }
            for (Sentence.Gap gap : sentence.gaps()) {
                if (gap.open().isPresent()) {
                    figure(words, sentence, gap, filled.values()).ifPresent(figure -> filled.put(gap.name(), figure));
                }
            }
            return new Overlay(reads.size() - common, common, sentence.filled(filled));
        }
    }

    /** The sentences that are about most of the same things, those first that say least else. */
    private String about(List<String> words, List<String> joined) {
        List<Overlay> offered = new ArrayList<>();
        int most = 0;
        for (Sentence sentence : dictionary.sentences()) {
            List<String> template = templates.get(sentence.template());
            if (sentence.condition() == condition && sentence.narrowing() == words.get(0).equals("-")
                    && denies(template) == denies(words) && !Opposites.turned(words, template)) {
                Overlay apart = Overlay.of(sentence, template, words);
                Overlay together = joined.equals(words) ? apart : Overlay.of(sentence, template, joined);
                Overlay better = together.common() >= apart.common() ? together : apart;
                if (better.common() > most) {
                    offered.clear();
                    most = better.common();
                }
                if (better.common() == most && most > 0) {
                    offered.add(better);
                }
            }
        }
        boolean fewer = condition && !words.get(0).equals("-") && (most < 2 || most * 2 < meaningful(joined));
        if (offered.isEmpty() || offered.size() > MOST_ALIKE || fewer) {
            return "camberwell rules sentences lists them all";
        }
        List<String> filled = offered.stream().sorted(Comparator.comparingInt(Overlay::others)).map(Overlay::filled)
                .distinct().toList();
        boolean whole = !filled.get(0).contains("{");
        return "about the same: " + filled.stream().filter(line -> !whole || !line.contains("{")).limit(MOST_OFFERED)
                .map(line -> "\"" + line + "\"").collect(Collectors.joining(", "));
    }

    private static int meaningful(List<String> words) {
        return (int) words.stream().filter(word -> !SMALL.contains(word) && word.chars().anyMatch(Character::isLetter)).count();
    }

    /** Whether a line says that something is not so: no help is one that says the contrary. */
    private static boolean denies(List<String> words) {
        return words.stream().anyMatch(word -> DENYING.contains(word) || word.endsWith("n't"));
    }

    /** The number of the line that goes into a gap: one with the same unit behind it, or with none; a certainty is the last. */
    private static Optional<String> figure(List<String> words, Sentence sentence, Sentence.Gap gap, Collection<String> used) {
        List<String> template = List.of(sentence.template().split(" "));
        int place = template.indexOf("{" + gap.name() + "}");
        String behind = place < 0 || place + 1 == template.size() ? "" : template.get(place + 1);
        List<String> figures = new ArrayList<>();
        for (int at = 0; at < words.size(); at++) {
            String word = words.get(at);
            String next = at + 1 < words.size() ? words.get(at + 1) : "";
            boolean fits = behind.isEmpty() || next.isEmpty() || next.equals(behind) || behind.equals("{unit}")
                    && sentence.gaps().stream().anyMatch(other -> other.name().equals("unit") && other.takes(next));
            if (fits && gap.takes(word) && !used.contains(word) && word.chars().anyMatch(Character::isDigit)
                    && word.chars().noneMatch(Character::isLetter)) {
                figures.add(word);
            }
        }
        boolean last = gap.name().equals("certainty");
        return figures.isEmpty() ? Optional.empty() : Optional.of(figures.get(last ? figures.size() - 1 : 0));
    }
}
