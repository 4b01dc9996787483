package camberwell.cli;

import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.report.Page;
import camberwell.report.ShelfJson;
import camberwell.report.ShelfText;
import camberwell.vocabulary.Nearest;
import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code camberwell note}: one page from the shelf. */
@Command(name = "note", addMethodSubcommands = false,
        description = "Shows a knowledge note for reading; without a name, lists all notes by kind.",
        footer = {"", "Examples:", "  camberwell note", "  camberwell note rear-toe",
            "  camberwell note --format json slow-in"})
final class NoteCommand implements Callable<Integer>, TakesRules {

    private final Console console;
    private final Engine engine;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "NAME", arity = "0..1", description = "The note's name.")
    private String name;

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    private final RulesOption rules = new RulesOption();

    NoteCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public RulesOption rules() {
        return rules;
    }

    @Override
    public Integer call() throws IOException {
        Notes notes = rules.on(engine, console).notes();
        Page page = new Page(console.width(), console.styled());
        if (name == null) {
            new ShelfText(page).names(notes);
            Output.either(console, format, page, ShelfJson.names(notes));
            return ExitCode.DONE;
        }
        Note note = notes.find(name.strip().replace(' ', '-')).orElseThrow(() ->
                new ParameterException(spec.commandLine(), "there is no note \"" + name + "\""
                        + Nearest.to(name, notes.names()).map(near -> "; did you mean " + near + "?")
                        .orElse("; camberwell note lists them")));
        new ShelfText(page).note(note);
        Output.either(console, format, page, ShelfJson.note(note));
        return ExitCode.DONE;
    }
}
