package camberwell.physics;

/** What the handling model finds at an operating point: an equilibrium, or the reason why there is none. */
public sealed interface Solution permits Equilibrium, NoEquilibrium {

    /** The operating point asked for. */
    OperatingPoint point();
}
