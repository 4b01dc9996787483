package camberwell.run;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.OptionalInt;

/**
 * That a complaint was measured, and how: a log is a witness of its own beside the driver.
 *
 * @param certainty that it is so, and how far one may build on it, 0 to 1
 * @param driver share of it that goes with how the driver drove those laps, 0 to 1: it is not the car's
 * @param how what was measured, and where, in one line
 * @param evidence the clearest places
 */
public record Measured(double certainty, double driver, String how, List<Place> evidence) {

    /**
     * One place.
     *
     * @param corner its number, counted from the line
     * @param lap its number
     * @param figure what was measured there
     * @param reference what it is held against
     * @param unit of both
     */
    public record Place(OptionalInt corner, OptionalInt lap, double figure, double reference, String unit) {
    }

    /** Copies the list. */
    public Measured {
        evidence = List.copyOf(evidence);
    }

    /** How, with the place that shows it most clearly: {@code ...; most in corner 2 of lap 5, 3.4 deg}. */
    public String text() {
        Place most = null;
        for (Place place : evidence) {
            most = most == null || Math.abs(place.figure - place.reference) > Math.abs(most.figure - most.reference) ? place
                    : most;
        }
        if (most == null || most.lap.isEmpty()) {
            return how;
        }
        return how + "; most in " + (most.corner.isPresent() ? "corner " + most.corner.getAsInt() + " of " : "") + "lap "
                + most.lap.getAsInt() + ", " + BigDecimal.valueOf(most.figure).setScale(1, RoundingMode.HALF_UP) + " "
                + most.unit;
    }
}
