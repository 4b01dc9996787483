package camberwell.saying;

/** Understands what drivers say. Safe for use by several threads. */
public final class Listener {

    /** Of two complaints, with a slip of the pen, in short, with what is not so, and asked. */
    private static final String[] REHEARSED = {"it pushes on the way in and snaps on the way out", "understeeer mid corner in fast corners",
        "the rear is fine on the brakes but it steps out when I lift, not in the slow ones", "how do I stop the front locking?",
        "we had a wobrle at first, then it was wet and every lap the fronts grained badly in left handers"};

    private final Sayings sayings;

    /** One that knows these phrases. */
    public Listener(Sayings sayings) {
        this.sayings = sayings;
    }

    /** Hears a few sayings that nobody said, so that the first that somebody says is not the first of all. */
    public void rehearse() {
        for (String said : REHEARSED) {
            hear(said);
        }
    }

    /** What is understood of what was said, and what is not; of an empty text, nothing. */
    public Heard hear(String said) {
        return Hearing.of(sayings, said);
    }
}
