package camberwell.cli;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * Questions on {@code out}, answers from {@code in}, typed or piped. At any question {@code back} takes the last answer back,
 * {@code review} shows all of them, {@code help} says so, and {@code quit} ends the talk.
 */
final class Dialogue {

    private static final int MOST_TRIES = 20;
    private static final int LONGEST = 800;
    private static final Pattern UNQUOTABLE = Pattern.compile("[\"\\\\\\p{Cntrl}]");
    private static final String HELP = "At any question: back takes the last answer back, review shows what was answered, quit "
            + "ends and writes nothing.";

    private final Console console;
    private final TypedLines in;
    /** What was answered and taken, in the order of the questions. */
    private final List<Entry> given = new ArrayList<>();
    /** What is answered again after a step back, without a word. */
    private final Deque<String> again = new ArrayDeque<>();

    private final Consumer<List<String>> keeper;

    private record Entry(String question, String answer) {
    }

    /** The last answer is taken back: everything is asked again, and what stands is answered from memory. */
    static final class Back extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    /** Whoever answers has had enough. */
    static final class Quit extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    Dialogue(Console console) {
        this(console, List.of(), answers -> { });
    }

    /**
     * @param earlier answers of a talk that broke off, which are taken again without a word
     * @param keeper told of all answers whenever one was taken
     */
    Dialogue(Console console, List<String> earlier, Consumer<List<String>> keeper) {
        this.console = console;
        this.in = new TypedLines(console.in());
        this.again.addAll(earlier);
        this.keeper = keeper;
    }

    void say(String line) {
        if (again.isEmpty()) {
            console.out().println(line);
        }
    }

    /** Begins again, with all answers but the last. */
    void restart() {
        again.clear();
        given.subList(0, given.size() - 1).forEach(entry -> again.add(entry.answer()));
        given.clear();
    }

    /**
     * Asks for a line of text that may stand in quotes.
     *
     * @param usual what an empty answer means; empty where there has to be one
     */
    String text(String question, String usual) {
        return ask(question, answer -> {
            String said = answer.isEmpty() ? usual : answer;
            if (said.isEmpty() || said.length() > LONGEST || unquotable(said)) {
                say("A line of text, please, without double quotes and backslashes.");
                return Optional.empty();
            }
            return Optional.of(said);
        });
    }

    /** Whether something in {@code text} may not stand in quotes. */
    static boolean unquotable(String text) {
        return UNQUOTABLE.matcher(text).find();
    }

    /**
     * Asks until there is an answer that will do.
     *
     * @param accept the answer's meaning; empty, having said why, when it will not do
     * @throws ProblemsException if the answers end before
     * @throws Back if the last answer is taken back
     * @throws Quit if the talk is to end
     */
    <T> T ask(String question, Function<String, Optional<T>> accept) {
        for (int tries = 0; tries < MOST_TRIES; tries++) {
            String line = again.isEmpty() ? typed(question) : again.poll();
            if (told(line)) {
                continue;
            }
            int before = given.size();
            given.add(new Entry(question, line));
            Optional<T> answer = accept.apply(line);
            if (answer.isPresent()) {
                if (again.isEmpty()) {
                    keeper.accept(given.stream().map(Entry::answer).toList());
                }
                return answer.get();
            }
            given.subList(before, given.size()).clear();
        }
        throw new ProblemsException(Problem.of("-", "no answer would do: " + question, Optional.empty()));
    }

    private String typed(String question) {
        console.out().print(question + " ");
        console.out().flush();
        String line = readLine();
        if (line == null) {
            console.out().println();
            throw new ProblemsException(Problem.of("-", "the answers ended at: " + question, Optional.empty()));
        }
        if (!console.interactive()) {
            console.out().println(line);
        }
        return line.strip();
    }

    /** Whether it was a word to the talk itself, which is answered here. */
    private boolean told(String line) {
        switch (line) {
            case "help", "?" -> say(HELP);
            case "review" -> {
                given.forEach(entry -> say("  " + entry.question() + " " + entry.answer()));
                say(given.isEmpty() ? "  nothing yet" : "");
            }
            case "quit", "q" -> throw new Quit();
            case "back" -> {
                if (!given.isEmpty()) {
                    throw new Back();
                }
                say("There is nothing to go back to.");
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    private String readLine() {
        try {
            return in.next().orElse(null);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
