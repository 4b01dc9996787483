package camberwell.advice;

import camberwell.knowledge.Note;
import camberwell.vocabulary.Change;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What another set of rules does to the advice on one case.
 *
 * @param changes those that appeared, vanished, moved in the order, or are sized differently; the rest is left out
 * @param driving names of driving notes that appeared or vanished
 * @param cautions names of cautions that appeared or vanished
 * @param texts what is said in other words of what stands on both sides
 */
public record AdviceComparison(List<ChangeDifference> changes, List<NoteDifference> driving,
        List<NoteDifference> cautions, List<TextDifference> texts) {

    /**
     * A text of a change or a note that reads otherwise now.
     *
     * @param of the change, or the note's name
     * @param part which of its texts: {@code why}, {@code behind it}, {@code watch}, {@code put back}, {@code text}
     */
    public record TextDifference(String of, String part, String before, String after) {
    }

    /**
     * A change in both advices, before and after.
     *
     * @param before its place before; empty when it was not advised
     * @param after its place now; empty when it is not advised any more
     * @param withheld why it is not advised any more, when the new rules say so
     */
    public record ChangeDifference(Change change, Optional<RankedChange> before, Optional<RankedChange> after,
            Optional<String> withheld) {
    }

    /** A note that is shown now and was not, or the other way round. */
    public record NoteDifference(String note, boolean appeared) {
    }

    /** Compares two advices on the same case. */
    public static AdviceComparison of(Advice before, Advice after) {
        Map<Change, RankedChange> was = byChange(before);
        Map<Change, RankedChange> is = byChange(after);
        List<ChangeDifference> changes = new ArrayList<>();
        Map<Change, RankedChange> both = new TreeMap<>(was);
        both.putAll(is);
        for (Change change : both.keySet()) {
            Optional<RankedChange> old = Optional.ofNullable(was.get(change));
            Optional<RankedChange> now = Optional.ofNullable(is.get(change));
            boolean same = old.isPresent() && now.isPresent() && old.get().rank() == now.get().rank()
                    && old.get().size().goesAsFarAs(now.get().size());
            if (!same) {
                changes.add(new ChangeDifference(change, old, now, after.withheld().stream()
                        .filter(withheld -> withheld.change().equals(change)).map(Withheld::reason).findFirst()));
            }
        }
        return new AdviceComparison(List.copyOf(changes),
                notes(before.driving().stream().map(DrivingAdvice::note).toList(),
                        after.driving().stream().map(DrivingAdvice::note).toList()),
                notes(before.cautions(), after.cautions()), texts(before, after));
    }

    private static List<TextDifference> texts(Advice before, Advice after) {
        List<TextDifference> texts = new ArrayList<>();
        Map<Change, RankedChange> is = byChange(after);
        byChange(before).forEach((change, was) -> {
            RankedChange now = is.get(change);
            if (now != null) {
                text(change.id(), "why", was.why(), now.why(), texts);
                text(change.id(), "behind it", was.way().rationale(), now.way().rationale(), texts);
                text(change.id(), "watch", was.way().watch(), now.way().watch(), texts);
                text(change.id(), "put back", was.way().putBack(), now.way().putBack(), texts);
            }
        });
        byName(before).forEach((name, was) -> {
            Note now = byName(after).get(name);
            if (now != null) {
                text(name, "title", was.title(), now.title(), texts);
                text(name, "text", said(was), said(now), texts);
            }
        });
        return List.copyOf(texts);
    }

    private static String said(Note note) {
        return String.join(" ", note.statement(), note.plain());
    }

    private static Map<String, Note> byName(Advice advice) {
        Map<String, Note> notes = new TreeMap<>();
        advice.driving().forEach(driving -> notes.put(driving.note().name(), driving.note()));
        advice.cautions().forEach(note -> notes.put(note.name(), note));
        return notes;
    }

    private static void text(String of, String part, String before, String after, List<TextDifference> texts) {
        if (!before.equals(after)) {
            texts.add(new TextDifference(of, part, before, after));
        }
    }

    private static Map<Change, RankedChange> byChange(Advice advice) {
        Map<Change, RankedChange> changes = new TreeMap<>();
        advice.changes().forEach(change -> changes.put(change.change(), change));
        return changes;
    }

    private static List<NoteDifference> notes(List<Note> before, List<Note> after) {
        List<String> was = before.stream().map(Note::name).toList();
        List<String> is = after.stream().map(Note::name).toList();
        List<NoteDifference> differences = new ArrayList<>();
        is.stream().filter(name -> !was.contains(name)).sorted()
                .forEach(name -> differences.add(new NoteDifference(name, true)));
        was.stream().filter(name -> !is.contains(name)).sorted()
                .forEach(name -> differences.add(new NoteDifference(name, false)));
        return List.copyOf(differences);
    }

    /** Whether both say the same. */
    public boolean same() {
        return changes.isEmpty() && driving.isEmpty() && cautions.isEmpty() && texts.isEmpty();
    }
}
