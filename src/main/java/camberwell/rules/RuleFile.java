package camberwell.rules;

import java.util.List;

/**
 * A rule file that was read without a problem.
 *
 * @param name as the person named it
 * @param stage the stage of its folder
 * @param text the file as it stands
 * @param rules in the file's order
 */
record RuleFile(String name, Stage stage, String text, List<RuleText> rules) {
}
