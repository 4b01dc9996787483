package camberwell.cli;

import camberwell.pack.RulePack;
import camberwell.pack.Shelf;
import camberwell.problem.Problem;
import camberwell.report.Page;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code camberwell rules shelf}: the packs that are always in use. */
@Command(name = "shelf", description = {"Shows and arranges your shelf: the packs whose rules are in use without --rules.",
            "It is a folder of your own configuration; packs on it hold sentences, notes and cases and are never trusted "
            + "with more."},
        footer = {"", "Examples:", "  camberwell rules shelf", "  camberwell rules shelf add tall-kerbs.zip",
            "  camberwell rules shelf off tall-kerbs", "  camberwell rules shelf order wet-days tall-kerbs",
            "  camberwell rules shelf remove tall-kerbs"})
final class RulesShelfCommand implements Callable<Integer> {

    private final Console console;
    private final Engine engine;
    private final Shelf shelf;

    @Spec
    private CommandSpec spec;

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    /** @param engine with camberwell's own rules alone */
    RulesShelfCommand(Console console, Engine engine, Shelf shelf) {
        this.console = console;
        this.engine = engine;
        this.shelf = shelf;
    }

    @Override
    public Integer call() throws IOException {
        Page page = new Page(console.width(), console.styled());
        page.paragraph(0, "Your shelf is " + shelf.folder());
        List<Object> tree = new ArrayList<>();
        for (Shelf.Entry entry : shelf.entries()) {
            RulePack pack = shelf.read(entry);
            page.point(0, pack.title() + pack.manifest().map(manifest -> ", " + manifest.author()).orElse("")
                    + (entry.on() ? "" : " (off)"));
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("pack", pack.title());
            json.put("on", entry.on());
            tree.add(json);
        }
        if (tree.isEmpty()) {
            page.paragraph(0, "There is nothing on it. camberwell rules shelf add FILE.zip puts a pack there.");
        }
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("folder", shelf.folder().toString());
        all.put("packs", tree);
        Output.either(console, format, page, all);
        return ExitCode.DONE;
    }

    @Command(name = "add",
            description = "Checks a pack and puts a copy of it on the shelf, in the place of another version of it.",
            footer = {"", "Example:", "  camberwell rules shelf add tall-kerbs.zip"},
            exitCodeList = {"0:done", "1:something is wrong with the pack, and it is not put on the shelf",
                "2:the input or the command line is wrong"})
    int add(@Parameters(paramLabel = "PACK", description = "A .zip file or a rule folder with a pack.yaml.") String pack) {
        List<Problem> problems = Checked.of(List.of(pack), List.of(), console, engine).problems();
        if (!problems.isEmpty()) {
            problems.forEach(problem -> console.err().println(problem.withExcerpt()));
            return ExitCode.FOUND_WRONG;
        }
        RulePack read = RulesOption.read(List.of(pack), List.of(), console).get(0);
        shelf.put(read);
        console.out().println(read.title() + " is on the shelf.");
        return ExitCode.DONE;
    }

    @Command(name = "remove", description = "Takes a pack off the shelf.",
            footer = {"", "Example:", "  camberwell rules shelf remove tall-kerbs"})
    int remove(@Parameters(paramLabel = "NAME", description = "The pack's name.") String name) {
        shelf.remove(known(name));
        console.out().println(name + " is off the shelf.");
        return ExitCode.DONE;
    }

    @Command(name = "off", description = "Leaves a pack on the shelf and out of use.",
            footer = {"", "Example:", "  camberwell rules shelf off tall-kerbs"})
    int off(@Parameters(paramLabel = "NAME", description = "The pack's name.") String name) {
        shelf.turn(known(name), false);
        console.out().println(name + " is not in use.");
        return ExitCode.DONE;
    }

    @Command(name = "on", description = "Takes a pack on the shelf into use again.",
            footer = {"", "Example:", "  camberwell rules shelf on tall-kerbs"})
    int on(@Parameters(paramLabel = "NAME", description = "The pack's name.") String name) {
        shelf.turn(known(name), true);
        console.out().println(name + " is in use.");
        return ExitCode.DONE;
    }

    @Command(name = "order",
            description = "Puts the named packs first, in that order: a later pack builds on, or replaces, an earlier one.",
            footer = {"", "Example:", "  camberwell rules shelf order wet-days tall-kerbs"})
    int order(@Parameters(paramLabel = "NAME", arity = "1..*", description = "Names of packs.") List<String> names) {
        names.forEach(this::known);
        shelf.order(names);
        console.out().println(String.join(", ", shelf.entries().stream().map(Shelf.Entry::name).toList()));
        return ExitCode.DONE;
    }

    private String known(String name) {
        List<String> names = shelf.entries().stream().map(Shelf.Entry::name).toList();
        if (!names.contains(name)) {
            throw new ParameterException(spec.commandLine(), "there is no pack \"" + name + "\" on the shelf"
                    + (names.isEmpty() ? "" : TypedWord.hint(name, names)));
        }
        return name;
    }
}
