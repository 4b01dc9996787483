package camberwell.cli;

import camberwell.vocabulary.Nearest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what is wrong with a command line, and what was most likely meant. */
final class Misunderstood {

    private Misunderstood() {
    }

    /** One sentence for a person. */
    static String text(ParameterException exception) {
        if (exception instanceof UnmatchedArgumentException unmatched && !unmatched.getUnmatched().isEmpty()) {
            return unmatched(exception.getCommandLine(), unmatched.getUnmatched().get(0));
        }
        String message = exception.getMessage();
        return message.startsWith("Error: ") ? message.substring("Error: ".length()) : message;
    }

    private static String unmatched(CommandLine command, String word) {
        String name = command.getCommandSpec().qualifiedName();
        if (word.startsWith("-") && word.length() > 1) {
            String option = word.contains("=") ? word.substring(0, word.indexOf('=')) : word;
            List<String> known = new ArrayList<>();
            for (OptionSpec one : command.getCommandSpec().options()) {
                known.addAll(List.of(one.names()));
            }
            return name + " has no option " + option + meant(Nearest.to(option, known));
        }
        if (!command.getSubcommands().isEmpty()) {
            return name + " has no command \"" + word + "\""
                    + meant(Nearest.to(word, command.getSubcommands().keySet()));
        }
        return "\"" + word + "\" is one word too many for " + name + "; put words that belong together between quotes";
    }

    private static String meant(Optional<String> near) {
        return near.map(it -> "; did you mean " + it + "?").orElse("");
    }
}
