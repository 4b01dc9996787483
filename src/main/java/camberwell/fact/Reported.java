package camberwell.fact;

import camberwell.run.Report;
import camberwell.vocabulary.CornerKind;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import java.util.List;
import java.util.Optional;

/**
 * A complaint, as the rules ask about it.
 *
 * @param report what was said
 * @param certainty how far one may build on it: less when it did not come on every lap, more when driver and log agree
 * @param taken the axle that is taken to be meant, where a complaint of tyres names none
 */
public record Reported(Report report, double certainty, Optional<Place> taken) implements Premise {

    /** What a complaint can be asked. */
    public static final Kind KIND = new Kind("Reported", false, List.of(Attribute.of("symptom", Symptom.class),
            Attribute.of("phase", Phase.class), Attribute.of("speed", CornerSpeed.class),
            Attribute.of("where", Place.class), Attribute.of("severity", Severity.class),
            Attribute.of("occurrence", Occurrence.class), Attribute.of("since", Since.class),
            Attribute.of("turn", Turn.class), Attribute.of("corner", CornerKind.class), Attribute.of("over-kerbs", "yes", "no"),
            Attribute.of("first-laps-only", "yes", "no")));

    /** A complaint as it was made. */
    public Reported(Report report, double certainty) {
        this(report, certainty, Optional.empty());
    }

    @Override
    public Kind kind() {
        return KIND;
    }

    @Override
    public String word(String attribute) {
        return switch (attribute) {
            case "symptom" -> report.symptom().id();
            case "phase" -> Word.idOf(report.phase());
            case "speed" -> Word.idOf(report.speed());
            case "where" -> Word.idOf(report.where().or(() -> taken));
            case "severity" -> report.severity().id();
            case "occurrence" -> report.occurrence().id();
            case "since" -> Word.idOf(report.since());
            case "turn" -> Word.idOf(report.turn());
            case "corner" -> Word.idOf(report.corner());
            // What nobody said is no kerb, and goes on after the first laps.
            case "over-kerbs" -> report.phase().filter(Phase.KERBS::equals).isPresent() ? "yes" : "no";
            case "first-laps-only" -> report.since().filter(Since.FIRST_LAPS::equals).isPresent() ? "yes" : "no";
            default -> throw unasked(attribute);
        };
    }

    @Override
    public double number(String attribute) {
        throw unasked(attribute);
    }

    @Override
    public String says(String attribute) {
        return switch (attribute) {
            case "symptom" -> "it is " + report.symptom().spoken();
            case "phase" -> said("the phase was ", report.phase(), "no phase is named");
            case "speed" -> said("the corner was ", report.speed(), "no corner speed is named");
            case "where" -> said("it was at the ", report.where(), said("no axle is named, so both are taken: this is "
                    + "the ", taken, "no axle or tyre is named"));
            case "severity" -> "it was " + report.severity().spoken();
            case "occurrence" -> "it came: " + report.occurrence().spoken();
            case "since" -> said("the part of the run was: ", report.since(), "no part of the run is named");
            case "turn" -> said("it came in turns: ", report.turn(), "no direction of turns is named");
            case "corner" -> said("it came at a ", report.corner(), "no kind of corner is named");
            case "over-kerbs" -> word(attribute).equals("yes") ? "it came over kerbs" : "it came elsewhere";
            case "first-laps-only" -> word(attribute).equals("yes") ? "it came in the first laps"
                    : "it came after the first laps too";
            default -> throw unasked(attribute);
        };
    }

    private static String said(String begin, Optional<? extends Word> word, String open) {
        return word.isPresent() ? begin + word.get().spoken() : open;
    }

    @Override
    public int hashCode() {
        return report.symptom().id().hashCode();
    }

    /** What was said; of a complaint that was measured, how, down to corner and lap. */
    @Override
    public String statement() {
        return report.measured().map(measured -> report.text() + "; measured: " + measured.text()).orElse(report.text());
    }

    /** A complaint of tyres at both ends is two facts of one statement. */
    @Override
    public String mark() {
        return statement() + " " + Word.idOf(taken);
    }
}
