package camberwell.cli;

import camberwell.files.WholeFiles;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.vocabulary.Change;
import camberwell.yaml.Document;
import camberwell.yaml.Fields;
import camberwell.yaml.Problems;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What one pupil answered in quizzes: a file a pupil, to which each quiz adds.
 *
 * @param pupil as the file calls them
 * @param answers in the order in which they were given
 */
record AnswerSheet(String pupil, List<Answer> answers) {

    /**
     * One answer.
     *
     * @param of the case's title
     * @param advised the changes that are advised, best first
     * @param answer the pupil's
     */
    record Answer(String of, List<Change> advised, Change answer) {

        /** Whether the change is one that is advised. */
        boolean right() {
            return advised.contains(answer);
        }
    }

    /** Copies the list. */
    AnswerSheet {
        answers = List.copyOf(answers);
    }

    /**
     * Refuses, before anything is asked, a file that cannot be written, or that is something else than a sheet.
     *
     * @param name as it was typed; null where none was
     * @throws ProblemsException if it is refused
     */
    static void check(String option, String name, Console console) {
        if (name != null) {
            NewFiles.check(option, name, true, console);
            read(console.path(name), name);
        }
    }

    /**
     * The sheet in a file; an empty one, named after the file, where there is none.
     *
     * @throws ProblemsException with everything that is wrong with it
     */
    static AnswerSheet read(Path file, String name) {
        String pupil = file.getFileName().toString().replaceFirst("\\.ya?ml$", "");
        if (!Files.exists(file)) {
            return new AnswerSheet(pupil, List.of());
        }
        Problems problems = new Problems();
        Optional<AnswerSheet> sheet = Document.load(file, problems).map(document -> read(document.fields("key"), pupil));
        problems.warningsOrFail();
        return sheet.orElseThrow();
    }

    private static AnswerSheet read(Fields fields, String fallback) {
        String pupil = fields.text("pupil").orElse(fallback);
        List<Answer> answers = new ArrayList<>();
        for (Fields entry : fields.maps("answers", "key")) {
            String of = entry.text("case").orElse("");
            List<Change> advised = new ArrayList<>();
            for (String written : entry.texts("advised")) {
                Change.parse(written).ifPresentOrElse(advised::add, () ->
                        entry.error("advised", "\"" + written + "\" is no change"));
            }
            Optional<Change> answer = entry.change("answer");
            entry.done();
            answer.ifPresent(change -> answers.add(new Answer(of, List.copyOf(advised), change)));
        }
        fields.done();
        return new AnswerSheet(pupil, answers);
    }

    /** The same with more answers. */
    AnswerSheet with(List<Answer> more) {
        List<Answer> all = new ArrayList<>(answers);
        all.addAll(more);
        return new AnswerSheet(pupil, all);
    }

    /** How many of the answers are advised too. */
    long right() {
        return answers.stream().filter(Answer::right).count();
    }

    /** Writes it in the place of what was there. */
    void write(Path file, String shown) {
        StringBuilder text = new StringBuilder("pupil: ").append(quoted(pupil)).append(answers.isEmpty() ? "\nanswers: []\n"
                : "\nanswers:\n");
        for (Answer answer : answers) {
            text.append("  - {case: ").append(quoted(answer.of())).append(", advised: [")
                    .append(String.join(", ", answer.advised().stream().map(Change::id).toList())).append("], answer: ")
                    .append(answer.answer().id()).append("}\n");
        }
        try {
            WholeFiles.write(file, text.toString().getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new ProblemsException(Problem.unwritable(shown, e));
        }
    }

    static String quoted(String text) {
        return "'" + text.replace("'", "''") + "'";
    }
}
