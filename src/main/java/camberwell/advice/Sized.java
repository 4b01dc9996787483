package camberwell.advice;

/** Whether a change can be made, and how far it goes. */
sealed interface Sized {

    /** It can. */
    record Possible(Size size) implements Sized {
    }

    /**
     * It cannot.
     *
     * @param reason for the driver
     */
    record Impossible(String reason) implements Sized {
    }
}
