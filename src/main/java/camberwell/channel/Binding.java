package camberwell.channel;

import java.util.Optional;

/**
 * The column that a channel is read from.
 *
 * @param heading as it is written in the log
 * @param index place of the column, counted from 0
 * @param unit where it is stated, in the log or in the channel map
 * @param sign -1 where the map says so
 * @param guessed whether the column was made out from its heading rather than named in a map
 */
public record Binding(Channel channel, String heading, int index, Optional<LoggedUnit> unit, int sign,
        boolean guessed) {
}
