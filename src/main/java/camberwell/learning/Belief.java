package camberwell.learning;

/**
 * How far one believes that a change helps: the certainty that rules give it, moved by what came of it.
 *
 * <p>A certainty factor is a log-odds in another dress: with λ(c) = 1/(1-c) from 0 on and 1+c below, EMYCIN's
 * combination multiplies λ (D. Heckerman, "Probabilistic interpretations for MYCIN's certainty factors", UAI 1985).
 * With even odds before, the chance is p = λ/(1+λ). That chance is the mean of a Beta distribution that is worth
 * {@code priorRuns} outcomes; outcomes are added to it (the conjugate prior of the binomial). What the outcomes do to the
 * certainty is given back as evidence that combines with any other, so it needs no place in an order.
 *
 * @param prior certainty of the rules together, in [-1, 1]
 * @param helped how often it helped, weighted; at least 0
 * @param failed how often it did not, weighted; at least 0
 * @param priorRuns how many outcomes the rules are worth; positive
 */
public record Belief(double prior, double helped, double failed, double priorRuns) {

    /** Nothing that rules say is beyond learning. */
    private static final double SUREST = 0.999;

    /** Takes {@code prior} a little away from total certainty, which no outcome could move. */
    public Belief {
        if (!(Math.abs(prior) <= 1 && helped >= 0 && failed >= 0 && priorRuns > 0)) {
            throw new IllegalArgumentException("no belief: " + prior + ", " + helped + ", " + failed);
        }
        prior = Math.max(-SUREST, Math.min(SUREST, prior));
    }

    /** The chance of helping that a certainty stands for, in [0, 1]. */
    public static double chance(double certainty) {
        return certainty >= 0 ? 1 / (2 - certainty) : (1 + certainty) / (2 + certainty);
    }

    /** The certainty that stands for a chance of helping in (0, 1). */
    public static double certainty(double chance) {
        return chance >= 0.5 ? 2 - 1 / chance : (1 - 2 * chance) / (chance - 1);
    }

    /** The first parameter of the Beta distribution before the outcomes: how many of the prior's runs helped. */
    public double priorHelped() {
        return priorRuns * chance(prior);
    }

    /** The second parameter: how many of the prior's runs did not help. */
    public double priorFailed() {
        return priorRuns - priorHelped();
    }

    /** The chance that it helps the next time. */
    public double chance() {
        return (priorHelped() + helped) / (priorRuns + helped + failed);
    }

    /** The certainty with the outcomes. */
    public double certainty() {
        return certainty(chance());
    }

    /** What the outcomes alone say: combined with {@code prior} it gives {@link #certainty()}. 0 without outcomes. */
    public double evidence() {
        double ratio = (1 + helped / priorHelped()) / (1 + failed / priorFailed());
        return ratio >= 1 ? 1 - 1 / ratio : ratio - 1;
    }
}
