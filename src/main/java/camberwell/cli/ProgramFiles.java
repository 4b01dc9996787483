package camberwell.cli;

import camberwell.engine.RuleBase;
import camberwell.engine.RuleProblemException;
import camberwell.pack.RuleFolder;
import camberwell.pack.ThresholdsFile;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.reading.Ramps;
import camberwell.saying.Sayings;
import camberwell.yaml.Document;
import camberwell.yaml.Fields;
import camberwell.yaml.Problems;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is wrong with the files in the program's own folder that are neither rules nor notes, and without which it stops. */
final class ProgramFiles {

    private static final String BUILT_IN = "is built in and is not read from here: it is ";

    private final Home home;
    private final List<Problem> problems = new ArrayList<>();

    private ProgramFiles(Home home) {
        this.home = home;
    }

    /** All that is wrong with them. */
    static List<Problem> problems(Home home) {
        ProgramFiles files = new ProgramFiles(home);
        files.look(home::weights);
        files.look(() -> Sayings.read(home.sayings()));
        files.look(home::terms);
        files.look(home::limits);
        files.look(home::referenceCars);
        files.look(home::carClasses);
        files.look(() -> files.thresholds(home.thresholds()));
        files.look(() -> Home.reading(() -> RuleBase.compileDrools(home.folder())));
        return files.problems;
    }

    private void look(Runnable reading) {
        try {
            reading.run();
        } catch (ProblemsException e) {
            problems.addAll(e.problems());
        } catch (UncheckedIOException e) {
            problems.add(e.getCause() instanceof FileSystemException file && file.getFile() != null
                    ? Problem.unreadable(file.getFile(), file) : Problem.unreadable(home.folder().toString(), e.getCause()));
        } catch (RuleProblemException e) {
            problems.add(Problem.of(RuleFolder.COMBINE, e.getMessage().replaceFirst("^" + RuleFolder.COMBINE + ": ", ""),
                    Optional.empty()));
        }
    }

    /** The thresholds are shown there, and built in: whoever changes them there would wait in vain for a difference. */
    private void thresholds(Path file) {
        Problems found = new Problems();
        Document.load(file, found).ifPresent(document -> {
            Fields fields = document.fields("threshold");
            ThresholdsFile.notBuiltIn(fields).forEach((name, value) -> fields.error(name, "\"" + name + "\" " + BUILT_IN + value
                    + "; state it otherwise in the thresholds.yaml of a rule folder"));
            fields.map("readings", "reading").ifPresent(readings -> {
                Ramps.shown().forEach((name, ramp) -> {
                    readings.require(name);
                    if (readings.has(name) && !readings.texts(name).equals(ramp)) {
                        readings.error(name, "\"" + name + "\" " + BUILT_IN + ramp);
                    }
                });
                readings.done();
            });
            fields.done();
        });
        found.warningsOrFail();
    }
}
