package camberwell.cli;

import camberwell.advice.Advisor;
import camberwell.advice.RankedChange;
import camberwell.car.Car;
import camberwell.explain.Quiz;
import camberwell.explain.Reasoning;
import camberwell.input.CaseReader;
import camberwell.pack.RulePack;
import camberwell.report.Page;
import camberwell.report.QuizText;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Nearest;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code camberwell quiz}: cases to practise on. */
@Command(name = "quiz", addMethodSubcommands = false,
        description = "Draws cases to practise on, takes your change, and says what it would have done.",
        footer = {"", "Answer with an adjuster and a direction; an empty line skips a case, q ends the quiz.",
            "", "Examples:", "  camberwell quiz --seed 7 --count 3",
            "  camberwell quiz --topic camber",
            "  echo \"rear-toe toe-in\" | camberwell quiz --seed 7",
            "  camberwell quiz --seed 7 --count 5 --homework monday.yaml",
            "  camberwell quiz --own --rules my-rules --record ada.yaml"},
        exitCodeList = {"0:done", "1:fewer cases than that can be drawn", "2:the input or the command line is wrong"})
final class QuizCommand implements Callable<Integer>, TakesRules {

    private static final int SEEDS = 10_000;

    private final Console console;
    private Engine engine;

    @Spec
    private CommandSpec spec;

    private final RulesOption rules = new RulesOption();

    @Option(names = "--topic", paramLabel = "TOPIC",
            description = "What to ask about: the name of a file of rules for changes, like camber or mid-corner.")
    private String topic;

    @Option(names = "--seed", paramLabel = "N", description = "The same number draws the same cases.")
    private Long seed;

    @Option(names = "--count", defaultValue = "1", paramLabel = "N", converter = Count.class,
            description = "How many cases; 1 by default.")
    private int count;

    @Option(names = "--car", paramLabel = "CAR",
            description = "A car's file to practise on, instead of the demo cars. Can be given again.")
    private List<String> cars = List.of();

    @Option(names = "--own", description = "Ask the cases that the packs bring in " + RulePack.QUIZ + ", in their order.")
    private boolean own;

    @Option(names = "--record", paramLabel = "FILE",
            description = "Add the answers to this file, one a pupil; quiz report tells of a class.")
    private String record;

    @Option(names = "--homework", paramLabel = "FILE",
            description = "Ask nothing, and write the cases to a file to hand out; quiz mark marks what is handed in.")
    private String homework;

    QuizCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public RulesOption rules() {
        return rules;
    }

    @Override
    public Integer call() throws IOException {
        NewFiles.check("--homework", homework, false, console);
        AnswerSheet.check("--record", record, console);
        engine = rules.on(engine, console);
        List<String> topics = Quiz.topics(engine.builtIn().rules());
        if (topic != null && !topics.contains(topic)) {
            throw new ParameterException(spec.commandLine(), "there is no topic \"" + topic + "\""
                    + Nearest.to(topic, topics).map(near -> "; did you mean " + near + "?").orElse("")
                    + " Topics: " + String.join(", ", topics));
        }
        long drawn = seed != null ? seed : new Random().nextInt(SEEDS);
        Advisor advisor = engine.advisor();
        QuizCases quiz = new QuizCases(engine);
        QuizText text = new QuizText(engine.rules().rules());
        List<Reasoning> cases = own ? quiz.own(console)
                : quiz.drawn(drawn, count, Optional.ofNullable(topic), cars());
        if (homework != null) {
            Homework.write(console.path(homework), homework, cases, own ? Optional.empty() : Optional.of(drawn),
                    Optional.ofNullable(topic), text);
            console.out().println(homework + ": " + Counted.of(cases.size(), "case") + " to hand out; camberwell quiz mark "
                    + "marks what is handed in.");
            return ExitCode.DONE;
        }
        record(List.of());
        TypedLines typed = new TypedLines(console.in());
        List<AnswerSheet.Answer> answers = new ArrayList<>();
        for (Reasoning reasoning : cases) {
            show(page -> text.question(reasoning.run(), page));
            Optional<String> line = ask(typed);
            Optional<Change> change = line.flatMap(ChangeWords::parse);
            if (line.filter(answer -> answer.equals("q")).isPresent()) {
                break;
            }
            if (change.isPresent()) {
                AnswerSheet.Answer answer = new AnswerSheet.Answer(reasoning.run().title(), reasoning.advice().changes().stream()
                        .map(RankedChange::change).toList(), change.get());
                answers.add(answer);
                // At once: a quiz that is broken off loses no answer.
                record(List.of(answer));
                show(page -> text.answer(change.get(), quiz.explainer().whyNot(reasoning, change.get()),
                        advisor.worth(reasoning.advice(), change.get()),
                        engine.notes().get(change.get().adjuster().note()), page));
            }
            show(page -> text.engine(reasoning, page));
        }
        AnswerSheet sheet = new AnswerSheet("", answers);
        int answered = answers.size();
        long shared = sheet.right();
        if (answered > 0) {
            console.out().println();
            console.out().println("Camberwell advises your change too in " + shared + " of " + answered
                    + (answered == 1 ? " case." : " cases."));
        }
        if (!own && cases.size() < count) {
            console.err().println("no case on that topic can be drawn for these cars");
            return ExitCode.FOUND_WRONG;
        }
        return ExitCode.DONE;
    }

    /** Adds answers to the pupil's record, which is there from the first question on. */
    private void record(List<AnswerSheet.Answer> answers) throws IOException {
        if (record != null) {
            AnswerSheet.read(console.path(record), record).with(answers).write(console.path(record), record);
        }
    }

    /** The answer, asked again while it is no change; empty at the end of the input. */
    private Optional<String> ask(TypedLines typed) throws IOException {
        Patience patience = new Patience(console);
        while (true) {
            console.out().println();
            console.out().print("Your change: ");
            console.out().flush();
            String line = typed.next().orElse(null);
            if (!console.interactive()) {
                console.out().println(line == null ? "" : line.strip());
            }
            if (line == null || line.isBlank() || line.strip().equals("q")
                    || ChangeWords.parse(line).isPresent()) {
                return Optional.ofNullable(line).map(String::strip);
            }
            console.out().println(ChangeWords.problem(line.strip()));
            patience.took(false);
        }
    }

    private interface Writing {
        void on(Page page);
    }

    private void show(Writing writing) {
        Page page = new Page(console.width(), console.styled());
        writing.on(page);
        console.out().println();
        console.out().print(page);
    }

    private List<Car> cars() throws IOException {
        CaseReader reader = new CaseReader();
        return cars.isEmpty() ? engine.home().demoCars()
                : cars.stream().map(file -> reader.readCar(console.path(file))).toList();
    }
}
