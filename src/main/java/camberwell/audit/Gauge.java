package camberwell.audit;

import camberwell.car.Setting;
import camberwell.fact.Reading;
import camberwell.model.Bench.Relief;
import camberwell.physics.GasLaw;
import camberwell.vocabulary.Change;
import java.util.Optional;

/** What letting air in or out does to a reading of the pressure gauge: the gas law's say. */
final class Gauge {

    private static final double COLD = GasLaw.ZERO_CELSIUS + 20;
    private static final double HOT = GasLaw.ZERO_CELSIUS + 80;

    private Gauge() {
    }

    /** Empty where the reading is no pressure, or the change moves none. */
    static Optional<Relief> relief(Setting setting, Change change, Reading.State reading) {
        double now = hot(setting.now().si());
        double then = hot(setting.moved(change.direction(), 1).si());
        return switch (reading) {
            case ABOVE_TARGET, ABOVE_TARGET_ALONE -> relief(now - then);
            case BELOW_TARGET, BELOW_TARGET_ALONE, BELOW_MINIMUM -> relief(then - now);
            default -> Optional.empty();
        };
    }

    private static double hot(double cold) {
        return GasLaw.pressureAt(cold, COLD, HOT, GasLaw.STANDARD_ATMOSPHERE);
    }

    private static Optional<Relief> relief(double gain) {
        return gain == 0 ? Optional.empty() : Optional.of(gain > 0 ? Relief.BETTER : Relief.WORSE);
    }
}
