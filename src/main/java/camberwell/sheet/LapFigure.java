package camberwell.sheet;

import camberwell.drawing.Scale;
import camberwell.drawing.Svg;
import camberwell.history.Course;
import camberwell.history.Laps;
import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lap times by run, the trend of each stint taken out: the mean with its 95 % interval, a row a run. */
final class LapFigure {

    private static final double WIDTH = 340;
    private static final double LEFT = 62;
    private static final double RIGHT = 320;
    private static final double ROW = 26;
    /** The least breadth of the scale, s, so that the timer's step is no cliff. */
    private static final double LEAST = 0.1;

    private LapFigure() {
    }

    /** The drawing; empty where in no run enough laps count. */
    static Optional<DomContent> of(String id, Course course) {
        List<Course.Times> known = course.stints().stream().flatMap(Optional::stream).toList();
        if (known.isEmpty()) {
            return Optional.empty();
        }
        double low = known.stream().mapToDouble(times -> times.interval().low()).min().orElseThrow();
        double high = known.stream().mapToDouble(times -> times.interval().high()).max().orElseThrow();
        double margin = Math.max(LEAST, high - low) / 10;
        Scale scale = new Scale(low - margin, high + margin, LEFT, RIGHT);
        double bottom = 14 + ROW * course.numbers().size();
        List<DomContent> parts = new ArrayList<>();
        for (double mark : scale.marks(3)) {
            parts.add(Svg.line("grid", scale.at(mark), 8, scale.at(mark), bottom));
            parts.add(Svg.text("mark", scale.at(mark), bottom + 15, "middle", Laps.time(mark, 2)));
        }
        StringBuilder told = new StringBuilder();
        for (int i = 0; i < course.numbers().size(); i++) {
            double y = 24 + ROW * i;
            String run = "Run " + course.numbers().get(i);
            parts.add(Svg.text("mark", LEFT - 8, y + 4, "end", run));
            told.append(i == 0 ? "" : "; ").append(run).append(' ');
            if (course.stints().get(i).isEmpty()) {
                parts.add(Svg.text("mark", LEFT + 4, y + 4, "start", "too few laps"));
                told.append("too few laps");
                continue;
            }
            Course.Times times = course.stints().get(i).get();
            parts.add(Svg.line("span", scale.at(times.interval().low()), y, scale.at(times.interval().high()), y));
            parts.add(Svg.circle("point after", scale.at(times.mean()), y, 4));
            parts.add(Svg.text("value", scale.at(times.mean()), y - 7, "middle", Laps.time(times.mean(), 2)));
            told.append(Laps.time(times.mean(), 2)).append(" (").append(Laps.time(times.interval().low(), 2)).append(" to ")
                    .append(Laps.time(times.interval().high(), 2)).append(')');
        }
        return Optional.of(Svg.drawing(id, WIDTH, bottom + 24,
                "Lap times by run, the trend of each stint taken out; left is faster",
                told + ", with 95 % intervals.", parts));
    }
}
