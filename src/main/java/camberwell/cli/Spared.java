package camberwell.cli;

import camberwell.history.Book;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.run.Case;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Files that a command reads, which {@code --overwrite} does not mean: whoever names one of them to be written has slipped. */
final class Spared {

    private static final Set<String> WRITTEN = Set.of("-o", "--svg", "--save", "--transcript");
    private static final List<String> OF_PACKS = List.of(".yaml", ".dslr", ".drl", ".md");
    private static final String OF_BOOKS = ".yaml";

    private Spared() {
    }

    /**
     * Refuses a command line that would write over a file that it names to be read, or over one in a folder that is read.
     *
     * @throws ProblemsException if it is refused
     */
    static void check(ParseResult parsed, Console console) {
        ParseResult last = parsed;
        while (last.hasSubcommand()) {
            last = last.subcommand();
        }
        if (!last.hasMatchedOption("--overwrite")) {
            return;
        }
        for (OptionSpec option : last.matchedOptions()) {
            if (written(option)) {
                for (String file : option.originalStringValues()) {
                    inputs(last, option).forEach(input -> input.originalStringValues().forEach(read ->
                            refuse(option.names()[0], file, read(read, input, console.path(file), console))));
                }
            }
        }
    }

    /**
     * Refuses to write over the car or an earlier run that a case points to.
     *
     * @param option that names the file
     * @param file as it was typed; null where the option was not given
     * @throws ProblemsException if it is refused
     */
    static void check(String option, String file, Case run, Console console) {
        if (file != null) {
            Stream.concat(run.carFile().stream(), run.earlier().stream().map(Case::source)).forEach(read ->
                    refuse(option, file, same(console.path(file), console.path(read))));
        }
    }

    /** The same for the runs of a book; @throws ProblemsException if it is refused */
    static void check(String option, String file, Book book, Console console) {
        if (file != null) {
            refuse(option, file, within(console.path(file), book.folder(), List.of(OF_BOOKS)));
        }
    }

    private static boolean written(ArgSpec argument) {
        return argument instanceof OptionSpec option && Stream.of(option.names()).anyMatch(WRITTEN::contains);
    }

    /** What else was named; a talk that is resumed is saved in its place. */
    private static Stream<ArgSpec> inputs(ParseResult parsed, OptionSpec output) {
        return Stream.concat(parsed.matchedOptions().stream(), parsed.matchedPositionals().stream())
                .filter(argument -> !written(argument) && !(named(output, "--save") && named(argument, "--resume")));
    }

    private static boolean named(ArgSpec argument, String name) {
        return argument instanceof OptionSpec option && List.of(option.names()).contains(name);
    }

    private static boolean read(String typed, ArgSpec input, Path output, Console console) {
        try {
            Path path = console.path(typed);
            return same(output, path) || within(output, path, named(input, "--book") ? List.of(OF_BOOKS) : OF_PACKS);
        } catch (InvalidPathException e) {
            // A word that is no name of a file.
            return false;
        }
    }

    private static boolean same(Path one, Path other) {
        try {
            return Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other);
        } catch (IOException e) {
            return false;
        }
    }

    private static boolean within(Path file, Path folder, List<String> endings) {
        try {
            return Files.exists(file) && Files.isDirectory(folder) && file.toRealPath().startsWith(folder.toRealPath())
                    && endings.stream().anyMatch(file.toString()::endsWith);
        } catch (IOException e) {
            return false;
        }
    }

    private static void refuse(String option, String file, boolean read) {
        if (read) {
            throw new ProblemsException(Problem.of(option + " " + file, "is what is read here, and is not written over; take "
                    + "another name", Optional.empty()));
        }
    }
}
