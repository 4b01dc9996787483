package camberwell.advice;

import camberwell.car.Car;
import camberwell.model.Bench;
import camberwell.model.CarModel;
import camberwell.model.Prediction;
import camberwell.model.ProvingGround;
import camberwell.run.Case;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Surface;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The handling model's predictions for changes of one car, each made when it is first asked for and then remembered:
 * one car comes in with many cases. For one thread. They are a memory and no part of an advice, so any two are equal.
 */
public final class Predictions {

    /** More answers than this are forgotten, all at once. */
    private static final int MOST = 500;

    private final Optional<Bench> bench;
    private final Map<Asked, Optional<Predicted>> answers = new HashMap<>();
    private final Map<Moved, Optional<CarModel>> moved = new HashMap<>();
    private ProvingGround track;

    private record Asked(Change change, Quantity to, List<Score.Help> helps) {
        @Override
        public int hashCode() {
            return 31 * change.hashCode() + to.hashCode();
        }
    }

    private record Moved(Adjuster adjuster, Quantity to) {
    }

    /** Of {@code car} on that surface; no figure where the car's file gives too little of it. */
    public Predictions(Car car, Surface surface) {
        bench = CarModel.of(car, surface).map(Bench::new);
    }

    /** The car as the handling model sees it. */
    Optional<Bench> bench() {
        return bench;
    }

    /** What will be left of the complaints of a run by the car in motion. */
    Optional<Forecast> forecast(Case run, List<Complaint> complaints) {
        if (bench.isEmpty()) {
            return Optional.empty();
        }
        if (track == null || moved.size() >= MOST) {
            moved.clear();
            track = new ProvingGround(bench.get().car());
        }
        return Optional.of(new Forecast(track, this::moved, complaints, EarlierRuns.of(run, track.car())));
    }

    private Optional<CarModel> moved(Change change, Quantity to) {
        return moved.computeIfAbsent(new Moved(change.adjuster(), to),
                fresh -> track.car().withInMotion(change.adjuster(), to));
    }

    /**
     * The prediction for a change as it was sized.
     *
     * @param change a change of the advice
     * @return empty where the model cannot represent it, or the car's file gives too little
     */
    public Optional<Predicted> of(RankedChange change) {
        Adjuster adjuster = change.change().adjuster();
        if (bench.isEmpty() || change.note().model().isPresent() || change.size().to().isEmpty()) {
            return Optional.empty();
        }
        Quantity to = change.size().to().get();
        Asked asked = new Asked(change.change(), to, change.score().helps());
        Optional<Predicted> known = answers.get(asked);
        if (known == null) {
            known = bench.get().car().with(adjuster, to).flatMap(changed -> predicted(change, changed, bench.get()));
            if (answers.size() >= MOST) {
                answers.clear();
            }
            answers.put(asked, known);
        }
        return known;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Predictions;
    }

    @Override
    public int hashCode() {
        return 0;
    }

    private static Optional<Predicted> predicted(RankedChange change, CarModel changed, Bench bench) {
        Adjuster adjuster = change.change().adjuster();
        for (Score.Help help : change.score().helps()) {
            Complaint complaint = help.complaint();
            Situation situation = Situation.of(adjuster, Optional.of(complaint));
            double speed = situation.speed().metresPerSecond();
            Optional<Prediction> prediction = bench.predict(adjuster, changed, situation.phase(), speed);
            Optional<Bench.Relief> relief = prediction.flatMap(it -> bench.relief(adjuster, changed,
                    complaint.symptom(), complaint.where(), situation.phase(), speed));
            if (relief.isPresent()) {
                return Optional.of(new Predicted(prediction.get(), Optional.of(complaint), relief));
            }
        }
        Situation situation = Situation.of(adjuster, change.score().helps().stream().map(Score.Help::complaint)
                .findFirst());
        return bench.predict(adjuster, changed, situation.phase(), situation.speed().metresPerSecond())
                .map(prediction -> new Predicted(prediction, Optional.empty(), Optional.empty()));
    }
}
