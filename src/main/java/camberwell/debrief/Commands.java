package camberwell.debrief;

import camberwell.report.Page;
import camberwell.vocabulary.Nearest;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The words at the prompt that are no answer: why, back, unknown and the like, and how people say them. */
final class Commands {

    static final List<String> WORDS = List.of("unknown", "why", "so far", "back", "change", "add", "help", "done", "quit");
    private static final Set<String> WHY = Set.of("why do you ask", "why do you ask that", "why do you want to know", "why that",
            "why is that", "why is that asked", "why do you need that", "what for", "what's that for", "does it matter");
    private static final Set<String> EH = Set.of("eh", "what", "huh", "pardon", "sorry", "come again", "what do you mean",
            "again", "i don't understand", "i dont understand", "i don't get it", "i dont get it", "say again", "repeat",
            "meaning", "what does that mean", "what is that", "no comprendo");

    private Commands() {
    }

    /** The command that a line is, in small letters: one of {@link #WORDS}, or {@code eh}. */
    static Optional<String> of(String line) {
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
            default -> WORDS.stream().filter(typed::equals).findFirst();
        };
    }

    /** The one that begins so; of one letter nothing is made. */
    static Optional<String> begun(String lower) {
        return WORDS.stream().filter(it -> lower.length() > 1 && it.startsWith(lower)).findFirst();
    }

    /** The one that was most likely meant. */
    static Optional<String> near(String lower) {
        return lower.length() < 3 ? Optional.empty() : Nearest.to(lower, WORDS);
    }

    /** Tells what may be typed. */
    static void help(Page page) {
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
