package camberwell.vocabulary;

/** How much a driver has driven: what a coach decides by whether the car or the driving comes first. */
public enum Level implements Word {
    NEWCOMER("newcomer", "in the first days on a circuit"),
    CLUB("club", "laps that are alike, without help"),
    EXPERIENCED("experienced", "races, and can drive round a fault");

    private final String id;
    private final String felt;

    Level(String id, String felt) {
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
