package camberwell.debrief;

import camberwell.report.Page;
import camberwell.saying.Heard;
import camberwell.vocabulary.Audience;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** How a talk goes on: the question that is open, what is asked back about before it, and what is asked next. */
final class Course {

    final Debrief debrief;
    final Asking asking;
    final Echo echo;
    final TyreRound tyres = new TyreRound();
    /** Which entry is asked anew; empty where none is. */
    Optional<Integer> changing = Optional.empty();
    Optional<Question> question = Optional.empty();
    /** What is asked back about, the first of it just now; none where nothing is. */
    List<Heard.Unclear> askedBack = List.of();
    /** Whether the next question waits for what is answered to that. */
    boolean waiting;
    /** Whether it was asked what else the car did. */
    boolean adding;
    /** What was typed last. */
    String said = "";

    Course(Debrief debrief, Audience audience, Supplier<Page> pages) {
        this.debrief = debrief;
        this.asking = new Asking(debrief, audience);
        this.echo = new Echo(pages);
    }

    /** What the question that is open is about. */
    Optional<Field> asked() {
        return question.map(it -> it.topic().field());
    }

    /** The same in words; empty for the whole car. */
    String complaint() {
        return changing.map(entry -> debrief.entries().get(entry).complaint())
                .orElseGet(() -> question.map(it -> debrief.complaint(it.topic())).orElse(""));
    }

    /** Asks the question that is open now; says so when there is none. */
    void ask() {
        question = changing.map(debrief::again).or(debrief::next);
        echo.page().blank();
        question.ifPresent(it -> asking.write(it, complaint(), echo.page()));
        asked().filter(Field.TYRES::equals).ifPresent(it -> echo.order());
    }

    /** Asks what comes next: what is not sure first. */
    Talk.Next goOn() {
        if (!askedBack.isEmpty()) {
            waiting = true;
            asking.back(askedBack.get(0), echo.page());
            return Talk.Next.ANSWERED;
        }
        ask();
        return question.isEmpty() ? Talk.Next.ADVISE : Talk.Next.ANSWERED;
    }

    /** Says what was understood, and remembers what is to be asked back about. */
    void understood(Understanding.Understood understood) {
        echo.understood(understood, asked().filter(Field.LOOK::equals).isPresent());
        askedBack = understood.askedBack();
    }

    /** Takes an answer to the question that is open, as it was typed last. */
    Talk.Next answered(Answer answer) {
        return answered(answer, said);
    }

    /** Takes an answer to the question that is open. */
    Talk.Next answered(Answer answer, String words) {
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

    /** What was read of the tyres is all there is. */
    Talk.Next enough() {
        Answer answer = tyres.answer();
        String read = tyres.said();
        tyres.clear();
        return answered(answer, read);
    }
}
