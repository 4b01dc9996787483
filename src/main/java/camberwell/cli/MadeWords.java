package camberwell.cli;

import camberwell.debrief.Earlier;
import camberwell.history.Changes;
import camberwell.problem.ProblemsException;
import camberwell.run.Case;
import camberwell.run.Made;
import camberwell.saying.MovedWords;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What was changed since the last run, as it is told in a talk: {@code rear toe in 2 steps and the front bar softer}. */
final class MadeWords {

    /** Where an adjuster stands: {@code rear toe 0.25 deg}, {@code rear toe = 0.25 deg}. */
    private static final Pattern SETTING = Pattern.compile("(.*?[a-z])\\s*(?:=|\\bto\\b)?\\s*"
            + "(-?\\d+(?:\\.\\d+)?\\s*(?:deg|°|mm|bar|kpa|psi|%|n/mm|lb/in|nm|nm/deg)|(?<==)\\s*-?\\d+(?:\\.\\d+)?)");
    private static final Pattern BARE = Pattern.compile("([a-z-]+[a-z]) (-?\\d+(?:\\.\\d+)?)");
    private static final Pattern BACK =
            Pattern.compile("\\b(?:put\\b.*\\bback|undid|undo|undone|reverted?|restored?|took\\b.*\\bback"
            + "|went back|back to (?:where|how|what))\\b");
    private static final Pattern JOIN = Pattern.compile("\\s*(?:[,;+&]|\\band\\b|\\bthen\\b)\\s*");
    private MadeWords() {
    }

    /**
     * What was changed on the car of {@code run}.
     *
     * @param before what was changed before the last run, and may be put back: "put the rear toe back"
     * @throws ProblemsException if that is no change, or the car cannot be set so
     */
    static Earlier.Changed apply(Case run, String typed, List<Made> before) {
        List<String> changes = new ArrayList<>();
        List<String> settings = new ArrayList<>();
        for (String part : JOIN.split(typed.strip().toLowerCase(Locale.ROOT).replaceAll("[.!]+$", ""))) {
            Matcher setting = SETTING.matcher(part);
            Optional<Made> back = back(part, before);
            if (back.isPresent()) {
                settings.add(back.get().change().adjuster().id() + "=" + back.get().moved().from().orElseThrow());
            } else if (setting.matches()) {
                settings.add(MovedWords.plain(setting.group(1)) + "=" + setting.group(2).strip());
            } else if (!part.isEmpty()) {
                String words = MovedWords.plain(part);
                Matcher bare = BARE.matcher(words);
                // "Rear wing 6": a number and no direction is where it stands.
                if (bare.matches() && Word.find(Adjuster.class, bare.group(1)).isPresent()) {
                    settings.add(bare.group(1) + "=" + bare.group(2));
                } else {
                    changes.add(counted(words));
                }
            }
        }
        Case changed = SettingWords.apply(run, changes, settings);
        return new Earlier.Changed(Changes.setup(changed.car()), Changes.between(run.car(), changed.car()));
    }

    /** The earlier change that is put back: the one of the adjuster that is named, or the only one there was. */
    private static Optional<Made> back(String part, List<Made> before) {
        if (!BACK.matcher(part).find()) {
            return Optional.empty();
        }
        String words = MovedWords.plain(part);
        List<Made> moved = before.stream().filter(made -> made.moved().from().isPresent()).toList();
        return moved.stream().filter(made -> words.contains(made.change().adjuster().id())).findFirst()
                .or(() -> moved.size() == 1 && Arrays.stream(Adjuster.values()).noneMatch(it -> words.contains(it.id()))
                        ? Optional.of(moved.get(0)) : Optional.empty());
    }

    /** The number of steps may stand anywhere; it is read where it stands last. */
    private static String counted(String words) {
        String number = words.replaceAll("\\D", "");
        return number.isEmpty() ? words : words.replaceAll("\\d+", " ").replaceAll("\\s+", " ").strip() + " " + number;
    }
}
