package camberwell.vocabulary;

/** How bad a complaint is. */
public enum Severity implements Word {
    SLIGHT("slight", "you notice it, and can live with it"),
    CLEAR("clear", "it costs time or confidence"),
    STRONG("strong", "it decides how you have to drive");

    private final String id;
    private final String felt;

    Severity(String id, String felt) {
        this.id = id;
        this.felt = felt;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String felt() {
        return felt;
    }
}
