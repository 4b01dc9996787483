package camberwell.input;

import camberwell.run.Measured;
import camberwell.run.Report;
import camberwell.vocabulary.CornerKind;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.yaml.Fields;
import java.util.Optional;

/** Reads one entry of {@code reports} of a case. */
final class ReportReader {

    /** Where a symptom comes from that is not known. */
    static final String A_PACKS = "a pack's own word wants its pack: --rules DIR";

    private ReportReader() {
    }

    /** A report; empty, with the problems noted, when it does not say of what. */
    static Optional<Report> read(Fields fields) {
        fields.require("symptom");
        Optional<Symptom> symptom = fields.word("symptom", Symptom.class, A_PACKS);
        Optional<Place> where = fields.word("where", Place.class);
        Optional<Phase> phase = fields.word("phase", Phase.class);
        Optional<CornerSpeed> speed = fields.word("speed", CornerSpeed.class);
        Severity severity = fields.word("severity", Severity.class).orElse(Severity.CLEAR);
        Occurrence occurrence = fields.word("occurrence", Occurrence.class).orElse(Occurrence.EVERY_LAP);
        Optional<Since> since = fields.word("since", Since.class);
        Optional<Turn> turn = fields.word("turn", Turn.class);
        Optional<CornerKind> corner = fields.word("corner", CornerKind.class);
        Optional<Measured> measured = MeasuredReader.read(fields);
        fields.done();
        return symptom.isEmpty() ? Optional.empty() : Optional.of(new Report(symptom.get(), where, phase, speed, severity,
                occurrence, since, turn, measured, corner));
    }
}
