package camberwell.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Which wheels are driven")
class DriveWordsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"rear wheel drive | REAR | ''", "front-wheel drive hatch | FRONT | ''",
        "rwd | REAR | ''", "it's an electric, rear drive | REAR | ''", "4wd | ALL | ''", "the driven wheels are the rears | REAR | ''",
        "front driven | FRONT | ''", "my car is rear engined, rear wheel drive | REAR | ''",
        "it's a fwd car, understeers everywhere | FRONT | understeers everywhere",
        "a rear wheel drive coupe that snaps on exit | REAR | a coupe that snaps on exit",
        "it's rwd and oversteers on exit | REAR | oversteers on exit"})
    @DisplayName("is heard with or without the rest of the car, and what the car did is left to be heard")
    void said(String typed, String drive, String rest) {
        DriveWords said = DriveWords.of(typed).orElseThrow();
        assertEquals(drive, said.drive().name());
        assertEquals(rest, said.rest());
    }

    @ParameterizedTest
    @ValueSource(strings = {"no rear drive out of the hairpins", "not rear wheel drive", "front or rear wheel drive",
        "the rear drive shaft clonks", "it pushes at the front"})
    @DisplayName("is not heard in what tells of grip or leaves it open")
    void notSaid(String typed) {
        assertEquals(true, DriveWords.of(typed).isEmpty());
    }
}
