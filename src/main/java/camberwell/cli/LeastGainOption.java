package camberwell.cli;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The option {@code --least-gain}: the least difference in lap time worth having. */
final class LeastGainOption {

    private static final double MOST = 60;

    @Option(names = "--least-gain", paramLabel = "SECONDS",
            description = "The least difference a lap that is worth having: \"0.1 s\". By default the least that so many "
                    + "laps can show.")
    private String typed;

    /** In seconds; @throws ProblemsException if it is none */
    Optional<Double> seconds() {
        if (typed == null) {
            return Optional.empty();
        }
        String number = typed.strip().replaceAll("\\s*s$", "");
        try {
            double seconds = Double.parseDouble(number);
            if (seconds > 0 && seconds <= MOST) {
                return Optional.of(seconds);
            }
        } catch (NumberFormatException e) {
            // Said below.
        }
        throw new ProblemsException(Problem.of("--least-gain " + typed, "is no time a lap, like \"0.1 s\"",
                Optional.empty()));
    }
}
