package camberwell.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.car.Car;
import camberwell.car.Dimension;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Drive;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DemoCarsTest {

    static List<Path> cars() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-cases/cars"))) {
            return files.sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("cars")
    @DisplayName("every car of the paddock reads without a problem, and its adjusters stand on their steps")
    void reads(Path file) {
        Car car = new CaseReader().readCar(file);
        car.adjusters().forEach((adjuster, setting) -> {
            double down = (setting.now().value() - setting.min().value()) / setting.step().value();
            double up = (setting.max().value() - setting.now().value()) / setting.step().value();
            assertEquals(Math.rint(down), down, 1e-6, adjuster + " from its lower stop");
            assertEquals(Math.rint(up), up, 1e-6, adjuster + " to its upper stop");
        });
        for (Axle axle : Axle.values()) {
            assertTrue(car.tyres(axle).windowLow().isPresent() && car.tyres(axle).hotTarget().isPresent());
        }
    }

    @ParameterizedTest
    @MethodSource("cars")
    @DisplayName("each has the dimensions of a car that could exist")
    void couldExist(Path file) {
        Car car = new CaseReader().readCar(file);
        // Flat-road roll of a lumped mass on its roll axis; the formula is that of the load transfer in RCVD (Milliken
        // and Milliken 1995, chapter 16). Road cars roll some 4 to 7 degrees for 1 g, cars with much downforce a few
        // tenths: common practice, no source.
        double unsprung = si(car, Dimension.FRONT_UNSPRUNG) + si(car, Dimension.REAR_UNSPRUNG);
        double front = si(car, Dimension.FRONT_WEIGHT);
        double axis = front * si(car, Dimension.FRONT_ROLL_CENTRE) + (1 - front) * si(car, Dimension.REAR_ROLL_CENTRE);
        double moment = (si(car, Dimension.MASS) - unsprung) * 9.80665 * (si(car, Dimension.CG_HEIGHT) - axis);
        double stiffness = rollStiffness(car, Axle.FRONT) + rollStiffness(car, Axle.REAR);
        double roll = Math.toDegrees(moment / stiffness);
        assertTrue(roll > 0.1 && roll < 6, () -> "rolls " + roll + " degrees for 1 g");
        // Corner frequencies without tyre springs: 1.2 Hz for a soft road car to 6 Hz with much downforce.
        for (Axle axle : Axle.values()) {
            boolean atFront = axle == Axle.FRONT;
            double mass = si(car, Dimension.MASS) * (atFront ? front : 1 - front) / 2
                    - si(car, atFront ? Dimension.FRONT_UNSPRUNG : Dimension.REAR_UNSPRUNG) / 2;
            double rate = si(car, atFront ? Dimension.FRONT_WHEEL_RATE : Dimension.REAR_WHEEL_RATE);
            double hertz = Math.sqrt(rate / mass) / (2 * Math.PI);
            assertTrue(hertz > 1.0 && hertz < 6, () -> axle + " bounces at " + hertz + " Hz");
        }
        assertEquals(car.drive().get() == Drive.FRONT ? 1 : car.drive().get() == Drive.REAR ? 0 : 0.5,
                si(car, Dimension.FRONT_DRIVE));
    }

    @ParameterizedTest
    @MethodSource("cars")
    @DisplayName("a bar at its softest still is a bar, and a wing at its least does not lift")
    void stepsOfBarsAndWings(Path file) {
        Car car = new CaseReader().readCar(file);
        leaves(car, Adjuster.FRONT_ANTI_ROLL_BAR, Direction.SOFTER, Dimension.FRONT_BAR, Dimension.FRONT_BAR_STEP);
        leaves(car, Adjuster.REAR_ANTI_ROLL_BAR, Direction.SOFTER, Dimension.REAR_BAR, Dimension.REAR_BAR_STEP);
        leaves(car, Adjuster.FRONT_WING, Direction.LESS, Dimension.FRONT_DOWNFORCE, Dimension.FRONT_WING_STEP);
        leaves(car, Adjuster.REAR_WING, Direction.LESS, Dimension.REAR_DOWNFORCE, Dimension.REAR_WING_STEP);
    }

    @Test
    @DisplayName("the paddock has cars of all drives, with wings and without, with much to adjust and with little")
    void variety() throws IOException {
        List<Car> cars = cars().stream().map(new CaseReader()::readCar).toList();
        for (Drive drive : Drive.values()) {
            assertTrue(cars.stream().anyMatch(car -> car.drive().get() == drive), drive.id());
        }
        assertTrue(cars.stream().anyMatch(car -> car.setting(Adjuster.FRONT_WING).isPresent()));
        assertTrue(cars.stream().anyMatch(car -> car.adjusters().size() <= 6));
        assertTrue(cars.stream().anyMatch(car -> car.adjusters().values().stream()
                .anyMatch(setting -> setting.now().unit() == Unit.MILLIMETRE)));
        assertTrue(cars.stream().anyMatch(car -> car.adjusters().values().stream()
                .anyMatch(setting -> setting.largerIsSofter())));
    }

    private static void leaves(Car car, Adjuster adjuster, Direction down, Dimension now, Dimension step) {
        car.setting(adjuster).ifPresent(setting -> {
            double least = si(car, now) - setting.stepsLeft(down) * si(car, step);
            assertTrue(least > 0, () -> adjuster + " at its least gives " + least);
        });
    }

    private static double rollStiffness(Car car, Axle axle) {
        boolean atFront = axle == Axle.FRONT;
        double track = si(car, atFront ? Dimension.FRONT_TRACK : Dimension.REAR_TRACK);
        return si(car, atFront ? Dimension.FRONT_WHEEL_RATE : Dimension.REAR_WHEEL_RATE) * track * track / 2
                + si(car, atFront ? Dimension.FRONT_BAR : Dimension.REAR_BAR);
    }

    private static double si(Car car, Dimension dimension) {
        return car.dimension(dimension).orElseThrow(() -> new AssertionError(dimension.id() + " is missing")).si();
    }
}
