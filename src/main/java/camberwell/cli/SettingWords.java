package camberwell.cli;

import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.run.Case;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Word;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Settings as they are typed: {@code rear-toe toe-in 2} from where it stood, {@code rear-toe=0.25 deg} where it stands. */
final class SettingWords {

    private SettingWords() {
    }

    /**
     * The case with those settings.
     *
     * @throws ProblemsException if the car cannot be set so
     */
    static Case apply(Case run, List<String> changes, List<String> settings) {
        Map<Adjuster, Quantity> moved = new EnumMap<>(Adjuster.class);
        for (String text : changes) {
            change(text, run.car(), moved);
        }
        for (String text : settings) {
            setting(text, run.car(), moved);
        }
        return moved.isEmpty() ? run : run.withSetup(moved);
    }

    private static void change(String text, Car car, Map<Adjuster, Quantity> moved) {
        TypedChange typed = typed(text);
        Change change = typed.change();
        Setting setting = setting(car, change.adjuster(), "--changed \"" + text + "\"");
        if (setting.stepsLeft(change.direction()) < typed.steps()) {
            throw new ProblemsException(Problem.of("--changed \"" + text + "\"", "from "
                    + setting.now().text(setting.decimals()) + " the " + car.name() + " has "
                    + setting.stepsLeft(change.direction()) + " steps that way", Optional.empty()));
        }
        moved.put(change.adjuster(), setting.moved(change.direction(), typed.steps()));
    }

    private static TypedChange typed(String text) {
        try {
            return TypedChange.of(text);
        } catch (IllegalArgumentException e) {
            throw new ProblemsException(Problem.of("--changed", e.getMessage(), Optional.empty()));
        }
    }

    private static void setting(String text, Car car, Map<Adjuster, Quantity> moved) {
        String option = "--set \"" + text + "\"";
        int equals = text.indexOf('=');
        if (equals < 0) {
            throw new ProblemsException(Problem.of(option, "write an adjuster and where it stands, like "
                    + "\"rear-toe=0.25 deg\"", Optional.empty()));
        }
        String word = text.substring(0, equals).strip();
        Adjuster adjuster = Word.find(Adjuster.class, word).orElseThrow(() -> new ProblemsException(Problem.of(option,
                "there is no adjuster \"" + word + "\"", Nearest.to(word, Word.ids(Adjuster.class)))));
        Setting setting = setting(car, adjuster, option);
        Quantity at = Quantity.parse(text.substring(equals + 1).strip())
                .filter(it -> it.unit().dimension() == setting.now().unit().dimension())
                .orElseThrow(() -> new ProblemsException(Problem.of(option, "the " + adjuster.spoken() + " of the "
                        + car.name() + " is set like \"" + setting.now() + "\"", Optional.empty())));
        double hair = 1e-9 * Math.max(1, Math.abs(at.si()));
        if (at.si() < setting.min().si() - hair || at.si() > setting.max().si() + hair) {
            throw new ProblemsException(Problem.of(option, "the " + adjuster.spoken() + " of the " + car.name()
                    + " goes from " + setting.min() + " to " + setting.max(), Optional.empty()));
        }
        moved.put(adjuster, at);
    }

    private static Setting setting(Car car, Adjuster adjuster, String option) {
        return car.setting(adjuster).orElseThrow(() -> new ProblemsException(Problem.of(option, "the " + car.name()
                + " has no " + adjuster.spoken() + " to set; it has "
                + String.join(", ", car.adjusters().keySet().stream().map(Adjuster::id).toList()), Optional.empty())));
    }
}
