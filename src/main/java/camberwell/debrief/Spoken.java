package camberwell.debrief;

import camberwell.report.Words;
import camberwell.run.Made;
import camberwell.run.TyreReading;
import camberwell.saying.Heard;
import camberwell.saying.Told;
import camberwell.units.Quantity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Answers in words, as they are echoed, listed and written down. */
final class Spoken {

    private Spoken() {
    }

    /** An answer in words. */
    static String text(Answer answer) {
        if (answer instanceof Answer.Said said) {
            return said.groups().stream()
                    .map(group -> group.stream().map(Word::spoken).collect(Collectors.joining(" ")))
                    .collect(Collectors.joining(", "));
        }
        if (answer instanceof Answer.OfCar chosen) {
            return chosen.car().name() + ", " + chosen.car().driven();
        }
        if (answer instanceof Answer.Measured measured) {
            return measured.quantity().toString();
        }
        if (answer instanceof Answer.Read read) {
            return read.tyres().isEmpty() ? "nothing read" : read.tyres().entrySet().stream()
                    .map(wheel -> wheel.getKey().id() + " " + text(wheel.getValue())).collect(Collectors.joining("; "));
        }
        if (answer instanceof Answer.InWords words) {
            return text(words.heard());
        }
        if (answer instanceof Answer.Corrected corrected) {
            return corrected.groups().isEmpty() ? "taken back" : corrected.groups().stream()
                    .map(Spoken::grouped).collect(Collectors.joining("; "));
        }
        if (answer instanceof Answer.OfRun run) {
            return run.text();
        }
        if (answer instanceof Answer.Either either) {
            return either.yes() ? "a simulator" : "a real car";
        }
        if (answer instanceof Answer.Changed changed) {
            return changed.settings().made().isEmpty() ? "nothing changed" : text(changed.settings().made());
        }
        if (answer instanceof Answer.Chosen chosen) {
            return switch (chosen.choice()) {
                case FIGURES -> "what was measured is right";
                case COMPLAINT -> "the complaint is right";
                case BOTH -> "both are right";
            };
        }
        return answer instanceof Answer.Nothing ? "nothing else" : "unknown";
    }

    /** A complaint, or words of one. */
    private static String grouped(List<Word> group) {
        List<Word> rest = group.stream().filter(word -> !(word instanceof Symptom)).toList();
        return group.stream().filter(Symptom.class::isInstance).map(Symptom.class::cast).findFirst()
                .map(symptom -> new Told(symptom, rest, List.of()).text())
                .orElseGet(() -> rest.stream().map(Word::spoken).collect(Collectors.joining(" ")));
    }

    /** Changes in words: {@code rear toe, more toe-in, 0.15 -> 0.25 deg}. */
    static String text(List<Made> changes) {
        return changes.stream().map(made -> Words.change(made.change()) + ", " + Words.fromTo(made.moved().from().orElseThrow(),
                made.moved().to().orElseThrow())).collect(Collectors.joining("; "));
    }

    /** What was heard, loose words included. */
    static String text(Heard heard) {
        String loose = heard.loose().stream().map(word -> word instanceof Since since ? Told.text(since) : word.spoken())
                .distinct().collect(Collectors.joining(" "));
        String text = heard.text();
        return text.isEmpty() ? loose : loose.isEmpty() ? text : text + "; " + loose;
    }

    /** The figures of one tyre. */
    static String text(TyreReading tyre) {
        String tread = Stream.of(tyre.inner(), tyre.middle(), tyre.outer()).flatMap(Optional::stream)
                .map(Quantity::toString).collect(Collectors.joining(" / "));
        String unit = tyre.outer().map(figure -> " " + figure.unit().symbol()).orElse("");
        // Three of one unit name it once.
        tread = tread.endsWith(unit) && !unit.isEmpty() ? tread.replace(unit, "") + unit : tread;
        String pressure = Stream.of(tyre.coldPressure().map(it -> it + " cold"),
                        tyre.hotPressure().map(it -> it + " hot"))
                .flatMap(Optional::stream).collect(Collectors.joining(", "));
        return Stream.of(tread, pressure).filter(it -> !it.isEmpty()).collect(Collectors.joining(", "));
    }
}
