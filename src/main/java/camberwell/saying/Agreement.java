package camberwell.saying;

import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What the grammar reads and what a saying sounds like, put together. Where both agree it is taken; where the grammar is silent
 * and the sound is sure, that is taken; where they contradict each other, or neither is sure, it is asked back. The limits were
 * chosen on sayings of authors whom the ear had not heard, for few misreadings first.
 */
final class Agreement {

    private static final Set<Meaning.Sign> DENYING = Set.of(Meaning.Sign.NOT, Meaning.Sign.GONE, Meaning.Sign.UNREAL,
            Meaning.Sign.BETTER, Meaning.Sign.OTHERS);

    /** How sure the sound has to be where the grammar reads the same, but not every word. */
    private static final double AGREED = 0.6;
    /** The same where the grammar has a reading of every word, and so knows whether they are one or several. */
    private static final double AGREED_ON_ALL = 0.65;
    /** How sure it has to be where the grammar is silent. */
    private static final double ALONE = 0.75;
    /** The same where a word is in it that the ear has never met either. */
    private static final double STRANGE = 0.8;
    /** How sure it has to be where the grammar reads something else. */
    private static final double AGAINST = 0.87;
    /** How sure it has to be that all is well. */
    private static final double WELL = 0.9;
    /** How sure it has to be where the grammar has a reason to think otherwise. */
    private static final double CERTAIN = 0.9;
    /** From where on it is worth asking back. */
    private static final double ASKED = 0.3;
    /** How likely what the grammar reads has to be, to be worth asking back about where it sounds like something else. */
    private static final double RIVAL = 0.13;
    /** How sure several have to be together, to be taken though no cut leaves a part for each. */
    private static final double TOGETHER = 0.85;
    /** How sure it has to be that it is no complaint, so that what the grammar reads is not taken. */
    private static final double NO_COMPLAINT = 0.4;
    /** How likely a surface has to be that the grammar reads. */
    private static final double DAY = 0.4;

    private final Sayings sayings;
    private final Ear ear;
    private final String said;
    private final Heard heard;
    private final Impression impression;
    private final Set<String> sounds;

    private Agreement(Sayings sayings, Ear ear, String said, Heard heard) {
        this.sayings = sayings;
        this.ear = ear;
        this.said = said;
        this.heard = heard;
        this.impression = ear.impression(sayings, said, heard);
        this.sounds = impression.likeliest();
    }

    /** What is taken of a saying of which the grammar makes {@code heard}. */
    static Heard of(Sayings sayings, Ear ear, String said, Heard heard) {
        return new Agreement(sayings, ear, said, heard).taken();
    }

    private Heard taken() {
        Set<String> read = read();
        if (read.stream().anyMatch(symptom -> !impression.knows(symptom))) {
            // A pack brought that word, and no lesson has it.
            return heard;
        }
        if (strangeBefore() || inPhrases()) {
            // "Memorised oversteer": no ear knows either what that word makes of it. "Push on entry": the trade's own words.
            return heard;
        }
        if (read.size() == 1 && heard.told().size() > 1 && sounds.containsAll(read) && !sounds.equals(read)) {
            // "It pushes on entry and exit" sounds like several, which are one symptom twice.
            return with(Details.of(impression, heard, phrased()));
        }
        double sure = impression.sure(sounds);
        if (read.isEmpty() && exact() && heard.anything() && sure < CERTAIN) {
            // "Exit", "in the wet": where and when, of no complaint.
            return heard;
        }
        Optional<Heard> beside = besideAnother(read, sure);
        if (beside.isPresent()) {
            return beside.get();
        }
        if (sounds.contains(Lesson.DAY)) {
            return heard.surface().isPresent() || read.isEmpty() ? heard : asked();
        }
        if (sounds.contains(Lesson.REFUSED)) {
            return noComplaint(read, sure);
        }
        if (sounds.contains(Lesson.NOTHING)) {
            return allIsWell(read, sure);
        }
        if (sounds.equals(read)) {
            return agreed(read, sure) ? with(Details.of(impression, heard, phrased())) : asked();
        }
        if (sounds.size() > 1) {
            return several(read);
        }
        Symptom symptom = Word.of(Symptom.class, sounds.iterator().next());
        boolean doubtedToo = heard.doubtful().stream().flatMap(doubt -> doubt.mayBe().stream())
                .anyMatch(told -> told.symptom() == symptom);
        if (read.isEmpty() && doubtedToo && sure < (eitherEnd() ? CERTAIN : AGAINST)) {
            // The grammar would ask about that too, for a reason of its own.
            return heard;
        }
        if (sure >= (!read.isEmpty() || !heard.doubtful().isEmpty() ? AGAINST : strange() ? STRANGE : ALONE)
                && (sure >= CERTAIN || !withdrawn(read))) {
            return with(Details.of(impression, symptom, heard, named()));
        }
        List<Told> mayBe = new ArrayList<>();
        if (sure >= ASKED) {
            mayBe.addAll(Details.of(impression, symptom, heard, named()).told());
        }
        heard.told().stream().filter(this::rival).forEach(mayBe::add);
        return mayBe.isEmpty() && read.isEmpty() ? doubted() : asked(mayBe.stream().distinct().toList());
    }

