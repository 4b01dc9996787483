package camberwell.report;

import camberwell.drawing.Scale;
import camberwell.drawing.Svg;
import camberwell.history.Course;
import camberwell.history.Laps;
import camberwell.units.Figures;
import camberwell.vocabulary.Adjuster;
import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** The course of a car's runs: lap times, settings and complaints over the runs, as SVG and in characters. */
public final class CourseDrawing {

    private static final double WIDTH = 860;
    private static final double LEFT = 310;
    private static final double RIGHT = 24;
    /** Where the lap times end above, and below. */
    private static final double HEAD = 60;
    private static final double FOOT = 280;
    private static final double ROW = 44;
    private static final int BAR = 24;
    private static final List<String> GRADES = List.of("none", "slight", "clear", "strong");

    private final Course course;

    /** A drawing of that course. */
    public CourseDrawing(Course course) {
        this.course = course;
    }

    /** In characters. */
    public void draw(Page page) {
        List<Course.Times> known = course.stints().stream().flatMap(Optional::stream).toList();
        page.heading("Lap times by run, the trend taken out");
        if (known.isEmpty()) {
            page.paragraph(0, "In no run do enough laps count.");
        }
        double low = known.stream().mapToDouble(times -> times.interval().low()).min().orElse(0);
        double high = known.stream().mapToDouble(times -> times.interval().high()).max().orElse(1);
        for (int i = 0; i < course.numbers().size() && !known.isEmpty(); i++) {
            String number = pad(String.valueOf(course.numbers().get(i)), 4);
            page.verbatim(number + course.stints().get(i).map(times -> bar(times, low, high) + " "
                    + Laps.time(times.mean(), 2)).orElse("too few laps"));
        }
        if (!known.isEmpty()) {
            page.paragraph(0, "o mean, - its 95 % interval; left is faster");
        }
        table("Settings, in steps from the first of these runs", settings(), page);
        table("Complaints: 1 slight, 2 clear, 3 strong", complaints(), page);
    }

    private static String bar(Course.Times times, double low, double high) {
        return new DotLine(low, high, BAR).span(times.interval().low(), times.interval().high(), '-').mark(times.mean(), 'o')
                .text();
    }

    private void table(String heading, List<Map.Entry<String, List<String>>> rows, Page page) {
        if (rows.isEmpty()) {
            return;
        }
        page.heading(heading);
        rows.forEach(row -> page.paragraph(0, row.getKey()).verbatim("    " + String.join(" ", row.getValue().stream()
                .map(cell -> pad(cell, 2)).toList()).stripTrailing()));
    }

    private List<Map.Entry<String, List<String>>> settings() {
        List<Map.Entry<String, List<String>>> rows = new ArrayList<>();
        course.settings().forEach((adjuster, steps) -> rows.add(Map.entry(Words.sentence(adjuster.spoken()),
                steps.stream().map(CourseDrawing::signed).toList())));
        return rows;
    }

    private List<Map.Entry<String, List<String>>> complaints() {
        List<Map.Entry<String, List<String>>> rows = new ArrayList<>();
        course.complaints().forEach((name, grades) -> rows.add(Map.entry(Words.sentence(name),
                grades.stream().map(grade -> grade == 0 ? "." : String.valueOf(grade)).toList())));
        return rows;
    }

    private static String signed(double steps) {
        return steps == 0 ? "0" : Figures.fill("%+.0f", steps);
    }

    private static String pad(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }

