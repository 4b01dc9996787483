package camberwell.physics.motion;

/** What is done to the car at an instant. Mutable: one is made and filled over and over. */
public final class Controls {

    /** Mean steer angle of the front wheels, rad, to the left. */
    public double steer;
    /** Torque of the engine at all driven wheels together, N m, negative on the overrun. */
    public double drive;
    /** Torque of the brakes at all wheels together, N m, not negative. */
    public double brake;
    /** Height of the road under each wheel, m: front left, front right, rear left, rear right. */
    public final double[] road = new double[4];
}
