package camberwell.observe;

import java.util.List;

/**
 * One corner to be drawn: the understeer angle over the way, of the clearest lap and of the laps as a rule.
 *
 * @param corner its number
 * @param lap the number of the lap that shows it most clearly
 * @param title what is complained of there
 * @param metres way from the beginning of the drawing
 * @param shown understeer angle beyond the line in that lap, degrees
 * @param usual the median of all laps
 * @param speed of that lap, km/h
 * @param starts from which on it counts, degrees
 * @param from where the complaint's phase begins, m
 * @param to where it ends, m
 */
public record CornerDrawing(int corner, int lap, String title, List<Double> metres, List<Double> shown,
        List<Double> usual, List<Double> speed, double starts, double from, double to) {

    /** Copies the lists. */
    public CornerDrawing {
        metres = List.copyOf(metres);
        shown = List.copyOf(shown);
        usual = List.copyOf(usual);
        speed = List.copyOf(speed);
    }
}
