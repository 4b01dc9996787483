package camberwell.cli;

import camberwell.input.CaseReader;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.run.Driven;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import picocli.CommandLine.Option;

/** What stands at the head of a run's page: who drove, when, where and on which tyres. */
final class RunSheetOptions {

    @Option(names = "--driver", paramLabel = "NAME", description = "Who drove.")
    private String driver;

    @Option(names = "--track", paramLabel = "NAME", description = "Where.")
    private String track;

    @Option(names = "--tyre-set", paramLabel = "NAME", description = "Which tyres.")
    private String tyreSet;

    @Option(names = "--date", paramLabel = "DATE", description = "2026-05-03 or 2026-05-03T10:20; now by default.")
    private String date;

    @Option(names = "--rebuilt", description = "The car was rebuilt before it: what was learned holds no longer.")
    private boolean rebuilt;

    /** @throws ProblemsException if the date is none */
    void check() {
        date();
    }

    /** The head of the run's page; what was not said stays as it stood, and the date is today's where there was none. */
    Driven.Sheet on(Driven.Sheet old) {
        return new Driven.Sheet(Optional.empty(), date().or(old::date)
                .or(() -> Optional.of(LocalDateTime.now().truncatedTo(ChronoUnit.MINUTES))),
                Optional.ofNullable(driver).or(old::driver), Optional.ofNullable(track).or(old::track),
                Optional.ofNullable(tyreSet).or(old::tyreSet), rebuilt || old.rebuilt());
    }

    private Optional<LocalDateTime> date() {
        if (date == null) {
            return Optional.empty();
        }
        Optional<LocalDateTime> when = CaseReader.date(date);
        if (when.isEmpty()) {
            throw new ProblemsException(Problem.of("--date " + date, "is no date; write 2026-05-03 or 2026-05-03T10:20",
                    Optional.empty()));
        }
        return when;
    }
}
