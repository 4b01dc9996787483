package camberwell.model;

import camberwell.car.Car;
import camberwell.input.CaseReader;
import java.nio.file.Path;
import java.util.List;

/** The cars of the invented paddock. */
final class DemoCars {

    static final Car CORVANE = read("demo-cases/cars/corvane-coupe.yaml");
    static final Car HARROW = read("demo-cases/cars/harrow-rally-saloon.yaml");
    static final Car LARKSPUR = read("demo-cases/cars/larkspur-hatch.yaml");
    static final Car TESSEL = read("demo-cases/cars/tessel-single-seater.yaml");
    static final Car BRAMBLE = read("demo-cases/cars/bramble-roadster.yaml");
    static final List<Car> ALL = List.of(CORVANE, HARROW, LARKSPUR, TESSEL, BRAMBLE);

    private DemoCars() {
    }

    private static Car read(String file) {
        return new CaseReader().readCar(Path.of(file));
    }
}
