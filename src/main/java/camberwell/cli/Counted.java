package camberwell.cli;

/** A number of things in words. */
final class Counted {

    private Counted() {
    }

    /** {@code 1 rule}, {@code 2 rules}. */
    static String of(int number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }
}
