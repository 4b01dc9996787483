package camberwell.observe;

import camberwell.channel.Binding;
import camberwell.channel.Log;
import camberwell.run.Report;
import camberwell.run.TyreReading;
import camberwell.vocabulary.Wheel;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a logged run shows.
 *
 * @param log as it was read and cleaned
 * @param laps all of them, with why some are left out
 * @param lapsBy how they were told apart
 * @param map the corners
 * @param line the car's own line; empty without steering, or where nothing could be fitted
 * @param reports complaints, the surest first
 * @param habits what the driver does
 * @param tyres what pyrometer and gauge would have read after the run
 * @param cells the figures by corner and phase
 * @param doubts what could not be concluded, and why
 * @param against the earlier run that it was held against
 * @param notJudged what no complaint could be made of, whatever the car did
 */
public record Observed(Log log, List<LapTold> laps, String lapsBy, List<CornerTold> corners, Optional<LineTold> line,
        List<Report> reports, List<Habit> habits, Map<Wheel, TyreReading> tyres, List<Cell> cells, List<String> doubts,
        Optional<CornerDrawing> drawing, Optional<Against> against,
        List<String> notJudged) {

    /** Of what is not judged: what wheel speeds alone show. */
    public static final String WHEELS = "wheelspin and locking";

    /** Copies the lists. */
    public Observed {
        laps = List.copyOf(laps);
        corners = List.copyOf(corners);
        reports = List.copyOf(reports);
        habits = List.copyOf(habits);
        tyres = Map.copyOf(tyres);
        cells = List.copyOf(cells);
        doubts = List.copyOf(doubts);
        notJudged = List.copyOf(notJudged);
    }

    /** The columns that channels were read from. */
    public List<Binding> channels() {
        return List.copyOf(log.bindings().values());
    }

    /**
     * An earlier run.
     *
     * @param log its name
     * @param gradient understeer gradient then, degrees per g; empty where no line could be fitted
     */
    public record Against(String log, OptionalDouble gradient) {
    }

    /**
     * A lap.
     *
     * @param seconds how long it took
     * @param leftOut why nothing is read from it; empty where it counts
     */
    public record LapTold(int number, double seconds, Optional<String> leftOut) {
    }

    /**
     * A corner.
     *
     * @param direction left or right; as far as the log tells the two apart
     * @param speed slow, medium or fast
     * @param from m from the line
     * @param to m from the line
     * @param slowest km/h
     */
    public record CornerTold(int number, String direction, String speed, double from, double to, double slowest) {
    }

    /**
     * The car's own line.
     *
     * @param ratio angle of the steering wheel for one of the road wheels
     * @param gradient understeer gradient in moderate cornering, degrees per g
     * @param scatter degrees at the road wheels
     * @param wheelbase m
     * @param starts slip angle beyond it that begins to count, degrees
     */
    public record LineTold(double ratio, double gradient, double scatter, double wheelbase, double starts) {
    }

    /**
     * What one phase of one corner shows, as the median of the laps.
     *
     * @param front slip angle of the front beyond the line, degrees
     * @param rear of the rear
     */
    public record Cell(int corner, camberwell.vocabulary.Phase phase, double front, double rear) {
    }
}
