package camberwell.observe;

import java.util.ArrayList;
import java.util.List;

/**
 * A made-up circuit of straights and corners with easement curves, laid so that it closes. Nothing of it is any circuit's
 * that exists.
 */
final class Circuit {

    /** Metres between its points. */
    static final double STEP = 1;

    /** A corner: left is positive. */
    record Bend(double radius, double degrees) {
    }

    private final double[] curvature;
    private final List<double[]> corners = new ArrayList<>();

    private Circuit(List<Double> straights, List<Bend> bends) {
        List<Double> all = new ArrayList<>();
        for (int i = 0; i < bends.size(); i++) {
            straight(all, straights.get(i));
            double from = all.size() * STEP;
            bend(all, bends.get(i));
            corners.add(new double[] {from, all.size() * STEP, bends.get(i).radius});
        }
        straight(all, straights.get(bends.size()));
        curvature = all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static void straight(List<Double> all, double length) {
        for (double s = 0; s < length; s += STEP) {
            all.add(0.0);
        }
    }

    /** Curvature that grows over a quarter of the length, holds and falls again: the whole turns by its angle. */
    private static void bend(List<Double> all, Bend bend) {
        double angle = Math.toRadians(Math.abs(bend.degrees));
        double length = angle * bend.radius / 0.70;
        double ease = 0.30 * length;
        int points = (int) Math.round(length / STEP);
        double sum = 0;
        double[] shape = new double[points];
        for (int i = 0; i < points; i++) {
            double s = i * STEP;
            double part = Math.min(1, Math.min(s, length - s) / ease);
            shape[i] = 0.5 - 0.5 * Math.cos(Math.PI * Math.max(0, part));
            sum += shape[i] * STEP;
        }
        for (int i = 0; i < points; i++) {
            all.add(Math.signum(bend.degrees) * shape[i] * angle / sum);
        }
    }

    /** Seven corners, three slow, two medium and two fast, four to the left; two of them close behind each other. */
    static Circuit seven() {
        return new Circuit(List.of(320.0, 420.0, 240.0, 260.0, 300.0, 230.0, 480.0, 220.0), List.of(
                new Bend(28, 95), new Bend(75, -80), new Bend(170, 55), new Bend(24, 120), new Bend(80, 75),
                new Bend(27, -100), new Bend(160, -50)));
    }

    /** The same with a chicane in the place of the second corner. */
    static Circuit chicane() {
        return new Circuit(List.of(320.0, 420.0, 4.0, 240.0, 260.0, 300.0, 230.0, 480.0, 220.0), List.of(
                new Bend(28, 95), new Bend(55, 50), new Bend(55, -50), new Bend(170, 55), new Bend(24, 120),
                new Bend(80, -75), new Bend(27, 100), new Bend(160, -50)));
    }

    /** Four corners the same way that come back to where they began, as positions need it. */
    static Circuit closed(boolean left) {
        int turn = left ? 1 : -1;
        List<Bend> bends = List.of(new Bend(26, 90 * turn), new Bend(75, 90 * turn), new Bend(160, 90 * turn),
                new Bend(30, 90 * turn));
        double[] end = new Circuit(List.of(420.0, 520.0, 0.0, 0.0, 150.0), bends).end();
        return new Circuit(List.of(420.0, 520.0, end[0], turn * end[1], 150.0), bends);
    }

    /** Where it ends, from where it begins, m. */
    private double[] end() {
        double heading = 0;
        double[] place = new double[2];
        for (double bend : curvature) {
            heading += bend * STEP;
            place[0] += Math.cos(heading) * STEP;
            place[1] += Math.sin(heading) * STEP;
        }
        return place;
    }

    double length() {
        return curvature.length * STEP;
    }

    /** Curvature at a distance from the line, 1/m. */
    double curvature(double s) {
        double at = s / STEP;
        int i = (int) Math.floor(at);
        double part = at - i;
        int n = curvature.length;
        return curvature[Math.floorMod(i, n)] * (1 - part) + curvature[Math.floorMod(i + 1, n)] * part;
    }

    /** Corners: where each begins and ends, m, and its radius, m. */
    List<double[]> corners() {
        return corners;
    }
}
