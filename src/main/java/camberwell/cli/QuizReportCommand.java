package camberwell.cli;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.problem.Siblings;
import camberwell.report.Page;
import camberwell.vocabulary.Change;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code camberwell quiz report}: what a class knows, and what it confuses with what. */
@Command(name = "report", addMethodSubcommands = false,
        description = {"Reads the files that quiz --record wrote, one a pupil, and tells of the class: what is known, and "
            + "what is confused with what."},
        footer = {"", "Example:", "  camberwell quiz report ada.yaml ben.yaml"})
final class QuizReportCommand implements Callable<Integer> {

    private final Console console;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "The pupils' files.")
    private List<String> files;

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    QuizReportCommand(Console console) {
        this.console = console;
    }

    /** How often a change was asked for and found, and what was said in its place by whom. */
    private static final class Tally {
        private int asked;
        private int known;
        private final Map<String, Set<String>> instead = new TreeMap<>();
    }

    @Override
    public Integer call() throws IOException {
        List<AnswerSheet> sheets = new ArrayList<>();
        for (String file : files) {
            Path path = console.path(file);
            if (!Files.exists(path)) {
                throw new ProblemsException(Problem.missing(file, Siblings.nearestFile(path)));
            }
            sheets.add(AnswerSheet.read(path, file));
        }
        Map<Change, Tally> tallies = new TreeMap<>();
        for (AnswerSheet sheet : sheets) {
            for (AnswerSheet.Answer answer : sheet.answers()) {
                if (!answer.advised().isEmpty()) {
                    Tally tally = tallies.computeIfAbsent(answer.right() ? answer.answer() : answer.advised().get(0),
                            key -> new Tally());
                    tally.asked++;
                    tally.known += answer.right() ? 1 : 0;
                    if (!answer.right()) {
                        tally.instead.computeIfAbsent(answer.answer().id(), key -> new TreeSet<>()).add(sheet.pupil());
                    }
                }
            }
        }
        Output.either(console, format, page(sheets, tallies), tree(sheets, tallies));
        return ExitCode.DONE;
    }

    private Page page(List<AnswerSheet> sheets, Map<Change, Tally> tallies) {
        Page page = new Page(console.width(), console.styled());
        page.heading("Pupils");
        sheets.forEach(sheet -> page.point(0, sheet.pupil() + ": " + sheet.right() + " of " + sheet.answers().size()
                + " answers are advised too"));
        page.heading("What is known");
        tallies.forEach((change, tally) -> page.point(0, change.id() + ": " + tally.known + " of " + tally.asked));
        page.heading("What is confused with what");
        if (tallies.values().stream().allMatch(tally -> tally.instead.isEmpty())) {
            page.paragraph(0, "Nothing.");
        }
        tallies.forEach((change, tally) -> tally.instead.forEach((said, pupils) -> page.point(0, "where " + change.id()
                + " is asked for, " + said + " is said by " + String.join(", ", pupils))));
        return page;
    }

    private static Map<String, Object> tree(List<AnswerSheet> sheets, Map<Change, Tally> tallies) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("pupils", sheets.stream().map(sheet -> Map.of("pupil", sheet.pupil(), "answers", sheet.answers().size(),
                "right", sheet.right())).toList());
        List<Object> changes = new ArrayList<>();
        tallies.forEach((change, tally) -> {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("change", change.id());
            one.put("asked", tally.asked);
            one.put("known", tally.known);
            one.put("instead", tally.instead);
            changes.add(one);
        });
        tree.put("changes", changes);
        return tree;
    }
}
