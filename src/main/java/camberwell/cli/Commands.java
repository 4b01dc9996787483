package camberwell.cli;

import camberwell.language.Stage;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * Subcommands made on demand: the one that is asked for, or all of them when none is, for the help and for the nearest
 * name of a misspelt one. Reading the annotations of a command nobody asked for would cost every start.
 */
final class Commands {

    private final Map<String, Supplier<Object>> makers = new LinkedHashMap<>();

    /** Adds a command: an annotated object, a line described in code, or a {@link CommandLine} with subcommands of its own. */
    Commands add(String name, Supplier<Object> maker) {
        makers.put(name, maker);
        return this;
    }

    /** Adds to {@code parent} what {@code arguments}, those of {@code parent}, may need. */
    void addTo(CommandLine parent, String... arguments) {
        String asked = Arrays.stream(arguments).filter(word -> !word.startsWith("-")).findFirst().orElse("");
        if (makers.containsKey(asked)) {
            parent.addSubcommand(asked, makers.get(asked).get());
        } else {
            makers.forEach((name, maker) -> parent.addSubcommand(name, maker.get()));
        }
        parent.registerConverter(Format.class, new TypedWord<>(Format.class));
        parent.registerConverter(Stage.class, new TypedWord<>(Stage.class));
        of(parent.getSubcommands().values(), parent.getCommandSpec().version());
    }

    /**
     * Every command is of the version that the whole is of, tells its help and what its exit codes mean, and takes more rules
     * if it reasons.
     */
    private static void of(Collection<CommandLine> commands, String... version) {
        for (CommandLine command : commands) {
            CommandSpec spec = command.getCommandSpec();
            spec.version(version);
            help(spec);
            if (command.getCommand() instanceof TakesRules takes) {
                takes.rules().addTo(spec);
            }
            ExitCode.explain(spec);
            of(command.getSubcommands().values(), version);
        }
    }

    /** Gives a command {@code --help} and {@code --version}, if it has them not yet. */
    static void help(CommandSpec command) {
        if (command.findOption("--help") == null) {
            command.addOption(OptionSpec.builder("-h", "--help").type(boolean.class).usageHelp(true)
                    .description("Show this help message and exit.").build());
            command.addOption(OptionSpec.builder("-V", "--version").type(boolean.class).versionHelp(true)
                    .description("Print version information and exit.").build());
        }
    }
}
