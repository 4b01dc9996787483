package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.explain.DemoCases;
import camberwell.knowledge.Term;
import camberwell.knowledge.Terms;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScreenWidthTest {

    private static final String CASE = "demo-cases/pushes-in-snaps-out.yaml";
    private static final List<String> LINES = List.of("advise " + CASE, "advise --for newcomer " + CASE,
            "advise --for engineer " + CASE, "debrief", "explain " + CASE,
            "explain --all --why-not front-pressure-lower " + CASE, "explain --if reports[0].phase=exit " + CASE,
            "read " + CASE, "terms", "note", "note front-toe",
            "quiz", "predict --car demo-cases/cars/corvane-coupe.yaml --change rear-toe-toe-in",
            "pressure --cold 1.70bar --hot 2.05bar --target 1.90bar", "pressure " + CASE,
            "alignment toe --each 2mm --across 18in", "rules sentences", "rules coverage", "rules audit",
            "rules try demo-cases", "rules check demo-cases");

    @ParameterizedTest
    @ValueSource(ints = {40, 60, 80})
    @DisplayName("no command writes past the edge of the screen, but for a single word that is wider than it")
    void fits(int width) throws IOException {
        List<String> lines = new ArrayList<>(LINES);
        for (Term term : Terms.read(DemoCases.HOME.resolve("knowledge-notes/terms.yaml")).all()) {
            lines.add("terms " + term.name());
        }
        List<String> offenders = new ArrayList<>();
        for (String line : lines) {
            InProcess.run(width, "", line.split(" ")).out().lines().filter(it -> it.length() > width)
                    .filter(it -> it.strip().split(" +").length > 1 && !it.matches(" *\\S+ \\\\"))
                    .forEach(it -> offenders.add(line + ": " + it));
        }
        assertEquals(List.of(), offenders);
    }

    @Test
    @DisplayName("a command that is wider than the screen goes on after a backslash, as a shell takes it")
    void command() {
        String text = InProcess.run(40, "", "advise", CASE).out();
        String command = text.substring(text.indexOf("camberwell explain"));
        assertTrue(command.startsWith("camberwell explain \\\n    " + CASE + " \\\n    --change \""), command);
    }
}
