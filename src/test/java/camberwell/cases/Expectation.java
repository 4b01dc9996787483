package camberwell.cases;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a race engineer would insist on in a case; it stands in {@code src/test/resources/cases} under the case's name.
 *
 * @param top changes that have to be among the first so many
 * @param never changes that must not be advised
 * @param changes {@code none} where the car has to be left alone
 * @param likely findings that have to be likely
 * @param unlikely findings that must not be likely
 * @param withholdsBalance whether every balance change has to wait
 * @param drivingFirst whether the driver has to try something first, or must not be told to; open where it may be
 * @param cautions that must not be missing
 * @param driving habits that the driver has to be told of
 * @param notDriving habits that he must not be told of
 */
record Expectation(List<Top> top, List<String> never, Optional<String> changes, List<String> likely,
        List<String> unlikely, boolean withholdsBalance, Optional<Boolean> drivingFirst, List<String> cautions,
        List<String> driving, List<String> notDriving) {

    /** A change, as in {@code front-toe toe-out}, and the rank that it has to reach. */
    record Top(String change, int among) {
    }

    private static final Path FOLDER = Path.of("src/test/resources/cases");
    private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());

    private record File(List<Top> top, List<String> never, String changes, List<String> likely, List<String> unlikely,
            @JsonProperty("withholds-balance") boolean withholdsBalance,
            @JsonProperty("driving-first") Boolean drivingFirst, List<String> cautions, List<String> driving,
            @JsonProperty("not-driving") List<String> notDriving) {
    }

    static Expectation of(String name) throws IOException {
        File file = YAML.readValue(FOLDER.resolve(name + ".yaml").toFile(), File.class);
        return new Expectation(list(file.top), list(file.never), Optional.ofNullable(file.changes), list(file.likely),
                list(file.unlikely), file.withholdsBalance, Optional.ofNullable(file.drivingFirst),
                list(file.cautions), list(file.driving), list(file.notDriving));
    }

    private static <T> List<T> list(List<T> list) {
        return Objects.requireNonNullElse(list, List.of());
    }
}
