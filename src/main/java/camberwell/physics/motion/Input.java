package camberwell.physics.motion;

/** What is done to the car over time. */
public interface Input {

    /**
     * Looks at the car at the beginning of a step; a driver does, a test rig does not.
     *
     * @param time s
     * @param motion the car as it moves
     */
    default void sense(double time, Motion motion) {
    }

    /**
     * Fills in what is done at a time within the step that was last begun.
     *
     * @param time s
     * @param controls to be filled
     */
    void at(double time, Controls controls);
}
