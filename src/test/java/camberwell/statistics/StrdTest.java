package camberwell.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import camberwell.statistics.StintFit.Trend;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** NIST's Statistical Reference Datasets; where they stand and whose they are is told in {@code nist/SOURCE.txt}. */
@DisplayName("The certified values of NIST's reference data sets, by the same fit as lap times")
class StrdTest {

    private static final Path FOLDER = Path.of("src/test/resources/nist");

    private static List<String> lines(String name) throws IOException {
        return Files.readAllLines(FOLDER.resolve(name + ".dat"));
    }

    /** Two numbers a line after the line that begins with {@code Data:}, which comes last. */
    private static List<double[]> data(String name) throws IOException {
        List<String> lines = lines(name);
        int start = 60;
        List<double[]> data = new ArrayList<>();
        for (String line : lines.subList(start, lines.size())) {
            String[] words = line.strip().split("\\s+");
            if (words.length == 2) {
                data.add(new double[] {Double.parseDouble(words[0]), Double.parseDouble(words[1])});
            }
        }
        return data;
    }

    private static double certified(String name, String pattern) throws IOException {
        Matcher matcher = Pattern.compile(pattern).matcher(String.join("\n", lines(name).subList(0, 60)));
        if (!matcher.find()) {
            throw new AssertionError(name + " has no " + pattern);
        }
        return Double.parseDouble(matcher.group(1));
    }

    @Test
    @DisplayName("Norris: a straight line, its standard errors and its residuals")
    void norris() throws IOException {
        List<double[]> data = data("Norris");
        Stint stint = new Stint(data.stream().mapToDouble(row -> row[1]).toArray(),
                data.stream().mapToDouble(row -> row[0]).toArray());
        StintFit fit = StintFit.of(List.of(stint), Trend.COMMON);
        assertEquals(36, stint.count());
        assertEquals(1.00211681802045, fit.slope(0).estimate(), 1e-13);
        assertEquals(0.429796848199937e-3, fit.slope(0).standardError(), 1e-15);
        assertEquals(-0.262323073774029, fit.mean(0) - fit.slope(0).estimate() * fit.middle(), 1e-11);
        assertEquals(certified("Norris", "Residual\\s+Standard Deviation\\s+([0-9.E+-]+)"), fit.scatter(), 1e-13);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"SiRstv, 1e-10", "SmLs01, 1e-12", "SmLs04, 1e-8", "SmLs07, 2e-3", "AtmWtAg, 1e-7"})
    @DisplayName("analysis of variance: means of several stints, the scatter within and between them")
    void variance(String name, double tolerance) throws IOException {
        Map<Double, List<Double>> groups = new TreeMap<>();
        data(name).forEach(row -> groups.computeIfAbsent(row[0], key -> new ArrayList<>()).add(row[1]));
        List<Stint> stints = groups.values().stream().map(group -> new Stint(new double[group.size()],
                group.stream().mapToDouble(Double::doubleValue).toArray())).toList();
        StintFit fit = StintFit.of(stints, Trend.NONE);
        double scatter = certified(name, "Residual\\s+Standard Deviation\\s+([0-9.E+-]+)");
        assertEquals(scatter, fit.scatter(), tolerance * scatter);
        double[] observed = stints.stream().flatMapToDouble(stint -> java.util.Arrays.stream(stint.seconds())).toArray();
        double all = Difference.mean(observed);
        double between = 0;
        for (int s = 0; s < stints.size(); s++) {
            between += stints.get(s).count() * Math.pow(fit.mean(s) - all, 2);
        }
        double f = between / (stints.size() - 1) / Math.pow(fit.scatter(), 2);
        double expected = certified(name, "Between [A-Za-z]+\\s+[0-9]+\\s+\\S+\\s+\\S+\\s+([0-9.E+-]+)");
        assertEquals(expected, f, 10 * tolerance * expected);
        if (stints.size() == 2) {
            Difference difference = fit.contrast(-1, 1);
            double t = difference.estimate() / difference.standardError();
            assertEquals(expected, t * t, 10 * tolerance * expected);
        }
    }
}
