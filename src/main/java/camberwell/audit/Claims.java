package camberwell.audit;

import camberwell.car.Car;
import camberwell.car.Ordinary;
import camberwell.fact.Setup;
import camberwell.knowledge.Effect;
import camberwell.knowledge.Matter;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.knowledge.When;
import camberwell.language.Condition;
import camberwell.language.Line;
import camberwell.language.RuleText;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** Reads claims out of notes and rules. */
final class Claims {

    private final Notes notes;

    Claims(Notes notes) {
        this.notes = notes;
    }

    /** What the note on each adjuster says that a step of it does. */
    List<Claim> ofNotes() {
        List<Claim> claims = new ArrayList<>();
        for (String name : notes.names(Note.Kind.ADJUSTMENT)) {
            Note note = notes.get(name);
            Adjuster adjuster = Word.of(Adjuster.class, name);
            note.ways().forEach((direction, way) -> way.effects().stream().filter(effect -> effect.effect() != 0)
                    .forEach(effect -> claims.add(ofEffect(note, new Change(adjuster, direction), effect))));
        }
        return claims;
    }

    private static Claim ofEffect(Note note, Change change, Effect effect) {
        Optional<String> explanation = note.differences().stream()
                .filter(difference -> difference.explains(change.direction(), effect))
                .map(Note.Difference::because).findFirst();
        List<String> found = effect.when().of(Matter.FINDING);
        Optional<String> bound = found.isEmpty() ? Optional.empty() : Optional.of("this holds only with "
                + String.join(" or ", found) + ", which a steady-state model does not know");
        List<String> surfaces = effect.when().of(Matter.SURFACE);
        return new Claim("note " + note.name(), change, effect.effect() > 0,
                List.of(new Claim.Trouble(effect.on(), set(effect.phase()), set(effect.speed()), effect.where())),
                car -> holds(effect.when(), car, change.adjuster()),
                surfaces.isEmpty() ? Surface.DRY : Word.of(Surface.class, surfaces.get(0)),
                note.model().or(() -> explanation).or(() -> bound));
    }

    /** Whether the effect is claimed of that car as it stands. */
    private static boolean holds(When when, Car car, Adjuster adjuster) {
        List<String> drives = when.of(Matter.DRIVE);
        List<String> standings = when.of(Matter.SETTING);
        return (drives.isEmpty() || car.drive().filter(drive -> drives.contains(drive.id())).isPresent())
                && (standings.isEmpty() || Ordinary.standing(car, adjuster).stream()
                        .anyMatch(standing -> standings.contains(standing.id())));
    }

    private static <T> Set<T> set(Optional<T> word) {
        return word.map(Set::of).orElse(Set.of());
    }

    /** What each rule proposes or opposes, for the complaints that its conditions are about. */
    List<Claim> ofRules(Collection<RuleText> rules) {
        List<Claim> claims = new ArrayList<>();
        for (RuleText rule : rules) {
            List<Claim.Trouble> troubles = rule.conditions().stream().filter(condition -> !condition.negative())
                    .flatMap(condition -> trouble(condition).stream()).toList();
            for (Line line : rule.conclusions()) {
                if (line.words().containsKey("adjuster") && line.words().containsKey("certainty")) {
                    claims.add(ofLine(rule, line, troubles));
                }
            }
        }
        return claims;
    }

    private Claim ofLine(RuleText rule, Line line, List<Claim.Trouble> troubles) {
        Adjuster adjuster = Word.of(Adjuster.class, line.word("adjuster"));
        Direction direction = Word.of(Direction.class, line.word("direction"));
        Note note = notes.get(adjuster.note());
        Optional<String> explanation = note.differences().stream()
                .filter(difference -> difference.explains(direction, rule.name()) || troubles.stream().anyMatch(
                        trouble -> difference.explains(direction, trouble.on(), trouble.phases())))
                .map(Note.Difference::because).findFirst();
        return new Claim("rule \"" + rule.name() + "\"", new Change(adjuster, direction),
                line.text().startsWith("propose"), troubles, cars(rule), surface(rule),
                note.model().or(() -> explanation));
    }

    private Optional<Claim.Trouble> trouble(Condition condition) {
        Line head = condition.head();
        if (head.words().containsKey("symptom")) {
            Set<Phase> phases = EnumSet.noneOf(Phase.class);
            Set<CornerSpeed> speeds = EnumSet.noneOf(CornerSpeed.class);
            Optional<Axle> where = Optional.empty();
            for (Line narrowing : condition.narrowings()) {
                boolean away = narrowing.text().contains(" not ");
                narrowing.words().values().forEach(word -> {
                    Word.find(Phase.class, word).filter(phase -> !away).ifPresent(phases::add);
                    Word.find(CornerSpeed.class, word).ifPresent(speeds::add);
                });
                if (narrowing.words().containsKey("axle")) {
                    where = Optional.of(axle(narrowing));
                }
            }
            return Optional.of(new Claim.Trouble(Word.of(Symptom.class, head.word("symptom")), phases, speeds, where));
        }
        if (head.words().containsKey("finding")) {
            return notes.find(head.word("finding")).flatMap(Note::showsAs).map(shows -> new Claim.Trouble(shows.on(),
                    set(shows.phase()), set(shows.speed()), shows.where()));
        }
        return Optional.ofNullable(switch (head.sentence().template()) {
            case "the {axle} tyres are below their window" -> Symptom.SLOW_WARM_UP;
            case "the {axle} tyres are above their window" -> Symptom.OVERHEATING;
            case "the {axle} tread is hotter at the inner edge" -> Symptom.HOT_INNER_EDGE;
            case "the {axle} tread is hotter at the outer edge" -> Symptom.HOT_OUTER_EDGE;
            default -> null;
        }).map(symptom -> new Claim.Trouble(symptom, Set.of(), Set.of(),
                Optional.of(axle(head))));
    }

    /** The cars that the rule's conditions let in, as far as they are about drive and toe. */
    private static Predicate<Car> cars(RuleText rule) {
        return rule.conditions().stream().map(Condition::head).map(Claims::car).reduce(car -> true, Predicate::and);
    }

    private static Predicate<Car> car(Line line) {
        return switch (line.sentence().template()) {
            case "the car is {drive}-wheel drive" -> car -> new Setup(car).drives(line.word("drive"));
            case "the car is not {drive}-wheel drive" -> car -> new Setup(car).drivesOtherThan(line.word("drive"));
            case "the {axle} wheels are driven" -> car -> new Setup(car).driven(line.word("axle"));
            case "the {axle} wheels are not driven" -> car -> new Setup(car).undriven(line.word("axle"));
            case "the {axle} wheels are toed in" -> car -> toe(car, axle(line)) > 0;
            case "the {axle} wheels are toed out" -> car -> toe(car, axle(line)) < 0;
            default -> car -> true;
        };
    }

    private static Axle axle(Line line) {
        return Word.of(Axle.class, line.word("axle"));
    }

    private static double toe(Car car, Axle axle) {
        return car.setting(Adjuster.toeOf(axle)).map(setting -> setting.now().value()).orElse(0.0);
    }

    private static Surface surface(RuleText rule) {
        return rule.conditions().stream().map(Condition::head)
                .filter(line -> line.sentence().template().equals("the surface is {surface}"))
                .map(line -> Word.of(Surface.class, line.word("surface"))).findFirst().orElse(Surface.DRY);
    }
}
