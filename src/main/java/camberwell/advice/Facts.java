package camberwell.advice;

import camberwell.fact.Day;
import camberwell.fact.Premise;
import camberwell.fact.Reported;
import camberwell.fact.Setup;
import camberwell.reading.TyreReadings;
import camberwell.run.Case;
import camberwell.run.Report;
import java.util.ArrayList;
import java.util.List;

/** Turns a case into what the rules reason from. */
public final class Facts {

    private Facts() {
    }

    /** Every premise of {@code run}: the car, the day, what the tyres show and what was reported. */
    public static List<Premise> of(Case run, TyreReadings tyres, Weights weights) {
        List<Premise> premises = new ArrayList<>();
        premises.add(new Setup(run.car()));
        premises.add(new Day(run.conditions()));
        premises.addAll(tyres.readings());
        run.reports().forEach(report -> premises.add(reported(report, weights)));
        return premises;
    }

    /** A complaint is as certain as it is regular. */
    public static Reported reported(Report report, Weights weights) {
        return new Reported(report, weights.occurrence().get(report.occurrence()));
    }
}
