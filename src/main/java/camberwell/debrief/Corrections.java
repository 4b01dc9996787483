package camberwell.debrief;

import camberwell.run.Report;
import camberwell.saying.Heard;
import camberwell.saying.Listener;
import camberwell.saying.Told;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Which complaint somebody takes back or tells otherwise, and what takes its place. */
final class Corrections {

    /** Complaints that are taken for one another; common practice, no source. */
    private static final List<Set<Symptom>> ALIKE = List.of(
            Set.of(Symptom.UNDERSTEER, Symptom.OVERSTEER, Symptom.SNAP_OVERSTEER, Symptom.SLOW_TURN_IN, Symptom.NERVOUS_TURN_IN,
                    Symptom.WHEELSPIN),
            Set.of(Symptom.FRONT_LOCKING, Symptom.REAR_LOCKING, Symptom.UNSTABLE_BRAKING),
            Set.of(Symptom.WANDERING, Symptom.PULLING, Symptom.UNSTABLE_BRAKING),
            Set.of(Symptom.HEAVY_STEERING, Symptom.LIGHT_STEERING), Set.of(Symptom.OVERHEATING, Symptom.SLOW_WARM_UP),
            Set.of(Symptom.HOT_INNER_EDGE, Symptom.HOT_OUTER_EDGE, Symptom.HOT_MIDDLE, Symptom.COLD_MIDDLE));
    /** The same at the other end of the car. */
    private static final Map<Symptom, Symptom> OTHER_END = Map.of(Symptom.UNDERSTEER, Symptom.OVERSTEER,
            Symptom.OVERSTEER, Symptom.UNDERSTEER, Symptom.SNAP_OVERSTEER, Symptom.UNDERSTEER,
            Symptom.FRONT_LOCKING, Symptom.REAR_LOCKING, Symptom.REAR_LOCKING, Symptom.FRONT_LOCKING);
    /** Where a bare "no" may be the answer, and what follows it something new. */
    private static final Set<Field> YES_OR_NO = EnumSet.of(Field.SIMULATOR, Field.TYRES, Field.LOOK, Field.SURFACE, Field.OWN,
            Field.CIRCUIT, Field.ELSE, Field.TRACK);
    /** What says by itself how it goes on, and is answered in so many words. */
    private static final Set<Field> APART = EnumSet.of(Field.CAR, Field.DRIVE, Field.CHANGED, Field.CAME, Field.DOUBT);
    private static final Pattern ROUND_A_WORD = Pattern.compile("^(?:(?:it|it's|was|is|that|only|just|more|a bit|very|the|in|on"
            + "|at|mid|felt)\\s+)+");

    private final Debrief debrief;
    private final Supplier<Listener> listener;

    Corrections(Debrief debrief, Supplier<Listener> listener) {
        this.debrief = debrief;
        this.listener = listener;
    }

    /** A complaint that is told otherwise. */
    record Corrected(Topic topic, Answer.Corrected answer) {
    }

    /**
     * What a line corrects of what was told; empty where it corrects nothing.
     *
     * @param asked what is asked just now
     */
    Optional<Corrected> of(String typed, Optional<Topic> asked) {
        List<Integer> open = debrief.correctable();
        if (open.isEmpty() || asked.filter(topic -> APART.contains(topic.field())).isPresent()) {
            return Optional.empty();
        }
        Optional<Correction> correction = Correction.of(typed);
        if (correction.isEmpty()) {
            return Optional.empty();
        }
        Optional<Corrected> denied = Correction.denied(correction.get().rest())
                .flatMap(what -> denied(correction.get().rest(), what, open));
        return denied.isPresent() ? denied : instead(correction.get(), asked, open);
    }

    /** A complaint that is said not to be there. */
    private Optional<Corrected> denied(String line, String what, List<Integer> open) {
        if (!listener.get().hear(line).told().isEmpty()) {
            return Optional.empty();
        }
        return complaint(what).flatMap(told -> there(told, open))
                .map(complaint -> new Corrected(topic(complaint), new Answer.Corrected(List.of())));
    }

    private Optional<Told> complaint(String words) {
        return Stream.of(words, "it " + words).map(listener.get()::hear).filter(heard -> heard.told().size() == 1)
                .map(heard -> heard.told().get(0)).findFirst();
    }

    /** The last complaint that this may be said of: the same symptom, and no detail otherwise. */
    private Optional<Integer> there(Told told, List<Integer> open) {
        return open.stream().filter(complaint -> {
            Report report = debrief.run().reports().get(complaint);
            return report.symptom() == told.symptom() && told.words().stream().allMatch(word ->
                    !debrief.told(complaint).contains(Field.telling(word))
                            || ReportWords.detailed(report, List.of(word)).equals(report));
        }).reduce((one, other) -> other);
    }

