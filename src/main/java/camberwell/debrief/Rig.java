package camberwell.debrief;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Whether it was a simulator, as people say it: {@code it's a sim}, {@code on my pc}, {@code a real car}. */
final class Rig {

    private static final Set<String> REAL = Set.of("real", "real car", "real life", "real track", "real one", "real world",
            "actual car", "real thing");
    private static final Set<String> SIMULATED = Set.of("simulator", "sim", "simracing", "sim racing", "sim racer", "game",
            "simulation", "sim rig", "rig", "pc", "computer", "console", "video game", "racing game", "racing sim", "home rig",
            "online");
    /** What answers that question, and says nothing by itself. */
    private static final Set<String> REAL_WHERE_ASKED = Set.of("car", "track", "road car", "track day", "race car");
    private static final Pattern ROUND_IT = Pattern.compile("^(?:(?:well|so|just|only|no|yes|yeah|it|it'?s|this|that|that'?s"
            + "|is|was|in|on|at|playing|a|an|the|my|i|i'?m|am|we|we'?re|are|were|drive|drove|driving|sorry|actually"
            + "|rather|wait)\\s+)*");

    /** Between what somebody says first and what is right. */
    private static final Pattern CORRECTED = Pattern.compile("(?:\\s*[,;.]\\s*|\\s+)(?:(?:no|sorry|wait|i mean|i meant|or rather|"
            + "rather|actually|oops|make that)\\b[\\s,;.]*)+");

    private Rig() {
    }

    /**
     * Whether it was a simulator, by these words; empty where they do not say.
     *
     * @param asked whether it was asked just now
     */
    static Optional<Boolean> said(String words, boolean asked) {
        String plain = words.strip().toLowerCase(Locale.ROOT).replace('\u2019', '\'').replaceAll("[.!?]+$", "");
        String[] parts = CORRECTED.split(plain);
        if (parts.length > 1) {
            // "Real, no, rig": the last counts, where all of them say it.
            return Stream.of(parts).allMatch(part -> said(part, asked).isPresent()) ? said(parts[parts.length - 1], asked)
                    : Optional.empty();
        }
        String small = ROUND_IT.matcher(plain).replaceFirst("").replaceFirst(" (?:at home|in my (?:room|garage)|this time)$", "");
        return SIMULATED.contains(small) ? Optional.of(true)
                : REAL.contains(small) || asked && REAL_WHERE_ASKED.contains(small) || plain.equals("a car") ? Optional.of(false)
                : Optional.empty();
    }
}
