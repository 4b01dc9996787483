package camberwell.knowledge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Slips in the file of terms")
class BrokenTermsTest {

    @TempDir
    Path folder;

    @Test
    @DisplayName("a word without a meaning, one that is explained twice, a drawing that is not there: all are told")
    void slips() throws IOException {
        assertEquals(List.of("3:3: \"camber\" is explained a second time; the first is among \"angles\"",
                "5:5: the key \"meaning\" is missing", "5:5: unknown key \"fel\"; did you mean \"felt\"?",
                "8:14: \"drawing\" cannot be \"cornr\"; did you mean \"corner\"?"),
                problems("""
                        angles: {camber: The lean of a wheel.}
                        more:
                          camber: Again.
                          toe:
                            fel: it points
                          corner:
                            meaning: A turn.
                            drawing: cornr
                        drawings:
                          corner: |2
                              *
                        """));
    }

    @Test
    @DisplayName("what does not parse is told at its place, without a word of the program that reads it")
    void syntax() throws IOException {
        assertEquals(List.of("2:7: a \": \" too many in this line; put a text with a colon in quotes, or start a new "
                + "line"), problems("words:\n  a: b: c\n"));
    }

    private List<String> problems(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("terms.yaml"), text);
        return assertThrows(ProblemsException.class, () -> Terms.read(file)).problems().stream().map(Problem::text)
                .map(it -> it.substring(file.toString().length() + 1)).toList();
    }
}
