package camberwell.cli;

import camberwell.debrief.Ending;
import camberwell.report.Page;
import camberwell.saying.MovedWords;
import camberwell.vocabulary.Change;
import java.util.List;
import java.util.Locale;

/** What is asked of the advice: why, why not another change, how it came about, what if. */
final class AskedAfter {

    private final Ending ending;

    AskedAfter(Ending ending) {
        this.ending = ending;
    }

    /** Answers what may be asked before the advice is given as well; false where something else was typed. */
    boolean early(String typed, Page page) {
        String lower = typed.toLowerCase(Locale.ROOT).strip();
        // "Why no grip on entry?" tells what the car does.
        boolean whyNot = lower.matches("(and )?why (not|no) .*") && !MovedWords.named(lower).isEmpty();
        return (whyNot || lower.startsWith("what if ")) && of(typed, page);
    }

    /** Answers on {@code page}; false where something else was typed. */
    boolean of(String typed, Page page) {
        String lower = typed.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ").replaceFirst("[?.!]+$", "");
        if (lower.matches("why( \\d+)?")) {
            ending.why(rank(lower), page);
        } else if (lower.matches("(and )?why (not|no)\\b.*")) {
            whyNot(lower.replaceFirst("^(and )?why (not|no)", "").strip(), page);
        } else if (lower.matches("explain( \\d+)?")) {
            ending.explain(rank(lower), page);
        } else if (lower.startsWith("what if ") || lower.startsWith("if ")) {
            ending.whatIf(typed.replaceFirst("(?i)^(what )?if ", ""), page);
        } else {
            return false;
        }
        return true;
    }

    private void whyNot(String words, Page page) {
        List<Change> changes = MovedWords.named(words);
        if (changes.isEmpty()) {
            page.paragraph(0, "Why not what? Name what can be changed: why not camber; why not a softer front bar.");
        } else {
            ending.whyNot(changes, page);
        }
    }

    private static int rank(String typed) {
        String digits = typed.replaceAll("\\D", "");
        return digits.isEmpty() || digits.length() > 3 ? 1 : Math.max(1, Integer.parseInt(digits));
    }
}
