package camberwell.cli;

import camberwell.explain.Reasoning;
import camberwell.files.WholeFiles;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.report.Page;
import camberwell.report.QuizText;
import camberwell.vocabulary.Change;
import camberwell.yaml.Document;
import camberwell.yaml.Fields;
import camberwell.yaml.Problems;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Cases to hand out and hand in: one file, in which a pupil writes a name and a change to each case.
 *
 * @param pupil as they wrote it
 * @param seed that the cases were drawn with; empty for a pack's own cases
 * @param count how many there are
 * @param topic what they are about, if they were drawn for one
 * @param answers a change for each case, as far as one was written
 */
record Homework(String pupil, Optional<Long> seed, int count, Optional<String> topic, List<Optional<Change>> answers) {

    private static final int WIDTH = 80;
    private static final int MOST = 1000;

    /** Writes a file to hand out. */
    static void write(Path file, String shown, List<Reasoning> cases, Optional<Long> seed, Optional<String> topic,
            QuizText quiz) {
        StringBuilder text = new StringBuilder("# Write your name behind pupil, and behind each answer one change, as in: ")
                .append("answer: rear-toe toe-in\n# Leave everything else as it is, and hand the file in.\n")
                .append("pupil:\n");
        seed.ifPresent(number -> text.append("seed: ").append(number).append('\n'));
        topic.ifPresent(word -> text.append("topic: ").append(word).append('\n'));
        text.append("cases:\n");
        for (Reasoning reasoning : cases) {
            Page page = new Page(WIDTH, false);
            quiz.question(reasoning.run(), page);
            text.append("  - case: |\n");
            page.toString().strip().lines().forEach(line -> text.append(line.isEmpty() ? "" : "      ").append(line)
                    .append('\n'));
            text.append("    answer:\n");
        }
        try {
            WholeFiles.write(file, text.toString().getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new ProblemsException(Problem.unwritable(shown, e));
        }
    }

    /**
     * Reads a file that was handed in.
     *
     * @param pupil who handed it in; empty where the file says so
     * @throws ProblemsException with everything that is wrong with it
     */
    static Homework read(Path file, Optional<String> pupil) {
        Problems problems = new Problems();
        Optional<Homework> homework = Document.load(file, problems).map(document -> read(document.fields("key"), pupil));
        problems.warningsOrFail();
        return homework.orElseThrow();
    }

    private static Homework read(Fields fields, Optional<String> known) {
        boolean named = !fields.has("pupil", "");
        String written = named ? fields.text("pupil").orElse("") : "";
        String pupil = known.orElse(written);
        if (!named && known.isEmpty()) {
            fields.error("pupil", "whose answers are these? Write the name behind pupil, or name it with --pupil");
        }
        Optional<Long> seed = fields.whole("seed", 0, Integer.MAX_VALUE).map(Integer::longValue);
        Optional<String> topic = fields.text("topic");
        List<Optional<Change>> answers = new ArrayList<>();
        List<Fields> cases = fields.maps("cases", "key");
        for (Fields entry : cases.subList(0, Math.min(MOST, cases.size()))) {
            entry.prose("case");
            answers.add(entry.has("answer", "") ? Optional.empty() : entry.change("answer"));
            entry.done();
        }
        fields.done();
        return new Homework(pupil, seed, answers.size(), topic, List.copyOf(answers));
    }
}