    private Optional<Corrected> instead(Correction correction, Optional<Topic> asked, List<Integer> open) {
        int last = debrief.lastTold(open);
        Optional<Integer> named = correction.denied().flatMap(what -> complaint(what).flatMap(told -> there(told, open))
                .or(() -> Optional.of(last).filter(complaint -> detail(what, complaint))));
        boolean sure = named.isPresent() || correction.how() == Correction.Sureness.SAID
                || correction.how() == Correction.Sureness.NO
                        && asked.filter(topic -> YES_OR_NO.contains(topic.field())).isEmpty();
        if (named.isEmpty() && correction.how() == Correction.Sureness.MAYBE && correction.denied().isPresent()) {
            return Optional.empty();
        }
        Heard heard = listener.get().hear(correction.rest());
        if (!heard.told().isEmpty()) {
            int of = named.orElseGet(() -> nearest(heard.told().get(0), open, last));
            Symptom before = debrief.run().reports().get(of).symptom();
            return sure || alike(before, heard.told().get(0).symptom())
                    ? Optional.of(new Corrected(topic(of),
                            new Answer.Corrected(heard.told().stream().map(Corrections::words).toList())))
                    : Optional.empty();
        }
        int of = named.orElse(last);
        List<Word> words = heard.loose().isEmpty() ? bare(correction.rest()) : heard.loose();
        List<Word> ends = words.isEmpty() ? end(correction.rest(), debrief.run().reports().get(of).symptom()) : words;
        // What nobody said is taken, and shown, at the last question.
        boolean taken = asked.filter(topic -> topic.field() == Field.ELSE).isPresent();
        boolean told = ends.stream().anyMatch(word -> word instanceof Symptom
                || debrief.told(of).contains(Field.telling(word)) || taken && Field.TAKEN.contains(Field.telling(word)));
        return told && heard.surface().isEmpty() ? Optional.of(new Corrected(topic(of), new Answer.Corrected(List.of(ends))))
                : Optional.empty();
    }

    /** Whether these words are a detail that was told of that complaint, or its end of the car. */
    private boolean detail(String what, int complaint) {
        Report report = debrief.run().reports().get(complaint);
        List<Word> loose = listener.get().hear(what).loose();
        List<Word> words = loose.isEmpty() ? bare(what) : loose;
        List<Place> ends = Ends.said(what);
        boolean end = ends.size() == 1 && (report.symptom().axle().equals(Optional.of(ends.get(0).axle()))
                || report.where().equals(Optional.of(ends.get(0))));
        return end || !words.isEmpty() && words.stream().allMatch(word -> debrief.told(complaint).contains(Field.telling(word))
                && ReportWords.detailed(report, List.of(word)).equals(report));
    }

    private static Topic topic(int complaint) {
        return new Topic(Field.CORRECTED, complaint);
    }

    private static List<Word> words(Told told) {
        List<Word> words = new ArrayList<>(List.of(told.symptom()));
        words.addAll(told.words());
        return words;
    }

    private static boolean alike(Symptom one, Symptom other) {
        return one == other || ALIKE.stream().anyMatch(alike -> alike.contains(one) && alike.contains(other));
    }

    /** The complaint that is most like it, the last one told where none is. */
    private int nearest(Told told, List<Integer> open, int last) {
        int nearest = last;
        for (int complaint : open) {
            if (likeness(told, complaint) > likeness(told, nearest)) {
                nearest = complaint;
            }
        }
        return nearest;
    }

    private int likeness(Told told, int complaint) {
        Report report = debrief.run().reports().get(complaint);
        return (report.symptom() == told.symptom() ? 1 : 0)
                + (told.word(Phase.class).isPresent() && told.word(Phase.class).equals(report.phase()) ? 1 : 0);
    }

    /** A word by itself, which is heard where it is asked for: {@code it was slight}. */
    private static List<Word> bare(String rest) {
        String id = ROUND_A_WORD.matcher(rest.toLowerCase(Locale.ROOT)).replaceFirst("").replace(' ', '-');
        return Stream.<Class<? extends Word>>of(Severity.class, Occurrence.class, Since.class, Phase.class, CornerSpeed.class,
                Turn.class).flatMap(type -> Word.find(type, id).stream()).<Word>map(word -> word).limit(1).toList();
    }

    /** An end of the car that is named by itself: the same complaint at that end. */
    private static List<Word> end(String rest, Symptom before) {
        List<Place> places = Ends.said(rest);
        if (places.size() != 1) {
            return List.of();
        }
        Optional<Axle> axle = before.axle();
        return axle.isEmpty() ? List.of(places.get(0)) : axle.get() != places.get(0).axle() && OTHER_END.containsKey(before)
                ? List.of(OTHER_END.get(before)) : List.of();
    }

