package camberwell.debrief;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The temperature of the track, as it is said: {@code track 34}, {@code track temp was 95 F}. */
final class TrackWords {

    private static final Pattern TRACK = Pattern.compile("(?:it was |the |a )*(?:track|asphalt|tarmac)(?: temp| temperature)?"
            + "(?: is| was| at| of| about| around)*[ :=]*(-?\\d+(?:\\.\\d+)?) ?(?:°|deg|degrees)? ?([cf]|celsius|fahrenheit)?",
            Pattern.CASE_INSENSITIVE);

    private TrackWords() {
    }

    /** The temperature that these words say, if they say nothing else. */
    static Optional<Answer> of(String words) {
        Matcher matcher = TRACK.matcher(words.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        String unit = matcher.group(2) == null ? "" : " °" + Character.toUpperCase(matcher.group(2).charAt(0));
        try {
            return Optional.of(Reply.track(matcher.group(1) + unit));
        } catch (Reply.NoAnswer e) {
            // No temperature that a track has: the line is heard as any other.
            return Optional.empty();
        }
    }
}
