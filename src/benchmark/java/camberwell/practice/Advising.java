package camberwell.practice;

import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.model.CarModel;
import camberwell.run.Report;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** Somebody who is told what a car does and names the next change to it. */
interface Advising {

    /**
     * A setting to try.
     *
     * @param beside what is set with it, as one change
     */
    record Move(Adjuster adjuster, Quantity to, Map<Adjuster, Quantity> beside) {

        Move(Adjuster adjuster, Quantity to) {
            this(adjuster, to, Map.of());
        }
    }

    /** The next change; empty where there is none to make. */
    Optional<Move> next(Session session, List<Report> told);

    /** Any change, one to two steps. */
    static Advising random(long seed) {
        Random luck = new Random(seed);
        return (session, told) -> {
            List<Adjuster> can = movable(session.car());
            for (int i = 0; i < 100; i++) {
                Adjuster adjuster = can.get(luck.nextInt(can.size()));
                Direction way = adjuster.directions().get(luck.nextInt(2));
                Setting setting = session.car().setting(adjuster).orElseThrow();
                if (setting.stepsLeft(way) > 0) {
                    return Optional.of(new Move(adjuster, setting.moved(way, 1 + luck.nextInt(2))));
                }
            }
            return Optional.empty();
        };
    }

    /** A plain chart: bars for balance, in the order front then rear; the next lever when one is used up. */
    static Advising chart() {
        return (session, told) -> {
            if (told.isEmpty()) {
                return Optional.empty();
            }
            Report worst = told.get(0);
            for (String line : lines(worst)) {
                Change change = Change.parse(line).orElseThrow();
                Optional<Setting> setting = session.car().setting(change.adjuster());
                if (setting.filter(it -> it.stepsLeft(change.direction()) > 0).isPresent()) {
                    return Optional.of(new Move(change.adjuster(), setting.get().moved(change.direction(), 1)));
                }
            }
            return Optional.empty();
        };
    }

    private static List<String> lines(Report report) {
        Symptom symptom = report.symptom();
        if (symptom == Symptom.UNDERSTEER) {
            return List.of("front-anti-roll-bar softer", "rear-anti-roll-bar stiffer", "front-springs softer",
                    "rear-springs stiffer", "front-camber more-negative", "front-wing more", "rear-wing less");
        }
        if (symptom == Symptom.OVERSTEER || symptom == Symptom.SNAP_OVERSTEER) {
            return List.of("rear-anti-roll-bar softer", "front-anti-roll-bar stiffer", "rear-springs softer",
                    "front-springs stiffer", "rear-camber more-negative", "rear-wing more", "rear-toe toe-in");
        }
        if (symptom == Symptom.FRONT_LOCKING) {
            return List.of("brake-bias rearward");
        }
        if (symptom == Symptom.REAR_LOCKING) {
            return List.of("brake-bias forward");
        }
        if (symptom == Symptom.WHEELSPIN) {
            return List.of("differential-power more", "rear-anti-roll-bar softer", "rear-springs softer");
        }
        return report.phase().filter(phase -> phase == Phase.KERBS).isPresent()
                ? List.of("front-bump softer", "rear-bump softer", "front-rebound softer", "rear-rebound softer")
                : List.of();
    }

    /** Every single step of every adjuster driven, and the best of them taken; nobody has that much time. */
    static Advising best() {
        return (session, told) -> {
            double least = Double.POSITIVE_INFINITY;
            Move best = null;
            for (Adjuster adjuster : movable(session.car())) {
                for (Direction way : adjuster.directions()) {
                    Setting setting = session.car().setting(adjuster).orElseThrow();
                    for (int steps : List.of(1, 3)) {
                        if (setting.stepsLeft(way) < steps) {
                            continue;
                        }
                        Move move = new Move(adjuster, setting.moved(way, steps));
                        Map<Adjuster, Quantity> settings = new EnumMap<>(session.settings());
                        settings.put(adjuster, move.to());
                        Optional<Double> burden = session.driver().burdenBelow(least, settings);
                        if (burden.isPresent()) {
                            least = burden.get();
                            best = move;
                        }
                    }
                }
            }
            return Optional.ofNullable(best);
        };
    }

    private static List<Adjuster> movable(Car car) {
        List<Adjuster> can = new ArrayList<>(car.adjusters().keySet());
        can.removeIf(adjuster -> !CarModel.representsInMotion(adjuster));
        return can;
    }
}
