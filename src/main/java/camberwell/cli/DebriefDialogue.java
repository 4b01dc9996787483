package camberwell.cli;

import camberwell.advice.Advice;
import camberwell.advice.RankedChange;
import camberwell.car.Car;
import camberwell.debrief.Answer;
import camberwell.debrief.Debrief;
import camberwell.debrief.Entry;
import camberwell.debrief.Field;
import camberwell.debrief.Outcome;
import camberwell.debrief.Phrases;
import camberwell.debrief.Question;
import camberwell.debrief.Reply;
import camberwell.debrief.Topic;
import camberwell.knowledge.Notes;
import camberwell.report.Page;
import camberwell.report.Words;
import camberwell.run.TyreReading;
import camberwell.units.Quantity;
import camberwell.vocabulary.Audience;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is said at the prompt of a debrief, and what comes back. It neither reads nor prints by itself. */
final class DebriefDialogue {

    private static final List<String> COMMANDS =
            List.of("unknown", "why", "so far", "back", "change", "help", "done", "quit");
    private static final String UNKNOWN_KIND = "Then the advice keeps to what every kind of car in this list "
            + "lets one adjust, and holds the tyres against no window of temperature.";
    private static final int SO_FAR = 5;
    private static final int SAMPLES = 8;
    private static final TyreReading UNREAD = new TyreReading(Optional.empty(), Optional.empty(), Optional.empty(),
            Optional.empty(), Optional.empty());

    /** What follows from a line that was typed. */
    enum Next {
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
    private final Notes notes;
    private final Audience audience;
    private final Supplier<Page> pages;
    private final Set<Word> explained = new HashSet<>();
    private final Map<Wheel, TyreReading> tyres = new EnumMap<>(Wheel.class);
    private Optional<Integer> changing = Optional.empty();
    private Optional<Question> question = Optional.empty();
    private Page page;

    DebriefDialogue(Debrief debrief, Notes notes, Audience audience, Supplier<Page> pages) {
        this.debrief = debrief;
        this.notes = notes;
        this.audience = audience;
        this.pages = pages;
        this.page = pages.get();
    }

    /** Everything that was said since it was last taken. */
    String take() {
        String text = page.toString();
        page = pages.get();
        return text;
    }

    /** Asks the question that is open now. */
    void ask() {
        question = changing.map(debrief::again).or(debrief::next);
        tyres.clear();
        page.blank();
        if (question.isEmpty()) {
            page.paragraph(0, "Nothing more to ask: no answer could put another change first. Press Enter for the "
                    + "advice; or back, change, so far.");
            return;
        }
        Topic topic = question.get().topic();
        page.paragraph(0, Phrases.question(topic, complaint(), audience));
        List<String> cars = cars(topic);
        if (!cars.isEmpty()) {
            for (int i = 0; i < cars.size(); i++) {
                page.numbered(1, i + 1, cars.get(i));
            }
            return;
        }
        if (listed().isEmpty()) {
            page.paragraph(2, Phrases.form(topic, debrief.run().car()));
            return;
        }
        choices(topic);
    }

    private void choices(Topic topic) {
        List<Word> listed = listed();
        boolean told = explained.containsAll(listed);
        boolean brief = switch (audience) {
            case ENGINEER -> true;
            case CLUB -> told || topic.field() == Field.DOING;
            case NEWCOMER -> told && topic.field() == Field.DOING;
        };
        if (brief) {
            page.columns(1, Stream.iterate(0, i -> i < listed.size(), i -> i + 1)
                    .map(i -> (i < 9 ? " " : "") + (i + 1) + "  " + spoken(listed.get(i))).toList());
            return;
        }
        for (int i = 0; i < listed.size(); i++) {
            Word word = listed.get(i);
            boolean fresh = explained.add(word);
            page.numbered(1, i + 1, audience == Audience.NEWCOMER && fresh && topic.field() == Field.DOING
                    ? word.felt() + " (" + spoken(word) + ")"
                    : spoken(word) + (fresh || audience == Audience.NEWCOMER && topic.field() != Field.DOING
                    ? ": " + word.felt() : ""));
        }
    }

