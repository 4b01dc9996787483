package camberwell.saying;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.vocabulary.Symptom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is no balance and may hurt somebody is heard as such, by the grammar alone. Common practice, no source. */
@DisplayName("What is loose, worn or broken")
class MechanicalFaultTest {

    private static final Listener LISTENER = Corpus.listener();

    private static boolean told(String said) {
        return LISTENER.hear(said).told().stream().anyMatch(one -> one.symptom() == Symptom.MECHANICAL_FAULT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"the rear wheel is loose", "I think a wheel nut came loose", "vibration through the steering at high speed",
        "vibration since the pit stop", "the whole car vibrates on the straight", "the car shudders under braking",
        "the brake pedal pulsates", "the pedal goes long after five laps", "the brake pedal goes to the floor", "spongy brake pedal",
        "I have to pump the brakes", "brakes are smoking", "it smells of fuel", "there was a knock from the front left",
        "I flat-spotted the front left and now it vibrates", "something is broken at the back", "we lost the brakes",
        "the tail is loose on exit and the pedal is getting long", "a wheel bearing is howling"})
    @DisplayName("is no balance, whatever it feels like")
    void heard(String said) {
        assertTrue(told(said), LISTENER.hear(said).toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"the rear is loose", "it is loose", "the tail gets loose when I lift", "no vibration at all, it just pushes",
        "it shakes over the kerbs", "the front tyres smoke under braking", "smoke from the fronts when I brake",
        "I smoke the rears out of every hairpin", "the wheel goes light", "the wheel feels dead", "it moves about on the brakes",
        "the front chatters at the limit", "long corners are worst", "I am on the pedal early and it pushes"})
    @DisplayName("is not what is of the balance")
    void notHeard(String said) {
        assertFalse(told(said), LISTENER.hear(said).toString());
    }
}
