package camberwell.cli;

import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.language.Names;
import camberwell.language.Stage;
import camberwell.pack.RulePack;
import camberwell.vocabulary.Nearest;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** The questions for the note of one rule. */
final class NewNote {

    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]*");
    private static final String NO_SOURCE = "common practice, no source";

    private final String rule;
    private final Stage stage;
    private final Notes notes;
    private final Names names;
    private final Dialogue dialogue;

    /** @param rule the rule's name */
    NewNote(String rule, Stage stage, Notes notes, Names names, Dialogue dialogue) {
        this.rule = rule;
        this.stage = stage;
        this.notes = notes;
        this.names = names;
        this.dialogue = dialogue;
    }

    /**
     * The name of the note that the rule points to: a new one of its own, unless one that is there is named.
     *
     * @param own what it is called where it is new
     */
    String name(String own) {
        return dialogue.ask("Knowledge note (empty for a new one, " + own + "):", answer -> {
            String said = answer.isEmpty() ? own : answer;
            if (names.hasNote(said) || NAME.matcher(said).matches() && Nearest.to(said, notes.names()).isEmpty()) {
                return Optional.of(said);
            }
            dialogue.say("There is no note \"" + said + "\"" + Nearest.to(said, notes.names())
                    .map(near -> "; did you mean \"" + near + "\"?").orElse(""));
            return Optional.empty();
        });
    }

    /** A note of one's own beside a change tells of a cause: the adjusters have theirs. */
    private Note.Kind kind() {
        return switch (stage) {
            case READINGS -> Note.Kind.READING;
            case CAUSES, CHANGES -> Note.Kind.CAUSE;
            case CAUTIONS -> Note.Kind.CAUTION;
            case DRIVING -> Note.Kind.DRIVING;
        };
    }

    /** By its path in the folder, the text of the note {@code note}, which is asked for. */
    Map.Entry<String, String> written(String note, String because) {
        return Map.entry(RulePack.NOTES + "/" + kind().folder() + "/" + note + ".md", text(because));
    }

    private String text(String because) {
        String title = dialogue.text("The note's title (empty for the rule's name):", plain(rule));
        String statement = dialogue.text("In one sentence, what is going on (empty for the reason above)?", plain(because));
        StringBuilder note = new StringBuilder("---\n");
        entry("title", title, note);
        entry("kind", kind().id(), note);
        entry("statement", statement, note);
        if (kind() != Note.Kind.CAUTION) {
            entry("plain", dialogue.text("The same for a newcomer (empty for the same words):", statement), note);
        }
        if (kind() == Note.Kind.DRIVING) {
            entry("try", dialogue.text("What to do on the next lap?", ""), note);
            entry("feel", dialogue.text("What does it feel like when it works?", ""), note);
            entry("car-or-driver", dialogue.text("How to tell the driver from the car?", ""), note);
        }
        String source = dialogue.text("Who says so? A published source (empty for: " + NO_SOURCE + "):", NO_SOURCE);
        note.append("sources:\n  - ").append(quoted(source)).append("\n---\n").append(plain(because)).append('\n');
        return note.toString();
    }

    /** Without the gap that stands for either end. */
    private static String plain(String text) {
        return text.replaceAll(" ?\\{[^}]*}", "");
    }

    private static void entry(String key, String text, StringBuilder note) {
        note.append(key).append(": ").append(quoted(text)).append('\n');
    }

    private static String quoted(String text) {
        return "'" + text.replace("'", "''") + "'";
    }
}
