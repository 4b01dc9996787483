package camberwell.debrief;

import camberwell.report.Words;
import java.util.List;
import java.util.Optional;

/** Does what the words at the prompt say that are no answer: why, so far, back, change, unknown and the like. */
final class Orders {

    private static final String UNKNOWN_KIND = "Then the advice keeps to what every kind of car in this list "
            + "lets one adjust, and holds the tyres against no window of temperature.";

    private final Course course;
    private final Reasons reasons;

    Orders(Course course, Reasons reasons) {
        this.course = course;
        this.reasons = reasons;
    }

    /** Obeys one of the words of {@link Commands}. */
    Talk.Next obey(String command) {
        Echo echo = course.echo;
        switch (command) {
            case "unknown" -> {
                return unknown();
            }
            case "why" -> course.question.ifPresentOrElse(it -> reasons.why(it, course.debrief, echo.page()),
                    () -> echo.say("Nothing is asked: no answer could change the first thing that is told."));
            case "so far" -> reasons.soFar(course.debrief, Revising.names(course.debrief.entries()), echo.page());
            case "back" -> {
                return back();
            }
            case "change" -> {
                return change("");
            }
            case "add" -> {
                course.adding = true;
                echo.say("What else did it do?");
            }
            case "eh" -> course.question.ifPresent(it -> course.asking.plainly(it, course.complaint(), echo.page()));
            case "done" -> {
                return Talk.Next.ADVISE;
            }
            case "quit" -> {
                return Talk.Next.LEAVE;
            }
            default -> Commands.help(echo.page());
        }
        return Talk.Next.ASK;
    }

    /** What an empty line says: that this was all, where that may be. */
    Talk.Next nothing() {
        if (course.question.isEmpty()) {
            return Talk.Next.ADVISE;
        }
        Field asked = course.asked().orElseThrow();
        if (asked == Field.TYRES && course.tyres.begun()) {
            return course.enough();
        }
        if (asked == Field.ELSE && course.changing.isEmpty()) {
            return course.answered(new Answer.Nothing());
        }
        course.echo.say("Type an answer, or unknown; help tells what else.");
        return Talk.Next.ASK;
    }

    /** Of the tyres, the first wheel's {@code unknown} says that nobody measured; a later one's, that wheel only. */
    Talk.Next unknown() {
        course.adding = false;
        if (course.question.isEmpty()) {
            return nothing();
        }
        Field asked = course.asked().orElseThrow();
        if (asked == Field.TYRES && course.tyres.begun()) {
            course.tyres.skip();
            return course.tyres.left().isEmpty() ? course.enough() : Talk.Next.ASK;
        }
        if (asked == Field.DOUBT) {
            return course.answered(new Answer.Chosen(Doubt.Choice.BOTH));
        }
        if (asked == Field.CAR || asked == Field.DRIVE) {
            course.echo.say(asked == Field.CAR ? UNKNOWN_KIND : Words.UNKNOWN_DRIVE);
        }
        return course.answered(asked == Field.ELSE ? new Answer.Nothing() : new Answer.Unknown());
    }

    private Talk.Next back() {
        course.adding = false;
        if (course.tyres.back()) {
            course.echo.say("The last line of figures is taken back.");
            return Talk.Next.ASK;
        }
        if (course.changing.isPresent()) {
            course.changing = Optional.empty();
            course.ask();
            return Talk.Next.ASK;
        }
        List<Entry> entries = course.debrief.entries();
        if (!course.debrief.back()) {
            course.echo.say("This is the first question.");
            return Talk.Next.ASK;
        }
        int last = entries.size() - 1;
        course.echo.say("Taken back: " + Revising.names(entries).get(last) + Reasons.said(entries.get(last)) + ".");
        course.ask();
        return Talk.Next.ANSWERED;
    }

    /** Asks an earlier question anew, or lists what may be. */
    Talk.Next change(String what) {
        List<Entry> entries = course.debrief.entries();
        Optional<Integer> entry = Revising.entry(what, entries, course.echo.page());
        if (entry.isPresent() && !entries.get(entry.get()).topic().field().isAsked()) {
            course.echo.say("That was told, not asked: say what is right, for instance no, understeer; or no, slow corners.");
        } else if (entry.isPresent()) {
            course.changing = entry;
            course.tyres.clear();
            course.ask();
        }
        return Talk.Next.ASK;
    }
}
