package camberwell.report;

import camberwell.model.Characteristic;
import camberwell.physics.VehicleModel;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * Two understeer characteristics in one drawing: steer over lateral acceleration, before a change and after it, with
 * the steer of the turn alone.
 */
public final class CharacteristicPlot {

    private final CurvePlot plot;

    /** Both at the same speed. */
    public CharacteristicPlot(Characteristic before, Characteristic after) {
        double most = Math.max(before.limit().lateral(), after.limit().lateral()) / VehicleModel.GRAVITY;
        double mostLateral = Math.max(0.1, Math.ceil(most * 10) / 10);
        double[] steers = Stream.of(before, after).flatMap(curve -> curve.points().stream())
                .mapToDouble(point -> Math.toDegrees(point.steer())).toArray();
        double turn = Math.toDegrees(before.turn(mostLateral * VehicleModel.GRAVITY));
        double least = Math.min(0, Math.floor(Arrays.stream(steers).min().orElse(0)));
        double highest = Math.max(1, Math.ceil(Math.max(turn, Arrays.stream(steers).max().orElse(0))));
        plot = new CurvePlot("lateral acceleration, g", "Steer angle, degrees", new CurvePlot.Span(0, mostLateral),
                new CurvePlot.Span(least, highest), List.of(
                        new CurvePlot.Curve("the turn alone (dotted)", '.', "beside",
                                new double[] {0, mostLateral}, new double[] {0, turn}),
                        curve("before (solid)", 'o', "before", before),
                        curve("after (dashed)", 'x', "after", after)));
    }

    private static CurvePlot.Curve curve(String name, char mark, String style, Characteristic curve) {
        return new CurvePlot.Curve(name, mark, style,
                curve.points().stream().mapToDouble(point -> point.lateral() / VehicleModel.GRAVITY).toArray(),
                curve.points().stream().mapToDouble(point -> Math.toDegrees(point.steer())).toArray());
    }

    /** In characters: {@code o} before, {@code x} after, {@code *} both, {@code .} the turn alone. */
    public void draw(Page page, int width) {
        plot.draw(page, width, 1);
        page.paragraph(0, "o before, x after, * both, . the turn alone");
    }

    /** As a drawing for a page: a whole SVG file. */
    public String svg(String title) {
        return plot.svg(title);
    }
}
