package camberwell.advice;

import camberwell.model.Bench;
import camberwell.model.CarModel;
import camberwell.model.Prediction;
import camberwell.vocabulary.Adjuster;
import java.util.Optional;

/** The handling model's predictions for the changes of one advice, each made when it is asked for. One thread. */
public final class Predictions {

    private final Optional<Bench> bench;

    /** @param advice whose car is asked; no figure where its file gives too little of it */
    public Predictions(Advice advice) {
        bench = CarModel.of(advice.run().car(), advice.run().conditions().surface()).map(Bench::new);
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
        return bench.get().car().with(adjuster, change.size().to().get())
                .flatMap(changed -> predicted(change, changed, bench.get()));
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
