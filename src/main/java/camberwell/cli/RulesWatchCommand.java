package camberwell.cli;

import camberwell.engine.RuleProblemException;
import camberwell.pack.RulePack;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.problem.Siblings;
import camberwell.report.Page;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code camberwell rules watch}: checks and tries a rule folder again whenever something in it is saved. */
@Command(name = "watch", addMethodSubcommands = false,
        description = {"Checks a rule folder, tries it on its cases, and does so again on each save.",
            "Ends with Ctrl-C."},
        footer = {"", "Example:", "  camberwell rules watch my-rules --case my-rules/demo-cases/monday.yaml"})
final class RulesWatchCommand implements Callable<Integer>, TakesRules {

    /** Editors save in several steps; what comes within this time belongs together. */
    private static final long TOGETHER_MILLISECONDS = 200;

    private final Console console;
    private final Engine engine;

    @Parameters(paramLabel = "DIR", description = "The rule folder.")
    private String folder;

    @Option(names = "--case", paramLabel = "CASE",
            description = "A case to try; can be given again. Without it, the cases of the folder's own demo-cases.")
    private List<String> cases = new ArrayList<>();

    private final RulesOption rules = new RulesOption();

    @Option(names = "--rounds", paramLabel = "N", defaultValue = "0", converter = Count.Rounds.class,
            description = "Ends after so many rounds; 0, which is the default, for as many as there are saves.")
    private int rounds;

    RulesWatchCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public RulesOption rules() {
        return rules;
    }

    @Override
    public Integer call() throws IOException {
        Path watched = console.path(folder);
        if (!Files.isDirectory(watched)) {
            throw new ProblemsException(Problem.of(folder, Files.exists(watched) ? "is a file; what is watched is "
                    + "a folder" : "there is no such folder", Files.exists(watched) ? Optional.empty()
                    : Siblings.nearest(watched, Files::isDirectory)
                    .map(near -> Path.of(folder).resolveSibling(near).toString())));
        }
        try (WatchService service = watched.getFileSystem().newWatchService()) {
            register(watched, service);
            round();
            for (int round = 1; round != rounds; round++) {
                WatchKey key = service.take();
                while (key != null) {
                    key.pollEvents();
                    key.reset();
                    key = service.poll(TOGETHER_MILLISECONDS, TimeUnit.MILLISECONDS);
                }
                register(watched, service);
                round();
            }
        } catch (FileSystemException e) {
            throw new ProblemsException(Problem.unreadable(folder, e));
        } catch (InterruptedException | ClosedWatchServiceException e) {
            Thread.currentThread().interrupt();
        }
        return ExitCode.DONE;
    }

    /** A folder that is registered already stays registered once. */
    private static void register(Path folder, WatchService service) throws IOException {
        try (Stream<Path> folders = Files.walk(folder, 3)) {
            for (Path each : folders.filter(Files::isDirectory).toList()) {
                each.register(service, StandardWatchEventKinds.ENTRY_CREATE, StandardWatchEventKinds.ENTRY_MODIFY,
                        StandardWatchEventKinds.ENTRY_DELETE);
            }
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    /** Checks, and when all is well tries. Nothing that is wrong with the folder ends the watch. */
    void round() {
        Page page = new Page(console.width(), console.styled());
        try {
            Checked checked = Checked.of(rules.with(List.of(folder)), rules.trusted(), console, engine);
            checked.problems().forEach(problem -> page.verbatim(problem.withExcerpt()));
            page.verbatim(checked.summary());
            if (checked.problems().isEmpty()) {
                RulesOption.Named named = rules.on(engine, console, List.of(folder));
                RuleTrial trial = new RuleTrial(named.packs(), named.base());
                PackCases found = new PackCases(console, trial.cases(), engine.home().folder().resolve(RulePack.CASES));
                trial.of((cases.isEmpty() ? found.of(named.packs().get(0), console.path(folder))
                        : found.files(cases.stream().map(console::path).toList())).read())
                        .forEach(tried -> trial.write(tried, page));
            }
        } catch (ProblemsException e) {
            e.problems().forEach(problem -> page.verbatim(problem.withExcerpt()));
        } catch (RuleProblemException | UncheckedIOException e) {
            page.verbatim(e.getMessage());
        }
        console.out().println(page);
        console.out().flush();
    }
}
