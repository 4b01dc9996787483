package camberwell.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code camberwell runs}: the book of runs. */
@Command(name = "runs", addMethodSubcommands = false, synopsisSubcommandLabel = "COMMAND",
        description = "Keeps the book of runs: what was driven, what came of each change, what to try next.",
        footer = {"", "Examples:", "  camberwell runs add my-case.yaml --laps \"out 92.41 92.39 92.30\"",
            "  camberwell runs judge", "  camberwell runs compare 6 7 8"})
final class RunsCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
