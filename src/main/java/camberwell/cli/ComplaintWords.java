package camberwell.cli;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.run.Report;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a complaint as the words of a report in any order: {@code understeer entry slow strong}. */
final class ComplaintWords {

    private static final List<Class<? extends Word>> TYPES = List.of(Symptom.class, Place.class, Phase.class,
            CornerSpeed.class, Severity.class, Occurrence.class, Since.class, Turn.class);

    private ComplaintWords() {
    }

    /**
     * The complaint.
     *
     * @param option that it was given to, for the message
     * @throws ProblemsException if a word is none of the trade's, one is said twice, or there is no symptom
     */
    static Report parse(String option, String text) {
        Map<Class<?>, Word> said = new HashMap<>();
        for (String word : text.strip().split("[\\s,]+")) {
            Optional<String> meant = Nearest.to(word, known());
            Word known = find(word).orElseThrow(() -> problem(option, text, "\"" + word + "\" is no word of a complaint"
                    + (meant.isEmpty() ? "; a pack's own word wants its pack: --rules DIR" : ""), meant));
            if (said.put(known.getClass(), known) != null) {
                throw problem(option, text, "\"" + word + "\" says again, and otherwise, what was said",
                        Optional.empty());
            }
        }
        Symptom symptom = of(said, Symptom.class).orElseThrow(() -> problem(option, text,
                "it does not say what the car does, like understeer or front-locking", Optional.empty()));
        return new Report(symptom, of(said, Place.class), of(said, Phase.class), of(said, CornerSpeed.class),
                of(said, Severity.class).orElse(Severity.CLEAR), of(said, Occurrence.class)
                        .orElse(Occurrence.EVERY_LAP), of(said, Since.class), of(said, Turn.class));
    }

    private static <W extends Word> Optional<W> of(Map<Class<?>, Word> said, Class<W> type) {
        return Optional.ofNullable(type.cast(said.get(type)));
    }

    private static Optional<Word> find(String word) {
        return TYPES.stream().flatMap(type -> Word.find(type, word).stream()).map(Word.class::cast).findFirst();
    }

    private static List<String> known() {
        List<String> known = new ArrayList<>();
        TYPES.forEach(type -> known.addAll(Word.ids(type)));
        return known;
    }

    private static ProblemsException problem(String option, String text, String message, Optional<String> meant) {
        return new ProblemsException(Problem.of(option + " \"" + text + "\"", message, meant));
    }
}
