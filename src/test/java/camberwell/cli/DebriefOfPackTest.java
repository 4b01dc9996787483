package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A debrief with an instructor's pack: its words are understood, its questions asked, its name said")
class DebriefOfPackTest {

    private static final Path HOME = Path.of(System.getProperty("camberwell.home"));
    private static final String COUPE = HOME.resolve("demo-cases/cars/corvane-coupe.yaml").toString();

    @TempDir
    private Path folder;

    @BeforeEach
    void pack() throws IOException {
        write("pack.yaml", "name: tall-kerbs\nversion: 1.0\nauthor: A. Tutor\nneeds: [camberwell 0.1.0]\n");
        write("symptoms.yaml", "kerb-hop:\n  felt: the car hops three times after each kerb\n"
                + "  helped-by: {front-bump softer: 2, rear-bump softer: 1}\n");
        write("questions.yaml", "kerb-height:\n  ask: How tall are the kerbs?\n  when: [kerb-instability, kerb-hop]\n"
                + "  answers: {low: you can ride them, tall: they throw the car}\n"
                + "moon:\n  ask: Was there a full moon?\n  when: [kerb-hop]\n  answers: {yes: there was, no: there was none}\n");
        write("knowledge-notes/sayings.yaml", "complaints:\n  kerb-hop: three hops, hops like a hare\n");
        write("3-changes/kerbs.dslr", """
                rule "Tall kerbs: softer front bump"
                    @because("A tall kerb lifts the wheel faster than a stiff damper lets it move.")
                    @note("front-bump")
                when
                    the driver reports kerb-hop
                    the answer to kerb-height is tall
                then
                    propose front-bump softer with certainty 0.7
                end

                rule "Low kerbs: softer rear bump"
                    @because("Over a low kerb it is the rear that hops.")
                    @note("rear-bump")
                when
                    the driver reports kerb-hop
                    the answer to kerb-height is low
                then
                    propose rear-bump softer with certainty 0.7
                end
                """);
    }

