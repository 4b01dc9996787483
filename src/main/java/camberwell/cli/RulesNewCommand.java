package camberwell.cli;

import camberwell.language.BothEnds;
import camberwell.pack.RulePack;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.report.Page;
import camberwell.vocabulary.Axle;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code camberwell rules new}: asks for a rule, and writes it with its note and a case in which it fires. */
@Command(name = "new", addMethodSubcommands = false,
        description = {"Asks when a rule applies, what follows, why, and who says so. Writes the rule, its note "
            + "and a demo case into your folder, all of them or none.",
            "Where a sentence is asked for, write it, or write words to look for one and choose by number. Answers "
            + "can be piped in, one a line. At any question: back, review, help, quit."},
        footer = {"", "Example:",
            "  camberwell rules new \"Kerbs throw the car: softer front bump\" --into my-rules",
            "  camberwell rules new \"Hot {axle} tyres\" --into my-rules --answers half.txt"})
final class RulesNewCommand implements Callable<Integer>, TakesRules {

    private final Console console;
    private Engine engine;

    @Parameters(paramLabel = "NAME", description = "The rule's name: the situation, a colon, what follows.")
    private String name;

    @Option(names = "--into", required = true, paramLabel = "DIR",
            description = "The rule folder; made if it is not there.")
    private String folder;

    @Option(names = "--answers", paramLabel = "FILE",
            description = "Keeps the answers in this file while they are given, and goes on from those that are in it. It "
                    + "goes when the "
            + "rule is written, and with quit.")
    private String answers;

    private final RulesOption rules = new RulesOption();

    RulesNewCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public RulesOption rules() {
        return rules;
    }

    @Override
    public Integer call() {
        NewFiles.check("--answers", answers, true, console);
        engine = rules.on(engine, console);
        Path into = console.path(folder);
        List<RulePack> before = Files.exists(into) ? RulesOption.read(List.of(folder), List.of(), console) : List.of();
        Engine known = engine.withRules(before);
        taken(known, before);
        Optional<NewRule> asked = ask(known);
        if (asked.isEmpty()) {
            kept().ifPresent(KeptAnswers::forget);
            console.out().println("Nothing was written.");
            return ExitCode.DONE;
        }
        NewRule rule = asked.get();
        Map<String, String> files = new TreeMap<>(before.isEmpty() ? Map.of() : before.get(0).files());
        for (String path : rule.files().keySet()) {
            if (files.containsKey(path)) {
                throw new ProblemsException(Problem.of(folder + "/" + path,
                        "is there already; give the rule another name",
                        Optional.empty()));
            }
        }
        files.putAll(rule.files());
        Engine with = engine.withRules(List.of(new RulePack(folder, Optional.empty(), false, files)));
        List<Problem> problems = new ArrayList<>(with.ruleSet().problems());
        if (problems.isEmpty()) {
            problems.addAll(checked(rule, with));
        }
        if (!problems.isEmpty()) {
            kept().ifPresent(file -> file.write(file.read().subList(0, Math.max(0, file.read().size() - 1))));
            throw new ProblemsException(problems);
        }
        String demo = rule.demoCase(with.ruleSet());
        NewFiles written = new NewFiles();
        rule.files().forEach((path, text) -> written.add(into.resolve(path), text.getBytes(StandardCharsets.UTF_8)));
        String path = RulePack.CASES + "/" + rule.slug() + ".yaml";
        written.add(into.resolve(path), demo.getBytes(StandardCharsets.UTF_8));
        written.write();
        kept().ifPresent(KeptAnswers::forget);
        rule.files().keySet().forEach(file -> console.out().println("Wrote " + folder + "/" + file));
        console.out().println("Wrote " + folder + "/" + path);
        console.out().print(new Page(console.width(), console.styled()).paragraph(0, "Now check and try it:")
                .command("camberwell", "rules", "check", folder).command("camberwell", "rules", "try", folder));
        return ExitCode.DONE;
    }

    /** Says so before the first question, not after the last, when there is a rule of that name, or its file. */
    private void taken(Engine known, List<RulePack> before) {
        String file = "/" + NewRule.slug(name) + ".";
        Optional<String> there = before.stream().flatMap(pack -> pack.files().keySet().stream())
                .filter(path -> path.contains(file) && !path.endsWith(".md")).sorted().findFirst()
                .map(path -> folder + "/" + path)
                .or(() -> Optional.ofNullable(known.ruleSet().rules().get(BothEnds.at(Axle.FRONT, name.strip())))
                        .map(rule -> rule.file() + ":" + rule.line()));
        there.ifPresent(place -> {
            throw new ProblemsException(Problem.of(place, "is there already; give the rule another name", Optional.empty()));
        });
    }

    private Optional<KeptAnswers> kept() {
        return Optional.ofNullable(answers).map(file -> new KeptAnswers(console.path(file), file));
    }

    /** Asks for the rule, from the start again with what stands when an answer is taken back; empty when it is given up. */
    private Optional<NewRule> ask(Engine with) {
        Dialogue dialogue = new Dialogue(console, kept().map(KeptAnswers::read).orElse(List.of()),
                given -> kept().ifPresent(file -> file.write(given)));
        while (true) {
            try {
                return Optional.of(new NewRule(name, with, dialogue).ask());
            } catch (Dialogue.Back e) {
                dialogue.restart();
            } catch (Dialogue.Quit e) {
                return Optional.empty();
            }
        }
    }

    /** What rules check would say of the new files. */
    private List<Problem> checked(NewRule rule, Engine with) {
        Set<String> own = new TreeSet<>();
        rule.files().keySet().stream().filter(path -> path.endsWith(".md")).forEach(path ->
                own.add(path.substring(path.lastIndexOf('/') + 1, path.length() - ".md".length())));
        return Checked.problems(with, own).stream().filter(problem -> rule.files().keySet().stream()
                .anyMatch(path -> problem.file().equals(folder + "/" + path))).toList();
    }
}
