package camberwell.advice;

import camberwell.fact.Caution;
import camberwell.fact.Conclusion;
import camberwell.fact.Finding;
import camberwell.fact.Premise;
import camberwell.fact.Reported;
import camberwell.run.Report;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How one complaint is answered: no complaint is passed over in silence.
 *
 * @param number of the complaint as it was written down, from 1
 * @param report the complaint
 * @param by {@code change front-toe toe-in}, {@code driving slow-in}, {@code withheld rear-springs softer},
 *     {@code conflict}, {@code caution check-for-damage}, {@code reading front-pressure-doubtful}, or {@value #NOTHING}
 *     alone
 */
public record Answer(int number, Report report, List<String> by) {

    /** Where nothing is known. */
    public static final String NOTHING = "nothing known";

    /** Whether nothing is known of it. */
    public boolean nothing() {
        return by.equals(List.of(NOTHING));
    }

    /** The answers of an advice, one a complaint, in the order in which they were written down. */
    static List<Answer> of(Advice advice, List<RankedChange> candidates, List<Caution> drawn) {
        List<Answer> answers = new ArrayList<>();
        List<Report> reports = advice.run().reports();
        for (int i = 0; i < reports.size(); i++) {
            answers.add(new Answer(i + 1, reports.get(i), List.copyOf(by(reports.get(i), advice, candidates, drawn))));
        }
        return List.copyOf(answers);
    }

    private static Set<String> by(Report report, Advice advice, List<RankedChange> candidates, List<Caution> drawn) {
        Set<String> by = new LinkedHashSet<>();
        for (RankedChange change : advice.changes()) {
            if (serves(change, report)) {
                by.add("change " + change.change().id());
            }
        }
        for (DrivingAdvice driving : advice.driving()) {
            if (rests(driving.reasons(), report)) {
                by.add("driving " + driving.note().name());
            }
        }
        for (RankedChange candidate : candidates) {
            if (serves(candidate, report) && advice.withheld().stream()
                    .anyMatch(withheld -> withheld.change().equals(candidate.change()))) {
                by.add("withheld " + candidate.change().id());
            }
        }
        for (Withheld withheld : advice.withheld()) {
            if (by.isEmpty() && rests(withheld.proposals(), report)) {
                by.add("withheld " + withheld.change().id());
            }
        }
        if (advice.conflicts().stream().anyMatch(conflict -> conflict.statement().contains(report.text()))) {
            by.add("conflict");
        }
        advice.halt().ifPresent(caution -> by.add("caution " + caution.name()));
        if (by.isEmpty()) {
            drawn.stream().filter(caution -> rests(List.of(caution), report) && advice.cautions().stream()
                    .anyMatch(note -> note.name().equals(caution.note())))
                    .forEach(caution -> by.add("caution " + caution.note()));
            doubted(report, advice).ifPresent(finding -> by.add("reading " + finding));
        }
        if (by.isEmpty()) {
            by.add(NOTHING);
        }
        return by;
    }

    /** Of a middle that is hot or cold while the gauge says otherwise: the finding that neither is trusted. */
    private static Optional<String> doubted(Report report, Advice advice) {
        boolean middle = report.symptom() == Symptom.HOT_MIDDLE || report.symptom() == Symptom.COLD_MIDDLE;
        return !middle ? Optional.empty() : report.where().map(place -> place.axle().id() + "-pressure-doubtful")
                .filter(name -> advice.findings().stream().anyMatch(finding -> finding.id().equals(name)));
    }

    private static boolean serves(RankedChange change, Report report) {
        return change.score().helps().stream()
                .anyMatch(help -> help.complaint().report().filter(said -> said.alike(report)).isPresent())
                || rests(change.proposals(), report);
    }

    private static boolean rests(Collection<? extends Conclusion> conclusions, Report report) {
        for (Conclusion conclusion : conclusions) {
            if (conclusion.certainty() > 0 && rest(conclusion.premises(), report)) {
                return true;
            }
        }
        return false;
    }

    private static boolean rest(List<Premise> premises, Report report) {
        for (Premise premise : premises) {
            if (premise instanceof Reported reported && reported.report().equals(report)
                    || premise instanceof Finding finding && rests(finding.evidence(), report)) {
                return true;
            }
        }
        return false;
    }
}
