package camberwell.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.car.Car;
import camberwell.car.Dimension;
import camberwell.car.Setting;
import camberwell.car.TyreSpec;
import camberwell.problem.ProblemsException;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Driven;
import camberwell.run.Lap;
import camberwell.run.Made;
import camberwell.run.Report;
import camberwell.run.Talked;
import camberwell.run.Tried;
import camberwell.run.TyreReading;
import camberwell.units.Quantity;
import camberwell.units.Range;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Aid;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.LapFlag;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Witness;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.NotBlank;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RoundTripTest {

    private static final Path CARS = Path.of("demo-cases/cars");

    @Property(tries = 300)
    @Label("whatever can be said in a case is read back as it was written")
    void randomCases(@ForAll long seed) throws IOException {
        Path folder = Files.createTempDirectory("round-trip");
        Path file = folder.resolve("case.yaml");
        try {
            Case run = new RandomCase(new Random(seed), file).make();
            new CaseWriter().write(run, file);
            CaseFile back = new CaseReader().read(file);
            assertEquals(run, back.run(), () -> text(file));
            assertTrue(back.warnings().stream().allMatch(it -> it.message().startsWith("neither")));
        } finally {
            Files.deleteIfExists(file);
            Files.delete(folder);
        }
    }

    @Property(tries = 300)
    @Label("any line of text is a title: quotes, colons, numbers and other scripts")
    void randomTitles(@ForAll @NotBlank @StringLength(max = 40) String title) {
        boolean oneLine = title.codePoints().noneMatch(it -> Character.isISOControl(it)
                || Character.getType(it) == Character.SURROGATE || it >= 0x2028 && it <= 0x202E
                || it >= 0x2066 && it <= 0x2069 || it == 0xFFFE || it == 0xFFFF);
        Assume.that(oneLine && !title.isBlank());
        Case run = new Case(title, "-", new Car(title, Optional.of(Drive.ALL), Map.of(), Map.of(), Map.of(), false),
                Conditions.UNKNOWN, Map.of(), List.of(Report.of(Symptom.PULLING)), List.of());
        String text = new CaseWriter().text(run, Path.of("case.yaml"));
        assertEquals(run, new CaseReader().read("-", new ByteArrayInputStream(
                text.getBytes(StandardCharsets.UTF_8)), Path.of("")).run());
    }

    @Test
    @DisplayName("a car that came from a file is pointed to from wherever the case is written")
    void carByReference(@TempDir Path folder) throws IOException {
        Files.createDirectories(folder.resolve("cars"));
        Files.createDirectories(folder.resolve("runs/today"));
        Files.copy(CARS.resolve("corvane-coupe.yaml"), folder.resolve("cars/corvane-coupe.yaml"));
        Path first = folder.resolve("first.yaml");
        Files.writeString(first, """
                title: First
                car: cars/corvane-coupe.yaml
                setup: {front-camber: -3.4 deg}
                reports: [{symptom: understeer}]
                """);
        Case run = new CaseReader().read(first).run()
                .withSetup(Map.of(Adjuster.REAR_WING, new Quantity(6, Unit.POSITION)));
        Path second = folder.resolve("runs/today/second.yaml");
        new CaseWriter().write(run, second);
        assertTrue(Files.readString(second).contains("car: ../../cars/corvane-coupe.yaml\n"));
        Case back = new CaseReader().read(second).run();
        assertEquals(run.car(), back.car());
        assertEquals(run.setup(), back.setup());
        assertEquals(run.carFile(), back.carFile());
    }

    @Test
    @DisplayName("earlier runs are pointed to")
    void earlierRuns(@TempDir Path folder) throws IOException {
        String car = "car: {name: A, drive: rear}\nreports: [{symptom: pulling}]\n";
        Files.writeString(folder.resolve("first.yaml"), car);
        Files.writeString(folder.resolve("second.yaml"), car + "earlier-runs: [first.yaml]\n");
        Case run = new CaseReader().read(folder.resolve("second.yaml")).run();
        Files.createDirectory(folder.resolve("copies"));
        new CaseWriter().write(run, folder.resolve("copies/second.yaml"));
        assertEquals(run.earlier(), new CaseReader().read(folder.resolve("copies/second.yaml")).run().earlier());
    }

    @Test
    @DisplayName("a file is replaced as a whole, and nothing is left beside it")
    void replaces(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("case.yaml");
        Files.writeString(file, "old\n".repeat(1000));
        new CaseWriter().write(new RandomCase(new Random(1), file).make(), file);
        assertTrue(Files.readString(file).startsWith("title:"));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(List.of(file), files.toList());
        }
    }

    @Test
    @DisplayName("a case that cannot be written is a problem of that file")
    void cannotBeWritten(@TempDir Path folder) {
        Path file = folder.resolve("nowhere/case.yaml");
        ProblemsException e = assertThrows(ProblemsException.class,
                () -> new CaseWriter().write(new RandomCase(new Random(1), file).make(), file));
        assertTrue(e.getMessage().startsWith(file + ": cannot be written"), e.getMessage());
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            return e.toString();
        }
    }

    /** Draws cases in which anything that may be left out is left out half of the time. */
    private record RandomCase(Random random, Path file) {

        Case make() {
            Optional<Path> carFile = maybe(() -> CARS.toAbsolutePath().resolve("corvane-coupe.yaml"));
            Car car = carFile.map(it -> new CaseReader().readCar(it)).orElseGet(this::car);
            Map<Adjuster, Quantity> setup = new EnumMap<>(Adjuster.class);
            car.adjusters().forEach((adjuster, setting) -> maybe(() -> setup.put(adjuster, between(
                    setting.min().value(), setting.max().value(), setting.now().unit()))));
            Map<Wheel, TyreReading> tyres = new EnumMap<>(Wheel.class);
            for (Wheel wheel : Wheel.values()) {
                maybe(() -> tyres.put(wheel, reading()));
            }
            List<Report> reports = IntStream.range(0, random.nextInt(4)).mapToObj(it -> report()).toList();
            return new Case("Run " + random.nextInt(), file.toString(), car.with(setup), conditions(), tyres, reports,
                    List.of(), carFile.map(Path::toString), setup, tried(car), driven(car),
                    Talked.NOTHING);
        }

        private Driven driven(Car car) {
            Driven.Sheet sheet = new Driven.Sheet(maybe(() -> 1 + random.nextInt(999)),
                    maybe(() -> LocalDateTime.of(2026, 1 + random.nextInt(12), 3, random.nextInt(24), 20)),
                    maybe(() -> "Driver: " + random.nextInt()), maybe(() -> "no"), maybe(() -> "2"),
                    random.nextBoolean());
            List<Lap> laps = IntStream.range(0, random.nextInt(5)).mapToObj(it -> {
                Optional<Double> seconds = maybe(() -> 90 + Math.rint(random.nextDouble() * 1000) / 1000);
                EnumSet<LapFlag> flags = EnumSet.noneOf(LapFlag.class);
                if (seconds.isEmpty() || random.nextBoolean()) {
                    flags.add(one(LapFlag.values()));
                }
                return new Lap(seconds, flags);
            }).toList();
            List<Made> changed = tried(car).stream().map(it -> new Made(it.change(), it.moved())).toList();
            return new Driven(sheet, changed, laps, maybe(() -> one(Outcome.values())), tried(car));
        }

        private List<Tried> tried(Car car) {
            List<Adjuster> adjusters = List.copyOf(car.adjusters().keySet());
            return IntStream.range(0, adjusters.isEmpty() ? 0 : random.nextInt(3)).mapToObj(it -> {
                Adjuster adjuster = adjusters.get(random.nextInt(adjusters.size()));
                Setting setting = car.adjusters().get(adjuster);
                Tried.Moved moved = new Tried.Moved(maybe(() -> 1 + random.nextInt(9)), maybe(setting::now),
                        maybe(setting::max), random.nextBoolean());
                Tried.On on = maybe(() -> new Tried.On(Optional.of(one(Symptom.values())),
                        maybe(() -> one(Place.values())), maybe(() -> one(Phase.values())),
                        maybe(() -> one(CornerSpeed.values())))).orElse(Tried.On.ALL);
                Tried.Trial trial = new Tried.Trial(maybe(() -> 1 + random.nextInt(99)),
                        maybe(() -> random.nextInt(99)), maybe(() -> random.nextInt(99)), 1 + random.nextInt(3),
                        maybe(() -> one(Witness.values())), maybe(() -> one(Surface.values())), random.nextBoolean());
                return new Tried(new Change(adjuster, adjuster.directions().get(random.nextInt(2))), moved,
                        one(Outcome.values()), on, trial);
            }).toList();
        }

        private Car car() {
            Map<Adjuster, Setting> adjusters = new EnumMap<>(Adjuster.class);
            for (Adjuster adjuster : Adjuster.values()) {
                maybe(() -> adjusters.put(adjuster, setting(adjuster)));
            }
            // One camber is set once: an axle's, or its wheels'.
            Arrays.stream(Wheel.values()).filter(wheel -> adjusters.containsKey(Adjuster.camberOf(wheel.axle())))
                    .forEach(wheel -> adjusters.remove(Adjuster.camberOf(wheel)));
            Map<Axle, TyreSpec> tyres = new EnumMap<>(Axle.class);
            for (Axle axle : Axle.values()) {
                maybe(() -> tyres.put(axle, tyre()));
            }
            Map<Dimension, Quantity> dimensions = new EnumMap<>(Dimension.class);
            for (Dimension dimension : Dimension.values()) {
                maybe(() -> dimensions.put(dimension, between(dimension.least(), dimension.most(), dimension.unit())));
            }
            return new Car("Car: " + random.nextInt(), Optional.of(one(Drive.values())), adjusters, tyres, dimensions,
                    false).withAids(random.nextBoolean() ? Set.of() : Set.of(one(Aid.values())));
        }

        private Setting setting(Adjuster adjuster) {
            Range range = one(adjuster.measure().ranges().toArray(Range[]::new));
            Unit unit = range.units().get(0);
            Quantity now = between(range.least(), range.most(), unit);
            boolean ramp = unit == Unit.DEGREE && adjuster.id().startsWith("differential");
            Quantity min = between(range.least(), now.value(), unit);
            Quantity max = between(now.value(), range.most(), unit);
            double travel = max.value() - min.value();
            // From a thousandth of the way to all of it: more steps nobody counts, and a longer one leads nowhere.
            return new Setting(now, min, max, between(travel / 1000, travel, unit),
                    ramp || adjuster.adjustment().countedEitherWay() && random.nextBoolean());
        }

        private TyreSpec tyre() {
            Optional<Quantity> low = maybe(() -> between(40, 80, Unit.CELSIUS));
            Optional<Quantity> target = maybe(this::pressure);
            Optional<Quantity> minimum = maybe(this::pressure).filter(cold ->
                    target.isEmpty() || target.get().compareTo(cold) >= 0);
            Optional<Quantity> rim = maybe(() -> between(13, 20, Unit.INCH));
            Optional<Quantity> diameter = maybe(() -> between(500, 700, Unit.MILLIMETRE)).filter(tyre ->
                    rim.isEmpty() || tyre.compareTo(rim.get()) > 0);
            return new TyreSpec(low, low.map(it -> it.withValue(it.value() + 15)), target, minimum.isEmpty() ? maybe(this::pressure) : target,
                    minimum.isEmpty() ? maybe(this::pressure) : Optional.empty(), minimum, rim, diameter,
                    maybe(() -> between(0.01, 0.1, Unit.DEGREE)));
        }

        private Conditions conditions() {
            return new Conditions(maybe(() -> one(Surface.values())), maybe(() -> between(0, 100, Unit.FAHRENHEIT)),
                    maybe(() -> between(0, 60, Unit.CELSIUS)), maybe(() -> between(0, 80, Unit.CELSIUS)),
                    maybe(() -> between(-100, 2000, Unit.METRE)), one(Turn.values()));
        }

        private TyreReading reading() {
            Optional<Quantity> cold = maybe(this::pressure);
            return new TyreReading(maybe(() -> between(-20, 200, Unit.CELSIUS)),
                    maybe(() -> between(-20, 200, Unit.CELSIUS)), maybe(() -> between(60, 380, Unit.FAHRENHEIT)),
                    cold, maybe(() -> cold.map(it -> it.withValue(it.value() * 1.1)).orElseGet(this::pressure)));
        }

        private Report report() {
            return new Report(one(Symptom.values()), maybe(() -> one(Place.values())),
                    maybe(() -> one(Phase.values())), maybe(() -> one(CornerSpeed.values())),
                    one(Severity.values()), one(Occurrence.values()), maybe(() -> one(Since.values())),
                    maybe(() -> one(Turn.values())));
        }

        private Quantity pressure() {
            return random.nextBoolean() ? between(1, 3, Unit.BAR) : between(15, 45, Unit.PSI);
        }

        private Quantity between(double least, double most, Unit unit) {
            double value = least + random.nextDouble() * (most - least);
            double rounded = Math.rint(value * 100) / 100;
            return new Quantity(random.nextBoolean() && rounded >= least && rounded <= most ? rounded : value, unit);
        }

        private <T> T one(T[] values) {
            return values[random.nextInt(values.length)];
        }

        private <T> Optional<T> maybe(Supplier<T> value) {
            return random.nextBoolean() ? Optional.ofNullable(value.get()) : Optional.empty();
        }
    }
}
