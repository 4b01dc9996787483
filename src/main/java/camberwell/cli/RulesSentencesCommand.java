package camberwell.cli;

import camberwell.language.Dictionary;
import camberwell.language.Names;
import camberwell.language.Sentence;
import camberwell.language.Stage;
import camberwell.pack.ThresholdsFile;
import camberwell.report.Page;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code camberwell rules sentences}: what a rule can say. */
@Command(name = "sentences", addMethodSubcommands = false,
        description = {"Lists the sentences that rules are written in, with the words that fit and an example of each.",
            "With words, only the sentences that have all of them."},
        footer = {"", "Examples:", "  camberwell rules sentences", "  camberwell rules sentences tread hot",
            "  camberwell rules sentences --stage changes"},
        exitCodeList = {"0:done", "1:no sentence has all of those words",
            "2:the input or the command line is wrong"})
final class RulesSentencesCommand implements Callable<Integer>, TakesRules {

    private final Console console;
    private Engine engine;

    @Parameters(paramLabel = "WORDS", arity = "0..*", description = "Words to look for.")
    private List<String> words = new ArrayList<>();

    @Option(names = "--stage", paramLabel = "STAGE",
            description = "Only what a rule of this stage can say: readings, causes, changes, cautions or driving.")
    private Stage stage;

    private final RulesOption rules = new RulesOption();

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    RulesSentencesCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public RulesOption rules() {
        return rules;
    }

    @Override
    public Integer call() throws IOException {
        engine = rules.on(engine, console);
        Dictionary dictionary = engine.dictionary();
        Names names = Home.names(engine.notes());
        List<Sentence> found = find(dictionary, names, words, stage);
        if (format == Format.TEXT) {
            text(found, names);
        } else {
            json(found, names);
        }
        return found.isEmpty() ? ExitCode.FOUND_WRONG : ExitCode.DONE;
    }

    /** The sentences that have all of those words, or whose lists have. */
    static List<Sentence> find(Dictionary dictionary, Names names, List<String> words, Stage stage) {
        return dictionary.sentences().stream()
                .filter(sentence -> stage == null || sentence.verb().map(stage::allows).orElse(true))
                .filter(sentence -> words.stream().map(word -> word.toLowerCase(Locale.ROOT)).allMatch(word ->
                        sentence.template().toLowerCase(Locale.ROOT).contains(word)
                        || sentence.topic().toLowerCase(Locale.ROOT).contains(word)
                        || sentence.gaps().stream().anyMatch(gap -> fitting(gap, names).stream()
                        .anyMatch(fits -> fits.contains(word)))))
                .toList();
    }

    /** The words that fit a gap: its list, or the names of the notes. */
    static Collection<String> fitting(Sentence.Gap gap, Names names) {
        return gap.words().isEmpty() ? new TreeSet<>(names.forGap(gap.name())) : gap.words();
    }

    private void text(List<Sentence> found, Names names) {
        Page page = new Page(console.width(), console.styled());
        if (found.isEmpty()) {
            page.paragraph(0, "No sentence has \"" + String.join(" ", words) + "\".");
        }
        String topic = "";
        Map<String, Collection<String>> lists = new LinkedHashMap<>();
        for (Sentence sentence : found) {
            if (!topic.equals(sentence.topic())) {
                topic = sentence.topic();
                page.heading(topic);
            }
            page.point(0, sentence.template() + stages(sentence));
            if (!sentence.meaning().isEmpty()) {
                page.paragraph(4, "means: " + meaning(sentence));
            }
            if (!sentence.gaps().isEmpty()) {
                page.paragraph(4, "for instance: " + sentence.example());
            }
            sentence.gaps().forEach(gap -> lists.putIfAbsent(gap.name(), fitting(gap, names)));
        }
        lists.remove("other");
        if (!lists.isEmpty()) {
            page.heading("The words that fit");
            lists.forEach((gap, fitting) -> page.labelled(0, "{" + gap + "}", fitting.isEmpty()
                    ? words(gap) : String.join(", ", fitting)));
        }
        console.out().print(page);
    }

    /** What a sentence means, with the thresholds as they stand. */
    private String meaning(Sentence sentence) {
        String meaning = sentence.meaning();
        for (Map.Entry<String, String> threshold : ThresholdsFile.shown(OwnWords.thresholds(engine.packs())).entrySet()) {
            meaning = meaning.replace("{" + threshold.getKey() + "}", threshold.getValue());
        }
        return meaning;
    }

    private static String stages(Sentence sentence) {
        return sentence.condition() ? "" : " (in " + allowing(sentence).stream().map(Stage::folder)
                .collect(Collectors.joining(", ")) + ")";
    }

    private static String words(String gap) {
        return switch (gap) {
            case "certainty" -> "from 0.01 to 1.0";
            case "question", "answer" -> "a name of small letters, numbers and dashes";
            case "steps" -> "a whole number from 1";
            default -> "a number, with a point where it has decimals";
        };
    }

    private static List<Stage> allowing(Sentence sentence) {
        return Arrays.stream(Stage.values()).filter(stage -> stage.allows(sentence.verb().orElseThrow())).toList();
    }

    private void json(List<Sentence> found, Names names) throws IOException {
        Output.json(console, format, json -> {
            json.writeStartArray();
            for (Sentence sentence : found) {
                json.writeStartObject();
                json.writeStringField("sentence", sentence.template());
                json.writeStringField("part", sentence.condition() ? "when" : "then");
                json.writeArrayFieldStart("stages");
                for (Stage allowing : sentence.condition() ? List.of(Stage.values()) : allowing(sentence)) {
                    json.writeString(allowing.id());
                }
                json.writeEndArray();
                json.writeStringField("topic", sentence.topic());
                json.writeStringField("meaning", meaning(sentence));
                json.writeStringField("example", sentence.example());
                json.writeObjectFieldStart("words");
                for (Sentence.Gap gap : sentence.gaps()) {
                    json.writeArrayFieldStart(gap.name());
                    for (String word : fitting(gap, names)) {
                        json.writeString(word);
                    }
                    json.writeEndArray();
                }
                json.writeEndObject();
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }
}
