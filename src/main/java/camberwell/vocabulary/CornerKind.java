package camberwell.vocabulary;

/** What kind of corner it is, where that says more than its speed does. */
public enum CornerKind implements Word {
    HAIRPIN("hairpin", "a corner that turns right back, in the lowest gear"),
    CHICANE("chicane", "a corner one way with one the other way right behind it"),
    SWEEPER("sweeper", "a long corner of one radius"),
    CREST("crest", "the road falls away, and the car goes light"),
    DIP("dip", "the road rises again, and the car goes heavy"),
    BANKING("banking", "the road leans into the corner");

    private final String id;
    private final String felt;

    CornerKind(String id, String felt) {
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
