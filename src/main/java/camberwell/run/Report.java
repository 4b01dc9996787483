package camberwell.run;

import camberwell.saying.Told;
import camberwell.vocabulary.CornerKind;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One complaint of the driver or the coach, or one that a log shows. What nobody said stays open.
 *
 * @param measured how a log shows it; empty for what a person said
 * @param corner what kind of corner, where that was said
 */
public record Report(Symptom symptom, Optional<Place> where, Optional<Phase> phase, Optional<CornerSpeed> speed,
        Severity severity, Occurrence occurrence, Optional<Since> since, Optional<Turn> turn,
        Optional<Measured> measured, Optional<CornerKind> corner) {

    @Override
    public int hashCode() {
        return symptom.hashCode();
    }

    /** Stated, since what a record has of itself is put together at its first use, which every start would wait for. */
    @Override
    public boolean equals(Object other) {
        return this == other || other instanceof Report report && symptom.equals(report.symptom)
                && severity == report.severity && occurrence == report.occurrence && where.equals(report.where)
                && phase.equals(report.phase) && speed.equals(report.speed) && since.equals(report.since)
                && turn.equals(report.turn) && measured.equals(report.measured) && corner.equals(report.corner);
    }

    /** A complaint of which no kind of corner was named. */
    public Report(Symptom symptom, Optional<Place> where, Optional<Phase> phase, Optional<CornerSpeed> speed,
            Severity severity, Occurrence occurrence, Optional<Since> since, Optional<Turn> turn,
            Optional<Measured> measured) {
        this(symptom, where, phase, speed, severity, occurrence, since, turn, measured, Optional.empty());
    }

    /** A complaint that a person made. */
    public Report(Symptom symptom, Optional<Place> where, Optional<Phase> phase, Optional<CornerSpeed> speed,
            Severity severity, Occurrence occurrence, Optional<Since> since, Optional<Turn> turn) {
        this(symptom, where, phase, speed, severity, occurrence, since, turn, Optional.empty());
    }

    /** A complaint with nothing said beyond the symptom: clear, and on every lap. */
    public static Report of(Symptom symptom) {
        return new Report(symptom, Optional.empty(), Optional.empty(), Optional.empty(), Severity.CLEAR,
                Occurrence.EVERY_LAP, Optional.empty(), Optional.empty());
    }

    /** What a driver said, as rules take it: clear, and on every lap, where nothing else was said. */
    public static Report of(Told told) {
        return new Report(told.symptom(), told.word(Place.class), told.word(Phase.class), told.word(CornerSpeed.class),
                told.word(Severity.class).orElse(Severity.CLEAR),
                told.word(Occurrence.class).orElse(Occurrence.EVERY_LAP), told.word(Since.class),
                told.word(Turn.class), Optional.empty(), told.word(CornerKind.class));
    }

    /** Whether it is of tyres and names no axle: then it is taken to be of both. */
    public boolean meansBothAxles() {
        return symptom.ofTyre() && where.isEmpty();
    }

    /** The same complaint as a log shows it. */
    public Report withMeasured(Measured how) {
        return new Report(symptom, where, phase, speed, severity, occurrence, since, turn, Optional.of(how), corner);
    }

    /** The same complaint of a kind of corner. */
    public Report withCorner(CornerKind kind) {
        return new Report(symptom, where, phase, speed, severity, occurrence, since, turn, measured, Optional.of(kind));
    }

    /**
     * Whether both speak of the same thing: one symptom, and nothing that both name is named otherwise. A rear that lets go
     * at once is a rear that slides.
     */
    public boolean alike(Report other) {
        return kin(symptom) == kin(other.symptom) && agrees(phase, other.phase) && agrees(speed, other.speed)
                && agrees(corner, other.corner) && agrees(where.map(Place::axle), other.where.map(Place::axle))
                && (turn.isEmpty() || other.turn.isEmpty() || turn.get() == Turn.BOTH || other.turn.get() == Turn.BOTH
                        || turn.equals(other.turn));
    }

    /** What a person entered twice is one complaint, the heavier; two that differ in where or when they come stay two. */
    public static List<Report> once(List<Report> reports) {
        List<Report> all = new ArrayList<>();
        for (Report report : reports) {
            int same = 0;
            while (same < all.size() && !all.get(same).repeats(report)) {
                same++;
            }
            if (same == all.size()) {
                all.add(report);
            } else if (report.heavierThan(all.get(same))) {
                all.set(same, report);
            }
        }
        return List.copyOf(all);
    }

    private boolean repeats(Report other) {
        return symptom.equals(other.symptom) && where.equals(other.where) && phase.equals(other.phase)
                && speed.equals(other.speed) && since.equals(other.since) && turn.equals(other.turn)
                && corner.equals(other.corner) && measured.isEmpty() && other.measured.isEmpty();
    }

    private boolean heavierThan(Report other) {
        int more = severity.compareTo(other.severity);
        return more > 0 || more == 0 && occurrence.compareTo(other.occurrence) < 0;
    }

    /** Whether both cannot be true of one car: the front slides, and the rear slides, in one phase of the same corners. */
    public boolean contradicts(Report other) {
        boolean opposite = kin(symptom) == Symptom.UNDERSTEER && kin(other.symptom) == Symptom.OVERSTEER
                || kin(symptom) == Symptom.OVERSTEER && kin(other.symptom) == Symptom.UNDERSTEER;
        return opposite && phase.isPresent() && phase.equals(other.phase) && agrees(speed, other.speed)
                && agrees(turn, other.turn);
    }

    private static Symptom kin(Symptom symptom) {
        return symptom == Symptom.SNAP_OVERSTEER ? Symptom.OVERSTEER : symptom;
    }

    private static <T> boolean agrees(Optional<T> one, Optional<T> other) {
        return one.isEmpty() || other.isEmpty() || one.equals(other);
    }

    /**
     * In words: {@code strong understeer at entry in slow corners, some laps}. What is clear and comes every lap is the
     * ordinary complaint and has no word for it, since that is also what a complaint is taken for of which nobody said
     * how bad it is, or how often.
     */
    public String text() {
        StringBuilder text = new StringBuilder();
        if (severity != Severity.CLEAR) {
            text.append(severity.id()).append(' ');
        }
        text.append(complaint(symptom, where, phase, speed));
        corner.ifPresent(kind -> text.append(" at a ").append(kind.id()));
        turn.ifPresent(side -> text.append(symptom == Symptom.PULLING && side != Turn.BOTH ? " to the " + side.id()
                : side == Turn.BOTH ? " in turns both ways"
                : " in " + side.id() + " turns only"));
        text.append(switch (occurrence) {
            case EVERY_LAP -> "";
            case SOME_LAPS -> ", some laps";
            case ONCE -> ", once";
        });
        since.ifPresent(part -> text.append(switch (part) {
            case FIRST_LAPS -> ", in the first laps";
            case WHOLE_RUN -> ", the whole run";
            case LATE_RUN -> ", late in the run";
        }));
        return text.toString();
    }

    /** A complaint without how bad and how often it is: {@code understeer at entry in slow corners}. */
    static StringBuilder complaint(Symptom symptom, Optional<Place> where, Optional<Phase> phase,
            Optional<CornerSpeed> speed) {
        StringBuilder text = new StringBuilder(symptom.spoken());
        where.ifPresent(place -> text.append(" at the ").append(place.tyres()));
        // Unstable braking is under braking whether one says so or not.
        phase.filter(when -> !(when == Phase.BRAKING && symptom == Symptom.UNSTABLE_BRAKING))
                .ifPresent(when -> text.append(' ').append(when.at()));
        speed.ifPresent(corner -> text.append(" in ").append(corner.id()).append(" corners"));
        return text;
    }
}
