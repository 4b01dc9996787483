package camberwell.saying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Of two complaints in one breath neither is swallowed")
class LeftOutTest {

    private static final Listener LISTENER = Corpus.listener();

    /** Halves of sayings, with what a coach would make of each by itself. */
    private static final Map<String, Set<Symptom>> HALVES = new TreeMap<>(Map.ofEntries(
            Map.entry("the front just carries on when I turn", Set.of(Symptom.UNDERSTEER)),
            Map.entry("the nose keeps going where it was going", Set.of(Symptom.UNDERSTEER)),
            Map.entry("the car won't come round at the apex", Set.of(Symptom.UNDERSTEER)),
            Map.entry("the front washes out when I pick up the throttle", Set.of(Symptom.UNDERSTEER)),
            Map.entry("the back gets nervous when I get off the gas", Set.of(Symptom.OVERSTEER, Symptom.SNAP_OVERSTEER)),
            Map.entry("the tail comes round when I trail the brake", Set.of(Symptom.OVERSTEER, Symptom.SNAP_OVERSTEER)),
            Map.entry("the back end slides when I get on the power",
                    Set.of(Symptom.OVERSTEER, Symptom.SNAP_OVERSTEER, Symptom.WHEELSPIN)),
            Map.entry("the inside rear just spins up out of the hairpin", Set.of(Symptom.WHEELSPIN)),
            Map.entry("the left front locks up under heavy braking", Set.of(Symptom.FRONT_LOCKING)),
            Map.entry("the car weaves about when I stamp on the brakes", Set.of(Symptom.UNSTABLE_BRAKING)),
            Map.entry("the wheel takes both arms in the long corners", Set.of(Symptom.HEAVY_STEERING)),
            Map.entry("the steering is like stirring wet concrete", Set.of(Symptom.HEAVY_STEERING, Symptom.SLOW_TURN_IN)),
            Map.entry("it takes an age to answer the wheel", Set.of(Symptom.SLOW_TURN_IN)),
            Map.entry("it wanders all over the road on the straight", Set.of(Symptom.WANDERING, Symptom.PULLING)),
            Map.entry("the floor hits the ground over the crest", Set.of(Symptom.BOTTOMING)),
            Map.entry("it gets thrown sideways by the kerbs", Set.of(Symptom.KERB_INSTABILITY)),
            Map.entry("the front tyres never get up to temperature", Set.of(Symptom.SLOW_WARM_UP)),
            Map.entry("the rear tyres cook themselves after five laps", Set.of(Symptom.OVERHEATING)),
            Map.entry("there are little rubber balls all over the fronts", Set.of(Symptom.GRAINING)),
            Map.entry("the inside edge of the left front is worn away", Set.of(Symptom.HOT_INNER_EDGE))));

    /** Whether something is made of that half: told, asked, or named. */
    private static boolean answered(Heard heard, String half, Set<Symptom> means) {
        Stream<Told> made = Stream.concat(heard.told().stream(), heard.doubtful().stream().flatMap(it -> it.mayBe().stream()));
        Stream<String> named = Stream.concat(heard.notUnderstood().stream(), heard.unclear().stream()
                .filter(it -> it.mayBe().isEmpty()).map(Heard.Unclear::words));
        return made.anyMatch(told -> means.contains(told.symptom()))
                || named.map(Heard::plain).anyMatch(words -> !words.isEmpty() && (Heard.plain(half).contains(words)
                        || words.contains(Heard.plain(half))));
    }

    @ParameterizedTest
    @ValueSource(strings = {" and ", ", ", " while "})
    @DisplayName("each half of two is told, asked back about or named, whatever joins them")
    void eachHalf(String join) {
        List<String> swallowed = new ArrayList<>();
        int two = 0;
        for (Map.Entry<String, Set<Symptom>> first : HALVES.entrySet()) {
            for (Map.Entry<String, Set<Symptom>> second : HALVES.entrySet()) {
                if (first.getValue().stream().noneMatch(second.getValue()::contains)) {
                    String said = first.getKey() + join + second.getKey();
                    Heard heard = LISTENER.hear(said);
                    two++;
                    for (Map.Entry<String, Set<Symptom>> half : List.of(first, second)) {
                        if (!answered(heard, half.getKey(), half.getValue())) {
                            swallowed.add(half.getKey() + " <- " + said + " = " + heard.text() + " " + heard.refused());
                        }
                    }
                }
            }
        }
        assertTrue(two > 300, "sayings of two complaints: " + two);
        assertEquals(List.of(), swallowed);
    }

    @Test
    @DisplayName("the half that sounds like a complaint of its own is asked back about, with when it was")
    void asked() {
        Heard heard = LISTENER.hear("the front just carries on when I turn and the back gets nervous when I get off the gas, "
                + "late in the run");
        assertEquals("oversteer at lift-off, late in the run", heard.text());
        assertEquals(List.of(new Heard.Unclear("the front just carries on when I turn", List.of(new Told(Symptom.UNDERSTEER,
                List.of(Phase.ENTRY, Since.LATE_RUN), List.of())))),
                heard.doubtful());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "it pushes on entry and the rear steps out on exit, late in the run "
                + "| understeer at entry, late in the run; oversteer at exit, late in the run",
        "the front washes wide mid corner and the tail steps out when I lift, from lap eight on "
                + "| understeer at mid-corner, late in the run; oversteer at lift-off, late in the run"})
    @DisplayName("when it was, said last and by itself, is said of both")
    void ofBoth(String said, String taken) {
        assertEquals(taken, LISTENER.hear(said).text());
    }

    @ParameterizedTest
    @ValueSource(strings = {"the front locks up and we miss the apex", "it pushes on the way in and snaps on the way out",
        "the rear is fine on the brakes, but it pushes on the way out", "the tail steps out when I lift and get on the brakes",
        "pushes on the way in and the radio is dead"})
    @DisplayName("what came of a complaint, where it is not, and what is none are not asked about")
    void noComplaint(String said) {
        assertEquals(List.of(), LISTENER.hear(said).doubtful());
    }

    @ParameterizedTest
    @ValueSource(strings = {"it pushes mid corner, worse as the tyres get hot",
        "the front washes out, more so in the long fast ones"})
    @DisplayName("a part that says when or where is not named besides")
    void narrows(String said) {
        assertEquals(List.of(), LISTENER.hear(said).notUnderstood());
    }
}
