package camberwell.explain;

import camberwell.car.Car;
import camberwell.engine.RuleBase;
import camberwell.language.RuleText;
import camberwell.language.Stage;
import camberwell.language.Statement;
import camberwell.run.Case;
import camberwell.vocabulary.Change;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Draws cases to practise on from the rules for changes. The same seed draws the same cases. */
public final class Quiz {

    /** A drawn case is kept when the change that it was drawn for stands this high in the advice. */
    private static final int HIGH = 3;
    private static final int MOST_DRAWS = 500;

    private final Explainer explainer;
    private final RuleBase rules;
    private final List<Car> cars;
    private final Random random;

    /** @param cars to draw from, at least one */
    public Quiz(Explainer explainer, RuleBase rules, List<Car> cars, long seed) {
        this.explainer = explainer;
        this.rules = rules;
        this.cars = List.copyOf(cars);
        this.random = new Random(seed);
    }

    /** What can be asked about: the files of rules that propose changes, by their names without the ending. */
    public static List<String> topics(RuleBase rules) {
        return proposing(rules).stream().map(Quiz::topic).distinct().sorted().toList();
    }

    private static List<RuleText> proposing(RuleBase rules) {
        return rules.rules().values().stream().filter(rule -> rule.stage() == Stage.CHANGES)
                .filter(rule -> proposal(rule).isPresent()).toList();
    }

    private static Optional<Change> proposal(RuleText rule) {
        return rule.statements().stream().filter(Statement.Propose.class::isInstance).findFirst()
                .flatMap(Statement::aboutChange);
    }

    private static String topic(RuleText rule) {
        String file = rule.file().substring(rule.file().lastIndexOf('/') + 1);
        return file.substring(0, file.lastIndexOf('.'));
    }

    /** The next case; empty when none of the cars has what the topic is about. */
    public Optional<Reasoning> draw(String title, Optional<String> topic) {
        List<RuleText> about = proposing(rules).stream()
                .filter(rule -> topic.filter(wanted -> !wanted.equals(topic(rule))).isEmpty()).toList();
        for (int i = 0; i < MOST_DRAWS && !about.isEmpty(); i++) {
            RuleText rule = about.get(random.nextInt(about.size()));
            Car car = cars.get(random.nextInt(cars.size()));
            Optional<Case> imagined = Imagined.caseFor(rule, title, rules, car, random);
            if (imagined.isPresent()) {
                Reasoning reasoning = explainer.reason(imagined.get());
                Change change = proposal(rule).orElseThrow();
                if (reasoning.advice().changes().stream().limit(HIGH).anyMatch(ranked ->
                        ranked.change().equals(change) && ranked.rules().contains(rule.name()))) {
                    return Optional.of(reasoning);
                }
            }
        }
        return Optional.empty();
    }
}
