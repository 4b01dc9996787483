package camberwell.run;

import camberwell.car.Car;
import camberwell.vocabulary.Wheel;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A case to advise on: a car as it ran, the day, the tyres and the complaints.
 *
 * @param title what people call the case
 * @param source the file it came from, or {@code -}
 * @param car the car as it ran: its file's settings with the case's own on top
 * @param earlier earlier runs of the same car, oldest first, from which camber sizing can learn
 */
public record Case(String title, String source, Car car, Conditions conditions, Map<Wheel, TyreReading> tyres,
        List<Report> reports, List<Case> earlier) {

    /** Copies the collections. */
    public Case {
        EnumMap<Wheel, TyreReading> copy = new EnumMap<>(Wheel.class);
        copy.putAll(tyres);
        tyres = Collections.unmodifiableMap(copy);
        reports = List.copyOf(reports);
        earlier = List.copyOf(earlier);
    }

    /** The same case with other complaints. */
    public Case withReports(List<Report> others) {
        return new Case(title, source, car, conditions, tyres, others, earlier);
    }

    /** The same case with other tyre readings. */
    public Case withTyres(Map<Wheel, TyreReading> others) {
        return new Case(title, source, car, conditions, others, reports, earlier);
    }
}
