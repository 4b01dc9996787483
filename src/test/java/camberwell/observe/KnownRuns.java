package camberwell.observe;

import static camberwell.observe.KnownRun.truth;

import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/** Logs of which it is known what is in them: clean ones, slides of every sort, and every way of writing them down. */
final class KnownRuns {

    private static final CornerSpeed SLOW = CornerSpeed.SLOW;
    private static final CornerSpeed MEDIUM = CornerSpeed.MEDIUM;
    private static final CornerSpeed FAST = CornerSpeed.FAST;

    private final List<KnownRun> runs = new ArrayList<>();

    private KnownRuns() {
        clean();
        slides();
        written();
        laps();
        wheels();
        straights();
        answers();
    }

    static List<KnownRun> all() {
        return List.copyOf(new KnownRuns().runs);
    }

    private void add(String name, Consumer<MadeRun> run, UnaryOperator<LogText> text, KnownRun.Truth... truth) {
        add(name, Circuit.seven(), run, text, truth);
    }

    private void add(String name, Circuit circuit, Consumer<MadeRun> run, UnaryOperator<LogText> text,
            KnownRun.Truth... truth) {
        runs.add(new KnownRun(name, () -> {
            MadeRun made = MadeRun.on(circuit);
            made.seed = name.hashCode();
            run.accept(made);
            LogText log = LogText.plain();
            log.every = 2;
            return text.apply(log).write(made);
        }, Set.of(truth)));
    }

    private static LogText at(LogText log, int hertz) {
        log.every = (int) Math.round(1 / MadeRun.DT / hertz);
        return log;
    }

    private void clean() {
        add("neutral", run -> { }, log -> at(log, 100));
        for (int seed = 1; seed <= 4; seed++) {
            int chosen = seed;
            add("noise five times, seed " + seed, run -> {
                run.noise = 5;
                run.seed = chosen;
            }, log -> log);
        }
        add("noise fifteen times", run -> run.noise = 15, log -> log);
        add("10 Hz", run -> { }, log -> at(log, 10));
        add("jitter", run -> { }, log -> {
            log.jitter = 0.008;
            return log;
        });
        add("steering 5 degrees off", run -> { }, log -> log.plus("Steering", 5));
        add("speed 5 % too high", run -> { }, log -> log.instead("Speed", "Speed [km/h]", 1.05));
        add("lateral acceleration 10 % too low", run -> { }, log -> log.instead("Lateral", "Lateral Acceleration [g]", 0.9));
        add("a bank of 12 degrees", run -> run.bank = Math.toRadians(12), log -> log);
        add("a chicane", Circuit.chicane(), run -> { }, log -> log);
        add("one slow lap", run -> run.pace = lap -> lap == 5 ? 0.8 : 1, log -> log);
        runs.add(new KnownRun("lateral acceleration 150 ms late", () -> late("Lateral"), Set.of()));
        runs.add(new KnownRun("yaw rate 150 ms late", () -> late("Yaw"), Set.of()));
    }

    private static String late(String channel) {
        MadeRun made = MadeRun.on(Circuit.seven());
        return at(LogText.plain(), 50).late(channel, 0.15, made.drive()).write(made);
    }

