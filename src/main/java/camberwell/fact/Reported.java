package camberwell.fact;

import camberwell.run.Report;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;

/**
 * A complaint, as the rules ask about it. A question about something that nobody said is answered no.
 *
 * @param report what was said
 * @param certainty how far one may build on it: less when it did not come on every lap
 */
public record Reported(Report report, double certainty) implements Premise {

    public boolean is(String symptom) {
        return report.symptom().is(symptom);
    }

    public boolean inPhase(String phase) {
        return report.phase().filter(said -> said.is(phase)).isPresent();
    }

    public boolean inPhase(String phase, String other) {
        return inPhase(phase) || inPhase(other);
    }

    public boolean notInPhase(String phase) {
        return report.phase().filter(said -> !said.is(phase)).isPresent();
    }

    /** Whether it was not said to be in that phase: it is elsewhere, or nobody said where. */
    public boolean elsewhereThan(String phase) {
        return !inPhase(phase);
    }

    public boolean inCorners(String speed) {
        return report.speed().filter(said -> said.is(speed)).isPresent();
    }

    public boolean inCorners(String speed, String other) {
        return inCorners(speed) || inCorners(other);
    }

    /** Whether it is bound to that axle or to a wheel of it, or to that wheel. */
    public boolean on(String place) {
        return report.where().filter(said -> said.is(place) || said.axle().is(place)).isPresent();
    }

    public boolean atLeast(String severity) {
        return report.severity().compareTo(Word.of(Severity.class, severity)) >= 0;
    }

    public boolean onEveryLap() {
        return report.occurrence() == Occurrence.EVERY_LAP;
    }

    public boolean notOnEveryLap() {
        return report.occurrence() != Occurrence.EVERY_LAP;
    }

    public boolean onlyOnce() {
        return report.occurrence() == Occurrence.ONCE;
    }

    public boolean since(String part) {
        return report.since().filter(said -> said.is(part)).isPresent();
    }

    public boolean notSince(String part) {
        return report.since().filter(said -> !said.is(part)).isPresent();
    }

    /** Whether it was there after the first laps, too, or nobody said that it was not. */
    public boolean beyondFirstLaps() {
        return !since("first-laps");
    }

    public boolean inOneDirectionOnly() {
        return report.turn().filter(Turn::oneSided).isPresent();
    }

    @Override
    public int hashCode() {
        return report.symptom().id().hashCode();
    }

    @Override
    public String statement() {
        return report.text();
    }
}
