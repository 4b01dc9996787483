package camberwell.saying;

import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What the reading of a whole saying leaves out of it. A part of some words of which nothing was taken, asked or named is asked
 * back about where it sounds like a complaint, and named where it may be one: two complaints in one breath are never one of them
 * without a word about the other.
 */
final class LeftOut {

    /** A part of fewer words seldom tells a complaint of its own. */
    private static final int WORDS = 5;
    /** How sure a part has to sound like a complaint by itself, to be asked about. */
    private static final double SURE = 0.75;
    /** How likely that complaint has to sound in the whole saying: what a part is about may stand beside it. */
    private static final double HINTED = 0.1;
    /** How likely a part has to sound like no complaint, to be left at that. */
    private static final double NONE = 0.5;
    /** How likely a word has to sound in a part that is taken to have said it. */
    private static final double NARROWING = 0.5;
    private static final Set<Meaning.Sign> TURNING = Set.of(Meaning.Sign.NOT, Meaning.Sign.GONE, Meaning.Sign.UNREAL,
            Meaning.Sign.BETTER, Meaning.Sign.OTHERS, Meaning.Sign.FINE, Meaning.Sign.EXCEPT, Meaning.Sign.THAN);
    /** Complaints that the same words tell, of which the whole saying knows better which it is. */
    private static final List<Set<Symptom>> KIN = List.of(Set.of(Symptom.OVERSTEER, Symptom.SNAP_OVERSTEER),
            Set.of(Symptom.PULLING, Symptom.WANDERING));

    private final Sayings sayings;
    private final Ear ear;
    private final Impression whole;
    private final Heard taken;
    /** What is told, or would be if what is asked were so. */
    private final List<Told> told;
    private final List<Heard.Unclear> unclear;
    private final List<String> notUnderstood;

    private LeftOut(Sayings sayings, Ear ear, Impression whole, Heard taken) {
        this.sayings = sayings;
        this.ear = ear;
        this.whole = whole;
        this.taken = taken;
        this.told = taken.told().isEmpty() ? taken.unclear().stream().flatMap(doubt -> doubt.mayBe().stream()).toList()
                : taken.told();
        this.unclear = new ArrayList<>(taken.unclear());
        this.notUnderstood = new ArrayList<>(taken.notUnderstood());
    }

    /** The same with what is left out of it, asked or named. */
    static Heard asked(Sayings sayings, Ear ear, Impression whole, Parts parts, Heard taken) {
        List<Parts.Part> clauses = parts.clauses();
        if (clauses.size() < 2) {
            return taken;
        }
        LeftOut left = new LeftOut(sayings, ear, whole, taken);
        List<Word> ofAll = ofAll(clauses.get(clauses.size() - 1));
        for (Parts.Part clause : clauses) {
            if (clause.text().split("\\s+").length >= WORDS && !left.named(clause)) {
                left.hear(clause, ofAll);
            }
        }
        List<Told> each = taken.told().stream().map(one -> with(one, ofAll)).toList();
        return new Heard(taken.said(), taken.told().size() > 1 ? each : taken.told(), taken.surface(),
                taken.fine() && left.unclear.equals(taken.unclear()), taken.loose(), left.unclear, left.notUnderstood);
    }

    /** When and how often it was, where the last part says no more than that: it is said of all that stands before it. */
    private static List<Word> ofAll(Parts.Part last) {
        List<Word> loose = last.heard().loose();
        boolean only = loose.stream().allMatch(word -> word instanceof Since || word instanceof Occurrence);
        return only && last.heard().told().isEmpty() ? loose : List.of();
    }

    private static Told with(Told told, List<Word> ofAll) {
        List<Word> words = new ArrayList<>(told.words());
        ofAll.stream().filter(word -> told.word(word.getClass()).isEmpty()).forEach(words::add);
        return new Told(told.symptom(), words, told.notIn());
    }

    /** Whether some of it is named, or is just what is asked about. */
    private boolean named(Parts.Part clause) {
        String words = Heard.plain(clause.text());
        String all = Heard.plain(taken.said());
        return Stream.concat(notUnderstood.stream(), unclear.stream().map(Heard.Unclear::words)).map(Heard::plain)
                .anyMatch(named -> !named.isEmpty() && !named.equals(all) && (words.contains(named) || named.contains(words)));
    }

