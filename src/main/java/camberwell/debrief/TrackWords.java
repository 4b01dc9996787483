package camberwell.debrief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The temperature of the track, said when something else is asked: {@code track 34}, {@code track temp was 95 F}. */
final class TrackWords {

    private static final Pattern CLAUSE = Pattern.compile("\\s*[,;]\\s*|\\s+and\\s+|\\.\\s+");
    private static final Pattern TRACK = Pattern.compile("(?:it was |the |a )*(?:track|asphalt|tarmac)(?: temp| temperature)?"
            + "(?: is| was| at| of| about| around)*[ :=]*(-?\\d+(?:\\.\\d+)?) ?(?:°|deg|degrees)? ?([cf]|celsius|fahrenheit)?",
            Pattern.CASE_INSENSITIVE);

    private TrackWords() {
    }

    /**
     * A line with such a temperature in it.
     *
     * @param rest what else it says; empty where that is all
     */
    record Besides(String rest, Answer track) {
    }

    /** The temperature in a line, if one of its clauses is one. */
    static Optional<Besides> of(String typed) {
        if (!TyreLine.figures(typed)) {
            return Optional.empty();
        }
        Optional<Answer> track = Optional.empty();
        List<String> rest = new ArrayList<>();
        for (String clause : CLAUSE.split(typed.strip())) {
            Optional<Answer> read = track.isPresent() ? Optional.empty() : read(clause);
            track = track.or(() -> read);
            if (read.isEmpty()) {
                rest.add(clause);
            }
        }
        return track.map(answer -> new Besides(String.join(", ", rest), answer));
    }

    private static Optional<Answer> read(String clause) {
        Matcher matcher = TRACK.matcher(clause.strip());
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
