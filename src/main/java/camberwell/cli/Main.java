package camberwell.cli;

import camberwell.engine.RuleBase;
import camberwell.pack.Manifest;
import camberwell.pack.Shelf;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/** The command {@code camberwell}. */
public final class Main implements Runnable {

    /** The commands that will need the rules, whatever else is on the line. */
    private static final Set<String> AHEAD = Set.of("advise", "debrief", "explain");

    private final Console console;

    private final CommandSpec spec = CommandSpec.wrapWithoutInspection(this).name("camberwell");

    private Main(Console console) {
        this.console = console;
        spec.version("camberwell " + Manifest.CAMBERWELL);
        spec.usageMessage().description("Names the next setup change for a racing car: how much, why, at what cost, and how to "
                        + "check it.")
                .synopsisSubcommandLabel("COMMAND").footer("", "Examples:",
                        "  camberwell advise demo-cases/pushes-in-snaps-out.yaml",
                        "  camberwell advise --format json my-case.yaml")
                .exitCodeListHeading("%nExit codes:%n").exitCodeList(UsageMessageSpec.keyValuesMap(
                        "0:done", "1:something wrong was found", "2:the input or the command line is wrong"));
    }

    /** Runs the command line, and ends the process with its exit code. */
    public static void main(String[] arguments) {
        Console console = console();
        Engine engine = new Engine(Home.find(), RuleBase.defaultCache()).withShelf(Shelf.of(System.getenv()));
        List<String> words = List.of(arguments);
        if (words.size() > 1 && AHEAD.contains(words.get(0)) && !words.contains("--rules")) {
            engine.openAhead();
        }
        int code = written(console, engine, arguments);
        ClassArchive.makeIfMissing();
        System.exit(code);
    }

    /** Runs one command line; output that cannot be written is told. */
    static int written(Console console, Engine engine, String... arguments) {
        try {
            int code = run(console, engine, arguments);
            console.out().flush();
            return code;
        } catch (Written.Lost e) {
            return Failures.lost(e, console);
        }
    }

    private static Console console() {
        try {
            return Console.ofProcess(System.getenv());
        } catch (InvalidPathException e) {
            System.err.println("camberwell: the name of the folder it was started in cannot be read in this language "
                    + "setting; set LC_ALL=C.UTF-8");
            System.exit(ExitCode.WRONG_INPUT);
            throw e;
        }
    }

    /** Runs one command line and returns its exit code. */
    static int run(Console console, Engine engine, String... arguments) {
        String[] here;
        try {
            here = lists(console, arguments);
        } catch (ProblemsException e) {
            e.problems().forEach(problem -> console.err().println(problem.text()));
            return ExitCode.WRONG_INPUT;
        }
        CommandLine line = line(console, engine, here);
        try {
            int code = line.execute(here);
            console.out().flush();
            return code;
        } finally {
            engine.forget();
        }
    }

    /**
     * A list of arguments, {@code @FILE}, is looked for where the person is, not where the program lies. A case is none: its
     * words would be taken for arguments one by one.
     */
    private static String[] lists(Console console, String... arguments) {
        String[] here = arguments.clone();
        for (int i = 0; i < here.length; i++) {
            if (here[i].length() > 1 && here[i].charAt(0) == '@' && here[i].charAt(1) != '@') {
                if (here[i].endsWith(".yaml") || here[i].endsWith(".md")) {
                    throw new ProblemsException(Problem.of(here[i], "is no list of arguments, which an @ before a name asks for",
                            Optional.of(here[i].substring(1))));
                }
                Path list = console.path(here[i].substring(1));
                readable(here[i], list);
                here[i] = "@" + list;
            }
        }
        return here;
    }

    /** Refuses what is no plain file: a pipe may never end. Where there is no file at all, the word is what it says. */
    private static void readable(String typed, Path list) {
        if (!Files.exists(list)) {
            return;
        }
        if (!Files.isRegularFile(list)) {
            throw new ProblemsException(Problem.of(typed, "is no list of arguments, which an @ before a name asks for: it is "
                    + (Files.isDirectory(list) ? "a folder" : "no plain file"), Optional.empty()));
        }
        try (InputStream in = Files.newInputStream(list)) {
            in.read();
        } catch (IOException e) {
            throw new ProblemsException(Problem.unreadable(typed, e));
        }
    }

