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

    private static final String UNKNOWN_KIND = "Then the advice keeps to what every kind of car in this list "
            + "lets one adjust, and holds the tyres against no window of temperature.";
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
    private final Asking asking;
    private final Reasons reasons;
    private final Corrections corrections;
    private final Echo echo;
    private final TyreRound tyres = new TyreRound();
    private Optional<Integer> changing = Optional.empty();
    private Optional<Question> question = Optional.empty();
    private Optional<String> suggested = Optional.empty();
    /** What is asked back about, the first of it just now; none where nothing is. */
    private List<Heard.Unclear> askedBack = List.of();
    /** Whether the next question waits for what is answered to that. */
    private boolean waiting;
    private boolean adding;
    /** What was typed last. */
    private String said = "";

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
        this.asking = new Asking(debrief, audience);
        this.reasons = new Reasons(notes, audience);
        this.echo = new Echo(pages);
    }

    /** Everything that was said since it was last taken. */
    public String take() {
        return echo.take();
    }

    /** The question that is open; empty when there is none. */
    public Optional<Question> question() {
        return question;
    }

    /** What the question that is open is about, in words; empty for the whole car. */
    public String complaint() {
        return changing.map(entry -> debrief.entries().get(entry).complaint())
                .orElseGet(() -> question.map(it -> debrief.complaint(it.topic())).orElse(""));
    }

    /** The words that are asked back about, and what they may mean; empty while the question itself is asked. */
    public Optional<Heard.Unclear> askedBack() {
        return askedBack.stream().findFirst();
    }

    /** What was understood of the last line; empty where it was no answer. */
    public Optional<String> heard() {
        return echo.heard();
    }

    /** Asks the question that is open now; says so when there is none. */
    public void ask() {
        question = changing.map(debrief::again).or(debrief::next);
        echo.page().blank();
        question.ifPresent(it -> asking.write(it, complaint(), echo.page()));
        question.filter(it -> it.topic().field() == Field.TYRES).ifPresent(it -> echo.order());
    }

    /** The words that may stand where the prompt is, for completion. */
    public List<String> completions() {
        return Offers.completions(question, debrief);
    }

    /** What stands before what is typed. */
    public String prompt() {
        return question.filter(it -> it.topic().field() == Field.TYRES && tyres.begun())
                .map(it -> tyres.left().get(0).id() + "> ").orElse("> ");
    }

    /** Takes one line. */
    public Next reply(String line) {
        echo.begin();
        said = line.strip();
        return heard(line);
    }

    private Next heard(String line) {
        List<Heard.Unclear> back = askedBack;
        askedBack = List.of();
        if (!back.isEmpty() && (Reply.yes(line) || Reply.no(line))) {
            return Reply.yes(line) ? meant(back) : notMeant(back);
        }
        if (!back.isEmpty() && Commands.of(line.strip().toLowerCase(Locale.ROOT)).equals(Optional.of("back"))) {
            return unasked(back);
        }
        if (waiting) {
            // Something else was said instead: it is heard as an answer to what would have been asked.
            waiting = false;
            question = debrief.next();
        }
        Optional<String> taken = suggested.filter(it -> Reply.yes(line));
        suggested = Optional.empty();
        String typed = Reply.unhedged(taken.orElse(line).strip());
        boolean hedged = taken.isEmpty() && !typed.equals(line.strip());
        String lower = typed.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        if (typed.isEmpty()) {
            return nothing();
        }
        Optional<String> changes = Revising.what(lower, debrief.entries());
        if (changes.isPresent()) {
            return change(changes.get());
        }
        if (lower.matches("(add|also|and|plus|another thing)\\b.*") && !lower.matches("(add|also|and|plus)")) {
            return add(typed.replaceFirst("(?i)^(add|also|and|plus|another thing)\\b[:, ]*", ""));
        }
        List<Tried> tried = TriedWords.of(typed);
        // Where a complaint is told as well, what came of the change is a longer story.
        if (!tried.isEmpty() && !understanding.complains(typed)) {
            echo.hear(TriedWords.told(tried));
            debrief.tried(tried);
            return goOn();
        }
        Optional<String> command = Commands.of(lower);
        if (command.isPresent()) {
            return obey(command.get());
        }
        Optional<Corrections.Corrected> corrected = changing.isPresent() || adding ? Optional.empty()
                : corrections.of(typed, question.map(Question::topic));
        if (corrected.isPresent()) {
            return instead(corrected.get());
        }
        Field asked = question.map(it -> it.topic().field()).orElse(Field.ELSE);
        Optional<SurfaceWords> track = SurfaceWords.of(typed);
        if (track.filter(it -> it.surface().isEmpty()).isPresent()) {
            echo.say(Words.sentence(track.get().between().stream().map(Surface::id).collect(Collectors.joining(" or ")))
                    + " for most of the run?");
            return Next.ASK;
        }
        Optional<Aside> car = changing.isEmpty() ? Aside.car(typed, asked, debrief) : Optional.empty();
        Optional<Aside> aside = car.or(() -> Aside.of(typed, asked, debrief.run())
                .filter(it -> changing.isEmpty() || it.topic().field() != asked));
        if (aside.isPresent()) {
            return besides(aside.get());
        }
        try {
            return adding ? added(typed) : question.isEmpty() ? added(typed) : answer(typed);
        } catch (Reply.NoAnswer e) {
            if (!hedged || !e.askedBack().isEmpty() || adding) {
                return refused(typed, lower, e);
            }
            understanding.forget();
            echo.notUnderstood(List.of("not understood: \"" + typed + "\""));
            return unknown();
        }
    }

    /** Puts what is right in the place of what was told. */
    private Next instead(Corrections.Corrected corrected) {
        Report before = debrief.run().reports().get(corrected.topic().complaint());
        debrief.answer(corrected.topic(), corrected.answer(), said);
        List<Report> reports = debrief.run().reports();
        if (corrected.answer().groups().isEmpty()) {
            echo.hear("no " + before.text() + "; that is taken back");
        } else {
            String now = Stream.concat(Stream.of(reports.get(corrected.topic().complaint())),
                    reports.subList(reports.size() - corrected.answer().groups().size() + 1, reports.size()).stream())
                    .map(Report::text).collect(Collectors.joining("; "));
            echo.hear(now.equals(before.text()) ? now + ", as told before" : now + ", instead of " + before.text());
        }
        return goOn();
    }

    /** Takes back a question that was asked back, with what was heard of those words. */
    private Next unasked(List<Heard.Unclear> back) {
        echo.say("Taken back: \"" + back.get(0).words() + "\", which was not sure.");
        askedBack = back.subList(1, back.size());
        waiting = false;
        adding = false;
        return goOn() == Next.ADVISE ? Next.ADVISE : Next.ASK;
    }

    /** Takes what was said and not asked for just now, and then what was said with it. */
    private Next besides(Aside aside) {
        // Whoever names the driven wheels is asked for the kind of car among those that have them driven.
        boolean answers = question.filter(it -> it.topic().equals(aside.topic()) || !debrief.cars(it.topic()).isEmpty()
                && aside.topic().field() == Field.DRIVE).isPresent();
        if (aside.topic().field() == Field.DRIVE && aside.answer() instanceof Answer.OfCar car) {
            echo.hear(car.car().driven());
        } else {
            echo.measured(aside.topic().field() == Field.TRACK ? "track " : "", aside.answer(), aside.taken());
        }
        String text = echo.heard().orElseThrow();
        debrief.answer(aside.topic(), aside.answer(), said);
        if (aside.rest().isEmpty() || Commands.of(aside.rest().toLowerCase(Locale.ROOT)).equals(Optional.of("unknown"))) {
            return goOn();
        }
        if (answers) {
            question = debrief.next();
        }
        if (aside.topic().field() == Field.CIRCUIT && !TyreLine.figures(aside.rest()) && !understanding.complains(aside.rest())) {
            // What is said of a circuit besides is no complaint that somebody half told.
            echo.notUnderstood(List.of("not understood: \"" + aside.rest() + "\""));
            return goOn();
        }
        echo.begin();
        Next next = heard(aside.rest());
        echo.besides(text);
        if (next == Next.ASK && answers && askedBack.isEmpty()) {
            ask();
        }
        return next == Next.ASK ? Next.ANSWERED : next;
    }

    /** Takes the first of what was asked back about. */
    private Next meant(List<Heard.Unclear> back) {
        Answer answer = new Answer.InWords(Heard.of(back.get(0).mayBe().get(0)));
        understood(Understanding.Understood.of(answer));
        askedBack = back.subList(1, back.size());
        if (!waiting && !adding && question.filter(it -> debrief.cars(it.topic()).isEmpty()).isPresent()) {
            return answered(answer, back.get(0).words());
        }
        waiting = false;
        adding = false;
        debrief.answer(Topic.of(Field.DOING), answer, back.get(0).words());
        return goOn();
    }

    private Next notMeant(List<Heard.Unclear> back) {
        askedBack = back.subList(1, back.size());
        if (waiting) {
            waiting = false;
            return goOn();
        }
        if (!askedBack.isEmpty()) {
            asking.back(askedBack.get(0), echo.page());
            return Next.ASK;
        }
        echo.say("Then say it in other words, or unknown.");
        return Next.ASK;
    }

    /** Asks what comes next: what is not sure first. */
    private Next goOn() {
        if (!askedBack.isEmpty()) {
            waiting = true;
            asking.back(askedBack.get(0), echo.page());
            return Next.ANSWERED;
        }
        ask();
        return question.isEmpty() ? Next.ADVISE : Next.ANSWERED;
    }

    private Next refused(String typed, String lower, Reply.NoAnswer no) {
        if (!no.askedBack().isEmpty()) {
            askedBack = no.askedBack();
            echo.notUnderstood(no.besides());
            asking.back(askedBack.get(0), echo.page());
            return Next.ASK;
        }
        Optional<String> begun = Commands.begun(lower);
        if (begun.isPresent()) {
            return obey(begun.get());
        }
        Optional<String> near = no.meant().or(() -> Commands.near(lower));
        suggested = near;
        echo.say(no.meant().isPresent() || near.isEmpty() ? no.getMessage()
                : "\"" + typed + "\" is no answer here; did you mean " + near.get() + "? y takes it.");
        return Next.ASK;
    }

    private Next nothing() {
        if (question.isEmpty()) {
            return Next.ADVISE;
        }
        if (question.get().topic().field() == Field.TYRES && tyres.begun()) {
            return enough();
        }
        if (question.get().topic().field() == Field.ELSE && changing.isEmpty()) {
            return answered(new Answer.Nothing());
        }
        echo.say("Type an answer, or unknown; help tells what else.");
        return Next.ASK;
    }

    private Next obey(String command) {
        switch (command) {
            case "unknown" -> {
                return unknown();
            }
            case "why" -> question.ifPresentOrElse(it -> reasons.why(it, debrief, echo.page()),
                    () -> echo.say("Nothing is asked: no answer could change the first thing that is told."));
            case "so far" -> reasons.soFar(debrief, Revising.names(debrief.entries()), echo.page());
            case "back" -> {
                return back();
            }
            case "change" -> {
                return change("");
            }
            case "add" -> {
                adding = true;
                echo.say("What else did it do?");
            }
            case "eh" -> question.ifPresent(it -> asking.plainly(it, complaint(), echo.page()));
            case "done" -> {
                return Next.ADVISE;
            }
            case "quit" -> {
                return Next.LEAVE;
            }
            default -> Commands.help(echo.page());
        }
        return Next.ASK;
    }

    private Next answer(String typed) throws Reply.NoAnswer {
        Question asked = question.orElseThrow();
        Topic topic = asked.topic();
        if (topic.field() == Field.TYRES && (TyreLine.figures(typed) || tyres.begun())) {
            return figures(typed);
        }
        if (topic.field() == Field.TRACK && TyreLine.figures(typed)) {
            return answered(Reply.track(typed));
        }
        Understanding.Understood understood = understanding.of(asked, Asking.listed(asked), typed);
        if (understood.answer() instanceof Answer.Unknown) {
            echo.say(topic.field() == Field.TYRES ? "Heard: not read." : "That stays open.");
        } else {
            understood(understood);
        }
        if (!debrief.cars(topic).isEmpty() && understood.answer() instanceof Answer.InWords words) {
            // Somebody was asked about the car, and told what it did.
            debrief.answer(DriversWords.filed(topic, words.heard()), words, said);
            return goOn();
        }
        return answered(understood.answer());
    }

    private void understood(Understanding.Understood understood) {
        echo.understood(understood, question.filter(it -> it.topic().field() == Field.LOOK).isPresent());
        askedBack = understood.askedBack();
    }

    private Next add(String typed) {
        try {
            return added(typed);
        } catch (Reply.NoAnswer e) {
            adding |= !e.askedBack().isEmpty();
            return refused(typed, typed.toLowerCase(Locale.ROOT), e);
        }
    }

    /** Takes more of what the car did, whatever is asked just now. */
    private Next added(String typed) throws Reply.NoAnswer {
        Understanding.Understood understood = understanding.words(typed);
        adding = false;
        understood(understood);
        debrief.answer(Topic.of(Field.DOING), understood.answer(), said);
        changing = Optional.empty();
        if (goOn() == Next.ADVISE) {
            echo.say("Enter shows the advice with that.");
        }
        return Next.ANSWERED;
    }

    private Next figures(String typed) throws Reply.NoAnswer {
        if (TyreRound.enough(typed)) {
            return enough();
        }
        if (Reply.no(typed)) {
            return unknown();
        }
        TyreLine.Read read = tyres.take(typed, debrief.run().car());
        echo.measured("", new Answer.Read(read.tyres()), read.taken());
        if (tyres.left().isEmpty()) {
            return enough();
        }
        echo.say("The next tyre; Enter when that is all.");
        return Next.ASK;
    }

    /** What was read of the tyres is all there is. */
    private Next enough() {
        Answer answer = tyres.answer();
        String read = tyres.said();
        tyres.clear();
        return answered(answer, read);
    }

    /** Of the tyres, the first wheel's {@code unknown} says that nobody measured; a later one's, that wheel only. */
    private Next unknown() {
        adding = false;
        if (question.isEmpty()) {
            return nothing();
        }
        Field asked = question.get().topic().field();
        if (asked == Field.TYRES && tyres.begun()) {
            tyres.skip();
            return tyres.left().isEmpty() ? enough() : Next.ASK;
        }
        if (asked == Field.DOUBT) {
            return answered(new Answer.Chosen(Doubt.Choice.BOTH));
        }
        if (asked == Field.CAR || asked == Field.DRIVE) {
            echo.say(asked == Field.CAR ? UNKNOWN_KIND : Words.UNKNOWN_DRIVE);
        }
        return answered(asked == Field.ELSE ? new Answer.Nothing() : new Answer.Unknown());
    }

    private Next answered(Answer answer) {
        return answered(answer, said);
    }

    private Next answered(Answer answer, String words) {
        if (changing.isPresent()) {
            int before = debrief.entries().size();
            debrief.change(changing.get(), answer, words);
            if (debrief.entries().size() < before) {
                echo.say("What was answered after that and hangs on it is withdrawn with it.");
            }
            changing = Optional.empty();
        } else {
            Topic topic = question.orElseThrow().topic();
            debrief.answer(answer instanceof Answer.InWords own ? DriversWords.filed(topic, own.heard()) : topic, answer, words);
        }
        return goOn();
    }

    private Next back() {
        adding = false;
        if (tyres.back()) {
            echo.say("The last line of figures is taken back.");
            return Next.ASK;
        }
        if (changing.isPresent()) {
            changing = Optional.empty();
            ask();
            return Next.ASK;
        }
        List<Entry> entries = debrief.entries();
        if (!debrief.back()) {
            echo.say("This is the first question.");
            return Next.ASK;
        }
        int last = entries.size() - 1;
        echo.say("Taken back: " + Revising.names(entries).get(last) + Reasons.said(entries.get(last)) + ".");
        ask();
        return Next.ANSWERED;
    }

    private Next change(String what) {
        Optional<Integer> entry = Revising.entry(what, debrief.entries(), echo.page());
        if (entry.isPresent() && !debrief.entries().get(entry.get()).topic().field().isAsked()) {
            echo.say("That was told, not asked: say what is right, for instance no, understeer; or no, slow corners.");
        } else if (entry.isPresent()) {
            changing = entry;
            tyres.clear();
            ask();
        }
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
        return Offers.choices(question, debrief);
    }
}
