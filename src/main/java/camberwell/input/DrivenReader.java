package camberwell.input;

import camberwell.car.Car;
import camberwell.problem.Text;
import camberwell.run.Driven;
import camberwell.run.Lap;
import camberwell.run.Made;
import camberwell.run.Tried;
import camberwell.vocabulary.LapFlag;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Word;
import camberwell.yaml.Document;
import camberwell.yaml.Fields;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;

/** Reads what the book of runs adds to a case: {@code run}, {@code changed}, {@code laps}, {@code verdict}, {@code judged}. */
final class DrivenReader {

    private static final int LARGEST_NUMBER = 999_999;

    private final Document in;
    private final Optional<Car> car;

    /** @param car the case's car, if it could be read */
    DrivenReader(Document in, Optional<Car> car) {
        this.in = in;
        this.car = car;
    }

    /** Reads it from the keys of a case. */
    Driven read(Fields fields) {
        Driven.Sheet sheet = fields.map("run", "key").map(this::sheet).orElse(Driven.Sheet.UNKNOWN);
        List<Made> changed = new ArrayList<>();
        for (Node node : fields.list("changed")) {
            Fields.map(node, "a change", in, "key").flatMap(it -> TriedReader.made(it, car)).ifPresent(changed::add);
        }
        List<Lap> laps = new ArrayList<>();
        for (Node node : fields.list("laps")) {
            lap(node).ifPresent(laps::add);
        }
        Optional<Outcome> verdict = fields.word("verdict", Outcome.class);
        List<Tried> judged = new ArrayList<>();
        for (Node node : fields.list("judged")) {
            Fields.map(node, "a judgement", in, "key").flatMap(it -> TriedReader.read(it, car)).ifPresent(judged::add);
        }
        return new Driven(sheet, changed, laps, verdict, judged);
    }

    private Driven.Sheet sheet(Fields fields) {
        Driven.Sheet sheet = new Driven.Sheet(fields.count("number", 1, LARGEST_NUMBER), date(fields),
                fields.text("driver"), fields.text("track"), fields.text("tyre-set"), fields.yes("rebuilt"));
        fields.done();
        return sheet;
    }

    private Optional<LocalDateTime> date(Fields fields) {
        Optional<String> text = fields.text("date");
        Optional<LocalDateTime> date = text.flatMap(DrivenReader::date);
        if (text.isPresent() && date.isEmpty()) {
            fields.error("date", Text.quoted(text.get()) + " is no date; write 2026-05-03 or 2026-05-03T10:20");
        }
        return date;
    }

    /** A day, or a day and a time, as in ISO 8601; to the minute. */
    static Optional<LocalDateTime> date(String text) {
        try {
            String iso = text.strip().replace(' ', 'T');
            return Optional.of(iso.indexOf('T') < 0 ? LocalDate.parse(iso).atStartOfDay()
                    : LocalDateTime.parse(iso).truncatedTo(ChronoUnit.MINUTES));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    private Optional<Lap> lap(Node node) {
        Optional<Lap> lap = node instanceof ScalarNode scalar ? Lap.parse(scalar.getValue()) : Optional.empty();
        if (lap.isEmpty()) {
            in.error(node, Document.kind(node) + " is no lap; write its time, as 1:32.41 or 92.41, and after it "
                    + Text.oneOf(Word.ids(LapFlag.class)) + " where it was no ordinary one");
        }
        return lap;
    }
}
