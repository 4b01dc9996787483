package camberwell.saying;

/**
 * One word of a sentence, or one comma.
 *
 * @param typed as it stood there
 * @param stem as it is compared; {@code ,} for a comma, {@code #} for a number
 */
record Token(String typed, String stem) {

    /** The stem of a question mark; it stands last. */
    static final String ASKED = "?";

    boolean asked() {
        return stem.equals(ASKED);
    }

    boolean comma() {
        return stem.equals(",");
    }
}