    private void write(String name, String text) throws IOException {
        Path file = folder.resolve("school").resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private Ran debrief(String typed, String... more) {
        String[] arguments = new String[more.length + 5];
        System.arraycopy(new String[] {"debrief", "--rules", "school", "--car", COUPE}, 0, arguments, 0, 5);
        System.arraycopy(more, 0, arguments, 5, more.length);
        // An engine of its own: the pack's words must not reach other tests' talks.
        return Ran.in(folder, 80, typed, InProcess.ENGINE, arguments);
    }

    @Test
    @DisplayName("the question comes after its complaint, by number or word or sentence, and turns the advice")
    void asked() {
        for (String tall : new String[] {"tall", "2", "they are really tall", "tal", "they throw the car"}) {
            Ran ran = debrief("it hops like a hare\n" + tall + "\ndone\n");
            assertEquals("", ran.err());
            assertTrue(ran.out().contains("Heard: kerb hop."), ran.out());
            assertTrue(ran.out().contains("How tall are the kerbs?"), ran.out());
            assertTrue(ran.out().contains("tall: they throw the car"), ran.out());
            assertTrue(ran.out().contains("Heard: tall."), tall + "\n" + ran.out());
            assertTrue(ran.out().contains("Change     front bump"), ran.out());
        }
        Ran low = debrief("kerb hop\nlow\ndone\n");
        assertTrue(low.out().contains("Change     rear bump"), low.all());
        String passed = debrief("kerb hop\nunknown\nreal car\nno\ndone\n").out();
        assertEquals(passed.indexOf("How tall are the kerbs?"), passed.lastIndexOf("How tall are the kerbs?"), passed);
    }

    @Test
    @DisplayName("a question on which nothing hangs is not asked, nor one whose complaint is not there")
    void notAsked() {
        assertFalse(debrief("kerb hop\ntall\nreal car\nno\ndone\n").out().contains("moon"));
        assertFalse(debrief("understeer entry slow\nreal car\nno\ndone\n").out().contains("How tall are the kerbs?"));
    }

    @Test
    @DisplayName("at its prompt another complaint is heard, and what is no answer is refused with the words to choose from")
    void otherWords() {
        Ran other = debrief("kerb hop\nit also pushes on entry in slow corners\ntall\ndone\n");
        assertTrue(other.out().contains("Heard: understeer at entry in slow corners."), other.out());
        assertTrue(other.out().contains("Heard: tall."), other.out());
        Ran wrong = debrief("kerb hop\npurple\ntall\ndone\n");
        assertTrue(wrong.out().contains("\"purple\" is not understood"), wrong.out());
        assertTrue(debrief("kerb hop\n1 2\ntall\ndone\n").out().contains("One of them"));
    }

    @Test
    @DisplayName("the answer is saved with the case, may be changed, and neither it nor a passed question is asked again")
    void kept() throws IOException {
        debrief("kerb hop\ntall\nchange kerb-height\nlow\nquit\n", "--save", "a.yaml");
        assertTrue(Files.readString(folder.resolve("a.yaml")).contains("kerb-height: low"));
        debrief("kerb hop\nunknown\nquit\n", "--save", "b.yaml");
        for (String file : new String[] {"a.yaml", "b.yaml"}) {
            Ran resumed = Ran.in(folder, 80, "quit\n", InProcess.ENGINE, "debrief", "--rules", "school",
                    "--resume", file);
            assertEquals("", resumed.err());
            assertFalse(resumed.out().contains("How tall are the kerbs?"), resumed.out());
        }
    }

    @Test
    @DisplayName("card, advice and sheet name the pack beside what it advised")
    void named() throws IOException {
        Ran ran = debrief("kerb hop\ntall\ndone\n");
        assertTrue(ran.out().contains("From       tall-kerbs 1.0"), ran.out());
        assertTrue(ran.out().contains("A tall kerb lifts the wheel"), ran.out());
        debrief("kerb hop\ntall\nquit\n", "--save", "a.yaml");
        for (String audience : new String[] {"club", "newcomer"}) {
            Ran sheet = Ran.in(folder, 80, "", InProcess.ENGINE, "sheet", "--rules", "school", "a.yaml",
                    "--for", audience, "-o", audience + ".html");
            assertEquals("", sheet.err(), audience);
            assertTrue(Files.readString(folder.resolve(audience + ".html")).contains("tall-kerbs 1.0"), audience);
        }
    }

    @Test
    @DisplayName("a program gets the question with its name and its words")
    void lines() {
        Ran ran = debrief("kerb hop\ntall\n", "--format", "jsonl");
        assertTrue(ran.out().contains("\"field\":\"own\",\"name\":\"kerb-height\",\"ask\":\"How tall are the kerbs?\","
                + "\"choices\":[\"low\",\"tall\"]"), ran.out());
    }

    @Test
    @DisplayName("a caution of the pack that halts and asks no more ends the questions; one that only halts does not")
    void asksNoMore() throws IOException {
        write("4-cautions/kerbs.dslr", """
                rule "Hops on every kerb: look at the dampers first"
                    @because("A damper that has lost its oil hops on every kerb.")
                    @note("look-at-the-dampers")
                when
                    the driver reports kerb-hop
                then
                    caution look-at-the-dampers
                end
                """);
        String note = "---\ntitle: Look at the dampers\nkind: caution\nstatement: Look for oil on the dampers before anything else.\n"
                + "halts: yes\n%ssources:\n  - common practice, no source\n---\nOil on a damper ends the day.\n";
        String typed = "it hops like a hare\nreal car\n";
        write("knowledge-notes/cautions/look-at-the-dampers.md", note.formatted(""));
        assertTrue(debrief(typed).out().contains("Were the tyres read"), debrief(typed).out());
        write("knowledge-notes/cautions/look-at-the-dampers.md", note.formatted("asks-no-more: yes\n"));
        assertFalse(debrief(typed).out().contains("Were the tyres read"), debrief(typed).out());
    }
}
