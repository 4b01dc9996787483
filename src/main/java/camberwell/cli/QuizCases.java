package camberwell.cli;

import camberwell.car.Car;
import camberwell.explain.Explainer;
import camberwell.explain.Quiz;
import camberwell.explain.Reasoning;
import camberwell.input.CaseFile;
import camberwell.pack.RulePack;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.run.Case;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The cases of a quiz: drawn by camberwell's own rules, so that one seed draws the same ones whatever packs are on, or the
 * packs' own. What is advised on them the rules that are on say.
 */
final class QuizCases {

    private final Engine engine;
    private final Explainer explainer;

    /** @param engine with the packs that are on */
    QuizCases(Engine engine) {
        this.engine = engine;
        this.explainer = new Explainer(engine.rules(), engine.notes(), engine.advisor());
    }

    /** What explains the cases. */
    Explainer explainer() {
        return explainer;
    }

    /**
     * Draws cases, until there are enough or none is found any more.
     *
     * @param topic a file of camberwell's own rules for changes, without its ending
     */
    List<Reasoning> drawn(long seed, int count, Optional<String> topic, List<Car> cars) {
        Engine own = engine.builtIn();
        Quiz quiz = new Quiz(new Explainer(own.rules(), own.notes(), own.advisor()), own.rules(), cars, seed);
        List<Reasoning> cases = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            Optional<Reasoning> next = quiz.draw("Case " + i + " of " + count + ", seed " + seed, topic);
            if (next.isEmpty()) {
                return cases;
            }
            Case run = next.get().run();
            cases.add(engine.packs().isEmpty() ? next.get() : explainer.reason(run));
        }
        return cases;
    }

    /**
     * The cases that the packs bring for a quiz, in the order of their files.
     *
     * @throws ProblemsException if there are none
     */
    List<Reasoning> own(Console console) {
        PackCases cases = new PackCases(console, engine.cases(), engine.home().folder().resolve(RulePack.CASES));
        for (RulePack pack : engine.packs()) {
            cases.inside(pack, RulePack.QUIZ);
        }
        if (cases.read().isEmpty()) {
            throw new ProblemsException(Problem.of("--own", "no pack that is on has cases in " + RulePack.QUIZ,
                    Optional.empty()));
        }
        return cases.read().stream().map(CaseFile::run).map(explainer::reason).toList();
    }
}
