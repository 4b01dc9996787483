package camberwell.debrief;

import camberwell.vocabulary.Surface;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What the track was like where that changed: {@code damp in the morning but dry when I went out}. What it was on the driver's
 * own run counts; of one that changed meanwhile nobody else can say which half is meant. A track that was one thing is heard as
 * any other words are.
 *
 * @param surface on the run; empty where it changed in the course of it
 * @param between what it may be then
 * @param rest what else the line says
 */
record SurfaceWords(Optional<Surface> surface, Set<Surface> between, String rest) {

    private static final Pattern CUT = Pattern.compile("\\s*[,;.](?=\\s)\\s*|\\s+(?:and|with|but|then|though|yet)\\s+"
            + "|\\s+(?=(?:before|until) (?:it|the))");
    private static final Pattern SAID = Pattern.compile("\\b(?:(bone dry|dry|dried(?: out| up| off)?)|(damp|drying|greasy"
            + "|half wet)"
            + "|(wet|rain(?:ed|ing|s|y)?|pour(?:ed|ing)|soaked|standing water))\\b(?! (?:tyres?|tires?|rubber|set|line|setup"
            + "|ones))");
    private static final Pattern NOT = Pattern.compile("\\b(?:not|never|no|(?:was|is|did|had)n'?t|if)\\b");
    private static final Pattern BEFORE = Pattern.compile("\\b(?:in the morning|this morning|earlier(?: on)?|overnight|last night"
            + "|yesterday|the day before|before(?:hand)?|had been|at breakfast|in (?:practice|qualifying|warm-?up)"
            + "|when we arrived|the session before|in the night)\\b");
    private static final Pattern OWN = Pattern.compile("\\b(?:(?:when|by the time|once|as) (?:i|we|he|she) (?:went|drove|got"
            + "|came|ran|started|set|was|were)|(?:for|in|on|by|during|at) (?:my|our|his|her|the) (?:run|session|stint|race|laps"
            + "|go|turn|start)"
            + "|by then|by now|now|for me|for us|mostly|mainly|all through)\\b");

    private static final Set<String> ROUND_IT = Set.of("", "it", "it's", "was", "is", "the", "track", "circuit", "tarmac",
            "surface", "a", "few", "some", "patches", "bit", "little", "still", "just", "very", "quite", "all", "at", "first",
            "early", "on", "to", "start", "begin", "with", "later", "out", "there", "had", "been", "has", "got", "became",
            "turned", "went", "only", "in", "everything", "everywhere", "morning", "afternoon", "weather", "day", "again", "by",
            "of", "end", "run", "i", "we", "so", "nearly", "almost", "completely", "fully", "towards", "then", "well", "heavily",
            "lightly", "line", "session");

    /** What a line says of it; empty where it tells of one surface only, or of none. */
    static Optional<SurfaceWords> of(String typed) {
        List<Surface> own = new ArrayList<>();
        List<Surface> open = new ArrayList<>();
        boolean before = false;
        List<String> rest = new ArrayList<>();
        for (String clause : CUT.split(typed.strip())) {
            String small = clause.toLowerCase(Locale.ROOT).replace('\u2019', '\'');
            Matcher said = SAID.matcher(small);
            if (!said.find()) {
                rest.add(clause);
            } else if (NOT.matcher(small).find() || !only(small)) {
                return Optional.empty();
            } else {
                Surface surface = said.group(1) != null ? Surface.DRY : said.group(2) != null ? Surface.DAMP : Surface.WET;
                boolean earlier = BEFORE.matcher(small).find();
                before |= earlier;
                if (!earlier) {
                    (OWN.matcher(small).find() ? own : open).add(surface);
                }
            }
        }
        Set<Surface> all = EnumSet.noneOf(Surface.class);
        all.addAll(own.isEmpty() ? open : own);
        boolean several = before || own.size() + open.size() > 1;
        if (!several || all.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new SurfaceWords(all.size() == 1 ? Optional.of(all.iterator().next()) : Optional.empty(), all,
                String.join(", ", rest)));
    }

    /** Whether a clause tells of the track alone. */
    private static boolean only(String clause) {
        String left = clause;
        for (Pattern pattern : List.of(SAID, BEFORE, OWN)) {
            left = pattern.matcher(left).replaceAll(" ");
        }
        return Stream.of(left.strip().split("[^\\w']+")).allMatch(ROUND_IT::contains);
    }
}
