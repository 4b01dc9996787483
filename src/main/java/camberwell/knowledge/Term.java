package camberwell.knowledge;

import java.util.List;
import java.util.Optional;

/**
 * A word of the trade.
 *
 * @param name as a file or a rule writes it: {@code snap-oversteer}
 * @param group the heading it stands under
 * @param meaning in plain words
 * @param felt for a symptom, a phase or a corner speed: how a newcomer is told of it, part of a sentence
 * @param see other words that help
 * @param drawing line by line, in characters; empty where none helps
 */
public record Term(String name, String group, String meaning, Optional<String> felt, List<String> see,
        List<String> drawing) {

    /** Copies the lists. */
    public Term {
        see = List.copyOf(see);
        drawing = List.copyOf(drawing);
    }
}
