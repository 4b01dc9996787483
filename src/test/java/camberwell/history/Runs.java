package camberwell.history;

import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Driven;
import camberwell.run.Lap;
import camberwell.run.Report;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Symptom;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Runs of a made-up car, for tests. */
final class Runs {

    private Runs() {
    }

    static Setting position(int now) {
        return new Setting(number(now), number(1), number(9), number(1), false);
    }

    static Quantity number(double value) {
        return new Quantity(value, Unit.POSITION);
    }

    /** A car with bars and rear bump damping on 4, at those settings. */
    static Car car(int frontBar, int rearBar, int rearBump) {
        return new Car("Test car", Optional.of(Drive.REAR), Map.of(Adjuster.FRONT_ANTI_ROLL_BAR, position(frontBar),
                Adjuster.REAR_ANTI_ROLL_BAR, position(rearBar), Adjuster.REAR_BUMP, position(rearBump)), Map.of(),
                Map.of(), false);
    }

    static Case run(int number, Car car, List<Report> reports, double... laps) {
        Driven.Sheet sheet = Driven.Sheet.UNKNOWN.numbered(number);
        return new Case("Run " + number, "-", car, Conditions.UNKNOWN, Map.of(), reports, List.of())
                .withDriven(new Driven(sheet, List.of(), Arrays.stream(laps).mapToObj(seconds ->
                        new Lap(Optional.of(seconds), Set.of())).toList(), Optional.empty(), List.of()));
    }

    static Report understeer(Severity severity) {
        return report(Symptom.UNDERSTEER, Phase.MID_CORNER, severity);
    }

    static Report report(Symptom symptom, Phase phase, Severity severity) {
        return new Report(symptom, Optional.empty(), Optional.of(phase), Optional.of(CornerSpeed.SLOW), severity,
                Occurrence.EVERY_LAP, Optional.empty(), Optional.empty());
    }
}
