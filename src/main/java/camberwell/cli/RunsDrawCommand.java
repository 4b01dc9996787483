package camberwell.cli;

import camberwell.history.Book;
import camberwell.history.Course;
import camberwell.history.History;
import camberwell.report.CourseDrawing;
import camberwell.report.Page;
import camberwell.run.Case;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code camberwell runs draw}: lap times, settings and complaints over the runs. */
@Command(name = "draw", addMethodSubcommands = false,
        description = "Draws the last runs of a car: lap times with the trend taken out, the path of the settings, the "
                + "complaints.",
        footer = {"", "Examples:", "  camberwell runs draw", "  camberwell runs draw -o runs.svg --last 20"})
final class RunsDrawCommand implements Callable<Integer>, TakesRules {

    private final Console console;
    private final Engine engine;

    @Mixin
    private BookOption book;

    @Option(names = "--car", paramLabel = "NAME", description = "That car's.")
    private String car;

    @Option(names = "--last", defaultValue = "12", paramLabel = "N", converter = Count.class,
            description = "How many runs; 12 by default, 30 at most.")
    private int last;

    @Option(names = {"-o", "--output"}, paramLabel = "FILE", description = "Write an SVG file instead.")
    private String output;

    @Option(names = "--overwrite", description = "Write over the file if it is there.")
    private boolean overwrite;

    private final RulesOption rules = new RulesOption();

    RunsDrawCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public RulesOption rules() {
        return rules;
    }

    @Override
    public Integer call() {
        NewFiles.check("-o", output, overwrite, console);
        Book runs = book.open(console, rules.on(engine, console));
        Spared.check("-o", output, runs, console);
        Case latest = BookOption.lastOf(runs, Optional.ofNullable(car));
        CourseDrawing drawing = new CourseDrawing(Course.of(History.of(runs, latest.car().name()), last));
        if (output == null) {
            Page page = new Page(console.width(), console.styled());
            drawing.draw(page);
            console.out().print(page);
            return ExitCode.DONE;
        }
        NewFiles file = new NewFiles();
        file.replace(console.path(output), drawing.svg("The runs of the " + latest.car().name())
                .getBytes(StandardCharsets.UTF_8));
        file.write();
        console.out().println("Saved: " + output);
        return ExitCode.DONE;
    }
}
