package camberwell.vocabulary;

/** In which part of the run a complaint is felt. */
public enum Since implements Word {
    FIRST_LAPS("first-laps", "at the start, and better later"),
    WHOLE_RUN("whole-run", "from the first lap to the last"),
    LATE_RUN("late-run", "only after some laps");

    private final String id;
    private final String felt;

    Since(String id, String felt) {
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
