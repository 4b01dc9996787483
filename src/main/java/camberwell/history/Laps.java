package camberwell.history;

import camberwell.units.Figures;

/** Lap times in words. */
public final class Laps {

    private static final int MINUTE = 60;
    private static final int TEN = 10;

    private Laps() {
    }

    /** {@code 1:32.41}. */
    public static String time(double seconds, int decimals) {
        double scale = Math.pow(TEN, decimals);
        double rounded = Math.rint(seconds * scale) / scale;
        int minutes = (int) (rounded / MINUTE);
        String rest = Figures.fixed(rounded - MINUTE * minutes, decimals);
        return minutes == 0 ? rest : minutes + ":" + (rest.indexOf('.') == 1 || rest.length() == 1 ? "0" : "") + rest;
    }

    /** {@code 0.23 s}. */
    public static String seconds(double seconds, int decimals) {
        return Figures.fixed(seconds, decimals) + " s";
    }

    /** {@code +0.23 s}, {@code -0.23 s}. */
    public static String signed(double seconds, int decimals) {
        String text = seconds(seconds, decimals);
        return text.startsWith("-") ? text : "+" + text;
    }

    /** {@code 1 lap}, {@code 8 laps}. */
    public static String count(int laps) {
        return laps == 1 ? "1 lap" : laps + " laps";
    }
}