    /** As a whole SVG file. */
    public String svg(String title) {
        int rows = course.settings().size() + course.complaints().size();
        List<DomContent> parts = new ArrayList<>(times());
        double y = FOOT + 40;
        for (Map.Entry<Adjuster, List<Double>> setting : course.settings().entrySet()) {
            double most = Math.max(1, setting.getValue().stream().mapToDouble(Math::abs).max().orElse(1));
            parts.addAll(path("before", setting.getKey().spoken() + ", steps", setting.getValue(), rowAt(y, -most, most)));
            y += ROW;
        }
        for (Map.Entry<String, List<Integer>> complaint : course.complaints().entrySet()) {
            parts.addAll(path("felt", complaint.getKey(),
                    complaint.getValue().stream().map(Integer::doubleValue).toList(), rowAt(y, 0, GRADES.size() - 1)));
            y += ROW;
        }
        for (int i = 0; i < course.numbers().size(); i++) {
            parts.add(Svg.text("", x(i), y + 4, "middle", "run " + course.numbers().get(i)));
        }
        return Svg.file(WIDTH, FOOT + 40 + ROW * Math.max(1, rows) + 50, title, parts);
    }

    private static Scale rowAt(double top, double low, double high) {
        return new Scale(low, high, top + ROW - 10, top + 6);
    }

    private List<DomContent> times() {
        List<DomContent> parts = new ArrayList<>();
        parts.add(Svg.text("", 16, HEAD, "start", "Lap time, the trend"));
        parts.add(Svg.text("", 16, HEAD + 16, "start", "of each stint taken out"));
        List<Course.Times> known = course.stints().stream().flatMap(Optional::stream).toList();
        if (known.isEmpty()) {
            parts.add(Svg.text("", LEFT, (HEAD + FOOT) / 2, "start", "In no run do enough laps count."));
            return parts;
        }
        DoubleSummaryStatistics all = known.stream().flatMapToDouble(times -> DoubleStream.concat(
                times.level().stream().mapToDouble(it -> it),
                DoubleStream.of(times.interval().low(), times.interval().high()))).summaryStatistics();
        Scale up = new Scale(all.getMin(), Math.max(all.getMax(), all.getMin() + 0.01), FOOT, HEAD);
        for (double mark : up.marks(4)) {
            parts.add(Svg.line("grid", LEFT - 20, up.at(mark), WIDTH - RIGHT, up.at(mark)));
            parts.add(Svg.text("", LEFT - 26, up.at(mark) + 4, "end", Laps.time(mark, 2)));
        }
        for (int i = 0; i < course.stints().size(); i++) {
            if (course.stints().get(i).isEmpty()) {
                parts.add(Svg.text("", x(i), (HEAD + FOOT) / 2, "middle", "-"));
                continue;
            }
            Course.Times times = course.stints().get(i).get();
            for (double seconds : times.level()) {
                parts.add(Svg.circle("lap", x(i), up.at(seconds), 2.5));
            }
            parts.add(Svg.line("before range", x(i), up.at(times.interval().low()), x(i),
                    up.at(times.interval().high())));
            parts.add(Svg.line("before mean", x(i) - 8, up.at(times.mean()), x(i) + 8, up.at(times.mean())));
        }
        return parts;
    }

    /** One row: how something went from run to run; written beside it where it changes. */
    private List<DomContent> path(String style, String name, List<Double> values, Scale up) {
        List<DomContent> parts = new ArrayList<>();
        parts.add(Svg.text("", 16, (up.start() + up.end()) / 2 + 4, "start", name));
        double[] points = new double[2 * values.size()];
        for (int i = 0; i < values.size(); i++) {
            points[2 * i] = x(i);
            points[2 * i + 1] = up.at(values.get(i));
            parts.add(Svg.circle(style, x(i), up.at(values.get(i)), 3));
            if (i == 0 || !values.get(i).equals(values.get(i - 1))) {
                parts.add(Svg.text("", x(i) + 6, up.at(values.get(i)) - 3, "start",
                        up.low() < 0 ? signed(values.get(i)) : GRADES.get((int) Math.round(values.get(i)))));
            }
        }
        parts.add(Svg.polyline(style, points));
        return parts;
    }

    private double x(int run) {
        int runs = course.numbers().size();
        return runs == 1 ? (LEFT + WIDTH - RIGHT) / 2 : new Scale(0, runs - 1, LEFT, WIDTH - RIGHT - 40).at(run);
    }
}
