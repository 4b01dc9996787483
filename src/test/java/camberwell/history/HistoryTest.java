package camberwell.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.input.CaseWriter;
import camberwell.run.Case;
import camberwell.run.Driven;
import camberwell.run.Tried;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Severity;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("What the book knows of a car")
class HistoryTest {

    private static final Case FIRST = Runs.run(1, Runs.car(4, 4, 4), List.of(Runs.understeer(Severity.STRONG)));
    private static final Case SECOND = Runs.run(2, Runs.car(3, 4, 4), List.of(Runs.understeer(Severity.STRONG)));
    private static final Case THIRD = Runs.run(3, Runs.car(3, 5, 4), List.of(Runs.understeer(Severity.SLIGHT)));

    @Test
    @DisplayName("every change that was driven is a trial, with its age")
    void trials() {
        List<Tried> tried = new History(List.of(FIRST, SECOND, THIRD)).tried(THIRD);
        assertEquals(List.of("front-anti-roll-bar softer", "rear-anti-roll-bar stiffer"),
                tried.stream().map(it -> it.change().id()).toList());
        assertEquals(List.of(Outcome.SAME, Outcome.BETTER), tried.stream().map(Tried::outcome).toList());
        assertEquals(List.of(Optional.of(1), Optional.of(0)), tried.stream().map(it -> it.trial().runsAgo()).toList());
    }

    @Test
    @DisplayName("nothing is learned across a rebuild, and little from another track")
    void rebuiltOrElsewhere() {
        Driven.Sheet sheet = new Driven.Sheet(Optional.of(3), Optional.empty(), Optional.empty(), Optional.of("Home"),
                Optional.empty(), true);
        assertEquals(List.of(), new History(List.of(FIRST, SECOND, THIRD.withDriven(Driven.UNKNOWN.on(sheet))))
                .tried(THIRD));
        Driven.Sheet home = new Driven.Sheet(Optional.of(2), Optional.empty(), Optional.empty(), Optional.of("Home"),
                Optional.empty(), false);
        Driven.Sheet away = new Driven.Sheet(Optional.of(3), Optional.empty(), Optional.empty(), Optional.of("Away"),
                Optional.empty(), false);
        Case now = THIRD.withDriven(Driven.UNKNOWN.on(away));
        assertTrue(new History(List.of(FIRST, SECOND.withDriven(Driven.UNKNOWN.on(home)), now)).tried(now).get(0)
                .trial().elsewhere());
    }

    @Test
    @DisplayName("what came of a change by another driver's word weighs as one from elsewhere does")
    void ofAnotherDriver() {
        Case first = FIRST.withDriven(Driven.UNKNOWN.on(by(1, "Ada")));
        Case second = SECOND.withDriven(Driven.UNKNOWN.on(by(2, "Ada")));
        History book = new History(List.of(first, second));
        assertFalse(book.tried(THIRD.withDriven(Driven.UNKNOWN.on(by(3, "ada")))).get(0).trial().elsewhere());
        assertFalse(book.tried(THIRD).get(0).trial().elsewhere());
        assertTrue(book.tried(THIRD.withDriven(Driven.UNKNOWN.on(by(3, "Bert")))).get(0).trial().elsewhere());
    }

    private static Driven.Sheet by(int number, String driver) {
        return new Driven.Sheet(Optional.of(number), Optional.empty(), Optional.of(driver), Optional.empty(), Optional.empty(),
                false);
    }

    @Test
    @DisplayName("another driver's run says nothing of the change")
    void otherDriver() {
        Driven.Sheet other = new Driven.Sheet(Optional.of(2), Optional.empty(), Optional.of("B"), Optional.empty(),
                Optional.empty(), false);
        Driven.Sheet one = new Driven.Sheet(Optional.of(1), Optional.empty(), Optional.of("A"), Optional.empty(),
                Optional.empty(), false);
        List<Tried> tried = new History(List.of(FIRST.withDriven(Driven.UNKNOWN.on(one)),
                SECOND.withDriven(Driven.UNKNOWN.on(other)))).tried(SECOND);
        assertEquals(List.of(Outcome.UNCLEAR), tried.stream().map(Tried::outcome).toList());
    }

    @Test
    @DisplayName("the order in which files were written does not matter, only their numbers")
    void order(@TempDir Path folder) {
        List<Case> runs = new ArrayList<>(List.of(FIRST, SECOND, THIRD));
        List<Tried> expected = new History(runs).tried(THIRD);
        for (int seed = 0; seed < 6; seed++) {
            Collections.shuffle(runs, new Random(seed));
            Path shuffled = folder.resolve("book-" + seed);
            Book book = Book.begin(shuffled);
            for (Case run : runs) {
                new CaseWriter().write(run, shuffled.resolve("000"
                        + run.driven().sheet().number().orElseThrow() + "-test-car.yaml"));
            }
            assertEquals(expected, History.of(book, "Test car").tried(THIRD));
        }
    }

    @Test
    @DisplayName("only the runs of the same car, and only the last thirty, are looked at")
    void bounded(@TempDir Path folder) {
        Book book = Book.begin(folder);
        for (int i = 0; i < 50; i++) {
            book.add(FIRST);
        }
        assertEquals(History.MOST, History.of(book, "Test car").runs().size());
        assertEquals(0, History.of(book, "Another car").runs().size());
        assertEquals(49, History.of(book, "Test car").before(50).orElseThrow().driven().sheet().number().orElseThrow());
    }
}
