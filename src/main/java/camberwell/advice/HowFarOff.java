package camberwell.advice;

import camberwell.model.CarModel;
import camberwell.physics.CornerSpeed;
import camberwell.run.Report;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Symptom;
import java.util.List;
import java.util.Map;

/**
 * How far off a car is at one place, by all that was told of it. A grade leaves open how much it is, and so does silence; but
 * each run with other settings told of the same car, and the driven model says how much it differs there. What they leave open
 * together is less than what one does: Bayes' rule on a grid. In words, of which one is just worth saying; that two of them are
 * called clear and four strong, and how far a driver and a model may be out, is common practice, no source.
 */
final class HowFarOff {

    /** A car that is lost is worse than any that is not. */
    static final double LOST = 12;

    private static final double MOST = 16;
    private static final double STEP = 0.25;
    private static final int CELLS = (int) (2 * MOST / STEP) + 1;
    /** The greater, the rarer: by 1/e for so much more as is told on the average. */
    private static final double FADES = 1;
    /** A driver errs in one report of twenty, and grades no finer than this. */
    private static final double ERRS = 0.05;
    private static final double BLUR = 0.3;
    /** Part by which the model may be out in what a change does. */
    private static final double MODEL = 0.25;
    /** So many things a driver tells of a run; what he leaves out then is no more than the least of them. */
    private static final int TELLS = 4;
    /** Three quarters of what is just worth saying is nothing to complain of. */
    private static final double UNNOTICED = 0.75;
    private static final Map<Severity, Double> FROM = Map.of(Severity.SLIGHT, 1.0, Severity.CLEAR, 2.0, Severity.STRONG, 4.0);
    private static final Map<Severity, Double> TO = Map.of(Severity.SLIGHT, 2.0, Severity.CLEAR, 4.0, Severity.STRONG, MOST);

    private final Place place;
    private final double[] chance = new double[CELLS];

    /**
     * Where something can be complained of.
     *
     * @param of the symptom; understeer stands for the balance, and oversteer is less than none of it
     */
    record Place(Symptom of, Phase phase, CornerSpeed speed) {

        boolean balance() {
            return of == Symptom.UNDERSTEER;
        }

        /** Whether a report tells of this place; one without a speed tells of all. */
        boolean in(Report report) {
            return report.phase().filter(told -> told == phase).isPresent()
                    && report.speed().map(told -> CornerSpeed.valueOf(told.name()) == speed).orElse(true)
                    && (report.symptom() == of || loose(report));
        }

        private boolean loose(Report report) {
            return balance() && report.symptom().loose();
        }
    }

    /**
     * A run of the car.
     *
     * @param car as it was set
     * @param told of it
     */
    record Run(CarModel car, List<Report> told) {
    }

    /**
     * Before anything was told of the place.
     *
     * @param usual what is told of the car on the average, words: where all is strong, it is far off
     */
    HowFarOff(Place place, double usual) {
        this.place = place;
        for (int i = 0; i < CELLS; i++) {
            chance[i] = Math.exp(-Math.abs(at(i)) / (FADES * usual));
        }
    }

    private static double at(int cell) {
        return STEP * cell - MOST;
    }

    /**
     * Takes in what was told of a run.
     *
     * @param shift by how many words more it is now than it was then, by the model
     */
    void heard(List<Report> told, double shift) {
        double low = place.balance() ? -quiet(told) : Double.NEGATIVE_INFINITY;
        double high = quiet(told);
        for (Report report : told) {
            if (place.in(report)) {
                // Told of all speeds it is so strong in one of them.
                double from = report.speed().isPresent() || !place.balance() ? FROM.get(report.severity()) : 1;
                double to = TO.get(report.severity());
                low = place.loose(report) ? -to : from;
                high = place.loose(report) ? -from : to;
                break;
            }
        }
        double blur = BLUR + MODEL * Math.abs(shift);
        double sum = 0;
        for (int i = 0; i < CELLS; i++) {
            double then = at(i) - shift;
            chance[i] *= ERRS + (1 - ERRS) * below((low - then) / blur) * below((then - high) / blur);
            sum += chance[i];
        }
        for (int i = 0; i < CELLS; i++) {
            chance[i] /= sum;
        }
    }

    private static double quiet(List<Report> told) {
        double least = MOST;
        for (Report report : told) {
            least = Math.min(least, TO.get(report.severity()));
        }
        return told.size() < TELLS ? 1 : least;
    }

    /** From one to nothing as a bound is crossed: a logistic curve as steep as the normal distribution's. */
    private static double below(double beyond) {
        return 1 / (1 + Math.exp(1.7 * beyond));
    }

    /** What is expected to be complained of once a change has moved it by so many words, or by a quarter more or less. */
    double after(double shift) {
        return shift == 0 ? expected(0)
                : (expected((1 - MODEL) * shift) + expected(shift) + expected((1 + MODEL) * shift)) / 3;
    }

    private double expected(double shift) {
        double sum = 0;
        for (int i = 0; i < CELLS; i++) {
            double off = at(i) + shift;
            sum += chance[i] * Math.max(0, Math.min(LOST, (place.balance() ? Math.abs(off) : off) - UNNOTICED));
        }
        return sum;
    }
}
