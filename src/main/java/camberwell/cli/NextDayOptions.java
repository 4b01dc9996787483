package camberwell.cli;

import camberwell.advice.PressureQuestion.OtherDay;
import camberwell.units.Quantity;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Another day, for which pressures are set. */
final class NextDayOptions {

    @Option(names = "--next-air", paramLabel = "TEMPERATURE", converter = Amount.Temperature.class,
            description = "Air temperature of the day to set for.")
    private Optional<Quantity> air;

    @Option(names = "--next-track", paramLabel = "TEMPERATURE", converter = Amount.Temperature.class,
            description = "Track temperature of the day to set for; where it is not given, the track is taken to "
                + "change as the air does.")
    private Optional<Quantity> track;

    @Option(names = "--next-set-at", paramLabel = "TEMPERATURE", converter = Amount.Temperature.class,
            description = "Temperature of the tyre when it is set that day. Taken to follow the air if not given.")
    private Optional<Quantity> setAt;

    OtherDay day() {
        return new OtherDay(air, track, setAt);
    }
}
