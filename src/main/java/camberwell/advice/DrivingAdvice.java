package camberwell.advice;

import camberwell.fact.Driving;
import camberwell.knowledge.Note;
import java.util.List;

/** Something for the driver to do rather than for the car, with what the rules said for it. */
public record DrivingAdvice(Note note, double certainty, List<Driving> reasons) {

    /** The names of the rules, strongest first. */
    public List<String> rules() {
        return reasons.stream().map(Driving::rule).distinct().toList();
    }
}
