package camberwell.vocabulary;

/** What is told of a lap that was no ordinary one; such a lap does not count for its time. */
public enum LapFlag implements Word {
    OUT("out"),
    IN("in"),
    PIT("pit"),
    /** A yellow flag, or any other signal to slow down. */
    FLAG("flag"),
    TRAFFIC("traffic"),
    MISTAKE("mistake"),
    /** A corner was cut, so the lap is quicker than it should be. */
    CUT("cut");

    private final String id;

    LapFlag(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
