package camberwell.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code camberwell rules}: what can be asked of the rule base itself. */
@Command(name = "rules", mixinStandardHelpOptions = true, synopsisSubcommandLabel = "COMMAND",
        description = "Shows, checks and compares rules.",
        footer = {"", "Example:", "  camberwell rules --help"})
final class RulesCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
