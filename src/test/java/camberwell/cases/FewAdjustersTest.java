package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.advice.Advice;
import camberwell.advice.Answer;
import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Report;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Typical;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Many cars have three adjusters and some have none: no complaint ends in silence for that. */
@DisplayName("On a car with few adjusters")
class FewAdjustersTest {

    private static final Quantity ONE = new Quantity(1, Unit.POSITION);

    private static Car car(Drive drive, Predicate<Adjuster> has) {
        Map<Adjuster, Setting> adjusters = new EnumMap<>(Adjuster.class);
        for (Adjuster adjuster : Adjuster.values()) {
            if (has.test(adjuster)) {
                Typical typical = adjuster.typical();
                adjusters.put(adjuster, new Setting(typical.now(), typical.min(), typical.max(), typical.step(), false));
            }
        }
        return new Car("a car", Optional.of(drive), adjusters, Map.of(), Map.of(), false);
    }

    private static Car clicks(Drive drive) {
        Map<Adjuster, Setting> adjusters = new EnumMap<>(Adjuster.class);
        for (Adjuster adjuster : Adjuster.values()) {
            if (adjuster.wheel().isEmpty()) {
                adjusters.put(adjuster, new Setting(ONE.withValue(5), ONE.withValue(0), ONE.withValue(10), ONE, false));
            }
        }
        return new Car("a car", Optional.of(drive), adjusters, Map.of(), Map.of(), false);
    }

    private static List<Report> complaints(Drive drive) {
        List<Report> reports = new ArrayList<>();
        for (Symptom symptom : Symptom.values()) {
            if (symptom.ofTyre()) {
                for (Axle axle : Axle.values()) {
                    reports.add(report(symptom, Optional.of(Word.of(Place.class, axle.id())), Optional.empty()));
                }
            } else {
                for (Phase phase : Phase.values()) {
                    if (symptom.senseless(phase).isEmpty()) {
                        reports.add(report(symptom, Optional.empty(), Optional.of(phase)));
                    }
                }
            }
        }
        return reports;
    }

    private static Report report(Symptom symptom, Optional<Place> where, Optional<Phase> phase) {
        return new Report(symptom, where, phase, Optional.empty(), Severity.CLEAR, Occurrence.EVERY_LAP, Optional.empty(),
                Optional.empty());
    }

    /** What is neither changed nor driven otherwise: complaints with no more than a reason why not. */
    private static Set<String> onlyReasons(Garage garage) {
        Set<String> reasons = new TreeSet<>();
        for (Drive drive : Drive.values()) {
            for (Report report : complaints(drive)) {
                Advice advice = Paddock.advise(new Case("few", "-", garage.car(drive), Conditions.UNKNOWN, Map.of(),
                        List.of(report), List.of()));
                List<String> by = advice.answers().get(0).by();
                assertNotEquals(List.of(Answer.NOTHING), by, report.text());
                if (by.stream().allMatch(answer -> answer.startsWith("withheld"))) {
                    assertTrue(advice.withheld().stream().allMatch(withheld -> withheld.reason().length() > 15),
                            report.text());
                    reasons.add(report.symptom().id());
                }
            }
        }
        return reasons;
    }

    private interface Garage {
        Car car(Drive drive);
    }

    private static Garage with(Predicate<Adjuster> has) {
        return drive -> car(drive, has);
    }

    @Test
    @DisplayName("what the driver can do is told, and what only an adjuster can do says that the car has none")
    void nothingToAdjust() {
        assertEquals(Set.of("bottoming", "cold-middle", "graining", "heavy-steering", "hot-inner-edge", "hot-middle",
                "hot-outer-edge", "light-steering", "wandering"), onlyReasons(with(adjuster -> false)));
    }

    @Test
    @DisplayName("bars alone: balance is changed, the tyres' own complaints say what is missing")
    void barsAlone() {
        assertEquals(Set.of("bottoming", "cold-middle", "heavy-steering", "hot-inner-edge", "hot-middle",
                "hot-outer-edge", "light-steering", "wandering"), onlyReasons(with(adjuster ->
                adjuster.adjustment() == Adjustment.ANTI_ROLL_BAR)));
    }

    @Test
    @DisplayName("pressure and camber alone: they stand in for the bars")
    void pressureAndCamber() {
        assertEquals(Set.of("bottoming", "graining", "heavy-steering", "light-steering", "wandering"),
                onlyReasons(with(adjuster -> adjuster.adjustment() == Adjustment.PRESSURE
                        || adjuster.adjustment() == Adjustment.CAMBER)));
    }

    @Test
    @DisplayName("known in clicks alone: nothing is missing")
    void clicksAlone() {
        assertEquals(Set.of(), onlyReasons(FewAdjustersTest::clicks));
    }
}
