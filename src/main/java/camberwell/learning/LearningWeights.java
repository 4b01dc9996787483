package camberwell.learning;

/**
 * How heavily outcomes weigh, from {@code rules/weights.yaml}, where each is explained.
 *
 * @param priorRuns how many outcomes the rules' word is worth
 * @param driverAlone weight of an outcome that rests on the driver's impression alone
 * @param elsewhere weight of one from another track, other tyres, another driver or another surface
 * @param opposite what a change that made things worse says for the way back
 * @param halfLife runs after which an outcome weighs half
 * @param worse the chance that a change judged worse did make it worse
 */
public record LearningWeights(double priorRuns, double driverAlone, double elsewhere, double opposite, double halfLife,
        double worse) {
}
