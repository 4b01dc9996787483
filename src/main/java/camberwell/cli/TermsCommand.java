package camberwell.cli;

import camberwell.knowledge.Term;
import camberwell.knowledge.Terms;
import camberwell.report.Page;
import camberwell.report.ShelfJson;
import camberwell.report.ShelfText;
import camberwell.saying.Heard;
import camberwell.saying.Told;
import camberwell.vocabulary.Symptom;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code camberwell terms}: the trade's words. */
@Command(name = "terms", addMethodSubcommands = false,
        description = "Explains the trade's words; without a word, all that a case, a car or a rule may say.",
        footer = {"", "Examples:", "  camberwell terms", "  camberwell terms camber",
            "  camberwell terms snap oversteer", "  camberwell terms push"})
final class TermsCommand implements Callable<Integer>, TakesRules {

    private final Console console;
    private Engine engine;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "WORD", arity = "0..*", description = "The word, with spaces or hyphens.")
    private List<String> words = List.of();

    private final RulesOption rules = new RulesOption();

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    TermsCommand(Console console, Engine engine) {
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
        Terms terms = engine.home().terms().with(OwnWords.terms(engine.packs()));
        Page page = new Page(console.width(), console.styled());
        if (words.isEmpty()) {
            new ShelfText(page).words(terms);
            Output.either(console, format, page, ShelfJson.words(terms.all()));
            return ExitCode.DONE;
        }
        String word = String.join(" ", words);
        List<Term> said = terms.find(word).isPresent() ? List.of() : said(word, terms);
        if (!said.isEmpty()) {
            ShelfText shelf = new ShelfText(page);
            page.paragraph(0, "\"" + word + "\" is what drivers say of " + said.stream()
                    .map(term -> term.name().replace('-', ' ')).collect(Collectors.joining(" or of ")) + ".");
            said.forEach(shelf::word);
            Output.either(console, format, page, ShelfJson.words(said));
            return ExitCode.DONE;
        }
        Term term = terms.find(word).orElseThrow(() -> new ParameterException(spec.commandLine(),
                "there is no word \"" + word + "\"" + terms.nearest(word)
                        .map(near -> "; did you mean " + near + "?").orElse("; camberwell terms lists them")));
        new ShelfText(page).word(term);
        Output.either(console, format, page, ShelfJson.words(List.of(term)));
        return ExitCode.DONE;
    }

    /** The complaints that drivers tell in those words. */
    private List<Term> said(String word, Terms terms) {
        Heard heard = engine.listener().hear(word);
        List<Symptom> symptoms = heard.told().isEmpty()
                ? heard.unclear().stream().flatMap(unclear -> unclear.mayBe().stream()).map(Told::symptom).toList()
                : heard.told().stream().map(Told::symptom).toList();
        return heard.notUnderstood().isEmpty()
                ? symptoms.stream().distinct().flatMap(symptom -> terms.find(symptom.id()).stream()).toList() : List.of();
    }
}
