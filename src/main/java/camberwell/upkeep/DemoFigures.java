package camberwell.upkeep;

import camberwell.fact.Passing;
import camberwell.units.Unit;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** Tyre figures of a made-up case, wheel by wheel, that pass what conditions ask of bare numbers. */
final class DemoFigures {

    private static final double TREAD = 85;
    private static final double HOT = 1.90;
    private static final double COLD = 1.60;
    /** How far beyond a border a figure is put, in kelvin and in bar. */
    private static final double BEYOND_KELVIN = 5;
    private static final double BEYOND_BAR = 0.05;

    private final Map<String, double[]> treads = new TreeMap<>();
    private final Map<String, double[]> pressures = new TreeMap<>();

    /** Enters a question: {@code front tread in °C}, and what passes; others are left alone. */
    void enter(String asked, Passing passing) {
        String attribute = asked.replace(':', ' ');
        int space = attribute.indexOf(' ');
        int in = attribute.lastIndexOf(" in ");
        if (space < 0 || in <= space || !passing.isRange()) {
            return;
        }
        String place = attribute.substring(0, space);
        String what = attribute.substring(space + 1, in);
        String symbol = attribute.substring(in + " in ".length());
        boolean pressure = what.contains("pressure");
        boolean difference = what.contains(" over ") || what.contains(" under ") || what.endsWith("growth")
                || what.equals("spread");
        double value = value(passing, symbol, pressure, difference);
        for (String wheel : new String[] {"front-left", "front-right", "rear-left", "rear-right"}) {
            if (wheel.equals(place) || wheel.startsWith(place + "-")) {
                if (pressure) {
                    gauge(wheel, what, value);
                } else {
                    pyrometer(wheel, what, value);
                }
            }
        }
        int over = what.indexOf(" over ");
        String other = over < 0 ? "" : what.substring(over + " over ".length());
        for (String wheel : new String[] {"front-left", "front-right", "rear-left", "rear-right"}) {
            if (wheel.equals(other) || wheel.startsWith(other + "-") && !other.isEmpty()) {
                (pressure ? pressures : treads).computeIfAbsent(wheel, key -> pressure ? new double[] {HOT, COLD}
                        : new double[] {TREAD, 6, 0});
            }
        }
    }

    /** A number that passes, in °C, kelvin or bar. */
    private static double value(Passing passing, String symbol, boolean pressure, boolean difference) {
        Unit unit = symbol.equals("K") ? Unit.POSITION : Unit.withSymbol(symbol).orElseThrow();
        double beyond = pressure ? BEYOND_BAR : BEYOND_KELVIN;
        boolean above = passing.above() > -Double.MAX_VALUE;
        boolean below = passing.below() < Double.MAX_VALUE;
        double low = above ? base(passing.above(), unit, difference) : 0;
        double high = below ? base(passing.below(), unit, difference) : 0;
        return above && below ? (low + high) / 2 : above ? low + beyond : difference ? Math.min(high / 2, high - beyond)
                : high - beyond;
    }

    private static double base(double value, Unit unit, boolean difference) {
        return switch (unit.dimension()) {
            case TEMPERATURE -> Unit.CELSIUS.fromSi(unit.toSi(value));
            case PRESSURE -> Unit.BAR.fromSi(difference ? unit.differenceToSi(value) : unit.toSi(value));
            default -> value;
        };
    }

    /** Mean, inner less outer edge, middle less the mean of both. */
    private void pyrometer(String wheel, String what, double value) {
        double[] tread = treads.computeIfAbsent(wheel, key -> new double[] {TREAD, 6, 0});
        switch (what) {
            case "tread" -> tread[0] = value;
            case "inner over outer" -> tread[1] = value;
            case "outer over inner" -> tread[1] = -value;
            case "middle over edges" -> tread[2] = value;
            case "edges over middle" -> tread[2] = -value;
            case "spread" -> tread[1] = value;
            default -> tread[0] = TREAD + value;
        }
    }

    private void gauge(String wheel, String what, double value) {
        double[] gauge = pressures.computeIfAbsent(wheel, key -> new double[] {HOT, COLD});
        switch (what) {
            case "hot pressure" -> gauge[0] = value;
            case "cold pressure" -> gauge[1] = value;
            case "pressure growth" -> gauge[1] = gauge[0] - value;
            case "pressure under target" -> gauge[0] = HOT - value;
            default -> gauge[0] = HOT + value;
        }
        if (gauge[1] >= gauge[0]) {
            gauge[what.equals("cold pressure") ? 0 : 1] = what.equals("cold pressure") ? gauge[1] + 0.3 : gauge[0] - 0.3;
        }
    }

    /** Whether anything was asked of tread temperatures on that wheel. */
    boolean hasTread(String wheel) {
        return treads.containsKey(wheel);
    }

    /** Whether anything was asked of pressures on that wheel. */
    boolean hasPressure(String wheel) {
        return pressures.containsKey(wheel);
    }

    /** The three temperatures as a case has them. */
    String tread(String wheel) {
        double[] tread = treads.get(wheel);
        double edges = tread[0] - tread[2] / 3;
        return String.format(Locale.ROOT, "inner: %.1f °C, middle: %.1f °C, outer: %.1f °C", edges + tread[1] / 2,
                edges + tread[2], edges - tread[1] / 2);
    }

    /** Both pressures as a case has them. */
    String pressure(String wheel) {
        double[] gauge = pressures.get(wheel);
        return String.format(Locale.ROOT, "cold-pressure: %.2f bar, hot-pressure: %.2f bar", gauge[1], gauge[0]);
    }
}
