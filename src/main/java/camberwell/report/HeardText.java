package camberwell.report;

import camberwell.saying.Heard;
import camberwell.vocabulary.Symptom;
import java.util.List;
import java.util.stream.Collectors;

/** Says what was understood, and what was not, in a line each. */
public final class HeardText {

    private HeardText() {
    }

    /** Writes what was heard; nothing where nothing was said. */
    public static void write(Heard heard, Page page) {
        page.paragraph(0, "Heard: " + (heard.text().isEmpty() ? "nothing that camberwell understands" : heard.text())
                + ".");
        for (Heard.Unclear unclear : heard.unclear()) {
            page.paragraph(0, "Not clear: \"" + unclear.words() + "\"" + (unclear.mayBe().isEmpty() ? "."
                    : " may be " + unclear.mayBe().stream().map(Symptom::spoken).collect(Collectors.joining(" or "))
                            + "."));
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
