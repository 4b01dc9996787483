package camberwell.language;

import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Word;
import java.util.List;
import java.util.Optional;

/** Tells the words of a line that stand in no list, where some sentence reads so but for them. */
final class WrongWords {

    private final Dictionary dictionary;
    private final SentenceReader.Problems problems;

    WrongWords(Dictionary dictionary, SentenceReader.Problems problems) {
        this.dictionary = dictionary;
        this.problems = problems;
    }

    /** Tells the words that do not fit, where a sentence reads so but for them; of several sentences the nearest. */
    boolean tell(boolean condition, String text, String spaced, int number, int column) {
        Sentence nearest = null;
        List<Sentence.Filled> wrong = List.of();
        for (Sentence sentence : dictionary.sentences()) {
            Optional<List<Sentence.Filled>> filled =
                    sentence.condition() == condition ? sentence.fill(spaced) : Optional.empty();
            if (filled.isPresent()) {
                List<Sentence.Filled> misfits = filled.get().stream().filter(word -> !word.gap().takes(word.word())).toList();
                if (nearest == null || misfits.size() < wrong.size()) {
                    nearest = sentence;
                    wrong = misfits;
                }
            }
        }
        if (nearest == null) {
            return false;
        }
        if (wrong.size() == 2 && wrong.get(0).gap().takes(wrong.get(1).word()) && wrong.get(1).gap().takes(wrong.get(0).word())) {
            problems.tell(number, column + wrong.get(0).at(), "\"" + wrong.get(0).word() + "\" and \"" + wrong.get(1).word()
                    + "\" stand the wrong way round", Optional.empty());
            return true;
        }
        if (nearest.narrowing() && wrong.stream().anyMatch(word -> otherwiseKnown(word.gap(), word.word()))) {
            return false;
        }
        List<Sentence.Filled> filled = nearest.fill(spaced).orElseThrow();
        for (Sentence.Filled word : wrong) {
            Optional<Adjuster> moved = word.gap().name().equals("direction") ? adjuster(filled) : Optional.empty();
            int at = column + Math.max(0, text.indexOf(word.word()));
            if (moved.isPresent() && endingIn(word.gap(), word.word()).isEmpty()) {
                problems.tell(number, at, moves(moved.get(), word.word()), Synonyms.direction(word.word(), moved.get()));
            } else {
                problems.tell(number, at, wrongWord(word.gap(), word.word()), meant(word.gap(), word.word()));
            }
        }
        return true;
    }

    /** That an adjuster does not move so. */
    static String moves(Adjuster adjuster, String direction) {
        return adjuster.id() + " moves " + adjuster.directions().get(0).id() + " or " + adjuster.directions().get(1).id()
                + ", not " + direction;
    }

    private static Optional<Adjuster> adjuster(List<Sentence.Filled> filled) {
        return filled.stream().filter(word -> word.gap().name().equals("adjuster") && word.gap().takes(word.word()))
                .map(word -> Word.of(Adjuster.class, word.word())).findFirst();
    }

    private static Optional<String> meant(Sentence.Gap gap, String word) {
        if (gap.name().equals("number") && word.startsWith("-") && gap.takes(word.substring(1))) {
            return Optional.of(word.substring(1));
        }
        return Synonyms.of(word, gap.words()).or(() -> word.contains("damper") || !endingIn(gap, word).isEmpty()
                ? Optional.empty()
                : Nearest.to(word, gap.words()));
    }

    /** Whether a word stands in another list, so that rather another sentence was meant. */
    private boolean otherwiseKnown(Sentence.Gap gap, String word) {
        return !gap.words().isEmpty() && dictionary.sentences().stream().flatMap(sentence -> sentence.gaps().stream())
                .anyMatch(other -> !other.words().equals(gap.words()) && other.words().contains(word));
    }

    private static String wrongWord(Sentence.Gap gap, String word) {
        return switch (gap.name()) {
            case "certainty" -> word.equals("1") ? "a certainty of 1 is written 1.0"
                    : word.matches("0,[0-9]+") ? "a certainty is written with a point: " + word.replace(',', '.')
                    : SentenceReader.NO_CERTAINTY + word;
            case "number", "figure", "steps" -> word.matches("-?[0-9]+,[0-9]+")
                    ? "a number is written with a point: " + word.replace(',', '.')
                    : word.startsWith("-") ? "a number has no sign here"
                    : "\"" + word + "\" is not a number";
            default -> "\"" + word + "\" is no " + noun(gap) + (word.contains("damper")
                    ? ": a damper has bump and rebound" : !endingIn(gap, word).isEmpty()
                    ? "; which one: " + String.join(", ", endingIn(gap, word)) + "?" : gap.words().size() <= 8
                    && !gap.words().isEmpty()
                    ? ": " + String.join(", ", gap.words()) : "");
        };
    }

    /** The words of a list that a word leaves open: {@code camber} may be the front's or the rear's; seldom one wheel's. */
    private static List<String> endingIn(Sentence.Gap gap, String word) {
        List<String> all = gap.words().stream().filter(it -> it.endsWith("-" + word)).toList();
        List<String> ofAxles = all.stream().filter(it -> !it.contains("-left-") && !it.contains("-right-")).toList();
        return ofAxles.isEmpty() ? all : ofAxles;
    }

    /** What stands in a gap, in a word: a second one of a kind goes by another name. */
    private static String noun(Sentence.Gap gap) {
        return switch (gap.name()) {
            case "another" -> "symptom";
            case "against" -> "place";
            case "other" -> gap.words().contains("entry") ? "phase" : "speed";
            default -> gap.name();
        };
    }
}
