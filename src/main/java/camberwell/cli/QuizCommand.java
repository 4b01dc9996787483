package camberwell.cli;

import camberwell.advice.Advisor;
import camberwell.car.Car;
import camberwell.explain.Explainer;
import camberwell.explain.Quiz;
import camberwell.explain.Reasoning;
import camberwell.input.CaseReader;
import camberwell.report.Page;
import camberwell.report.QuizText;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Nearest;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code camberwell quiz}: cases to practise on. */
@Command(name = "quiz", mixinStandardHelpOptions = true,
        description = "Draws cases to practise on, takes your change, and says what it would have done.",
        footer = {"", "Answer with an adjuster and a direction; an empty line skips a case, q ends the quiz.",
            "", "Examples:", "  camberwell quiz --seed 7 --count 3",
            "  camberwell quiz --topic camber",
            "  echo \"rear-toe toe-in\" | camberwell quiz --seed 7"})
final class QuizCommand implements Callable<Integer> {

    private static final int SEEDS = 10_000;

    private final Console console;
    private Engine engine;

    @Spec
    private CommandSpec spec;

    @Mixin
    private RulesOption rules;

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

    QuizCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public Integer call() throws IOException {
        engine = rules.on(engine, console);
        List<String> topics = Quiz.topics(engine.rules());
        if (topic != null && !topics.contains(topic)) {
            throw new ParameterException(spec.commandLine(), "there is no topic \"" + topic + "\""
                    + Nearest.to(topic, topics).map(near -> "; did you mean " + near + "?").orElse("")
                    + " Topics: " + String.join(", ", topics));
        }
        long drawn = seed != null ? seed : new Random().nextInt(SEEDS);
        Advisor advisor = engine.advisor();
        Explainer explainer = new Explainer(engine.rules(), engine.notes(), advisor);
        Quiz quiz = new Quiz(explainer, engine.rules(), cars(), drawn);
        QuizText text = new QuizText(engine.rules().rules());
        TypedLines typed = new TypedLines(console.in());
        int answered = 0;
        int shared = 0;
        for (int i = 1; i <= count; i++) {
            Optional<Reasoning> next = quiz.draw("Case " + i + " of " + count + ", seed " + drawn,
                    Optional.ofNullable(topic));
            if (next.isEmpty()) {
                console.err().println("no case on that topic can be drawn for these cars");
                return ExitCode.FOUND_WRONG;
            }
            Reasoning reasoning = next.get();
            show(page -> text.question(reasoning.run(), page));
            Optional<String> line = ask(typed);
            Optional<Change> change = line.flatMap(ChangeWords::parse);
            if (line.filter(answer -> answer.equals("q")).isPresent()) {
                break;
            }
            if (change.isPresent()) {
                answered++;
                shared += reasoning.advice().changes().stream()
                        .anyMatch(ranked -> ranked.change().equals(change.get())) ? 1 : 0;
                show(page -> text.answer(change.get(), explainer.whyNot(reasoning, change.get()),
                        advisor.worth(reasoning.advice(), change.get()),
                        engine.notes().get(change.get().adjuster().note()), page));
            }
            show(page -> text.engine(reasoning, page));
        }
        if (answered > 0) {
            console.out().println();
            console.out().println("Camberwell advises your change too in " + shared + " of " + answered
                    + (answered == 1 ? " case." : " cases."));
        }
        return ExitCode.DONE;
    }

    /** The answer, asked again while it is no change; empty at the end of the input. */
    private Optional<String> ask(TypedLines typed) throws IOException {
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
        return cars.isEmpty() ? engine.demoCars()
                : cars.stream().map(file -> reader.readCar(console.path(file))).toList();
    }
}
