package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.car.Car;
import camberwell.input.CaseReader;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Report;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The right lever first: by symptom, phase, speed and driven axle, as an engineer expects it")
class LeverMatrixTest {

    private static final Path MATRIX = Path.of("src/test/resources/levers/matrix.yaml");

    private final JsonNode matrix;
    private final List<String> wrong = new ArrayList<>();

    LeverMatrixTest() throws IOException {
        matrix = new YAMLMapper().readTree(MATRIX.toFile());
    }

    @Test
    @DisplayName("each cell: what may stand first, what may follow, and what may stand nowhere")
    void cells() {
        int cells = 0;
        for (JsonNode row : matrix.path("cells")) {
            for (String car : expand(row.path("cars"), "cars")) {
                for (List<Report> reports : reports(row)) {
                    check(row, car, reports);
                    cells++;
                }
            }
        }
        assertTrue(cells > 150, cells + " cells");
        assertEquals("", String.join("\n", wrong));
    }

    private void check(JsonNode row, String name, List<Report> reports) {
        Car car = new CaseReader().readCar(Path.of("demo-cases/cars/" + name + ".yaml"));
        Conditions day = new Conditions(Optional.of(row.has("surface")
                ? Word.of(Surface.class, row.path("surface").asText()) : Surface.DRY), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(),
                Conditions.UNKNOWN.turns());
        List<String> ranked = Paddock.advise(new Case("a cell of the matrix", "-", car, day, Map.of(), reports,
                List.of())).changes().stream().map(change -> change.change().adjuster().id() + " "
                        + change.change().direction().id()).toList();
        String cell = name + ": " + String.join("; ", reports.stream().map(LeverMatrixTest::brief).toList());
        Set<String> first = expand(row.path("first"), "groups");
        Set<String> never = expand(row.path("never"), "groups");
        never.removeAll(first);
        never.removeAll(expand(row.path("later"), "groups"));
        List<String> offending = ranked.stream().filter(never::contains).toList();
        if (ranked.isEmpty() || !first.contains(ranked.get(0))) {
            wrong.add(cell + "\n    first is " + (ranked.isEmpty() ? "nothing" : ranked.get(0)) + " of " + ranked);
        }
        if (!offending.isEmpty()) {
            wrong.add(cell + "\n    never " + offending + " of " + ranked);
        }
    }

    private static String brief(Report report) {
        return report.symptom().id() + report.phase().map(phase -> " " + phase.id()).orElse("")
                + report.speed().map(speed -> " " + speed.id()).orElse("");
    }

    /** One list of complaints for each phase and speed, or, of a row with {@code together}, all of them at once. */
    private List<List<Report>> reports(JsonNode row) {
        List<List<Report>> each = new ArrayList<>();
        List<Report> together = new ArrayList<>();
        for (String symptom : words(row.path("symptom"))) {
            for (String phase : words(row.path("phase"))) {
                for (String speed : words(row.path("speed"))) {
                    Report report = new Report(Word.of(Symptom.class, symptom), Optional.empty(),
                            Word.find(Phase.class, phase), Word.find(CornerSpeed.class, speed), Severity.STRONG,
                            Occurrence.EVERY_LAP, Optional.of(Since.WHOLE_RUN), Optional.empty());
                    each.add(List.of(report));
                    together.add(report);
                }
            }
        }
        return row.path("together").asBoolean() ? List.of(together) : each;
    }

    private static List<String> words(JsonNode node) {
        List<String> words = new ArrayList<>();
        if (node.isArray()) {
            node.forEach(word -> words.add(word.asText()));
        } else {
            words.add(node.asText());
        }
        return words;
    }

    /** The words of a list, with the names of groups written out; every lever must be one that exists. */
    private Set<String> expand(JsonNode node, String groups) {
        Set<String> all = new TreeSet<>();
        for (String word : words(node)) {
            if (matrix.path(groups).has(word)) {
                all.addAll(words(matrix.path(groups).path(word)));
            } else if (!word.isEmpty()) {
                all.add(word);
            }
        }
        if (groups.equals("groups")) {
            all.forEach(lever -> assertTrue(Word.of(Adjuster.class, lever.split(" ")[0]).directions()
                    .contains(Word.of(Direction.class, lever.split(" ")[1])), lever));
        }
        return all;
    }
}
