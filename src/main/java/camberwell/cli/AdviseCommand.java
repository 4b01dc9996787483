package camberwell.cli;

import camberwell.advice.Advice;
import camberwell.input.CaseFile;
import camberwell.input.CaseReader;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.report.AdviceJson;
import camberwell.report.AdviceText;
import camberwell.report.NewcomerText;
import camberwell.report.Page;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.vocabulary.Audience;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code camberwell advise}: a case goes in, ranked changes come out. */
@Command(name = "advise", mixinStandardHelpOptions = true, addMethodSubcommands = false,
        description = "Reads cases and names the changes to make, best first.",
        footer = {"", "Examples:",
            "  camberwell advise demo-cases/pushes-in-snaps-out.yaml",
            "  camberwell advise --say \"pushes on the way in\" --car my-car.yaml",
            "  camberwell advise --for newcomer my-case.yaml",
            "  camberwell advise --top 1 --score monday.yaml tuesday.yaml",
            "  camberwell advise --rules my-rules my-case.yaml",
            "  camberwell advise --book runs",
            "  camberwell advise --format json - < case.yaml"})
final class AdviseCommand implements Callable<Integer> {

    /** Stands among the cases for what was said; no file has an empty name. */
    private static final String SAID = "";

    private final Console console;
    private Engine engine;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CASE", arity = "0..*",
            description = "A case file, or - for standard input; with --book the last run if none is named.")
    private List<String> cases = new ArrayList<>();

    @Option(names = "--book", paramLabel = "DIR",
            description = "The book of runs: what came of earlier changes on the same car is weighed too.")
    private String book;

    @Option(names = "--say", paramLabel = "TEXT",
            description = "What the driver said, in the driver's own words, instead of a case; with --car.")
    private String say;

    @Option(names = "--car", paramLabel = "CAR",
            description = "The car's file, with --say; with --book and no case, the name of the car whose last run is meant.")
    private String car;

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.OF_CASES)
    private Format format;

    @Option(names = "--top", defaultValue = "5", paramLabel = "N", converter = Count.class,
            description = "How many changes to show; 5 by default.")
    private int top;

    @Option(names = "--for", defaultValue = "club", paramLabel = "AUDIENCE", converter = TypedWord.ForWhom.class,
            description = "newcomer, club (the default) or engineer: other words and another amount, the same advice.")
    private Audience audience;

    @Option(names = "--score", description = "Show every term of each change's score.")
    private boolean score;

    @Mixin
    private RulesOption rules;

    AdviseCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public Integer call() {
        check();
        engine = rules.on(engine, console);
        engine.openAhead();
        CaseReader reader = engine.cases();
        if (say != null) {
            cases = List.of(SAID);
        } else if (cases.isEmpty()) {
            cases = List.of(RunsOnCase.lastIn(console, book, Optional.ofNullable(car)));
        }
        Progress progress = new Progress(console, cases.size());
        boolean array = format == Format.JSON && cases.size() > 1;
        boolean[] state = {false, false};
        InOrder.forEach(cases, name -> advise(reader, name), outcome -> {
            progress.step();
            outcome.said().forEach(line -> console.err().println(console.shown(line)));
            state[0] |= outcome.text().isEmpty();
            outcome.text().ifPresent(text -> {
                console.out().print(array ? (state[1] ? ",\n" : "[") + text : text + "\n");
                state[1] = true;
            });
        });
        if (array) {
            console.out().println(state[1] ? "]" : "[]");
        }
        progress.done();
        return state[0] ? ExitCode.WRONG_INPUT : ExitCode.DONE;
    }

    private void check() {
        CaseInput.once(cases);
        if (say == null && cases.isEmpty() && book == null) {
            throw new ParameterException(spec.commandLine(), "which case? Name a case file, - for standard input, or a "
                    + "book of runs with --book; or say what the car did with --say");
        }
        if (say != null && !cases.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "--say stands for a case; write it into a case's file as say:");
        }
        if (say != null && car == null) {
            throw new ParameterException(spec.commandLine(), "--say wants the car's file; name it with --car");
        }
        if (say == null && car != null && !cases.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "--car goes with --say or --book; a case names its car itself");
        }
    }

    private CaseFile said(CaseReader reader) {
        Path file = console.path(car);
        Case run = new Case(say.strip(), "-", reader.readCar(file), Conditions.UNKNOWN, Map.of(), List.of(), List.of(),
                Optional.of(file.toString()), Map.of());
        return new CaseFile(run.withHeard(engine.listener().hear(say)), List.of());
    }

    /**
     * What came of one case.
     *
     * @param text the advice; empty when the case cannot be used
     * @param said warnings, or what is wrong
     */
    private record Outcome(Optional<String> text, List<String> said) {
    }

    private Outcome advise(CaseReader reader, String name) {
        try {
            CaseFile file = say != null && name.equals(SAID) ? said(reader) : CaseInput.read(reader, console, name);
            Advice advice = engine.advisor().advise(book == null ? file.run()
                    : RunsOnCase.inform(console, book, file.run()));
            return new Outcome(Optional.of(format == Format.TEXT ? text(advice) : json(advice)),
                    file.warnings().stream().map(Problem::text).toList());
        } catch (ProblemsException e) {
            return new Outcome(Optional.empty(), e.problems().stream().map(Problem::withExcerpt).toList());
        }
    }

    private String text(Advice advice) {
        Page page = new Page(console.width(), console.styled());
        write(advice, page);
        return page.toString();
    }

    private String json(Advice advice) {
        try {
            return Output.text(format, json -> new AdviceJson(engine.notes(), top).with(engine.voices()).write(advice, json));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void write(Advice advice, Page page) {
        if (audience == Audience.NEWCOMER) {
            new NewcomerText(engine.notes(), engine.home().terms()).write(advice, page);
        } else {
            new AdviceText(engine.notes(), audience, top, score)
                    .beside(Stream.concat(book == null ? Stream.of() : Stream.of("--book", book),
                    rules.typed().stream()).toList()).with(engine.voices()).write(advice, page);
        }
    }
}
