package camberwell.fact;

/** A fact that a rule can rest on. */
public sealed interface Premise permits Reported, Reading, Setup, Day, Finding {

    /** How sure it is, in [-1, 1]; facts of the car and the day are sure. */
    double certainty();

    /** The fact in words, for an explanation. */
    String statement();
}
