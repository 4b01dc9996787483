package camberwell.cli;

import camberwell.language.BothEnds;
import camberwell.language.Dictionary;
import camberwell.language.Names;
import camberwell.language.Sentence;
import camberwell.language.Stage;
import camberwell.language.Statement;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The questions for the sentences of one rule: written whole, or chosen by some of their words and filled gap by gap. */
final class RuleSentences {

    private static final int MOST_OFFERED = 15;

    private final Stage stage;
    private final Dictionary dictionary;
    private final Names names;
    private final Dialogue dialogue;
    private final UnaryOperator<String> heard;
    private String newNote = "";

    /** @param heard the complaint that words of the paddock mean, as rules write it; empty for none */
    RuleSentences(Stage stage, Dictionary dictionary, Names names, Dialogue dialogue, UnaryOperator<String> heard) {
        this.stage = stage;
        this.dictionary = dictionary;
        this.names = names;
        this.dialogue = dialogue;
        this.heard = heard;
    }

    /** The name of a note that a sentence spoke of and that is yet to be written; empty where there is none. */
    String newNote() {
        return newNote;
    }

    /**
     * Asks for sentences until there are enough, one at least.
     *
     * @param condition whether they say when the rule applies, rather than what follows
     */
    List<String> ask(String prompt, boolean condition) {
        List<String> said = new ArrayList<>();
        while (true) {
            Optional<String> sentence = dialogue.ask(said.isEmpty() ? prompt : prompt + " (empty when done)", answer ->
                    answer.isEmpty() ? said.isEmpty() ? Optional.empty() : Optional.of(Optional.<String>empty())
                    : sentence(condition, answer, said).map(Optional::of));
            if (sentence.isEmpty()) {
                return said;
            }
            said.add(sentence.get());
        }
    }

    private Optional<String> sentence(boolean condition, String answer, List<String> said) {
        String written = answer.replaceAll("\\s+", " ");
        String joins = !condition ? "" : written.startsWith("either ") ? "either " : written.startsWith("or ") ? "or " : "";
        // What holds of one end is read for the front; either end has the same sentences.
        String spaced = BothEnds.at(Axle.FRONT, written.substring(joins.length()));
        Optional<Map.Entry<Sentence, Map<String, String>>> match = dictionary.match(condition, spaced);
        if (match.isPresent()) {
            return fits(match.get().getKey(), match.get().getValue(), said) ? Optional.of(written) : Optional.empty();
        }
        if (condition && dictionary.isCondition(spaced)) {
            return Optional.of(written);
        }
        List<Sentence> found = RulesSentencesCommand.find(dictionary, names, List.of(spaced.split(" ")), stage).stream()
                .filter(sentence -> sentence.condition() == condition)
                .sorted(Comparator.comparing(sentence -> !hasItself(sentence, spaced))).limit(MOST_OFFERED).toList();
        if (found.isEmpty()) {
            String meant = condition ? heard.apply(spaced) : "";
            dialogue.say("No sentence has all of those words. " + (meant.isEmpty()
                    ? "Write fewer, for instance: tread, report, differential."
                    : "Rules call that " + meant + ": the driver reports " + meant));
            return Optional.empty();
        }
        for (int i = 0; i < found.size(); i++) {
            dialogue.say("  " + (i + 1) + ". " + found.get(i).template());
        }
        Optional<Sentence> chosen = dialogue.ask("Which (a number, or empty for none)?", number -> number.isEmpty()
                ? Optional.of(Optional.<Sentence>empty()) : number(number, found.size())
                .map(index -> Optional.of(found.get(index - 1))));
        return chosen.flatMap(sentence -> {
            Map<String, String> words = new LinkedHashMap<>();
            sentence.gaps().forEach(gap -> words.put(gap.name(), fill(sentence, gap, words)));
            return fits(sentence, words, said) ? Optional.of(sentence.filled(words)) : Optional.empty();
        });
    }

    /** Whether the words stand in the sentence rather than in one of its lists. */
    private static boolean hasItself(Sentence sentence, String words) {
        return Arrays.stream(words.toLowerCase(Locale.ROOT).split(" ")).allMatch(sentence.template()::contains);
    }

    private Optional<Integer> number(String answer, int most) {
        if (answer.matches("[0-9]{1,3}") && Integer.parseInt(answer) >= 1 && Integer.parseInt(answer) <= most) {
            return Optional.of(Integer.parseInt(answer));
        }
        dialogue.say("A number from 1 to " + most + ", please.");
        return Optional.empty();
    }

    /** Whether the words go together, and with what was said before. */
    private boolean fits(Sentence sentence, Map<String, String> words, List<String> said) {
        Optional<Statement.Verb> verb = sentence.verb();
        if (verb.isPresent() && !stage.allows(verb.get())) {
            dialogue.say("A rule of the stage " + stage.id() + " does not " + verb.get().spoken() + ".");
            return false;
        }
        if (sentence.narrowing() && said.stream().noneMatch(line -> line.contains("the driver reports"))) {
            dialogue.say("A dash narrows a line that says what the driver reports; say that first.");
            return false;
        }
        for (Sentence.Gap gap : sentence.gaps()) {
            if (!takes(sentence, gap, words.get(gap.name()))) {
                return false;
            }
        }
        if (words.containsKey("direction")) {
            List<String> directions = directions(words.get("adjuster"));
            if (!directions.contains(words.get("direction"))) {
                dialogue.say(words.get("adjuster") + " moves " + String.join(" or ", directions) + ".");
                return false;
            }
        }
        return true;
    }

    private static List<String> directions(String adjuster) {
        return Word.of(Adjuster.class, adjuster).directions().stream().map(Word::id).toList();
    }

    /** Names of notes are a closed list too, but for a conclusion that may be of something new. */
    private boolean takes(Sentence sentence, Sentence.Gap gap, String word) {
        Collection<String> known = names.forGap(gap.name());
        if (known.isEmpty() || known.contains(word)) {
            return true;
        }
        Optional<String> near = Nearest.to(word, known);
        boolean findsNothing = sentence.verb().equals(Optional.of(Statement.Verb.SPEAK_AGAINST));
        if (!sentence.condition() && !findsNothing && near.isEmpty() && !names.hasNote(word)) {
            dialogue.say("\"" + word + "\" is new; a note on it will be written.");
            newNote = word;
            return true;
        }
        dialogue.say("There is no " + gap.name() + " note \"" + word + "\""
                + near.map(other -> "; did you mean \"" + other + "\"?").orElse(""));
        return false;
    }

    private String fill(Sentence sentence, Sentence.Gap gap, Map<String, String> before) {
        List<String> fitting = gap.name().equals("direction") ? directions(before.get("adjuster"))
                : List.copyOf(RulesSentencesCommand.fitting(gap, names));
        String hint = gap.name().equals("certainty") ? "0.01 to 1.0" : fitting.isEmpty() ? "a number"
                : String.join(", ", fitting);
        return dialogue.ask("{" + gap.name() + "} (" + hint + "):", answer -> {
            if (!gap.takes(answer) || gap.name().equals("direction") && !fitting.contains(answer)) {
                dialogue.say("\"" + answer + "\" does not fit"
                        + Nearest.to(answer, fitting).map(near -> "; did you mean \"" + near + "\"?").orElse(""));
                return Optional.empty();
            }
            return takes(sentence, gap, answer) ? Optional.of(answer) : Optional.empty();
        });
    }
}
