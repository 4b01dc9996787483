package camberwell.report;

import camberwell.channel.Binding;
import camberwell.channel.LoggedUnit;
import camberwell.observe.Agreement;
import camberwell.observe.Observed;
import camberwell.run.Measured;
import camberwell.units.Figures;
import camberwell.vocabulary.Phase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a logged run shows, for people. */
public final class ObservationText {

    private static final List<Phase> SHOWN = List.of(Phase.ENTRY, Phase.LIFT_OFF, Phase.MID_CORNER, Phase.EXIT);

    /** More columns that nothing is read from nobody reads. */
    private static final int MOST_UNUSED = 24;

    private ObservationText() {
    }

    /** First what was found, then where, then what it rests on. */
    public static void write(Observed observed, List<Agreement> agreements, Page page) {
        page.heading("What the log shows");
        long counting = observed.laps().stream().filter(lap -> lap.leftOut().isEmpty()).count();
        page.paragraph(0, observed.log().name() + ": " + observed.log().rows() + " rows at "
                + Figures.fixed(observed.log().rowRate(), 0) + " Hz, " + count(observed.laps().size(), "lap") + " of which "
                + counting + (counting == 1 ? " counts, " : " count, ") + count(observed.corners().size(), "corner"));
        found(observed, page);
        notJudged(observed, page);
        driver(observed, page);
        if (!agreements.isEmpty()) {
            page.heading("Beside what the driver says");
            agreements.forEach(agreement -> page.point(0, Words.sentence(agreement.text()) + "."));
        }
        corners(observed, page);
        observed.line().ifPresent(line -> page.blank().paragraph(0, "Slip angles are held against the car's own moderate "
                + "running: steering " + Figures.fixed(line.ratio(), 1) + " : 1, understeer gradient "
                + Figures.fill("%+.1f", line.gradient()) + " deg/g, scatter " + Figures.fixed(line.scatter(), 2)
                + " deg; from " + Figures.fixed(line.starts(), 1) + " deg beyond it on they count."));
        observed.against().ifPresent(earlier -> page.blank().paragraph(0, "Turn-in and pulling are held against "
                + earlier.log() + (earlier.gradient().isEmpty() ? ", in which the car's own line cannot be found."
                : ", whose understeer gradient was " + Figures.fill("%+.1f", earlier.gradient().getAsDouble()) + " deg/g.")));
        basis(observed, page);
    }

    private static String count(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }

    private static void found(Observed observed, Page page) {
        page.heading("Complaints");
        if (observed.reports().isEmpty()) {
            page.paragraph(0, observed.line().isPresent() ? "None: nothing goes beyond the car's own moderate running."
                    : "None, of what could be judged.");
        }
        for (int i = 0; i < observed.reports().size(); i++) {
            Measured measured = observed.reports().get(i).measured().orElseThrow();
            page.numbered(0, i + 1, Words.sentence(observed.reports().get(i).text()) + " (" + Words.certainty(
                    measured.certainty()) + ", " + Words.two(measured.certainty()) + ")");
            page.paragraph(4, Words.sentence(measured.text()) + ".");
        }
    }

    /** What is not complained of may be so all the same, where nobody could have seen it. */
    private static void notJudged(Observed observed, Page page) {
        if (!observed.notJudged().isEmpty()) {
            page.blank().paragraph(0, "Not judged: " + String.join("; ", observed.notJudged()) + ". The doubts below say why.");
        }
    }

    private static void driver(Observed observed, Page page) {
        if (!observed.habits().isEmpty()) {
            page.heading("What the driver does");
            observed.habits().forEach(habit -> page.point(0, Words.sentence(habit.text()) + " ("
                    + Words.certainty(habit.certainty()) + ", " + Words.two(habit.certainty()) + "; camberwell note "
                    + habit.note() + ")"));
        }
    }

