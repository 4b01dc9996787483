package camberwell.report;

import camberwell.advice.Predicted;
import camberwell.model.Behaviour;
import camberwell.model.Characteristic;
import camberwell.model.Prediction;
import camberwell.physics.AxleEnd;
import camberwell.physics.CornerPhase;
import camberwell.physics.Equilibrium;
import camberwell.physics.NoEquilibrium;
import camberwell.physics.VehicleModel;
import camberwell.physics.Wheels;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** A prediction in full: every figure before and after the change, and the understeer characteristics. */
public final class PredictionReport {

    private static final int TABLE_WIDTH = 66;

    private final String car;
    private final String change;
    private final Prediction prediction;
    private final Characteristic before;
    private final Characteristic after;
    private final List<Row> rows = new ArrayList<>();

    private record Row(String id, String name, String unit, int decimals, double before, double after) {
    }

    /**
     * @param car the car's name
     * @param change the change in words, with both settings
     * @param prediction the prediction
     * @param before the characteristic of the car as it stands
     * @param after that of the car with the change made
     */
    public PredictionReport(String car, String change, Prediction prediction, Characteristic before,
            Characteristic after) {
        this.car = car;
        this.change = change;
        this.prediction = prediction;
        this.before = before;
        this.after = after;
        rows.add(new Row("cornering-limit", "cornering limit", "g", 3, before.limit().lateral() / VehicleModel.GRAVITY,
                after.limit().lateral() / VehicleModel.GRAVITY));
        row("limit-balance", "limit balance, + front first", "%", 2, behaviour -> 100 * behaviour.limitBalance());
        row("understeer-gradient", "understeer gradient", "deg/g", 3, Behaviour::understeerGradient);
        state("static-margin", "static margin", "%", 1, state -> 100 * state.staticMargin());
        state("steer-angle", "steer angle, front wheels", "deg", 2, state -> Math.toDegrees(state.steer()));
        state("sideslip-angle", "sideslip angle", "deg", 2, state -> Math.toDegrees(state.sideslip()));
        state("roll-angle", "roll angle", "deg", 2, state -> Math.toDegrees(state.roll()));
        state("slip-angle-front", "slip angle, front", "deg", 2, state -> slip(state.slip(), AxleEnd.FRONT));
        state("slip-angle-rear", "slip angle, rear", "deg", 2, state -> slip(state.slip(), AxleEnd.REAR));
        state("margin-front", "grip left, front", "%", 1, state -> 100 * state.margin(AxleEnd.FRONT));
        state("margin-rear", "grip left, rear", "%", 1, state -> 100 * state.margin(AxleEnd.REAR));
        state("load-front-inner", "load, front inner", "N", 0, state -> state.load().frontLeft());
        state("load-front-outer", "load, front outer", "N", 0, state -> state.load().frontRight());
        state("load-rear-inner", "load, rear inner", "N", 0, state -> state.load().rearLeft());
        state("load-rear-outer", "load, rear outer", "N", 0, state -> state.load().rearRight());
        state("camber-front-outer", "camber to road, front outer", "deg", 2,
                state -> Math.toDegrees(state.camber().frontRight()));
        state("camber-rear-outer", "camber to road, rear outer", "deg", 2,
                state -> Math.toDegrees(state.camber().rearRight()));
        state("scrub-power-front", "scrub power, front", "W", 0, state -> state.scrubPower().sum(AxleEnd.FRONT));
        state("scrub-power-rear", "scrub power, rear", "W", 0, state -> state.scrubPower().sum(AxleEnd.REAR));
        state("toe-drag", "toe drag on the straight", "N", 1, Equilibrium::toeDrag);
    }

    private void row(String id, String name, String unit, int decimals, ToDoubleFunction<Behaviour> figure) {
        rows.add(new Row(id, name, unit, decimals, figure.applyAsDouble(prediction.before()),
                figure.applyAsDouble(prediction.after())));
    }

    private void state(String id, String name, String unit, int decimals, ToDoubleFunction<Equilibrium> figure) {
        row(id, name, unit, decimals, behaviour -> figure.applyAsDouble(behaviour.near()));
    }

    private static double slip(Wheels slip, AxleEnd end) {
        return Math.toDegrees(slip.sum(end) / 2);
    }

