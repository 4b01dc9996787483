package camberwell.debrief;

import camberwell.engine.RuleBase;
import camberwell.fact.Day;
import camberwell.fact.Reported;
import camberwell.knowledge.Effect;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.language.Condition;
import camberwell.language.Question;
import camberwell.language.RuleText;
import camberwell.run.Report;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** What is worth asking at all: only what some rule asks about, or the effect of some change depends on. */
final class Repertoire {

    private final Map<Symptom, Set<Field>> fields = new TreeMap<>();
    private final Map<Symptom, Set<Phase>> phases = new TreeMap<>();
    private final List<PackQuestion> own;
    private boolean track;

    /** @param own the follow-up questions of rule packs */
    Repertoire(RuleBase rules, Notes notes, List<PackQuestion> own) {
        this.own = own;
        for (Symptom symptom : Symptom.values()) {
            // How bad it is and how often it comes weigh in with every complaint.
            fields.put(symptom, EnumSet.of(Field.SEVERITY, Field.OCCURRENCE));
            phases.put(symptom, EnumSet.noneOf(Phase.class));
        }
        rules.rules().values().forEach(this::enter);
        for (String name : notes.names(Note.Kind.ADJUSTMENT)) {
            notes.get(name).ways().values().forEach(way -> way.effects().forEach(this::enter));
        }
    }

    private void enter(RuleText rule) {
        for (Condition condition : rule.conditions()) {
            Question question = condition.question();
            track |= question.isAbout(Day.KIND) && question.asks().stream()
                    .anyMatch(ask -> ask.attribute().name().startsWith("track"));
            if (question.isAbout(Reported.KIND)) {
                question.passing("symptom").ifPresent(symptoms -> symptoms.words().forEach(symptom ->
                        enter(Word.of(Symptom.class, symptom), question)));
            }
        }
    }

    /** A complaint is asked for what a rule asks it. */
    private void enter(Symptom symptom, Question question) {
        for (Question.Ask ask : question.asks()) {
            Word.find(Field.class, ask.attribute().name()).filter(Field::ofComplaint)
                    .ifPresent(field -> add(symptom, field));
            if (ask.attribute().name().equals(Field.PHASE.id())) {
                ask.passing().words().forEach(phase -> phases.get(symptom).add(Word.of(Phase.class, phase)));
            }
        }
    }

    private void enter(Effect effect) {
        if (effect.on() instanceof Symptom symptom) {
            effect.phase().ifPresent(phase -> {
                add(symptom, Field.PHASE);
                phases.get(symptom).add(phase);
            });
            effect.speed().ifPresent(speed -> add(symptom, Field.SPEED));
            effect.where().ifPresent(where -> add(symptom, Field.WHERE));
        }
    }

    private void add(Symptom symptom, Field field) {
        fields.get(symptom).add(field);
    }

    /** Everything that is not known and worth asking, once the opening questions are answered. */
    List<Topic> open(State state) {
        List<Topic> open = new ArrayList<>();
        for (int i = 0; i < state.details().size(); i++) {
            for (Field field : fields.get(state.run().reports().get(i).symptom())) {
                open.add(new Topic(field, i));
            }
        }
        own.stream().filter(question -> question.follows(state.run())).forEach(question -> open.add(Topic.of(question)));
        open.add(Topic.of(Field.SURFACE));
        if (state.known().contains(Field.TYRES) && state.run().tyres().isEmpty()) {
            open.add(Topic.of(Field.LOOK));
        }
        if (track) {
            open.add(Topic.of(Field.TRACK));
        }
        open.add(Topic.of(Field.TYRES));
        if (state.run().tyres().values().stream().anyMatch(tyre -> tyre.hasTread())) {
            open.add(Topic.of(Field.CIRCUIT));
        }
        open.removeIf(state::knows);
        // What may be told in the same breath is not asked apart from it.
        List<Topic> heads = List.copyOf(open);
        open.removeIf(topic -> heads.stream().anyMatch(head -> head.complaint() == topic.complaint()
                && head.field().ofComplaint() && head.field().alongside().contains(topic.field())));
        open.sort((one, other) -> one.field().compareTo(other.field()));
        return open;
    }

    private List<Word> phases(Symptom symptom) {
        List<Word> sensible = new ArrayList<>();
        phases.get(symptom).stream().filter(phase -> symptom.senseless(phase).isEmpty()).forEach(sensible::add);
        return sensible;
    }

    /** Whether some rule, or the effect of some change, depends on that detail of that complaint. */
    boolean asks(Report report, Field field) {
        return fields.get(report.symptom()).contains(field);
    }

    /** The words that are listed for a person to choose from; others may be said all the same. */
    List<Word> listed(Topic topic, State state) {
        return switch (topic.field()) {
            case PHASE -> phases(state.run().reports().get(topic.complaint()).symptom());
            case WHERE -> List.of(Place.FRONT, Place.REAR);
            case TURN, CIRCUIT -> List.of(Turn.LEFT, Turn.RIGHT, Turn.BOTH);
            case OWN -> topic.own().orElseThrow().choices();
            default -> topic.field().words();
        };
    }
}
