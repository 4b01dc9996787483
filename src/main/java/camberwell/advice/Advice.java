package camberwell.advice;

import camberwell.fact.Finding;
import camberwell.knowledge.Circumstances;
import camberwell.knowledge.Note;
import camberwell.reading.TyreReadings;
import camberwell.run.Case;
import java.util.List;

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
 * @param cautions once each, the general ones first
 * @param circumstances of the case, which choose among the wordings of a note
 * @param predictions what the handling model says of the changes, when it is asked
 * @param experience what came of earlier changes
 */
public record Advice(Case run, TyreReadings tyres, List<Complaint> complaints, List<Finding> findings,
        List<RankedChange> changes, List<Withheld> withheld, List<Conflict> conflicts, List<DrivingAdvice> driving,
        boolean drivingFirst, List<Note> cautions, Circumstances circumstances, Predictions predictions,
        Experience experience) {

    /** The same advice on a case by another name. */
    public Advice withSource(String source) {
        return new Advice(run.withSource(source), tyres, complaints, findings, changes, withheld, conflicts, driving,
                drivingFirst, cautions, circumstances, predictions, experience);
    }
}
