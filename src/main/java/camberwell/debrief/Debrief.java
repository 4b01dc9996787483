package camberwell.debrief;

import camberwell.advice.Advice;
import camberwell.advice.Advisor;
import camberwell.car.Car;
import camberwell.engine.RuleBase;
import camberwell.knowledge.Notes;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Report;
import camberwell.run.Tried;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/**
 * A debrief as it goes on: what was answered, the case that it makes, and the question to ask next. Which one that is
 * says {@link Chooser}. Not for use by two threads.
 */
public final class Debrief implements AutoCloseable {

    /** What advice is made with, opened when it is first needed: the first question needs none of it. */
    public record Source(Supplier<Advisor> advisor, Supplier<RuleBase> rules, Supplier<Notes> notes,
            Supplier<List<PackQuestion>> questions) {
    }

    private final Source source;
    private final List<Car> kinds;
    private final Optional<Earlier> earlier;
    private final List<Entry> entries = new ArrayList<>();
    private State start;
    private Chooser chooser;
    private WhatIf whatIf;
    private Thread warming;
    private volatile boolean wanted;
    private State state;
    private Optional<Question> next;

    private Debrief(Source source, State start, List<Car> kinds, Optional<Earlier> earlier) {
        this.source = source;
        this.earlier = earlier;
        this.kinds = List.copyOf(kinds);
        this.start = start;
        this.state = start;
    }

    /** A debrief that goes on from {@code run}, whose car is known. */
    public static Debrief of(Source source, Case run) {
        return new Debrief(source, State.of(run, true), List.of(), Optional.empty());
    }

    /** A debrief that goes on from the run before: what was changed is asked first, then what came of it. */
    public static Debrief of(Source source, Earlier earlier) {
        return new Debrief(source, State.after(earlier.begun()), List.of(), Optional.of(earlier));
    }

    /**
     * A debrief without a car, which asks for the kind of car first.
     *
     * @param title of the case
     * @param kinds to choose from
     */
    public static Debrief of(Source source, String title, List<Car> kinds) {
        Case run = new Case(title, "-", Kinds.unknown(kinds), Conditions.UNKNOWN, Map.of(), List.of(), List.of());
        return new Debrief(source, State.of(run, false), kinds, Optional.empty());
    }

    /**
     * Opens the rules if need be, and tries on another core what may be answered to the question that is open, until it is
     * answered.
     */
    public void thinkAhead() {
        if (warming != null) {
            return;
        }
        wanted = false;
        State from = state;
        Optional<Question> open = next == null ? Optional.empty() : next;
        warming = new Thread(() -> {
            try {
                open().rehearse(from, open, () -> wanted);
            } catch (RuntimeException e) {
                // Whoever asks next is told.
            }
        }, "thinks ahead");
        warming.setDaemon(true);
        warming.start();
    }

    private synchronized Chooser open() {
        if (chooser == null) {
            whatIf = new WhatIf(source.advisor().get(), source.rules().get().consult(),
                    earlier.map(Earlier::informed).orElse(UnaryOperator.identity()));
            chooser = new Chooser(new Repertoire(source.rules().get(), source.notes().get(), source.questions().get()), whatIf);
        }
        return chooser;
    }