    /** The grammar's one complaint where it is not sure of the whole, but of the part that tells it. */
    private Optional<Heard> besideAnother(Set<String> read, double sure) {
        return heard.told().size() != 1 || agreed(read, sure) ? Optional.empty()
                : Parts.beside(sayings, ear, said, read.iterator().next()).map(part -> with(Details.of(part, heard, phrased())));
    }

    /** Whether it sounds like what the grammar reads, and sure enough. */
    private boolean agreed(Set<String> read, double sure) {
        return sounds.equals(read) && (exact() ? impression.likelyAny(sounds) >= AGREED_ON_ALL : sure >= AGREED);
    }

    /** Whether a word that neither knows is in it. */
    private boolean strange() {
        return heard.notUnderstood().stream().anyMatch(words -> !ear.knows(words));
    }

    /** The symptoms that the grammar reads; {@link Lesson#NOTHING} where it reads that all is well. */
    private Set<String> read() {
        Set<String> read = new TreeSet<>();
        heard.told().forEach(told -> read.add(told.symptom().id()));
        if (heard.fine()) {
            read.add(Lesson.NOTHING);
        }
        return read;
    }

    /** Whether the grammar has a reading of every word. */
    private boolean exact() {
        return heard.unclear().isEmpty() && heard.notUnderstood().isEmpty();
    }

    /** What the phrases of the file cover of it. */
    private List<Atom> atoms() {
        List<Atom> atoms = new ArrayList<>();
        sayings.sentences(said).forEach(sentence -> atoms.addAll(Cover.of(sayings, sentence)));
        return atoms;
    }

    /** Every word that narrows a complaint and is named, whatever it is said of. */
    private List<Word> named() {
        List<Word> named = new ArrayList<>();
        atoms().forEach(atom -> atom.as(Meaning.Circumstance.class).ifPresent(it -> named.addAll(it.words())));
        return named;
    }

    /** Every word that is meant by a phrase which tells a complaint whole; a pack's says what no ear can know. */
    private List<Word> phrased() {
        List<Word> phrased = new ArrayList<>();
        atoms().forEach(atom -> atom.as(Meaning.Complaint.class).ifPresent(it -> phrased.addAll(it.words())));
        return phrased;
    }

    /** Whether a word that neither knows begins what the grammar would ask back about. */
    private boolean strangeBefore() {
        return heard.doubtful().stream().anyMatch(doubt -> heard.notUnderstood().stream()
                .anyMatch(words -> doubt.words().startsWith(words) && !ear.knows(words)));
    }

    /** Whether the grammar reads that it is one of several. */
    private boolean eitherEnd() {
        return heard.doubtful().stream().anyMatch(doubt -> doubt.mayBe().size() > 1);
    }

