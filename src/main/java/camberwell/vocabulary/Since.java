package camberwell.vocabulary;

/** In which part of the run a complaint is felt. */
public enum Since implements Word {
    FIRST_LAPS("first-laps"),
    WHOLE_RUN("whole-run"),
    LATE_RUN("late-run");

    private final String id;

    Since(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
