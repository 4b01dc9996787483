package camberwell.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/** What the process says to whoever started it. */
public final class ExitCode {

    /** Done. */
    public static final int DONE = 0;
    /** The run found something wrong: a rule check that fails, say. */
    public static final int FOUND_WRONG = 1;
    /** The input or the command line is wrong. */
    public static final int WRONG_INPUT = 2;

    /** A talk was broken off with ^C; what is killed so by itself ends with the same. */
    public static final int INTERRUPTED = 130;

    private ExitCode() {
    }

    /** Says in a command's help what its exit codes mean, where the command does not say so itself. */
    static void explain(CommandSpec command) {
        UsageMessageSpec usage = command.usageMessage();
        usage.exitCodeListHeading("%nExit codes:%n");
        if (usage.exitCodeList().isEmpty()) {
            Map<String, String> codes = new LinkedHashMap<>();
            codes.put(" " + DONE, "done");
            codes.put(" " + FOUND_WRONG, "the output could not be written");
            codes.put(" " + WRONG_INPUT, "the input or the command line is wrong");
            usage.exitCodeList(codes);
        }
    }
}
