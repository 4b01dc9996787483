package camberwell.cli;

import camberwell.language.Stage;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;

/**
 * Subcommands made on demand: the one that is asked for, or all of them when none is, for the help and for the nearest
 * name of a misspelt one. Reading the annotations of a command nobody asked for would cost every start.
 */
final class Commands {

    private final Map<String, Supplier<Object>> makers = new LinkedHashMap<>();

    /** Adds a command: an annotated object, or a {@link CommandLine} with subcommands of its own. */
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

    /** Every command is of the version that the whole is of, and says what its exit codes mean. */
    private static void of(Collection<CommandLine> commands, String... version) {
        for (CommandLine command : commands) {
            command.getCommandSpec().version(version);
            ExitCode.explain(command.getCommandSpec());
            of(command.getSubcommands().values(), version);
        }
    }
}
