package camberwell.pack;

import camberwell.problem.Text;
import camberwell.yaml.Document;
import camberwell.yaml.Fields;
import camberwell.yaml.Problems;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * A follow-up question that a pack wants asked.
 *
 * @param id as rules and cases write it
 * @param ask as the debrief puts it
 * @param when the complaints after which it is asked; none for after any
 * @param answers the words to choose from, each with what it means
 */
public record OwnQuestion(String id, String ask, List<String> when, Map<String, String> answers) {

    private static final Pattern ID = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");
    private static final Pattern ANSWER = Pattern.compile("[a-z0-9][a-z0-9-]*");
    private static final int FEWEST = 2;
    private static final int MOST = 9;

    /** Reads the file of a pack; what is wrong with it is noted. */
    static List<OwnQuestion> read(String file, String text, List<String> symptoms, Problems problems) {
        List<OwnQuestion> questions = new ArrayList<>();
        Document.parse(file, text, problems).ifPresent(document -> {
            Fields fields = document.fields("question");
            for (String id : fields.keys()) {
                if (!ID.matcher(id).matches()) {
                    fields.errorAtKey(id, "a question's name is made of small letters, numbers and dashes"
                            + Text.spelledPlainly(id));
                }
                fields.map(id, "key").ifPresent(entry -> questions.add(read(id, entry, symptoms)));
            }
            fields.done();
        });
        return List.copyOf(questions);
    }

    private static OwnQuestion read(String id, Fields entry, List<String> symptoms) {
        entry.require("ask");
        entry.require("answers");
        String ask = entry.text("ask").orElse("");
        List<String> when = entry.choices("when", symptoms);
        Map<String, String> answers = new LinkedHashMap<>();
        entry.map("answers", "answer").ifPresent(words -> {
            for (String word : words.keys()) {
                if (!ANSWER.matcher(word).matches()) {
                    words.errorAtKey(word, Text.quoted(word) + " is no answer: small letters, numbers and dashes"
                            + Text.spelledPlainly(word));
                }
                words.text(word).ifPresent(meaning -> answers.put(word, meaning));
            }
            words.done();
            if (answers.size() < FEWEST || answers.size() > MOST) {
                entry.error("answers", "a question has " + FEWEST + " to " + MOST + " answers to choose from");
            }
        });
        entry.done();
        return new OwnQuestion(id, ask, when, answers);
    }
}
