package camberwell.cli;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.run.Lap;
import camberwell.vocabulary.LapFlag;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads laps as they are typed in a row: {@code out 92.41 92.39 95.87 traffic}. */
final class LapWords {

    private LapWords() {
    }

    /**
     * The laps. A flag belongs to the time before it; with none before it, as in {@code out 92.41}, or after a comma, it
     * is a lap without a time. Out of the pits is where one begins: behind other than the first time {@code out} is a lap of
     * its own, unless commas say otherwise.
     *
     * @param option that they were given to, for the message
     * @throws ProblemsException if a word is neither a time nor a flag
     */
    static List<Lap> parse(String option, String text) {
        List<Lap> laps = new ArrayList<>();
        boolean apart = text.indexOf(',') >= 0 || text.indexOf(';') >= 0;
        for (String part : text.strip().split("[,;]")) {
            StringBuilder lap = new StringBuilder();
            for (String word : part.strip().split("\\s+")) {
                if (word.isEmpty()) {
                    continue;
                }
                Lap alone = Lap.parse(word).orElseThrow(() -> new ProblemsException(Problem.of(option, "\"" + word
                        + "\" is neither a lap time, like 1:32.41 or 92.41, nor one of "
                        + String.join(", ", Word.ids(LapFlag.class)), Nearest.to(word, Word.ids(LapFlag.class)))));
                boolean starts = alone.seconds().isPresent()
                        || alone.flags().contains(LapFlag.OUT) && !apart && !laps.isEmpty();
                if (starts && !lap.isEmpty()) {
                    laps.add(Lap.parse(lap.toString()).orElseThrow());
                    lap.setLength(0);
                }
                lap.append(lap.isEmpty() ? "" : " ").append(word);
            }
            Optional.of(lap.toString()).filter(it -> !it.isEmpty()).flatMap(Lap::parse).ifPresent(laps::add);
        }
        return laps;
    }
}
