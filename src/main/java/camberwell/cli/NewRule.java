package camberwell.cli;

import camberwell.fact.Conclusion;
import camberwell.knowledge.Notes;
import camberwell.language.BothEnds;
import camberwell.language.Dictionary;
import camberwell.language.Names;
import camberwell.language.Stage;
import camberwell.pack.RuleSet;
import camberwell.saying.Told;
import camberwell.upkeep.DemoCase;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Word;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The questions for one rule, and the files that follow from the answers. */
final class NewRule {

    private String name;
    private final Dictionary dictionary;
    private final Engine engine;
    private final Notes notes;
    private final Names names;
    private final Dialogue dialogue;
    /** In the order in which they are written: whoever kills the program finds no rule without its note. */
    private final Map<String, String> files = new LinkedHashMap<>();

    /** @param engine with the rules that the folder has already */
    NewRule(String name, Engine engine, Dialogue dialogue) {
        this.name = name.strip();
        this.engine = engine;
        this.dictionary = engine.dictionary();
        this.notes = engine.notes();
        this.names = Home.names(notes);
        this.dialogue = dialogue;
    }

    /** Asks everything. */
    NewRule ask() {
        List<String> stages = Arrays.stream(Stage.values()).map(Stage::id).toList();
        Stage stage = dialogue.ask("Stage (" + String.join(", ", stages) + "):",
                answer -> word(stage(answer), stages).map(id -> Word.of(Stage.class, id)));
        dialogue.say("When does it apply? A sentence a line; lines with a dash narrow the report above them.");
        RuleSentences sentences = new RuleSentences(stage, dictionary, names, dialogue, this::complaint);
        List<String> conditions = sentences.ask("when>", true);
        dialogue.say("What follows?");
        List<String> conclusions = sentences.ask("then>", false);
        bothEnds(conditions, conclusions);
        String because = dialogue.text("Why, for this very situation?", "");
        NewNote notes = new NewNote(name, stage, this.notes, names, dialogue);
        String note = sentences.newNote().isEmpty() ? notes.name(slug()) : sentences.newNote();
        if (!names.hasNote(note)) {
            Map.Entry<String, String> file = notes.written(note, because);
            files.put(file.getKey(), file.getValue());
        }
        files.put(stage.folder() + "/" + slug() + ".dslr", "rule \"" + name + "\"\n    @because(\"" + because + "\")\n"
                + "    @note(\"" + note + "\")\nwhen\n" + lines(conditions) + "then\n" + lines(conclusions) + "end\n");
        return this;
    }

    /** The complaint that somebody means who writes as drivers speak; empty for none. */
    private String complaint(String words) {
        List<Told> told = engine.listener().hear(words).told();
        return told.size() == 1 ? told.get(0).symptom().id() : "";
    }

    /** A stage may be named as its folder is, {@code 3-changes}, or by that number alone. */
    private static String stage(String answer) {
        return Arrays.stream(Stage.values()).filter(stage -> answer.equals(stage.folder())
                || answer.equals(stage.folder().substring(0, 1))).map(Stage::id).findFirst().orElse(answer);
    }

    /** A rule that names an end without saying which is two rules, whose names tell them apart. */
    private void bothEnds(List<String> conditions, List<String> conclusions) {
        boolean open = Stream.concat(conditions.stream(), conclusions.stream()).anyMatch(BothEnds::isOpen);
        if (open && !BothEnds.isOpen(name)) {
            String usual = name + ": {axle}";
            name = dialogue.ask("The rule stands for both ends. Its name, with {axle} (empty for: " + usual + "):", answer -> {
                String said = answer.isEmpty() ? usual : answer;
                if (BothEnds.isOpen(said) && !Dialogue.unquotable(said)) {
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
        return slug(name);
    }

    /** The name of a rule as a file name. */
    static String slug(String name) {
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

    private Optional<String> word(String answer, List<String> words) {
        if (words.contains(answer)) {
            return Optional.of(answer);
        }
        dialogue.say("One of " + String.join(", ", words) + ", please"
                + Nearest.to(answer, words).map(near -> "; did you mean \"" + near + "\"?").orElse(""));
        return Optional.empty();
    }
}
