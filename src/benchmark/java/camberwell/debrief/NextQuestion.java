package camberwell.debrief;

import camberwell.run.Case;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Plays the debrief against every demo case with a driver who answers truthfully, twice, and prints how long the next
 * question took at the 95th percentile of the second round, in milliseconds.
 */
public final class NextQuestion {

    private static final double PERCENTILE = 0.95;

    private NextQuestion() {
    }

    public static void main(String[] arguments) throws IOException {
        Paddock paddock = new Paddock();
        play(paddock);
        List<Double> times = play(paddock);
        times.sort(null);
        System.out.printf(Locale.ROOT, "%.2f%n", times.get((int) Math.ceil(PERCENTILE * times.size()) - 1));
    }

    private static List<Double> play(Paddock paddock) throws IOException {
        List<Double> times = new ArrayList<>();
        for (Case truth : Paddock.demoCases()) {
            Paddock.Truthful driver = new Paddock.Truthful(truth);
            try (Debrief debrief = paddock.debrief(Paddock.untold(truth))) {
                long start = System.nanoTime();
                Optional<Question> next = debrief.next();
                while (next.isPresent()) {
                    times.add((System.nanoTime() - start) / 1e6);
                    Topic topic = next.get().topic();
                    start = System.nanoTime();
                    debrief.answer(topic, driver.to(topic));
                    next = debrief.next();
                }
                times.add((System.nanoTime() - start) / 1e6);
            }
        }
        return times;
    }
}
