package camberwell.cli;

import camberwell.fact.Conclusion;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.language.BothEnds;
import camberwell.language.Dictionary;
import camberwell.language.Names;
import camberwell.language.Sentence;
import camberwell.language.Stage;
import camberwell.language.Statement;
import camberwell.pack.RulePack;
import camberwell.pack.RuleSet;
import camberwell.upkeep.DemoCase;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Word;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The questions for one rule, and the files that follow from the answers. */
final class NewRule {

    private static final Pattern UNFIT = Pattern.compile("[\"\\\\\\p{Cntrl}]");
    private static final Pattern NOTE_NAME = Pattern.compile("[a-z][a-z0-9-]*");
    private static final int MOST_OFFERED = 15;
    private static final int LONGEST = 800;
    private static final String NO_SOURCE = "common practice, no source";

    private String name;
    private final Dictionary dictionary;
    private final Notes notes;
    private final Names names;
    private final Dialogue dialogue;
    /** In the order in which they are written: whoever kills the program finds no rule without its note. */
    private final Map<String, String> files = new LinkedHashMap<>();
    private Stage stage;
    private String newNote = "";

    /** @param engine with the rules that the folder has already */
    NewRule(String name, Engine engine, Dialogue dialogue) {
        this.name = name.strip();
        this.dictionary = engine.dictionary();
        this.notes = engine.notes();
        this.names = Engine.names(notes);
        this.dialogue = dialogue;
    }

    /** Asks everything. */
    NewRule ask() {
        List<String> stages = Arrays.stream(Stage.values()).map(Stage::id).toList();
        stage = dialogue.ask("Stage (" + String.join(", ", stages) + "):",
                answer -> word(answer, stages).map(id -> Word.of(Stage.class, id)));
        dialogue.say("When does it apply? A sentence a line; lines with a dash narrow the report above them.");
        List<String> conditions = sentences("when>", true);
        dialogue.say("What follows?");
        List<String> conclusions = sentences("then>", false);
        bothEnds(conditions, conclusions);
        String because = text("Why, for this very situation?", "");
        String note = note(conclusions);
        if (!names.hasNote(note)) {
            files.put(RulePack.NOTES + "/" + kind().folder() + "/" + note + ".md", noteText(because));
        }
        files.put(stage.folder() + "/" + slug() + ".dslr", "rule \"" + name + "\"\n    @because(\"" + because + "\")\n"
                + "    @note(\"" + note + "\")\nwhen\n" + lines(conditions) + "then\n" + lines(conclusions) + "end\n");
        return this;
    }

    /** A rule that names an end without saying which is two rules, whose names tell them apart. */
    private void bothEnds(List<String> conditions, List<String> conclusions) {
        boolean open = Stream.concat(conditions.stream(), conclusions.stream()).anyMatch(BothEnds::isOpen);
        if (open && !BothEnds.isOpen(name)) {
            String usual = name + ": {axle}";
            name = dialogue.ask("The rule stands for both ends. Its name, with {axle} (empty for: " + usual + "):", answer -> {
                String said = answer.isEmpty() ? usual : answer;
                if (BothEnds.isOpen(said) && !UNFIT.matcher(said).find()) {
                    return Optional.of(said);
                }
                dialogue.say("A name with {axle} in it, please, or {Axle} where it starts.");
                return Optional.empty();
            });
        }
    }

    /** The rule and its note, by their paths in the folder. */
    Map<String, String> files() {
        return files;
    }

    /** The rule's name as a file name. */
    String slug() {
        String plain = Normalizer.normalize(name.replaceAll("\\{[^}]*}", ""), Normalizer.Form.NFD).replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        String slug = plain.replaceAll("^[-0-9]+|-+$", "");
        return slug.isEmpty() ? "rule" : slug.substring(0, Math.min(60, slug.length())).replaceAll("-+$", "");
    }

