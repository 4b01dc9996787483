package camberwell.cli;

import camberwell.pack.RulePack;
import camberwell.problem.Problem;
import camberwell.saying.Heard;
import camberwell.saying.Listener;
import camberwell.yaml.Document;
import camberwell.yaml.Fields;
import camberwell.yaml.Problems;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What is odd about phrases of a pack that can each be read: a bracket left open, and what is understood otherwise elsewhere. */
final class PackPhrases {

    private final Listener builtIn;
    /** What each phrase means, by the phrase. */
    private final Map<String, String> meant = new HashMap<>();

    private PackPhrases(Listener builtIn) {
        this.builtIn = builtIn;
    }

    /**
     * Problems, and warnings of phrases that camberwell itself takes for another complaint.
     *
     * @param builtIn what camberwell understands without any pack
     */
    static List<Problem> of(RulePack pack, Listener builtIn) {
        Problems found = new Problems();
        PackPhrases phrases = new PackPhrases(builtIn);
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
        }
    }

    private static long count(String phrase, char bracket) {
        return phrase.chars().filter(letter -> letter == bracket).count();
    }
}
