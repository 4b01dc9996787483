package camberwell.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.language.Names;
import camberwell.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Rules that are no more")
class RetiredTest {

    private static final String LIST = """
            retired:
              - {id: KERB-7, title: "Kerbs: softer still", version: 0.2.0, because: "It said what KERB-6 says."}
            """;
    private static final String RULE = """
            rule "Kerbs: softer"
                @because("x")
                @note("front-bump")
            when
                the driver reports kerb-instability
            then
                propose front-bump softer with certainty 0.4
            end
            """;

    @TempDir
    private Path home;

    private List<String> problems(String list, String rule) throws IOException {
        Path own = Path.of(System.getProperty("camberwell.home"), "rules");
        Files.createDirectories(home.resolve("rules").resolve("3-changes"));
        for (String file : List.of("dictionary.dsl", "combine.drl")) {
            Files.writeString(home.resolve("rules").resolve(file), Files.readString(own.resolve(file)));
        }
        Files.writeString(home.resolve("rules").resolve("retired.yaml"), list);
        Files.writeString(home.resolve("rules").resolve("3-changes").resolve("kerbs.dslr"), rule);
        Names names = new Names(Set.of("front-bump"), Set.of(), Set.of(), Set.of());
        return RuleSet.read(home, names, List.of()).problems().stream().map(Problem::text).toList();
    }

    @Test
    @DisplayName("keep their ids: nobody else is given one")
    void anIdIsNotGivenAgain() throws IOException {
        assertEquals(List.of(), problems(LIST, RULE));
        assertEquals(List.of("rules/3-changes/kerbs.dslr:1:1: the id KERB-7 was that of \"Kerbs: softer still\", which "
                + "was retired in 0.2.0: It said what KERB-6 says; give the rule another"),
                problems(LIST, RULE.replace("    @note", "    @id(\"KERB-7\")\n    @note")));
    }

    @Test
    @DisplayName("are still known to whoever replaces one, by id and by title")
    void whoReplacesOneIsTold() throws IOException {
        for (String named : List.of("KERB-7", "Kerbs: softer still")) {
            assertEquals(List.of("rules/3-changes/kerbs.dslr:1:1: the rule \"Kerbs: softer\" replaces \"" + named
                    + "\", which was retired in 0.2.0: It said what KERB-6 says"),
                    problems(LIST, RULE.replace("    @note", "    @replaces(\"" + named + "\")\n    @note")));
        }
    }

    @Test
    @DisplayName("are listed whole: with id, title, version and reason")
    void listedWhole() throws IOException {
        List<String> said = problems("retired:\n  - {id: seven, title: Kerbs}\n", RULE);
        assertEquals(3, said.size(), said.toString());
        assertTrue(said.stream().allMatch(problem -> problem.startsWith("rules/retired.yaml:2:")), said.toString());
    }

    @Test
    @DisplayName("that camberwell itself lists are listed whole")
    void ours() throws IOException {
        List<Problem> problems = new ArrayList<>();
        Retired.read(Files.readString(Path.of(System.getProperty("camberwell.home"), Retired.FILE)), problems);
        assertEquals(List.of(), problems);
    }
}
