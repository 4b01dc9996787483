package camberwell.cli;

import camberwell.advice.Advice;
import camberwell.car.Car;
import camberwell.debrief.Debrief;
import camberwell.debrief.Entry;
import camberwell.debrief.Phrases;
import camberwell.input.CaseReader;
import camberwell.input.CaseWriter;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.report.AdviceText;
import camberwell.report.NewcomerText;
import camberwell.report.Page;
import camberwell.run.Case;
import camberwell.run.Conditions;
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
@Command(name = "debrief", mixinStandardHelpOptions = true,
        description = {"Asks what the car did, as few questions as it can, and names the changes to make.",
            "",
            "Each next question is the one whose answer is expected to tell most about which change comes first. At "
            + "any prompt: an answer by number, by word or by its beginning; unknown, why, so far, back, change, help, "
            + "done or quit. Where standard input is no terminal, lines are read from it, and its end stands "
            + "for done.", ""},
        footer = {"", "Examples:",
            "  camberwell debrief --car demo-cases/cars/larkspur-hatch.yaml \\",
            "      --save friday.yaml",
            "  camberwell debrief --for newcomer --transcript friday.md",
            "  camberwell debrief --resume friday.yaml"})
final class DebriefCommand implements Callable<Integer> {

    private static final int TOP = 5;
    private static final int TRANSCRIPT_WIDTH = 80;

    private final Console console;
    private Engine engine;

    @Mixin
    private RulesOption rules;

    @Option(names = "--car", paramLabel = "CAR",
            description = "The car's file. Without one, the kind of car is asked and advice speaks in common steps.")
    private String car;

    @Option(names = "--for", paramLabel = "AUDIENCE", defaultValue = "club", converter = TypedWord.ForWhom.class,
            description = "newcomer, club or engineer; club by default. A newcomer is asked about what was felt, has "
                    + "each word explained, and gets driving advice first and one change.")
    private Audience audience;

    @Option(names = "--save", paramLabel = "CASE",
            description = "Write the case there after every answer; advise gives the same advice on it.")
    private String save;

    @Option(names = "--resume", paramLabel = "CASE", description = "Go on from a case that was saved.")
    private String resume;

    @Option(names = "--transcript", paramLabel = "FILE",
            description = "Write questions, answers and advice, as Markdown.")
    private String transcript;

    @Option(names = "--overwrite", description = "Write over the files of --save and --transcript if they are there.")
    private boolean overwrite;

    DebriefCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public Integer call() throws IOException {
        if (car != null && resume != null) {
            throw new ProblemsException(Problem.of("--car", "the case of --resume has its car already",
                    Optional.empty()));
        }
        checkWritable("--save", save, resume);
        checkWritable("--transcript", transcript, null);
        if (save != null && transcript != null
                && console.path(save).normalize().equals(console.path(transcript).normalize())) {
            throw new ProblemsException(Problem.of("--transcript " + transcript, "is the file of --save, too",
                    Optional.empty()));
        }
        engine = rules.on(engine, console);
        try (Debrief debrief = open()) {
            talk(debrief);
        }
        return ExitCode.DONE;
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
        if (resume != null) {
            return Debrief.of(engine.advisor(), engine.rules(), engine.notes(),
                    new CaseReader().read(console.path(resume)).run());
        }
        if (car != null) {
            Path file = console.path(car);
            return Debrief.of(engine.advisor(), engine.rules(), engine.notes(),
                    untold(new CaseReader().readCar(file), file));
        }
        return Debrief.of(engine.advisor(), engine.rules(), engine.notes(), "Debrief", kinds());
    }

    private List<Car> kinds() throws IOException {
        try (Stream<Path> files = Files.list(engine.home().resolve("rules").resolve("car-classes"))) {
            return files.filter(file -> file.toString().endsWith(".yaml")).sorted()
                    .map(file -> new CaseReader().readCar(file)).toList();
        }
    }

    private static Case untold(Car car, Path file) {
        return new Case("Debrief of the " + car.name(), "-", car, Conditions.UNKNOWN, Map.of(), List.of(), List.of(),
                Optional.of(file.toString()), Map.of());
    }

    private void talk(Debrief debrief) throws IOException {
        DebriefDialogue[] dialogue = new DebriefDialogue[1];
        try (Prompter prompter = Prompter.of(console, () -> dialogue[0].completions())) {
            dialogue[0] = new DebriefDialogue(debrief, engine.notes(), audience,
                    () -> new Page(prompter.width(), console.styled()));
            boolean advise = talk(debrief, dialogue[0], prompter);
            if (advise) {
                Page page = new Page(prompter.width(), console.styled());
                advice(debrief.advice(), page);
                console.out().println();
                console.out().print(page);
            }
            if (transcript != null) {
                NewFiles file = new NewFiles();
                file.replace(console.path(transcript), transcript(debrief, advise).getBytes(StandardCharsets.UTF_8));
                file.write();
                console.out().println();
                console.out().println("Transcript: " + transcript);
            }
            if (save != null && !debrief.entries().isEmpty()) {
                console.out().println();
                console.out().println(advise ? "Saved: " + save : "Saved: " + save + "; go on with --resume " + save);
            }
            console.out().flush();
        }
    }

    /** Whether the advice is wanted at the end. */
    private boolean talk(Debrief debrief, DebriefDialogue dialogue, Prompter prompter) throws IOException {
        dialogue.ask();
        while (true) {
            console.out().print(dialogue.take());
            Optional<String> line = prompter.line(dialogue.prompt());
            if (line.isEmpty()) {
                return !console.interactive();
            }
            switch (dialogue.reply(line.get())) {
                case ANSWERED -> save(debrief);
                case ADVISE -> {
                    return true;
                }
                case LEAVE -> {
                    return false;
                }
                case ASK -> {
                    // Nothing new is known.
                }
            }
        }
    }

    private void save(Debrief debrief) {
        if (save == null) {
            return;
        }
        try {
            new CaseWriter().write(debrief.run(), console.path(save));
        } catch (ProblemsException e) {
            // What was answered is still here: the talk goes on, and the next answer tries again.
            e.problems().forEach(problem -> console.err().println(problem.text()));
        }
    }

    private void advice(Advice advice, Page page) {
        Advice shown = advice.withSource(save == null ? "-" : save);
        if (audience == Audience.NEWCOMER) {
            new NewcomerText(engine.notes(), engine.terms()).write(shown, page);
        } else {
            new AdviceText(engine.notes(), audience, TOP, false).write(shown, page);
        }
    }

    private String transcript(Debrief debrief, boolean advise) {
        StringBuilder text = new StringBuilder("# Debrief: ").append(debrief.run().car().name()).append("\n\n");
        for (Entry entry : debrief.entries()) {
            text.append("- ").append(Phrases.question(entry.topic(), entry.complaint(), audience)).append("\n  **")
                    .append(DebriefDialogue.text(entry.answer())).append("**\n");
        }
        if (advise) {
            Page page = new Page(TRANSCRIPT_WIDTH, false);
            advice(debrief.advice(), page);
            text.append("\n## Advice\n\n```text\n").append(page).append("```\n");
        }
        return text.toString();
    }
}
