package camberwell.saying;

/** Understands what drivers say. Safe for use by several threads. */
public final class Listener {

    private final Sayings sayings;

    /** One that knows these phrases. */
    public Listener(Sayings sayings) {
        this.sayings = sayings;
    }

    /** What is understood of what was said, and what is not; of an empty text, nothing. */
    public Heard hear(String said) {
        return Hearing.of(sayings, said);
    }
}
