package camberwell.debrief;

import camberwell.car.Car;
import camberwell.run.Case;
import camberwell.units.Unit;
import camberwell.vocabulary.Wheel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What somebody says besides what was asked: figures of the tyres, the day and the driver, that it was a simulator, which
 * wheels are driven. It may be all of a line, or one of its clauses.
 *
 * @param topic what it answers
 * @param taken units that figures without one were taken in
 * @param rest what else the line says; empty where that is all
 */
record Aside(Topic topic, Answer answer, Set<Unit> taken, String rest) {

    private static final Pattern CUT = Pattern.compile("\\s*[,;.](?=\\s)\\s*|\\s+(?:and|with|but)\\s+");

    /**
     * The first that a line says.
     *
     * @param asked what is asked just now; the figures of the tyres are no aside where they are
     */
    static Optional<Aside> of(String typed, Field asked, Case run) {
        boolean readings = asked == Field.TYRES || !tyres(typed, run).isEmpty();
        return clause(typed, Field.BESIDES, clause -> RunWords.of(clause, readings))
                .or(() -> clause(typed, Field.TRACK, TrackWords::of))
                .or(() -> asked != Field.CIRCUIT ? Optional.empty()
                        : clause(typed, Field.CIRCUIT, clause -> WayRound.said(clause).map(Answer.Said::of)))
                .or(() -> SurfaceWords.of(typed).filter(it -> asked != Field.CHANGED && asked != Field.CAME)
                        .flatMap(it -> it.surface().map(surface -> new Aside(Topic.of(Field.SURFACE), Answer.Said.of(surface),
                                Set.of(), it.rest()))))
                .or(() -> Rig.said(typed, asked == Field.SIMULATOR)
                        .map(yes -> new Aside(Topic.of(Field.SIMULATOR), new Answer.Either(yes), Set.of(), "")))
                .or(() -> clause(typed, Field.SIMULATOR, clause -> Rig.said(clause, asked == Field.SIMULATOR)
                        .map(Answer.Either::new)))
                .or(() -> asked == Field.TYRES ? Optional.empty() : tyres(typed, run));
    }

    /** Which wheels are driven, where the car is asked for; the kind of car itself, where only one has these driven. */
    static Optional<Aside> car(String typed, Field asked, Debrief debrief) {
        if (asked != Field.CAR && asked != Field.DRIVE || Understanding.names(Topic.of(asked), typed, debrief) == 1) {
            return Optional.empty();
        }
        return DriveWords.of(typed).map(said -> {
            List<Car> kinds = debrief.kinds().stream()
                    .filter(car -> car.drive().equals(Optional.of(said.drive()))).toList();
            boolean kind = asked == Field.CAR && kinds.size() == 1;
            return new Aside(Topic.of(kind ? Field.CAR : Field.DRIVE), new Answer.OfCar(kind ? kinds.get(0)
                    : debrief.cars(Topic.of(Field.DRIVE)).get(said.drive().ordinal())), Set.of(), said.rest());
        });
    }

    /** Figures of tyres are all of a line, its end or its beginning. */
    private static Optional<Aside> tyres(String typed, Case run) {
        if (!TyreLine.figures(typed)) {
            return Optional.empty();
        }
        List<MatchResult> cuts = CUT.matcher(typed).results().toList();
        return tyres("", typed, run).or(() -> cuts.stream()
                .map(cut -> tyres(typed.substring(0, cut.start()).strip(), typed.substring(cut.end()), run))
                .flatMap(Optional::stream).findFirst()).or(() -> cuts.stream()
                .map(cut -> tyres(typed.substring(cut.end()).strip(), typed.substring(0, cut.start()), run))
                .flatMap(Optional::stream).reduce((one, longer) -> longer));
    }

    private static Optional<Aside> tyres(String rest, String line, Case run) {
        List<Wheel> unread = Stream.of(Wheel.values()).filter(wheel -> !run.tyres().containsKey(wheel)).toList();
        return TyreLine.unasked(line, unread, run.car())
                .map(read -> new Aside(Topic.of(Field.TYRES), new Answer.Read(read.tyres()), read.taken(), rest));
    }

    private static Optional<Aside> clause(String typed, Field field, Function<String, Optional<? extends Answer>> reading) {
        Optional<Answer> said = Optional.empty();
        List<String> rest = new ArrayList<>();
        for (String clause : CUT.split(typed.strip())) {
            Optional<? extends Answer> read = said.isPresent() ? Optional.empty() : reading.apply(clause);
            if (read.isPresent()) {
                said = Optional.of(read.get());
            } else if (!clause.isBlank()) {
                rest.add(clause);
            }
        }
        return said.map(answer -> new Aside(Topic.of(field), answer, Set.of(), String.join(", ", rest)));
    }
}
