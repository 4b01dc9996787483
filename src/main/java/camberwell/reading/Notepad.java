package camberwell.reading;

import camberwell.fact.Reading.State;
import camberwell.fact.Reading;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;

/** What the tyres show and what of it is doubted, as it is noted down. */
final class Notepad {

    /** Clearness below this is noise. */
    private static final double NOISE = 0.05;

    private final List<Reading> readings = new ArrayList<>();
    private final List<String> doubts = new ArrayList<>();

    /** What was noted, in the order of noting. */
    List<Reading> readings() {
        return List.copyOf(readings);
    }

    /** What was doubted, in the order of doubting. */
    List<String> doubts() {
        return List.copyOf(doubts);
    }

    /**
     * Notes what an axle or a tyre shows, unless it is noise.
     *
     * @param place the axle's or the tyre's word
     * @param clearness 0 to 1
     */
    void note(String place, State state, double clearness, String statement) {
        // Without the dust of binary fractions, which could tip what is noise.
        double tidy = Math.rint(clearness * 1e6) / 1e6;
        if (tidy > NOISE) {
            readings.add(new Reading(Word.of(Place.class, place), state, tidy, statement));
        }
    }

    void doubt(String about) {
        doubts.add(about);
    }
}
