package camberwell.knowledge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Phase;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("A note on an adjuster")
class NoteFormatTest {

    private static final String NOTE = """
            ---
            title: Front toe
            kind: adjustment
            summary: Where the front wheels point.
            effects:
              toe-out:
                - {on: slow-turn-in, effect: +2}
                - {on: wandering, effect: -2}
                - {on: overheating, where: front, effect: -1}
                - {on: overheating, where: front, when: {setting: toed-in}, effect: +1}
              toe-in:
                mirrored-except:
                  - {on: wandering, effect: +1}
                  - {on: graining, where: front, effect: +1}
            rationale:
              toe-out:
                - when: {drive: front, phase: [entry, braking]}
                  text: For front drive.
                - when: {drive: front}
                  text: For front drive elsewhere.
                - text: For all others.
              toe-in: Toe-in calms.
            plain: {toe-out: Out., toe-in: In.}
            watch: {toe-out: Watch., toe-in: Watch.}
            put-back: {toe-out: Back., toe-in: Back.}
            effort: 4
            risk: 1
            model: represented
            sources: [common practice, no source]
            ---
            Prose.
            """;

    private static Note read(String text) {
        return new NoteReader("front-toe.md", "front-toe", Note.Kind.ADJUSTMENT, text).read();
    }

    private static List<String> problems(String text) {
        return assertThrows(ProblemsException.class, () -> read(text)).problems().stream().map(Problem::message)
                .toList();
    }

    private static Circumstances of(String drive, Phase... phases) {
        Map<Matter, Set<String>> known = new EnumMap<>(Matter.class);
        known.put(Matter.DRIVE, Set.of(drive));
        return new Circumstances(known, List.of(phases).stream().map(phase -> Map.of(Matter.PHASE, Set.of(phase.id())))
                .toList());
    }

    @Nested
    @DisplayName("says its effects once")
    class Mirrored {

        private final List<String> back = read(NOTE).ways().get(Direction.TOE_IN).effects().stream()
                .map(effect -> effect.on().id() + " " + effect.effect()
                        + (effect.when().always() ? "" : " " + effect.when().text())).toList();

        @Test
        @DisplayName("and the way back does the opposite, circumstance by circumstance")
        void opposite() {
            assertTrue(back.contains("slow-turn-in -2"), back.toString());
            assertTrue(back.contains("overheating 1"), back.toString());
            assertTrue(back.contains("overheating -1 setting: toed-in"), back.toString());
        }

        @Test
        @DisplayName("save for what it says of the way back by itself")
        void except() {
            assertTrue(back.contains("wandering 1") && !back.contains("wandering 2"), back.toString());
            assertTrue(back.contains("graining 1"), back.toString());
            assertEquals(5, back.size());
        }

        @Test
        @DisplayName("but not of both ways that they are the other mirrored, and of none twice")
        void never() {
            String both = NOTE.replaceFirst("(?s)toe-out:\n(    - .*?\n)+  toe-in", "toe-out: mirrored\n  toe-in");
            assertTrue(problems(both).toString().contains("one at most is the other mirrored"));
            String twice = NOTE.replace("{on: wandering, effect: -2}", "{on: slow-turn-in, effect: -2}");
            assertTrue(problems(twice).toString().contains("two effects on slow turn-in"));
        }
    }

    @Nested
    @DisplayName("words its texts for the case")
    class Wordings {

        private String rationale(Circumstances circumstances) {
            return read(NOTE).fitting(circumstances).ways().get(Direction.TOE_OUT).rationale();
        }

        @Test
        @DisplayName("by the first wording that fits, and else by the last one")
        void first() {
            assertEquals("For front drive.", rationale(of("front", Phase.EXIT, Phase.ENTRY)));
            assertEquals("For front drive elsewhere.", rationale(of("front", Phase.EXIT)));
            assertEquals("For all others.", rationale(of("rear", Phase.ENTRY)));
            assertEquals("For all others.", rationale(Circumstances.UNKNOWN));
        }

        @Test
        @DisplayName("and what one complaint says and what another says do not meet one condition together")
        void oneComplaint() {
            When when = new When(Map.of(Matter.REPORTED, List.of("understeer"), Matter.PHASE, List.of("exit")));
            Map<Matter, Set<String>> push = Map.of(Matter.REPORTED, Set.of("understeer"), Matter.PHASE, Set.of("entry"));
            Map<Matter, Set<String>> spin = Map.of(Matter.REPORTED, Set.of("wheelspin"), Matter.PHASE, Set.of("exit"));
            assertFalse(when.holds(new Circumstances(Map.of(), List.of(push, spin))));
            assertTrue(when.holds(new Circumstances(Map.of(), List.of(push, spin, Map.of(Matter.REPORTED,
                    Set.of("understeer"), Matter.PHASE, Set.of("exit"))))));
        }

        @Test
        @DisplayName("and says when each of them is shown, except the last")
        void conditions() {
            assertTrue(problems(NOTE.replace("    - text: For all others.", "    - when: {drive: rear}\n"
                    + "      text: For all others.")).toString().contains("is for all other cases"));
            assertTrue(problems(NOTE.replace("drive: front}", "drive: frnt}")).toString()
                    .contains("\"drive\" cannot be \"frnt\""));
            assertTrue(problems(NOTE.replace("{drive: front}", "{driven: front}")).toString()
                    .contains("unknown key \"driven\""));
        }

        @Test
        @DisplayName("and a wording that an earlier one hides is found, as is a finding that does not exist")
        void hidden() {
            Note hidden = read(NOTE.replace("{drive: front, phase: [entry, braking]}", "{drive: [front, all]}"));
            List<Problem> found = new WhenCheck("f", hidden, Set.of(), Set.of()).problems();
            assertTrue(found.get(0).message().contains("is never shown"), found.toString());
            Note unknown = read(NOTE.replace("setting: toed-in", "finding: front-tyre-cold"));
            found = new WhenCheck("f", unknown, Set.of("front-tyres-cold"), Set.of()).problems();
            assertEquals(Optional.of("front-tyres-cold"), found.get(0).suggestion());
            assertEquals(List.of(), new WhenCheck("f", read(NOTE), Set.of(), Set.of()).problems());
        }
    }
}
