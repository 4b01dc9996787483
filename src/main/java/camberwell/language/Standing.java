package camberwell.language;

import java.util.Optional;

/**
 * What a rule is in the rule base, whatever its title says today.
 *
 * @param id short, and kept when the title changes: letters for a topic, a number, and F or R where one text stands for
 *     both ends; a rule of an instructor's own may do without
 * @param since the version of the rule base, or of the folder, that has it first
 * @param trial whether it is on trial: advice rests on it, and says so
 */
public record Standing(Optional<String> id, Optional<String> since, boolean trial) {
}
