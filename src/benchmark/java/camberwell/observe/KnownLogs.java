package camberwell.observe;

import camberwell.car.Car;
import camberwell.channel.Limits;
import camberwell.input.CaseReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Figures of the reading of logs: how many complaints are right and found, and logs to take the time of. */
public final class KnownLogs {

    private static final int DRAWN = 40;

    private KnownLogs() {
    }

    /**
     * {@code HOME} prints runs, precision and recall, and on standard error what is missed; {@code HOME SEED} does so for
     * forty runs of the transient model that are drawn; {@code HOME FILE ROWS} writes a log of so many rows.
     */
    public static void main(String[] arguments) throws IOException {
        if (arguments.length == 3) {
            write(Path.of(arguments[1]), Long.parseLong(arguments[2]));
            return;
        }
        Path home = Path.of(arguments[0]);
        Limits limits = Limits.read(home.resolve("rules/observation.yaml"));
        if (arguments.length == 2) {
            driven(TransientRuns.drawn(home, Long.parseLong(arguments[1]), DRAWN), limits);
            return;
        }
        Car car = new CaseReader().readCar(home.resolve("demo-cases/cars/corvane-coupe.yaml"));
        double right = 0;
        double told = 0;
        double there = 0;
        int runs = 0;
        for (KnownRun run : KnownRuns.all()) {
            Set<KnownRun.Truth> found = KnownRun.told(run.observe(car, limits));
            right += run.truth().stream().filter(found::contains).count();
            told += found.size();
            there += run.truth().size();
            runs++;
            if (!found.equals(run.truth())) {
                System.err.println(run.name() + ": told " + KnownRun.listed(found) + "; there "
                        + KnownRun.listed(run.truth()));
            }
        }
        System.out.printf(Locale.ROOT, "%d %.4f %.4f%n", runs, right / told, right / there);
        driven(TransientRuns.all(home), limits);
    }

    /** The same for runs of the transient model, and how many complaints of slides there are in calm ones. */
    private static void driven(List<TransientRuns.Run> driven, Limits limits) {
        double right = 0;
        double told = 0;
        double found = 0;
        double there = 0;
        int runs = 0;
        int calm = 0;
        for (TransientRuns.Run asked : driven) {
            TransientRun run = asked.drive();
            if (run.lost) {
                System.err.println(asked.name() + ": does not stay on the road");
                continue;
            }
            runs++;
            TransientTruth truth = new TransientTruth(run);
            Set<KnownRun.Truth> said = TransientRuns.slides(asked.observe(run, limits));
            Set<KnownRun.Truth> wrong = new HashSet<>(said);
            wrong.removeAll(truth.mayBe);
            Set<KnownRun.Truth> missed = TransientRuns.missed(truth, said);
            right += said.size() - wrong.size();
            told += said.size();
            found += truth.there.size() - missed.size();
            there += truth.there.size();
            calm += asked.calm() ? wrong.size() : 0;
            if (wrong.size() + missed.size() > 0) {
                System.err.println(asked.name() + ": wrong " + KnownRun.listed(wrong) + "; missed "
                        + KnownRun.listed(missed));
            }
        }
        System.out.printf(Locale.ROOT, "%d %.4f %.4f %d%n", runs, right / told, found / there, calm);
    }

    /** One run over and over, with its clock going on. */
    private static void write(Path file, long rows) throws IOException {
        LogText text = LogText.plain();
        String[] lines = text.write(MadeRun.on(Circuit.seven())
                .with(Slide.of(-5, KnownRun.phase("exit"), camberwell.vocabulary.CornerSpeed.SLOW))).split("\n");
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write(lines[0] + "\n");
            for (long row = 0; row < rows; row++) {
                int line = 1 + (int) (row % (lines.length - 1));
                String[] cells = lines[line].split(",", 3);
                double lap = Double.parseDouble(cells[1]) + row / (lines.length - 1) * 9;
                out.write(row / 100 + "." + (100 + row % 100 + "").substring(1) + "," + lap + "," + cells[2] + "\n");
            }
        }
    }
}
