package camberwell.benchmark;

import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs the JMH benchmarks of this folder. */
public final class Microbenchmarks {

    private Microbenchmarks() {
    }

    public static void main(String[] arguments) throws RunnerException {
        new Runner(new OptionsBuilder().include("camberwell\\.benchmark\\..*").build()).run();
    }
}
