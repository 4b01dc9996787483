package camberwell.cli;

import camberwell.explain.Comparison;
import camberwell.explain.Explainer;
import camberwell.explain.How;
import camberwell.explain.Reasoning;
import camberwell.explain.WhyNot;
import camberwell.input.CaseFile;
import camberwell.input.Substitution;
import camberwell.report.ExplainJson;
import camberwell.report.ExplainText;
import camberwell.report.Page;
import camberwell.run.Case;
import camberwell.vocabulary.Change;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code camberwell explain}: how advice came about, why a change is not in it, and what would make it another. */
@Command(name = "explain", addMethodSubcommands = false,
        description = "Explains the advice on a case: how, why not, and what if. Without an option it explains the "
                + "first change.",
        footer = {"", "Examples:",
            "  camberwell explain demo-cases/pushes-in-snaps-out.yaml",
            "  camberwell explain my-case.yaml --change \"front-camber less-negative\"",
            "  camberwell explain my-case.yaml --why-not \"rear-wing more\"",
            "  camberwell explain my-case.yaml --if \"tyres.front-left.inner=96 °C\" \\",
            "      --if reports[0].phase=exit",
            "  camberwell explain my-case.yaml --rules my-rules --format json"})
final class ExplainCommand implements Callable<Integer>, TakesRules {

    /** One more than a case may have, so that one that is larger is told of. */
    private static final int MOST_BYTES = (1 << 20) + 1;

    private final Console console;
    private Engine engine;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CASE", description = "A case file, or - for standard input.")
    private String name;

    @Option(names = "--change", paramLabel = "CHANGE",
            description = "Shows how a change came about, from what was typed to its place in the advice.")
    private List<String> changes = List.of();

    @Option(names = "--why-not", paramLabel = "CHANGE",
            description = "Shows what keeps a change out of the advice, sentence by sentence.")
    private List<String> whyNots = List.of();

    @Option(names = "--if", paramLabel = "PATH=VALUE",
            description = "Reads one value of the case otherwise and lays the two pieces of advice side by side.")
    private List<String> assumptions = List.of();

    @Option(names = "--all", description = "Shows every silent rule, not only those that lack least.")
    private boolean all;

    @Option(names = "--book", paramLabel = "DIR",
            description = "The book of runs: what came of earlier changes on the same car is weighed too.")
    private String book;

    private final RulesOption rules = new RulesOption();

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    ExplainCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public RulesOption rules() {
        return rules;
    }

    @Override
    public Integer call() throws IOException {
        List<Change> wanted = changes.stream().map(this::change).toList();
        List<Change> missed = whyNots.stream().map(this::change).toList();
        List<Substitution> substitutions = assumptions.stream().map(text -> Substitution.parse("--if", text)).toList();
        engine = rules.on(engine, console);
        byte[] typed = name.equals("-") ? console.in().readNBytes(MOST_BYTES) : new byte[0];
        CaseFile file = read(typed, List.of());
        file.warnings().forEach(warning -> console.err().println(console.shown(warning.text())));
        Explainer explainer = new Explainer(engine.rules(), engine.notes(), engine.advisor(), engine.outOfUse());
        Reasoning reasoning = explainer.reason(file.run());
        if (wanted.isEmpty() && missed.isEmpty() && substitutions.isEmpty()) {
            wanted = reasoning.advice().changes().stream().limit(1).map(ranked -> ranked.change()).toList();
        }
        Optional<Comparison> comparison = substitutions.isEmpty() ? Optional.empty()
                : Optional.of(Comparison.of(reasoning.advice(),
                        explainer.reason(read(typed, substitutions).run()).advice()));
        List<How> hows = new ArrayList<>();
        List<WhyNot> whys = new ArrayList<>();
        for (Change change : wanted) {
            explainer.how(reasoning, change).ifPresentOrElse(hows::add,
                    () -> whys.add(explainer.whyNot(reasoning, change)));
        }
        missed.forEach(change -> whys.add(explainer.whyNot(reasoning, change)));
        if (format == Format.TEXT) {
            Page page = new Page(console.width(), console.styled());
            ExplainText text = new ExplainText(engine.notes(), all);
            hows.forEach(how -> text.how(reasoning, how, page));
            whys.forEach(why -> text.whyNot(why, page));
            comparison.ifPresent(both -> text.compare(both, assumptions, page));
            if (hows.isEmpty() && whys.isEmpty() && comparison.isEmpty()) {
                page.paragraph(0, "No change is advised, so there is none to explain. Ask about one with --why-not.");
            }
            console.out().print(page);
        } else {
            Output.tree(console, format, new ExplainJson(engine.notes()).write(reasoning, hows, whys, comparison));
        }
        return ExitCode.DONE;
    }

    private CaseFile read(byte[] typed, List<Substitution> substitutions) {
        CaseFile file = name.equals("-")
                ? engine.cases().read("-", new ByteArrayInputStream(typed), console.directory(), substitutions)
                : engine.cases().read(console.path(name), substitutions);
        Case run = file.run().withSource(name);
        return new CaseFile(book == null ? run : RunsOnCase.inform(console, book, run), file.warnings());
    }

    private Change change(String text) {
        return ChangeWords.parse(text).orElseThrow(() -> new ParameterException(spec.commandLine(),
                ChangeWords.problem(text)));
    }
}