    private void slides() {
        for (CornerSpeed speed : CornerSpeed.values()) {
            for (Phase phase : List.of(Phase.ENTRY, Phase.MID_CORNER, Phase.EXIT)) {
                add("front slides 3 degrees, " + phase.id() + ", " + speed.id(),
                        run -> run.with(Slide.of(3, phase, speed)), log -> log, truth(Symptom.UNDERSTEER, phase, speed));
                add("rear slides 4.5 degrees, " + phase.id() + ", " + speed.id(),
                        run -> run.with(Slide.of(-4.5, phase, speed)), log -> log, truth(Symptom.OVERSTEER, phase, speed));
            }
        }
        add("snaps at exit of slow corners", run -> run.with(Slide.of(-8, Phase.EXIT, SLOW).within(0.12)), log -> log,
                truth(Symptom.SNAP_OVERSTEER, Phase.EXIT, SLOW));
        add("snaps at mid-corner of medium corners", run -> run.with(Slide.of(-8, Phase.MID_CORNER, MEDIUM).within(0.12)),
                log -> log, truth(Symptom.SNAP_OVERSTEER, Phase.MID_CORNER, MEDIUM));
        add("pushes in, slides out", run -> run.with(Slide.of(3, Phase.ENTRY, SLOW)).with(Slide.of(-5, Phase.EXIT, SLOW)),
                log -> log, truth(Symptom.UNDERSTEER, Phase.ENTRY, SLOW), truth(Symptom.OVERSTEER, Phase.EXIT, SLOW));
        add("oversteer in four of seven corners", run -> run.with(Slide.of(-6, Phase.EXIT, null).in(1, 2, 4, 5)),
                log -> log, truth(Symptom.OVERSTEER, Phase.EXIT, SLOW), truth(Symptom.OVERSTEER, Phase.EXIT, MEDIUM));
        add("within a chicane", Circuit.chicane(), run -> run.with(Slide.of(-6, Phase.EXIT, null).in(3)),
                log -> log, truth(Symptom.OVERSTEER, Phase.EXIT, MEDIUM));
        add("comes round on the lift", run -> {
            run.with(Slide.of(-4.5, Phase.MID_CORNER, null).in(5));
            run.liftIn = 5;
        }, log -> log, truth(Symptom.OVERSTEER, Phase.LIFT_OFF, MEDIUM));
        add("one corner alone", run -> run.with(Slide.of(3.5, Phase.MID_CORNER, null).in(5)), log -> log,
                truth(Symptom.UNDERSTEER, Phase.MID_CORNER, MEDIUM));
    }

    private void written() {
        Consumer<MadeRun> pushes = run -> run.with(Slide.of(3, Phase.MID_CORNER, SLOW));
        KnownRun.Truth pushing = truth(Symptom.UNDERSTEER, Phase.MID_CORNER, SLOW);
        add("noise five times with a slide", run -> {
            pushes.accept(run);
            run.noise = 5;
        }, log -> log, pushing);
        add("signs turned", pushes, log -> log.instead("Yaw", "Yaw Rate [deg/s]", -1)
                .instead("Lateral", "Lateral Acceleration [g]", -1), pushing);
        add("steering turned, acceleration turned", pushes, log -> log.instead("Steering", "Steering [deg]", -1)
                .instead("Lateral", "Lateral G", -1), pushing);
        add("SI units that nobody states", pushes, log -> log.instead("Yaw", "Yaw Rate", Math.PI / 180)
                .instead("Lateral", "ay", 9.80665).instead("Steering", "Steer", Math.PI / 180).instead("Speed", "v", 1 / 3.6),
                pushing);
        add("miles per hour that nobody states", pushes, log -> log.instead("Speed", "Ground Speed", 1 / 1.609344),
                pushing);
        add("German headings, semicolons, decimal commas", pushes, log -> {
            log.delimiter = ';';
            log.decimal = ',';
            return log.instead("Time", "Zeit [s]", 1).instead("Lap", "Runde", 1).instead("Distance", "Strecke [m]", 1)
                    .instead("Speed", "Geschwindigkeit [km/h]", 1).instead("Steering", "Lenkradwinkel [°]", 1)
                    .instead("Lateral", "Querbeschleunigung [g]", 1).instead("Longitudinal", "Längsbeschleunigung [g]", 1)
                    .instead("Yaw", "Gierrate [°/s]", 1).instead("Throttle", "Gaspedal [%]", 1)
                    .instead("Brake", "Bremse [%]", 1);
        }, pushing);
        add("tabs, notes above, a byte order mark", pushes, log -> {
            log.delimiter = '\t';
            log.before = "\uFEFFRun\tThird\nDriver\tsomebody\n\n";
            return log;
        }, pushing);
        add("milliseconds", pushes, log -> log.instead("Time", "Time", 1000), pushing);
        add("no yaw rate", pushes, log -> log.without("Yaw"), pushing);
        add("no lateral acceleration", pushes, log -> log.without("Lateral"), pushing);
        add("no steering", pushes, log -> log.without("Steering"));
        add("no pedals", pushes, log -> log.without("Throttle", "Brake"), pushing);
        add("no lap counter", pushes, log -> log.without("Lap"), pushing);
        add("neither lap counter nor distance", pushes, log -> log.without("Lap", "Distance"), pushing);
        for (boolean left : new boolean[] {true, false}) {
            add("positions alone, all turns to the " + (left ? "left" : "right") + ", signs of another kind",
                    Circuit.closed(left), run -> run.with(Slide.of(3, Phase.MID_CORNER, SLOW)),
                    log -> log.positions().without("Lap", "Distance").instead("Yaw", "Yaw Rate [deg/s]", -1)
                            .instead("Lateral", "Lateral Acceleration [g]", -1), pushing);
        }
        add("100 Hz", pushes, log -> at(log, 100), pushing);
        add("20 Hz", pushes, log -> at(log, 20), pushing);
        runs.add(new KnownRun("rows lost here and there", () -> thinned(pushes), Set.of(pushing)));
        runs.add(new KnownRun("a gap of two seconds and a clock that begins anew", () -> broken(pushes), Set.of(pushing)));
    }

