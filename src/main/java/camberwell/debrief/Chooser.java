package camberwell.debrief;

import camberwell.car.Car;
import camberwell.run.Case;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Chooses the next question. First which car it is, and what it did; then, complaint by complaint, where it did it; then
 * whether it was a simulator, what the tyres show, and at last whether there was anything else, together with all that is
 * taken for granted. Of the questions of one kind the one with the greatest {@linkplain Question#gain() information
 * gain} about the ranking comes first. Only those are asked of which some answer, by itself or together with an answer
 * to one other question, would change the first thing that is told. That look ahead is bounded.
 */
final class Chooser {

    /**
     * Pairs of answers that are looked at most, so that nobody waits. They are counted whether they were tried before or not:
     * what is asked does not hang on how long somebody thought.
     */
    private static final int LOOK_AHEAD = 800;
    /** What is complained of most, by the demo cases. */
    private static final List<Symptom> REHEARSED = List.of(Symptom.UNDERSTEER, Symptom.OVERSTEER, Symptom.SNAP_OVERSTEER,
            Symptom.WHEELSPIN, Symptom.UNSTABLE_BRAKING, Symptom.SLOW_TURN_IN, Symptom.FRONT_LOCKING);

    private final Repertoire repertoire;
    private final WhatIf whatIf;
    /** What was tried already: the next question's answers are largely those that were looked ahead to. */
    private final Map<Case, Outcome> outcomes = new HashMap<>();
    private int looked;
    private BooleanSupplier rehearsing = () -> false;

    Chooser(Repertoire repertoire, WhatIf whatIf) {
        this.repertoire = repertoire;
        this.whatIf = whatIf;
    }

    /** The question that comes before all others, as long as there is one; it is asked whatever hangs on it. */
    static Optional<Question> opening(State state, List<Car> kinds) {
        if (state.known().contains(Field.CARRIED)) {
            return opening(Topic.of(Field.CHANGED), kinds);
        }
        for (int i = 0; i < state.details().size(); i++) {
            if (!state.knows(new Topic(Field.CAME, i))) {
                return opening(new Topic(Field.CAME, i), kinds);
            }
        }
        for (Field field : List.of(Field.CAR, Field.DRIVE, Field.DOING)) {
            if (!state.knows(Topic.of(field))) {
                return opening(Topic.of(field), kinds);
            }
        }
        return Optional.empty();
    }

    /** The question about that, if it is one that is not weighed. */
    static Optional<Question> opening(Topic topic, List<Car> kinds) {
        List<Answer> answers = switch (topic.field()) {
            case CAR -> kinds.stream().<Answer>map(Answer.OfCar::new).toList();
            case DRIVE -> Kinds.byDrive(kinds).stream().<Answer>map(Answer.OfCar::new).toList();
            case CHANGED -> List.of(new Answer.Unknown());
            case CAME -> Field.CAME.words().stream().<Answer>map(Answer.Said::of).toList();
            case DOING -> Field.DOING.words().stream().<Answer>map(Answer.Said::of).toList();
            default -> List.of();
        };
        return answers.isEmpty() ? Optional.empty() : Optional.of(new Question(topic, answers.stream()
                .map(answer -> new Question.Choice("", answer, Outcome.NONE)).toList(), Outcome.NONE));
    }

    /**
     * Tries what may be answered as long as nobody answers, so that an answer is perhaps one that was tried already, and the
     * first of all is not the first that the engine ever sees.
     *
     * @param open the question that waits for an answer
     * @param wanted whether somebody has answered: then it stops at once
     */
    void rehearse(State state, Optional<Question> open, BooleanSupplier wanted) {
        rehearsing = wanted;
        try {
            if (state.details().isEmpty()) {
                complaints(state.knows(Topic.of(Field.CAR)) ? state : state.with(Topic.of(Field.CAR), new Answer.Unknown()));
            } else if (open.isPresent()) {
                for (Answer answer : likely(open.get())) {
                    choose(state.with(open.get().topic(), answer));
                }
            }
        } catch (Wanted e) {
            // What was tried so far is kept.
        } finally {
            rehearsing = () -> false;
        }
    }

    /** What is answered most to a question, in about that order. */
    private static List<Answer> likely(Question question) {
        Field field = question.topic().field();
        List<Answer> likely = new ArrayList<>();
        if (field == Field.SIMULATOR) {
            likely.addAll(List.of(new Answer.Either(false), new Answer.Either(true)));
        }
        if (field == Field.ELSE) {
            likely.add(new Answer.Nothing());
        }
        if (field == Field.TYRES || field == Field.LOOK) {
            likely.add(new Answer.Unknown());
        }
        question.choices().stream().filter(Question.Choice::single).map(Question.Choice::answer).forEach(likely::add);
        question.choices().stream().filter(choice -> !choice.single()).map(Question.Choice::answer).forEach(likely::add);
        likely.add(new Answer.Unknown());
        return likely;
    }

    /** The common complaints, first by themselves, then where they mostly are. */
    private void complaints(State from) {
        for (Symptom symptom : REHEARSED) {
            State told = from.with(Topic.of(Field.DOING), Answer.Said.of(symptom));
            Optional<Question> next = choose(told);
            if (next.isPresent() && !next.get().choices().isEmpty()) {
                choose(told.with(next.get().topic(), next.get().choices().get(0).answer()));
            }
        }
        for (Symptom symptom : REHEARSED) {
            for (Phase phase : Phase.values()) {
                if (symptom.senseless(phase).isEmpty()) {
                    choose(from.with(Topic.of(Field.DOING), Answer.Said.of(symptom, phase)));
                }
            }
        }
    }

    /** Thrown out of a rehearsal when the engine is needed. */
    private static final class Wanted extends RuntimeException {

