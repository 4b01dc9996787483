package camberwell.sheet;

import camberwell.drawing.Scale;
import camberwell.drawing.Svg;
import camberwell.model.CarModel;
import camberwell.model.ProvingGround.Exercise;
import camberwell.model.ProvingGround;
import camberwell.physics.motion.Channel;
import camberwell.physics.motion.History;
import camberwell.units.Figures;
import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;

/**
 * What the transient model says of a change: the answer of the car over time, before and after, in the manoeuvre in which
 * the change acts most. The wheel is held in all of them, so that both courses are answers to the same.
 */
final class MotionFigure {

    private static final double WIDTH = 340;
    private static final double HEIGHT = 222;
    private static final double LEFT = 40;
    private static final double RIGHT = 328;
    private static final double TOP = 20;
    private static final double BOTTOM = 166;
    /** Every so many moments of a run are drawn. */
    private static final int EVERY = 10;

    private final Exercise exercise;
    private final History before;
    private final History after;
    private final int most;

    private MotionFigure(Exercise exercise, History before, History after) {
        this.exercise = exercise;
        this.before = before;
        this.after = after;
        this.most = most();
    }

    /**
     * The drawing.
     *
     * @param after the car with the change made
     * @param speed m/s
     */
    static DomContent of(String id, ProvingGround track, CarModel after, double speed) {
        MotionFigure best = null;
        for (Exercise exercise : List.of(Exercise.STEP_STEER, Exercise.BRAKING_IN_A_TURN, Exercise.POWER_OFF,
                Exercise.POWER_ON, Exercise.KERB, Exercise.BUMPS)) {
            MotionFigure figure = new MotionFigure(exercise, track.drive(track.car(), exercise, speed),
                    track.drive(after, exercise, speed));
            best = best == null || figure.tells() > best.tells() ? figure : best;
        }
        return best.drawing(id, speed);
    }

    private boolean load() {
        return exercise == Exercise.KERB || exercise == Exercise.BUMPS;
    }

    /** Yaw rate in degrees a second; over kerbs and bumps the load of the front left tyre in kN. */
    private double value(History run, int moment) {
        return load() ? run.at(Channel.LOAD_FRONT_LEFT, moment) / 1000 : Math.toDegrees(run.at(Channel.YAW_RATE, moment));
    }

    private int size() {
        return Math.min(before.size(), after.size());
    }

    /** The moment at which both lie farthest apart. */
    private int most() {
        int most = 0;
        for (int i = 0; i < size(); i += EVERY) {
            most = apart(i) > apart(most) ? i : most;
        }
        return most;
    }

    private double apart(int moment) {
        return Math.abs(value(after, moment) - value(before, moment));
    }

    /** That distance as a part of all that the car as it stands goes through. */
    private double acts() {
        return apart(most) / Math.max(1e-9, extreme(before, 1) - extreme(before, -1));
    }

    /** The same, where both cars stay on the road: what a spin does afterwards is nobody's answer. */
    private double tells() {
        return before.lost() || after.lost() ? acts() - 1e6 : acts();
    }

