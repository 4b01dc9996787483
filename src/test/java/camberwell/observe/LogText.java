package camberwell.observe;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.ToDoubleFunction;

/** Writes a made-up run as a logger might. */
final class LogText {

    private final Map<String, ToDoubleFunction<MadeRun.Sample>> columns = new LinkedHashMap<>();
    private final Map<String, Double> noise = new LinkedHashMap<>();
    char delimiter = ',';
    char decimal = '.';
    int every = 1;
    String before = "";
    double jitter;
    int decimals = 4;

    /** Plain English headings, SI units with their names in brackets. */
    static LogText plain() {
        LogText text = new LogText();
        text.put("Time [s]", it -> it.t, 0);
        text.put("Lap", it -> it.lap, 0);
        text.put("Distance [m]", it -> it.lapDistance, 0);
        text.put("Speed [km/h]", it -> it.v * 3.6, 0.1);
        text.put("Steering Angle [deg]", it -> Math.toDegrees(it.steer), 0.3);
        text.put("Lateral Acceleration [g]", it -> it.felt / 9.80665, 0.02);
        text.put("Longitudinal Acceleration [g]", it -> it.ax / 9.80665, 0.02);
        text.put("Yaw Rate [deg/s]", it -> Math.toDegrees(it.r), 0.3);
        text.put("Throttle [%]", it -> it.throttle * 100, 0.2);
        text.put("Brake [%]", it -> it.brake * 100, 0);
        String[] wheels = {"FL", "FR", "RL", "RR"};
        for (int i = 0; i < 4; i++) {
            int wheel = i;
            text.put("Wheel Speed " + wheels[i] + " [km/h]", it -> it.wheels[wheel] * 3.6, 0.1);
        }
        return text;
    }

    LogText put(String heading, ToDoubleFunction<MadeRun.Sample> value, double scatter) {
        columns.put(heading, value);
        noise.put(heading, scatter);
        return this;
    }

    /** With positions, as a receiver gives them. */
    LogText positions() {
        decimals = 7;
        return put("Latitude [deg]", it -> 47 + Math.toDegrees(it.y / 6_371_000), 0).put("Longitude [deg]",
                it -> 8 + Math.toDegrees(it.x / 6_371_000 / Math.cos(Math.toRadians(47))), 0);
    }

    /** With damper travel and vertical acceleration. */
    LogText dampers() {
        String[] wheels = {"FL", "FR", "RL", "RR"};
        for (int i = 0; i < 4; i++) {
            int wheel = i;
            put("Damper " + wheels[i] + " [mm]", it -> it.dampers[wheel], 0.05);
        }
        return put("Vertical Acceleration [g]", it -> it.az / 9.81, 0.03);
    }

    LogText without(String... starts) {
        for (String start : starts) {
            columns.keySet().removeIf(heading -> heading.startsWith(start));
        }
        return this;
    }

    /** The same column under another heading with another scale. */
    LogText instead(String start, String heading, double factor) {
        Map<String, ToDoubleFunction<MadeRun.Sample>> renamed = new LinkedHashMap<>();
        columns.forEach((name, value) -> {
            if (name.startsWith(start)) {
                renamed.put(heading, it -> value.applyAsDouble(it) * factor);
                noise.put(heading, noise.get(name) * Math.abs(factor));
            } else {
                renamed.put(name, value);
            }
        });
        columns.clear();
        columns.putAll(renamed);
        return this;
    }

    LogText plus(String start, double offset) {
        columns.replaceAll((name, value) -> name.startsWith(start) ? it -> value.applyAsDouble(it) + offset : value);
        return this;
    }

    /** Shaken by a sensor, a mast or a hand: at 1.3 Hz, by so much. */
    LogText shaken(String start, double much) {
        columns.replaceAll((name, value) -> name.startsWith(start)
                ? it -> value.applyAsDouble(it) + much * Math.sin(2 * Math.PI * 1.3 * it.t) : value);
        return this;
    }

    LogText late(String start, double seconds, List<MadeRun.Sample> samples) {
        int rows = (int) Math.round(seconds / MadeRun.DT);
        columns.replaceAll((name, value) -> name.startsWith(start) ? it -> {
            int now = (int) Math.round((it.t - samples.get(0).t) / MadeRun.DT);
            return value.applyAsDouble(samples.get(Math.max(0, Math.min(samples.size() - 1, now - rows))));
        } : value);
        return this;
    }

    /** A column times something that goes with the moment. */
    LogText times(String start, ToDoubleFunction<MadeRun.Sample> factor) {
        columns.replaceAll((name, was) -> name.startsWith(start) ? it -> was.applyAsDouble(it) * factor.applyAsDouble(it) : was);
        return this;
    }

    /** A sensor that stands still at a value from a lap on. */
    LogText deadFrom(int lap, String start, double value) {
        columns.replaceAll((name, was) -> name.startsWith(start) ? it -> it.lap >= lap ? value : was.applyAsDouble(it) : was);
        noise.replaceAll((name, was) -> name.startsWith(start) ? 0 : was);
        return this;
    }

    /** A sensor that is nothing but noise between two values from a lap on. */
    LogText noiseFrom(int lap, String start, double least, double most) {
        Random random = new Random(7);
        columns.replaceAll((name, was) -> name.startsWith(start) ? it -> it.lap >= lap
                ? least + (most - least) * random.nextDouble() : was.applyAsDouble(it) : was);
        return this;
    }

    /** A column whose cells are empty from a lap on. */
    LogText emptyFrom(int lap, String start) {
        columns.replaceAll((name, was) -> name.startsWith(start) ? it -> it.lap >= lap ? Double.NaN : was.applyAsDouble(it)
                : was);
        return this;
    }

    String write(MadeRun run) {
        return write(run.drive(), run.noise, run.seed);
    }

    /** With a fixed number of digits after the mark; the platform's formatter would take most of a test's time. */
    private void number(StringBuilder text, double value) {
        long one = Math.round(Math.pow(10, decimals));
        long scaled = Math.round(Math.abs(value) * one);
        text.append(value < 0 && scaled > 0 ? "-" : "").append(scaled / one).append(decimal);
        String rest = String.valueOf(one + scaled % one);
        text.append(rest, 1, decimals + 1);
    }

    String write(List<MadeRun.Sample> samples, double scatter, long seed) {
        Random random = new Random(seed * 31);
        StringBuilder text = new StringBuilder(before);
        text.append(String.join(String.valueOf(delimiter), columns.keySet())).append('\n');
        List<String> names = new ArrayList<>(columns.keySet());
        for (int i = 0; i < samples.size(); i += every) {
            MadeRun.Sample sample = samples.get(i);
            for (int c = 0; c < names.size(); c++) {
                double value = columns.get(names.get(c)).applyAsDouble(sample)
                        + noise.get(names.get(c)) * scatter * random.nextGaussian();
                if (c == 0 && jitter > 0) {
                    value += jitter * (random.nextDouble() - 0.5);
                }
                text.append(c == 0 ? "" : String.valueOf(delimiter));
                if (!Double.isNaN(value)) {
                    number(text, value);
                }
            }
            text.append('\n');
        }
        return text.toString();
    }
}