    private static String text(Consumer<MadeRun> run) {
        MadeRun made = MadeRun.on(Circuit.seven());
        run.accept(made);
        return at(LogText.plain(), 50).write(made);
    }

    private static String thinned(Consumer<MadeRun> run) {
        String[] lines = text(run).split("\n");
        StringBuilder kept = new StringBuilder(lines[0]).append('\n');
        for (int i = 1; i < lines.length; i++) {
            if (i % 97 < 94 && i % 1013 > 3) {
                kept.append(lines[i]).append('\n');
            }
        }
        return kept.toString();
    }

    private static String broken(Consumer<MadeRun> run) {
        String[] lines = text(run).split("\n");
        StringBuilder kept = new StringBuilder(lines[0]).append('\n');
        for (int i = 1; i < lines.length; i++) {
            if (i < 12_000 || i > 12_100) {
                int comma = lines[i].indexOf(',');
                double time = Double.parseDouble(lines[i].substring(0, comma)) - (i > 26_000 ? 300 : 0);
                kept.append(time).append(lines[i].substring(comma)).append('\n');
            }
        }
        return kept.toString();
    }

    private void laps() {
        add("only the last four laps", run -> run.with(Slide.of(3, Phase.MID_CORNER, MEDIUM).on(lap -> lap > 4)),
                log -> log, truth(Symptom.UNDERSTEER, Phase.MID_CORNER, MEDIUM));
        add("only the first four laps", run -> run.with(Slide.of(-5, Phase.EXIT, SLOW).on(lap -> lap < 5)),
                log -> log, truth(Symptom.OVERSTEER, Phase.EXIT, SLOW));
        add("only lap four", run -> run.with(Slide.of(3.5, Phase.MID_CORNER, SLOW).on(lap -> lap == 4)),
                log -> log, truth(Symptom.UNDERSTEER, Phase.MID_CORNER, SLOW));
        add("the driver is fast into one corner in two laps", run -> {
            run.with(Slide.of(3.5, Phase.ENTRY, null).in(2).on(lap -> lap == 3 || lap == 6));
            run.entrySpeed.put(List.of(2, 3), 1.12);
            run.entrySpeed.put(List.of(2, 6), 1.12);
        }, log -> log, truth(Symptom.UNDERSTEER, Phase.ENTRY, MEDIUM));
        add("a slow lap among sliding ones", run -> {
            run.with(Slide.of(-5, Phase.EXIT, MEDIUM));
            run.pace = lap -> lap == 3 ? 0.8 : 1;
        }, log -> log, truth(Symptom.OVERSTEER, Phase.EXIT, MEDIUM));
    }

