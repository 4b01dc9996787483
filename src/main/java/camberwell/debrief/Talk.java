package camberwell.debrief;

import camberwell.knowledge.Notes;
import camberwell.report.Page;
import camberwell.report.Words;
import camberwell.run.Report;
import camberwell.run.Tried;
import camberwell.saying.Heard;
import camberwell.saying.Listener;
import camberwell.vocabulary.Audience;
import camberwell.vocabulary.Surface;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is said at the prompt of a debrief, and what comes back. It neither reads nor prints by itself. */
public final class Talk {

    /** What follows from a line that was typed. */
    public enum Next {
        /** Another line is wanted; nothing new is known. */
        ASK,
        /** Another line is wanted; the answers have changed. */
        ANSWERED,
        /** The advice is wanted. */
        ADVISE,
        /** No advice is wanted. */
        LEAVE
    }

    private final Debrief debrief;
    private final Understanding understanding;
    private final Corrections corrections;
    private final Course course;
    private final AskedBack askedBack;
    private final Orders orders;
    private final Echo echo;
    /** What was most likely meant by what was no answer, to be taken with yes. */
    private Optional<String> suggested = Optional.empty();

    /**
     * What is not needed for the first question is opened when it is.
     *
     * @param pages an empty page, as wide as the screen is at that moment
     */
    public Talk(Debrief debrief, Supplier<Listener> listener, Supplier<Notes> notes, Audience audience,
            Supplier<Page> pages) {
        this.debrief = debrief;
        this.understanding = new Understanding(debrief, listener);
        this.corrections = new Corrections(debrief, listener);
        this.course = new Course(debrief, audience, pages);
        this.askedBack = new AskedBack(course);
        this.orders = new Orders(course, new Reasons(notes, audience));
        this.echo = course.echo;
    }

    /** Everything that was said since it was last taken. */
    public String take() {
        return echo.take();
    }

    /** The question that is open; empty when there is none. */
    public Optional<Question> question() {
        return course.question;
    }

    /** What the question that is open is about, in words; empty for the whole car. */
    public String complaint() {
        return course.complaint();
    }

    /** The words that are asked back about, and what they may mean; empty while the question itself is asked. */
    public Optional<Heard.Unclear> askedBack() {
        return course.askedBack.stream().findFirst();
    }

    /** What was understood of the last line; empty where it was no answer. */
    public Optional<String> heard() {
        return echo.heard();
    }

    /** Asks the question that is open now; says so when there is none. */
    public void ask() {
        course.ask();
    }

    /** The words that may stand where the prompt is, for completion. */
    public List<String> completions() {
        return Offers.completions(course.question, debrief);
    }

    /** What stands before what is typed. */
    public String prompt() {
        return course.asked().filter(it -> it == Field.TYRES && course.tyres.begun())
                .map(it -> course.tyres.left().get(0).id() + "> ").orElse("> ");
    }

    /** Takes one line. */
    public Next reply(String line) {
        echo.begin();
        course.said = line.strip();
        return heard(line);
    }

