package camberwell.audit;

import camberwell.car.Car;
import camberwell.car.Ordinary;
import camberwell.fact.Day;
import camberwell.fact.Finding;
import camberwell.fact.Passing;
import camberwell.fact.Reading;
import camberwell.fact.Reported;
import camberwell.fact.Setup;
import camberwell.knowledge.Effect;
import camberwell.knowledge.Matter;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.knowledge.When;
import camberwell.language.Condition;
import camberwell.language.Question;
import camberwell.language.RuleText;
import camberwell.language.Statement;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** Reads claims out of notes and rules. */
final class Claims {

    /** What decides whether a rule speaks of a car at all; the rest the car that is looked at only happens to have. */
    private static final Set<String> ABOUT_THE_CAR = Set.of("drive", Adjuster.FRONT_TOE.id(), Adjuster.REAR_TOE.id());

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
        Map<String, Set<Claim.Trouble>> found = new HashMap<>();
        for (RuleText rule : rules) {
            rule.statements().stream().filter(Statement.Find.class::isInstance).forEach(it -> found.computeIfAbsent(
                    ((Statement.Find) it).finding(), fresh -> new LinkedHashSet<>()).addAll(troubles(rule, Map.of())));
        }
        for (RuleText rule : rules) {
            List<Claim.Trouble> troubles = troubles(rule, found);
            for (Statement said : rule.statements()) {
                if (said instanceof Statement.Propose || said instanceof Statement.Oppose) {
                    claims.add(ofStatement(rule, said, said.aboutChange().orElseThrow(), troubles));
                }
            }
        }
        return claims;
    }

    private Claim ofStatement(RuleText rule, Statement said, Change change, List<Claim.Trouble> troubles) {
        Note note = notes.get(change.adjuster().note());
        Optional<String> explanation = note.differences().stream()
                .filter(difference -> difference.explains(change.direction(), rule.name())
                        || troubles.stream().anyMatch(trouble -> difference.explains(change.direction(), trouble.on(),
                        trouble.phases())))
                .map(Note.Difference::because).findFirst();
        return new Claim("rule \"" + rule.name() + "\"", change, said.speaksFor(), troubles, cars(rule),
                surface(rule), note.model().or(() -> explanation));
    }

    /** What a rule's conditions are about; of a finding that shows as nothing by itself, what it is found from. */
    private List<Claim.Trouble> troubles(RuleText rule, Map<String, Set<Claim.Trouble>> found) {
        return rule.conditions().stream().filter(condition -> !condition.negative()).flatMap(condition -> {
            Optional<Claim.Trouble> own = trouble(condition);
            return own.isPresent() || !condition.question().isAbout(Finding.KIND) ? own.stream()
                    : found.getOrDefault(condition.question().word("finding").orElseThrow(), Set.of()).stream();
        }).toList();
    }

    private Optional<Claim.Trouble> trouble(Condition condition) {
        Question question = condition.question();
        if (question.isAbout(Reported.KIND)) {
            return question.word("symptom").map(symptom -> new Claim.Trouble(Word.of(Symptom.class, symptom),
                    words(Phase.class, question.passing("phase")), words(CornerSpeed.class, question.passing("speed")),
                    question.passing("where").map(place -> Word.of(Place.class, place.words().iterator().next())
                    .axle())));
        }
        if (question.isAbout(Finding.KIND)) {
            return notes.find(question.word("finding").orElseThrow()).flatMap(Note::showsAs)
                    .map(shows -> new Claim.Trouble(shows.on(), set(shows.phase()), set(shows.speed()),
                    shows.where()));
        }
        return question.isAbout(Reading.KIND) ? question.word("shows").flatMap(Claims::shown)
                .map(symptom -> new Claim.Trouble(symptom, Set.of(), Set.of(),
                Optional.of(Word.of(Place.class, question.word("place").orElseThrow()).axle()))) : Optional.empty();
    }

    private static <W extends Enum<W> & Word> Set<W> words(Class<W> type, Optional<Passing> passing) {
        Set<W> words = EnumSet.noneOf(type);
        passing.ifPresent(some -> some.words().forEach(word -> words.add(Word.of(type, word))));
        return words;
    }

    /** The complaint that a reading is when somebody feels it, or the reading itself, where a model says anything of it. */
    private static Optional<Word> shown(String word) {
        Reading.State state = Word.of(Reading.State.class, word);
        return Optional.ofNullable(switch (state) {
            case BELOW_WINDOW -> Symptom.SLOW_WARM_UP;
            case ABOVE_WINDOW -> Symptom.OVERHEATING;
            case INNER_EDGE_HOT -> Symptom.HOT_INNER_EDGE;
            case OUTER_EDGE_HOT -> Symptom.HOT_OUTER_EDGE;
            case ABOVE_TARGET, BELOW_TARGET, ABOVE_TARGET_ALONE, BELOW_TARGET_ALONE, BELOW_MINIMUM -> state;
            case INNER_EDGE_HOT_ALONE, OUTER_EDGE_HOT_ALONE, INSIDE_WINDOW, HOTTER_AXLE, MIDDLE_HOT, MIDDLE_COLD, EVEN_TREAD,
                    SIDES_DIFFER, AT_TARGET,
                    NO_GROWTH -> null;
        });
    }

    /** The cars that the rule's conditions let in, as far as they are about drive and toe. */
    private static Predicate<Car> cars(RuleText rule) {
        List<Question> asked = rule.conditions().stream().map(Condition::question)
                .filter(question -> question.isAbout(Setup.KIND) && question.asks().stream().allMatch(ask ->
                ABOUT_THE_CAR.contains(ask.attribute().name()))).toList();
        return car -> asked.stream().allMatch(question -> question.holdsOf(new Setup(car)));
    }

    private static Surface surface(RuleText rule) {
        return rule.conditions().stream().map(Condition::question).filter(question -> question.isAbout(Day.KIND))
                .flatMap(question -> question.word("surface").stream()).map(word -> Word.of(Surface.class, word))
                .findFirst().orElse(Surface.DRY);
    }
}