    /** What chooses, once nobody else is at it. */
    private Chooser chooser() {
        Thread busy = warming;
        if (busy != null) {
            wanted = true;
            try {
                busy.join();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            warming = null;
        }
        return open();
    }

    /** The run that this one goes on from, if it does. */
    public Optional<Earlier> earlier() {
        return earlier;
    }

    /** The case as far as it is known, with what need not be asked again. */
    public Case run() {
        return state.run().withAnswered(state.answered());
    }

    /** What was asked and answered, in that order. */
    public List<Entry> entries() {
        return List.copyOf(entries);
    }

    /** Every kind of car there is to choose from. */
    List<Car> kinds() {
        return kinds;
    }

    /** The cars to choose from where the question is about the car: kinds, or one car for each way to drive it. */
    public List<Car> cars(Topic topic) {
        return switch (topic.field()) {
            case CAR -> Kinds.fitting(kinds, state);
            case DRIVE -> Kinds.byDrive(kinds);
            default -> List.of();
        };
    }

    /** What nobody said, and is taken for what is most likely. */
    public Taken taken() {
        return state.taken();
    }

    /** The same, as long as it was not shown and let stand. */
    public Taken takenUnseen() {
        return state.knows(Topic.of(Field.ELSE)) ? Taken.NOTHING : state.taken();
    }

    /** What does not go together in the complaint that a doubt is about. */
    public Optional<Doubt> doubt(Topic topic) {
        return Doubt.in(state.run(), state.run().reports().get(topic.complaint()));
    }

    /** The advice on the case as far as it is known. */
    public Advice advice() {
        chooser();
        return whatIf.advise(state.run());
    }

    /** The advice if that were said as well; nothing is kept of it. */
    public Advice adviceIf(Topic topic, Answer answer) {
        chooser();
        return whatIf.advise(state.with(topic, answer).run());
    }

    /** The question to ask next; empty when no answer could change the first thing told. */
    public Optional<Question> next() {
        if (next == null) {
            next = Chooser.opening(state, kinds).or(() -> chooser().choose(state));
        }
        return next;
    }

    /** Takes an answer to any topic that is open. */
    public void answer(Topic topic, Answer answer) {
        answer(topic, answer, "");
    }

    /**
     * Takes an answer to any topic that is open.
     *
     * @param said as it was typed
     */
    public void answer(Topic topic, Answer answer, String said) {
        entries.add(new Entry(topic, complaint(topic, state), answer, said));
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

    /** The complaints that somebody told in this talk and may tell otherwise, by their index. */
    List<Integer> correctable() {
        List<Integer> correctable = new ArrayList<>();
        for (int i = 0; i < state.details().size(); i++) {
            if (state.run().reports().get(i).measured().isEmpty() && !state.details().get(i).contains(Field.CARRIED)) {
                correctable.add(i);
            }
        }
        return correctable;
    }

    /** What was told of a complaint. */
    Set<Field> told(int complaint) {
        return state.details().get(complaint);
    }

    /** That of some complaints which was spoken of last. */
    int lastTold(List<Integer> of) {
        Optional<Topic> last = entries.isEmpty() ? Optional.empty() : Optional.of(entries.get(entries.size() - 1).topic());
        return last.filter(topic -> topic.field().aboutComplaint() && of.contains(topic.complaint())).map(Topic::complaint)
                .orElseGet(() -> of.get(of.size() - 1));
    }

    /** The question of an earlier entry, asked anew: weighed with everything else that is known. */
    public Question again(int entry) {
        Topic topic = entries.get(entry).topic();
        return Chooser.opening(topic, kinds).orElseGet(() -> chooser().weighed(topic, before(entry)));
    }

    private State before(int entry) {
        State before = start;
        for (Entry earlier : entries.subList(0, entry)) {
            before = before.with(earlier.topic(), earlier.answer());
        }
        return before;
    }

    /** Puts another answer in the place of an earlier one, as {@link #change(int, Answer, String)} does. */
    public void change(int entry, Answer answer) {
        change(entry, answer, "");
    }

    /**
     * Puts another answer in the place of an earlier one. What was told of a complaint that is still there stays with
     * it; all else that followed from the old answer is withdrawn.
     *
     * @param typed as it was typed
     */
    public void change(int entry, Answer answer, String typed) {
        List<Entry> later = List.copyOf(entries.subList(entry + 1, entries.size()));
        List<Symptom> old = symptoms(before(entry + 1));
        entries.set(entry, new Entry(entries.get(entry).topic(), entries.get(entry).complaint(), answer, typed));
        List<Symptom> fresh = symptoms(before(entry + 1));
        entries.subList(entry + 1, entries.size()).clear();
        boolean split = later.stream().anyMatch(it -> it.topic().field().ofComplaint()
                && it.answer() instanceof Answer.Said said && said.groups().size() > 1);
        for (Entry it : later) {
            // Of a car that is known now, nobody needs to have said which wheels are driven; of one that has others driven than
            // was said, the kind is asked anew.
            if (it.answer() instanceof Answer.OfCar && answer instanceof Answer.OfCar) {
                continue;
            }
            if (!it.topic().field().aboutComplaint() || old.equals(fresh)) {
                entries.add(it);
            } else if (!split && it.topic().complaint() < old.size()
                    && fresh.contains(old.get(it.topic().complaint()))) {
                entries.add(new Entry(new Topic(it.topic().field(), fresh.indexOf(old.get(it.topic().complaint()))),
                        it.complaint(), it.answer(), it.said()));
            }
        }
        replay();
    }

    /** Takes in what was changed before, and what came of it. */
    public void tried(List<Tried> tried) {
        List<Tried> all = new ArrayList<>(start.run().tried());
        all.addAll(tried);
        start = new State(start.run().withTried(all), start.known(), start.details());
        replay();
    }

    /** The same talk about another car. */
    public void change(Car car, String file) {
        start = State.of(start.run().ofCar(car, Optional.of(file)), true);
        entries.removeIf(entry -> entry.topic().field() == Field.CAR || entry.topic().field() == Field.DRIVE);
        replay();
    }

    private static List<Symptom> symptoms(State state) {
        return state.run().reports().stream().map(Report::symptom).toList();
    }

    private void replay() {
        state = before(entries.size());
        next = null;
    }

    /**
     * What a topic is about, in words: {@code understeer} or {@code understeer at entry in slow corners}; empty for the whole
     * car.
     */
    public String complaint(Topic topic) {
        return complaint(topic, state);
    }

    private static String complaint(Topic topic, State state) {
        if (!topic.field().aboutComplaint() || topic.complaint() >= state.run().reports().size()) {
            return "";
        }
        Report report = state.run().reports().get(topic.complaint());
        return report.symptom().spoken() + report.where().map(where -> " at the " + where.id()).orElse("")
                + (state.answeredBy(topic).size() > 1 ? " in all of the corner"
                        : report.phase().map(phase -> " " + phase.at()).orElse(""))
                + report.speed().map(speed -> " in " + speed.id() + " corners").orElse("");
    }

    @Override
    public void close() {
        chooser();
        whatIf.close();
    }
}
