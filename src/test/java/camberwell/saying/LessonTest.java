package camberwell.saying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.problem.ProblemsException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Sayings with their meaning, to learn from")
class LessonTest {

    private static final String CORNERS = "# Kinds of corners count.\n";

    private static final int ANYBODYS = 6;

    private static Lesson lesson(String meaning) {
        return Lesson.read("mine.txt", CORNERS + "it does that | " + meaning + "\n").get(0);
    }

    @Test
    @DisplayName("a meaning is what is certain of it, and what may be")
    void meanings() {
        assertEquals(Set.of("understeer", "entry"), lesson("understeer entry slow?").labels());
        assertEquals(Set.of("slow"), lesson("understeer entry slow?").open());
        assertEquals(Set.of("oversteer"), lesson("oversteer braking || oversteer entry").labels());
        assertEquals(Set.of("braking", "entry"), lesson("oversteer braking || oversteer entry").open());
        assertEquals(Set.of("understeer", "oversteer", "exit", "several"), lesson("understeer; oversteer exit").labels());
        assertEquals(Set.of("oversteer exit"), lesson("understeer; oversteer exit slow?").pairs());
        assertEquals(Set.of("oversteer slow"), lesson("understeer; oversteer exit slow?").openPairs());
        assertEquals(Set.of("oversteer braking", "oversteer entry"), lesson("oversteer braking || oversteer entry").openPairs());
        assertEquals(Set.of("nothing"), lesson("nothing").labels());
        assertEquals(Set.of("refused"), lesson("refused").labels());
        assertEquals(Set.of("wet", "day"), lesson("surface: wet").labels());
    }

    @Test
    @DisplayName("a file that does not count kinds of corners leaves them open")
    void corners() {
        assertTrue(Lesson.read("mine.txt", "it pushes | understeer\n").get(0).open().contains("hairpin"));
        assertEquals(Set.of(), lesson("understeer").open());
    }

    @Test
    @DisplayName("what is wrong is named with its line and column, and with what was meant")
    void problems() {
        ProblemsException wrong = assertThrows(ProblemsException.class,
                () -> Lesson.read("mine.txt", "# A comment.\n\nit pushes | understeer entrie slow\nno bar here\n"));
        assertEquals("mine.txt:3:24: \"entrie\" is no word of the vocabulary; did you mean \"entry\"?",
                wrong.problems().get(0).text());
        assertEquals("mine.txt:4:1: a saying and its meaning have \" | \" between them", wrong.problems().get(1).text());
    }

    @Test
    @DisplayName("no saying that is kept aside has been learned from")
    void keptAside() throws IOException {
        List<String> learned = EarImage.lessons(Path.of("src/main/sayings")).stream().flatMap(List::stream)
                .map(lesson -> plain(lesson.saying())).toList();
        Set<String> all = new HashSet<>(learned);
        for (String name : List.of("paddock-o.txt", "paddock-p.txt", "paddock-q.txt", "paddock-r.txt", "paddock-s.txt",
                "paddock-t.txt", "paddock-u.txt", "paddock-v.txt", "paddock-w.txt", "paddock-x.txt",
                "paddock-y.txt", "paddock-z.txt", "paddock-aa.txt", "paddock-ab.txt")) {
            List<String> met = Corpus.read(name).stream().map(entry -> plain(entry.saying())).filter(all::contains).toList();
            // Short ones of the trade are anybody's: "wheelspin out of the hairpins", "die Vorderräder blockieren beim Bremsen".
            assertTrue(met.size() <= ANYBODYS, met.toString());
        }
        assertTrue(learned.size() > 10_000, learned.size() + " lessons");
    }

    private static String plain(String said) {
        return Tokens.plain(said).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    }
}