    private Next heard(String line) {
        Optional<Next> back = askedBack.reply(line);
        if (back.isPresent()) {
            return back.get();
        }
        if (course.waiting) {
            // Something else was said instead: it is heard as an answer to what would have been asked.
            course.waiting = false;
            course.question = debrief.next();
        }
        Optional<String> taken = suggested.filter(it -> Reply.yes(line));
        suggested = Optional.empty();
        String typed = Reply.unhedged(taken.orElse(line).strip());
        boolean hedged = taken.isEmpty() && !typed.equals(line.strip());
        String lower = typed.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        if (typed.isEmpty()) {
            return orders.nothing();
        }
        Optional<String> changes = Revising.what(lower, debrief.entries());
        if (changes.isPresent()) {
            return orders.change(changes.get());
        }
        if (lower.matches("(add|also|and|plus|another thing)\\b.*") && !lower.matches("(add|also|and|plus)")) {
            return add(typed.replaceFirst("(?i)^(add|also|and|plus|another thing)\\b[:, ]*", ""));
        }
        List<Tried> tried = TriedWords.of(typed);
        // Where a complaint is told as well, what came of the change is a longer story.
        if (!tried.isEmpty() && !understanding.complains(typed)) {
            echo.hear(TriedWords.told(tried));
            debrief.tried(tried);
            return course.goOn();
        }
        Optional<String> command = Commands.of(lower);
        if (command.isPresent()) {
            return orders.obey(command.get());
        }
        Optional<Corrections.Corrected> corrected = course.changing.isPresent() || course.adding ? Optional.empty()
                : corrections.of(typed, course.question.map(Question::topic));
        if (corrected.isPresent()) {
            return instead(corrected.get());
        }
        Field asked = course.asked().orElse(Field.ELSE);
        Optional<SurfaceWords> track = SurfaceWords.of(typed);
        if (track.filter(it -> it.surface().isEmpty()).isPresent()) {
            echo.say(Words.sentence(track.get().between().stream().map(Surface::id).collect(Collectors.joining(" or ")))
                    + " for most of the run?");
            return Next.ASK;
        }
        Optional<Aside> car = course.changing.isEmpty() ? Aside.car(typed, asked, debrief) : Optional.empty();
        Optional<Aside> aside = car.or(() -> Aside.of(typed, asked, debrief.run())
                .filter(it -> course.changing.isEmpty() || it.topic().field() != asked));
        if (aside.isPresent()) {
            return besides(aside.get());
        }
        try {
            return course.adding ? added(typed) : course.question.isEmpty() ? added(typed) : answer(typed);
        } catch (Reply.NoAnswer e) {
            if (!hedged || !e.askedBack().isEmpty() || course.adding) {
                return refused(typed, lower, e);
            }
            understanding.forget();
            echo.notUnderstood(List.of("not understood: \"" + typed + "\""));
            return orders.unknown();
        }
    }

    /** Puts what is right in the place of what was told. */
    private Next instead(Corrections.Corrected corrected) {
        Report before = debrief.run().reports().get(corrected.topic().complaint());
        debrief.answer(corrected.topic(), corrected.answer(), course.said);
        List<Report> reports = debrief.run().reports();
        if (corrected.answer().groups().isEmpty()) {
            echo.hear("no " + before.text() + "; that is taken back");
        } else {
            String now = Stream.concat(Stream.of(reports.get(corrected.topic().complaint())),
                    reports.subList(reports.size() - corrected.answer().groups().size() + 1, reports.size()).stream())
                    .map(Report::text).collect(Collectors.joining("; "));
            echo.hear(now.equals(before.text()) ? now + ", as told before" : now + ", instead of " + before.text());
        }
        return course.goOn();
    }

    /** Takes what was said and not asked for just now, and then what was said with it. */
    private Next besides(Aside aside) {
        // Whoever names the driven wheels is asked for the kind of car among those that have them driven.
        boolean answers = course.question.filter(it -> it.topic().equals(aside.topic()) || !debrief.cars(it.topic()).isEmpty()
                && aside.topic().field() == Field.DRIVE).isPresent();
        if (aside.topic().field() == Field.DRIVE && aside.answer() instanceof Answer.OfCar car) {
            echo.hear(car.car().driven());
        } else {
            echo.measured(aside.topic().field() == Field.TRACK ? "track " : "", aside.answer(), aside.taken());
        }
        String text = echo.heard().orElseThrow();
        debrief.answer(aside.topic(), aside.answer(), course.said);
        if (aside.rest().isEmpty() || Commands.of(aside.rest().toLowerCase(Locale.ROOT)).equals(Optional.of("unknown"))) {
            return course.goOn();
        }
        if (answers) {
            course.question = debrief.next();
        }
        if (aside.topic().field() == Field.CIRCUIT && !TyreLine.figures(aside.rest()) && !understanding.complains(aside.rest())) {
            // What is said of a circuit besides is no complaint that somebody half told.
            echo.notUnderstood(List.of("not understood: \"" + aside.rest() + "\""));
            return course.goOn();
        }
        echo.begin();
        Next next = heard(aside.rest());
        echo.besides(text);
        if (next == Next.ASK && answers && course.askedBack.isEmpty()) {
            ask();
        }
        return next == Next.ASK ? Next.ANSWERED : next;
    }

