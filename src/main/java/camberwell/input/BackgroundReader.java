package camberwell.input;

import camberwell.problem.Text;
import camberwell.run.Background;
import camberwell.run.Pupil;
import camberwell.run.Stint;
import camberwell.units.Measure;
import camberwell.vocabulary.Compound;
import camberwell.vocabulary.Level;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Wish;
import camberwell.vocabulary.Word;
import camberwell.yaml.Fields;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Reads what a case says of tyres, fuel and driver: {@code stint}, {@code driver}, {@code answers}, {@code comment}. */
final class BackgroundReader {

    private static final int MOST_LAPS = 9999;

    private BackgroundReader() {
    }

    /**
     * Reads it from the keys of a case.
     *
     * @param questions those that are asked, each with its answers; empty where nobody looks at the answers
     */
    static Background read(Fields fields, Optional<Map<String, Set<String>>> questions) {
        Optional<Stint> stint = fields.map("stint", "key").map(BackgroundReader::stint);
        Optional<Pupil> pupil = fields.map("driver", "key").map(BackgroundReader::pupil);
        Map<String, String> answers = new TreeMap<>();
        fields.map("answers", "question").ifPresent(said -> {
            questions.ifPresent(asked -> known(said, asked));
            said.keys().forEach(question -> said.text(question).ifPresent(answer -> answers.put(question, answer)));
            said.done();
        });
        Optional<String> comment = fields.prose("comment");
        return stint.isEmpty() && pupil.isEmpty() && answers.isEmpty() && comment.isEmpty() ? Background.UNKNOWN
                : new Background(stint.orElse(Stint.UNKNOWN), pupil.orElse(Pupil.UNKNOWN), answers, comment);
    }

    /** An answer that its question has not, and a question that nobody asks, would be passed over in silence. */
    private static void known(Fields said, Map<String, Set<String>> asked) {
        for (String question : said.keys()) {
            if (asked.containsKey(question)) {
                said.choice(question, List.copyOf(asked.get(question)));
            } else {
                said.warn(question, "no rule folder in use asks " + Text.quoted(question) + ", so that this answer tells nothing"
                        + Nearest.to(question, asked.keySet()).map(near -> "; did you mean " + Text.quoted(near) + "?")
                        .orElse(""));
            }
        }
    }

    private static Stint stint(Fields fields) {
        Stint stint = new Stint(fields.word("compound", Compound.class), fields.count("tyre-laps", 0, MOST_LAPS),
                fields.count("laps", 1, MOST_LAPS), fields.quantity("fuel", Measure.FUEL));
        fields.done();
        return stint;
    }

    private static Pupil pupil(Fields fields) {
        List<String> wants = fields.choices("wants", Word.ids(Wish.class));
        Pupil pupil = new Pupil(fields.text("name"), fields.word("level", Level.class),
                wants.stream().map(wish -> Word.of(Wish.class, wish)).toList());
        fields.done();
        return pupil;
    }
}
