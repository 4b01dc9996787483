package camberwell.vocabulary;

/** Whom a text is for. It changes the words and the amount, never what is concluded. */
public enum Audience implements Word {
    NEWCOMER("newcomer"),
    CLUB("club"),
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
