package camberwell.sheet;

import camberwell.advice.Score;
import camberwell.drawing.Scale;
import camberwell.drawing.Svg;
import camberwell.report.Words;
import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The terms of a change's score as bars from a zero line: what it brings to the right, what it costs to the left. */
final class ScoreFigure {

    private static final double WIDTH = 340;
    private static final double LEFT = 152;
    private static final double RIGHT = 292;
    private static final double ROW = 22;

    private ScoreFigure() {
    }

    /** The drawing. */
    static DomContent of(String id, Score score) {
        Map<String, Double> terms = new LinkedHashMap<>();
        terms.put("relief", score.certainty() * score.relief());
        terms.put("harm to complaints", -score.certainty() * score.harmToComplaints());
        terms.put("harm to the rest", -score.certainty() * score.harmToFine());
        terms.put("effort", -score.effort());
        terms.put("risk", -score.risk());
        terms.put("score", score.total());
        double low = Math.min(0, terms.values().stream().mapToDouble(Double::doubleValue).min().orElse(0));
        double high = Math.max(0.1, terms.values().stream().mapToDouble(Double::doubleValue).max().orElse(0));
        Scale scale = new Scale(low, high, LEFT, RIGHT);
        List<DomContent> parts = new ArrayList<>();
        double bottom = 8 + ROW * terms.size();
        parts.add(Svg.line("axis", scale.at(0), 4, scale.at(0), bottom));
        StringBuilder description = new StringBuilder();
        double y = 8;
        for (Map.Entry<String, Double> term : terms.entrySet()) {
            double at = scale.at(term.getValue());
            parts.add(Svg.text("mark", LEFT - 18, y + 13, "end", term.getKey()));
            parts.add(Svg.rectangle(term.getValue() < 0 ? "cost" : term.getKey().equals("score") ? "sum" : "gain",
                    Math.min(at, scale.at(0)), y + 3, Math.max(0.5, Math.abs(at - scale.at(0))), ROW - 9));
            parts.add(Svg.text("value", RIGHT + 44, y + 13, "end", Words.two(term.getValue())));
            description.append(description.isEmpty() ? "" : "; ").append(term.getKey()).append(' ')
                    .append(Words.two(term.getValue()));
            y += ROW;
        }
        return Svg.drawing(id, WIDTH, bottom + 6, "How the score of " + Words.two(score.total())
                + " came about, certainty " + Words.two(score.certainty()) + " multiplied in", description + ".", parts);
    }
}