        private static final long serialVersionUID = 1;

        Wanted() {
            super("wanted", null, false, false);
        }
    }

    /** The question to ask next, the opening ones answered; empty when there is none worth asking. */
    Optional<Question> choose(State state) {
        for (int i = 0; i < state.details().size(); i++) {
            Topic doubt = new Topic(Field.DOUBT, i);
            if (!state.knows(doubt) && Doubt.in(state.run(), state.run().reports().get(i)).isPresent()) {
                return Optional.of(weighed(doubt, state));
            }
        }
        List<Question> open = repertoire.open(state).stream().map(topic -> weighed(topic, state))
                .sorted(Comparator.comparingDouble(Question::gain).reversed()).toList();
        for (int i = 0; i < state.details().size(); i++) {
            int complaint = i;
            Optional<Question> where = deciding(state, open, question -> question.topic().field().ofComplaint()
                    && question.topic().complaint() == complaint && !Field.TAKEN.contains(question.topic().field()));
            if (where.isPresent()) {
                return where;
            }
        }
        // Whoever wrote the pack wants it asked: it is, wherever any answer moves anything.
        Optional<Question> own = open.stream().filter(question -> question.topic().own().isPresent()
                && (question.decides() || question.movesRanking())).findFirst();
        if (own.isPresent()) {
            return own;
        }
        if (!state.knows(Topic.of(Field.SIMULATOR))) {
            return Optional.of(weighed(Topic.of(Field.SIMULATOR), state));
        }
        if (outcome(state).settled()) {
            // Nobody is asked what the tyres read of a car that has to be looked at.
            return Optional.empty();
        }
        Optional<Question> tyres = deciding(state, open, question -> !question.topic().field().ofComplaint()
                && question.topic().own().isEmpty() && !Field.TAKEN.contains(question.topic().field()));
        return tyres.isPresent() ? tyres : last(state, open);
    }

    /** Whether there was anything else; again only where it matters for what was told since. */
    private Optional<Question> last(State state, List<Question> open) {
        boolean asked = state.knows(Topic.of(Field.ELSE));
        boolean told = !state.details().isEmpty();
        return told && !asked || asked && deciding(state, open,
                question -> Field.TAKEN.contains(question.topic().field())).isPresent()
                ? Optional.of(weighed(Topic.of(Field.ELSE), state)) : Optional.empty();
    }

    private interface Kind {
        boolean of(Question question);
    }

    /** The first question of that kind that would change the first thing told, by itself or with another one. */
    private Optional<Question> deciding(State state, List<Question> open, Kind kind) {
        int limit = looked + LOOK_AHEAD;
        List<Question> asked = open.stream().filter(kind::of).toList();
        return asked.stream().filter(Question::decides).findFirst()
                .or(() -> asked.stream().filter(Question::movesRanking)
                        .filter(question -> decidesWithAnother(state, question, open, limit)).findFirst());
    }

    /** Whether two answers together would change the first thing told. */
    private boolean decidesWithAnother(State state, Question question, List<Question> open, int limit) {
        for (Question.Choice choice : question.choices()) {
            if (choice.single() && !choice.outcome().equals(question.now())) {
                State then = state.with(question.topic(), choice.answer());
                for (Question other : open) {
                    if (looked < limit && other != question && !then.knows(other.topic()) && other.choices().stream()
                            .filter(Question.Choice::single).map(Question.Choice::answer)
                            .anyMatch(answer -> !looked(then.with(other.topic(), answer)).told()
                                    .equals(question.now().told()))) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** Tries every answer in the engine. */
    Question weighed(Topic topic, State from) {
        Outcome now = outcome(from);
        List<Question.Choice> choices = new ArrayList<>();
        for (Samples.Sample sample : samples(topic, from)) {
            State then = from.with(topic, sample.answer());
            choices.add(new Question.Choice(sample.label(), sample.answer(),
                    then.run().equals(from.run()) ? now : outcome(then)));
        }
        return new Question(topic, List.copyOf(choices), now);
    }

    private List<Samples.Sample> samples(Topic topic, State from) {
        return switch (topic.field()) {
            case TRACK -> Samples.tracks();
            case TYRES -> Samples.tyres(from.run());
            case LOOK -> Samples.looks();
            case CAR, DRIVE, SIMULATOR, ELSE, DOUBT, CHANGED, CAME -> List.of();
            default -> said(topic, from);
        };
    }

    /**
     * Each word; where several may be said, each two that follow one another; and each word together with each one that
     * may be told in the same breath.
     */
    private List<Samples.Sample> said(Topic topic, State from) {
        List<Word> words = repertoire.listed(topic, from);
        List<Samples.Sample> said = new ArrayList<>();
        words.forEach(word -> said.add(Samples.spoken(Answer.Said.of(word))));
        if (!topic.field().ofComplaint()) {
            return said;
        }
        for (int i = 1; i < words.size() && topic.field().several(); i++) {
            said.add(Samples.spoken(Answer.Said.each(words.subList(i - 1, i + 1))));
        }
        for (Field field : topic.field().alongside()) {
            if (!from.knows(new Topic(field, topic.complaint()))
                    && repertoire.asks(from.run().reports().get(topic.complaint()), field)) {
                for (Word with : field.words()) {
                    said.add(Samples.spoken(Answer.Said.of(with)));
                    words.forEach(word -> said.add(Samples.spoken(Answer.Said.of(word, with))));
                }
            }
        }
        return said;
    }

    private Outcome looked(State of) {
        looked++;
        return outcome(of);
    }

    private Outcome outcome(State of) {
        if (rehearsing.getAsBoolean()) {
            throw new Wanted();
        }
        return outcomes.computeIfAbsent(of.run(), run -> Outcome.of(whatIf.byRules(run)));
    }
}
