package camberwell.cli;

import camberwell.report.AuditReport;
import camberwell.report.Page;
import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code camberwell rules audit}: the rule base answers to physics. */
@Command(name = "audit", addMethodSubcommands = false,
        description = "Holds what rules and knowledge notes claim against the handling model, on every reference car.",
        footer = {"", "A note explains a difference with \"model: not represented, because …\", or with an entry of "
            + "\"model-differs\" for one effect or one rule.",
            "", "Examples:", "  camberwell rules audit", "  camberwell rules audit --all",
            "  camberwell rules audit --format json"},
        exitCodeList = {"0:nothing differs without a reason", "1:something differs without a reason",
            "2:the input or the command line is wrong"})
final class RulesAuditCommand implements Callable<Integer>, TakesRules {

    private final Console console;
    private Engine engine;

    private final RulesOption rules = new RulesOption();

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    @Option(names = "--all", description = "List the claims that agree, too.")
    private boolean all;

    RulesAuditCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public RulesOption rules() {
        return rules;
    }

    @Override
    public Integer call() throws IOException {
        engine = rules.on(engine, console);
        AuditReport report = engine.audit();
        if (format == Format.TEXT) {
            Page page = new Page(console.width(), console.styled());
            report.write(page, all);
            console.out().print(page);
        } else {
            Output.json(console, format, json -> {
                report.write(json);
            });
        }
        return report.foundWrong() ? ExitCode.FOUND_WRONG : ExitCode.DONE;
    }
}