    private void hear(Parts.Part clause, List<Word> ofAll) {
        List<Atom> atoms = Cover.ofAll(sayings, clause.text());
        Set<String> sounds = clause.sounds().likeliest();
        boolean complaint = sounds.stream().noneMatch(Lesson.NO_COMPLAINT::contains);
        boolean sure = complaint && clause.sounds().sure(sounds) >= SURE;
        boolean turned = atoms.stream().anyMatch(atom -> TURNING.stream().anyMatch(atom::is));
        if (covered(clause, sounds) || circumstance(clause.heard(), sure) || atoms.stream().anyMatch(sayings::brought)
                || onlyTheDriver(clause, atoms)) {
            return;
        }
        if (sure && !turned && sounds.stream().anyMatch(symptom -> whole.likely(symptom) >= HINTED)) {
            unclear.add(new Heard.Unclear(clause.text(), told(clause, sounds).stream().map(one -> with(one, ofAll)).toList()));
        } else if (!taken.fine() && (sure && !turned || !narrows(clause, atoms))) {
            notUnderstood.add(clause.text());
        }
    }

    /** Whether what it tells by itself is told, or it tells no complaint. */
    private boolean covered(Parts.Part clause, Set<String> sounds) {
        Heard read = clause.heard();
        if (read.told().isEmpty()) {
            boolean none = clause.sounds().likely(Lesson.REFUSED) + clause.sounds().likely(Lesson.NOTHING) >= NONE;
            if (none || read.fine()) {
                return true;
            }
        }
        List<Word> where = read.told().stream().flatMap(one -> one.words().stream()).toList();
        return sounds.stream().allMatch(symptom -> tells(symptom, where))
                || !read.told().isEmpty() && read.told().stream().allMatch(one -> tells(one.symptom().id(), one.words()));
    }

    /** Whether that is told, or kin of it: what it is called elsewhere in the corner is another complaint. */
    private boolean tells(String symptom, List<Word> where) {
        return told.stream().anyMatch(one -> one.symptom().id().equals(symptom) || kin(one.symptom(), symptom)
                && one.words().stream().noneMatch(word -> where.stream()
                .anyMatch(it -> it != word && it.getClass() == word.getClass())));
    }

    private static boolean kin(Symptom one, String symptom) {
        return KIN.stream().anyMatch(kin -> kin.contains(one) && kin.stream().anyMatch(other -> other.id().equals(symptom)));
    }

    /** Whether it says where, when or how the day was, and no more; of what sounds like a complaint every word has to. */
    private static boolean circumstance(Heard read, boolean complaint) {
        return read.told().isEmpty() && (read.surface().isPresent() || !read.loose().isEmpty()) && (!complaint || read.exact());
    }

    /** Whether it says where or when of what is told. */
    private boolean narrows(Parts.Part clause, List<Atom> atoms) {
        List<Word> named = Named.of(atoms).words();
        return told.stream().flatMap(one -> Stream.concat(one.words().stream(), one.notIn().stream()))
                .anyMatch(word -> named.contains(word) || clause.sounds().likely(word) >= NARROWING);
    }

    /** What a driver does tells of no complaint, unless it says where: "and we miss the apex" is what came of one. */
    private static boolean onlyTheDriver(Parts.Part clause, List<Atom> atoms) {
        boolean driver = atoms.stream().anyMatch(atom -> atom.as(Meaning.Thing.class)
                .filter(thing -> thing.name().equals("driver")).isPresent());
        boolean car = atoms.stream().anyMatch(atom -> atom.as(Meaning.Complaint.class).isPresent()
                || atom.as(Meaning.Thing.class).filter(thing -> !thing.name().equals("driver")).isPresent());
        return driver && !car && clause.heard().told().stream().allMatch(told -> told.words().isEmpty());
    }

    private List<Told> told(Parts.Part clause, Set<String> sounds) {
        List<Told> read = clause.heard().told();
        boolean same = read.stream().map(one -> one.symptom().id()).allMatch(sounds::contains) && read.size() == sounds.size();
        return same ? read : Details.of(ear.ofWords(), clause.sounds(),
                sounds.stream().sorted().map(symptom -> Word.of(Symptom.class, symptom)).toList(), clause.heard(), Named.NOTHING,
                new Parts(sayings, ear, clause.text())).told();
    }
}
