package camberwell.debrief;

import camberwell.run.Case;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A follow-up question that a rule pack wants asked.
 *
 * @param id as rules and cases write it
 * @param ask as it is put
 * @param when the symptoms after which it is asked; none for after any
 * @param answers the words to choose from, each with what it means
 */
public record PackQuestion(String id, String ask, List<String> when, Map<String, String> answers) {

    /** What marks that nobody knows the answer, in what need not be asked again. */
    private static final String PASSED = "own ";

    /** One of its answers, as a word to choose. */
    public record Choice(String question, String id, String felt) implements Word {
    }

    /** Its answers, in the pack's order. */
    List<Word> choices() {
        List<Word> choices = new ArrayList<>();
        answers.forEach((word, meaning) -> choices.add(new Choice(id, word, meaning)));
        return choices;
    }

    /** Whether a complaint of the case is one that it follows. */
    boolean follows(Case run) {
        return when.isEmpty() ? !run.reports().isEmpty()
                : run.reports().stream().anyMatch(report -> when.contains(report.symptom().id()));
    }

    /** Whether it is answered, or was passed. */
    boolean closed(Case run) {
        return run.background().answers().containsKey(id) || run.talked().answered().contains(PASSED + id);
    }

    /** The case with that answer; with a note that nobody knows, where it is none of the choices. */
    Case answered(Case run, Answer answer) {
        if (answer instanceof Answer.Said said && said.groups().get(0).get(0) instanceof Choice choice) {
            return run.withBackground(run.background().withAnswer(id, choice.id()));
        }
        List<String> passed = new ArrayList<>(run.talked().answered());
        passed.add(PASSED + id);
        return run.withAnswered(passed);
    }

    /** Those of {@code answered} that say that a pack's question was passed. */
    static List<String> passed(List<String> answered) {
        return answered.stream().filter(word -> word.startsWith(PASSED)).toList();
    }

    /** The one choice that stands in a line by itself, as a whole word or as its meaning; empty for none or several. */
    Optional<Word> in(String typed) {
        String small = " " + typed.strip().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip() + " ";
        List<Word> meant = choices().stream().filter(choice -> small.contains(" " + choice.id().replace('-', ' ') + " ")
                || small.strip().equals(choice.felt().toLowerCase(Locale.ROOT))).toList();
        return meant.size() == 1 ? Optional.of(meant.get(0)) : Optional.empty();
    }
}
