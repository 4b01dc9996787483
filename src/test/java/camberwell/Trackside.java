package camberwell;

import camberwell.input.CaseReader;
import camberwell.run.Case;
import camberwell.run.TyreReading;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Wheel;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** Cases of one invented car, for tests of what its tyres show and of how far its adjusters are moved. */
public final class Trackside {

    /** The car of every case here, as it is written in a case. */
    public static final String CAR = """
            car:
              name: Tessel test mule
              drive: rear
              adjusters:
                front-toe: {now: -0.10 deg, min: -0.30 deg, max: 0.20 deg, step: 0.05 deg}
                rear-toe: {now: 0.15 deg, min: 0.00 deg, max: 0.40 deg, step: 0.05 deg}
                front-camber: {now: -3.0 deg, min: -4.2 deg, max: -1.5 deg, step: 0.1 deg}
                rear-camber: {now: -2.0 deg, min: -3.5 deg, max: -1.0 deg, step: 0.25 deg}
                caster: {now: 7.0 deg, min: 6.0 deg, max: 9.0 deg, step: 0.5 deg}
                front-pressure: {now: 1.70 bar, min: 1.20 bar, max: 2.20 bar, step: 0.01 bar}
                rear-pressure: {now: 1.70 bar, min: 1.20 bar, max: 2.20 bar, step: 0.05 bar}
              tyres:
                front: {window: [75 °C, 100 °C], hot-target: 1.90 bar, cold-minimum: 1.40 bar, rim: 18 in}
                rear: {window: [75 °C, 100 °C], hot-target: 1.90 bar, cold-minimum: 1.60 bar}
              dimensions: {mass: 1250 kg, front-weight: 50 %, kingpin-inclination: 12 deg}
            """;

    private Trackside() {
    }

    /** The case that {@code body} writes, of {@link #CAR}. */
    public static Case run(String body) {
        return yaml(text(body));
    }

    /** The text of the case that {@code body} writes, of {@link #CAR}. */
    public static String text(String body) {
        return "title: A run at Harrow Vale\n" + CAR + body;
    }

    /** The case written {@code yaml}. */
    public static Case yaml(String yaml) {
        return new CaseReader().read("-", new ByteArrayInputStream(yaml.getBytes(StandardCharsets.UTF_8)), Path.of(""))
                .run();
    }

    /** A case in which these tyres were read, and nothing else. */
    public static Case tyres(Map<Wheel, TyreReading> tyres) {
        return run("conditions: {air: 18 °C, track: 27 °C}\n").withTyres(tyres);
    }

    /** Inner, middle and outer in °C, nothing else. */
    public static TyreReading tread(double inner, double middle, double outer) {
        return new TyreReading(celsius(inner), celsius(middle), celsius(outer), Optional.empty(), Optional.empty());
    }

    /** Cold and hot pressure in bar, nothing else. */
    public static TyreReading gauge(double cold, double hot) {
        return new TyreReading(Optional.empty(), Optional.empty(), Optional.empty(), bar(cold), bar(hot));
    }

    /** All five figures, °C and bar. */
    public static TyreReading tyre(double inner, double middle, double outer, double cold, double hot) {
        return new TyreReading(celsius(inner), celsius(middle), celsius(outer), bar(cold), bar(hot));
    }

    /** The same reading on both wheels of the front axle. */
    public static Map<Wheel, TyreReading> front(TyreReading tyre) {
        return Map.of(Wheel.FRONT_LEFT, tyre, Wheel.FRONT_RIGHT, tyre);
    }

    /** The tyres of a car that is mirrored left for right. */
    public static Map<Wheel, TyreReading> mirrored(Map<Wheel, TyreReading> tyres) {
        Map<Wheel, TyreReading> mirrored = new EnumMap<>(Wheel.class);
        tyres.forEach((wheel, tyre) -> mirrored.put(wheel.partner(), tyre));
        return mirrored;
    }

    /** The same figures written in °F and psi. */
    public static TyreReading imperial(TyreReading tyre) {
        return new TyreReading(tyre.inner().map(Trackside::fahrenheit), tyre.middle().map(Trackside::fahrenheit),
                tyre.outer().map(Trackside::fahrenheit), tyre.coldPressure().map(cold -> cold.to(Unit.PSI)),
                tyre.hotPressure().map(hot -> hot.to(Unit.PSI)));
    }

    private static Quantity fahrenheit(Quantity temperature) {
        return temperature.to(Unit.FAHRENHEIT);
    }

    private static Optional<Quantity> celsius(double value) {
        return Optional.of(new Quantity(value, Unit.CELSIUS));
    }

    private static Optional<Quantity> bar(double value) {
        return Optional.of(new Quantity(value, Unit.BAR));
    }
}
