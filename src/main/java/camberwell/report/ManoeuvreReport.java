package camberwell.report;

import camberwell.model.ProvingGround.Exercise;
import camberwell.physics.VehicleModel;
import camberwell.physics.motion.Channel;
import camberwell.physics.motion.History;
import camberwell.physics.motion.Measures;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;

/** One manoeuvre before a change and after it: its measures, and its course over time. */
public final class ManoeuvreReport {

    private final String title;
    private final Exercise exercise;
    private final History before;
    private final History after;
    private final double radius;
    private final CurvePlot plot;
    private final List<Measure> measures = new ArrayList<>();

    private record Measure(String id, String name, String unit, int decimals, double before, double after) {
    }

    /**
     * @param title the car's name and the change in words
     * @param exercise what was done
     * @param before the run of the car as it stands
     * @param after the run of the car with the change made
     * @param radius of the turn, m, where it was done in one
     */
    public ManoeuvreReport(String title, Exercise exercise, History before, History after, double radius) {
        this.title = title;
        this.exercise = exercise;
        this.before = before;
        this.after = after;
        this.radius = radius;
        this.plot = plot();
        measure();
    }

    private Channel drawn() {
        return switch (exercise) {
            case CORNER, LIFT_OFF -> Channel.UNDERSTEER;
            case KERB, BUMPS -> Channel.LOAD_FRONT_LEFT;
            default -> Channel.YAW_RATE;
        };
    }

    private CurvePlot plot() {
        Channel channel = drawn();
        boolean load = channel == Channel.LOAD_FRONT_LEFT;
        String name = load ? "Load of the front left tyre, kN" : channel == Channel.UNDERSTEER
                ? "Steer beyond the turn, degrees" : "Yaw rate, degrees a second";
        double[] was = scaled(before, channel, load);
        double[] is = scaled(after, channel, load);
        double least = DoubleStream.concat(Arrays.stream(was), Arrays.stream(is)).min().orElse(0);
        double most = DoubleStream.concat(Arrays.stream(was), Arrays.stream(is)).max().orElse(1);
        // From zero, unless the whole course lies far above it.
        double from = least > most / 2 ? Math.floor(least) - 1 : Math.min(0, Math.floor(least));
        double to = Math.max(from + 1, Math.ceil(most));
        double first = Math.max(0, before.at(Channel.TIME, 0));
        double last = Math.max(before.at(Channel.TIME, before.size() - 1), after.at(Channel.TIME, after.size() - 1));
        return new CurvePlot("time, s", name, new CurvePlot.Span(first, last), new CurvePlot.Span(from, to), List.of(
                new CurvePlot.Curve("before (solid)", 'o', "before", before.of(Channel.TIME), was),
                new CurvePlot.Curve("after (dashed)", 'x', "after", after.of(Channel.TIME), is)));
    }

    private static double[] scaled(History run, Channel channel, boolean load) {
        return Arrays.stream(run.of(channel)).map(value -> load ? value / 1000 : Math.toDegrees(value)).toArray();
    }

    private void measure() {
        switch (exercise) {
            case STEP_STEER -> {
                Measures.StepResponse was = Measures.stepResponse(before, Channel.YAW_RATE);
                Measures.StepResponse is = Measures.stepResponse(after, Channel.YAW_RATE);
                add("response-time", "response time of the yaw rate", "s", 3, was.response(), is.response());
                add("peak-response-time", "peak response time", "s", 3, was.peak(), is.peak());
                add("overshoot", "overshoot", "%", 1, 100 * was.overshoot(), 100 * is.overshoot());
                add("steady-yaw-rate", "yaw rate it settles at", "deg/s", 2, Math.toDegrees(was.steady()),
                        Math.toDegrees(is.steady()));
            }
            case BRAKING_IN_A_TURN, POWER_OFF, POWER_ON, LIFT_OFF -> {
                Measures.Deviation was = Measures.deviation(before, radius, 1);
                Measures.Deviation is = Measures.deviation(after, radius, 1);
                add("deceleration", "mean deceleration", "m/s2", 2, was.deceleration(), is.deceleration());
                add("yaw-rate-ratio", "yaw rate after 1 s, of the course's", "", 3, was.yaw(), is.yaw());
                add("sideslip-change", "sideslip after 1 s, less that at first", "deg", 2,
                        Math.toDegrees(was.sideslip()), Math.toDegrees(is.sideslip()));
                add("inside", "inside the old course after 1 s", "m", 2, was.inside(), is.inside());
            }
            default -> {
                add("least-load", "least load of a tyre", "N", 0, least(before), least(after));
                add("thrown-up", "greatest vertical acceleration", "m/s2", 2, most(before, Channel.VERTICAL),
                        most(after, Channel.VERTICAL));
            }
        }
        add("front-saturation", "front slip, of that at the peak, most", "%", 1,
                100 * most(before, Channel.FRONT_SATURATION), 100 * most(after, Channel.FRONT_SATURATION));
        add("rear-saturation", "rear slip, of that at the peak, most", "%", 1,
                100 * most(before, Channel.REAR_SATURATION), 100 * most(after, Channel.REAR_SATURATION));
        add("spinning", "slip of the driven wheels, of that at the peak", "%", 1,
                100 * most(before, Channel.SPINNING), 100 * most(after, Channel.SPINNING));
    }

