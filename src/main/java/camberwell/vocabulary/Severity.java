package camberwell.vocabulary;

/** How bad a complaint is. */
public enum Severity implements Word {
    SLIGHT("slight"),
    CLEAR("clear"),
    STRONG("strong");

    private final String id;

    Severity(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
