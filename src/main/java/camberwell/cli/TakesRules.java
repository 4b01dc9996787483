package camberwell.cli;

/** A command that reasons, and so can be given more rules. */
interface TakesRules {

    /** Which it was given. */
    RulesOption rules();
}
