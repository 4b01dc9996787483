package camberwell.advice;

import camberwell.fact.Finding;
import camberwell.knowledge.Circumstances;
import camberwell.knowledge.Note;
import camberwell.reading.TyreReadings;
import camberwell.run.Case;
import java.util.List;
import java.util.Optional;

/**
 * The advice on one case.
 *
 * @param run the case
 * @param tyres what the tyres show
 * @param complaints what is to be relieved
 * @param findings what is likely, most certain first
 * @param changes best first
 * @param withheld proposed, and not advised all the same
 * @param conflicts complaints that ask for opposite things
 * @param driving for the driver, most certain first
 * @param drivingFirst whether the driver should try something before the car is changed
 * @param cautions once each: first one that halts, then those that go with changes, then those of the case
 * @param halt the caution before which nothing else is done, where there is one
 * @param answers how each complaint is answered
 * @param doubts where the readings, or the car's own figures, contradict each other
 * @param circumstances of the case, which choose among the wordings of a note
 * @param predictions what the handling model says of the changes, when it is asked
 * @param experience what came of earlier changes
 */
public record Advice(Case run, TyreReadings tyres, List<Complaint> complaints, List<Finding> findings,
        List<RankedChange> changes, List<Withheld> withheld, List<Conflict> conflicts, List<DrivingAdvice> driving,
        boolean drivingFirst, List<Note> cautions, Optional<Note> halt, List<Answer> answers,
        List<String> doubts, Circumstances circumstances, Predictions predictions, Experience experience) {

    /** The same advice with its answers. */
    Advice withAnswers(List<Answer> answered) {
        return new Advice(run, tyres, complaints, findings, changes, withheld, conflicts, driving, drivingFirst, cautions,
                halt, answered, doubts, circumstances, predictions, experience);
    }

    /** The same advice on a case by another name. */
    public Advice withSource(String source) {
        return new Advice(run.withSource(source), tyres, complaints, findings, changes, withheld, conflicts, driving,
                drivingFirst, cautions, halt, answers, doubts, circumstances, predictions, experience);
    }
}
