package camberwell.channel;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a person says of the columns of a log.
 *
 * @param file the file it stands in; {@code -} where there is none
 * @param columns the column of a channel
 * @param sampleRate rows a second, where the log has no clock, Hz
 * @param steeringRatio angle of the steering wheel for one of the road wheels
 */
public record ChannelMap(String file, Map<Channel, Column> columns, OptionalDouble sampleRate,
        OptionalDouble steeringRatio) {

    /** Nothing is said. */
    public static final ChannelMap NONE = new ChannelMap("-", Map.of(), OptionalDouble.empty(),
            OptionalDouble.empty());

    /** Copies the map. */
    public ChannelMap {
        columns = Map.copyOf(columns);
    }

    /**
     * The column of one channel.
     *
     * @param name its heading; empty where the log has no such channel, whatever its headings look like
     * @param unit where it is said
     * @param sign 1 or -1, where it is said
     * @param line where it stands in the map, counted from 1
     * @param position its column there, counted from 1
     */
    public record Column(Optional<String> name, Optional<LoggedUnit> unit, Optional<Integer> sign, int line,
            int position) {
    }
}
