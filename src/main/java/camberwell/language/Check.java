package camberwell.language;

/** What is looked for in rules that can each be read. The numbers are kept; one that is given up is not given again. */
public enum Check {
    NEVER_FIRES(1, "A rule asks for what cannot be, so that it never fires."),
    SAYS_BOTH(2, "A rule says a thing and its opposite."),
    OPPOSITE(3, "Two rules say opposite things on the same evidence."),
    COVERED(4, "A rule says nothing that another does not say on the same evidence, or on less."),
    CIRCLE(5, "Findings lead to one another in a circle."),
    LEADS_NOWHERE(6, "A finding is found, and no rule asks for it."),
    NOBODY_FINDS(7, "A finding is asked for or spoken against, and no rule finds it."),
    NO_WAY_TO(8, "No rule leads to a note."),
    TWICE(9, "A rule asks the same twice."),
    LACKS(10, "A rule proposes to move what it asks the car not to have."),
    DEAD_CHAIN(11, "A rule asks for a finding that is only found where something else that it asks is not so."),
    NEVER_ACTS(12, "A rule concludes with so little certainty that, with all that can fire beside it, nothing ever follows."),
    COMPLEMENT(13, "A rule takes it for evidence against a finding that a measurement is not what speaks for it.");

    private final int number;
    private final String text;

    Check(int number, String text) {
        this.number = number;
        this.text = text;
    }

    /** Its number. */
    public int number() {
        return number;
    }

    /** What is wrong when it finds something, in a sentence. */
    public String text() {
        return text;
    }

    /** A message with the number behind it. */
    public String told(String message) {
        return message + " [check " + number + "]";
    }
}
