package camberwell.debrief;

import camberwell.report.Page;
import camberwell.saying.Heard;
import camberwell.saying.Told;
import camberwell.vocabulary.Audience;
import camberwell.vocabulary.Word;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Writes questions on a page. */
final class Asking {

    private final Debrief debrief;
    private final Audience audience;
    private final Set<Word> explained = new HashSet<>();

    Asking(Debrief debrief, Audience audience) {
        this.debrief = debrief;
        this.audience = audience;
    }

    /** Writes a question, with the answers to choose from where there are some. */
    void write(Question question, String complaint, Page page) {
        Topic topic = question.topic();
        if (topic.field() == Field.ELSE) {
            String taken = Phrases.taken(debrief.taken(), audience);
            page.paragraph(0, (taken.isEmpty() ? "" : "I take it: " + taken + ". ") + Phrases.question(topic, complaint, audience)
                    + (taken.isEmpty() ? " Enter if not." : " Enter if that is right and all."));
            return;
        }
        if (topic.field() == Field.DOUBT) {
            debrief.doubt(topic).ifPresent(doubt -> page.paragraph(0, "Those two do not go together: " + doubt.text() + "."));
            page.paragraph(0, Phrases.question(topic, "", audience));
            boolean log = debrief.doubt(topic).flatMap(Doubt::shown).isPresent();
            page.numbered(1, 1, (log ? "log" : "figures") + ": the complaint is taken back");
            page.numbered(1, 2, "complaint: " + (log ? "what the log shows is" : "the figures are") + " taken back");
            page.numbered(1, 3, "both");
            return;
        }
        if (debrief.entries().isEmpty()) {
            debrief.earlier().ifPresent(earlier -> page.paragraph(0, "Run " + earlier.number() + " of the "
                    + earlier.last().car().name() + ". " + Phrases.carried(earlier)));
        }
        page.paragraph(0, Phrases.question(topic, complaint, audience));
        List<String> cars = debrief.cars(topic).stream().map(car -> topic.field() == Field.DRIVE ? car.driven() : car.name())
                .toList();
        if (!cars.isEmpty()) {
            for (int i = 0; i < cars.size(); i++) {
                page.numbered(1, i + 1, cars.get(i));
            }
        } else if (listed(question).isEmpty()) {
            page.paragraph(2, Phrases.form(topic, debrief.run().car()));
        } else {
            choices(topic, listed(question), page);
            if (topic.field() == Field.DOING && audience == Audience.NEWCOMER) {
                // The question itself has scrolled away by now.
                page.paragraph(0, "Your own words, or a number.");
            }
        }
    }

    /** Writes a question once more, for somebody who did not understand it: as a newcomer is asked. */
    void plainly(Question question, String complaint, Page page) {
        new Asking(debrief, Audience.NEWCOMER).write(question, complaint, page);
    }

    /** Asks back about words that are not sure. */
    void back(Heard.Unclear unclear, Page page) {
        Told meant = unclear.mayBe().get(0);
        page.paragraph(0, "\"" + unclear.words() + "\": did you mean " + meant.text() + (audience == Audience.NEWCOMER
                ? ", that is: " + meant.symptom().felt() : "") + "? (yes/no)");
    }

    /** The words to choose from by number. */
    static List<Word> listed(Question question) {
        return question.choices().stream().map(Question.Choice::answer)
                .filter(answer -> answer instanceof Answer.Said said && said.single())
                .map(answer -> ((Answer.Said) answer).groups().get(0).get(0))
                .filter(word -> question.topic().own().isPresent() || question.topic().field().words().contains(word))
                .distinct().toList();
    }

    private void choices(Topic topic, List<Word> listed, Page page) {
        boolean told = explained.containsAll(listed);
        boolean brief = switch (audience) {
            case ENGINEER -> true;
            case CLUB -> told || topic.field() == Field.DOING;
            case NEWCOMER -> false;
        };
        if (brief) {
            page.columns(1, Stream.iterate(0, i -> i < listed.size(), i -> i + 1)
                    .map(i -> (i < 9 ? " " : "") + (i + 1) + "  " + listed.get(i).spoken()).toList());
            return;
        }
        for (int i = 0; i < listed.size(); i++) {
            Word word = listed.get(i);
            boolean fresh = explained.add(word) || audience == Audience.NEWCOMER;
            page.numbered(1, i + 1, audience == Audience.NEWCOMER && topic.field() == Field.DOING
                    ? word.felt() + " (" + word.spoken() + ")" : word.spoken() + (fresh ? ": " + word.felt() : ""));
        }
    }
}
