package camberwell.report;

import camberwell.advice.Predicted;
import camberwell.model.CarModel;
import camberwell.model.Figures;
import camberwell.model.Prediction;
import camberwell.model.ProvingGround;
import camberwell.vocabulary.Phase;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a change does phase by phase, by the car in motion: driven round the same corner before and after it. */
public final class PhasesReport {

    private static final List<Phase> PHASES = List.of(Phase.BRAKING, Phase.ENTRY, Phase.LIFT_OFF, Phase.MID_CORNER,
            Phase.EXIT, Phase.KERBS);
    private static final double LEAST = 0.005;
    private static final int TABLE_WIDTH = 80;

    private final double speed;
    private final List<Row> rows;
    private final Optional<Prediction> steady;

    private record Row(Phase phase, Figures before, Figures after) {

        private double understeer() {
            return after.understeer() - before.understeer();
        }
    }

    /**
     * @param track where the car as it stands is driven
     * @param changed the car with the change made
     * @param speed m/s
     * @param steady what was told before of a steady corner, where that shows the change
     */
    public PhasesReport(ProvingGround track, CarModel changed, double speed, Optional<Prediction> steady) {
        this.speed = speed;
        this.steady = steady;
        this.rows = PHASES.stream().flatMap(phase -> row(track, changed, phase, speed).stream()).toList();
    }

    private static Optional<Row> row(ProvingGround track, CarModel changed, Phase phase, double speed) {
        Optional<Figures> before = track.figures(track.car(), phase, speed);
        Optional<Figures> after = track.figures(changed, phase, speed);
        return before.isPresent() && after.isPresent()
                ? Optional.of(new Row(phase, before.get(), after.get())) : Optional.empty();
    }

    /** Writes it for a screen of that width. */
    public void write(Page page, int width) {
        page.heading(String.format(Locale.ROOT, "Driven through a corner at %.0f km/h, phase by phase", 3.6 * speed));
        page.paragraph(0, "Not settled: the mean of each part of the corner, while speed and load change; of the lift the first "
                + "second.");
        boolean narrow = width < TABLE_WIDTH;
        if (!narrow) {
            page.verbatim("             steer beyond    slip, of that at the tyre's peak");
            page.verbatim("             the turn, deg   front, %        rear, %");
        }
        for (Row row : rows) {
            boolean brakes = row.phase() == Phase.BRAKING;
            String steer = pair(row.before().understeer(), row.after().understeer(), 2);
            String front = pair(100 * use(row.before(), brakes, true), 100 * use(row.after(), brakes, true), 1);
            String rear = pair(100 * use(row.before(), brakes, false), 100 * use(row.after(), brakes, false), 1);
            if (narrow) {
                page.paragraph(0, row.phase().id() + ": steer beyond the turn " + steer.strip() + " deg; slip front "
                        + front.strip() + " %, rear " + rear.strip() + " %" + (brakes ? "" : "; " + way(row)));
            } else {
                page.verbatim(String.format(Locale.ROOT, "%-12s %-15s %-15s %-15s %s", row.phase().id(),
                        brakes ? "" : steer, front, rear, brakes ? "" : way(row)).stripTrailing());
            }
        }
        steady.ifPresent(prediction -> rows.stream().filter(row -> opposes(row, prediction))
                .forEach(row -> page.paragraph(0, differs(prediction, row.phase()))));
        kerbs(page);
    }

    private static boolean opposes(Row row, Prediction prediction) {
        return row.phase().name().equals(prediction.phase().name())
                && (prediction.way() == Prediction.Way.UNDERSTEER && row.understeer() < -LEAST
                || prediction.way() == Prediction.Way.OVERSTEER && row.understeer() > LEAST);
    }

    /** Why the settled turn and the driven corner may well go two ways. */
    private static String differs(Prediction prediction, Phase phase) {
        String both = "The two tables differ at " + Predicted.phase(prediction.phase()) + ". The steady corner is a turn near "
                + "the limit that has settled. ";
        return phase == Phase.LIFT_OFF ? both + "The driven one is the first second after the throttle closes, while load comes "
                + "forward and the nose comes in: a car that needed more lock in the turn comes in by more, whatever it does in "
                + "the end. How it ends shows --manoeuvre lift-off."
                : both + "The driven one is the mean of that part of the corner, further from the limit, while speed and load "
                + "still change. Go by the first for what the car does on the edge, by the second for how it feels below it.";
    }

    private void kerbs(Page page) {
        rows.stream().filter(row -> row.phase() == Phase.KERBS).forEach(row -> page.paragraph(0, String.format(
                Locale.ROOT, "Over a kerb under the inner wheels the body is thrown up with %.2f m/s² (%s), and the "
                + "loads of the tyres vary by %.1f %% of what they carry at rest (%s).", row.before().thrown(),
                PredictionText.signed(row.after().thrown() - row.before().thrown(), 2), 100 * row.before().swing(),
                PredictionText.signed(100 * (row.after().swing() - row.before().swing()), 2))));
    }

    private static double use(Figures figures, boolean brakes, boolean front) {
        return brakes ? front ? figures.frontLocking() : figures.rearLocking()
                : front ? figures.frontUse() : figures.rearUse();
    }

    private static String pair(double before, double after, int decimals) {
        return String.format(Locale.ROOT, "%6." + decimals + "f", before) + "  "
                + PredictionText.signed(after - before, decimals);
    }

    private static String way(Row row) {
        return row.after().lost() && !row.before().lost() ? "lost"
                : row.understeer() > LEAST ? "towards understeer"
                : row.understeer() < -LEAST ? "towards oversteer" : "as it is";
    }

    /** Writes it as an array, one object a phase. */
    public void write(JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("phases");
        for (Row row : rows) {
            json.writeStartObject();
            json.writeStringField("phase", row.phase().id());
            PredictionJson.number(json, "speed-kmh", 3.6 * speed, 1);
            figure(json, "steer-beyond-the-turn", "deg", row.before().understeer(), row.after().understeer(), 3);
            figure(json, "front-slip-of-peak", "percent", 100 * row.before().frontUse(),
                    100 * row.after().frontUse(), 2);
            figure(json, "rear-slip-of-peak", "percent", 100 * row.before().rearUse(), 100 * row.after().rearUse(), 2);
            figure(json, "front-braking-slip-of-peak", "percent", 100 * row.before().frontLocking(),
                    100 * row.after().frontLocking(), 2);
            figure(json, "rear-braking-slip-of-peak", "percent", 100 * row.before().rearLocking(),
                    100 * row.after().rearLocking(), 2);
            figure(json, "driven-slip-of-peak", "percent", 100 * row.before().spinning(),
                    100 * row.after().spinning(), 2);
            figure(json, "load-variation", "percent", 100 * row.before().swing(), 100 * row.after().swing(), 2);
            figure(json, "thrown-up", "m/s2", row.before().thrown(), row.after().thrown(), 3);
            figure(json, "steering-work", "deg", row.before().work(), row.after().work(), 3);
            json.writeBooleanField("lost", row.after().lost());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void figure(JsonGenerator json, String key, String unit, double before, double after, int decimals)
            throws IOException {
        json.writeObjectFieldStart(key);
        json.writeStringField("unit", unit);
        PredictionJson.number(json, "before", before, decimals);
        PredictionJson.number(json, "after", after, decimals);
        json.writeEndObject();
    }
}
