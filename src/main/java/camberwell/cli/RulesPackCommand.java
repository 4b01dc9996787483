package camberwell.cli;

import camberwell.pack.Manifest;
import camberwell.pack.RulePack;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code camberwell rules pack}: a rule folder as one file, to hand to a colleague. */
@Command(name = "pack", addMethodSubcommands = false,
        description = {"Packs a rule folder into one .zip file that a colleague can give to --rules.",
            "The folder needs a pack.yaml with name, version and author. It is checked first, and a folder with a "
            + "problem is not packed."},
        footer = {"", "Example:", "  camberwell rules pack my-rules -o my-rules.zip"},
        exitCodeList = {"0:packed", "1:something is wrong with the rules, and nothing was packed",
            "2:the input or the command line is wrong"})
final class RulesPackCommand implements Callable<Integer>, TakesRules {

    private final Console console;
    private final Engine engine;

    @Parameters(paramLabel = "DIR", description = "The rule folder.")
    private String folder;

    @Option(names = {"-o", "--output"}, required = true, paramLabel = "FILE", description = "The .zip file to write.")
    private String output;

    @Option(names = "--overwrite", description = "Write over FILE if it is there and is no packed rule folder.")
    private boolean overwrite;

    private final RulesOption rules = new RulesOption();

    RulesPackCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public RulesOption rules() {
        return rules;
    }

    @Override
    public Integer call() throws IOException {
        if (!output.endsWith(".zip")) {
            throw new ProblemsException(Problem.of("-o " + output, "the file's name has to end in .zip",
                    Optional.empty()));
        }
        Path target = console.path(output);
        if (Files.isDirectory(target) || Files.exists(target) && !overwrite && !isPack(target)) {
            throw new ProblemsException(Problem.of("-o " + output, Files.isDirectory(target) ? "is a folder"
                    : "is there already and is no packed rule folder; take another name, or give --overwrite",
                    Optional.empty()));
        }
        List<Problem> problems = new ArrayList<>(
                Checked.of(rules.with(List.of(folder)), List.of(), console, engine).problems());
        RulePack pack = null;
        if (problems.isEmpty()) {
            pack = RulesOption.read(List.of(folder), List.of(), console).get(0);
            if (pack.manifest().isEmpty()) {
                problems.add(Problem.of(pack.name() + "/" + RulePack.MANIFEST,
                        "is missing: it tells the name, version and author of the rules", Optional.empty()));
            }
        }
        if (!problems.isEmpty()) {
            problems.forEach(problem -> console.err().println(problem.withExcerpt()));
            return problems.stream().anyMatch(problem -> problem.line() == 0) ? ExitCode.WRONG_INPUT
                    : ExitCode.FOUND_WRONG;
        }
        NewFiles files = new NewFiles();
        files.replace(target, pack.zip());
        files.write();
        Manifest manifest = pack.manifest().orElseThrow();
        console.out().println(output + ": " + manifest.name() + " " + manifest.version() + " by " + manifest.author()
                + ", " + pack.files().size() + " files");
        return ExitCode.DONE;
    }

    /** Whether it is an earlier version of a pack, which the new one may take the place of. */
    private static boolean isPack(Path file) throws IOException {
        if (!Files.isRegularFile(file) || !RulePack.isZip(file)) {
            return false;
        }
        try (ZipFile zip = new ZipFile(file.toFile())) {
            return zip.getEntry(RulePack.MANIFEST) != null;
        } catch (ZipException e) {
            return false;
        }
    }
}
