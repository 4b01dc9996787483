package camberwell.physics.motion;

import java.util.List;

/**
 * Something that a car is asked to do, the same of a car before and after a change. Its course, pace and inputs are
 * fixed when it is made.
 */
public interface Manoeuvre {

    /** Has a car do it. */
    History drive(MovingCar car);

    /** The same no further than its parts go, for figures of them. */
    default History driveParts(MovingCar car) {
        return drive(car);
    }

    /** The parts of it, in order; none before the first begins. */
    List<Part> parts();

    /**
     * A part of a manoeuvre.
     *
     * @param phase which part of a corner it is
     * @param over the channel that it is bounded by: distance along the course, or time
     * @param from where it begins, m or s
     * @param to where it ends
     */
    record Part(Phase phase, Channel over, double from, double to) {

        /** Whether a moment of a run lies in it. */
        public boolean holds(History history, int moment) {
            double place = history.at(over, moment);
            return place >= from && place < to;
        }
    }

    /** Parts of a corner, as a moving car goes through them. */
    enum Phase { BRAKING, ENTRY, LIFT_OFF, MID_CORNER, EXIT, STRAIGHT, KERBS }
}
