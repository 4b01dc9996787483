package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.advice.Advisor;
import camberwell.upkeep.Coverage;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Symptom;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The rules have an answer to every complaint that makes sense")
class CoverageTest {

    private static final Coverage COVERAGE = Coverage.of(
            new Advisor(Paddock.rules(), Paddock.notes(), Paddock.weights()), Paddock.rules(), Paddock.notes());

    @Test
    @DisplayName("every symptom, in every phase and speed in which it makes sense, on every drive, leads to a change")
    void noGaps() {
        assertEquals(List.of(), COVERAGE.gaps().stream().map(cell -> cell.symptom().id() + " " + cell.phase() + " "
                + cell.speed() + " " + cell.where() + " " + cell.drive()).toList());
    }

    @Test
    @DisplayName("every adjuster is proposed in each direction by some rule, and opposed by some")
    void bothWays() {
        assertEquals(List.of(), COVERAGE.neverProposed());
        assertEquals(List.of(), COVERAGE.neverOpposed());
    }

    @Test
    @DisplayName("every note is used by some rule")
    void notes() {
        assertEquals(List.of(), COVERAGE.unusedNotes());
        assertTrue(COVERAGE.complete());
    }

    @Test
    @DisplayName("the complaints that rightly lead to no change are few, and each says why")
    void senseless() {
        Map<Symptom, Set<Phase>> without = new TreeMap<>();
        COVERAGE.cells().forEach(cell -> cell.without().ifPresent(why -> {
            assertTrue(why.length() > 15, why);
            without.computeIfAbsent(cell.symptom(), key -> EnumSet.noneOf(Phase.class)).add(cell.phase().orElseThrow());
        }));
        Set<Symptom> everywhereMet = new TreeSet<>(List.of(Symptom.values()));
        everywhereMet.removeAll(without.keySet());
        assertEquals(Set.of(Symptom.SLOW_WARM_UP, Symptom.OVERHEATING, Symptom.GRAINING, Symptom.BOTTOMING,
                Symptom.HOT_INNER_EDGE, Symptom.HOT_OUTER_EDGE, Symptom.HOT_MIDDLE, Symptom.COLD_MIDDLE),
                everywhereMet);
        assertEquals(EnumSet.of(Phase.STRAIGHT), without.get(Symptom.UNDERSTEER));
        assertEquals(EnumSet.of(Phase.BRAKING, Phase.ENTRY, Phase.LIFT_OFF), without.get(Symptom.WHEELSPIN),
                "no wheel spins without power");
        assertEquals(Set.of("a car that is not the same left and right is mended, not adjusted"),
                COVERAGE.cells().stream().filter(cell -> cell.symptom() == Symptom.PULLING)
                        .flatMap(cell -> cell.without().stream()).collect(Collectors.toCollection(TreeSet::new)));
    }

    @Test
    @DisplayName("every symptom has cells for each drive")
    void drives() {
        for (Symptom symptom : Symptom.values()) {
            assertEquals(EnumSet.allOf(Drive.class), COVERAGE.cells().stream()
                    .filter(cell -> cell.symptom() == symptom).map(Coverage.Cell::drive)
                    .collect(Collectors.toCollection(() -> EnumSet.noneOf(Drive.class))), symptom.id());
        }
    }
}
