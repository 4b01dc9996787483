package camberwell.cli;

import camberwell.vocabulary.Nearest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what is wrong with a command line, and what was most likely meant. */
final class Misunderstood {

    private Misunderstood() {
    }

    /**
     * One sentence for a person.
     *
     * @param arguments as they were typed
     */
    static String text(ParameterException exception, String... arguments) {
        if (exception instanceof UnmatchedArgumentException unmatched && !unmatched.getUnmatched().isEmpty()) {
            return unmatched(exception.getCommandLine(), unmatched.getUnmatched().get(0));
        }
        if (exception instanceof MissingParameterException missing) {
            // What is missing is told only where nothing that was typed is strange.
            Optional<String> strange = Arrays.stream(arguments).filter(word -> word.startsWith("--") && word.length() > 2)
                    .filter(word -> !options(exception.getCommandLine()).contains(option(word))).findFirst();
            if (strange.isPresent()) {
                return unmatched(exception.getCommandLine(), strange.get());
            }
            if (missing.getMissing().size() == 1 && missing.getMissing().get(0) instanceof PositionalParamSpec words
                    && words.arity().min() > 1) {
                return exception.getCommandLine().getCommandSpec().qualifiedName() + " wants " + words.paramLabel() + " at least "
                        + words.arity().min() + " times: " + String.join(" ", words.description());
            }
        }
        String message = exception.getMessage();
        return message.startsWith("Error: ") ? message.substring("Error: ".length()) : message;
    }

    private static String unmatched(CommandLine command, String word) {
        String name = command.getCommandSpec().qualifiedName();
        if (word.startsWith("-") && word.length() > 1) {
            return name + " has no option " + option(word) + meant(Nearest.to(option(word), options(command)));
        }
        if (!command.getSubcommands().isEmpty()) {
            return name + " has no command \"" + word + "\""
                    + meant(Nearest.to(word, command.getSubcommands().keySet()));
        }
        return "\"" + word + "\" is one word too many for " + name + "; put words that belong together between quotes";
    }

    private static String option(String word) {
        return word.contains("=") ? word.substring(0, word.indexOf('=')) : word;
    }

    private static List<String> options(CommandLine command) {
        List<String> known = new ArrayList<>();
        for (OptionSpec one : command.getCommandSpec().options()) {
            known.addAll(List.of(one.names()));
        }
        return known;
    }

    private static String meant(Optional<String> near) {
        return near.map(it -> "; did you mean " + it + "?").orElse("");
    }
}
