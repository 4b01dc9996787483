package camberwell.debrief;

import camberwell.run.Report;
import camberwell.saying.Heard;
import camberwell.saying.Told;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Takes in what is understood of a driver's own words. */
final class DriversWords {

    private DriversWords() {
    }

    /** What is known once {@code heard} is, whatever was asked. */
    static State heard(State before, Topic topic, Heard heard) {
        State state = before;
        if (heard.surface().isPresent()) {
            Set<Field> more = EnumSet.of(Field.SURFACE);
            more.addAll(before.known());
            state = new State(before.run().withConditions(before.run().conditions().withSurface(heard.surface().get())), more,
                    before.details());
        }
        for (Told told : heard.told()) {
            state = tell(state, told);
        }
        for (Word word : heard.loose()) {
            state = loose(state, topic, word, Reply.ofEach(heard.said()));
        }
        Set<Field> more = EnumSet.copyOf(state.known());
        if (!heard.told().isEmpty() || topic.field() == Field.DOING || topic.field() == Field.LOOK) {
            more.add(topic.field() == Field.LOOK ? Field.LOOK : Field.DOING);
        }
        State said = new State(state.run(), more, state.details());
        // To "anything else?" more complaints are no end yet; corrections are.
        return topic.field() == Field.ELSE && said.details().size() == before.details().size() ? said.allTaken() : said;
    }

    /**
     * What driver's own words are filed under: the question that they answer, or else what they tell. Where they stand changes
     * nothing of what they say.
     */
    static Topic filed(Topic asked, Heard heard) {
        Field field = asked.field();
        if (field == Field.DOING || field == Field.ELSE || field == Field.LOOK && heard.told().stream()
                .anyMatch(told -> told.symptom().ofTyre()) || field == Field.SURFACE && heard.surface().isPresent()) {
            return asked;
        }
        if (field.ofComplaint()) {
            List<Field> answered = Stream.concat(heard.loose().stream(), heard.told().stream().flatMap(it -> it.words().stream()))
                    .map(Field::telling).toList();
            if (!heard.loose().isEmpty() || answered.contains(field)) {
                boolean own = answered.contains(field) || field.alongside().stream().anyMatch(answered::contains);
                return own || !heard.told().isEmpty() || !answered.get(0).ofComplaint() ? asked
                        : new Topic(answered.get(0), asked.complaint());
            }
        }
        return Topic.of(!heard.told().isEmpty() ? Field.DOING : !heard.loose().isEmpty() ? Field.BESIDES
                : heard.surface().isPresent() ? Field.SURFACE : field == Field.LOOK ? Field.LOOK : Field.BESIDES);
    }

    /** Adds a complaint, or what is new of one that is there. */
    private static State tell(State before, Told told) {
        List<Report> reports = new ArrayList<>(before.run().reports());
        List<Set<Field>> more = new ArrayList<>(before.details());
        boolean there = false;
        for (int i = 0; i < reports.size(); i++) {
            if (reports.get(i).symptom() == told.symptom() && goesWith(before, told, i)) {
                there = true;
                reports.set(i, ReportWords.detailed(reports.get(i), told.words()));
                Set<Field> fields = EnumSet.noneOf(Field.class);
                fields.addAll(more.get(i));
                fields.addAll(ReportWords.fields(told.words()));
                more.set(i, fields);
            }
        }
        State state = new State(before.run().withReports(reports), before.known(), List.copyOf(more));
        List<Word> group = new ArrayList<>(List.of(told.symptom()));
        group.addAll(told.words());
        return there ? state : state.and(List.of(group));
    }

    /** Whether what was told may be of that complaint: the same place, or one of them not said. */
    private static boolean goesWith(State state, Told told, int complaint) {
        Report report = state.run().reports().get(complaint);
        for (Word word : told.words()) {
            Field field = Field.telling(word);
            if (!Field.TAKEN.contains(field) && state.details().get(complaint).contains(field)
                    && !ReportWords.detailed(report, List.of(word)).equals(report)) {
                return false;
            }
        }
        return true;
    }

    /**
     * A word that was said of no complaint: of the one that was asked about, or else of all that lack it.
     *
     * @param each whether it was said of each of them
     */
    private static State loose(State before, Topic topic, Word word, boolean each) {
        Field field = Field.telling(word);
        List<Report> reports = new ArrayList<>(before.run().reports());
        List<Set<Field>> more = new ArrayList<>(before.details());
        for (int i = 0; i < reports.size(); i++) {
            boolean here = topic.field().ofComplaint() && topic.complaint() == i;
            boolean asked = here || each
                    || !topic.field().ofComplaint() && (Field.TAKEN.contains(field) || i == reports.size() - 1);
            if (asked && (here || !more.get(i).contains(field))) {
                reports.set(i, ReportWords.detailed(reports.get(i), List.of(word)));
                Set<Field> fields = EnumSet.of(field);
                fields.addAll(more.get(i));
                more.set(i, fields);
            }
        }
        return new State(before.run().withReports(reports), before.known(), List.copyOf(more));
    }
}
