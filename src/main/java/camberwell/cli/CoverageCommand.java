package camberwell.cli;

import camberwell.upkeep.Coverage;
import camberwell.upkeep.Coverage.Cell;
import camberwell.report.Page;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Symptom;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code camberwell rules coverage}. */
@Command(name = "coverage", addMethodSubcommands = false,
        description = {"Shows which complaints lead to a change: each is put to the rules alone, clear and on every "
                + "lap, on a car that can have everything adjusted, with front, rear and all-wheel drive.",
            "Also names adjuster directions that no rule proposes or opposes, and notes that no rule uses."},
        footer = {"", "Examples:", "  camberwell rules coverage", "  camberwell rules coverage --format json"},
        exitCodeList = {"0:nothing is missing", "1:something is missing",
            "2:the input or the command line is wrong"})
final class CoverageCommand implements Callable<Integer>, TakesRules {

    private final Console console;
    private Engine engine;

    private final RulesOption rules = new RulesOption();

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    CoverageCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public RulesOption rules() {
        return rules;
    }

    @Override
    public Integer call() throws IOException {
        engine = rules.on(engine, console);
        Coverage coverage = Coverage.of(engine.advisor(), engine.rules(), engine.notes());
        if (format == Format.TEXT) {
            Page page = new Page(console.width(), console.styled());
            table(coverage, page);
            console.out().print(page);
        } else {
            Output.json(console, format, json -> {
                json(coverage, json);
            });
        }
        return coverage.complete() ? ExitCode.DONE : ExitCode.FOUND_WRONG;
    }

    private static void table(Coverage coverage, Page page) {
        page.paragraph(0, "A letter stands for a car that gets a change: F front-, R rear-, A all-wheel drive; "
                + "a dot for one that gets none and should. A dash: such a complaint makes no sense, or is rightly not "
                + "met with a change; see below.");
        page.blank();
        line(page, "complaint", "phase", "slow", "medium", "fast", "any");
        for (Symptom symptom : Symptom.values()) {
            Map<String, List<Cell>> rows = coverage.cells().stream().filter(cell -> cell.symptom() == symptom)
                    .collect(Collectors.groupingBy(CoverageCommand::row, LinkedHashMap::new, Collectors.toList()));
            rows.values().removeIf(cells -> cells.stream().allMatch(cell -> cell.without().isPresent()));
            if (page.narrow() && !rows.isEmpty()) {
                page.verbatim(symptom.id());
            }
            rows.forEach((row, cells) -> line(page, symptom.id(), row, mark(cells, Optional.of(CornerSpeed.SLOW)),
                    mark(cells, Optional.of(CornerSpeed.MEDIUM)), mark(cells, Optional.of(CornerSpeed.FAST)),
                    mark(cells, Optional.empty())));
        }
        page.heading("Where no change is right");
        Map<String, Set<String>> reasons = new LinkedHashMap<>();
        coverage.cells().forEach(cell -> cell.without().ifPresent(reason -> reasons
                .computeIfAbsent(reason, key -> new LinkedHashSet<>()).add(cell.symptom().id())));
        reasons.forEach((reason, symptoms) -> page.point(0, String.join(", ", symptoms) + ": " + reason));
        page.heading("Missing");
        list(page, "complaints without an answer", coverage.gaps().stream().map(CoverageCommand::text).toList());
        list(page, "directions that no rule proposes", ids(coverage.neverProposed()));
        list(page, "directions that no rule opposes", ids(coverage.neverOpposed()));
        list(page, "notes that no rule uses", coverage.unusedNotes());
    }

    /** On a narrow screen the complaint stands above its rows. */
    private static void line(Page page, String complaint, String... columns) {
        page.verbatim(((page.narrow() ? "  " : String.format("%-18s ", complaint))
                + String.format("%-11s %-6s %-6s %-6s %-6s", (Object[]) columns)).stripTrailing());
    }

    private static void list(Page page, String what, List<String> missing) {
        page.point(0, missing.size() + " " + what + (missing.isEmpty() ? "" : ": " + String.join(", ", missing)));
    }

    private static String row(Cell cell) {
        return cell.phase().map(phase -> phase.id()).orElseGet(() -> cell.where().orElseThrow().id());
    }

    private static String mark(List<Cell> cells, Optional<CornerSpeed> speed) {
        StringBuilder mark = new StringBuilder();
        for (Drive drive : Drive.values()) {
            cells.stream().filter(cell -> cell.drive() == drive && cell.speed().equals(speed)).forEach(cell ->
                    mark.append(cell.without().isPresent() ? '-' : cell.gap() ? '.'
                            : Character.toUpperCase(drive.id().charAt(0))));
        }
        return mark.toString();
    }

    private static String text(Cell cell) {
        return cell.symptom().id() + " " + row(cell) + cell.speed().map(speed -> " " + speed.id()).orElse("") + " "
                + cell.drive().id();
    }

    private static List<String> ids(List<Change> changes) {
        return changes.stream().map(Change::id).toList();
    }

    private static void json(Coverage coverage, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeBooleanField("complete", coverage.complete());
        json.writeArrayFieldStart("cells");
        for (Cell cell : coverage.cells()) {
            json.writeStartObject();
            json.writeStringField("symptom", cell.symptom().id());
            optional(json, "phase", cell.phase().map(phase -> phase.id()));
            optional(json, "speed", cell.speed().map(speed -> speed.id()));
            optional(json, "where", cell.where().map(axle -> axle.id()));
            json.writeStringField("drive", cell.drive().id());
            optional(json, "without", cell.without());
            strings(json, "changes", ids(cell.changes()));
            json.writeEndObject();
        }
        json.writeEndArray();
        strings(json, "never-proposed", ids(coverage.neverProposed()));
        strings(json, "never-opposed", ids(coverage.neverOpposed()));
        strings(json, "unused-notes", coverage.unusedNotes());
        json.writeEndObject();
    }

    private static void optional(JsonGenerator json, String key, Optional<String> value) throws IOException {
        if (value.isPresent()) {
            json.writeStringField(key, value.get());
        }
    }

    private static void strings(JsonGenerator json, String key, List<String> values) throws IOException {
        json.writeArrayFieldStart(key);
        for (String value : values) {
            json.writeString(value);
        }
        json.writeEndArray();
    }
}
