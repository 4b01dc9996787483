package camberwell.report;

import camberwell.advice.Predicted;
import camberwell.model.Prediction;
import camberwell.physics.AxleEnd;
import camberwell.physics.VehicleModel;
import camberwell.physics.Wheels;
import camberwell.units.Figures;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Symptom;

/** A prediction of the handling model in one line. */
final class PredictionText {

    /** Less is not worth the line, N. */
    private static final double LEAST_LOAD = 1;

    private PredictionText() {
    }

    static String line(Predicted predicted, Adjuster adjuster) {
        Prediction prediction = predicted.prediction();
        StringBuilder line = new StringBuilder(Figures.fill("at %s, %.0f km/h and %.2f g: %s; limit "
                + "balance %s %, understeer gradient %s °/g", Predicted.phase(prediction.phase()),
                3.6 * prediction.before().near().point().speed(),
                prediction.before().near().point().lateral() / VehicleModel.GRAVITY, verdict(predicted, adjuster),
                signed(100 * prediction.limitBalanceShift(), 1), signed(prediction.understeerGradientShift(), 2)));
        Wheels load = prediction.loadShift();
        if (Math.max(Math.abs(load.frontRight()), Math.abs(load.rearRight())) >= LEAST_LOAD) {
            line.append("; load on the outer tyres front ").append(signed(load.frontRight(), 0)).append(" N, rear ")
                    .append(signed(load.rearRight(), 0)).append(" N");
        }
        line.append("; scrub power front ").append(signed(prediction.scrubShift(AxleEnd.FRONT), 0))
                .append(" W, rear ").append(signed(prediction.scrubShift(AxleEnd.REAR), 0)).append(" W");
        // The drag of toe is told with its size.
        if (adjuster.adjustment() == Adjustment.WING) {
            line.append("; a wing's drag is not in the model");
        }
        prediction.lent().ifPresent(lent -> line.append("; with dimensions of a class, ").append(lent.by())
                .append(", where the car's file gives none: ").append(lent.list()));
        return line.toString();
    }

    private static String verdict(Predicted predicted, Adjuster adjuster) {
        String way = switch (predicted.prediction().way()) {
            case UNDERSTEER -> "towards understeer";
            case OVERSTEER -> "towards oversteer";
            case NEITHER -> "no shift worth the name";
            case UNCLEAR -> "no clear sign, one way near the limit and the other below it";
        };
        return predicted.agrees().map(agrees -> (agrees ? "helps against " : "does not help against ")
                + predicted.claimed().orElseThrow().symptom().spoken() + (byDrag(predicted, adjuster)
                ? " by its drag on the straight" : "") + (agrees ? ", as claimed; " : "; ") + way)
                .orElse(way);
    }

    /** Toe heats a tread by dragging it along the straight, whatever it saves of the sliding in the corner. */
    private static boolean byDrag(Predicted predicted, Adjuster adjuster) {
        Symptom claimed = predicted.claimed().orElseThrow().symptom();
        return adjuster.kind() == Adjuster.Kind.TOE && (claimed == Symptom.OVERHEATING || claimed == Symptom.GRAINING
                || claimed == Symptom.SLOW_WARM_UP);
    }

    /** With its sign, and none where it rounds to nothing. */
    static String signed(double number, int decimals) {
        String text = Figures.fixed(number, decimals);
        return text.startsWith("-") || text.chars().noneMatch(c -> c >= '1' && c <= '9') ? text : "+" + text;
    }
}
