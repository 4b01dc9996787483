package camberwell.debrief;

import camberwell.knowledge.Notes;
import camberwell.report.Page;
import camberwell.report.Words;
import camberwell.run.Tried;
import camberwell.run.TyreReading;
import camberwell.saying.Heard;
import camberwell.saying.Listener;
import camberwell.units.Unit;
import camberwell.vocabulary.Audience;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** What is said at the prompt of a debrief, and what comes back. It neither reads nor prints by itself. */
public final class Talk {

    private static final List<String> COMMANDS =
            List.of("unknown", "why", "so far", "back", "change", "add", "help", "done", "quit");
    private static final Set<String> WHY = Set.of("why do you ask", "why do you ask that", "why do you want to know", "why that",
            "why is that", "why is that asked", "why do you need that", "what for", "what's that for", "does it matter");
    private static final Set<String> EH = Set.of("eh", "what", "huh", "pardon", "sorry", "come again", "what do you mean",
            "again", "i don't understand", "i dont understand", "i don't get it", "i dont get it", "say again", "repeat",
            "meaning", "what does that mean", "what is that", "no comprendo");
    private static final Set<String> ENOUGH = Set.of("that is all", "that's all", "thats all", "only the front", "front only",
            "only front", "rears unknown", "rear unknown", "only the rear", "rear only", "no more", "that is it");
    private static final String UNKNOWN_KIND = "Then the advice keeps to what every kind of car in this list "
            + "lets one adjust, and holds the tyres against no window of temperature.";
    private static final TyreReading UNREAD = new TyreReading(Optional.empty(), Optional.empty(), Optional.empty(),
            Optional.empty(), Optional.empty());

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
    private final Supplier<Page> pages;
    private final List<Map<Wheel, TyreReading>> tyres = new ArrayList<>();
    private Optional<Integer> changing = Optional.empty();
    private Optional<Question> question = Optional.empty();
    private Optional<String> suggested = Optional.empty();
    private Optional<String> heard = Optional.empty();
    /** What is asked back about, the first of it just now; none where nothing is. */
    private List<Heard.Unclear> askedBack = List.of();
    /** Whether the next question waits for what is answered to that. */
    private boolean waiting;
    private boolean adding;
    /** Whether it was said in which order a tread is read. */
    private boolean ordered;
    private Page page;

    /**
     * What is not needed for the first question is opened when it is.
     *
     * @param pages an empty page, as wide as the screen is at that moment
     */
    public Talk(Debrief debrief, Supplier<Listener> listener, Supplier<Notes> notes, Audience audience,
            Supplier<Page> pages) {
        this.debrief = debrief;
        this.understanding = new Understanding(debrief, listener);
        this.asking = new Asking(debrief, audience);
        this.reasons = new Reasons(notes, audience);
        this.pages = pages;
        this.page = pages.get();
    }

    /** Everything that was said since it was last taken. */
    public String take() {
        String text = page.toString();
        page = pages.get();
        return text;
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
        return heard;
    }

    /** Asks the question that is open now; says so when there is none. */
    public void ask() {
        question = changing.map(debrief::again).or(debrief::next);
        tyres.clear();
        page.blank();
        question.ifPresent(it -> asking.write(it, complaint(), page));
        ordered |= question.filter(it -> it.topic().field() == Field.TYRES).isPresent();
    }

    /** The words that may stand where the prompt is, for completion. */
    public List<String> completions() {
        List<String> words = new ArrayList<>();
        question.ifPresent(it -> {
            Field field = it.topic().field();
            debrief.cars(it.topic()).forEach(car -> words.add(Understanding.id(it.topic(), car)));
            field.words().forEach(word -> words.add(word.id()));
            it.topic().own().ifPresent(own -> words.addAll(own.answers().keySet()));
            field.alongside().forEach(with -> with.words().forEach(word -> words.add(word.id())));
            if (field == Field.SIMULATOR) {
                words.addAll(List.of("car", "simulator"));
            }
            if (field == Field.TYRES || field == Field.LOOK || field == Field.ELSE) {
                words.add("no");
            }
        });
        words.addAll(COMMANDS);
        debrief.entries().forEach(entry -> words.add("change " + entry.topic().name()));
        return words.stream().distinct().toList();
    }

