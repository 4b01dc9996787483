package camberwell.saying;

/**
 * One word of a sentence, or one comma.
 *
 * @param typed as it stood there
 * @param stem as it is compared; {@code ,} for a comma, {@code #} for a number
 */
record Token(String typed, String stem) {

    boolean comma() {
        return stem.equals(",");
    }
}
