package camberwell.vocabulary;

/** What the tread is made of, or for, among the tyres that this car may run. */
public enum Compound implements Word {
    SOFT("soft"), MEDIUM("medium"), HARD("hard"), INTERMEDIATE("intermediate"), WET("wet");

    private final String id;

    Compound(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
