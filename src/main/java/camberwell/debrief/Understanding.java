package camberwell.debrief;

import camberwell.car.Car;
import camberwell.problem.ProblemsException;
import camberwell.report.Words;
import camberwell.run.Report;
import camberwell.saying.Heard;
import camberwell.saying.Listener;
import camberwell.saying.Told;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/** What a line that was typed answers: a number of the list, yes or no, a word, or a sentence about anything. */
final class Understanding {

    /** How many words make a part of a saying that may tell something by itself. */
    private static final int PART = 5;
    private static final Pattern AS_BEFORE = Pattern.compile("(?:it'?s |it was |it is )?(?:the )?(?:same|like|as|usual)"
            + "(?: as| like)?(?: before| last time| always| usual| ever| the last time| again)?", Pattern.CASE_INSENSITIVE);

    /** What a car is, rather than what it does. */
    private static final Pattern OF_CARS = Pattern.compile("\\b(?:an?|my|its?|it's)\\b.*\\b(?:car|hatch|saloon|coupe"
            + "|roadster|racer|"
            + "single.seater|kart|prototype)\\b|\\b(?:rear|front|all|four)[- ](?:wheel[- ])?drive\\b|\\b[rfa4]wd\\b",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern OF_MINE = Pattern.compile("^(?:(?:it'?s|it is|is|i have|i drive|an?|my|the)\\s+)+",
            Pattern.CASE_INSENSITIVE);
    /** A shorter part of a name names no car. */
    private static final int SHORTEST_NAME = 3;

    private final Debrief debrief;
    private final Supplier<Listener> listener;
    /** What may be one thing or another, until it is said which. */
    private Optional<Heard> unclear = Optional.empty();

    /**
     * An answer.
     *
     * @param besides what was not understood of the line, or was taken for something
     * @param askedBack what may have been said besides, to be asked back about, one after the other
     */
    record Understood(Answer answer, List<String> besides, List<Heard.Unclear> askedBack) {

        static Understood of(Answer answer) {
            return new Understood(answer, List.of(), List.of());
        }
    }

    Understanding(Debrief debrief, Supplier<Listener> listener) {
        this.debrief = debrief;
        this.listener = listener;
    }

    /** Nobody is to say any more which of several was meant: the question was left open. */
    void forget() {
        unclear = Optional.empty();
    }

    /** What a line says; of one that corrects itself, what is meant. */
    private Heard hear(String typed) {
        return Corrections.inside(typed, listener.get()).orElseGet(() -> listener.get().hear(typed));
    }

    /** Whether a line tells what the car does. */
    boolean complains(String typed) {
        return !listener.get().hear(typed).told().isEmpty();
    }

    /** What a line says by itself, whatever was asked. */
    Understood words(String typed) throws Reply.NoAnswer {
        Heard heard = hear(typed);
        if (!heard.anything()) {
            throw notUnderstood(typed, heard);
        }
        return new Understood(new Answer.InWords(heard), besides(heard), askedBack(heard));
    }

    /** What is asked back about, besides what was understood: all that can be answered with yes or no. */
    private static List<Heard.Unclear> askedBack(Heard heard) {
        return heard.doubtful().stream().filter(it -> it.mayBe().size() == 1).toList();
    }

    /** What a line answers, of the question's own words first. */
    Understood of(Question question, List<Word> listed, String typed) throws Reply.NoAnswer {
        Topic topic = question.topic();
        Field field = topic.field();
        if (!debrief.cars(topic).isEmpty()) {
            return car(topic, typed);
        }
        Optional<Answer> plain = PlainAnswer.of(topic, typed, debrief, unclear.isEmpty());
        if (plain.isPresent()) {
            return Understood.of(plain.get());
        }
        if (field == Field.CHANGED && debrief.earlier().isPresent()) {
            Optional<Answer> changed = changed(debrief.earlier().get(), typed);
            if (changed.isPresent()) {
                return Understood.of(changed.get());
            }
        }
        if (topic.own().isPresent()) {
            Optional<Answer> own = own(topic.own().get(), listed, typed);
            if (own.isPresent()) {
                return Understood.of(own.get());
            }
        }
        List<Word> numbered = Reply.numbered(typed, field == Field.TRACK ? List.of() : listed);
        if (!numbered.isEmpty()) {
            return Understood.of(checked(topic, Reply.grouped(numbered, field)));
        }
        return sentence(question, typed);
    }

    /** One of the choices of a rule pack's question; empty where the line tells what the car did instead. */
    private Optional<Answer> own(PackQuestion question, List<Word> listed, String typed) throws Reply.NoAnswer {
        List<Word> numbered = Reply.numbered(typed, listed);
        if (numbered.size() > 1) {
            throw new Reply.NoAnswer("One of them: type its number or its word.");
        }
        String plain = Reply.yes(typed) ? "yes" : Reply.no(typed) ? "no" : typed;
        Optional<Word> chosen = numbered.stream().findFirst().or(() -> question.in(plain));
        if (chosen.isEmpty() && !listener.get().hear(typed).anything()) {
            String id = Reply.begun(typed, List.copyOf(question.answers().keySet()));
            chosen = listed.stream().filter(word -> word.is(id)).findFirst();
        }
        return chosen.map(Answer.Said::of);
    }

    /** What was changed; empty where the line tells what the car did instead. */
    private Optional<Answer> changed(Earlier earlier, String typed) throws Reply.NoAnswer {
        try {
            return Optional.of(new Answer.Changed(earlier.changed().apply(debrief.run(), typed)));
        } catch (ProblemsException e) {
            if (!listener.get().hear(typed).told().isEmpty()) {
                return Optional.empty();
            }
            throw new Reply.NoAnswer(Words.sentence(e.problems().get(0).message()) + ".");
        }
    }

    private Understood sentence(Question question, String typed) throws Reply.NoAnswer {
        Topic topic = question.topic();
        Heard heard = decided(typed).or(() -> where(topic, typed)).orElseGet(() -> hear(typed));
        if (unclear.isPresent() && heard.told().isEmpty() && !heard.loose().isEmpty() && heard.exact()) {
            // Where it was is no answer to what it was: that is kept, and asked once more.
            Heard both = unclear.get().with(heard.loose());
            unclear = Optional.of(both);
            throw new Reply.NoAnswer("Heard: " + Spoken.text(heard) + "; and was it " + both.unclear().get(0).text() + "?");
        }
        unclear = Optional.empty();
        boolean ofEach = Reply.ofEach(typed) && debrief.run().reports().size() > 1;
        boolean own = topic.field().ofComplaint() && !ofEach && heard.told().isEmpty() && heard.surface().isEmpty()
                && !heard.loose().isEmpty()
                && heard.loose().stream().allMatch(word -> topic.field().words().contains(word)
                        || topic.field().alongside().contains(Field.telling(word)));
        if (own) {
            return new Understood(checked(topic, Reply.grouped(heard.loose(), topic.field())), besides(heard), askedBack(heard));
        }
        if (heard.fine() && topic.field() != Field.DOING) {
            return Understood.of(fine(topic));
        }
        if (heard.told().isEmpty() && !heard.unclear().isEmpty() && !heard.unclear().get(0).mayBe().isEmpty()) {
            throw notUnderstood(typed, heard);
        }
        if (heard.anything() && !(heard.told().isEmpty() && debrief.run().reports().isEmpty() && heard.surface().isEmpty()
                && !heard.fine())) {
            return new Understood(new Answer.InWords(heard), besides(heard), askedBack(heard));
        }
        if (!heard.loose().isEmpty()) {
            throw new Reply.NoAnswer("Heard: " + Spoken.text(heard) + "; but what did the car do there?");
        }
        List<String> known = new ArrayList<>();
        topic.field().words().forEach(word -> known.add(word.id()));
        topic.field().alongside().forEach(with -> with.words().forEach(word -> known.add(word.id())));
        if (typed.strip().indexOf(' ') < 0 && !known.isEmpty() && heard.unclear().isEmpty()) {
            String id = Reply.begun(typed, known);
            Word word = topic.field().words().stream().filter(it -> it.is(id)).findFirst().orElseGet(() -> topic.field()
                    .alongside().stream().flatMap(with -> with.words().stream()).filter(it -> it.is(id)).findFirst()
                    .orElseThrow());
            if (topic.field() == Field.DOING && !(word instanceof Symptom)) {
                throw new Reply.NoAnswer("Heard: " + id + "; but what did the car do there?");
            }
            return Understood.of(checked(topic, Reply.grouped(List.of(word), topic.field())));
        }
        throw notUnderstood(typed, heard);
    }

    /** What a line says that only tells where, when or how bad, if that is asked. */
    private Optional<Heard> where(Topic topic, String typed) {
        List<Word> words = topic.field().ofComplaint() ? listener.get().narrowing(typed) : List.of();
        return words.isEmpty() ? Optional.empty() : Optional.of(new Heard(typed, List.of(), Optional.empty(), false, words,
                List.of(), List.of()));
    }

    /** What was not clear before, now that it is said which end of the car or which complaint is meant. */
    private Optional<Heard> decided(String typed) throws Reply.NoAnswer {
        if (unclear.isEmpty()) {
            return Optional.empty();
        }
        if (Reply.all(typed) || Reply.bothEnds(typed)) {
            Heard.Unclear which = unclear.get().unclear().get(0);
            if (Reply.two(typed) && which.mayBe().size() > 2) {
                throw new Reply.NoAnswer("Which two? " + Words.sentence(which.text()) + ".");
            }
            return Optional.of(Heard.of(unclear.get().unclear().get(0).mayBe().stream().map(this::atItsEnd)
                    .toArray(Told[]::new)));
        }
        Heard now = listener.get().hear(typed);
        if (now.told().size() == 1 && now.told().get(0).words().isEmpty() && now.surface().isEmpty() && now.loose().isEmpty()
                && unclear.get().told().isEmpty()) {
            Symptom chosen = now.told().get(0).symptom();
            return Optional.of(unclear.get().unclear().get(0).mayBe().stream()
                    .filter(it -> it.symptom() == chosen && !it.words().isEmpty())
                    .findFirst().map(Heard::of)
                    .orElseGet(() -> Heard.of(new Told(chosen, once(unclear.get().loose()), List.of()))));
        }
        if (now.told().size() > 1 && now.told().stream().allMatch(told -> told.words().isEmpty())) {
            return Optional.of(Heard.of(now.told().stream().map(told -> new Told(told.symptom(), once(unclear.get().loose()),
                    List.of())).toArray(Told[]::new)));
        }
        Optional<Told> atThatEnd = now.told().isEmpty() ? atEnd(now.loose(), unclear.get().unclear().get(0).mayBe())
                : Optional.empty();
        if (atThatEnd.isPresent()) {
            return atThatEnd.map(Heard::of);
        }
        Heard together = listener.get().hear(typed + ", " + unclear.get().said());
        return now.anything() || together.told().isEmpty() ? Optional.empty() : Optional.of(together);
    }

    /** One of several that are meant all of them, with what was said of it. */
    private Told atItsEnd(Told one) {
        String said = one.symptom().axle().map(end -> end.id() + ", ").orElse("") + unclear.orElseThrow().said();
        Told told = listener.get().hear(said).told().stream().filter(it -> it.symptom() == one.symptom()).findFirst().orElse(one);
        List<Word> words = new ArrayList<>(told.words());
        words.addAll(unclear.orElseThrow().loose());
        return new Told(told.symptom(), once(words), told.notIn());
    }

    /** The one of several that is about the end of the car that is named, if just one is. */
    private static Optional<Told> atEnd(List<Word> named, List<Told> several) {
        Optional<Axle> end = named.stream().filter(Axle.class::isInstance).map(Axle.class::cast).findFirst();
        List<Told> there = several.stream().filter(told -> end.isPresent() && told.symptom().axle().equals(end)).toList();
        return there.size() == 1 ? Optional.of(there.get(0)) : Optional.empty();
    }

    private static List<Word> once(List<Word> words) {
        List<Word> once = new ArrayList<>();
        words.stream().filter(word -> once.stream().noneMatch(it -> it.getClass() == word.getClass())).forEach(once::add);
        return once;
    }

    private Reply.NoAnswer notUnderstood(String typed, Heard heard) {
        List<Heard.Unclear> back = askedBack(heard);
        if (!back.isEmpty()) {
            // A word of what is asked about is not named apart from it; a part of some words is.
            return new Reply.NoAnswer(back, besides(new Heard(heard.said(), List.of(), heard.surface(), false, List.of(),
                    heard.unclear(), heard.notUnderstood().stream().filter(rest -> rest.split(" ").length >= PART
                            || back.stream().noneMatch(doubt -> doubt.words().contains(rest))).toList())));
        }
        if (!heard.unclear().isEmpty() && !heard.unclear().get(0).mayBe().isEmpty()) {
            unclear = Optional.of(heard);
            return new Reply.NoAnswer("\"" + heard.unclear().get(0).words() + "\": "
                    + heard.unclear().get(0).text() + "? Say which, or which end of the car.");
        }
        if (AS_BEFORE.matcher(typed.strip()).matches()) {
            return new Reply.NoAnswer("What it was before is not known here: say it once more, or unknown.");
        }
        return new Reply.NoAnswer("Not understood: \"" + typed.strip() + "\". Say it in other words, or unknown; help tells "
                + "what else.");
    }

    private static List<String> besides(Heard heard) {
        List<String> besides = new ArrayList<>();
        heard.unclear().stream().filter(it -> it.mayBe().size() != 1).forEach(it -> besides.add(
                !it.mayBe().isEmpty() ? "not clear: \"" + it.words() + "\", which may be " + it.text()
                : heard.quotes(it) ? "not clear: \"" + it.words() + "\"" : "left open, as it is not sure: " + it.words()));
        heard.notUnderstood().forEach(it -> besides.add("not understood: \"" + it + "\""));
        return besides;
    }

    private static Answer fine(Topic topic) throws Reply.NoAnswer {
        return switch (topic.field()) {
            case ELSE, LOOK -> new Answer.Nothing();
            case TYRES, TRACK -> new Answer.Unknown();
            default -> throw new Reply.NoAnswer("Good; but this is about what was not. Answer, or type unknown.");
        };
    }

    /** A kind of car, or a complaint that somebody is full of. */
    private Understood car(Topic topic, String typed) throws Reply.NoAnswer {
        List<Car> cars = debrief.cars(topic);
        List<Car> numbered = Reply.numbered(typed, cars);
        if (numbered.size() == 1) {
            return Understood.of(new Answer.OfCar(numbered.get(0)));
        }
        List<String> names = cars.stream().map(car -> id(topic, car)).toList();
        Optional<Car> driven = topic.field() == Field.DRIVE ? DriveWords.of(typed).filter(said -> said.rest().isEmpty())
                .map(said -> cars.get(said.drive().ordinal())) : Optional.empty();
        Optional<Car> named = driven.or(() -> debrief.run().car().drive().isEmpty() ? Optional.empty()
                : within(typed, cars, names));
        if (named.isPresent()) {
            return Understood.of(new Answer.OfCar(named.get()));
        }
        boolean begun = names.stream().anyMatch(name -> name.startsWith(slug(typed)));
        if (!begun && (typed.strip().indexOf(' ') > 0 || unclear.isPresent())) {
            Heard heard = decided(typed).orElseGet(() -> hear(typed));
            unclear = Optional.empty();
            boolean described = heard.told().isEmpty() && OF_CARS.matcher(typed).find();
            if (heard.anything() && !described) {
                return new Understood(new Answer.InWords(heard), besides(heard), askedBack(heard));
            }
            if (!heard.doubtful().isEmpty() && !described) {
                throw notUnderstood(typed, heard);
            }
            throw new Reply.NoAnswer("Not understood: \"" + typed.strip() + "\". Type the number of the nearest, or unknown.");
        }
        return Understood.of(new Answer.OfCar(cars.get(names.indexOf(Reply.begun(begun ? slug(typed) : typed, names)))));
    }

    /** The one car whose name has these words in it; empty for none, or several. */
    private static Optional<Car> within(String typed, List<Car> cars, List<String> names) {
        String words = "-" + slug(OF_MINE.matcher(typed.strip()).replaceFirst("")) + "-";
        List<Car> with = cars.stream().filter(car -> words.length() > 2 + SHORTEST_NAME
                && ("-" + names.get(cars.indexOf(car)) + "-").contains(words)).toList();
        return with.size() == 1 ? Optional.of(with.get(0)) : Optional.empty();
    }

    /** How many of the cars to choose from have a name that begins with what was typed. */
    static long names(Topic topic, String typed, Debrief debrief) {
        return debrief.cars(topic).stream().filter(car -> id(topic, car).startsWith(slug(typed.strip()))).count();
    }

    /** What a car is chosen by. */
    static String id(Topic topic, Car car) {
        return slug(topic.field() == Field.DRIVE ? car.driven() : car.name());
    }

    private static String slug(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }

    /** An answer, if the complaint can be there at all. */
    private Answer checked(Topic topic, Answer answer) throws Reply.NoAnswer {
        if (topic.field() == Field.PHASE && answer instanceof Answer.Said said) {
            Report report = debrief.run().reports().get(topic.complaint());
            for (List<Word> group : said.groups()) {
                for (Word word : group) {
                    Optional<String> why = word instanceof Phase phase ? report.symptom().senseless(phase)
                            : Optional.empty();
                    if (why.isPresent()) {
                        throw new Reply.NoAnswer("You said " + report.symptom().spoken() + ", and "
                                + ((Phase) word).at() + ": " + why.get() + ". Where was it? Or change doing.");
                    }
                }
            }
        }
        return answer;
    }
}
