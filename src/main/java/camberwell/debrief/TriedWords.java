package camberwell.debrief;

import camberwell.report.Words;
import camberwell.run.Tried;
import camberwell.saying.MovedWords;
import camberwell.vocabulary.Change;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A change that a driver says to have made already, and what came of it: {@code tried a softer rear bar, no difference}. Taken
 * only where both are plain: what was moved, which way, and what came of it. Common practice, no source.
 */
final class TriedWords {

    /** Two at once can be weighed against each other no more; a longer list is a story. */
    private static final int MOST = 2;
    private static final Pattern DONE =
            Pattern.compile("\\b(?:tried|already|(?:have|i've|we've|has|had) (?:been|gone|put|made|set)"
            + "|softened|stiffened|lowered|raised|went|made it|ran|run|changed)\\b");
    private TriedWords() {
    }

    /** What {@code line} says to have been tried; empty where it is not plain. */
    static List<Tried> of(String line) {
        String lower = line.toLowerCase(Locale.ROOT).replace('\u2019', '\'').replaceAll("\\s+", " ");
        if (!DONE.matcher(lower).find()) {
            return List.of();
        }
        Optional<OutcomeWords> said = OutcomeWords.of(lower);
        if (said.isEmpty()) {
            return List.of();
        }
        List<Change> changes = MovedWords.named(said.get().rest());
        long adjusters = changes.stream().map(Change::adjuster).distinct().count();
        if (changes.isEmpty() || adjusters != changes.size() || adjusters > MOST) {
            return List.of();
        }
        return changes.stream().map(change -> new Tried(change, Tried.Moved.UNNOTED, said.get().outcome(), Tried.On.ALL,
                new Tried.Trial(Optional.empty(), Optional.empty(), Optional.empty(), changes.size(), Optional.empty(),
                        Optional.empty(), false))).toList();
    }

    /** In words, for who is to see what was heard: {@code rear anti-roll bar softer was tried: no difference}. */
    static String told(List<Tried> tried) {
        StringBuilder told = new StringBuilder();
        for (Tried one : tried) {
            told.append(told.isEmpty() ? "" : " and ").append(Words.change(one.change()));
        }
        return told.append(tried.size() > 1 ? " were tried: " : " was tried: ").append(switch (tried.get(0).outcome()) {
            case BETTER -> "it helped";
            case SAME -> "no difference";
            case WORSE -> "it made it worse";
            case UNCLEAR -> "it is not clear what came of it";
        }).toString();
    }
}
