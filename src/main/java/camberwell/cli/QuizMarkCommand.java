package camberwell.cli;

import camberwell.advice.RankedChange;
import camberwell.explain.Reasoning;
import camberwell.report.Page;
import camberwell.vocabulary.Change;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code camberwell quiz mark}: homework that was handed in. */
@Command(name = "mark", addMethodSubcommands = false,
        description = {"Marks homework that quiz --homework handed out: which answers are advised too, and what else is.",
            "Give the same --rules as when it was handed out."},
        footer = {"", "Example:", "  camberwell quiz mark ada-homework.yaml --record ada.yaml"})
final class QuizMarkCommand implements Callable<Integer>, TakesRules {

    private static final int SHOWN = 3;

    private final Console console;
    private final Engine engine;

    @Parameters(paramLabel = "FILE", description = "The file as the pupil handed it in.")
    private String file;

    @Option(names = "--pupil", paramLabel = "NAME", description = "Who handed it in, where the file does not say so.")
    private String pupil;

    @Option(names = "--record", paramLabel = "FILE", description = "The pupil's file, to which the answers are added.")
    private String record;

    private final RulesOption rules = new RulesOption();

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    QuizMarkCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public RulesOption rules() {
        return rules;
    }

    @Override
    public Integer call() throws IOException {
        AnswerSheet.check("--record", record, console);
        Homework homework = Homework.read(console.path(file), Optional.ofNullable(pupil));
        Engine with = rules.on(engine, console);
        QuizCases quiz = new QuizCases(with);
        List<Reasoning> cases = homework.seed().isPresent() ? quiz.drawn(homework.seed().get(), homework.count(),
                homework.topic(), with.home().demoCars()) : quiz.own(console);
        Page page = new Page(console.width(), console.styled());
        page.heading(homework.pupil());
        List<AnswerSheet.Answer> answers = new ArrayList<>();
        List<Object> tree = new ArrayList<>();
        for (int i = 0; i < Math.min(cases.size(), homework.count()); i++) {
            List<Change> advised = cases.get(i).advice().changes().stream().map(RankedChange::change).toList();
            Optional<Change> said = homework.answers().get(i);
            String title = cases.get(i).run().title();
            boolean right = said.filter(advised::contains).isPresent();
            page.point(0, title + ": " + said.map(change -> change.id() + (right ? ", which is advised too" : ", which is not"))
                    .orElse("no answer") + (right ? "" : "; advised: " + String.join(", ", advised.stream().limit(SHOWN)
                    .map(Change::id).toList())));
            said.ifPresent(change -> answers.add(new AnswerSheet.Answer(title, advised, change)));
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("case", title);
            one.put("answer", said.map(Change::id).orElse(null));
            one.put("right", right);
            one.put("advised", advised.stream().map(Change::id).toList());
            tree.add(one);
        }
        AnswerSheet sheet = new AnswerSheet(homework.pupil(), answers);
        page.blank().paragraph(0, sheet.right() + " of " + homework.count() + " answers are advised too.");
        Map<String, Object> whole = new LinkedHashMap<>();
        whole.put("pupil", homework.pupil());
        whole.put("cases", tree);
        Output.either(console, format, page, whole);
        if (record != null) {
            AnswerSheet.read(console.path(record), record).with(answers).write(console.path(record), record);
        }
        return ExitCode.DONE;
    }
}
