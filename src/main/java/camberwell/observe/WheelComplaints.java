package camberwell.observe;

import camberwell.car.Car;
import camberwell.channel.Limits;
import camberwell.run.Report;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Wheels that spin or lock: of an axle where both or either of its wheels do, of one wheel where it is always that one. */
final class WheelComplaints {

    private WheelComplaints() {
    }

    static List<Report> of(WheelSlip slip, Car car, List<LapPhases> laps, Complaints complaints, Limits limits) {
        List<Report> reports = new ArrayList<>();
        for (Axle axle : Axle.values()) {
            boolean driven = car.drive().map(drive -> drive.drives(axle)).orElse(true);
            if (driven) {
                add(slip, axle, true, laps, complaints, limits, reports);
            }
            add(slip, axle, false, laps, complaints, limits, reports);
        }
        return reports;
    }

    private static void add(WheelSlip slip, Axle axle, boolean spinning, List<LapPhases> laps, Complaints complaints,
            Limits limits, List<Report> reports) {
        Symptom symptom = spinning ? Symptom.WHEELSPIN
                : axle == Axle.FRONT ? Symptom.FRONT_LOCKING : Symptom.REAR_LOCKING;
        List<Wheel> wheels = slip.wheels().stream().filter(wheel -> wheel.axle() == axle).toList();
        List<Sighting> both = new ArrayList<>();
        wheels.forEach(wheel -> both.addAll(slip.sightings(wheel, spinning, laps)));
        Measure measure = measure(symptom, Optional.empty(), spinning, limits);
        for (Report report : complaints.of(new Measure(symptom, Optional.of(Word.of(Place.class, axle.id())),
                measure.starts(), measure.clear(), measure.unit(), measure.name(), measure.decimals()), percent(both))) {
            Optional<Wheel> one = one(slip, wheels, spinning, laps, report, complaints, limits);
            reports.add(one.map(wheel -> new Report(report.symptom(), Optional.of(Word.of(Place.class, wheel.id())),
                    report.phase(), report.speed(), report.severity(), report.occurrence(), report.since(), report.turn(),
                    report.measured())).orElse(report));
        }
    }

    private static Measure measure(Symptom symptom, Optional<Place> where, boolean spinning, Limits limits) {
        return new Measure(symptom, where, 100 * limits.of(spinning ? "wheels.spin-starts" : "wheels.lock-starts"),
                100 * limits.of(spinning ? "wheels.spin-clear" : "wheels.lock-clear"), "%",
                spinning ? "wheel speed over that of the road on the power" : "wheel speed under that of the road on the "
                        + "brakes", 0);
    }

    private static List<Sighting> percent(List<Sighting> sightings) {
        return sightings.stream().map(it -> new Sighting(it.lap(), it.corner(), it.phase(), 100 * it.figure(), it.sample()))
                .toList();
    }

    /** The one wheel of the axle that does it, where the other never does. */
    private static Optional<Wheel> one(WheelSlip slip, List<Wheel> wheels, boolean spinning, List<LapPhases> laps,
            Report report, Complaints complaints, Limits limits) {
        if (wheels.size() < 2) {
            return wheels.stream().findFirst();
        }
        Measure measure = measure(report.symptom(), Optional.empty(), spinning, limits);
        Map<Wheel, Boolean> does = wheels.stream().collect(Collectors.toMap(wheel -> wheel, wheel -> complaints
                .of(measure, percent(slip.sightings(wheel, spinning, laps))).stream()
                .anyMatch(it -> it.phase().equals(report.phase()))));
        List<Wheel> doing = wheels.stream().filter(does::get).toList();
        return doing.size() == 1 ? Optional.of(doing.get(0)) : Optional.empty();
    }
}
