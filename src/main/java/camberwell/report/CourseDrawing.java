package camberwell.report;

import camberwell.history.Course;
import camberwell.history.Laps;
import camberwell.units.Figures;
import camberwell.vocabulary.Adjuster;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The course of a car's runs: lap times, settings and complaints over the runs, as SVG and in characters. */
public final class CourseDrawing {

    private static final double WIDTH = 860;
    private static final double LEFT = 310;
    private static final double RIGHT = 24;
    private static final double TIMES = 220;
    private static final double ROW = 44;
    private static final int BAR = 24;
    private static final List<String> GRADES = List.of("none", "slight", "clear", "strong");

    private final Course course;

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
        double height = 60 + TIMES + 40 + ROW * Math.max(1, rows) + 50;
        StringBuilder svg = new StringBuilder(Figures.fill("""
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %.0f %.0f" font-family="sans-serif" font-size="12">
                <title>%s</title>
                <rect width="100%" height="100%" fill="white"/>
                <text x="16" y="26" font-size="15">%s</text>
                """, WIDTH, height, escaped(title), escaped(title)));
        times(svg);
        double y = 60 + TIMES + 40;
        for (Map.Entry<Adjuster, List<Double>> setting : course.settings().entrySet()) {
            double most = setting.getValue().stream().mapToDouble(Math::abs).max().orElse(1);
            path(svg, setting.getKey().spoken() + ", steps", y, setting.getValue(), -most, most, "#1f5fa8");
            y += ROW;
        }
        for (Map.Entry<String, List<Integer>> complaint : course.complaints().entrySet()) {
            path(svg, complaint.getKey(), y, complaint.getValue().stream().map(Integer::doubleValue).toList(), 0, 3,
                    "#b3401f");
            y += ROW;
        }
        for (int i = 0; i < course.numbers().size(); i++) {
            text(svg, x(i), y + 4, "middle", "run " + course.numbers().get(i));
        }
        return svg.append("</svg>\n").toString();
    }

    private void times(StringBuilder svg) {
        List<Course.Times> known = course.stints().stream().flatMap(Optional::stream).toList();
        text(svg, 16, 60, "start", "Lap time, the trend");
        text(svg, 16, 76, "start", "of each stint taken out");
        if (known.isEmpty()) {
            text(svg, LEFT, 60 + TIMES / 2, "start", "In no run do enough laps count.");
            return;
        }
        double low = known.stream().flatMap(times -> times.level().stream()).mapToDouble(it -> it).min().orElse(0);
        double high = known.stream().flatMap(times -> times.level().stream()).mapToDouble(it -> it).max().orElse(1);
        low = Math.min(low, known.stream().mapToDouble(times -> times.interval().low()).min().orElse(low));
        high = Math.max(high, known.stream().mapToDouble(times -> times.interval().high()).max().orElse(high));
        double reach = Math.max(0.01, high - low);
        for (int mark = 0; mark <= 4; mark++) {
            double at = 60 + TIMES * (1 - mark / 4.0);
            line(svg, LEFT - 20, at, WIDTH - RIGHT, at, "#ddd", 1);
            text(svg, LEFT - 26, at + 4, "end", Laps.time(low + reach * mark / 4, 2));
        }
        for (int i = 0; i < course.stints().size(); i++) {
            if (course.stints().get(i).isEmpty()) {
                text(svg, x(i), 60 + TIMES / 2, "middle", "-");
                continue;
            }
            Course.Times times = course.stints().get(i).get();
            for (double seconds : times.level()) {
                svg.append(Figures.fill("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"2.5\" fill=\"none\" stroke=\"#888\"/>\n", x(i),
                        60 + TIMES * (1 - (seconds - low) / reach)));
            }
            line(svg, x(i), 60 + TIMES * (1 - (times.interval().low() - low) / reach), x(i),
                    60 + TIMES * (1 - (times.interval().high() - low) / reach), "#1f5fa8", 2);
            line(svg, x(i) - 8, 60 + TIMES * (1 - (times.mean() - low) / reach), x(i) + 8,
                    60 + TIMES * (1 - (times.mean() - low) / reach), "#1f5fa8", 3);
        }
    }

    private void path(StringBuilder svg, String name, double top, List<Double> values, double low, double high,
            String colour) {
        text(svg, 16, top + ROW / 2, "start", name);
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < values.size(); i++) {
            double y = top + 6 + (ROW - 16) * (1 - (values.get(i) - low) / (high - low));
            points.append(Figures.fill(i == 0 ? "%.1f,%.1f" : " %.1f,%.1f", x(i), y));
            svg.append(Figures.fill("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"3\" fill=\"%s\"/>\n", x(i), y, colour));
            String label = low < 0 ? signed(values.get(i)) : GRADES.get((int) Math.round(values.get(i)));
            boolean said = i == 0 || !values.get(i).equals(values.get(i - 1));
            if (said) {
                text(svg, x(i) + 6, y - 3, "start", label);
            }
        }
        svg.append("<polyline fill=\"none\" stroke=\"").append(colour).append("\" points=\"").append(points)
                .append("\"/>\n");
    }

    private double x(int run) {
        int runs = course.numbers().size();
        return runs == 1 ? (LEFT + WIDTH - RIGHT) / 2 : LEFT + (WIDTH - RIGHT - 40 - LEFT) * run / (runs - 1);
    }

    private static void line(StringBuilder svg, double x1, double y1, double x2, double y2, String colour, int width) {
        svg.append(Figures.fill("<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\" stroke-width=\"%d\"/>\n",
                x1, y1, x2, y2, colour, width));
    }

    private static void text(StringBuilder svg, double x, double y, String anchor, String text) {
        svg.append(Figures.fill("<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>\n", x, y, anchor,
                escaped(text)));
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
