package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Numbers, names and words of a pack's own are so many more places for what a stranger may try. */
@DisplayName("A hostile figure, word, question or threshold is refused before anything is compiled")
class HostileSentencesTest {

    private static final Path FOLDERS = Path.of("src", "test", "resources", "rules", "hostile-folders.json");
    private static final String RULES = "3-changes/kerbs.dslr";

    @TempDir
    private Path directory;

    @TestFactory
    Stream<DynamicTest> refused() throws IOException {
        JsonNode all = new ObjectMapper().readTree(Files.readString(FOLDERS));
        return StreamSupport.stream(all.spliterator(), false).map(folder -> DynamicTest.dynamicTest(
                folder.get("what").asText(), () -> {
                    Bench bench = new Bench(Files.createDirectory(directory.resolve("f" + folder.hashCode())));
                    bench.file("mine/" + RULES, Bench.rule("Kerbs: softer", "the driver reports kerb-instability",
                            "propose front-bump softer with certainty 0.35"));
                    bench.file("mine/" + folder.get("path").asText(), folder.get("text").asText());
                    bench.file("case.yaml", Bench.kerbCase());
                    Bench.Run checked = bench.run("rules", "check", "mine");
                    List<String> said = checked.all().lines().filter(line -> line.startsWith("mine")).toList();
                    assertEquals(StreamSupport.stream(folder.get("says").spliterator(), false).map(JsonNode::asText)
                            .toList(), said);
                    assertEquals(1, checked.code());
                    assertNotEquals(0, bench.run("advise", "--rules", "mine", "case.yaml").code());
                    assertFalse(bench.compiled(), "something was compiled");
                }));
    }

    @TestFactory
    Stream<DynamicTest> thereAreMany() throws IOException {
        int count = new ObjectMapper().readTree(Files.readString(FOLDERS)).size();
        return Stream.of(DynamicTest.dynamicTest("at least 30", () -> assertTrue(count >= 30)));
    }
}
