package camberwell.language;

import java.util.List;
import java.util.Optional;

/**
 * A rule as it was written.
 *
 * @param name unique over the rule base
 * @param stage the stage of its folder
 * @param because why, for this very situation
 * @param note the knowledge note with the physics and the sources
 * @param replaces the rule of an earlier folder that it takes the place of
 * @param standing its id, its age, and whether it is on trial
 * @param file as the person named it
 * @param line of its name, from 1
 */
public record RuleText(String name, Stage stage, String because, String note, Optional<String> replaces,
        Standing standing, String file, int line, List<Condition> conditions, List<Line> conclusions) {

    /** What it says when it fires, in the order of its sentences. */
    public List<Statement> statements() {
        return conclusions.stream().map(Line::statement).toList();
    }
}
