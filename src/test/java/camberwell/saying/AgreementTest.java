package camberwell.saying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Symptom;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("What the grammar reads and what a saying sounds like are put together")
class AgreementTest {

    private static final Listener LISTENER = Corpus.listener();

    @Test
    @DisplayName("what the grammar has no phrase for is taken where it sounds sure, and asked back where it is half sure")
    void bySound() {
        assertEquals("bottoming at a dip", LISTENER.hear("belly of the thing hammers on the tarmac in the compression").text());
        assertEquals("understeer at exit",
                LISTENER.hear("the nose takes its holidays when I feed the throttle in").text());
        Heard half = LISTENER.hear("the wheel is a handful all the way round");
        assertEquals("", half.text());
        assertTrue(half.doubtful().get(0).mayBe().stream().anyMatch(told -> told.symptom() == Symptom.HEAVY_STEERING));
    }

    @ParameterizedTest
    @ValueSource(strings = {"rear feels heavy", "the front feels heavy"})
    @DisplayName("what nobody would think of is not suggested: a heavy end of the car is no heavy steering")
    void noSillySuggestion(String said) {
        assertTrue(LISTENER.hear(said).unclear().stream().flatMap(it -> it.mayBe().stream())
                .noneMatch(told -> told.symptom() == Symptom.HEAVY_STEERING), LISTENER.hear(said).toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"the clutch slips when I come out of the hairpin", "my left knee locks under braking",
        "what does it mean when somebody says it's tight in the centre?"})
    @DisplayName("what sounds like no complaint is none, though its words are those of complaints")
    void noComplaint(String said) {
        assertEquals(List.of(), LISTENER.hear(said).told());
        assertTrue(!LISTENER.hear(said).refused().isEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"rear", "the front", "rear axle", "fronts", "front left", "the rear tyres", "the left rear"})
    @DisplayName("a part of the car is no complaint while nothing is told of it")
    void partAlone(String said) {
        assertEquals(List.of(), LISTENER.hear(said).told());
        assertEquals(List.of(), LISTENER.hear(said).doubtful());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "still pushes a bit on the way in, and the flux is odd | slight understeer at entry",
        "oversteer on exit and the seat hurts | oversteer at exit",
        "pushes on the way in and the radio is dead | understeer at entry"})
    @DisplayName("a complaint is taken beside what is none, which is named")
    void besideAnother(String said, String taken) {
        assertEquals(taken, LISTENER.hear(said).text());
        assertTrue(!LISTENER.hear(said).refused().isEmpty());
    }

    @Test
    @DisplayName("a word that a pack brings is the grammar's alone, as no lesson has it")
    void ofPacks() {
        try (Symptom.Brought brought = Symptom.bring("axle-tramp", "the driven wheels hop", false, Optional.empty())) {
            Map<String, String> texts = Corpus.texts();
            texts.put("mine/sayings.yaml", "complaints:\n  axle-tramp: tramps like mad, goes like a pogo stick\n");
            assertEquals("axle tramp", new Listener(Sayings.read(texts)).hear("it tramps like mad").text());
        }
    }

    @Test
    @DisplayName("a pack's own phrase means what the pack says, whatever else it sounds like")
    void packsFirst() {
        Map<String, String> texts = Corpus.texts();
        String said = "the back steps out like a drunk on every exit, I mean it";
        assertEquals(Symptom.OVERSTEER, LISTENER.hear(said).told().get(0).symptom());
        texts.put("mine/sayings.yaml", "complaints:\n  wheelspin: steps out like a drunk\n");
        Heard heard = new Listener(Sayings.read(texts)).hear(said);
        assertEquals(List.of(Symptom.WHEELSPIN), heard.told().stream().map(Told::symptom).toList());
    }

    @Test
    @DisplayName("where several are likely, all of them together are as sure as they are several")
    void sure() {
        Map<String, Double> what = new HashMap<>(Map.of("understeer", 0.5, "oversteer", 0.4, "refused", 0.1));
        Impression one = new Impression(what, Map.of("several", 0.1));
        assertEquals(Set.of("understeer"), one.likeliest());
        assertEquals(0.45, one.sure(one.likeliest()), 1e-9);
        assertEquals(0, one.likely(Symptom.UNDERSTEER, Phase.ENTRY));
        Impression both = new Impression(what, Map.of("several", 0.8, "entry", 0.8, "oversteer entry", 0.2));
        assertEquals(0.5, both.likely(Symptom.OVERSTEER, Phase.ENTRY), 1e-9);
        assertEquals(0.2, both.likelyOf(Symptom.OVERSTEER, Phase.ENTRY), 1e-9);
        assertEquals(0.8, both.likelyOf(Symptom.UNDERSTEER, Phase.ENTRY), 1e-9);
        assertEquals(Set.of("understeer", "oversteer"), both.likeliest());
        assertEquals(0.72, both.sure(both.likeliest()), 1e-9);
    }
}
