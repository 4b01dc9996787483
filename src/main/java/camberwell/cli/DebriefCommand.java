package camberwell.cli;

import camberwell.advice.Advice;
import camberwell.car.Car;
import camberwell.debrief.Debrief;
import camberwell.debrief.Earlier;
import camberwell.debrief.Ending;
import camberwell.debrief.PackQuestion;
import camberwell.debrief.Talk;
import camberwell.explain.Explainer;
import camberwell.history.Book;
import camberwell.history.Changes;
import camberwell.history.NextRun;
import camberwell.input.CaseReader;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.report.AdviceText;
import camberwell.report.NewcomerText;
import camberwell.report.Page;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Driven;
import camberwell.run.Made;
import camberwell.sheet.SheetPage;
import camberwell.vocabulary.Audience;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code camberwell debrief}: questions and answers after a run, and the advice at their end. */
@Command(name = "debrief", mixinStandardHelpOptions = true, addMethodSubcommands = false,
        description = {"Asks what the car did, as few questions as it can, and names the changes to make.",
            "",
            "Answer in your own words, by number or by a word of the list; a complaint, the place, the day and how often "
            + "may be said at any prompt. What was understood is echoed. It asks only what could change the first thing "
            + "that it tells. At any prompt: unknown, why, so far, back, change, add, help, done or quit; after the advice "
            + "also what if, explain, save and another car. Where standard input is no terminal, lines are read from it, "
            + "and its end stands for done.", ""},
        footer = {"", "Examples:",
            "  camberwell debrief --car demo-cases/cars/larkspur-hatch.yaml \\",
            "      --save friday.yaml",
            "  camberwell debrief --for newcomer --transcript friday.md",
            "  camberwell debrief --resume friday.yaml",
            "  camberwell debrief --book runs",
            "  camberwell debrief --format jsonl --car my-car.yaml < answers.txt"})
final class DebriefCommand implements Callable<Integer> {

    private static final int TOP = 5;
    private static final int INTERRUPTED = 130;

    private final Console console;
    private Engine engine;
    /** The book that the run is entered into, if it is. */
    private Optional<Book> runs = Optional.empty();

    @Mixin
    private RulesOption rules;

    @Option(names = "--car", paramLabel = "CAR",
            description = "The car's file. Without one, the kind of car is asked and advice speaks in common steps.")
    private String car;

    @Option(names = "--for", paramLabel = "AUDIENCE", defaultValue = "club", converter = TypedWord.ForWhom.class,
            description = "newcomer, club or engineer; club by default. A newcomer is asked about what was felt, has "
                    + "each word explained, and gets driving advice first and one change.")
    private Audience audience;

    @Mixin
    private BookOption book;

    @Option(names = "--save", paramLabel = "CASE",
            description = "Write the case there after every answer, and not into a book; advise gives the same advice on it.")
    private String save;

    @Option(names = "--resume", paramLabel = "CASE",
            description = "Go on from a case that was saved, and save there.")
    private String resume;

