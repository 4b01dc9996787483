package camberwell.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.car.Car;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Report;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Symptom;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CarClassesTest {

    @TempDir
    private Path folder;

    static List<Path> classes() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("rules/car-classes"))) {
            return files.sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("classes")
    @DisplayName("a class of car says that it is one, also after it was written into a case")
    void generic(Path file) {
        Car car = new CaseReader().readCar(file);
        assertTrue(car.generic());
        Case run = new Case("A class of car", "-", car, Conditions.UNKNOWN, Map.of(),
                List.of(Report.of(Symptom.UNDERSTEER)), List.of());
        Path saved = folder.resolve("case.yaml");
        new CaseWriter().write(run, saved);
        assertEquals(car, new CaseReader().read(saved).run().car());
    }

    @Test
    @DisplayName("there is a class for each way to drive the wheels")
    void everyDrive() throws IOException {
        assertEquals(Set.of(Drive.values()), classes().stream().map(new CaseReader()::readCar)
                .map(car -> car.drive().orElseThrow()).collect(Collectors.toSet()));
    }
}