    private String complaint() {
        return changing.map(entry -> debrief.entries().get(entry).complaint())
                .orElseGet(() -> debrief.complaint(question.orElseThrow().topic()));
    }

    private static String spoken(Word word) {
        return word.spoken();
    }

    private List<Word> listed() {
        return question.stream().flatMap(it -> it.choices().stream()).map(Question.Choice::answer)
                .filter(answer -> answer instanceof Answer.Said said && said.single())
                .map(answer -> ((Answer.Said) answer).groups().get(0).get(0)).toList();
    }

    /** The words that may stand where the prompt is, for completion. */
    List<String> completions() {
        List<String> words = new ArrayList<>();
        question.map(it -> it.topic().field()).ifPresent(field -> {
            field.words().forEach(word -> words.add(word.id()));
            cars(question.get().topic()).forEach(car -> words.add(id(car)));
            field.alongside().forEach(with -> with.words().forEach(word -> words.add(word.id())));
        });
        words.addAll(COMMANDS);
        debrief.entries().forEach(entry -> words.add("change " + entry.topic().field().id()));
        return words.stream().distinct().toList();
    }

    /** What stands before what is typed. */
    String prompt() {
        return question.filter(it -> it.topic().field() == Field.TYRES).map(it -> wheelsLeft().get(0).id() + "> ")
                .orElse("> ");
    }

    private List<Wheel> wheelsLeft() {
        return Stream.of(Wheel.values()).filter(wheel -> !tyres.containsKey(wheel)).toList();
    }

    /** Takes one line. */
    Next reply(String line) {
        String typed = line.strip();
        String lower = typed.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        if (typed.isEmpty()) {
            return question.isEmpty() ? Next.ADVISE : hint();
        }
        if (lower.equals("change") || lower.startsWith("change ")) {
            return change(lower.substring("change".length()).strip());
        }
        Optional<String> command = command(lower);
        if (command.isEmpty() && question.isPresent()) {
            try {
                return answer(typed);
            } catch (Reply.NoAnswer e) {
                command = begun(lower);
                if (command.isEmpty()) {
                    page.paragraph(0, Nearest.to(lower, COMMANDS)
                            .filter(near -> !e.getMessage().contains("did you mean"))
                            .map(near -> "\"" + typed + "\" is no answer here; did you mean " + near + "?")
                            .orElse(e.getMessage()));
                    return Next.ASK;
                }
            }
        }
        if (command.isEmpty()) {
            command = begun(lower);
        }
        if (command.isEmpty()) {
            return hint();
        }
        return obey(command.get());
    }

    private Next hint() {
        page.paragraph(0, question.isEmpty() ? "Press Enter for the advice; or type back, change, so far or quit."
                : "Type an answer, or unknown; help tells what else.");
        return Next.ASK;
    }

    private static Optional<String> command(String typed) {
        return switch (typed) {
            case "?" -> Optional.of("help");
            case "so-far", "sofar" -> Optional.of("so far");
            case "don't know", "dont know", "-" -> Optional.of("unknown");
            default -> COMMANDS.stream().filter(typed::equals).findFirst();
        };
    }

    private static Optional<String> begun(String typed) {
        List<String> begun = COMMANDS.stream().filter(command -> command.startsWith(typed)).toList();
        return begun.size() == 1 ? begun.stream().findFirst() : Optional.empty();
    }

