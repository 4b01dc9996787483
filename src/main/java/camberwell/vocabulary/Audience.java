package camberwell.vocabulary;

/** Whom the advice is for. */
public enum Audience implements Word {
    /** New to the trade: every word is explained, and one thing at a time is enough. */
    NEWCOMER("newcomer"),
    /** Knows the words and drives a car of their own. */
    CLUB("club"),
    /** Wants the figures. */
    ENGINEER("engineer");

    private final String id;

    Audience(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
