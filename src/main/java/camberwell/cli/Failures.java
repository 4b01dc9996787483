package camberwell.cli;

import camberwell.engine.RuleProblemException;
import camberwell.problem.ProblemsException;
import java.io.UncheckedIOException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/**
 * What is said when a command cannot be done. A class rather than two lambdas: picocli's interfaces are of an old class
 * version, whose lambdas no class-data archive keeps.
 */
final class Failures implements IParameterExceptionHandler, IExecutionExceptionHandler {

    private final Console console;

    Failures(Console console) {
        this.console = console;
    }

    @Override
    public int handleParseException(ParameterException exception, String[] arguments) {
        console.err().println(Misunderstood.text(exception));
        console.err().println("See: " + exception.getCommandLine().getCommandSpec().qualifiedName() + " --help");
        return ExitCode.WRONG_INPUT;
    }

    /** Tells what is wrong with the input; throws on what is wrong with camberwell. */
    @Override
    public int handleExecutionException(Exception exception, CommandLine command, ParseResult result)
            throws Exception {
        if (exception instanceof ProblemsException problems) {
            problems.problems().forEach(problem -> console.err().println(console.shown(problem.withExcerpt())));
            return ExitCode.WRONG_INPUT;
        }
        if (exception instanceof RuleProblemException || exception instanceof UncheckedIOException) {
            console.err().println(exception.getMessage());
            return ExitCode.WRONG_INPUT;
        }
        throw exception;
    }
}