    private void add(String id, String name, String unit, int decimals, double was, double is) {
        measures.add(new Measure(id, name, unit, decimals, was, is));
    }

    private static double most(History run, Channel channel) {
        return Arrays.stream(run.of(channel)).max().orElse(0);
    }

    private static double least(History run) {
        double least = Double.POSITIVE_INFINITY;
        for (int wheel = 0; wheel < 4; wheel++) {
            least = Math.min(least, Arrays.stream(run.of(Channel.load(wheel))).min().orElse(0));
        }
        return least;
    }

    /** Writes it for a screen of that width. */
    public void write(Page page, int width) {
        page.heading(title);
        for (Measure measure : measures) {
            String number = "%." + measure.decimals() + "f";
            page.paragraph(0, measure.name() + ": " + String.format(Locale.ROOT, number, measure.before()) + ", then "
                    + String.format(Locale.ROOT, number, measure.after())
                    + (measure.unit().isEmpty() ? "" : " " + measure.unit()) + " ("
                    + PredictionText.signed(measure.after() - measure.before(), measure.decimals()) + ")");
        }
        lost(page, "The car as it stands", before);
        lost(page, "With the change made the car", after);
        page.blank();
        plot.draw(page, width, 1);
        page.paragraph(0, "o before, x after, * both");
    }

    private static void lost(Page page, String who, History run) {
        if (run.lost()) {
            page.paragraph(0, String.format(Locale.ROOT, "%s is lost after %.1f s.", who,
                    run.at(Channel.TIME, run.size() - 1)));
        }
    }

    /** The drawing as a whole SVG file. */
    public String svg() {
        return plot.svg(title);
    }

    /** Writes it as one object. */
    public void write(JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("title", title);
        json.writeStringField("manoeuvre", exercise.id());
        json.writeArrayFieldStart("measures");
        for (Measure measure : measures) {
            json.writeStartObject();
            json.writeStringField("id", measure.id());
            json.writeStringField("unit", measure.unit());
            PredictionJson.number(json, "before", measure.before(), measure.decimals());
            PredictionJson.number(json, "after", measure.after(), measure.decimals());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeBooleanField("lost-before", before.lost());
        json.writeBooleanField("lost-after", after.lost());
        curve(json, "history-before", before);
        curve(json, "history-after", after);
        json.writeEndObject();
    }

    private static void curve(JsonGenerator json, String key, History run) throws IOException {
        json.writeArrayFieldStart(key);
        for (int i = 0; i < run.size(); i += 10) {
            json.writeStartObject();
            PredictionJson.number(json, "time-s", run.at(Channel.TIME, i), 3);
            PredictionJson.number(json, "yaw-rate-deg-per-s", Math.toDegrees(run.at(Channel.YAW_RATE, i)), 3);
            PredictionJson.number(json, "lateral-acceleration-g", run.at(Channel.LATERAL, i) / VehicleModel.GRAVITY, 4);
            PredictionJson.number(json, "steer-deg", Math.toDegrees(run.at(Channel.STEER, i)), 3);
            PredictionJson.number(json, "sideslip-deg", Math.toDegrees(run.at(Channel.SIDESLIP, i)), 3);
            PredictionJson.number(json, "front-left-load-n", run.at(Channel.LOAD_FRONT_LEFT, i), 1);
            PredictionJson.number(json, "speed-kmh", 3.6 * run.at(Channel.SPEED, i), 2);
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
