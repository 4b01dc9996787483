package camberwell.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.input.CaseReader;
import camberwell.report.Page;
import camberwell.run.Report;
import camberwell.saying.Listener;
import camberwell.saying.Sayings;
import camberwell.vocabulary.Audience;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What a debrief is not sure of, it asks back about")
class AskedBackTest {

    private static final Paddock PADDOCK = new Paddock();

    private Debrief debrief;
    private Talk talk;

    @BeforeEach
    void begin() throws IOException {
        Path file = Path.of("knowledge-notes", Sayings.FILE);
        Listener listener = new Listener(Sayings.read(Map.of(file.toString(), Files.readString(file))));
        debrief = PADDOCK.debrief(Paddock.untold(new CaseReader().read(Path.of("demo-cases/pushes-in-snaps-out.yaml")).run()));
        talk = new Talk(debrief, () -> listener, () -> PADDOCK.notes, Audience.CLUB, () -> new Page(80, false));
        talk.ask();
        talk.take();
    }

    @AfterEach
    void end() {
        debrief.close();
    }

    private String say(String line) {
        talk.reply(line);
        return talk.take();
    }

    private List<String> told() {
        return debrief.run().reports().stream().map(Report::text).toList();
    }

    @Test
    @DisplayName("yes takes what was meant, and the talk goes on")
    void yes() {
        assertEquals("\"memorised oversteer on exit\": did you mean oversteer at exit? (yes/no)\n",
                say("memorised oversteer on exit"));
        assertEquals(List.of(), told());
        assertTrue(talk.askedBack().isPresent());
        assertTrue(say("y").startsWith("Heard: oversteer at exit.\n"));
        assertEquals(List.of("oversteer at exit"), told());
        assertTrue(talk.askedBack().isEmpty());
    }

    @Test
    @DisplayName("no wants it in other words, and anything else is heard as an answer of its own")
    void otherwise() {
        say("memorised oversteer on exit");
        assertEquals("Then say it in other words, or unknown.\n", say("no"));
        assertEquals(Field.DOING, talk.question().orElseThrow().topic().field());
        say("memorised oversteer on exit");
        assertTrue(say("it pushes on the way in").startsWith("Heard: understeer at entry.\n"));
        assertEquals(List.of("understeer at entry"), told());
        assertTrue(talk.askedBack().isEmpty());
    }

    @Test
    @DisplayName("what is sure is taken first, and the next question waits for what is not")
    void besides() {
        String answer = say("it pushes on the way in. memorised oversteer on exit");
        assertTrue(answer.startsWith("Heard: understeer at entry.\n"), answer);
        assertTrue(answer.endsWith("\"memorised oversteer on exit\": did you mean oversteer at exit? (yes/no)\n"), answer);
        assertEquals(List.of("understeer at entry"), told());
        Talk.Next next = talk.reply("yes");
        assertEquals(List.of("understeer at entry", "oversteer at exit"), told());
        assertEquals(next == Talk.Next.ADVISE, talk.question().isEmpty());
    }

    @Test
    @DisplayName("after a no the question that waited is asked")
    void waited() {
        say("it pushes. memorised oversteer on exit");
        assertTrue(say("no").contains("Where"));
        assertEquals(Field.PHASE, talk.question().orElseThrow().topic().field());
        say("back");
        say("it pushes. memorised oversteer on exit");
        assertTrue(say("entry").startsWith("Heard: entry.\n"));
        assertEquals(List.of("understeer at entry"), told());
    }

    @Test
    @DisplayName("what is added is asked back about as well")
    void added() {
        say("it pushes on the way in");
        assertTrue(say("add memorised oversteer on exit").endsWith("(yes/no)\n"));
        say("yes");
        assertEquals(List.of("understeer at entry", "oversteer at exit"), told());
    }

    @Test
    @DisplayName("both ends in one place are asked apart: which it is, somebody has to say")
    void bothEnds() {
        String answer = say("in practice it was loose, in the race it was tight");
        assertTrue(answer.startsWith("\"in practice it was loose, in the race it was tight\": oversteer or understeer?"), answer);
        say("oversteer");
        assertEquals(List.of("oversteer"), told());
    }

    @Test
    @DisplayName("which of two is meant may be told by the end of the car")
    void byTheEnd() {
        assertTrue(say("it slides on exit")
                .startsWith("\"it slides on exit\": understeer or oversteer? Say which, or which end"));
        assertTrue(say("rear").startsWith("Heard: oversteer at exit.\n"));
        assertEquals(List.of("oversteer at exit"), told());
    }
}
