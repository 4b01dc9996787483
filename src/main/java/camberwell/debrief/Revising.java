package camberwell.debrief;

import camberwell.report.Page;
import camberwell.vocabulary.Nearest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which of the answers somebody wants to give anew: {@code change}, {@code change phase}, {@code change 3}. */
final class Revising {

    private static final String WORD = "change";

    private Revising() {
    }

    /** Each answer's word: the field, with a number where it was asked more than once. */
    static List<String> names(List<Entry> entries) {
        List<String> names = new ArrayList<>();
        for (Entry entry : entries) {
            String id = entry.topic().name();
            int times = 1 + (int) names.stream().filter(name -> name.equals(id) || name.startsWith(id + "-")).count();
            names.add(times == 1 ? id : id + "-" + times);
        }
        return names;
    }

    /** What is to be changed, where a line asks that: the words of a complaint may begin so, "change of direction is slow". */
    static Optional<String> what(String lower, List<Entry> entries) {
        if (!lower.matches(WORD + "( \\S+)*")) {
            return Optional.empty();
        }
        String what = lower.substring(WORD.length()).strip();
        boolean meant = what.isEmpty() || what.chars().allMatch(Character::isDigit)
                || names(entries).contains(what.replace(' ', '-')) || what.indexOf(' ') < 0;
        return meant ? Optional.of(what) : Optional.empty();
    }

    /** The entry that is meant; empty where none is, which is said. */
    static Optional<Integer> entry(String what, List<Entry> entries, Page page) {
        if (entries.isEmpty()) {
            page.paragraph(0, "Nothing is answered yet.");
            return Optional.empty();
        }
        List<String> names = names(entries);
        if (what.isEmpty()) {
            page.paragraph(0, "Which answer? Type change and its number or its word.");
            for (int i = 0; i < entries.size(); i++) {
                page.numbered(1, i + 1, names.get(i) + Reasons.said(entries.get(i)));
            }
            return Optional.empty();
        }
        try {
            List<String> numbered = Reply.numbered(what, names);
            return Optional.of(names.indexOf(numbered.isEmpty() ? Reply.begun(what, names) : numbered.get(0)));
        } catch (Reply.NoAnswer e) {
            page.paragraph(0, Nearest.to(what, names).map(near -> "Nothing was answered to \"" + what
                    + "\"; did you mean change " + near + "?").orElse("Nothing was answered to \"" + what
                    + "\" by itself; what was: " + String.join(", ", names) + "."));
            return Optional.empty();
        }
    }
}
