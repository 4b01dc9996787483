package camberwell.saying;

import camberwell.vocabulary.Place;
import camberwell.vocabulary.Surface;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * What the grammar reads and what a saying sounds like, put together. Of the readings that a saying may have
 * the likeliest is taken, if it is likely enough right, and asked back about otherwise; what is said in phrases alone, or read of
 * every word while it sounds the same, is the grammar's. The limits were chosen on sayings of authors whom the ear had not heard,
 * for few misreadings first.
 */
final class Agreement {

    private static final Set<Meaning.Sign> DENYING = Set.of(Meaning.Sign.NOT, Meaning.Sign.GONE, Meaning.Sign.UNREAL,
            Meaning.Sign.BETTER, Meaning.Sign.OTHERS);
    /** How sure the sound has to be that the grammar's reading of every word is right. */
    private static final double AGREED = 0.65;
    /** How sure it has to be where what the grammar finds is denied. */
    private static final double WITHDRAWN = 0.9;
    /** How likely right a reading has to be, to be taken. */
    private static final double TAKEN = 0.74;
    /** The same where all is well and the grammar does not read that. */
    private static final double WELL = 0.94;
    /** The same where the grammar reads where and when, and no complaint. */
    private static final double CERTAIN = 0.9;
    /** The same where the grammar reads that it is one of several, of which that is one. */
    private static final double EITHER = 0.955;
    /** The same, to be asked about before that. */
    private static final double ASKED_FIRST = 0.5;
    /** How likely right it has to be, to be worth asking back about. */
    private static final double ASKED = 0.1;
    /** How likely what the grammar would ask about has to be, to be worth it. */
    private static final double RIVAL = 0.13;
    /** A word is known by runs of three and four letters, of which a shorter one has too few. */
    private static final int LETTERS = 4;
    /** How many are asked about. */
    private static final int MOST = 2;

    private final Sayings sayings;
    private final Ear ear;
    private final String said;
    private final Heard heard;
    private final Impression impression;
    private final List<Atom> atoms;
    private final Parts parts;

    private Agreement(Sayings sayings, Ear ear, String said, Heard heard) {
        this.sayings = sayings;
        this.ear = ear;
        this.said = said;
        this.heard = heard;
        this.impression = ear.impression(sayings, said, heard);
        this.atoms = Cover.ofAll(sayings, said);
        this.parts = new Parts(sayings, ear, said);
    }

    /** What is taken of a saying of which the grammar makes {@code heard}. */
    static Heard of(Sayings sayings, Ear ear, String said, Heard heard) {
        Agreement agreement = new Agreement(sayings, ear, said, heard);
        return Quoted.of(sayings, heard, LeftOut.asked(sayings, ear, agreement.impression, agreement.parts, agreement.taken()));
    }

