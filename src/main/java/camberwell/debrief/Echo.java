package camberwell.debrief;

import camberwell.report.Page;
import camberwell.report.Words;
import camberwell.run.TyreReading;
import camberwell.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** What is said back to a line: what was heard of it, for what it was taken, and what was not understood. */
final class Echo {

    private final Supplier<Page> pages;
    private Page page;
    private Optional<String> heard = Optional.empty();
    /** Whether it was said in which order a tread is read. */
    private boolean ordered;

    /** @param pages an empty page, as wide as the screen is at that moment */
    Echo(Supplier<Page> pages) {
        this.pages = pages;
        this.page = pages.get();
    }

    /** The page that is written on. */
    Page page() {
        return page;
    }

    /** Everything that was said since it was last taken. */
    String take() {
        String text = page.toString();
        page = pages.get();
        return text;
    }

    /** Begins to answer a line, on a page as wide as the screen is now, not as it was when the question was put. */
    void begin() {
        heard = Optional.empty();
        if (page.toString().isEmpty()) {
            page = pages.get();
        }
    }

    /** Says something. */
    void say(String text) {
        page.paragraph(0, text);
    }

    /** What was understood of the last line; empty where it was no answer. */
    Optional<String> heard() {
        return heard;
    }

    /** Says what was heard. */
    void hear(String text) {
        hear(text, "");
    }

    private void hear(String text, String taken) {
        heard = Optional.of(text);
        say("Heard: " + text + "." + taken);
    }

    /** The same of the line that what was heard just now is the rest of. */
    void besides(String text) {
        heard = Optional.of(heard.map(said -> said.contains(text) ? said : said + "; " + text).orElse(text));
    }

    /**
     * Says what was understood, and what was not.
     *
     * @param look whether it was asked how the tyres look
     */
    void understood(Understanding.Understood understood, boolean look) {
        hear(look && understood.answer() instanceof Answer.Nothing ? "nothing shows" : Spoken.text(understood.answer()));
        notUnderstood(understood.besides());
    }

    /** Says what was not understood. */
    void notUnderstood(List<String> besides) {
        besides.forEach(words -> say(Words.sentence(words) + "."));
    }

    /** From here on it is known in which order a tread is read. */
    void order() {
        ordered = true;
    }

    /** Says what was measured, and for what figures were taken that nobody said: their units, once the order of a tread. */
    void measured(String before, Answer answer, Set<Unit> units) {
        List<String> taken = new ArrayList<>(units.stream().map(Unit::symbol).toList());
        if (!ordered && answer instanceof Answer.Read read && read.tyres().values().stream().anyMatch(TyreReading::hasTread)) {
            taken.add("inner, middle, outer edge");
            ordered = true;
        }
        hear(before + Spoken.text(answer), taken.isEmpty() ? "" : " Taken as " + String.join(" and ", taken) + ".");
    }
}
