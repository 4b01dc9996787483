package camberwell.debrief;

import camberwell.saying.Heard;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What is said to "did you mean understeer at entry?": yes, no, or that the question is taken back. */
final class AskedBack {

    private final Course course;

    AskedBack(Course course) {
        this.course = course;
    }

    /** What comes of a line that answers what was asked back; empty where it says something else, or nothing was asked. */
    Optional<Talk.Next> reply(String line) {
        List<Heard.Unclear> back = course.askedBack;
        course.askedBack = List.of();
        if (back.isEmpty()) {
            return Optional.empty();
        }
        if (Reply.yes(line) || Reply.no(line)) {
            return Optional.of(Reply.yes(line) ? meant(back) : notMeant(back));
        }
        return Commands.of(line.strip().toLowerCase(Locale.ROOT)).equals(Optional.of("back"))
                ? Optional.of(unasked(back)) : Optional.empty();
    }

    /** Takes the first of what was asked back about. */
    private Talk.Next meant(List<Heard.Unclear> back) {
        Answer answer = new Answer.InWords(Heard.of(back.get(0).mayBe().get(0)));
        course.understood(Understanding.Understood.of(answer));
        course.askedBack = back.subList(1, back.size());
        if (!course.waiting && !course.adding
                && course.question.filter(it -> course.debrief.cars(it.topic()).isEmpty()).isPresent()) {
            return course.answered(answer, back.get(0).words());
        }
        course.waiting = false;
        course.adding = false;
        course.debrief.answer(Topic.of(Field.DOING), answer, back.get(0).words());
        return course.goOn();
    }

    private Talk.Next notMeant(List<Heard.Unclear> back) {
        course.askedBack = back.subList(1, back.size());
        if (course.waiting) {
            course.waiting = false;
            return course.goOn();
        }
        if (!course.askedBack.isEmpty()) {
            course.asking.back(course.askedBack.get(0), course.echo.page());
            return Talk.Next.ASK;
        }
        course.echo.say("Then say it in other words, or unknown.");
        return Talk.Next.ASK;
    }

    /** Takes back a question that was asked back, with what was heard of those words. */
    private Talk.Next unasked(List<Heard.Unclear> back) {
        course.echo.say("Taken back: \"" + back.get(0).words() + "\", which was not sure.");
        course.askedBack = back.subList(1, back.size());
        course.waiting = false;
        course.adding = false;
        return course.goOn() == Talk.Next.ADVISE ? Talk.Next.ADVISE : Talk.Next.ASK;
    }
}
