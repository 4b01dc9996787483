package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import camberwell.knowledge.Effect;
import camberwell.knowledge.Note;
import camberwell.language.RuleText;
import camberwell.language.Statement;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The two directions of an adjuster are opposites, in words, in effects and in rules")
class OppositesTest {

    @Test
    @DisplayName("the way back of the way back is the way there, and it moves the number the other way")
    void wayBack() {
        for (Change change : Change.all()) {
            assertEquals(change, change.opposite().opposite());
            assertNotEquals(change, change.opposite());
            assertNotEquals(change.direction().raises(), change.opposite().direction().raises(), change.id());
        }
    }

    @Test
    @DisplayName("what one direction betters, the other does not better too; and each has gains and costs")
    void effects() {
        List<String> offenders = new ArrayList<>();
        for (String name : Paddock.notes().names(Note.Kind.ADJUSTMENT)) {
            Note note = Paddock.notes().get(name);
            List<Direction> directions = Word.of(Adjuster.class, name).directions();
            Map<String, Integer> one = effects(note.ways().get(directions.get(0)));
            Map<String, Integer> other = effects(note.ways().get(directions.get(1)));
            one.forEach((on, effect) -> {
                if (effect * other.getOrDefault(on, 0) > 0) {
                    offenders.add(name + " both ways: " + on);
                }
            });
            note.ways().forEach((direction, way) -> {
                if (way.effects().stream().noneMatch(effect -> effect.effect() > 0)
                        || way.effects().stream().noneMatch(effect -> effect.effect() < 0)) {
                    offenders.add(name + " " + direction.id() + " has no gain or no cost");
                }
            });
        }
        assertEquals(List.of(), offenders);
    }

    private static Map<String, Integer> effects(Note.Way way) {
        Map<String, Integer> effects = new TreeMap<>();
        for (Effect effect : way.effects()) {
            effects.put(effect.on().id() + effect.phase() + effect.speed() + effect.where() + effect.when(),
                    effect.effect());
        }
        return effects;
    }

    @Test
    @DisplayName("no rule proposes both directions of one adjuster, or proposes what it opposes")
    void rules() {
        List<String> offenders = new ArrayList<>();
        for (RuleText rule : Paddock.rules().rules().values()) {
            Set<Change> proposed = new HashSet<>();
            Set<Change> opposed = new HashSet<>();
            rule.statements().forEach(said -> said.aboutChange().ifPresent(change ->
                    (said instanceof Statement.Propose || said instanceof Statement.First
                            ? proposed : opposed).add(change)));
            if (proposed.stream().anyMatch(change -> opposed.contains(change)
                    || proposed.contains(change.opposite()))) {
                offenders.add(rule.name());
            }
        }
        assertEquals(List.of(), offenders);
    }
}
