package camberwell.knowledge;

import camberwell.problem.Problem;
import camberwell.vocabulary.Nearest;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Checks what the conditions in a note say: that findings exist, and that every wording can come to be shown. */
final class WhenCheck {

    private final String file;
    private final Note note;
    private final Set<String> findings;
    private final Set<String> cautions;
    private final List<Problem> problems = new ArrayList<>();

    /**
     * @param file for messages
     * @param findings the names of all notes on readings and causes
     * @param cautions the names of all notes on cautions
     */
    WhenCheck(String file, Note note, Set<String> findings, Set<String> cautions) {
        this.file = file;
        this.note = note;
        this.findings = findings;
        this.cautions = cautions;
    }

    /** Everything that is wrong with them. */
    List<Problem> problems() {
        note.ways().values().forEach(way -> way.effects().forEach(effect -> named(effect.when())));
        named(note.when());
        List<Variant> variants = note.variants();
        for (int i = 0; i < variants.size(); i++) {
            named(variants.get(i).when());
            for (int j = 0; j < i; j++) {
                if (hides(variants.get(j), variants.get(i))) {
                    problem("the wording of the " + variants.get(i).key() + " for " + variants.get(i).when().text()
                            + " is never shown, since the one for " + variants.get(j).when().text()
                            + " stands before it", Optional.empty());
                }
            }
        }
        return problems;
    }

    private void named(When when) {
        for (String name : when.of(Matter.NO_CAUTION)) {
            if (!cautions.contains(name)) {
                problem("\"" + name + "\" is no caution", Nearest.to(name, cautions));
            }
        }
        for (Matter matter : List.of(Matter.FINDING, Matter.NO_FINDING)) {
            for (String name : when.of(matter)) {
                if (!findings.contains(name)) {
                    problem("\"" + name + "\" is no finding", Nearest.to(name, findings));
                }
            }
        }
    }

    /** Whether whatever the later one asks for, the earlier one is content with. */
    private static boolean hides(Variant earlier, Variant later) {
        return earlier.key().equals(later.key()) && earlier.way().equals(later.way())
                && earlier.when().words().entrySet().stream().allMatch(asked -> wide(asked, later.when()));
    }

    private static boolean wide(Map.Entry<Matter, List<String>> asked, When later) {
        List<String> words = later.of(asked.getKey());
        return !words.isEmpty() && asked.getValue().containsAll(words);
    }

    private void problem(String message, Optional<String> suggestion) {
        problems.add(Problem.error(file, 1, 1, message, suggestion));
    }
}
