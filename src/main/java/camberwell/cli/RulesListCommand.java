package camberwell.cli;

import camberwell.pack.Manifest;
import camberwell.pack.RuleSet;
import camberwell.report.Page;
import camberwell.upkeep.PackSummary;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code camberwell rules list}: whose rules are in use. */
@Command(name = "list", addMethodSubcommands = false,
        description = {"Lists the packs whose rules are in use: those on your shelf and those named with --rules.",
            "Of each: what it adds, which rules and notes it takes the place of, and whether it fits this camberwell."},
        footer = {"", "Examples:", "  camberwell rules list", "  camberwell rules list --rules my-rules --format json"},
        exitCodeList = {"0:done", "1:a pack does not go with this camberwell or with the packs before it",
            "2:the input or the command line is wrong"})
final class RulesListCommand implements Callable<Integer>, TakesRules {

    private final Console console;
    private final Engine engine;

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    private final RulesOption rules = new RulesOption();

    RulesListCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public RulesOption rules() {
        return rules;
    }

    @Override
    public Integer call() throws IOException {
        Engine with = rules.on(engine, console);
        RuleSet set = with.ruleSet();
        List<PackSummary> packs = PackSummary.of(with.packs(), set, engine.builtIn().notes());
        Page page = new Page(console.width(), console.styled());
        int own = set.rules().size() - set.packRules().size() + set.replaced().size() + set.switchedOff().size();
        page.paragraph(0, "camberwell " + Manifest.CAMBERWELL + ": " + own + " rules of its own"
                + (packs.isEmpty() ? "; no pack is in use." : ""));
        packs.forEach(pack -> text(pack, page));
        List<Object> tree = new ArrayList<>();
        packs.forEach(pack -> tree.add(json(pack)));
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("built-in-rules", own);
        all.put("packs", tree);
        Output.either(console, format, page, all);
        return packs.stream().allMatch(pack -> pack.obstacles().isEmpty()) ? ExitCode.DONE : ExitCode.FOUND_WRONG;
    }

    private static void text(PackSummary pack, Page page) {
        page.heading(pack.pack().title() + pack.pack().manifest().map(manifest -> ", " + manifest.author()).orElse(""));
        page.labelled(2, "Adds", Counted.of(pack.rules().size(), "rule") + ", " + Counted.of(pack.notes().size(), "note")
                + ", " + Counted.of(pack.cases(), "case"));
        pack.replaces().forEach((old, fresh) -> page.labelled(2, "Replaces",
                "the rule \"" + old + "\" by \"" + fresh + "\""));
        pack.off().forEach(rule -> page.labelled(2, "Switches off", "the rule \"" + rule + "\""));
        pack.overrides().forEach((note, other) -> page.labelled(2, "Overrides", "the note " + note + " of " + other));
        named("Words", pack.words(), page);
        named("Questions", pack.questions(), page);
        pack.thresholds().forEach(threshold -> page.labelled(2, "Threshold", threshold));
        pack.obstacles().forEach(obstacle -> page.labelled(2, "Does not fit", obstacle));
    }

    private static void named(String label, List<String> names, Page page) {
        if (!names.isEmpty()) {
            page.labelled(2, label, String.join(", ", names));
        }
    }

    private static Map<String, Object> json(PackSummary pack) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("pack", pack.pack().title());
        pack.pack().manifest().ifPresent(manifest -> {
            json.put("name", manifest.name());
            json.put("version", manifest.version());
            json.put("author", manifest.author());
        });
        json.put("rules", pack.rules());
        json.put("replaces", pack.replaces());
        json.put("switches-off", pack.off());
        json.put("notes", pack.notes());
        json.put("overrides", pack.overrides());
        json.put("words", pack.words());
        json.put("questions", pack.questions());
        json.put("thresholds", pack.thresholds());
        json.put("cases", pack.cases());
        json.put("obstacles", pack.obstacles());
        return json;
    }
}