    /** The commands that {@code arguments} may need; without any, all of them. */
    static CommandLine line(Console console, Engine engine, String... arguments) {
        CommandLine line = new CommandLine(new Main(console).spec);
        new Commands()
                .add("advise", () -> new AdviseCommand(console, engine).line())
                .add("debrief", () -> new DebriefCommand(console, engine))
                .add("explain", () -> new ExplainCommand(console, engine))
                .add("note", () -> new NoteCommand(console, engine))
                .add("terms", () -> new TermsCommand(console, engine))
                .add("quiz", () -> quiz(console, engine, arguments))
                .add("practise", () -> new PractiseCommand(console, engine))
                .add("read", () -> new ReadCommand(console, engine))
                .add("observe", () -> new ObserveCommand(console, engine))
                .add("pressure", () -> new PressureCommand(console))
                .add("alignment", () -> new AlignmentCommand(console))
                .add("sheet", () -> new SheetCommand(console, engine))
                .add("predict", () -> new PredictCommand(console))
                .add("runs", () -> runs(console, engine, arguments))
                .add("rules", () -> rules(console, engine, arguments))
                .addTo(line, arguments);
        Commands.help(line.getCommandSpec());
        boolean narrow = console.width() < NarrowLines.LEAST;
        line.setOut(narrow ? new PrintWriter(new NarrowLines(console.out(), console.width()), true)
                : new PrintWriter(console.out(), true));
        line.setErr(new PrintWriter(console.err(), true));
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setUsageHelpWidth(narrow ? NarrowLines.UNBROKEN : console.width());
        line.setColorScheme(CommandLine.Help.defaultColorScheme(
                console.styled() ? CommandLine.Help.Ansi.ON : CommandLine.Help.Ansi.OFF));
        Failures failures = new Failures(console, engine.home());
        line.setParameterExceptionHandler(failures);
        line.setExecutionExceptionHandler(failures);
        line.setExecutionStrategy(failures);
        return line;
    }

    /** What looks after rules looks at the named ones and at camberwell's own, whatever is on the shelf. */
    private static CommandLine rules(Console console, Engine shelved, String... arguments) {
        Engine engine = shelved.builtIn();
        CommandLine rules = new CommandLine(new RulesCommand());
        new Commands()
                .add("sentences", () -> new RulesSentencesCommand(console, engine))
                .add("new", () -> new RulesNewCommand(console, engine))
                .add("check", () -> new RulesCheckCommand(console, engine))
                .add("try", () -> new RulesTryCommand(console, engine))
                .add("compare", () -> new RulesCompareCommand(console, engine))
                .add("watch", () -> new RulesWatchCommand(console, engine))
                .add("pack", () -> new RulesPackCommand(console, engine))
                .add("list", () -> new RulesListCommand(console, shelved))
                .add("shelf", () -> new RulesShelfCommand(console, engine, shelved.shelf()))
                .add("audit", () -> new RulesAuditCommand(console, engine))
                .add("coverage", () -> new CoverageCommand(console, engine))
                .addTo(rules, Arrays.stream(arguments).filter(word -> !word.equals("rules")).toArray(String[]::new));
        return rules;
    }

    private static CommandLine quiz(Console console, Engine engine, String... arguments) {
        CommandLine quiz = new CommandLine(new QuizCommand(console, engine));
        new Commands()
                .add("mark", () -> new QuizMarkCommand(console, engine))
                .add("report", () -> new QuizReportCommand(console))
                .addTo(quiz, Arrays.stream(arguments).filter(word -> !word.equals("quiz")).toArray(String[]::new));
        return quiz;
    }

    private static CommandLine runs(Console console, Engine engine, String... arguments) {
        CommandLine runs = new CommandLine(new RunsCommand());
        new Commands()
                .add("add", () -> new RunsAddCommand(console, engine))
                .add("list", () -> new RunsListCommand(console, engine))
                .add("show", () -> new RunsShowCommand(console, engine))
                .add("compare", () -> new RunsCompareCommand(console, engine))
                .add("judge", () -> new RunsJudgeCommand(console, engine))
                .add("plan", () -> new RunsPlanCommand(console, engine))
                .add("draw", () -> new RunsDrawCommand(console, engine))
                .add("undo", () -> new RunsUndoCommand(console))
                .addTo(runs, Arrays.stream(arguments).filter(word -> !word.equals("runs")).toArray(String[]::new));
        return runs;
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