    /** What takes a complaint's place, with what was told of it that still fits. */
    static State corrected(State before, int complaint, List<List<Word>> groups) {
        if (complaint >= before.details().size()) {
            return before;
        }
        List<Report> reports = new ArrayList<>(before.run().reports());
        List<Set<Field>> details = new ArrayList<>(before.details());
        Set<Field> known = EnumSet.copyOf(before.known());
        Report old = reports.get(complaint);
        if (groups.isEmpty()) {
            reports.remove(complaint);
            details.remove(complaint);
            if (reports.isEmpty()) {
                // Whether there is something else instead is not known.
                known.remove(Field.DOING);
            }
            return new State(before.run().withReports(reports), known, List.copyOf(details));
        }
        List<Word> words = groups.get(0);
        Symptom symptom = words.stream().filter(Symptom.class::isInstance).map(Symptom.class::cast).findFirst()
                .orElse(old.symptom());
        List<Word> rest = words.stream().filter(word -> !(word instanceof Symptom)).toList();
        Set<Field> fields = EnumSet.noneOf(Field.class);
        fields.addAll(details.get(complaint));
        Report kept = fitting(old, symptom, rest, fields);
        fields.addAll(ReportWords.fields(rest));
        reports.set(complaint, ReportWords.detailed(kept, rest));
        details.set(complaint, fields);
        return new State(before.run().withReports(reports), known, List.copyOf(details))
                .and(groups.subList(1, groups.size()));
    }

    /** The same of another symptom, without what cannot be said of that. */
    private static Report fitting(Report old, Symptom symptom, List<Word> instead, Set<Field> fields) {
        boolean same = symptom == old.symptom();
        Optional<Phase> phase = old.phase().filter(it -> symptom.senseless(it).isEmpty());
        Optional<Place> where = old.where().filter(it -> same || symptom.ofTyre() && old.symptom().ofTyre());
        // A pull has a side, which is no direction of a turn.
        Optional<Turn> turn = old.turn().filter(it -> same || symptom != Symptom.PULLING && old.symptom() != Symptom.PULLING);
        if (phase.isEmpty() && old.phase().isPresent()) {
            fields.remove(Field.PHASE);
        }
        if (where.isEmpty() && old.where().isPresent()) {
            fields.remove(Field.WHERE);
        }
        if (turn.isEmpty() && old.turn().isPresent()) {
            fields.remove(Field.TURN);
        }
        Report kept = new Report(symptom, where, phase, old.speed(), old.severity(), old.occurrence(), old.since(), turn);
        // In corners of another speed it is not that hairpin.
        return instead.stream().anyMatch(CornerSpeed.class::isInstance) ? kept
                : old.corner().map(kept::withCorner).orElse(kept);
    }

    /** A line that corrects itself: what is meant, with what was said first and still fits. */
    static Optional<Heard> inside(String typed, Listener listener) {
        Optional<Correction> itself = Correction.inside(typed);
        if (itself.isEmpty()) {
            return Optional.empty();
        }
        Heard first = listener.hear(itself.get().denied().orElseThrow());
        Heard then = listener.hear(itself.get().rest());
        if (!first.anything() || !then.unclear().isEmpty() || !then.notUnderstood().isEmpty()
                || then.told().isEmpty() && then.loose().isEmpty()) {
            return Optional.empty();
        }
        List<Told> told = new ArrayList<>(first.told());
        Optional<Told> last = told.isEmpty() ? Optional.empty() : Optional.of(told.remove(told.size() - 1));
        if (then.told().isEmpty()) {
            last.ifPresent(it -> told.add(new Told(it.symptom(), merged(it.words(), then.loose()), List.of())));
        } else {
            Symptom symptom = then.told().get(0).symptom();
            List<Word> fit = last.map(Told::words).orElse(first.loose()).stream()
                    .filter(word -> !(word instanceof Phase phase) || symptom.senseless(phase).isEmpty()).toList();
            told.add(new Told(symptom, merged(fit, then.told().get(0).words()), List.of()));
            told.addAll(then.told().subList(1, then.told().size()));
        }
        return Optional.of(new Heard(typed, told, then.surface().or(first::surface), false,
                told.isEmpty() ? merged(first.loose(), then.loose()) : List.of(), first.unclear(), first.notUnderstood()));
    }

    private static List<Word> merged(List<Word> before, List<Word> instead) {
        List<Word> merged = new ArrayList<>(before.stream().filter(word -> instead.stream()
                .noneMatch(it -> Field.telling(it) == Field.telling(word))).toList());
        merged.addAll(instead);
        return merged;
    }
}
