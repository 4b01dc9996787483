package camberwell.practice;

import camberwell.run.Report;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** What a driver tells of what he felt: the worst of it, phase by phase, and not always right. */
public final class Told {

    /** A driver remembers so many things of a run. */
    private static final int MOST = 4;
    private static final double WRONG = 0.1;

    private Told() {
    }

    private record What(Symptom symptom, Phase phase) {
    }

    /** The complaints about what is felt; a thing felt at every speed is told once, without a speed. */
    public static List<Report> of(List<Felt> felt) {
        Map<What, List<Felt>> together = new LinkedHashMap<>();
        felt.forEach(it -> together.computeIfAbsent(new What(it.symptom(), it.phase()), fresh -> new ArrayList<>())
                .add(it));
        List<Report> reports = new ArrayList<>();
        together.forEach((what, of) -> {
            boolean everywhere = of.size() == CornerSpeed.values().length || what.phase() == Phase.BRAKING
                    || what.phase() == Phase.KERBS;
            for (Felt it : everywhere ? of.subList(0, 1) : of) {
                reports.add(new Report(what.symptom(), Optional.empty(), Optional.of(what.phase()),
                        everywhere ? Optional.empty() : Optional.of(it.speed()), it.severity(),
                        Occurrence.EVERY_LAP, Optional.of(Since.WHOLE_RUN), Optional.empty()));
            }
        });
        return List.copyOf(reports.subList(0, Math.min(MOST, reports.size())));
    }

    /** The same by a driver who now and then takes one phase for another, or forgets something. */
    public static List<Report> of(List<Felt> felt, Random random) {
        List<Report> reports = new ArrayList<>();
        for (Report report : of(felt)) {
            double luck = random.nextDouble();
            if (luck < WRONG / 2 && felt.size() > 1) {
                continue;
            }
            reports.add(luck < WRONG ? mistaken(report) : report);
        }
        return reports;
    }

    private static Report mistaken(Report report) {
        Phase phase = switch (report.phase().orElseThrow()) {
            case ENTRY, LIFT_OFF, EXIT -> Phase.MID_CORNER;
            case MID_CORNER -> Phase.ENTRY;
            default -> report.phase().orElseThrow();
        };
        return new Report(report.symptom(), report.where(), Optional.of(phase), report.speed(), report.severity(),
                report.occurrence(), report.since(), report.turn());
    }
}