    @Option(names = "--transcript", paramLabel = "FILE",
            description = "Write questions, answers and advice, as Markdown.")
    private String transcript;

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = "text, or jsonl for a program: each question, each answer and the advice as an object on a line.")
    private Format format;

    @Option(names = "--overwrite", description = "Write over the files of --save and --transcript if they are there.")
    private boolean overwrite;

    DebriefCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public Integer call() throws IOException {
        if (format == Format.YAML) {
            throw new ProblemsException(Problem.of("--format yaml", "a talk with a program goes line by line; give jsonl",
                    Optional.empty()));
        }
        if (car != null && resume != null) {
            throw new ProblemsException(Problem.of("--car", "the case of --resume has its car already",
                    Optional.empty()));
        }
        if (book.named() && (resume != null || save != null)) {
            throw new ProblemsException(Problem.of("--book", "the run is kept in the book; leave out "
                    + (resume != null ? "--resume" : "--save"), Optional.empty()));
        }
        if (save == null) {
            save = resume;
        }
        checkWritable("--save", save, resume);
        checkWritable("--transcript", transcript, null);
        if (save != null && transcript != null
                && console.path(save).normalize().equals(console.path(transcript).normalize())) {
            throw new ProblemsException(Problem.of("--transcript " + transcript, "is the file of --save, too",
                    Optional.empty()));
        }
        engine = rules.on(engine, console);
        // Their words for complaints stand in the first list.
        engine.packs();
        try (Debrief debrief = open()) {
            return talk(debrief);
        }
    }

    /** Says so before the first question, not after the last, when a file cannot be written. */
    private void checkWritable(String option, String file, String replaceable) {
        if (file == null) {
            return;
        }
        Path path = console.path(file).toAbsolutePath();
        String wrong = NewFiles.obstacle(path, console).orElse(Files.exists(path) && !overwrite && (replaceable == null
                        || !console.path(replaceable).toAbsolutePath().normalize().equals(path.normalize()))
                ? "stands there already; " + (option.equals("--save") ? "go on from it with --resume, " : "")
                + "take another name, or give --overwrite" : null);
        if (wrong != null) {
            throw new ProblemsException(Problem.of(option + " " + file, wrong, Optional.empty()));
        }
    }

    private Debrief open() throws IOException {
        Debrief.Source source = new Debrief.Source(engine::advisor, engine::rules, engine::notes,
                () -> engine.packs().stream().flatMap(pack -> pack.questions().stream())
                        .map(it -> new PackQuestion(it.id(), it.ask(), it.when(), it.answers())).toList());
        if (resume != null) {
            return Debrief.of(source, engine.cases().read(console.path(resume)).run());
        }
        Optional<Case> fresh = Optional.ofNullable(car).map(console::path)
                .map(file -> untold(new CaseReader().readCar(file), file));
        runs = save != null ? Optional.empty() : book.named() ? Optional.of(fresh.isPresent() ? book.begin(console)
                : book.open(console)) : Book.nearest(console.directory()).map(Book::in);
        Optional<NextRun> next = runs.flatMap(it -> fresh.map(run -> run.car().name())
                .or(() -> BookOption.last(it, Optional.empty()).map(run -> run.car().name()))
                .flatMap(name -> NextRun.of(it, name)));
        if (next.isPresent()) {
            return Debrief.of(source, earlier(next.get(), fresh));
        }
        if (!book.named()) {
            runs = Optional.empty();
        }
        if (fresh.isPresent()) {
            return Debrief.of(source, fresh.get());
        }
        return Debrief.of(source, "Debrief", kinds());
    }

    /** Where the car's file says otherwise than the last run, that is what was changed since. */
    private static Earlier earlier(NextRun next, Optional<Case> fresh) {
        Case begun = next.begun().withTitle("Run " + next.number());
        if (fresh.isPresent()) {
            List<Made> made = Changes.between(next.last().car(), fresh.get().car());
            begun = begun.ofCar(fresh.get().car(), fresh.get().carFile());
            begun = begun.withDriven(new Driven(begun.driven().sheet(), made, List.of(), Optional.empty(), List.of()));
        }
        return new Earlier(next.last(), next.number(), begun, next::inform,
                (run, typed) -> MadeWords.apply(run, typed, next.last().driven().changed()));
    }

    private List<Car> kinds() throws IOException {
        try (Stream<Path> files = Files.list(engine.home().folder().resolve("rules").resolve("car-classes"))) {
            return files.filter(file -> file.toString().endsWith(".yaml")).sorted()
                    .map(file -> new CaseReader().readCar(file)).toList();
        }
    }

    private static Case untold(Car car, Path file) {
        return new Case("Debrief of the " + car.name(), "-", car, Conditions.UNKNOWN, Map.of(), List.of(), List.of(),
                Optional.of(file.toString()), Map.of());
    }

    private int talk(Debrief debrief) throws IOException {
        if (format != Format.TEXT) {
            return new DebriefLines(console, engine, debrief, audience, TOP).talk(new Keeping(console, save, runs)::keep);
        }
        Talk[] talk = new Talk[1];
        Keeping keeping = new Keeping(console, save, runs);
        try (Prompter prompter = Prompter.of(console, () -> talk[0].completions())) {
            talk[0] = new Talk(debrief, engine::listener, engine::notes, audience,
                    () -> new Page(prompter.width(), console.styled()));
            Ending ending = new Ending(debrief, engine::listener, engine::notes,
                    () -> new Explainer(engine.rules(), engine.notes(), engine.advisor()), engine::voices, audience);
            DebriefScreen screen = new DebriefScreen(console, debrief, talk[0], ending, keeping, prompter, this::advice,
                    file -> sheet(debrief, file));
            Case begun = debrief.run();
            screen.run(() -> engine.listenAhead(() -> Keeping.rehearse(begun, console)));
            if (transcript != null) {
                keeping.transcript(transcript, overwrite, talk[0], debrief, audience, screen.advised() ? Optional.of(this::advice)
                        : Optional.empty());
            }
            screen.close();
            return prompter.interrupted() ? INTERRUPTED : ExitCode.DONE;
        }
    }

    /** Writes the page to take home; what became of it. */
    private String sheet(Debrief debrief, String file) {
        NewFiles page = new NewFiles();
        try {
            NewFiles.check("sheet", file, overwrite, console);
            page.add(console.path(file), new SheetPage(engine.notes(), engine.home().terms(), audience).with(engine.voices()).page(List.of(debrief.advice()))
                    .getBytes(StandardCharsets.UTF_8));
            page.write();
            return "Saved: " + file;
        } catch (ProblemsException e) {
            return e.problems().get(0).text();
        }
    }

    /** The advice on a page, under the name of the file that it can be asked for again by. */
    private void advice(Debrief debrief, Page page) {
        Advice shown = debrief.advice().withSource(save == null ? "-" : save);
        if (audience == Audience.NEWCOMER) {
            new NewcomerText(engine.notes(), engine.home().terms()).write(shown, page);
        } else {
            new AdviceText(engine.notes(), audience, TOP, false).with(engine.voices()).write(shown, page);
        }
    }
}
