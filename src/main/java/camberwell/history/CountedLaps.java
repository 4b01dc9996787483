package camberwell.history;

import camberwell.run.Lap;
import camberwell.statistics.Robust;
import camberwell.statistics.Stint;
import camberwell.vocabulary.LapFlag;
import java.util.ArrayList;
import java.util.List;

/**
 * The laps of a run that count for their time: those with a flag are out by name, and of the others those that are far
 * slower than the trend of the rest. Quick ones stay, and are named: a corner may have been cut.
 *
 * @param laps every lap, in the order they were driven
 */
public record CountedLaps(List<Counted> laps) {

    /** With fewer there is no verdict: judgement, no source. */
    public static final int FEWEST = 4;
    /** Beyond this many robust standard deviations a lap is no ordinary one (Iglewicz and Hoaglin, 1993). */
    private static final double FAR = 3.5;
    /** What a timer shows: the least deviation that is believed, in seconds. */
    private static final double TIMER = 0.01;

    /**
     * One lap.
     *
     * @param number in the run, from 1
     * @param counts whether its time counts
     * @param why why it does not, or what is odd about it; empty for an ordinary lap
     */
    public record Counted(int number, Lap lap, boolean counts, String why) {
    }

    /** Sorts the laps of a run. */
    public static CountedLaps of(List<Lap> laps) {
        List<Integer> ordinary = new ArrayList<>();
        for (int i = 0; i < laps.size(); i++) {
            if (laps.get(i).ordinary()) {
                ordinary.add(i);
            }
        }
        double[] number = ordinary.stream().mapToDouble(i -> i + 1).toArray();
        double[] seconds = ordinary.stream().mapToDouble(i -> laps.get(i).seconds().orElseThrow()).toArray();
        double slope = Robust.slope(number, seconds);
        double[] level = new double[seconds.length];
        for (int i = 0; i < level.length; i++) {
            level[i] = seconds[i] - slope * number[i];
        }
        double[] scores = level.length == 0 ? level : Robust.scores(level, TIMER);
        double middle = level.length == 0 ? 0 : Robust.median(level);
        List<Counted> counted = new ArrayList<>();
        for (int i = 0; i < laps.size(); i++) {
            int at = ordinary.indexOf(i);
            counted.add(at < 0 ? new Counted(i + 1, laps.get(i), false, named(laps.get(i)))
                    : judged(i + 1, laps.get(i), scores[at], level[at] - middle, ordinary.size()));
        }
        return new CountedLaps(List.copyOf(counted));
    }

    private static String named(Lap lap) {
        if (lap.flags().isEmpty()) {
            return "no time";
        }
        List<String> names = new ArrayList<>();
        for (LapFlag flag : LapFlag.values()) {
            if (lap.flags().contains(flag)) {
                names.add(flag == LapFlag.OUT || flag == LapFlag.IN ? flag.id() + "-lap" : flag.id());
            }
        }
        return String.join(", ", names);
    }

    private static Counted judged(int number, Lap lap, double score, double beyond, int ordinary) {
        boolean far = Math.abs(score) > FAR && ordinary >= FEWEST;
        if (far && score > 0) {
            return new Counted(number, lap, false, Laps.seconds(beyond, 2) + " slower than the trend of the others");
        }
        return new Counted(number, lap, true, far ? Laps.seconds(-beyond, 2)
                + " quicker than the trend of the others: was a corner cut?" : "");
    }

    /** How many count. */
    public int count() {
        return (int) laps.stream().filter(Counted::counts).count();
    }

    /** Those that count, for statistics. */
    public Stint stint() {
        List<Counted> counting = laps.stream().filter(Counted::counts).toList();
        return new Stint(counting.stream().mapToDouble(Counted::number).toArray(),
                counting.stream().mapToDouble(it -> it.lap().seconds().orElseThrow()).toArray());
    }
}
