package camberwell.cli;

import camberwell.advice.Advice;
import camberwell.advice.AdviceComparison;
import camberwell.fact.Premise;
import camberwell.input.CaseFile;
import camberwell.input.CaseReader;
import camberwell.report.Page;
import camberwell.report.Words;
import camberwell.rules.Firing;
import camberwell.rules.RulePack;
import camberwell.rules.RuleText;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code camberwell rules try}: what a rule folder does on a case. */
@Command(name = "try", mixinStandardHelpOptions = true,
        description = "Shows which rules fire on a case, and the advice with and without a rule folder.",
        footer = {"", "Example:",
            "  camberwell rules try my-rules --case demo-cases/pushes-in-snaps-out.yaml"})
final class RulesTryCommand implements Callable<Integer> {

    private final Console console;
    private final Engine engine;

    @Parameters(paramLabel = "DIR", description = "The rule folder or .zip file.")
    private String folder;

    @Option(names = "--case", paramLabel = "CASE",
            description = "A case file; can be given again. Without it, the cases of the folder's own demo-cases.")
    private List<String> cases = new ArrayList<>();

    @Option(names = "--trust", paramLabel = "DIR", description = "Allows raw Drools in this folder.")
    private List<String> trusted = new ArrayList<>();

    RulesTryCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public Integer call() {
        List<Path> files = cases.isEmpty() ? CaseFolder.cases(console.path(folder).resolve(RulePack.CASES))
                : cases.stream().map(console::path).toList();
        if (files.isEmpty()) {
            console.err().println("Name a case with --case: " + folder + " has none of its own in " + RulePack.CASES + ".");
            return ExitCode.WRONG_INPUT;
        }
        Page page = new Page(console.width(), console.styled());
        write(files, RulesOption.read(List.of(folder), trusted, console), engine, page);
        console.out().print(page);
        return ExitCode.DONE;
    }

    /** Tries {@code packs} on every case. */
    static void write(List<Path> files, List<RulePack> packs, Engine engine, Page page) {
        CaseReader reader = new CaseReader();
        List<CaseFile> read = files.stream().map(reader::read).toList();
        Engine with = engine.withRules(packs);
        Set<String> own = with.rules().rules().values().stream()
                .filter(rule -> packs.stream().anyMatch(pack -> rule.file().startsWith(pack.name() + "/")))
                .map(RuleText::name).collect(Collectors.toSet());
        String name = packs.stream().map(RulePack::name).collect(Collectors.joining(", "));
        for (CaseFile file : read) {
            Map<String, Set<String>> fired = new LinkedHashMap<>();
            Advice after = with.advisor().advise(file.run(), firing -> note(firing, fired));
            Advice before = engine.advisor().advise(file.run());
            page.heading(file.run().title());
            page.paragraph(0, "Rules that fired, in order; those of " + name + " are marked with *:");
            int number = 0;
            for (Map.Entry<String, Set<String>> rule : fired.entrySet()) {
                number++;
                page.paragraph(2, (own.contains(rule.getKey()) ? "* " : "") + number + ". " + rule.getKey());
                rule.getValue().forEach(premises -> page.paragraph(6, "on " + premises));
            }
            own.stream().filter(rule -> !fired.containsKey(rule)).sorted()
                    .forEach(rule -> page.paragraph(2, "* did not fire: " + rule));
            changes("Without " + name, before, page);
            changes("With " + name, after, page);
            page.heading("What " + name + " changes");
            ComparisonText.write(AdviceComparison.of(before, after), with.notes(), page);
        }
    }

    private static void note(Firing firing, Map<String, Set<String>> fired) {
        fired.computeIfAbsent(firing.rule(), key -> new LinkedHashSet<>()).add(firing.premises().isEmpty()
                ? "something that was not said or read"
                : firing.premises().stream().map(Premise::statement).collect(Collectors.joining("; ")));
    }

    private static void changes(String heading, Advice advice, Page page) {
        page.heading(heading);
        if (advice.changes().isEmpty()) {
            page.paragraph(2, "no change to the car");
        }
        advice.changes().forEach(change -> page.paragraph(2, change.rank() + ". " + Words.change(change.change()) + ", "
                + Words.size(change) + " (score " + Words.two(change.score().total()) + ", certainty "
                + Words.two(change.score().certainty()) + ")"));
    }
}
