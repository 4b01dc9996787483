package camberwell.advice;

import camberwell.fact.Certainty;
import camberwell.fact.Day;
import camberwell.fact.Outing;
import camberwell.fact.Premise;
import camberwell.fact.Reported;
import camberwell.fact.Setup;
import camberwell.reading.CamberByWheel;
import camberwell.reading.TyreReadings;
import camberwell.run.Case;
import camberwell.run.Report;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Turns a case into what the rules reason from. */
public final class Facts {

    private Facts() {
    }

    /** Every premise of {@code run}: the car, the day, what the tyres show and what was reported. */
    public static List<Premise> of(Case run, TyreReadings tyres, Weights weights) {
        List<Premise> premises = new ArrayList<>();
        premises.add(new Setup(CamberByWheel.judged(run).car()));
        premises.add(new Day(run.conditions(), weights.thresholds()));
        premises.add(new Outing(run, weights.thresholds()));
        premises.addAll(tyres.readings());
        for (Report report : run.reports()) {
            Reported reported = reported(report, run.reports(), weights);
            premises.add(reported);
            if (report.meansBothAxles()) {
                for (Axle axle : Axle.values()) {
                    premises.add(new Reported(report, reported.certainty(), Optional.of(Word.of(Place.class, axle.id()))));
                }
            }
        }
        return premises;
    }

    /**
     * A complaint is as certain as it is regular, one that was measured as certain as the log makes it. Driver and log are
     * two witnesses: where both speak of the same thing, their certainties are combined.
     *
     * @param all the complaints of the case
     */
    public static Reported reported(Report report, List<Report> all, Weights weights) {
        double other = 0;
        for (Report witness : all) {
            if (witness.measured().isPresent() != report.measured().isPresent() && witness.alike(report)) {
                other = Math.max(other, own(witness, weights));
            }
        }
        return new Reported(report, Certainty.combine(own(report, weights), other));
    }

    private static double own(Report report, Weights weights) {
        return report.measured().isPresent() ? report.measured().get().certainty()
                : weights.occurrence().get(report.occurrence());
    }
}
