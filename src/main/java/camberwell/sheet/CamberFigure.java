package camberwell.sheet;

import camberwell.drawing.Svg;
import camberwell.units.Figures;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Axle;
import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The left wheel of an axle from the front of the car, standing still and, where the handling model knows it, as it stands
 * to the road when it is the outer wheel of a corner near the limit. Angles are drawn larger by a stated factor.
 */
final class CamberFigure {

    private static final double WIDTH = 340;
    private static final double HEIGHT = 176;
    private static final double GROUND = 132;
    private static final int FACTOR = 5;

    /** Camber to the road of the outer wheel in a corner, degrees, negative when the top leans into the corner. */
    record InCorner(double before, double after) {
    }

    private CamberFigure() {
    }

    /** The drawing. */
    static DomContent of(String id, Axle axle, Quantity before, Quantity after, Optional<InCorner> corner) {
        List<DomContent> parts = new ArrayList<>();
        double from = before.in(Unit.DEGREE);
        double to = after.in(Unit.DEGREE);
        double x = corner.isPresent() ? WIDTH / 4 : WIDTH / 2;
        parts.add(Svg.line("axis", 14, GROUND, WIDTH - 14, GROUND));
        wheels(x, from, to, parts);
        parts.add(Svg.text("mark", x, GROUND + 16, "middle", "standing still"));
        parts.add(Svg.text("value", x, GROUND + 31, "middle", text(from) + "° → " + text(to) + "°"));
        corner.ifPresent(camber -> {
            wheels(3 * WIDTH / 4, camber.before(), camber.after(), parts);
            parts.add(Svg.text("mark", 3 * WIDTH / 4, GROUND + 16, "middle", "outer wheel in the corner"));
            parts.add(Svg.text("value", 3 * WIDTH / 4, GROUND + 31, "middle", text(camber.before()) + "° → "
                    + text(camber.after()) + "°"));
        });
        return Svg.drawing(id, WIDTH, HEIGHT, "Camber of the " + axle.id() + " wheels, drawn " + FACTOR
                + " times larger; the car's middle is to the right", "Standing still "
                + text(from) + "° now and " + text(to) + "° next" + corner.map(camber -> "; to the road in the corner "
                + text(camber.before()) + "° and " + text(camber.after()) + "°").orElse("") + ".", parts);
    }

    /** Negative camber leans the top towards the middle of the car, which lies to the right. */
    private static void wheels(double x, double from, double to, List<DomContent> parts) {
        parts.add(Svg.placed(x, GROUND, -from * FACTOR, Svg.rectangle("wheel before", -15, -104, 30, 104)));
        parts.add(Svg.placed(x, GROUND, -to * FACTOR, Svg.rectangle("wheel after", -15, -104, 30, 104)));
    }

    private static String text(double degrees) {
        return Figures.fixed(degrees, 1);
    }
}
