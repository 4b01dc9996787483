package camberwell.report;

import camberwell.run.Case;
import camberwell.run.Report;
import camberwell.saying.Heard;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Says what was understood, what was not, and what is taken where nobody said it, in a line each. */
public final class HeardText {

    private HeardText() {
    }

    /** Writes what was heard of the driver's own words, and what is taken where nobody said it. */
    public static void write(Case run, Page page) {
        run.heard().ifPresent(heard -> write(heard, page));
        List<String> taken = new ArrayList<>();
        run.heard().ifPresent(heard -> taken.addAll(taken(run, heard)));
        run.reports().stream().filter(Report::meansBothAxles).map(report -> report.symptom().spoken()).distinct()
                .forEach(symptom -> taken.add(symptom + " at both axles"));
        if (!taken.isEmpty()) {
            page.paragraph(0, "Taken without being said: " + String.join(", ", taken) + ".");
        }
    }

    private static List<String> taken(Case run, Heard heard) {
        List<String> taken = new ArrayList<>();
        if (!heard.told().isEmpty()) {
            if (run.conditions().said().isEmpty()) {
                taken.add("dry");
            }
            if (lacks(heard, Severity.class)) {
                taken.add("plain to feel");
            }
            if (lacks(heard, Occurrence.class)) {
                taken.add("on every lap");
            }
        }
        return taken;
    }

    private static boolean lacks(Heard heard, Class<? extends Word> kind) {
        return heard.told().stream().anyMatch(told -> told.word(kind).isEmpty());
    }

    private static void write(Heard heard, Page page) {
        page.paragraph(0, "Heard: " + (heard.text().isEmpty() ? "nothing that camberwell understands" : heard.text())
                + ".");
        for (Heard.Unclear unclear : heard.unclear()) {
            page.paragraph(0, switch (unclear.mayBe().size()) {
                case 0 -> heard.quotes(unclear) ? "Not clear: \"" + unclear.words() + "\"."
                        : "Left open, as it is not sure: " + unclear.words() + ".";
                case 1 -> "Not sure of \"" + unclear.words() + "\": did you mean \"" + unclear.text() + "\"? Then say it so.";
                default -> "Not clear: \"" + unclear.words() + "\" may be " + unclear.text() + ".";
            });
        }
        List<String> rest = heard.notUnderstood();
        if (!rest.isEmpty()) {
            page.paragraph(0, "Not understood: " + rest.stream().map(words -> "\"" + words + "\"")
                    .collect(Collectors.joining(", ")) + ".");
        }
        if (!heard.loose().isEmpty()) {
            page.paragraph(0, "Said of nothing that the car does: " + heard.loose().stream()
                    .map(word -> word.spoken()).distinct().collect(Collectors.joining(", ")) + ".");
        }
    }
}
