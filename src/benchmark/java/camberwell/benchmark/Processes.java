package camberwell.benchmark;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/** Starts processes and takes their time and memory. */
final class Processes {

    private Processes() {
    }

    /** The median of {@code runs} wall-clock times of a command, in milliseconds; its output is thrown away. */
    static double median(int runs, Map<String, String> environment, List<String> command) throws IOException {
        List<Double> times = new ArrayList<>();
        for (int i = 0; i < runs; i++) {
            times.add(once(environment, command));
        }
        Collections.sort(times);
        return times.get(runs / 2);
    }

    /** One wall-clock time, in milliseconds. */
    static double once(Map<String, String> environment, List<String> command) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().putAll(environment);
        builder.redirectOutput(ProcessBuilder.Redirect.DISCARD).redirectError(ProcessBuilder.Redirect.DISCARD);
        long start = System.nanoTime();
        Process process = builder.start();
        try {
            int code = process.waitFor();
            if (code != 0) {
                throw new IllegalStateException(String.join(" ", command) + " ended with " + code);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
        return (System.nanoTime() - start) / 1e6;
    }

    /** The peak resident memory of a command, in MiB, where the operating system tells it; else not a number. */
    static double peakMebibytes(List<String> command) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.redirectOutput(ProcessBuilder.Redirect.DISCARD).redirectError(ProcessBuilder.Redirect.DISCARD);
        Process process = builder.start();
        Path status = Path.of("/proc", Long.toString(process.pid()), "status");
        double peak = Double.NaN;
        while (process.isAlive()) {
            try {
                for (String line : Files.readAllLines(status)) {
                    if (line.startsWith("VmHWM:")) {
                        peak = Double.parseDouble(line.replaceAll("[^0-9]", "")) / 1024;
                    }
                }
            } catch (IOException e) {
                // The process ended between the question and the answer.
                continue;
            }
        }
        return peak;
    }

    /** What a command prints. */
    static String output(List<String> command) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.redirectError(ProcessBuilder.Redirect.DISCARD);
        return new String(builder.start().getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    /** The class path of this process, for another one. */
    static String classPath() {
        return System.getProperty("java.class.path");
    }
}
