package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.explain.DemoCases;
import camberwell.explain.Quiz;
import camberwell.explain.Reasoning;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class QuizCommandTest {

    @Test
    @DisplayName("A class that types the same seed gets the same cases; another seed draws others")
    void seeded() {
        String first = quiz("", "--seed", "11", "--count", "3");
        assertEquals(first, quiz("", "--seed", "11", "--count", "3"));
        assertNotEquals(first, quiz("", "--seed", "12", "--count", "3").replace("seed 12", "seed 11"));
    }

    @Test
    @DisplayName("A learner's change is judged by what it would have done, in either order of its words")
    void judged() {
        String text = quiz("softer rear anti-roll bar\n", "--seed", "5");
        assertTrue(text.contains("Your change: rear anti-roll bar softer"), text);
        assertTrue(text.contains("Camberwell would change"), text);
        assertTrue(text.matches("(?s).*it (helps|may bring|may cost|makes worse).*"), text);
    }

    @Test
    @DisplayName("What is no change is asked again; q ends the quiz")
    void askedAgain() {
        String text = quiz("more power\nq\n", "--seed", "5", "--count", "2");
        assertTrue(text.contains("\"more power\" is no change"), text);
        assertTrue(!text.contains("Case 2"), text);
    }

    @Test
    @DisplayName("On every topic the rules have a case, and the topic's own file has a word in the advice")
    void everyTopic() {
        for (String topic : Quiz.topics(DemoCases.RULES)) {
            Reasoning drawn = new Quiz(DemoCases.EXPLAINER, DemoCases.RULES, DemoCases.cars(), 3)
                    .draw("a case", Optional.of(topic)).orElseThrow();
            assertTrue(drawn.advice().changes().stream().flatMap(change -> change.rules().stream())
                    .anyMatch(rule -> DemoCases.RULES.rules().get(rule).file().endsWith("/" + topic + ".dslr")), topic);
        }
    }

    @Test
    @DisplayName("A topic that no file has is refused with the ones there are")
    void noSuchTopic() {
        InProcess run = InProcess.run(80, "", "quiz", "--topic", "cambre");
        assertEquals(ExitCode.WRONG_INPUT, run.code());
        assertTrue(run.err().contains("did you mean camber?"), run.err());
    }

    private static String quiz(String typed, String... options) {
        String[] arguments = new String[options.length + 1];
        arguments[0] = "quiz";
        System.arraycopy(options, 0, arguments, 1, options.length);
        InProcess run = InProcess.run(80, typed, arguments);
        assertEquals(ExitCode.DONE, run.code(), run.err());
        return run.out();
    }
}
