package camberwell.physics;

/** One end of the car. */
public enum AxleEnd { FRONT, REAR }
