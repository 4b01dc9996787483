package camberwell.fact;

import java.util.List;

/**
 * One rule's advice to the driver rather than to the car.
 *
 * @param note the name of the driving note
 */
public record Driving(String note, double certainty, String rule, List<Premise> premises) implements Conclusion {

    @Override
    public String about() {
        return note;
    }

    @Override
    public int hashCode() {
        return rule.hashCode();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Driving driving && Conclusion.sameWord(this, driving) && note.equals(driving.note);
    }
}
