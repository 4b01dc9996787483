package camberwell.run;

import camberwell.units.Quantity;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Witness;
import java.util.List;
import java.util.Optional;

/**
 * A change that was made earlier, and what came of it.
 *
 * @param change what was changed, and which way
 * @param moved how far, as far as that was noted
 * @param on the complaint that the outcome is about; all of them where it names none
 * @param trial how it was found out
 */
public record Tried(Change change, Moved moved, Outcome outcome, On on, Trial trial) {

    /**
     * How far it was moved.
     *
     * @param steps of the car's own
     * @param from the setting before
     * @param to the setting after
     * @param putBack whether the old setting was restored since
     */
    public record Moved(Optional<Integer> steps, Optional<Quantity> from, Optional<Quantity> to, boolean putBack) {

        /** Nothing was noted. */
        public static final Moved UNNOTED = new Moved(Optional.empty(), Optional.empty(), Optional.empty(), false);
    }

    /** A complaint as far as it was named; what is left open is any. */
    public record On(Optional<Symptom> symptom, Optional<Place> where, Optional<Phase> phase,
            Optional<CornerSpeed> speed) {

        /** All complaints of the case. */
        public static final On ALL = new On(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

        /** In words: {@code understeer at mid-corner in slow corners}; empty for all complaints. */
        public String text() {
            return symptom.map(it -> Report.complaint(it, where, phase, speed).toString()).orElse("");
        }
    }

    /**
     * How it was found out.
     *
     * @param run the number of the run that was driven with it
     * @param runsAgo how many runs ago that was, from 0 for the last one
     * @param laps that were counted
     * @param together how many changes were made at once, this one included; at least 1
     * @param witness by what it was judged
     * @param surface of that run, where it was noted
     * @param elsewhere whether it was on another track, on other tyres or by another driver
     */
    public record Trial(Optional<Integer> run, Optional<Integer> runsAgo, Optional<Integer> laps, int together,
            Optional<Witness> witness, Optional<Surface> surface, boolean elsewhere) {

        /** Here, by itself, and in the last run. */
        public static final Trial UNNOTED = new Trial(Optional.empty(), Optional.empty(), Optional.empty(), 1,
                Optional.empty(), Optional.empty(), false);
    }

    /** A change of which nothing is known but what came of it, for all complaints. */
    public static Tried of(Change change, Outcome outcome) {
        return new Tried(change, Moved.UNNOTED, outcome, On.ALL, Trial.UNNOTED);
    }

    /** The entries of one trial, which was judged for several complaints. */
    public static String text(List<Tried> entries) {
        StringBuilder text = new StringBuilder(entries.get(0).text());
        entries.subList(1, entries.size()).forEach(entry -> text.append("; ").append(entry.told()));
        return text.toString();
    }

    /** How it was found out, and what came of it: {@code on run 4, 9 laps: no effect on understeer at entry}. */
    public String text() {
        StringBuilder text = new StringBuilder(trial.run.map(number -> "on run " + number).orElse("before"));
        trial.laps.ifPresent(laps -> text.append(", ").append(laps).append(laps == 1 ? " lap" : " laps"));
        if (trial.together > 1) {
            text.append(", with ").append(trial.together - 1)
                    .append(trial.together == 2 ? " other change" : " other changes").append(" at once");
        }
        trial.surface.ifPresent(surface -> text.append(", on a ").append(surface.id()).append(" track"));
        if (trial.elsewhere) {
            text.append(", on another track, on other tyres or by another driver");
        }
        return text.append(": ").append(told()).toString();
    }

    private String told() {
        return outcome.told() + (on.text().isEmpty() ? "" : (outcome == Outcome.SAME ? " on " : ", ") + on.text());
    }
}
