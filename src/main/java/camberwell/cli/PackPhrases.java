package camberwell.cli;

import camberwell.pack.RulePack;
import camberwell.problem.Problem;
import camberwell.saying.Heard;
import camberwell.saying.Listener;
import camberwell.yaml.Document;
import camberwell.yaml.Fields;
import camberwell.yaml.Problems;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** What is odd about phrases of a pack that can each be read: an open bracket, and what is understood otherwise without it. */
final class PackPhrases {

    /** What anybody says of any car: a pack's phrase that turns one of these round swallows more than it was meant to. */
    private static final List<String> ORDINARY = List.of("it pushes on the way in", "the front washes out in mid-corner",
            "the nose runs wide on exit", "the car understeers in fast corners", "the front slides in slow corners",
            "no front grip on entry", "the rear slides on exit", "the back steps out when I lift",
            "the car is loose on the way in",
            "the tail comes round in the fast ones", "the back end is loose on the brakes", "no grip at the rear on the power",
            "the rear snaps on exit", "the wheels spin on exit", "the fronts lock on the brakes", "the rears lock under braking",
            "the car weaves on the brakes", "the car pulls left on the straight", "it wanders on the straight",
            "the steering is heavy in slow corners", "the steering goes light in fast corners", "the car is slow to turn in",
            "the car is nervous on turn-in", "the car bottoms over the crest", "the car jumps over the kerbs",
            "the front tyres overheat late in the run", "the rear tyres take too long to warm up", "the front tyres grain");
    private static final int MOST_TOLD = 2;

    private final Listener builtIn;
    private final Listener withPack;
    /** What each phrase means, by the phrase. */
    private final Map<String, String> meant = new HashMap<>();

    private PackPhrases(Listener builtIn, Listener withPack) {
        this.builtIn = builtIn;
        this.withPack = withPack;
    }

    /**
     * Problems, and warnings of phrases that camberwell itself takes for another complaint.
     *
     * @param builtIn what camberwell understands without any pack
     * @param withPack what it understands with the pack
     */
    static List<Problem> of(RulePack pack, Listener builtIn, Listener withPack) {
        Problems found = new Problems();
        PackPhrases phrases = new PackPhrases(builtIn, withPack);
        pack.sayings().flatMap(text -> Document.parse(pack.name() + "/" + RulePack.SAYINGS, text, found))
                .flatMap(document -> document.fields("part").map("complaints", "meaning"))
                .ifPresent(fields -> fields.keys().forEach(meaning -> fields.prose(meaning).ifPresent(text -> {
                    for (String phrase : text.split(",")) {
                        phrases.look(phrase.strip().toLowerCase(Locale.ROOT), meaning, fields);
                    }
                })));
        return found.all();
    }

    private void look(String phrase, String meaning, Fields fields) {
        if (count(phrase, '(') != count(phrase, ')') || count(phrase, '{') != count(phrase, '}')) {
            fields.errorAtKey(meaning, "the phrase \"" + phrase + "\" has a bracket without its other half");
            return;
        }
        String symptom = meaning.split(" ")[0];
        String other = meant.putIfAbsent(phrase, symptom);
        if (other != null && !other.equals(symptom)) {
            fields.errorAtKey(meaning, "the phrase \"" + phrase + "\" is given to \"" + other
                    + "\" too; a phrase has one meaning");
        } else if (phrase.chars().allMatch(letter -> Character.isLetter(letter) || letter == ' ' || letter == '\'')) {
            Heard heard = builtIn.hear(phrase);
            if (heard.told().size() == 1 && !heard.told().get(0).symptom().is(symptom)) {
                fields.warn(meaning, "without this folder \"" + phrase + "\" is understood as "
                        + heard.told().get(0).symptom().spoken() + "; with it that is gone");
            }
            greedy(phrase, meaning, fields);
        }
    }

    /** A phrase so short that it stands in what is said of something else. */
    private void greedy(String phrase, String meaning, Fields fields) {
        List<String> taken = new ArrayList<>();
        for (String saying : ORDINARY) {
            String before = (" " + saying + " ").contains(" " + phrase + " ") ? spoken(builtIn.hear(saying)) : "";
            String after = before.isEmpty() ? "" : spoken(withPack.hear(saying));
            if (!before.equals(after)) {
                taken.add("\"" + saying + "\" is understood as " + before + " without it and as "
                        + (after.isEmpty() ? "nothing" : after) + " with it");
            }
        }
        if (!taken.isEmpty()) {
            fields.warn(meaning, "the phrase \"" + phrase + "\" stands in ordinary sayings and takes them over: "
                    + String.join("; ", taken.subList(0, Math.min(MOST_TOLD, taken.size()))) + "; give it more words");
        }
    }

    private static String spoken(Heard heard) {
        return heard.told().stream().map(told -> told.symptom().spoken()).distinct().collect(Collectors.joining(" and "));
    }

    private static long count(String phrase, char bracket) {
        return phrase.chars().filter(letter -> letter == bracket).count();
    }
}
