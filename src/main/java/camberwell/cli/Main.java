package camberwell.cli;

import camberwell.problem.ProblemsException;
import camberwell.rules.RuleBase;
import camberwell.rules.RuleProblemException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command {@code camberwell}. */
@Command(name = "camberwell", mixinStandardHelpOptions = true, version = "camberwell 0.1.0",
        description = "Names the next setup change for a racing car: how much, why, at what cost, and how to check it.",
        synopsisSubcommandLabel = "COMMAND",
        footer = {"", "Examples:",
            "  camberwell advise demo-cases/pushes-in-snaps-out.yaml",
            "  camberwell advise --format json my-case.yaml",
            "", "Exit codes: 0 done; 1 something wrong was found; 2 the input or the command line is wrong."})
public final class Main implements Runnable {

    private final Console console;

    @Spec
    private CommandSpec spec;

    private Main(Console console) {
        this.console = console;
    }

    public static void main(String[] arguments) {
        Console console = Console.ofProcess(System.getenv());
        int code = run(console, new Engine(Engine.findHome(), RuleBase.defaultCache()), arguments);
        console.out().flush();
        System.exit(code);
    }

    /** Runs one command line and returns its exit code. */
    static int run(Console console, Engine engine, String... arguments) {
        CommandLine line = new CommandLine(new Main(console));
        line.addSubcommand(new AdviseCommand(console, engine));
        line.addSubcommand(new DebriefCommand(console, engine));
        line.addSubcommand(new CommandLine(new RulesCommand()));
        line.setOut(new PrintWriter(console.out(), true));
        line.setErr(new PrintWriter(console.err(), true));
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setUsageHelpWidth(Math.max(55, console.width()));
        line.setColorScheme(CommandLine.Help.defaultColorScheme(
                console.styled() ? CommandLine.Help.Ansi.ON : CommandLine.Help.Ansi.OFF));
        line.setParameterExceptionHandler((exception, args) -> wrongCommandLine(exception, console));
        line.setExecutionExceptionHandler((exception, command, result) -> failed(exception, console));
        int code = line.execute(arguments);
        console.out().flush();
        return code;
    }

    private static int wrongCommandLine(ParameterException exception, Console console) {
        CommandLine command = exception.getCommandLine();
        console.err().println(exception.getMessage());
        if (!CommandLine.UnmatchedArgumentException.printSuggestions(exception, new PrintWriter(console.err(), true))) {
            console.err().println("See: " + command.getCommandSpec().qualifiedName() + " --help");
        }
        return ExitCode.WRONG_INPUT;
    }

    private static int failed(Exception exception, Console console) throws Exception {
        if (exception instanceof ProblemsException problems) {
            problems.problems().forEach(problem -> console.err().println(problem.withExcerpt()));
            return ExitCode.WRONG_INPUT;
        }
        if (exception instanceof RuleProblemException || exception instanceof UncheckedIOException) {
            console.err().println(exception.getMessage());
            return ExitCode.WRONG_INPUT;
        }
        throw exception;
    }

    @Override
    public void run() {
        spec.commandLine().usage(console.out());
    }
}
