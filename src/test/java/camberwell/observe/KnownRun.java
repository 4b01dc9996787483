package camberwell.observe;

import camberwell.car.Car;
import camberwell.channel.ChannelMap;
import camberwell.channel.Consistency;
import camberwell.channel.Limits;
import camberwell.channel.Log;
import camberwell.channel.LogReader;
import camberwell.channel.LogSource;
import camberwell.run.Report;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * A log of which it is known what is in it.
 *
 * @param name what is special about it
 * @param log its text
 * @param earlier the log of an earlier run that it is held against
 * @param truth the complaints that are in it
 */
record KnownRun(String name, Supplier<String> log, Optional<Supplier<String>> earlier, Set<Truth> truth) {

    /** A run that is held against nothing but itself. */
    KnownRun(String name, Supplier<String> log, Set<Truth> truth) {
        this(name, log, Optional.empty(), truth);
    }

    /**
     * A complaint.
     *
     * @param speed of the corners; empty where it is not bound to one
     */
    record Truth(Symptom symptom, Phase phase, Optional<CornerSpeed> speed) {

        @Override
        public String toString() {
            return symptom.id() + " " + phase.id() + speed.map(it -> " " + it.id()).orElse("");
        }
    }

    static Truth truth(Symptom symptom, Phase phase, CornerSpeed speed) {
        return new Truth(symptom, phase, Optional.ofNullable(speed));
    }

    /** What is observed in it. */
    Observed observe(Car car, Limits limits) {
        Log read = read(log, limits);
        boolean sides = Consistency.settle(read, ChannelMap.NONE, limits);
        Optional<Log> before = earlier.map(it -> read(it, limits));
        before.ifPresent(it -> Consistency.settle(it, ChannelMap.NONE, limits));
        return Observer.observe(read, sides, before, car, ChannelMap.NONE, limits);
    }

    private Log read(Supplier<String> text, Limits limits) {
        return LogReader.read(LogSource.of(name, new ByteArrayInputStream(text.get().getBytes(StandardCharsets.UTF_8))),
                ChannelMap.NONE, limits);
    }

    /** The complaints that are told. */
    static Set<Truth> told(Observed observed) {
        return observed.reports().stream().filter(report -> report.phase().isPresent())
                .map(KnownRun::told).collect(Collectors.toSet());
    }

    private static Truth told(Report report) {
        return new Truth(report.symptom(), report.phase().orElseThrow(), report.speed());
    }

    static String listed(Set<Truth> truths) {
        return truths.stream().map(Truth::toString).sorted().collect(Collectors.joining(", "));
    }

    static Phase phase(String id) {
        return Word.of(Phase.class, id);
    }
}
