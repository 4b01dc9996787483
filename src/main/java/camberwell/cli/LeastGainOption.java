package camberwell.cli;

import camberwell.problem.ProblemsException;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The option {@code --least-gain}: the least difference in lap time worth having. */
final class LeastGainOption {

    @Option(names = "--least-gain", paramLabel = "SECONDS",
            description = "The least difference a lap that is worth having: \"0.1 s\". By default the least that so many "
                    + "laps can show.")
    private String typed;

    /**
     * In seconds.
     *
     * @throws ProblemsException if it is none
     */
    Optional<Double> seconds() {
        if (typed == null) {
            return Optional.empty();
        }
        return Optional.of(LapTime.seconds("--least-gain", typed));
    }
}
