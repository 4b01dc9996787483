package camberwell.run;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What else is known of a run, besides the car, the day, the tyres' readings and the complaints.
 *
 * @param stint on which tyres and how far
 * @param pupil who drove
 * @param answers to the questions of rule packs, by the question's name
 * @param comment whatever the coach wants to keep beside it; nothing is concluded from it
 */
public record Background(Stint stint, Pupil pupil, Map<String, String> answers, Optional<String> comment) {

    /** Nothing more. */
    public static final Background UNKNOWN = new Background(Stint.UNKNOWN, Pupil.UNKNOWN, Map.of(), Optional.empty());

    /** Copies the map, in the order of its keys. */
    public Background {
        answers = answers.isEmpty() ? Map.of() : Collections.unmodifiableMap(new TreeMap<>(answers));
    }

    /** The same with another answer to a pack's question. */
    public Background withAnswer(String question, String answer) {
        Map<String, String> more = new TreeMap<>(answers);
        more.put(question, answer);
        return new Background(stint, pupil, more, comment);
    }
}
