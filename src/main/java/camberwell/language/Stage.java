package camberwell.language;

import camberwell.vocabulary.Word;

/**
 * The stages of heuristic classification (W. J. Clancey, "Heuristic classification", Artificial Intelligence 27, 1985):
 * data are abstracted, matched to causes, and causes refined into actions. Each has its folder of rule files.
 */
public enum Stage implements Word {
    READINGS("readings", "1-readings"), CAUSES("causes", "2-causes"), CHANGES("changes", "3-changes"),
    CAUTIONS("cautions", "4-cautions"), DRIVING("driving", "5-driving");

    private final String id;
    private final String folder;

    Stage(String id, String folder) {
        this.id = id;
        this.folder = folder;
    }

    @Override
    public String id() {
        return id;
    }

    /**
     * The stage whose rule files lie in {@code folder}.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static Stage ofFolder(String folder) {
        for (Stage stage : values()) {
            if (stage.folder.equals(folder)) {
                return stage;
            }
        }
        throw new IllegalArgumentException("no stage has the folder " + folder);
    }

    /**
     * Whether a rule of this stage may conclude so. Findings are drawn in any stage but those that act; what acts has
     * its own stage.
     */
    public boolean allows(Statement.Verb verb) {
        Stage home = homeOf(verb);
        return home == this || home == READINGS && this != CHANGES && this != CAUTIONS;
    }

    /** The stage that a conclusion belongs into first of all. */
    static Stage homeOf(Statement.Verb verb) {
        return switch (verb) {
            case FIND, DIAGNOSE, SPEAK_AGAINST -> READINGS;
            case PROPOSE, PROPOSE_BY, PROPOSE_TO, PROPOSE_BY_FIGURE, FIRST, OPPOSE, WITHHOLD, WITHHOLD_BALANCE, WITHHOLD_LOADING,
                    WITHHOLD_GROUP -> CHANGES;
            case CAUTION -> CAUTIONS;
            case ADVISE -> DRIVING;
        };
    }

    /** The folders that a conclusion belongs into; what is found in a reading or in a cause may say any of the other stages. */
    static String homesOf(Statement.Verb verb) {
        Stage home = homeOf(verb);
        return home == READINGS ? READINGS.folder + " or " + CAUSES.folder : home.folder;
    }

    /** The folder of its rule files. */
    public String folder() {
        return folder;
    }
}