    private void wheels() {
        add("front wheels lock", run -> run.lockFront = 0.3, log -> log, truth(Symptom.FRONT_LOCKING, Phase.BRAKING, null));
        add("one rear wheel locks", run -> run.lockRear = 0.3, log -> log, truth(Symptom.REAR_LOCKING, Phase.BRAKING, null));
        add("the inner rear wheel spins", run -> run.spinRear = 0.2, log -> log,
                truth(Symptom.WHEELSPIN, Phase.EXIT, SLOW));
        add("a kerb at the exit throws the car out", run -> {
            run.with(Slide.of(-4, Phase.EXIT, null).in(2).within(0.2));
            run.kerbIn = 2;
        }, log -> at(log.dampers(), 100), truth(Symptom.KERB_INSTABILITY, Phase.KERBS, null),
                truth(Symptom.OVERSTEER, Phase.EXIT, MEDIUM));
        add("a kerb that does nothing", run -> run.kerbIn = 2, log -> at(log.dampers(), 100));
        add("the front meets its stops on a straight", run -> run.bottoms = true, log -> at(log.dampers(), 100),
                truth(Symptom.BOTTOMING, Phase.STRAIGHT, null));
        add("a driver who stabs at the throttle", run -> run.stabs = true, log -> log);
    }

    private void straights() {
        add("held to the left on the brakes", run -> run.pulls = 7, log -> log, truth(Symptom.PULLING, Phase.BRAKING, null));
        add("held to the right on the brakes, noise five times", run -> {
            run.pulls = -7;
            run.noise = 5;
        }, log -> log.plus("Steering", 4), truth(Symptom.PULLING, Phase.BRAKING, null));
        add("weaves on the brakes", run -> run.weaves = 4.5, log -> log, truth(Symptom.UNSTABLE_BRAKING, Phase.BRAKING, null));
        add("wanders on the straights", run -> run.wanders = 3.5, log -> log, truth(Symptom.WANDERING, Phase.STRAIGHT, null));
        add("weaves on the brakes and pushes, 20 Hz", run -> {
            run.weaves = 4.5;
            run.with(Slide.of(3, Phase.MID_CORNER, MEDIUM));
        }, log -> at(log, 20), truth(Symptom.UNSTABLE_BRAKING, Phase.BRAKING, null),
                truth(Symptom.UNDERSTEER, Phase.MID_CORNER, MEDIUM));
        add("a restless wheel that the car does not follow", run -> { }, log -> log.shaken("Steering", 2.5));
    }

    /** Runs beside an earlier one of the same car. */
    private void answers() {
        beside("the yaw rate comes 70 ms later than before", run -> run.late = 0.07, log -> log,
                truth(Symptom.SLOW_TURN_IN, Phase.ENTRY, SLOW), truth(Symptom.SLOW_TURN_IN, Phase.ENTRY, MEDIUM),
                truth(Symptom.SLOW_TURN_IN, Phase.ENTRY, FAST));
        beside("more yaw rate for the same steering than before", run -> run.gradient = Math.toRadians(0.4) / 9.81, log -> log,
                truth(Symptom.NERVOUS_TURN_IN, Phase.ENTRY, SLOW), truth(Symptom.NERVOUS_TURN_IN, Phase.ENTRY, MEDIUM),
                truth(Symptom.NERVOUS_TURN_IN, Phase.ENTRY, FAST));
        beside("held to the left all the time, which it was not before", run -> { }, log -> log.plus("Steering", 6),
                truth(Symptom.PULLING, Phase.STRAIGHT, null));
        beside("no better and no worse than before", run -> { }, log -> log);
        beside("no better and no worse than before, noise five times", run -> run.noise = 5, log -> log);
        beside("slower than before, and otherwise the same", run -> run.pace = lap -> 0.95, log -> log);
        beside("pushes, which it did not before", run -> run.with(Slide.of(3, Phase.ENTRY, SLOW)), log -> log,
                truth(Symptom.UNDERSTEER, Phase.ENTRY, SLOW));
    }

    private void beside(String name, Consumer<MadeRun> run, UnaryOperator<LogText> text, KnownRun.Truth... truth) {
        add(name, run, text, truth);
        KnownRun alone = runs.remove(runs.size() - 1);
        runs.add(new KnownRun(name, alone.log(), java.util.Optional.of(() -> {
            MadeRun before = MadeRun.on(Circuit.seven());
            before.seed = 99;
            return at(LogText.plain(), 50).write(before);
        }), alone.truth()));
    }
}
