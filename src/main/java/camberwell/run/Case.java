package camberwell.run;

import camberwell.car.Car;
import camberwell.saying.Heard;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Compound;
import camberwell.vocabulary.Wheel;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A case to advise on: a car as it ran, the day, the tyres and the complaints.
 *
 * @param title what people call the case
 * @param source the file it came from, or {@code -}
 * @param car the car as it ran: its file's settings with the case's own on top
 * @param earlier earlier runs of the same car, oldest first, from which camber sizing can learn
 * @param carFile the file that the car was read from; empty when it stands in the case itself
 * @param setup where this run differs from the car's file, as it was written; {@code car} has it already
 * @param tried what was changed since the complaints began, oldest first, and what came of it
 * @param driven the run as the book keeps it: number, date, laps
 * @param talked what was said of it; the reports have it already
 * @param background on which tyres, how far, by whom
 */
public record Case(String title, String source, Car car, Conditions conditions, Map<Wheel, TyreReading> tyres,
        List<Report> reports, List<Case> earlier, Optional<String> carFile, Map<Adjuster, Quantity> setup,
        List<Tried> tried, Driven driven, Talked talked, Background background) {

    /** Copies the collections, the maps in the order of the vocabulary. */
    public Case {
        tyres = ordered(Wheel.class, tyres);
        reports = List.copyOf(reports);
        earlier = List.copyOf(earlier);
        setup = ordered(Adjuster.class, setup);
        tried = List.copyOf(tried);
    }

    /** A case of which nobody has said on what tyres, how far or by whom. */
    public Case(String title, String source, Car car, Conditions conditions, Map<Wheel, TyreReading> tyres,
            List<Report> reports, List<Case> earlier, Optional<String> carFile, Map<Adjuster, Quantity> setup,
            List<Tried> tried, Driven driven, Talked talked) {
        this(title, source, car, conditions, tyres, reports, earlier, carFile, setup, tried, driven, talked,
                Background.UNKNOWN);
    }

    /** A case of which nobody has spoken in words of their own. */
    public Case(String title, String source, Car car, Conditions conditions, Map<Wheel, TyreReading> tyres,
            List<Report> reports, List<Case> earlier, Optional<String> carFile, Map<Adjuster, Quantity> setup,
            List<Tried> tried, Driven driven) {
        this(title, source, car, conditions, tyres, reports, earlier, carFile, setup, tried, driven, Talked.NOTHING);
    }

    /** A case on which nothing was tried yet. */
    public Case(String title, String source, Car car, Conditions conditions, Map<Wheel, TyreReading> tyres,
            List<Report> reports, List<Case> earlier, Optional<String> carFile, Map<Adjuster, Quantity> setup) {
        this(title, source, car, conditions, tyres, reports, earlier, carFile, setup, List.of(), Driven.UNKNOWN, Talked.NOTHING);
    }

    /** A case whose car stands in it, as it ran. */
    public Case(String title, String source, Car car, Conditions conditions, Map<Wheel, TyreReading> tyres,
            List<Report> reports, List<Case> earlier) {
        this(title, source, car, conditions, tyres, reports, earlier, Optional.empty(), Map.of());
    }

    private static <K extends Enum<K>, V> Map<K, V> ordered(Class<K> type, Map<K, V> map) {
        EnumMap<K, V> copy = new EnumMap<>(type);
        copy.putAll(map);
        return Collections.unmodifiableMap(copy);
    }

    /** The same case by another name. */
    public Case withSource(String name) {
        return new Case(title, name, car, conditions, tyres, reports, earlier, carFile, setup, tried, driven, talked, background);
    }

    /** Whether it was driven on tyres for the rain: window and target of the car's file are those of its dry ones. */
    public boolean onRainTyres() {
        return background.stint().compound().filter(it -> it == Compound.WET || it == Compound.INTERMEDIATE).isPresent();
    }

    /** The hot pressure that a wheel's tyre is to come to; empty on tyres for the rain, whose own nobody has said. */
    public Optional<Quantity> hotTarget(Wheel wheel) {
        return car.tyres(wheel.axle()).hotTarget(wheel).filter(target -> !onRainTyres());
    }

    /** What was understood of the driver's own words, if any were said. */
    public Optional<Heard> heard() {
        return talked.heard();
    }

    /** The same case with what the driver said of it: the complaints on top, and the surface. */
    public Case withHeard(Heard said) {
        List<Report> all = new ArrayList<>(reports);
        said.told().stream().map(Report::of).forEach(all::add);
        return new Case(title, source, car, said.surface().map(conditions::withSurface).orElse(conditions), tyres,
                Report.once(all), earlier, carFile, setup, tried, driven,
                new Talked(Optional.of(said), talked.answered()), background);
    }

    /** The same case with the complaints that were heard as complaints like others; the words stay as its comment. */
    public Case writtenOut() {
        if (talked.heard().isEmpty()) {
            return this;
        }
        Optional<String> comment = background.comment().or(() -> talked.heard().map(Heard::said));
        return new Case(title, source, car, conditions, tyres, reports, earlier, carFile, setup, tried, driven,
                new Talked(Optional.empty(), talked.answered()),
                new Background(background.stint(), background.pupil(), background.answers(), comment));
    }

    /** The same case with other things answered in a debrief. */
    public Case withAnswered(List<String> words) {
        return new Case(title, source, car, conditions, tyres, reports, earlier, carFile, setup, tried, driven,
                new Talked(talked.heard(), words), background);
    }

    /** The same case with more known of the tyres it was driven on, and of who drove. */
    public Case withBackground(Background other) {
        return new Case(title, source, car, conditions, tyres, reports, earlier, carFile, setup, tried, driven, talked, other);
    }

    /** The same case with more known of its car. */
    public Case withCar(Car other) {
        return new Case(title, source, other, conditions, tyres, reports, earlier, carFile, setup, tried, driven, talked,
                background);
    }

    /** The same case with other complaints. */
    public Case withReports(List<Report> others) {
        return new Case(title, source, car, conditions, tyres, others, earlier, carFile, setup, tried, driven, talked,
                background);
    }

    /** The same case on another day, or of another place. */
    public Case withConditions(Conditions others) {
        return new Case(title, source, car, others, tyres, reports, earlier, carFile, setup, tried, driven, talked, background);
    }

    /** The same case with other tyre readings. */
    public Case withTyres(Map<Wheel, TyreReading> others) {
        return new Case(title, source, car, conditions, others, reports, earlier, carFile, setup, tried, driven, talked,
                background);
    }

    /**
     * The same case with the car set otherwise where {@code changes} says so; adjusters that it lacks are left out.
     *
     * @throws IllegalArgumentException if a setting is not in a unit of the same dimension as the car's own
     */
    public Case withSetup(Map<Adjuster, Quantity> changes) {
        EnumMap<Adjuster, Quantity> merged = new EnumMap<>(Adjuster.class);
        merged.putAll(setup);
        car.asListed(changes).forEach((adjuster, setting) -> {
            if (car.setting(adjuster).isPresent()) {
                merged.put(adjuster, setting);
            }
        });
        return new Case(title, source, car.with(changes), conditions, tyres, reports, earlier, carFile, merged,
                tried, driven, talked, background);
    }

    /** The same case with other changes tried. */
    public Case withTried(List<Tried> others) {
        return new Case(title, source, car, conditions, tyres, reports, earlier, carFile, setup, others, driven, talked,
                background);
    }

    /** The same case of another run. */
    public Case withDriven(Driven other) {
        return new Case(title, source, car, conditions, tyres, reports, earlier, carFile, setup, tried, other, talked,
                background);
    }

    /** The same case under another title. */
    public Case withTitle(String other) {
        return new Case(other, source, car, conditions, tyres, reports, earlier, carFile, setup, tried, driven, talked,
                background);
    }

    /** The same case with other earlier runs. */
    public Case withEarlier(List<Case> others) {
        return new Case(title, source, car, conditions, tyres, reports, others, carFile, setup, tried, driven, talked,
                background);
    }

    /**
     * The same case of another car, or of one whose file was edited, set as this one is where it can be.
     *
     * @param file the file that the car was read from
     */
    public Case ofCar(Car other, Optional<String> file) {
        return new Case(title, source, other, conditions, tyres, reports, earlier, file, Map.of(), tried, driven, talked,
                background)
                .withSetup(setup);
    }
}