    /** A case in which the rule should fire. */
    String demoCase(RuleSet rules) {
        String first = BothEnds.at(Axle.FRONT, name);
        return DemoCase.of(rules.rules().values().stream().filter(rule -> Conclusion.voice(rule.name()).equals(first)).findFirst()
                .orElseThrow(), rules.rules().values());
    }

    private static String lines(List<String> sentences) {
        StringBuilder text = new StringBuilder();
        sentences.forEach(sentence -> text.append("    ").append(sentence).append('\n'));
        return text.toString();
    }

    private List<String> sentences(String prompt, boolean condition) {
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
            dialogue.say("No sentence has all of those words. Write fewer, for instance: tread, report, differential.");
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

    private Optional<String> word(String answer, List<String> words) {
        if (words.contains(answer)) {
            return Optional.of(answer);
        }
        dialogue.say("One of " + String.join(", ", words) + ", please"
                + Nearest.to(answer, words).map(near -> "; did you mean \"" + near + "\"?").orElse(""));
        return Optional.empty();
    }

    private String text(String question, String usual) {
        return dialogue.ask(question, answer -> {
            String said = answer.isEmpty() ? usual : answer;
            if (said.isEmpty() || said.length() > LONGEST || UNFIT.matcher(said).find()) {
                dialogue.say("A line of text, please, without double quotes and backslashes.");
                return Optional.empty();
            }
            return Optional.of(said);
        });
    }

    /** The note that the rule points to: a new one of its own, unless one that is there is named. */
    private String note(List<String> conclusions) {
        String own = newNote.isEmpty() ? slug() : newNote;
        if (!newNote.isEmpty()) {
            return own;
        }
        return dialogue.ask("Knowledge note (empty for a new one, " + own + "):", answer -> {
            String said = answer.isEmpty() ? own : answer;
            if (names.hasNote(said) || NOTE_NAME.matcher(said).matches() && Nearest.to(said, notes.names()).isEmpty()) {
                return Optional.of(said);
            }
            dialogue.say("There is no note \"" + said + "\"" + Nearest.to(said, notes.names())
                    .map(near -> "; did you mean \"" + near + "\"?").orElse(""));
            return Optional.empty();
        });
    }

    /** A note of one's own beside a change tells of a cause: the adjusters have theirs. */
    private Note.Kind kind() {
        return switch (stage) {
            case READINGS -> Note.Kind.READING;
            case CAUSES, CHANGES -> Note.Kind.CAUSE;
            case CAUTIONS -> Note.Kind.CAUTION;
            case DRIVING -> Note.Kind.DRIVING;
        };
    }

    private String noteText(String because) {
        String title = text("The note's title (empty for the rule's name):", name.replaceAll(" ?\\{[^}]*}", ""));
        String statement = text("In one sentence, what is going on (empty for the reason above)?", because.replaceAll(" ?\\{[^}]*}", ""));
        StringBuilder note = new StringBuilder("---\n");
        entry("title", title, note);
        entry("kind", kind().id(), note);
        entry("statement", statement, note);
        if (kind() != Note.Kind.CAUTION) {
            entry("plain", text("The same for a newcomer (empty for the same words):", statement), note);
        }
        if (kind() == Note.Kind.DRIVING) {
            entry("try", text("What to do on the next lap?", ""), note);
            entry("feel", text("What does it feel like when it works?", ""), note);
            entry("car-or-driver", text("How to tell the driver from the car?", ""), note);
        }
        String source = text("Who says so? A published source (empty for: " + NO_SOURCE + "):", NO_SOURCE);
        note.append("sources:\n  - ").append(quoted(source)).append("\n---\n").append(because.replaceAll(" ?\\{[^}]*}", "")).append('\n');
        return note.toString();
    }

    private static void entry(String key, String text, StringBuilder note) {
        note.append(key).append(": ").append(quoted(text)).append('\n');
    }

    private static String quoted(String text) {
        return "'" + text.replace("'", "''") + "'";
    }
}
