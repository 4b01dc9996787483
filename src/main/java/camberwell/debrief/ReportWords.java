package camberwell.debrief;

import camberwell.run.Report;
import camberwell.vocabulary.CornerKind;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Words that narrow a complaint, put into its report. */
final class ReportWords {

    private ReportWords() {
    }

    /** What words answer that are said of a complaint. */
    static Set<Field> fields(List<Word> words) {
        Set<Field> fields = EnumSet.noneOf(Field.class);
        words.forEach(word -> fields.add(Field.telling(word)));
        return fields;
    }

    /** A report with these words said of it; what a log showed of it stays. */
    static Report detailed(Report report, List<Word> words) {
        Report detailed = report;
        for (Word word : words) {
            Optional<CornerKind> corner = detailed.corner();
            Report more = detailed(detailed, word);
            detailed = word instanceof CornerKind ? more : corner.map(more::withCorner).orElse(more);
        }
        return report.measured().map(detailed::withMeasured).orElse(detailed);
    }

    private static Report detailed(Report it, Word word) {
        return switch (Field.telling(word)) {
            case PHASE -> new Report(it.symptom(), it.where(), Optional.of((Phase) word), it.speed(), it.severity(),
                    it.occurrence(), it.since(), it.turn());
            case SPEED -> new Report(it.symptom(), it.where(), it.phase(), Optional.of((CornerSpeed) word),
                    it.severity(), it.occurrence(), it.since(), it.turn());
            case WHERE -> new Report(it.symptom(), Optional.of((Place) word), it.phase(), it.speed(), it.severity(),
                    it.occurrence(), it.since(), it.turn());
            case SINCE -> new Report(it.symptom(), it.where(), it.phase(), it.speed(), it.severity(),
                    it.occurrence(), Optional.of((Since) word), it.turn());
            case SEVERITY -> new Report(it.symptom(), it.where(), it.phase(), it.speed(), (Severity) word,
                    it.occurrence(), it.since(), it.turn());
            case OCCURRENCE -> new Report(it.symptom(), it.where(), it.phase(), it.speed(), it.severity(),
                    (Occurrence) word, it.since(), it.turn());
            case TURN -> new Report(it.symptom(), it.where(), it.phase(), it.speed(), it.severity(),
                    it.occurrence(), it.since(), Optional.of((Turn) word));
            case CORNER -> it.withCorner((CornerKind) word);
            default -> throw new IllegalArgumentException(word.id() + " is not told of a complaint");
        };
    }
}
