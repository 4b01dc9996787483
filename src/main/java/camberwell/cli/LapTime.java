package camberwell.cli;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.util.Optional;

/** A time a lap, as the value of an option. */
final class LapTime {

    private static final double MOST = 60;

    private LapTime() {
    }

    /**
     * A difference of lap times.
     *
     * @param typed {@code 0.1 s} or {@code 0.1}
     * @return in seconds, positive, at most a minute
     * @throws ProblemsException if it is none
     */
    static double seconds(String option, String typed) {
        String number = typed.strip().replaceAll("\\s*s$", "");
        try {
            double seconds = Double.parseDouble(number);
            if (seconds > 0 && seconds <= MOST) {
                return seconds;
            }
        } catch (NumberFormatException e) {
            // Said below.
        }
        throw new ProblemsException(Problem.of(option + " " + typed, "is no time a lap, like \"0.1 s\"",
                Optional.empty()));
    }
}
