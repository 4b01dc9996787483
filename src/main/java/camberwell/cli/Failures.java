package camberwell.cli;

import camberwell.engine.RuleProblemException;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.problem.Text;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.InvalidPathException;
import picocli.CommandLine;
import picocli.CommandLine.ExecutionException;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IExecutionStrategy;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/**
 * What is said when a command cannot be done. A class rather than lambdas: picocli's interfaces are of an old class
 * version, whose lambdas no class-data archive keeps.
 */
final class Failures implements IParameterExceptionHandler, IExecutionExceptionHandler, IExecutionStrategy {

    private final Console console;
    private final Home home;

    /** @param home whose files may be what is wrong */
    Failures(Console console, Home home) {
        this.console = console;
        this.home = home;
    }

    /** Runs the command. Help that cannot be written is a failure as any other, which picocli by itself takes for a bug. */
    @Override
    public int execute(ParseResult parsed) {
        try {
            Spared.check(parsed, console);
        } catch (ProblemsException refused) {
            return told(refused);
        }
        try {
            return new CommandLine.RunLast().execute(parsed);
        } catch (Written.Lost lost) {
            throw new ExecutionException(parsed.commandSpec().commandLine(), lost.getMessage(), lost);
        }
    }

    @Override
    public int handleParseException(ParameterException exception, String[] arguments) {
        console.err().println(Misunderstood.text(exception, arguments));
        console.err().println("See: " + exception.getCommandLine().getCommandSpec().qualifiedName() + " --help");
        return ExitCode.WRONG_INPUT;
    }

    /** Tells what is wrong with the input; throws on what is wrong with camberwell. */
    @Override
    public int handleExecutionException(Exception exception, CommandLine command, ParseResult result)
            throws Exception {
        if (exception instanceof ProblemsException problems) {
            return told(problems);
        }
        if (exception instanceof Written.Lost lost) {
            return lost(lost, console);
        }
        if (exception instanceof FileSystemException file && file.getFile() != null) {
            // Whoever opens a file says what is wrong with it; this one went between two looks at it.
            console.err().println(console.shown(Problem.unreadable(file.getFile(), file).text()));
            return ExitCode.WRONG_INPUT;
        }
        if (exception instanceof InvalidPathException path) {
            console.err().println(Text.quoted(path.getInput()) + " cannot be the name of a file in this language setting");
            return ExitCode.WRONG_INPUT;
        }
        if (exception instanceof RuleProblemException rules) {
            console.err().println(console.shown(home.placed(rules, console)));
            return ExitCode.WRONG_INPUT;
        }
        if (exception instanceof UncheckedIOException) {
            console.err().println(exception.getMessage());
            return ExitCode.WRONG_INPUT;
        }
        throw exception;
    }

    private int told(ProblemsException wrong) {
        wrong.problems().forEach(problem -> console.err().println(console.shown(home.placed(problem, console).withExcerpt())));
        return ExitCode.WRONG_INPUT;
    }

    /** What is said when output could not be written: nothing to somebody who has seen enough. */
    static int lost(Written.Lost lost, Console console) {
        if (lost.unwanted()) {
            return ExitCode.DONE;
        }
        console.err().println("camberwell: the output cannot be written: " + lost.getMessage());
        return ExitCode.FOUND_WRONG;
    }
}
