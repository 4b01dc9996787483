package camberwell.advice;

import camberwell.car.Car;
import camberwell.vocabulary.Surface;
import java.util.LinkedHashMap;
import java.util.Map;

/** The cars that were asked about last, each with what the handling model said of it; every thread has its own. */
final class RecentCars {

    private static final int MOST = 64;

    private final ThreadLocal<Map<Key, Predictions>> recent = ThreadLocal.withInitial(() ->
            new LinkedHashMap<>(MOST, 0.75f, true) {
                private static final long serialVersionUID = 1;

                @Override
                protected boolean removeEldestEntry(Map.Entry<Key, Predictions> eldest) {
                    return size() > MOST;
                }
            });

    private record Key(Car car, Surface surface) {
        @Override
        public int hashCode() {
            return 31 * car.name().hashCode() + surface.ordinal();
        }
    }

    Predictions of(Car car, Surface surface) {
        return recent.get().computeIfAbsent(new Key(car, surface), key -> new Predictions(car, surface));
    }
}
