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
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;

/** {@code camberwell advise}: a case goes in, ranked changes come out. */
final class AdviseCommand implements Callable<Integer>, TakesRules {

    /** Stands among the cases for what was said; no file has an empty name. */
    private static final String SAID = "";

    private final Console console;
    private Engine engine;

    private final PositionalParamSpec named = PositionalParamSpec.builder().paramLabel("CASE").arity("0..*").type(List.class)
            .auxiliaryTypes(String.class).initialValue(List.of())
            .description("A case file, or - for standard input; with --book the last run if none is named.").build();
    private final Described<String> book = Described.text("--book", "DIR",
            "The book of runs: what came of earlier changes on the same car is weighed too.");
    private final Described<String> say = Described.text("--say", "TEXT",
            "What the driver said, in the driver's own words, instead of a case; with --car.");
    private final Described<String> car = Described.text("--car", "CAR",
            "The car's file, with --say; with --book and no case, the name of the car whose last run is meant.");
    private final Described<Format> format = Described.one(new TypedWord<>(Format.class), Format.class, "--format", "FORMAT",
            "text", Format.OF_CASES);
    private final Described<Integer> top = Described.one(new Count(), Integer.class, "--top", "N", "5",
            "How many changes to show; 5 by default.");
    private final Described<Audience> audience = Described.one(new TypedWord.ForWhom(), Audience.class, "--for", "AUDIENCE",
            "club", "newcomer, club (the default) or engineer: other words and another amount, the same advice.");
    private final Described<Boolean> score = Described.flag("--score", "Show every term of each change's score.");
    private final RulesOption rules = new RulesOption();

    private final CommandSpec spec = CommandSpec.wrapWithoutInspection(this).name("advise").addPositional(named);

    AdviseCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
        for (Described<?> option : List.of(book, say, car, format, top, audience, score)) {
            spec.addOption(option.option());
        }
        rules.addTo(spec);
        spec.usageMessage().description("Reads cases and names the changes to make, best first.").footer("", "Examples:",
                "  camberwell advise demo-cases/pushes-in-snaps-out.yaml",
                "  camberwell advise --say \"pushes on the way in\" --car my-car.yaml",
                "  camberwell advise --for newcomer my-case.yaml",
                "  camberwell advise --top 1 --score monday.yaml tuesday.yaml",
                "  camberwell advise --rules my-rules my-case.yaml",
                "  camberwell advise --book runs",
                "  camberwell advise --format json - < case.yaml");
    }

    /** Its line, as the library knows it. */
    CommandSpec line() {
        return spec;
    }

    @Override
    public RulesOption rules() {
        return rules;
    }

    @Override
    public Integer call() {
        List<String> cases = named.getValue();
        check(cases);
        engine = rules.on(engine, console);
        engine.openAhead();
        CaseReader reader = engine.cases();
        if (say.value() != null) {
            cases = List.of(SAID);
        } else if (cases.isEmpty()) {
            cases = List.of(RunsOnCase.lastIn(console, book.value(), Optional.ofNullable(car.value())));
        }
        Progress progress = new Progress(console, cases.size());
        boolean array = format.value() == Format.JSON && cases.size() > 1;
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

    private void check(List<String> cases) {
        CaseInput.once(cases);
        if (say.value() == null && cases.isEmpty() && book.value() == null) {
            throw new ParameterException(spec.commandLine(), "which case? Name a case file, - for standard input, or a "
                    + "book of runs with --book; or say what the car did with --say");
        }
        if (say.value() != null && !cases.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "--say stands for a case; write it into a case's file as say:");
        }
        if (say.value() != null && car.value() == null) {
            throw new ParameterException(spec.commandLine(), "--say wants the car's file; name it with --car");
        }
        if (say.value() == null && car.value() != null && !cases.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "--car goes with --say or --book; a case names its car itself");
        }
    }

    private CaseFile said(CaseReader reader) {
        Path file = console.path(car.value());
        Case run = new Case(say.value().strip(), "-", reader.readCar(file), Conditions.UNKNOWN, Map.of(), List.of(), List.of(),
                Optional.of(file.toString()), Map.of());
        return new CaseFile(run.withHeard(engine.listener().hear(say.value())), List.of());
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
            CaseFile file = say.value() != null && name.equals(SAID) ? said(reader) : CaseInput.read(reader, console, name);
            Advice advice = engine.advisor().advise(book.value() == null ? file.run()
                    : RunsOnCase.inform(console, book.value(), file.run()));
            return new Outcome(Optional.of(format.value() == Format.TEXT ? text(advice) : json(advice)),
                    file.warnings().stream().map(Problem::text).toList());
        } catch (ProblemsException e) {
            return new Outcome(Optional.empty(), e.problems().stream()
                    .map(problem -> engine.home().placed(problem, console).withExcerpt()).toList());
        }
    }

    private String text(Advice advice) {
        Page page = new Page(console.width(), console.styled());
        write(advice, page);
        return page.toString();
    }

    private String json(Advice advice) {
        try {
            return Output.text(format.value(),
                    json -> new AdviceJson(engine.notes(), top.value()).with(engine.voices()).write(advice, json));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void write(Advice advice, Page page) {
        if (audience.value() == Audience.NEWCOMER) {
            new NewcomerText(engine.notes(), engine.home().terms()).write(advice, page);
        } else {
            new AdviceText(engine.notes(), audience.value(), top.value(), score.value())
                    .beside(Stream.concat(book.value() == null ? Stream.of() : Stream.of("--book", book.value()),
                    rules.typed().stream()).toList()).with(engine.voices()).write(advice, page);
        }
    }
}