    private double extreme(History run, int sign) {
        double extreme = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < run.size(); i += EVERY) {
            extreme = Math.max(extreme, sign * value(run, i));
        }
        return sign * extreme;
    }

    private DomContent drawing(String id, double speed) {
        double low = Math.min(extreme(before, -1), extreme(after, -1));
        double high = Math.max(extreme(before, 1), extreme(after, 1));
        // From zero, unless the whole course lies far above it; a rough road for a second around the place that shows most.
        double from = low > high / 2 ? low - 0.05 * (high - low) : Math.min(0, low);
        double begins = Math.max(0, before.at(Channel.TIME, 0));
        double ends = before.at(Channel.TIME, size() - 1);
        double first = load() ? Math.max(begins, before.at(Channel.TIME, most) - 0.5) : begins;
        Scale time = new Scale(first, load() ? Math.min(ends, first + 1) : ends, LEFT, RIGHT);
        Scale up = new Scale(from, high + 0.05 * (high - from) + 1e-6, BOTTOM, TOP);
        List<DomContent> parts = new ArrayList<>();
        for (double mark : time.marks(5)) {
            parts.add(Svg.line("grid", time.at(mark), TOP, time.at(mark), BOTTOM));
            parts.add(Svg.text("mark", time.at(mark), BOTTOM + 15, "middle", Figures.fixed(mark, 1)));
        }
        List<Double> marks = up.marks(4);
        int decimals = marks.size() > 1 && marks.get(1) - marks.get(0) < 1 ? 1 : 0;
        for (double mark : marks) {
            parts.add(Svg.line("grid", LEFT, up.at(mark), RIGHT, up.at(mark)));
            parts.add(Svg.text("mark", LEFT - 6, up.at(mark) + 4, "end", Figures.fixed(mark, decimals)));
        }
        parts.add(Svg.text("mark", 4, 11, "start", load() ? "load of the front left tyre, kN" : "yaw rate, °/s"));
        parts.add(Svg.text("mark", RIGHT, BOTTOM + 31, "end", "time, s"));
        parts.add(curve("curve before", before, time, up));
        parts.add(curve("curve after", after, time, up));
        double foot = HEIGHT - 6;
        parts.add(Svg.line("curve before", LEFT, foot - 4, LEFT + 24, foot - 4));
        parts.add(Svg.text("mark", LEFT + 29, foot, "start", "now"));
        parts.add(Svg.line("curve after", LEFT + 84, foot - 4, LEFT + 108, foot - 4));
        parts.add(Svg.text("mark", LEFT + 113, foot, "start", "next"));
        return Svg.drawing(id, WIDTH, HEIGHT, "The model's car over time: " + named() + " at "
                + Figures.fixed(speed * 3.6, 0) + " km/h", description(), parts);
    }

    /** The figures where both lie farthest apart, and at the end: small differences are told where none can be seen. */
    private String description() {
        int end = (size() - 1) / EVERY * EVERY;
        return (load() ? "Load of the front left tyre" : "Yaw rate") + " where the change shows most, after "
                + Figures.fixed(before.at(Channel.TIME, most), 3) + " s: " + figure(before, most) + " now and "
                + figure(after, most) + " next. At the end: " + figure(before, end) + " and " + figure(after, end) + ". "
                + lost() + "Here the change acts most: by "
                + Figures.fixed(100 * acts(), 1) + " % of what the car goes through.";
    }

    private String lost() {
        return before.lost() && after.lost() ? "The car is lost either way. "
                : after.lost() ? "With the change the car is lost. " : before.lost() ? "Without it the car is lost. " : "";
    }

    private String figure(History run, int moment) {
        return Figures.fixed(value(run, moment), 2) + (load() ? " kN" : "°/s");
    }

    private String named() {
        return switch (exercise) {
            case STEP_STEER -> "the wheel turned at once (ISO 7401)";
            case BRAKING_IN_A_TURN -> "braking in a turn, the wheel held (ISO 7975)";
            case POWER_OFF -> "throttle closed in a turn, the wheel held (ISO 9816)";
            case POWER_ON -> "throttle opened in a turn, the wheel held";
            case KERB -> "a kerb under the inner wheels";
            default -> "a straight with bumps";
        };
    }

    private Svg.Element curve(String style, History run, Scale time, Scale up) {
        List<Double> points = new ArrayList<>();
        for (int i = 0; i < run.size(); i += EVERY) {
            if (run.at(Channel.TIME, i) >= time.low() && run.at(Channel.TIME, i) <= time.high() + 1e-9) {
                points.add(time.at(run.at(Channel.TIME, i)));
                points.add(up.at(value(run, i)));
            }
        }
        return Svg.polyline(style, points.stream().mapToDouble(it -> it).toArray());
    }
}
