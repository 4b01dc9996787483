package camberwell.observe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.car.Car;
import camberwell.channel.Limits;
import camberwell.input.CaseReader;
import camberwell.run.Report;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Symptom;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Logs in which something is not as it should be: it is named, and no complaint is made of it")
class FaultyLogsTest {

    private static final Limits LIMITS = VectorsTest.limits();
    private static final Car CAR = new CaseReader().readCar(Path.of("demo-cases", "cars", "corvane-coupe.yaml"));

    private static Observed clean(Consumer<LogText> spoil) {
        return observed(MadeRun.on(Circuit.seven()), spoil);
    }

    private static Observed observed(MadeRun run, Consumer<LogText> spoil) {
        run.laps = 6;
        LogText text = LogText.plain();
        text.every = 4;
        spoil.accept(text);
        return new KnownRun("spoiled", () -> text.write(run), Set.of()).observe(CAR, LIMITS);
    }

    private static void doubts(Observed observed, String... words) {
        assertTrue(observed.doubts().stream().anyMatch(doubt -> List.of(words).stream().allMatch(doubt::contains)),
                () -> String.join("\n", observed.doubts()));
    }

    @ParameterizedTest(name = "{0} at {1}")
    @CsvSource({"Yaw Rate, 0, yaw rate", "Steering Angle, 0, steering", "Steering Angle, 31, steering",
        "Wheel Speed FL, 0, front left wheel speed", "Wheel Speed RL, 92.5, rear left wheel speed"})
    @DisplayName("a sensor that stands still while the car moves is left out there, and named with the laps")
    void dead(String column, double value, String channel) {
        Observed observed = clean(text -> text.deadFrom(4, column, value));

        assertEquals(List.of(), observed.reports().stream().map(Report::text).toList());
        doubts(observed, "the " + channel + " stands still at", " to 6, while", "left out there");
        doubts(observed, "the " + channel + " is not measured in laps 4, 5 and 6");
    }

    @ParameterizedTest(name = "{0} from {1} to {2}")
    @CsvSource({"Yaw Rate, -400, 400, yaw rate", "Yaw Rate, -20, 20, yaw rate", "Steering Angle, -900, 900, steering",
        "Steering Angle, -60, 60, steering", "Lateral, -8, 8, lateral acceleration", "Brake, 0, 60, brake",
        "Wheel Speed FL, 0, 300, front left wheel speed", "Wheel Speed RL, 0, 300, rear left wheel speed"})
    @DisplayName("a sensor that dies into noise is left out there, and named")
    void noise(String column, double least, double most, String channel) {
        Observed observed = clean(text -> text.noiseFrom(4, column, least, most));

        assertEquals(List.of(), observed.reports().stream().map(Report::text).toList());
        doubts(observed, "the " + channel + " is nothing but noise from", " to 6, while", "left out there");
    }

    private static LogText withTreads(LogText text) {
        text.dampers();
        for (String wheel : List.of("FL", "FR", "RL", "RR")) {
            for (String place : List.of("Inner", "Middle", "Outer")) {
                // Half a degree of scatter on a tread that warms and swings with the corners.
                text.put("Tyre Temp " + wheel + " " + place + " [C]", it -> 60 + 25 * (1 - Math.exp(-it.t / 120))
                        + 6 * Math.abs(it.felt) / 9.81 + 3 * Math.sin(it.lapDistance / 150), 0.5);
            }
        }
        return text;
    }

    @Test
    @DisplayName("dampers and treads that are as they should be are not doubted")
    void soundDampersAndTreads() {
        Observed observed = clean(FaultyLogsTest::withTreads);

        assertTrue(observed.doubts().stream().noneMatch(it -> it.contains("damper") || it.contains("tread")),
                () -> String.join("\n", observed.doubts()));
    }

    @ParameterizedTest(name = "{0} at {1}")
    @CsvSource({"Damper RL, 31.5, rear left damper", "Damper FR, 0, front right damper",
        "Tyre Temp FL Inner, 0, front left tread inner", "Tyre Temp RR Middle, 71, rear right tread middle"})
    @DisplayName("a damper or a tread sensor that dies is left out there, and named")
    void deadDampersAndTreads(String column, double value, String channel) {
        Observed observed = clean(text -> withTreads(text).deadFrom(4, column, value));

        doubts(observed, channel, "stands still at", "left out there");
    }

    @ParameterizedTest(name = "{0} from {1} to {2}")
    @CsvSource({"Damper RL, 0, 120, rear left damper", "Tyre Temp FL Inner, 0, 150, front left tread inner"})
    @DisplayName("a damper or a tread sensor that dies into noise is left out there, and named")
    void noisyDampersAndTreads(String column, double least, double most, String channel) {
        Observed observed = clean(text -> withTreads(text).noiseFrom(4, column, least, most));

        doubts(observed, channel, "is nothing but noise", "left out there");
    }

    @Test
    @DisplayName("a speed that is noise is left out, and its laps with it")
    void noisySpeed() {
        Observed observed = clean(text -> text.noiseFrom(4, "Speed", 0, 400));

        assertEquals(List.of(), observed.reports().stream().map(Report::text).toList());
        doubts(observed, "the speed is nothing but noise from");
        assertTrue(observed.laps().stream().filter(lap -> lap.number() >= 4).allMatch(lap -> lap.leftOut().isPresent()));
    }

    @Test
    @DisplayName("a speed that stands still is left out, and its laps with it")
    void deadSpeed() {
        Observed observed = clean(text -> text.deadFrom(4, "Speed", 92.5));

        assertEquals(List.of(), observed.reports().stream().map(Report::text).toList());
        doubts(observed, "the speed stands still at 92.5");
        assertTrue(observed.laps().stream().filter(lap -> lap.number() >= 4).allMatch(lap -> lap.leftOut().isPresent()));
    }