    /** Whether the grammar finds a complaint and reads that it is not, or no more: "understeer goes away once they are warm". */
    private boolean withdrawn(Set<String> read) {
        boolean complaint = false;
        boolean denied = false;
        for (Atom atom : atoms()) {
            complaint |= atom.as(Meaning.Complaint.class).isPresent();
            denied |= DENYING.stream().anyMatch(atom::is);
        }
        return read.isEmpty() && heard.doubtful().isEmpty() && complaint && denied;
    }

    /** Whether it is said in whole phrases of the file, with nothing between them but where and when. */
    private boolean inPhrases() {
        boolean complaint = false;
        for (List<Token> sentence : sayings.sentences(said)) {
            int at = 0;
            for (Atom atom : Cover.of(sayings, sentence)) {
                complaint |= atom.as(Meaning.Complaint.class).isPresent();
                if (!skipped(sentence.subList(at, atom.from())) || atom.as(Meaning.Complaint.class).isEmpty()
                        && atom.as(Meaning.Circumstance.class).isEmpty() && !atom.is(Meaning.Sign.AND)) {
                    return false;
                }
                at = atom.to();
            }
            if (!skipped(sentence.subList(at, sentence.size()))) {
                return false;
            }
        }
        return complaint && !heard.told().isEmpty();
    }

    private boolean skipped(List<Token> tokens) {
        return tokens.stream().allMatch(token -> token.comma() || sayings.skipped(token.stem()));
    }

    private Heard noComplaint(Set<String> read, double sure) {
        if (read.isEmpty()) {
            return heard.doubtful().isEmpty() || sure < CERTAIN ? doubted()
                    : with(new Details.Outcome(List.of(), List.of(), List.of(said.strip())));
        }
        return exact() && sure < NO_COMPLAINT ? heard : asked();
    }

    private Heard allIsWell(Set<String> read, double sure) {
        if (heard.fine() || sure < WELL) {
            return heard.told().isEmpty() || exact() && sure < NO_COMPLAINT ? heard : asked();
        }
        return new Heard(said, List.of(), surface(), true, List.of(), List.of(), List.of());
    }

    /** Several complaints: those that two parts of the saying sound like, if they are sure. */
    private Heard several(Set<String> read) {
        List<Told> parts = Parts.of(sayings, ear, said, sounds);
        if (!parts.isEmpty()) {
            return with(new Details.Outcome(parts, List.of(), List.of()));
        }
        if (impression.sure(sounds) >= TOGETHER) {
            return with(Details.of(impression, sounds, named()));
        }
        return read.isEmpty() ? doubted() : asked();
    }

    /** Asks back about what the grammar reads, as far as it is worth it. */
    private Heard asked() {
        return asked(heard.told().stream().filter(this::rival).toList());
    }

    /** The grammar's doubts, without what nobody would think of: "rear feels heavy" is no heavy steering. */
    private Heard doubted() {
        List<Heard.Unclear> doubts = heard.unclear().stream()
                .map(doubt -> doubt.mayBe().size() == 1 && !rival(doubt.mayBe().get(0))
                        ? new Heard.Unclear(doubt.words(), List.of()) : doubt).toList();
        return new Heard(said, heard.told(), heard.surface(), heard.fine(), heard.loose(), doubts, heard.notUnderstood());
    }

    private boolean rival(Told told) {
        return impression.likely(told.symptom().id()) >= RIVAL;
    }

    private Heard asked(List<Told> mayBe) {
        // What is asked with more is not asked with less besides.
        List<Told> each = mayBe.stream().filter(one -> mayBe.stream().noneMatch(one::within)).toList();
        return new Heard(said, List.of(), surface(), false, heard.loose(), List.of(new Heard.Unclear(said.strip(), each)),
                List.of());
    }

    private Heard with(Details.Outcome outcome) {
        return new Heard(said, outcome.told(), surface(), false, List.of(), outcome.doubts(), outcome.notUnderstood());
    }

    private Optional<Surface> surface() {
        return heard.surface().filter(surface -> impression.likely(surface) >= DAY);
    }
}