    private Next obey(String command) {
        switch (command) {
            case "unknown" -> {
                return question.isEmpty() ? hint() : unknown();
            }
            case "why" -> why();
            case "so far" -> soFar();
            case "back" -> {
                return back();
            }
            case "change" -> {
                return change("");
            }
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
        Topic topic = question.orElseThrow().topic();
        return switch (topic.field()) {
            case CAR, DRIVE -> {
                List<String> names = cars(topic).stream().map(DebriefDialogue::id).toList();
                String name = Reply.words(typed, names, names, false).get(0);
                yield answered(new Answer.OfCar(debrief.cars(topic).get(names.indexOf(name))));
            }
            case TRACK -> answered(Reply.track(typed));
            case TYRES -> {
                tyres.putAll(Reply.tyres(typed, wheelsLeft(), debrief.run().car()));
                yield tyresSoFar();
            }
            default -> answered(Reply.said(typed, topic.field(), listed()));
        };
    }

    /** What the cars are called that may be chosen; none where the question is about something else. */
    private List<String> cars(Topic topic) {
        return debrief.cars(topic).stream().map(topic.field() == Field.DRIVE ? Car::driven : Car::name).toList();
    }

    private static String id(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }

    private Next tyresSoFar() {
        if (!wheelsLeft().isEmpty()) {
            return Next.ASK;
        }
        Map<Wheel, TyreReading> read = new LinkedHashMap<>(tyres);
        read.values().removeIf(tyre -> tyre.equals(UNREAD));
        return answered(read.isEmpty() ? new Answer.Unknown() : new Answer.Read(read));
    }

    /** Of the tyres, the first wheel's {@code unknown} says that nobody measured; a later one's, that wheel only. */
    private Next unknown() {
        if (question.orElseThrow().topic().field() == Field.TYRES && !tyres.isEmpty()) {
            tyres.put(wheelsLeft().get(0), UNREAD);
            return tyresSoFar();
        }
        Field asked = question.get().topic().field();
        if (asked == Field.CAR || asked == Field.DRIVE) {
            page.paragraph(0, asked == Field.CAR ? UNKNOWN_KIND : Words.UNKNOWN_DRIVE);
        }
        return answered(new Answer.Unknown());
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
        ask();
        return Next.ANSWERED;
    }

    private Next back() {
        if (!tyres.isEmpty() || changing.isPresent()) {
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

    private Next change(String what) {
        List<Entry> entries = debrief.entries();
        if (entries.isEmpty()) {
            page.paragraph(0, "Nothing is answered yet.");
            return Next.ASK;
        }
        List<String> names = names(entries);
        if (what.isEmpty()) {
            page.paragraph(0, "Which answer? Type change and its number or its word.");
            for (int i = 0; i < entries.size(); i++) {
                page.numbered(1, i + 1, names.get(i) + said(entries.get(i)));
            }
            return Next.ASK;
        }
        try {
            String name = Reply.words(what, names, names, false).get(0);
            changing = Optional.of(names.indexOf(name));
            ask();
        } catch (Reply.NoAnswer e) {
            page.paragraph(0, Nearest.to(what, names).map(near -> "Nothing was answered to \"" + what
                    + "\"; did you mean change " + near + "?").orElse("Nothing was answered to \"" + what
                    + "\" by itself; what was: " + String.join(", ", names) + "."));
        }
        return Next.ASK;
    }

    /** Each answer's word: the field, with a number where it was asked more than once. */
    private static List<String> names(List<Entry> entries) {
        List<String> names = new ArrayList<>();
        for (Entry entry : entries) {
            String id = entry.topic().field().id();
            int times = 1 + (int) names.stream().filter(name -> name.equals(id) || name.startsWith(id + "-")).count();
            names.add(times == 1 ? id : id + "-" + times);
        }
        return names;
    }

    private static String said(Entry entry) {
        return (entry.complaint().isEmpty() ? "" : " (" + entry.complaint() + ")") + ": " + text(entry.answer());
    }

    /** An answer in words. */
    static String text(Answer answer) {
        if (answer instanceof Answer.Said said) {
            return said.groups().stream()
                    .map(group -> group.stream().map(Word::spoken).collect(Collectors.joining(" ")))
                    .collect(Collectors.joining(", "));
        }
        if (answer instanceof Answer.OfCar chosen) {
            return chosen.car().name() + ", " + chosen.car().driven();
        }
        if (answer instanceof Answer.Measured measured) {
            return measured.quantity().toString();
        }
        if (answer instanceof Answer.Read read) {
            return read.tyres().entrySet().stream().map(wheel -> wheel.getKey().id() + " " + text(wheel.getValue()))
                    .collect(Collectors.joining("; "));
        }
        return "unknown";
    }

    private static String text(TyreReading tyre) {
        String tread = Stream.of(tyre.inner(), tyre.middle(), tyre.outer()).flatMap(Optional::stream)
                .map(figure -> figure.text(Quantity.decimalsOf(figure.value()))).collect(Collectors.joining(" / "));
        String pressure = Stream.of(tyre.coldPressure().map(it -> it + " cold"),
                        tyre.hotPressure().map(it -> it + " hot"))
                .flatMap(Optional::stream).collect(Collectors.joining(", "));
        return Stream.of(tread, pressure).filter(it -> !it.isEmpty()).collect(Collectors.joining(", "));
    }

    private void why() {
        if (question.isEmpty()) {
            page.paragraph(0, "Nothing is asked: no answer could put another change first.");
            return;
        }
        Question asked = question.get();
        if (!debrief.cars(asked.topic()).isEmpty()) {
            page.paragraph(0, "What a change does depends on which wheels are driven, and a car can only be changed "
                    + "where it can be adjusted.");
            return;
        }
        page.paragraph(0, "The answer decides what comes first. Now: " + first(asked.now()) + ".");
        Map<String, List<String>> byFirst = new LinkedHashMap<>();
        asked.choices().forEach(choice -> byFirst.computeIfAbsent(first(choice.outcome()), key -> new ArrayList<>())
                .add(choice.label().isEmpty() ? text(choice.answer()) : choice.label()));
        byFirst.forEach((first, answers) -> page.point(2, Words.sentence(first) + ", if: " + answers.stream()
                .limit(SAMPLES).collect(Collectors.joining("; ")) + (answers.size() > SAMPLES ? "; …" : "")));
        if (byFirst.size() == 1) {
            page.paragraph(0, "By itself no answer changes that; together with the answer to another question "
                    + "one may.");
        }
        if (audience == Audience.ENGINEER) {
            page.paragraph(0, "The answer is expected to tell " + Words.two(asked.gain()) + " bit of the ranking.");
        }
    }

    private static String first(Outcome outcome) {
        return outcome.first().map(Words::change).orElse("no change to the car");
    }

    private void soFar() {
        Advice advice = debrief.advice();
        List<Entry> entries = debrief.entries();
        List<String> names = names(entries);
        if (!entries.isEmpty()) {
            page.heading("Answered");
            for (int i = 0; i < entries.size(); i++) {
                page.point(0, names.get(i) + said(entries.get(i)));
            }
        }
        page.heading("Found so far");
        if (advice.findings().isEmpty()) {
            page.point(0, "nothing yet");
        }
        advice.findings().forEach(finding -> page.point(0, notes.get(finding.id()).statement() + " ("
                + Words.certainty(finding.certainty()) + ")"));
        page.heading("The ranking now");
        if (advice.changes().isEmpty()) {
            page.point(0, "no change to the car");
        }
        advice.changes().stream().limit(SO_FAR).forEach(change -> page.numbered(0, change.rank(), ranked(change)));
        if (advice.drivingFirst()) {
            page.point(0, "before all of them, for the driver: " + advice.driving().get(0).note().statement());
        }
        page.blank();
    }

    private static String ranked(RankedChange ranked) {
        return Words.change(ranked.change()) + ", score " + Words.two(ranked.score().total());
    }

    private void help() {
        page.paragraph(0, "Answer by number, by word or by the beginning of a word.");
        page.labelled(2, "unknown", "nobody knows; the next question comes");
        page.labelled(2, "why", "why this is asked, and what hangs on it");
        page.labelled(2, "so far", "the answers, what they show, and the ranking now");
        page.labelled(2, "back", "takes the last answer back");
        page.labelled(2, "change", "lists the answers; change PHASE asks that one again");
        page.labelled(2, "done", "the advice on what is known by now");
        page.labelled(2, "quit", "leaves without advice");
    }
}
