package camberwell.cli;

import camberwell.history.Book;
import camberwell.history.History;
import camberwell.history.Judgement;
import camberwell.report.Page;
import camberwell.report.RunsJson;
import camberwell.report.RunsText;
import camberwell.run.Case;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code camberwell runs list}: the last runs of the book. */
@Command(name = "list", addMethodSubcommands = false,
        description = "Lists the runs of the book, the last one last, with what came of each change.",
        footer = {"", "Examples:", "  camberwell runs list", "  camberwell runs list --car corvane --last 40"})
final class RunsListCommand implements Callable<Integer>, TakesRules {

    private final Console console;
    private final Engine engine;

    @Mixin
    private BookOption book;

    @Option(names = "--car", paramLabel = "NAME", description = "Only the runs of that car.")
    private String car;

    @Option(names = "--driver", paramLabel = "NAME", description = "Only the runs of that driver.")
    private String driver;

    @Option(names = "--last", defaultValue = "12", paramLabel = "N", converter = Count.class,
            description = "How many runs; 12 by default.")
    private int last;

    private final RulesOption rules = new RulesOption();

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    RunsListCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public RulesOption rules() {
        return rules;
    }

    @Override
    public Integer call() throws IOException {
        Book runs = book.open(console, rules.on(engine, console));
        List<Book.Page> pages = runs.pages();
        List<Case> found = new ArrayList<>();
        List<Book.Page> places = new ArrayList<>();
        int left = 0;
        for (int i = pages.size() - 1; i >= 0; i--) {
            Book.Page page = pages.get(i);
            if (car != null && !page.car().isEmpty() && !page.car().startsWith(Book.slug(car))) {
                continue;
            }
            if (found.size() == last) {
                left = i + 1;
                break;
            }
            Case run = runs.read(page);
            boolean wanted = (driver == null || run.driven().sheet().driver().filter(driver::equals).isPresent())
                    && (car == null || Book.slug(run.car().name()).startsWith(Book.slug(car)));
            if (wanted) {
                found.add(0, run);
                places.add(0, page);
            }
        }
        Map<String, History> histories = new HashMap<>();
        Page screen = new Page(console.width(), console.styled());
        RunsText text = new RunsText(screen);
        List<Object> tree = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            Case run = found.get(i);
            Optional<Judgement> judgement = histories.computeIfAbsent(run.car().name(), name -> History.of(runs, name))
                    .judgement(places.get(i).number(), Optional.empty());
            text.brief(run, judgement);
            tree.add(RunsJson.run(run, judgement, console.shown(places.get(i).file().toString())));
        }
        if (found.isEmpty()) {
            screen.paragraph(0, "The book has no such runs yet.");
        } else if (left > 0) {
            screen.blank().paragraph(0, "Earlier ones with --last " + Math.min(1000, pages.size()));
        }
        Output.either(console, format, screen, tree);
        return ExitCode.DONE;
    }
}
