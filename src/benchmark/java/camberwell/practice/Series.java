package camberwell.practice;

import camberwell.car.Car;
import camberwell.input.CaseReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * Cars, and how many faults of one and of two settings are drawn for each. A car's name in the series is its seed.
 *
 * @param title what is printed above its table
 * @param again how often faults were drawn for these cars before: those of the drawings before are left out
 */
record Series(String title, List<String> cars, int single, int twofold, int again) {

    private static final List<String> SIX = List.of("demo-cases/cars/corvane-coupe.yaml",
            "demo-cases/cars/harrow-rally-saloon.yaml", "demo-cases/cars/larkspur-hatch.yaml",
            "demo-cases/cars/sandling-tourer.yaml", "demo-cases/cars/tessel-single-seater.yaml",
            "rules/reference-cars/loose-rear-drive.yaml");
    private static final List<String> FOUR = List.of("src/benchmark/cars/small-single-seater.yaml",
            "src/benchmark/cars/stiff-tailed-hatch.yaml", "src/benchmark/cars/rear-engined-tourer.yaml",
            "src/benchmark/cars/all-wheel-drive-estate.yaml");
    private static final List<String> THREE = List.of("src/benchmark/cars/mid-engined-prototype.yaml",
            "src/benchmark/cars/nimble-roadster.yaml", "src/benchmark/cars/winged-front-drive-tourer.yaml");
    private static final List<String> MORE = List.of("src/benchmark/cars/front-engined-grand-tourer.yaml",
            "src/benchmark/cars/high-downforce-single-seater.yaml", "src/benchmark/cars/plain-front-drive.yaml",
            "src/benchmark/cars/tail-heavy-coupe.yaml");
    private static final List<String> UNSEEN = List.of("src/benchmark/cars/heavy-saloon.yaml",
            "src/benchmark/cars/club-two-seater.yaml", "src/benchmark/cars/front-drive-hatch.yaml");
    /** A fault is worth the trial from so much on: two clear complaints or one strong one. */
    private static final double WORTH = 4;

    /** The series that the words ask for: half of the first one is set aside, of the others nothing is. */
    static Series of(Set<String> words) {
        return words.contains("others") ? new Series("Faults of other cars", FOUR, 4, 2, 0)
                : words.contains("strangers") ? new Series("Faults of three cars that nothing was mended by", THREE, 7, 3, 0)
                : words.contains("unseen") ? new Series("Faults of three cars by somebody else", UNSEEN, 7, 3, 0)
                : words.contains("more") ? new Series("Faults of four cars more", MORE, 6, 3, 0)
                : words.contains("fresh") ? new Series("Other faults of the same cars", SIX, 5, 3, 1)
                : new Series("Faults", SIX, 11, 6, 0);
    }

    /** Whether every second fault is set aside. */
    boolean halved() {
        return cars == SIX && again == 0;
    }

    Car car(String file) {
        return new CaseReader().readCar(Path.of(System.getProperty("camberwell.home", "")).resolve(file));
    }

    /** The faults of a car that are worth the trial to a driver who knows it. */
    List<Patient> patients(String file, Car car, TestDriver driver) {
        List<Fault> before = again == 0 ? List.of() : new Series("", cars, 11, 6, again - 1).patients(file, car, driver)
                .stream().map(Patient::fault).toList();
        List<Patient> patients = new ArrayList<>();
        Random random = new Random(file.hashCode() + again);
        for (int i = 0; i < single + twofold; i++) {
            Optional<Fault> fault = Session.draw(driver, i < single ? 1 : 2, WORTH, random);
            if (fault.isPresent() && !before.contains(fault.get())
                    && patients.stream().noneMatch(it -> it.fault().equals(fault.get()))) {
                patients.add(new Patient(car, fault.get(), patients.size()));
            }
        }
        return patients;
    }
}