    /** Writes it for a screen of that width. */
    public void write(Page page, int width) {
        Equilibrium near = prediction.before().near();
        page.heading(car + ": " + change);
        page.paragraph(0, String.format(Locale.ROOT, "In a left turn at %s, %.0f km/h and %.2f g (radius %.0f m), with "
                + "%.2f g along the car.", Predicted.phase(prediction.phase()), 3.6 * near.point().speed(),
                near.point().lateral() / VehicleModel.GRAVITY, near.point().radius(),
                near.point().longitudinal() / VehicleModel.GRAVITY));
        page.paragraph(0, "Settled: this is how the car stays as long as nothing changes"
                + (prediction.phase() == CornerPhase.LIFT_OFF ? ", the throttle closed for good. What it does in the moment of "
                + "the lift stands in the next table." : "."));
        prediction.lent().ifPresent(lent -> page.paragraph(0, "With dimensions of a class, " + lent.by()
                + ", where the car's file gives none: " + lent.list() + "."));
        page.blank();
        boolean narrow = width < TABLE_WIDTH;
        if (!narrow) {
            page.verbatim(String.format(Locale.ROOT, "%-28s %9s %9s %9s", "", "before", "after", "change"));
        }
        for (Row row : rows) {
            String number = "%." + row.decimals() + "f";
            String from = unsigned(String.format(Locale.ROOT, number, row.before()));
            String to = unsigned(String.format(Locale.ROOT, number, row.after()));
            String shift = PredictionText.signed(row.after() - row.before(), row.decimals());
            if (narrow) {
                page.paragraph(0, row.name() + ": " + from + ", then " + to + " " + row.unit() + " (" + shift
                        + ")");
            } else {
                page.verbatim(String.format(Locale.ROOT, "%-28s %9s %9s %9s %s", row.name(), from, to, shift,
                        row.unit()));
            }
        }
        page.blank();
        page.paragraph(0, switch (prediction.way()) {
            case UNDERSTEER -> "The balance goes towards understeer.";
            case OVERSTEER -> "The balance goes towards oversteer.";
            case NEITHER -> "The balance stays as it is.";
            case UNCLEAR -> "The balance goes one way near the limit and the other way below it.";
        } + " At the limit " + end(before.limit().reason()) + (before.limit().reason() == after.limit().reason()
                ? ", before the change and after it." : " now, and " + end(after.limit().reason())
                + " after the change."));
        page.blank();
        new CharacteristicPlot(before, after).draw(page, width);
    }

    private static String unsigned(String number) {
        return number.matches("-0(\\.0+)?") ? number.substring(1) : number;
    }

    private static String end(NoEquilibrium.Reason reason) {
        return switch (reason) {
            case FRONT_GRIP -> "the front tyres give up first";
            case REAR_GRIP -> "the rear tyres give up first";
            case FRONT_TRACTION -> "a front wheel spins first";
            case REAR_TRACTION -> "a rear wheel spins first";
            case BRAKING -> "the brakes ask for more than the tyres have";
            case ROLLOVER -> "both inner wheels leave the ground";
            case TURN_TOO_TIGHT -> "the turn is too tight to steer";
            case NOT_SETTLED -> "the model finds no settled state";
        };
    }

    /** The drawing of the characteristics as a whole SVG file. */
    public String svg() {
        return new CharacteristicPlot(before, after).svg(car + ": " + change);
    }

    /** What it tells of. */
    public Prediction prediction() {
        return prediction;
    }

    /** Speed of the corner, m/s. */
    public double speed() {
        return prediction.before().near().point().speed();
    }

    /** Writes its fields into an object that is open. */
    public void fields(JsonGenerator json) throws IOException {
        PredictionJson.fields(prediction, json);
        json.writeArrayFieldStart("figures");
        for (Row row : rows) {
            json.writeStartObject();
            json.writeStringField("id", row.id());
            json.writeStringField("unit", row.unit());
            PredictionJson.number(json, "before", row.before(), row.decimals());
            PredictionJson.number(json, "after", row.after(), row.decimals());
            json.writeEndObject();
        }
        json.writeEndArray();
        curve(json, "characteristic-before", before);
        curve(json, "characteristic-after", after);
    }

    private static void curve(JsonGenerator json, String key, Characteristic curve) throws IOException {
        json.writeArrayFieldStart(key);
        for (Characteristic.Point point : curve.points()) {
            json.writeStartObject();
            PredictionJson.number(json, "lateral-acceleration-g", point.lateral() / VehicleModel.GRAVITY, 4);
            PredictionJson.number(json, "steer-deg", Math.toDegrees(point.steer()), 3);
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
