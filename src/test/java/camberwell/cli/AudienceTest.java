package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Golden;
import camberwell.advice.RankedChange;
import camberwell.explain.DemoCases;
import camberwell.explain.Reasoning;
import camberwell.report.AdviceText;
import camberwell.report.NewcomerText;
import camberwell.report.Page;
import camberwell.report.Words;
import camberwell.vocabulary.Audience;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** An audience changes the words and the amount, never the conclusions. */
class AudienceTest {

    static Stream<Reasoning> demo() {
        return DemoCases.reasoned();
    }

    @ParameterizedTest
    @MethodSource("demo")
    @DisplayName("Newcomer, club driver and engineer are told of the same first change, in the same figures")
    void sameFirstChange(Reasoning reasoning) {
        List<RankedChange> changes = reasoning.advice().changes();
        for (Audience audience : Audience.values()) {
            String text = text(reasoning, audience);
            if (changes.isEmpty()) {
                assertFalse(text.contains("1. "), audience.id());
            } else {
                assertTrue(text.contains(Words.sentence(Words.move(changes.get(0)))), audience.id() + "\n" + text);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("demo")
    @DisplayName("An engineer is told all that a club driver is told, and the rules by their names")
    void engineerSeesAll(Reasoning reasoning) {
        String club = text(reasoning, Audience.CLUB);
        String engineer = text(reasoning, Audience.ENGINEER);
        for (RankedChange change : reasoning.advice().changes()) {
            assertTrue(club.contains(Words.sentence(Words.move(change))), change.change().id());
            assertTrue(engineer.contains(Words.sentence(Words.move(change))), change.change().id());
            change.rules().forEach(rule -> assertTrue(engineer.contains("Rule       " + rule), rule));
        }
        reasoning.advice().findings().forEach(finding -> assertTrue(engineer.contains(finding.id()), finding.id()));
        assertFalse(club.contains("Rule       "), "a club driver is not shown rules");
    }

    @Test
    @DisplayName("JSON is for programs and the same for every audience")
    void sameJson() {
        String newcomer = advise("demo-cases/pushes-in-snaps-out.yaml", "--for", "newcomer", "--format", "json");
        assertEquals(newcomer, advise("demo-cases/pushes-in-snaps-out.yaml", "--for", "engineer", "--format", "json"));
    }

    @Test
    @DisplayName("An audience that does not exist is refused with the ones that do")
    void noSuchAudience() {
        InProcess run = InProcess.run(80, "", "advise", "--for", "champion", "demo-cases/pushes-in-snaps-out.yaml");
        assertEquals(ExitCode.WRONG_INPUT, run.code());
        assertTrue(run.err().contains("it is one of newcomer, club, engineer"), run.err());
    }

    @ParameterizedTest
    @CsvSource({"demo-cases/pushes-in-snaps-out", "src/test/resources/audience/soft-fronts",
        "src/test/resources/audience/loose-on-the-brakes"})
    @DisplayName("Each audience's text, word by word")
    void goldens(String name) throws IOException {
        for (Audience audience : Audience.values()) {
            String text = advise(name + ".yaml", "--for", audience.id());
            Path golden = DemoCases.HOME.resolve("src/test/resources/audience/"
                    + name.substring(name.lastIndexOf('/') + 1) + "." + audience.id() + ".txt");
            Golden.check(golden, text);
        }
    }

    @Test
    @DisplayName("No golden is left over that nothing is compared with")
    void noStrayGolden() throws IOException {
        try (Stream<Path> files = Files.list(DemoCases.HOME.resolve("src/test/resources/audience"))) {
            assertEquals(3L * Audience.values().length,
                    files.filter(file -> file.toString().endsWith(".txt")).count());
        }
    }

    private static String advise(String... arguments) {
        InProcess run = InProcess.run(80, "", Stream.concat(Stream.of("advise"), Stream.of(arguments))
                .toArray(String[]::new));
        assertEquals(ExitCode.DONE, run.code(), run.err());
        return run.out();
    }

    private static String text(Reasoning reasoning, Audience audience) {
        Page page = new Page(100_000, false);
        if (audience == Audience.NEWCOMER) {
            new NewcomerText(DemoCases.NOTES, DemoCases.TERMS).write(reasoning.advice(), page);
        } else {
            new AdviceText(DemoCases.NOTES, audience, 100, false).write(reasoning.advice(), page);
        }
        return page.toString();
    }
}
