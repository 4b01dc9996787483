package camberwell.cli;

import camberwell.advice.AdviceComparison;
import camberwell.input.CaseFile;
import camberwell.pack.RulePack;
import camberwell.report.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code camberwell rules compare}: what a change of rules does to the advice, over many cases. */
@Command(name = "compare", addMethodSubcommands = false,
        description = {"Compares the advice under two sets of rules over many cases: which changes appeared, "
            + "vanished or moved.", "Look at it before you share a rule."},
        footer = {"", "Examples:", "  camberwell rules compare built-in my-rules",
            "  camberwell rules compare my-rules.zip my-rules --cases my-cases",
            "  camberwell rules compare wet-days.zip wet-days.zip+my-rules"},
        exitCodeList = {"0:done", "1:a case of a folder's own cannot be read, and is left out",
            "2:the input or the command line is wrong; a case that cannot be read is left out"})
final class RulesCompareCommand implements Callable<Integer>, TakesRules {

    private static final String BUILT_IN = "built-in";

    private final Console console;
    private Engine engine;

    @Parameters(index = "0", paramLabel = "OLD",
            description = "A rule folder or .zip file, several joined by +, or the word " + BUILT_IN + ".")
    private String old;

    @Parameters(index = "1", paramLabel = "NEW",
            description = "A rule folder or .zip file, several joined by +, or the word " + BUILT_IN + ".")
    private String fresh;

    @Option(names = "--cases", paramLabel = "DIR",
            description = "A folder of cases. Without it, camberwell's own demo cases and those of the two folders.")
    private String cases;

    private final RulesOption rules = new RulesOption();

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    RulesCompareCommand(Console console, Engine engine) {
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
        List<String> olds = stack(old);
        List<String> news = stack(fresh);
        Engine before = with(olds);
        Engine after = with(news);
        PackCases found = new PackCases(console, after.cases(), engine.home().folder().resolve(RulePack.CASES));
        if (cases != null) {
            found.files(CaseFolder.cases(console.path(cases)));
        } else {
            found.files(CaseFolder.cases(engine.home().folder().resolve(RulePack.CASES)));
            Set<String> named = new LinkedHashSet<>(olds);
            named.addAll(news);
            RulesOption.read(List.copyOf(named), List.of(), console).forEach(pack ->
                    found.of(pack, console.path(pack.name())));
        }
        List<CaseFile> read = found.read();
        if (read.isEmpty() && !found.broken()) {
            console.err().println("There is no case in " + cases + ".");
            return ExitCode.WRONG_INPUT;
        }
        Map<CaseFile, AdviceComparison> compared = new LinkedHashMap<>();
        read.forEach(file -> compared.put(file, AdviceComparison.of(before.advisor().advise(file.run()),
                after.advisor().advise(file.run()))));
        if (format == Format.TEXT) {
            text(compared, after);
        } else {
            json(compared);
        }
        return found.code();
    }

    /** The packs of a side, joined by {@code +}; none for the built-in rules. A name that is a file's is that file. */
    private List<String> stack(String side) {
        return Files.exists(console.path(side)) ? List.of(side) : Arrays.stream(side.split("\\+"))
                .filter(part -> !part.isBlank() && !part.equals(BUILT_IN)).toList();
    }

    private Engine with(List<String> folders) {
        RulesOption.Named named = rules.on(engine.builtIn(), console, folders);
        RulesOption.refuseEmpty(named.packs());
        return named.base().withRules(named.packs());
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
