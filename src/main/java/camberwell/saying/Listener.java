package camberwell.saying;

import camberwell.vocabulary.Word;
import java.util.List;
import java.util.Optional;

/** Understands what drivers say: by a grammar, and by ear. Safe for use by several threads. */
public final class Listener {

    /** Of two complaints, with a slip of the pen, in short, with what is not so, and asked. */
    private static final String[] REHEARSED = {"it pushes on the way in and snaps on the way out",
            "understeeer mid corner in fast corners",
        "the rear is fine on the brakes but it steps out when I lift, not in the slow ones", "how do I stop the front locking?",
        "we had a wobrle at first, then it was wet and every lap the fronts grained badly in left handers"};

    private final Sayings sayings;
    private final Optional<Ear> ear;

    /** One that knows these phrases, with the ear that camberwell has. */
    public Listener(Sayings sayings) {
        this(sayings, EarImage.load());
    }

    /** One that knows these phrases, with that ear or with the grammar alone. */
    Listener(Sayings sayings, Optional<Ear> ear) {
        this.sayings = sayings;
        this.ear = ear;
    }

    /** Hears a few sayings that nobody said, so that the first that somebody says is not the first of all. */
    public void rehearse() {
        for (String said : REHEARSED) {
            hear(said);
        }
    }

    /** What is understood of what was said, and what is not; of an empty text, nothing. */
    public Heard hear(String said) {
        return Faults.of(sayings, said).map(faults -> faults.with(this::hearBalance)).orElseGet(() -> hearBalance(said));
    }

    /**
     * The words of where, when and how bad that are all of what was said, for whoever asked that: "mid-corner, a tight left" may
     * sound like a complaint, and is none to somebody who was asked where. None where it tells anything else, or has a word that
     * the grammar does not know.
     */
    public List<Word> narrowing(String said) {
        Heard read = said.isBlank() ? Heard.of() : Hearing.of(sayings, said);
        return read.told().isEmpty() && read.surface().isEmpty() && read.exact() && !read.fine()
                ? Fuller.of(sayings, said, read, read).loose() : List.of();
    }

    private Heard hearBalance(String said) {
        Heard read = Hearing.of(sayings, said);
        return said.isBlank() ? read : Fuller.of(sayings, said, read,
                ear.isEmpty() ? read : Agreement.of(sayings, ear.get(), said, read));
    }
}
