package camberwell.cli;

import camberwell.advice.AdviceComparison;
import camberwell.input.CaseFile;
import camberwell.input.CaseReader;
import camberwell.pack.RulePack;
import camberwell.report.Page;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code camberwell rules compare}: what a change of rules does to the advice, over many cases. */
@Command(name = "compare", mixinStandardHelpOptions = true,
        description = {"Compares the advice under two sets of rules over many cases: which changes appeared, "
            + "vanished or moved.", "Look at it before you share a rule."},
        footer = {"", "Examples:", "  camberwell rules compare built-in my-rules",
            "  camberwell rules compare my-rules.zip my-rules --cases my-cases"})
final class RulesCompareCommand implements Callable<Integer> {

    private static final String BUILT_IN = "built-in";

    private final Console console;
    private final Engine engine;

    @Parameters(index = "0", paramLabel = "OLD",
            description = "A rule folder or .zip file, or the word " + BUILT_IN + ".")
    private String old;

    @Parameters(index = "1", paramLabel = "NEW",
            description = "A rule folder or .zip file, or the word " + BUILT_IN + ".")
    private String fresh;

    @Option(names = "--cases", paramLabel = "DIR",
            description = "A folder of cases. Without it, camberwell's own demo cases and those of the two folders.")
    private String cases;

    @Option(names = "--trust", paramLabel = "DIR", description = "Allows raw Drools in this folder.")
    private List<String> trusted = new ArrayList<>();

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    RulesCompareCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public Integer call() throws IOException {
        List<String> folders = Stream.of(old, fresh).filter(folder -> !folder.equals(BUILT_IN)).toList();
        List<RulePack> packs = RulesOption.read(folders, trusted, console);
        Engine before = old.equals(BUILT_IN) ? engine : engine.withRules(packs.subList(0, 1));
        Engine after = fresh.equals(BUILT_IN) ? engine
                : engine.withRules(packs.subList(packs.size() - 1, packs.size()));
        List<Path> files = files();
        if (files.isEmpty()) {
            console.err().println("There is no case in " + cases + ".");
            return ExitCode.WRONG_INPUT;
        }
        CaseReader reader = cases != null || !trusted.isEmpty() ? after.cases() : after.cases().within(List.of(
                engine.home().resolve(RulePack.CASES), console.path(old), console.path(fresh)));
        List<CaseFile> read = CaseFolder.read(reader, files, console);
        Map<CaseFile, AdviceComparison> compared = new LinkedHashMap<>();
        read.forEach(file -> compared.put(file, AdviceComparison.of(before.advisor().advise(file.run()),
                after.advisor().advise(file.run()))));
        if (format == Format.TEXT) {
            text(compared, after);
        } else {
            json(compared);
        }
        return read.size() == files.size() ? ExitCode.DONE : ExitCode.WRONG_INPUT;
    }

    private List<Path> files() {
        if (cases != null) {
            return CaseFolder.cases(console.path(cases));
        }
        TreeSet<Path> files = new TreeSet<>(CaseFolder.cases(engine.home().resolve(RulePack.CASES)));
        files.addAll(CaseFolder.cases(console.path(old).resolve(RulePack.CASES)));
        files.addAll(CaseFolder.cases(console.path(fresh).resolve(RulePack.CASES)));
        return List.copyOf(files);
    }

    private void text(Map<CaseFile, AdviceComparison> compared, Engine after) {
        Page page = new Page(console.width(), console.styled());
        compared.forEach((file, comparison) -> {
            if (!comparison.same()) {
                page.heading(file.run().title());
                ComparisonText.write(comparison, after.notes(), page);
            }
        });
        long differ = compared.values().stream().filter(comparison -> !comparison.same()).count();
        page.blank().paragraph(0, compared.size() + " case" + (compared.size() == 1 ? "" : "s")
                + " compared; the advice "
                + (differ == 0 ? "is the same on all of them" : "differs on " + differ));
        console.out().print(page);
    }

    private void json(Map<CaseFile, AdviceComparison> compared) throws IOException {
        Output.json(console, format, json -> {
            json.writeStartObject();
            json.writeNumberField("cases", compared.size());
            json.writeArrayFieldStart("differences");
            for (Map.Entry<CaseFile, AdviceComparison> entry : compared.entrySet()) {
                if (!entry.getValue().same()) {
                    json.writeStartObject();
                    json.writeStringField("case", entry.getKey().run().title());
                    ComparisonText.write(entry.getValue(), json);
                    json.writeEndObject();
                }
            }
            json.writeEndArray();
            json.writeEndObject();
        });
    }
}
