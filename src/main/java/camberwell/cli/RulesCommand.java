package camberwell.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code camberwell rules}: what can be asked of the rule base itself. */
@Command(name = "rules", addMethodSubcommands = false, synopsisSubcommandLabel = "COMMAND",
        description = "Shows, writes, checks, tries, compares and packs rules.",
        footer = {"", "Examples:", "  camberwell rules sentences tread", "  camberwell rules check my-rules"})
final class RulesCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