    @Test
    @DisplayName("a steering and a yaw rate that do not read nought straight on are named")
    void zeros() {
        doubts(clean(text -> text.plus("Steering", 25)), "the steering reads", "where the car runs straight");
        doubts(clean(text -> text.plus("Yaw Rate", 2)), "do not have the same zero", "deg/s too much to the left");
    }

    // A car that does not slide: yaw rate over lateral acceleration would show its tail out at each turn-in, and back at each exit.
    @ParameterizedTest(name = "{0} by {1} s")
    @CsvSource({"Yaw Rate, 0.3, yaw rate", "Yaw Rate, 0.5, yaw rate", "Lateral, 0.4, lateral acceleration"})
    @DisplayName("a channel that comes late is left out by what the steering tells, and no slide is made of it")
    void late(String column, double seconds, String channel) {
        MadeRun run = MadeRun.on(Circuit.seven());
        run.laps = 6;
        Observed observed = observed(run, text -> text.late(column, seconds, run.drive()));

        doubts(observed, "the yaw rate comes 0.", channel.startsWith("yaw") ? "later" : "sooner", "than the lateral",
                "by the steering it is the " + channel + " that is wrong, and it is left out");
        assertEquals(List.of(), observed.reports().stream().map(Report::text).toList());
    }

    @Test
    @DisplayName("a speed that comes late is no locking of all wheels")
    void lateSpeed() {
        MadeRun run = MadeRun.on(Circuit.seven());
        run.laps = 6;
        Observed observed = observed(run, text -> text.late("Speed", 0.5, run.drive()));

        doubts(observed, "the speed comes 0.5", "later than the wheel speeds");
        assertTrue(observed.notJudged().contains(Observed.WHEELS));
        assertTrue(observed.reports().stream().noneMatch(it -> it.text().contains("locking") || it.text().contains("wheelspin")),
                () -> observed.reports().stream().map(Report::text).toList().toString());
    }

    @ParameterizedTest(name = "{0} of the speed is missing")
    @ValueSource(doubles = {0.3, 0.6, 1})
    @DisplayName("front wheels that lock hard slow down sooner than the car does, and are no late speed")
    void lockHard(double under) {
        Observed observed = clean(text -> text.times("Wheel Speed F", it -> it.brake > 0.5 ? 1 - under : 1));

        assertTrue(observed.doubts().stream().noneMatch(it -> it.contains("clock")), () -> observed.doubts().toString());
        assertTrue(observed.reports().stream().anyMatch(it -> it.symptom().equals(Symptom.FRONT_LOCKING)),
                () -> observed.reports().stream().map(Report::text).toList().toString());
    }

    @Test
    @DisplayName("a speed that comes late is found where wheels lock as well")
    void lateAndLocked() {
        MadeRun run = MadeRun.on(Circuit.seven());
        run.laps = 6;
        Observed observed = observed(run, text -> text.times("Wheel Speed F", it -> it.brake > 0.5 ? 0.6 : 1)
                .late("Speed", 0.5, run.drive()));

        doubts(observed, "the speed comes 0.5", "later than the wheel speeds");
    }

    @Test
    @DisplayName("wheels of the wrong axle that spin, and a speed that spins with the driven ones, are doubted")
    void drivenWheels() {
        ToDoubleFunction<MadeRun.Sample> spins = it -> it.throttle > 0.5 && it.v < 35 ? 1.15 : 1;

        Observed swapped = clean(text -> text.times("Wheel Speed F", spins));
        doubts(swapped, "the front wheels turn faster than the rear ones", "swapped");
        Observed theirs = clean(text -> text.times("Wheel Speed R", spins).times("Speed", spins));
        doubts(theirs, "the speed goes with the rear wheels", "wheelspin does not show");
        assertTrue(theirs.notJudged().contains("wheelspin"));
    }

    @Test
    @DisplayName("no sensor of a car that is as it should be is taken for dead")
    void alive() {
        Observed observed = clean(text -> { });

        assertTrue(observed.doubts().stream().noneMatch(doubt -> doubt.contains("stands still") || doubt.contains("noise")
                || doubt.contains("not measured") || doubt.contains("later") || doubt.contains("zero")
                || doubt.contains("turn faster") || doubt.contains("reads")), () -> String.join("\n", observed.doubts()));
    }

    @Test
    @DisplayName("laps in which the steering was not measured are no clean laps")
    void half() {
        MadeRun pushes = MadeRun.on(Circuit.seven()).with(Slide.of(4, Phase.MID_CORNER, CornerSpeed.FAST));
        Observed observed = observed(pushes, text -> text.emptyFrom(4, "Steering"));
        Report report = observed.reports().stream().filter(it -> it.symptom().equals(Symptom.UNDERSTEER)).findFirst()
                .orElseThrow();

        assertEquals(Occurrence.EVERY_LAP, report.occurrence());
        assertTrue(report.measured().orElseThrow().how().contains("in 3 of 3 measured laps"),
                report.measured().orElseThrow().how());
        doubts(observed, "the steering is not measured in laps 4, 5 and 6");
    }

    @Test
    @DisplayName("where a pedal was not measured, phases go by the gain and loss of speed")
    void pedals() {
        Observed observed = clean(text -> text.emptyFrom(4, "Throttle").emptyFrom(4, "Brake"));

        assertEquals(List.of(), observed.reports().stream().map(Report::text).toList());
        doubts(observed, "the throttle is not measured in laps 4, 5 and 6", "phases go there by");
    }
}
