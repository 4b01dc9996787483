package camberwell.sheet;

import camberwell.drawing.Svg;
import camberwell.physics.Toe;
import camberwell.units.Figures;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Axle;
import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** An axle seen from above with its toe drawn out, before and after. Angles are drawn larger by a stated factor. */
final class ToeFigure {

    private static final double WIDTH = 340;
    private static final double HEIGHT = 176;
    private static final double MIDDLE = 84;
    private static final double HALF_TRACK = 92;
    /** Drawn angles stay below this, so that toe-in and toe-out are seen and no wheel lies across. */
    private static final double MOST_DRAWN = 22;
    private static final int[] FACTORS = {100, 50, 20, 10, 5, 2, 1};

    private ToeFigure() {
    }

    /**
     * The drawing.
     *
     * @param across the diameter at which toe is measured as a length, where it is known
     */
    static DomContent of(String id, Axle axle, Quantity before, Quantity after, Optional<Quantity> across) {
        double from = before.in(Unit.DEGREE);
        double to = after.in(Unit.DEGREE);
        int factor = factor(Math.max(Math.abs(from), Math.abs(to)));
        double centre = WIDTH / 2;
        List<DomContent> parts = new ArrayList<>();
        parts.add(Svg.line("axis", centre - HALF_TRACK, MIDDLE, centre + HALF_TRACK, MIDDLE));
        parts.add(Svg.line("grid", centre, 18, centre, HEIGHT - 30));
        parts.add(Svg.polygon("arrow", centre, 6, centre - 6, 18, centre + 6, 18));
        parts.add(Svg.text("mark", centre + 12, 16, "start", "forwards"));
        for (int side = -1; side <= 1; side += 2) {
            double x = centre + side * HALF_TRACK;
            // The front of a toed-in wheel points to the middle of the car.
            parts.add(Svg.placed(x, MIDDLE, -side * from * factor, Svg.rectangle("wheel before", -11, -42, 22, 84)));
            parts.add(Svg.placed(x, MIDDLE, -side * to * factor, Svg.rectangle("wheel after", -11, -42, 22, 84)));
        }
        String unit = across.isPresent() ? "; total " + total(from, across.get()) + " and " + total(to, across.get())
                + " mm across " + across.get().text(0) : "";
        parts.add(Svg.text("mark", centre, HEIGHT - 10, "middle", "now (dashed) " + degrees(from) + "°, next "
                + degrees(to) + "° a wheel"));
        return Svg.drawing(id, WIDTH, HEIGHT, "Toe of the " + axle.id() + " axle from above, drawn " + factor
                + " times larger", "Each wheel at "
                + said(from) + " now and " + said(to) + " next" + unit + ".", parts);
    }

    private static int factor(double most) {
        for (int factor : FACTORS) {
            if (most * factor <= MOST_DRAWN) {
                return factor;
            }
        }
        return 1;
    }

    private static String degrees(double toe) {
        return Figures.fixed(toe, 2);
    }

    private static String said(double toe) {
        return toe == 0 ? "no toe" : degrees(Math.abs(toe)) + "° toe-" + (toe > 0 ? "in" : "out");
    }

    private static String total(double toe, Quantity across) {
        return Figures.fixed(Toe.totalMillimetres(toe, toe, across.si() * 1000), 1);
    }
}
