package camberwell.debrief;

import camberwell.advice.Advice;
import camberwell.advice.Advisor;
import camberwell.car.Car;
import camberwell.engine.RuleBase;
import camberwell.knowledge.Notes;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Report;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A debrief as it goes on: what was answered, the case that it makes, and the question to ask next.
 *
 * <p>The next question is the one with the greatest {@linkplain Question#gain() information gain} about the ranking,
 * among those of which some answer would put another change first. Where no single answer would, it is one that would
 * together with an answer to one other question, and that moves the ranking by itself; when there is none of that sort
 * either, the debrief is done. That look ahead is bounded, most telling questions first. Before all that the kind of
 * car is asked, where it is not known, or else its driven wheels; and what the car was doing. Not for use by two
 * threads.
 */
public final class Debrief implements AutoCloseable {

    /** Cases that are tried at most to look two answers ahead, so that nobody waits. */
    private static final int LOOK_AHEAD = 400;

    private final State start;
    private final List<Car> kinds;
    private final List<Car> unnamed;
    private final Repertoire repertoire;
    private final WhatIf whatIf;
    private final List<Entry> entries = new ArrayList<>();
    /** What was tried already: the next question's answers are largely those that were looked ahead to. */
    private final Map<Case, Outcome> outcomes = new HashMap<>();
    private int tried;
    private State state;
    private Optional<Question> next;

    private Debrief(Advisor advisor, RuleBase rules, Notes notes, State start, List<Car> kinds) {
        this.start = start;
        this.kinds = List.copyOf(kinds);
        this.unnamed = Kinds.byDrive(kinds);
        this.repertoire = new Repertoire(rules, notes);
        this.whatIf = new WhatIf(advisor, rules.consult());
        this.state = start;
    }

    /** A debrief that goes on from {@code run}, whose car is known. */
    public static Debrief of(Advisor advisor, RuleBase rules, Notes notes, Case run) {
        return new Debrief(advisor, rules, notes, State.of(run, true), List.of());
    }

    /**
     * A debrief without a car, which asks for the kind of car first.
     *
     * @param title of the case
     * @param kinds to choose from
     */
    public static Debrief of(Advisor advisor, RuleBase rules, Notes notes, String title, List<Car> kinds) {
        Case run = new Case(title, "-", Kinds.unknown(kinds), Conditions.UNKNOWN, Map.of(), List.of(), List.of());
        return new Debrief(advisor, rules, notes, State.of(run, false), kinds);
    }

    /** The case as far as it is known. */
    public Case run() {
        return state.run();
    }

    /** What was asked and answered, in that order. */
    public List<Entry> entries() {
        return List.copyOf(entries);
    }

    /** The cars to choose from where the question is about the car: kinds, or one car for each way to drive it. */
    public List<Car> cars(Topic topic) {
        return switch (topic.field()) {
            case CAR -> kinds;
            case DRIVE -> unnamed;
            default -> List.of();
        };
    }

    /** The advice on the case as far as it is known. */
    public Advice advice() {
        return whatIf.advise(state.run());
    }

    /** The question to ask next; empty when no answer could put another change first. */
    public Optional<Question> next() {
        if (next == null) {
            next = choose();
        }
        return next;
    }

    private Optional<Question> choose() {
        for (Field opening : List.of(Field.CAR, Field.DRIVE, Field.DOING)) {
            if (!state.knows(Topic.of(opening))) {
                return Optional.of(weighed(Topic.of(opening), state));
            }
        }
        List<Question> open = repertoire.open(state).stream().map(topic -> weighed(topic, state))
                .sorted(Comparator.comparingDouble(Question::gain).reversed()).toList();
        int limit = tried + LOOK_AHEAD;
        return open.stream().filter(Question::decides).findFirst()
                .or(() -> open.stream().filter(Question::movesRanking)
                        .filter(question -> decidesWithAnother(question, open, limit)).findFirst());
    }

    /** Whether two answers together would put another change first. */
    private boolean decidesWithAnother(Question question, List<Question> open, int limit) {
        for (Question.Choice choice : question.choices()) {
            if (choice.single() && !choice.outcome().equals(question.now())) {
                State then = state.with(question.topic(), choice.answer());
                for (Question other : open) {
                    if (tried < limit && other != question && !then.knows(other.topic()) && other.choices().stream()
                            .filter(Question.Choice::single).map(Question.Choice::answer)
                            .anyMatch(answer -> !outcome(then.with(other.topic(), answer)).first()
                                    .equals(question.now().first()))) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** Tries every answer in the engine. */
    private Question weighed(Topic topic, State from) {
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
            case CAR, DRIVE -> cars(topic).stream().map(car -> Samples.spoken(new Answer.OfCar(car))).toList();
            case TRACK -> Samples.tracks();
            case TYRES -> Samples.tyres(from.run());
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

    private Outcome outcome(State of) {
        return outcomes.computeIfAbsent(of.run(), run -> {
            tried++;
            return Outcome.of(whatIf.advise(run));
        });
    }

    /** Takes an answer to any topic that is open. */
    public void answer(Topic topic, Answer answer) {
        entries.add(new Entry(topic, complaint(topic, state), answer));
        replay();
    }

    /** Takes the last answer back; false when there is none. */
    public boolean back() {
        if (entries.isEmpty()) {
            return false;
        }
        entries.remove(entries.size() - 1);
        replay();
        return true;
    }

    /** The question of an earlier entry, asked anew: weighed with everything else that is known. */
    public Question again(int entry) {
        Topic topic = entries.get(entry).topic();
        State before = start;
        for (Entry earlier : entries.subList(0, entry)) {
            before = before.with(earlier.topic(), earlier.answer());
        }
        return weighed(topic, before);
    }

    /**
     * Puts another answer in the place of an earlier one. All that followed from the old one is withdrawn; later
     * answers about complaints stay only when the complaints are the same as before.
     */
    public void change(int entry, Answer answer) {
        List<Entry> later = List.copyOf(entries.subList(entry + 1, entries.size()));
        List<String> before = complaintsAfter(entry);
        entries.set(entry, new Entry(entries.get(entry).topic(), entries.get(entry).complaint(), answer));
        boolean same = Objects.equals(before, complaintsAfter(entry));
        entries.subList(entry + 1, entries.size()).clear();
        later.stream().filter(it -> same || !it.topic().field().ofComplaint())
                // Of a car that is known now, nobody needs to have said which wheels are driven.
                .filter(it -> it.topic().field() != Field.DRIVE || !(answer instanceof Answer.OfCar))
                .forEach(entries::add);
        replay();
    }

    private List<String> complaintsAfter(int entry) {
        State then = start;
        for (Entry earlier : entries.subList(0, entry + 1)) {
            then = then.with(earlier.topic(), earlier.answer());
        }
        return then.run().reports().stream().map(report -> report.symptom().id()).toList();
    }

    private void replay() {
        State now = start;
        for (Entry entry : entries) {
            now = now.with(entry.topic(), entry.answer());
        }
        state = now;
        next = null;
    }

    /** What a topic is about, in words: {@code understeer} or {@code understeer at entry}; empty for the whole car. */
    public String complaint(Topic topic) {
        return complaint(topic, state);
    }

    private static String complaint(Topic topic, State state) {
        if (!topic.field().ofComplaint()) {
            return "";
        }
        Report report = state.run().reports().get(topic.complaint());
        String phase = report.phase().map(it -> " " + it.at()).orElse("");
        return report.symptom().spoken() + phase;
    }

    @Override
    public void close() {
        whatIf.close();
    }
}