    /** What stands before what is typed. */
    public String prompt() {
        return question.filter(it -> it.topic().field() == Field.TYRES && !tyres.isEmpty())
                .map(it -> wheelsLeft().get(0).id() + "> ").orElse("> ");
    }

    private Map<Wheel, TyreReading> read() {
        Map<Wheel, TyreReading> read = new EnumMap<>(Wheel.class);
        tyres.forEach(read::putAll);
        return read;
    }

    private List<Wheel> wheelsLeft() {
        return Stream.of(Wheel.values()).filter(wheel -> !read().containsKey(wheel)).toList();
    }

    /** Takes one line. */
    public Next reply(String line) {
        heard = Optional.empty();
        if (page.toString().isEmpty()) {
            // As wide as the screen is now, not as it was when the question was put.
            page = pages.get();
        }
        List<Heard.Unclear> back = askedBack;
        askedBack = List.of();
        if (!back.isEmpty() && (Reply.yes(line) || Reply.no(line))) {
            return Reply.yes(line) ? meant(back) : notMeant(back);
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
        if (lower.matches("change( \\S+)*") && changeable(lower)) {
            return change(lower.substring("change".length()).strip());
        }
        if (lower.matches("(add|also|and|plus|another thing)\\b.*") && !lower.matches("(add|also|and|plus)")) {
            return add(typed.replaceFirst("(?i)^(add|also|and|plus|another thing)\\b[:, ]*", ""));
        }
        List<Tried> tried = TriedWords.of(typed);
        // Where a complaint is told as well, what came of the change is a longer story.
        if (!tried.isEmpty() && !understanding.complains(typed)) {
            heard = Optional.of(TriedWords.told(tried));
            page.paragraph(0, "Heard: " + heard.get() + ".");
            debrief.tried(tried);
            return goOn();
        }
        Optional<String> command = command(lower);
        if (command.isPresent()) {
            return obey(command.get());
        }
        Field asked = changing.isEmpty() ? question.map(it -> it.topic().field()).orElse(Field.ELSE) : Field.SIMULATOR;
        Optional<Aside> aside = changing.isPresent() ? Optional.empty() : Aside.of(typed, asked, debrief.run().car());
        if (aside.isPresent()) {
            return besides(aside.get());
        }
        try {
            return adding ? added(typed) : question.isEmpty() ? added(typed) : answer(typed);
        } catch (Reply.NoAnswer e) {
            return hedged && e.askedBack().isEmpty() && !adding ? unknown() : refused(typed, lower, e);
        }
    }

    /** Takes what was said and not asked for just now, and then what was said with it. */
    private Next besides(Aside aside) {
        boolean answers = question.filter(it -> it.topic().equals(aside.topic())).isPresent();
        String text = (aside.topic().field() == Field.TRACK ? "track " : "") + Spoken.text(aside.answer());
        page.paragraph(0, "Heard: " + text + "." + taken(aside.answer(), aside.taken()));
        debrief.answer(aside.topic(), aside.answer());
        if (aside.rest().isEmpty() || command(aside.rest().toLowerCase(Locale.ROOT)).equals(Optional.of("unknown"))) {
            heard = Optional.of(text);
            return goOn();
        }
        if (answers) {
            question = debrief.next();
        }
        Next next = reply(aside.rest());
        heard = Optional.of(heard.map(said -> said + "; " + text).orElse(text));
        if (next == Next.ASK && answers && askedBack.isEmpty()) {
            ask();
        }
        return next == Next.ASK ? Next.ANSWERED : next;
    }

    /** What figures were taken for that nobody said: their units, and the order of a tread the first time. */
    private String taken(Answer answer, Set<Unit> units) {
        List<String> taken = new ArrayList<>(units.stream().map(Unit::symbol).toList());
        if (!ordered && answer instanceof Answer.Read read && read.tyres().values().stream().anyMatch(TyreReading::hasTread)) {
            taken.add("inner, middle, outer edge");
            ordered = true;
        }
        return taken.isEmpty() ? "" : " Taken as " + String.join(" and ", taken) + ".";
    }

    /** Takes the first of what was asked back about. */
    private Next meant(List<Heard.Unclear> back) {
        Answer answer = new Answer.InWords(Heard.of(back.get(0).mayBe().get(0)));
        echo(Understanding.Understood.of(answer));
        askedBack = back.subList(1, back.size());
        if (!waiting && !adding && question.isPresent()) {
            return answered(answer);
        }
        waiting = false;
        adding = false;
        debrief.answer(Topic.of(Field.DOING), answer);
        return goOn();
    }

    private Next notMeant(List<Heard.Unclear> back) {
        askedBack = back.subList(1, back.size());
        if (waiting) {
            waiting = false;
            return goOn();
        }
        if (!askedBack.isEmpty()) {
            asking.back(askedBack.get(0), page);
            return Next.ASK;
        }
        page.paragraph(0, "Then say it in other words, or unknown.");
        return Next.ASK;
    }

    /** Asks what comes next: what is not sure first. */
    private Next goOn() {
        if (!askedBack.isEmpty()) {
            waiting = true;
            asking.back(askedBack.get(0), page);
            return Next.ANSWERED;
        }
        ask();
        return question.isEmpty() ? Next.ADVISE : Next.ANSWERED;
    }

    private Next refused(String typed, String lower, Reply.NoAnswer no) {
        if (!no.askedBack().isEmpty()) {
            askedBack = no.askedBack();
            no.besides().forEach(words -> page.paragraph(0, Words.sentence(words) + "."));
            asking.back(askedBack.get(0), page);
            return Next.ASK;
        }
        Optional<String> begun = COMMANDS.stream().filter(it -> lower.length() > 1 && it.startsWith(lower)).findFirst();
        if (begun.isPresent()) {
            return obey(begun.get());
        }
        Optional<String> near = no.meant().or(() -> lower.length() < 3 ? Optional.empty() : Nearest.to(lower, COMMANDS));
        suggested = near;
        page.paragraph(0, no.meant().isPresent() || near.isEmpty() ? no.getMessage()
                : "\"" + typed + "\" is no answer here; did you mean " + near.get() + "? y takes it.");
        return Next.ASK;
    }

    private Next nothing() {
        if (question.isEmpty()) {
            return Next.ADVISE;
        }
        if (question.get().topic().field() == Field.TYRES && !tyres.isEmpty()) {
            return enough();
        }
        if (question.get().topic().field() == Field.ELSE && changing.isEmpty()) {
            return answered(new Answer.Nothing());
        }
        page.paragraph(0, "Type an answer, or unknown; help tells what else.");
        return Next.ASK;
    }

    private static Optional<String> command(String line) {
        String typed = line.length() > 1 ? line.replaceFirst("[?!. ]+$", "") : line;
        if (WHY.contains(typed) || EH.contains(typed)) {
            return Optional.of(WHY.contains(typed) ? "why" : "eh");
        }
        return switch (typed) {
            case "?", "h" -> Optional.of("help");
            case "so-far", "sofar" -> Optional.of("so far");
            case "don't know", "dont know", "not sure", "no idea", "dunno", "i don't know", "-" -> Optional.of("unknown");
            case "exit debrief", "bye", "q" -> Optional.of("quit");
            case "also", "and", "plus" -> Optional.of("add");
            default -> COMMANDS.stream().filter(typed::equals).findFirst();
        };
    }

    private Next obey(String command) {
        switch (command) {
            case "unknown" -> {
                return unknown();
            }
            case "why" -> question.ifPresentOrElse(it -> reasons.why(it, debrief, page),
                    () -> page.paragraph(0, "Nothing is asked: no answer could change the first thing that is told."));
            case "so far" -> reasons.soFar(debrief, names(), page);
            case "back" -> {
                return back();
            }
            case "change" -> {
                return change("");
            }
            case "add" -> {
                adding = true;
                page.paragraph(0, "What else did it do?");
            }
            case "eh" -> question.ifPresent(it -> asking.plainly(it, complaint(), page));
            case "done" -> {
                return Next.ADVISE;
            }
            case "quit" -> {
                return Next.LEAVE;
            }
            default -> help();
        }
        return Next.ASK;
    }

    private Next answer(String typed) throws Reply.NoAnswer {
        Question asked = question.orElseThrow();
        Topic topic = asked.topic();
        if (topic.field() == Field.TYRES && (TyreLine.figures(typed) || !tyres.isEmpty())) {
            return figures(typed);
        }
        if (topic.field() == Field.TRACK && TyreLine.figures(typed)) {
            return answered(Reply.track(typed));
        }
        Understanding.Understood understood = understanding.of(asked, Asking.listed(asked), typed);
        if (understood.answer() instanceof Answer.Unknown) {
            page.paragraph(0, topic.field() == Field.TYRES ? "Heard: not read." : "That stays open.");
        } else {
            echo(understood);
        }
        if (!debrief.cars(topic).isEmpty() && understood.answer() instanceof Answer.InWords words) {
            // Somebody was asked about the car, and told what it did.
            debrief.answer(Topic.of(words.heard().told().isEmpty() ? Field.SURFACE : Field.DOING), words);
            return goOn();
        }
        return answered(understood.answer());
    }

    private void echo(Understanding.Understood understood) {
        boolean look = question.filter(it -> it.topic().field() == Field.LOOK).isPresent();
        heard = Optional.of(look && understood.answer() instanceof Answer.Nothing ? "nothing shows"
                : Spoken.text(understood.answer()));
        page.paragraph(0, "Heard: " + heard.get() + ".");
        understood.besides().forEach(words -> page.paragraph(0, Words.sentence(words) + "."));
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
        echo(understood);
        debrief.answer(Topic.of(Field.DOING), understood.answer());
        changing = Optional.empty();
        if (goOn() == Next.ADVISE) {
            page.paragraph(0, "Enter shows the advice with that.");
        }
        return Next.ANSWERED;
    }

    private Next figures(String typed) throws Reply.NoAnswer {
        String lower = typed.toLowerCase(Locale.ROOT);
        if (ENOUGH.contains(lower.replaceAll("[.!]$", ""))) {
            return enough();
        }
        if (Reply.no(typed)) {
            return unknown();
        }
        TyreLine.Read read = TyreLine.of(typed, wheelsLeft(), debrief.run().car());
        tyres.add(read.tyres());
        heard = Optional.of(Spoken.text(new Answer.Read(read.tyres())));
        page.paragraph(0, "Heard: " + heard.get() + "." + taken(new Answer.Read(read.tyres()), read.taken()));
        if (wheelsLeft().isEmpty()) {
            return enough();
        }
        page.paragraph(0, "The next tyre; Enter when that is all.");
        return Next.ASK;
    }

    /** What was read of the tyres is all there is. */
    private Next enough() {
        Map<Wheel, TyreReading> read = new LinkedHashMap<>(read());
        read.values().removeIf(tyre -> tyre.equals(UNREAD));
        return answered(read.isEmpty() ? new Answer.Unknown() : new Answer.Read(read));
    }

    /** Of the tyres, the first wheel's {@code unknown} says that nobody measured; a later one's, that wheel only. */
    private Next unknown() {
        adding = false;
        if (question.isEmpty()) {
            return nothing();
        }
        Field asked = question.get().topic().field();
        if (asked == Field.TYRES && !tyres.isEmpty()) {
            tyres.add(Map.of(wheelsLeft().get(0), UNREAD));
            return wheelsLeft().isEmpty() ? enough() : Next.ASK;
        }
        if (asked == Field.DOUBT) {
            return answered(new Answer.Chosen(Doubt.Choice.BOTH));
        }
        if (asked == Field.CAR || asked == Field.DRIVE) {
            page.paragraph(0, asked == Field.CAR ? UNKNOWN_KIND : Words.UNKNOWN_DRIVE);
        }
        return answered(asked == Field.ELSE ? new Answer.Nothing() : new Answer.Unknown());
    }

    private Next answered(Answer answer) {
        if (changing.isPresent()) {
            int before = debrief.entries().size();
            debrief.change(changing.get(), answer);
            if (debrief.entries().size() < before) {
                page.paragraph(0, "What was answered after that and hangs on it is withdrawn with it.");
            }
            changing = Optional.empty();
        } else {
            debrief.answer(question.orElseThrow().topic(), answer);
        }
        return goOn();
    }

    private Next back() {
        adding = false;
        if (!tyres.isEmpty()) {
            tyres.remove(tyres.size() - 1);
            page.paragraph(0, "The last line of figures is taken back.");
            return Next.ASK;
        }
        if (changing.isPresent()) {
            changing = Optional.empty();
            ask();
            return Next.ASK;
        }
        if (!debrief.back()) {
            page.paragraph(0, "This is the first question.");
            return Next.ASK;
        }
        ask();
        return Next.ANSWERED;
    }

    /** Whether "change ..." is the command: the words of a complaint may begin so, as "change of direction is slow". */
    private boolean changeable(String typed) {
        String what = typed.substring("change".length()).strip();
        return what.isEmpty() || what.chars().allMatch(Character::isDigit) || names().contains(what.replace(' ', '-'))
                || what.indexOf(' ') < 0;
    }

    private Next change(String what) {
        List<Entry> entries = debrief.entries();
        if (entries.isEmpty()) {
            page.paragraph(0, "Nothing is answered yet.");
            return Next.ASK;
        }
        List<String> names = names();
        if (what.isEmpty()) {
            page.paragraph(0, "Which answer? Type change and its number or its word.");
            for (int i = 0; i < entries.size(); i++) {
                page.numbered(1, i + 1, names.get(i) + Reasons.said(entries.get(i)));
            }
            return Next.ASK;
        }
        try {
            List<String> numbered = Reply.numbered(what, names);
            changing = Optional.of(names.indexOf(numbered.isEmpty() ? Reply.begun(what, names) : numbered.get(0)));
            ask();
        } catch (Reply.NoAnswer e) {
            page.paragraph(0, Nearest.to(what, names).map(near -> "Nothing was answered to \"" + what
                    + "\"; did you mean change " + near + "?").orElse("Nothing was answered to \"" + what
                    + "\" by itself; what was: " + String.join(", ", names) + "."));
        }
        return Next.ASK;
    }

    /** Each answer's word: the field, with a number where it was asked more than once. */
    private List<String> names() {
        List<String> names = new ArrayList<>();
        for (Entry entry : debrief.entries()) {
            String id = entry.topic().name();
            int times = 1 + (int) names.stream().filter(name -> name.equals(id) || name.startsWith(id + "-")).count();
            names.add(times == 1 ? id : id + "-" + times);
        }
        return names;
    }

    /** What was asked and answered, a line each: the question, and the answer. */
    public List<Map.Entry<String, String>> written(Audience audience) {
        List<Map.Entry<String, String>> written = new ArrayList<>();
        for (Entry entry : debrief.entries()) {
            written.add(Map.entry(Phrases.question(entry.topic(), entry.complaint(), audience),
                    Spoken.text(entry.answer())));
        }
        return written;
    }

    /** The words that may be chosen now, as a program would show them. */
    public List<String> choices() {
        return question.stream().flatMap(it -> debrief.cars(it.topic()).isEmpty()
                ? Asking.listed(it).stream().map(Word::id)
                : debrief.cars(it.topic()).stream().map(car -> Understanding.id(it.topic(), car))).toList();
    }

    private void help() {
        page.paragraph(0, "Answer in your own words, by number or by a word of the list; a complaint, the place, the day, how "
                + "often and what was read of the tyres may be said at any time.");
        page.labelled(2, "unknown", "nobody knows; the next question comes");
        page.labelled(2, "why", "why this is asked, and what hangs on it");
        page.labelled(2, "so far", "the answers, what they show, and the ranking now");
        page.labelled(2, "back", "takes the last answer back");
        page.labelled(2, "change", "lists the answers; change PHASE asks that one again");
        page.labelled(2, "add", "one more thing that the car did: add bottoming over the crest");
        page.labelled(2, "done", "the advice on what is known by now");
        page.labelled(2, "quit", "leaves without advice");
    }
}
