package camberwell.cli;

import camberwell.advice.Advice;
import camberwell.debrief.Debrief;
import camberwell.debrief.Ending;
import camberwell.debrief.Talk;
import camberwell.explain.Explainer;
import camberwell.history.Book;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.report.AdviceText;
import camberwell.report.NewcomerText;
import camberwell.report.Page;
import camberwell.run.Case;
import camberwell.sheet.SheetPage;
import camberwell.vocabulary.Audience;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code camberwell debrief}: questions and answers after a run, and the advice at their end. */
@Command(name = "debrief", addMethodSubcommands = false,
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
final class DebriefCommand implements Callable<Integer>, TakesRules {

    private static final int TOP = 5;

    private final Console console;
    private Engine engine;

    private final RulesOption rules = new RulesOption();

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
    public RulesOption rules() {
        return rules;
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
        DebriefOpening opening = new DebriefOpening(console, engine, book, Optional.ofNullable(car), save != null);
        try (Debrief debrief = resume != null ? opening.resumed(resume) : opening.begun()) {
            Spared.check("--save", save, debrief.run(), console);
            Spared.check("--transcript", transcript, debrief.run(), console);
            return talk(debrief, opening.runs());
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

    private int talk(Debrief debrief, Optional<Book> runs) throws IOException {
        if (format != Format.TEXT) {
            Keeping keeping = new Keeping(console, save, runs);
            new DebriefLines(console, engine, debrief, audience, TOP).talk(keeping::keep);
            return code(keeping);
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
                keeping.transcript(transcript, overwrite, talk[0], debrief, audience,
                        screen.advised() ? Optional.of(this::advice) : Optional.empty());
            }
            screen.close();
            return prompter.interrupted() ? ExitCode.INTERRUPTED : code(keeping);
        }
    }

    private static int code(Keeping keeping) {
        return keeping.missed() ? ExitCode.WRONG_INPUT : ExitCode.DONE;
    }

    /** Writes the page to take home; what became of it. */
    private String sheet(Debrief debrief, String file) {
        NewFiles page = new NewFiles();
        try {
            NewFiles.check("sheet", file, overwrite, console);
            page.add(console.path(file), new SheetPage(engine.notes(), engine.home().terms(), audience).with(engine.voices())
                    .page(List.of(debrief.advice())).getBytes(StandardCharsets.UTF_8));
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
            new AdviceText(engine.notes(), audience, TOP, false).beside(rules.typed()).with(engine.voices()).write(shown, page);
        }
    }
}
