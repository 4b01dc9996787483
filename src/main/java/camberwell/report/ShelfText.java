package camberwell.report;

import camberwell.knowledge.Effect;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.knowledge.Term;
import camberwell.knowledge.Terms;
import java.util.stream.Collectors;

/** Notes and words of the trade, for reading. */
public final class ShelfText {

    private final Page page;

    /** @param page to write on */
    public ShelfText(Page page) {
        this.page = page;
    }

    /** Lists the names of all notes by kind. */
    public void names(Notes notes) {
        for (Note.Kind kind : Note.Kind.values()) {
            page.heading(Words.sentence(kind.folder()));
            page.paragraph(2, String.join(", ", notes.names(kind)));
        }
    }

    /** Writes a note from first to last. */
    public void note(Note note) {
        page.heading(note.title());
        page.paragraph(0, note.statement());
        if (!note.plain().isBlank()) {
            page.blank().paragraph(0, "In plain words: " + note.plain());
        }
        note.ways().forEach((direction, way) -> {
            page.heading(Words.sentence(direction.spoken()));
            page.paragraph(2, way.rationale());
            page.blank().paragraph(2, "In plain words: " + way.plain());
            page.blank();
            page.labelled(2, "Helps", effects(way, 1));
            page.labelled(2, "Costs", effects(way, -1));
            page.labelled(2, "Watch", way.watch());
            page.labelled(2, "Put back", way.putBack());
        });
        note.practice().ifPresent(practice -> {
            page.blank();
            page.labelled(0, "Try", practice.tryNext());
            page.labelled(0, "Feel", practice.feel());
            page.labelled(0, "Car or you", practice.carOrDriver());
        });
        page.blank();
        if (note.kind() == Note.Kind.ADJUSTMENT) {
            page.labelled(0, "Effort", note.effort() + " of 5");
            page.labelled(0, "Risk", note.risk() + " of 3");
        }
        variants(note);
        ExplainText.prose(note, page);
    }

    private static String effects(Note.Way way, int sign) {
        String effects = way.effects().stream().filter(effect -> effect.effect() * sign > 0)
                .map(ShelfText::effect).collect(Collectors.joining("; "));
        return effects.isEmpty() ? "nothing to speak of" : effects;
    }

    private static String effect(Effect effect) {
        StringBuilder text = new StringBuilder(effect.text());
        effect.when().words().forEach((matter, words) -> text.append(switch (matter) {
            case DRIVE -> " with " + String.join("- or ", words) + "-wheel drive";
            case SURFACE -> " on a " + String.join(" or ", words) + " track";
            default -> ", " + matter.id() + " " + String.join(" or ", words);
        }));
        return text + " (" + Words.signed(effect.effect()) + ")";
    }

    private void variants(Note note) {
        if (note.variants().isEmpty()) {
            return;
        }
        page.heading("Said otherwise");
        note.variants().forEach(variant -> page.point(0, variant.key() + variant.way().map(way -> " for " + way.id())
                .orElse("") + ", with " + variant.when().text() + ": " + variant.text()));
    }

    /** Lists all words by their headings. */
    public void words(Terms terms) {
        String group = "";
        for (Term term : terms.all()) {
            if (!term.group().equals(group)) {
                group = term.group();
                page.heading(Words.sentence(group));
            }
            page.point(0, term.name() + ": " + term.meaning());
        }
    }

    /** Writes one word, with its drawing where it has one. */
    public void word(Term term) {
        page.heading(term.name());
        page.paragraph(0, term.meaning());
        if (!term.drawing().isEmpty()) {
            page.blank();
            page.drawing(term.drawing());
        }
        if (!term.see().isEmpty()) {
            page.blank().paragraph(0, "See also: " + String.join(", ", term.see()));
        }
    }
}
