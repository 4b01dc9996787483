package camberwell.language;

import java.util.List;

/**
 * A rule file as it was read.
 *
 * @param name as the person named it
 * @param stage the stage of its folder
 * @param text the file as it stands
 * @param rules those without a problem, in the file's order
 * @param broken those with one, as far as they could be read
 */
public record RuleFile(String name, Stage stage, String text, List<RuleText> rules, List<RuleText> broken) {
}