    private Heard taken() {
        Set<String> read = read();
        if (read.stream().anyMatch(symptom -> !impression.knows(symptom))) {
            // A pack brought that word, and no lesson has it.
            return heard;
        }
        if (!heard.told().isEmpty() && atoms.stream().anyMatch(sayings::brought)) {
            // What a pack's own phrase means its author knows.
            return heard;
        }
        if (strangeBefore() || inPhrases() || partAlone() || scrap()) {
            // "Memorised oversteer": no ear knows either what that word makes of it. "Push on entry": the trade's own words.
            return heard;
        }
        if (impression.likeliest().contains(Lesson.DAY) && (heard.surface().isPresent() || read.isEmpty())) {
            // "It was wet": of the day, with no complaint.
            return heard;
        }
        Map<Candidate, Double> likely = new LinkedHashMap<>();
        Candidates.of(ear, said, heard, impression, atoms, parts)
                .forEach(it -> likely.put(it, ear.ofReadings().likely(it.evidence())));
        List<Candidate> best = new ArrayList<>(likely.keySet());
        best.sort(Comparator.comparing(it -> -likely.get(it)));
        if (heard.exact() && impression.likeliest().equals(read) && impression.likelyAny(read) >= AGREED) {
            return best.stream().filter(it -> it.sort() == Candidate.Sort.READ || heard.fine() && it.heard().fine()).findFirst()
                    .orElseThrow().heard();
        }
        double most = likely.get(best.get(0));
        boolean either = read.isEmpty() && eitherEnd() && most < (doubted(best.get(0)) ? EITHER : ASKED_FIRST);
        if (either) {
            // The grammar would ask about that, and between which.
            return heard;
        }
        if (read.isEmpty() && heard.exact() && heard.anything() && most < CERTAIN) {
            // "Exit", "both, every lap": where and when, of no complaint.
            return heard;
        }
        if (most >= (best.get(0).heard().fine() && !heard.fine() ? WELL : TAKEN) && !withdrawn(best.get(0), read)) {
            return best.get(0).heard();
        }
        if (heard.told().size() == 1) {
            Optional<Impression> part = parts.beside(heard.told().get(0).symptom());
            if (part.isPresent()) {
                return with(Details.of(ear.ofWords(), part.get(), heard, Named.of(atoms), parts));
            }
        }
        List<Told> mayBe = best.stream().filter(it -> likely.get(it) >= ASKED && !it.heard().told().isEmpty()).limit(MOST)
                .flatMap(it -> it.heard().told().stream()).distinct().toList();
        return mayBe.isEmpty() && read.isEmpty() ? doubted() : asked(mayBe);
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

    /** Whether the grammar reads that it is one of several. */
    private boolean eitherEnd() {
        return heard.doubtful().stream().anyMatch(doubt -> doubt.mayBe().size() > 1);
    }

    /** Whether the grammar would ask about all that. */
    private boolean doubted(Candidate candidate) {
        return candidate.heard().told().stream().allMatch(told -> heard.doubtful().stream()
                .flatMap(doubt -> doubt.mayBe().stream()).anyMatch(it -> it.symptom() == told.symptom()));
    }

    /** Whether the grammar finds a complaint and reads that it is not, or no more: "understeer goes away once they are warm". */
    private boolean withdrawn(Candidate candidate, Set<String> read) {
        boolean complaint = atoms.stream().anyMatch(Atom::head);
        boolean denied = atoms.stream().anyMatch(atom -> DENYING.stream().anyMatch(atom::is));
        return read.isEmpty() && heard.doubtful().isEmpty() && complaint && denied && !candidate.heard().fine()
                && impression.sure(candidate.means()) < WITHDRAWN;
    }

    /** Whether a word that neither knows begins what the grammar would ask back about. */
    private boolean strangeBefore() {
        return heard.doubtful().stream().anyMatch(doubt -> heard.notUnderstood().stream()
                .anyMatch(words -> doubt.words().startsWith(words) && !ear.knows(words)));
    }

    /** Whether it is a few letters that the grammar does not know, and that sound like no complaint most. */
    private boolean scrap() {
        return atoms.isEmpty() && said.strip().length() < LETTERS && Lesson.NO_COMPLAINT.containsAll(impression.likeliest());
    }

    /** Whether it is said in whole phrases of the file, with nothing between them but where and when. */
    private boolean inPhrases() {
        return !heard.told().isEmpty() && atoms.stream().anyMatch(atom -> atom.as(Meaning.Complaint.class).isPresent())
                && allIn(atom -> atom.as(Meaning.Complaint.class).isPresent()
                || atom.as(Meaning.Circumstance.class).isPresent() || atom.is(Meaning.Sign.AND));
    }

    /** Whether a part of the car is named and nothing told of it: "the rear" is no complaint. */
    private boolean partAlone() {
        return heard.told().isEmpty() && !atoms.isEmpty() && allIn(atom -> atom.is(Meaning.Sign.PLAIN)
                || atom.as(Meaning.Thing.class).isPresent()
                || atom.as(Meaning.Circumstance.class).filter(it -> it.words().get(0) instanceof Place).isPresent());
    }

    /** Whether every word is in a phrase, and every phrase is such a one. */
    private boolean allIn(Predicate<Atom> such) {
        for (List<Token> sentence : sayings.sentences(said)) {
            int at = 0;
            for (Atom atom : Cover.of(sayings, sentence)) {
                if (!skipped(sentence.subList(at, atom.from())) || !such.test(atom)) {
                    return false;
                }
                at = atom.to();
            }
            if (!skipped(sentence.subList(at, sentence.size()))) {
                return false;
            }
        }
        return true;
    }

    private boolean skipped(List<Token> tokens) {
        return tokens.stream().allMatch(token -> token.comma() || sayings.skipped(token.stem()));
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
        return heard.surface().filter(surface -> impression.likely(surface) >= Candidates.DAY);
    }
}
