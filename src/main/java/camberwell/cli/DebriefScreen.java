package camberwell.cli;

import camberwell.debrief.Debrief;
import camberwell.debrief.Ending;
import camberwell.debrief.Phrases;
import camberwell.debrief.Talk;
import camberwell.input.CaseReader;
import camberwell.problem.ProblemsException;
import camberwell.report.Page;
import camberwell.run.Case;
import camberwell.vocabulary.Audience;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;

/** A debrief on a screen: the talk, the advice with its card last, and what may be asked after that. */
final class DebriefScreen {

    private final Console console;
    private final Debrief debrief;
    private final Talk talk;
    private final Ending ending;
    private final AskedAfter asked;
    private final Keeping keeping;
    private final Prompter prompter;
    private final BiConsumer<Debrief, Page> advice;
    /** Writes the page to take home; says what became of it. */
    private final Function<String, String> sheet;
    private final Patience patience;
    private boolean advised;
    private boolean stale = true;

    DebriefScreen(Console console, Debrief debrief, Talk talk, Ending ending, Keeping keeping, Prompter prompter,
            BiConsumer<Debrief, Page> advice, Function<String, String> sheet) {
        this.console = console;
        this.debrief = debrief;
        this.talk = talk;
        this.ending = ending;
        this.asked = new AskedAfter(ending);
        this.keeping = keeping;
        this.prompter = prompter;
        this.advice = advice;
        this.sheet = sheet;
        this.patience = new Patience(console);
    }

    /** Whether the advice that is last on the screen is the advice on all that was said. */
    boolean advised() {
        return advised && !stale;
    }

    /** @param meanwhile what to begin on another core while somebody thinks about the first answer */
    void run(Runnable meanwhile) throws IOException {
        talk.ask();
        if (talk.question().isEmpty()) {
            advise();
        }
        boolean begun = false;
        while (true) {
            console.out().print(talk.take());
            if (!begun) {
                console.out().flush();
                meanwhile.run();
                begun = true;
            }
            debrief.thinkAhead();
            Optional<String> line = prompter.line(talk.prompt());
            if (line.isEmpty()) {
                if (!console.interactive() && stale) {
                    advise();
                }
                return;
            }
            String typed = line.get().strip();
            if (advised && !stale && talk.askedBack().isEmpty() && Ending.leaves(typed)) {
                return;
            }
            if (talk.askedBack().isEmpty() && (advised ? after(typed) : early(typed))) {
                patience.took(false);
                continue;
            }
            Case before = debrief.run();
            Talk.Next next = talk.reply(typed);
            patience.took(!debrief.run().equals(before));
            switch (next) {
                case ANSWERED -> changed();
                case ADVISE -> {
                    changed();
                    console.out().print(talk.take());
                    advise();
                }
                case LEAVE -> {
                    return;
                }
                // Nothing new is known.
                case ASK -> { }
            }
        }
    }

    private void changed() {
        stale = true;
        if (debrief.entries().isEmpty()) {
            return;
        }
        // A talk in a terminal that is closed, or a process that is killed, loses no answer.
        if (console.interactive() && keeping.file().isEmpty()) {
            keeping.rescue(debrief.run());
        }
        keeping.keep(debrief.run());
    }

    private Page page() {
        return new Page(prompter.width(), console.styled());
    }

    private void advise() {
        Page page = page();
        String taken = Phrases.taken(debrief.takenUnseen(), Audience.CLUB);
        if (!taken.isEmpty() && !debrief.run().reports().isEmpty()) {
            page.blank().paragraph(0, "Taken without being said: " + taken + ".");
        }
        advice.accept(debrief, page);
        ending.card(page);
        if (console.interactive()) {
            page.blank().paragraph(0,
                    "Ask why, why not camber, explain, or what if it was wet; add more, sheet FILE, save FILE, "
                    + "another car FILE; Enter ends.");
        }
        console.out().println();
        console.out().print(page);
        advised = true;
        stale = false;
    }

    /** What may be asked of the advice on what is known by now; false where it is something else. */
    private boolean early(String typed) {
        Page page = page().blank();
        boolean told = asked.early(typed, page);
        if (told) {
            console.out().print(page);
        }
        return told;
    }

    /** What may be asked once the advice is given; false where it is something else. */
    private boolean after(String typed) {
        String lower = typed.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        Page page = page().blank();
        if (asked.of(typed, page)) {
            // Told.
        } else if (lower.startsWith("save")) {
            save(typed.substring("save".length()).strip(), page);
        } else if (lower.equals("sheet") || lower.startsWith("sheet ")) {
            String file = typed.substring("sheet".length()).strip();
            page.paragraph(0, file.isEmpty() ? "Where? sheet FILE, for instance sheet friday.html." : sheet.apply(file));
        } else if (lower.startsWith("another car")) {
            return anotherCar(typed.substring("another car".length()).strip());
        } else {
            return false;
        }
        console.out().print(page);
        return true;
    }

    private void save(String file, Page page) {
        if (file.isEmpty() && keeping.file().isEmpty()) {
            page.paragraph(0, "Where? save FILE, for instance save friday.yaml.");
            return;
        }
        String name = file.isEmpty() ? keeping.file().get() : file;
        keeping.moveTo(name, debrief.run()).ifPresentOrElse(wrong -> page.paragraph(0, name + ": " + wrong + "."),
                () -> page.paragraph(0, "Saved: " + name));
    }

    private boolean anotherCar(String file) {
        if (file.isEmpty()) {
            console.out().println("Which? another car FILE.");
            return true;
        }
        try {
            debrief.change(new CaseReader().readCar(console.path(file)), console.path(file).toString());
            changed();
            talk.ask();
            if (talk.question().isEmpty()) {
                advise();
            }
        } catch (ProblemsException e) {
            e.problems().forEach(problem -> console.out().println(console.shown(problem.text())));
        }
        return true;
    }

    /** Says where everything is kept. */
    void close() {
        keeping.settle(debrief.run());
        if (keeping.kept()) {
            console.out().println();
            keeping.number().ifPresent(number -> console.out().println("Entered as run " + number
                    + "; laps can be added in its file, and camberwell runs undo takes it out."));
            console.out().println("Saved: " + keeping.file().orElseThrow() + (advised() ? ""
                    : "; go on with --resume " + keeping.file().orElseThrow()));
        }
        console.out().flush();
    }
}
