package camberwell.physics;

/**
 * The most that a car can corner at a speed and longitudinal acceleration, and what ends it.
 *
 * @param lateral largest lateral acceleration with an equilibrium, m/s²; 0 where there is none
 * @param reason what runs out just above it
 */
public record CorneringLimit(double lateral, NoEquilibrium.Reason reason) {
}