    private Next refused(String typed, String lower, Reply.NoAnswer no) {
        if (!no.askedBack().isEmpty()) {
            course.askedBack = no.askedBack();
            echo.notUnderstood(no.besides());
            course.asking.back(course.askedBack.get(0), echo.page());
            return Next.ASK;
        }
        Optional<String> begun = Commands.begun(lower);
        if (begun.isPresent()) {
            return orders.obey(begun.get());
        }
        Optional<String> near = no.meant().or(() -> Commands.near(lower));
        suggested = near;
        echo.say(no.meant().isPresent() || near.isEmpty() ? no.getMessage()
                : "\"" + typed + "\" is no answer here; did you mean " + near.get() + "? y takes it.");
        return Next.ASK;
    }

    private Next answer(String typed) throws Reply.NoAnswer {
        Question asked = course.question.orElseThrow();
        Topic topic = asked.topic();
        if (topic.field() == Field.TYRES && (TyreLine.figures(typed) || course.tyres.begun())) {
            return figures(typed);
        }
        if (topic.field() == Field.TRACK && TyreLine.figures(typed)) {
            return course.answered(Reply.track(typed));
        }
        Understanding.Understood understood = understanding.of(asked, Asking.listed(asked), typed);
        if (understood.answer() instanceof Answer.Unknown) {
            echo.say(topic.field() == Field.TYRES ? "Heard: not read." : "That stays open.");
        } else {
            course.understood(understood);
        }
        if (!debrief.cars(topic).isEmpty() && understood.answer() instanceof Answer.InWords words) {
            // Somebody was asked about the car, and told what it did.
            debrief.answer(DriversWords.filed(topic, words.heard()), words, course.said);
            return course.goOn();
        }
        return course.answered(understood.answer());
    }

    private Next add(String typed) {
        try {
            return added(typed);
        } catch (Reply.NoAnswer e) {
            course.adding |= !e.askedBack().isEmpty();
            return refused(typed, typed.toLowerCase(Locale.ROOT), e);
        }
    }

    /** Takes more of what the car did, whatever is asked just now. */
    private Next added(String typed) throws Reply.NoAnswer {
        Understanding.Understood understood = understanding.words(typed);
        course.adding = false;
        course.understood(understood);
        debrief.answer(Topic.of(Field.DOING), understood.answer(), course.said);
        course.changing = Optional.empty();
        if (course.goOn() == Next.ADVISE) {
            echo.say("Enter shows the advice with that.");
        }
        return Next.ANSWERED;
    }

    private Next figures(String typed) throws Reply.NoAnswer {
        if (TyreRound.enough(typed)) {
            return course.enough();
        }
        if (Reply.no(typed)) {
            return orders.unknown();
        }
        TyreLine.Read read = course.tyres.take(typed, debrief.run().car());
        echo.measured("", new Answer.Read(read.tyres()), read.taken());
        if (course.tyres.left().isEmpty()) {
            return course.enough();
        }
        echo.say("The next tyre; Enter when that is all.");
        return Next.ASK;
    }

    /**
     * A question and its answer, as they are written down.
     *
     * @param said in the driver's own words; empty where nothing was typed
     * @param heard what was understood
     */
    public record Written(String question, String said, String heard) {
    }

    /** What was asked and answered. */
    public List<Written> written(Audience audience) {
        return debrief.entries().stream().map(entry -> new Written(Phrases.question(entry.topic(), entry.complaint(), audience),
                entry.said(), Spoken.text(entry.answer()))).toList();
    }

    /** The words that may be chosen now, as a program would show them. */
    public List<String> choices() {
        return Offers.choices(course.question, debrief);
    }
}