    private static void corners(Observed observed, Page page) {
        page.heading("By corner and phase");
        if (observed.cells().isEmpty()) {
            for (Observed.CornerTold corner : observed.corners()) {
                page.point(0, named(corner));
            }
            return;
        }
        page.paragraph(0, "Most degrees that an axle slides beyond moderate running, in the median lap: F front, R rear.");
        if (page.narrow()) {
            for (Observed.CornerTold corner : observed.corners()) {
                List<String> cells = new ArrayList<>();
                for (Phase phase : SHOWN) {
                    String cell = cell(observed, corner.number(), phase);
                    if (!cell.equals("-")) {
                        cells.add(phase.id() + " " + cell);
                    }
                }
                page.point(0, named(corner) + (cells.isEmpty() ? "" : ": " + String.join(", ", cells)));
            }
            return;
        }
        page.verbatim(padded("corner", 22) + padded("entry", 9) + padded("lift-off", 10) + padded("mid", 9) + "exit");
        for (Observed.CornerTold corner : observed.corners()) {
            page.verbatim((padded(named(corner), 22) + padded(cell(observed, corner.number(), Phase.ENTRY), 9)
                    + padded(cell(observed, corner.number(), Phase.LIFT_OFF), 10)
                    + padded(cell(observed, corner.number(), Phase.MID_CORNER), 9)
                    + cell(observed, corner.number(), Phase.EXIT)).stripTrailing());
        }
    }

    private static String named(Observed.CornerTold corner) {
        return corner.number() + " " + corner.direction() + ", " + corner.speed() + " " + Figures.fixed(corner.slowest(), 0);
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(1, width - text.length()));
    }

    /** The larger of the two, where either slides at all. */
    private static String cell(Observed observed, int corner, Phase phase) {
        Optional<Observed.Cell> cell = observed.cells().stream()
                .filter(it -> it.corner() == corner && it.phase() == phase).findFirst();
        if (cell.isEmpty()) {
            return "-";
        }
        double front = Double.isNaN(cell.get().front()) ? 0 : cell.get().front();
        double rear = Double.isNaN(cell.get().rear()) ? 0 : cell.get().rear();
        double starts = observed.line().map(Observed.LineTold::starts).orElse(1.0);
        String mark = Math.max(front, rear) > starts ? " *" : "";
        return (front >= rear ? "F " + Figures.fixed(front, 1) : "R " + Figures.fixed(rear, 1)) + mark;
    }

    private static void basis(Observed observed, Page page) {
        page.heading("What it rests on");
        page.paragraph(0, "Laps by " + observed.lapsBy() + ".");
        observed.laps().forEach(lap -> lap.leftOut().ifPresent(why ->
                page.point(0, "lap " + lap.number() + " is left out: " + why)));
        page.blank().paragraph(0, "Channels, with the columns they were read from (? is a guess from the heading):");
        List<String> channels = new ArrayList<>();
        for (Binding binding : observed.channels()) {
            String unit = binding.unit().map(LoggedUnit::symbol).filter(it -> !it.isEmpty()).map(it -> " in " + it)
                    .orElse("");
            channels.add(binding.channel().spoken() + (binding.guessed() ? "?" : "") + ": \"" + binding.heading() + "\""
                    + unit + (binding.sign() < 0 ? ", sign turned" : ""));
        }
        page.columns(2, channels);
        List<String> unused = observed.log().unused();
        if (!unused.isEmpty()) {
            page.blank().paragraph(0, "Not used: " + String.join(", ", unused.subList(0, Math.min(MOST_UNUSED, unused.size())))
                    + (unused.size() > MOST_UNUSED ? " and " + (unused.size() - MOST_UNUSED) + " more" : "") + ". If one of "
                    + "them is a channel, name it in a file for --channels.");
        }
        if (!observed.log().cleaning().isEmpty()) {
            page.blank().paragraph(0, "What was done to it:");
            observed.log().cleaning().forEach(done -> page.point(0, done));
        }
        if (!observed.doubts().isEmpty()) {
            page.heading("Doubts");
            observed.doubts().forEach(doubt -> page.point(0, doubt));
        }
    }
}
