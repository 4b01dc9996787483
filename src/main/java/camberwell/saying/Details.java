package camberwell.saying;

import camberwell.vocabulary.CornerKind;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What narrows a complaint of which the symptom is taken: the words that the grammar reads, as far as they sound likely, and
 * those that sound sure. What is neither is left out and named: it is better asked than guessed.
 */
final class Details {

    private static final List<Class<? extends Word>> KINDS = List.of(Place.class, Phase.class, CornerSpeed.class,
            CornerKind.class, Turn.class, Severity.class, Occurrence.class, Since.class);

    /** How likely a word has to be to be taken that the grammar does not read. */
    private static final double TAKEN = 0.62;
    /** From where on another of its kind is likely too, so that neither is taken. */
    private static final double RIVAL = 0.5;
    /** How likely it has to be to narrow just that one of several complaints. */
    private static final double FAR = 0.93;
    /** The same where the grammar has a reading of every word without it. */
    private static final double TAKEN_BESIDES = 0.86;
    /** How likely a word has to be that the grammar reads. */
    private static final double KEPT = 0.62;
    /** The same where the grammar has a reading of every word. */
    private static final double KEPT_OF_ALL = 0.33;
    /** The same for how bad it is, on which people differ. */
    private static final double KEPT_DEGREE = 0.18;
    /** The same where the grammar reads one symptom twice: it may be one only. */
    private static final double KEPT_TWICE = 0.87;
    /** From where on a word that is left out is named; of a less likely one a driver would ask who had said it. */
    private static final double NAMED = 0.3;

    private final Impression impression;
    private final List<Heard.Unclear> doubts = new ArrayList<>();
    private final List<Word> phrased = new ArrayList<>();

    /**
     * What came of it.
     *
     * @param doubts what is left out
     */
    record Outcome(List<Told> told, List<Heard.Unclear> doubts, List<String> notUnderstood) {
    }

    private Details(Impression impression) {
        this.impression = impression;
    }

    /**
     * That symptom, of which the grammar reads nothing, or something else.
     *
     * @param named the words that narrow and are named somewhere in it: those of a kind that is not taken are not swallowed
     */
    static Outcome of(Impression impression, Symptom symptom, Heard heard, List<Word> named) {
        Details details = new Details(impression);
        Told told = details.told(symptom);
        named.stream().filter(word -> told.words().stream().noneMatch(it -> it.getClass() == word.getClass()))
                .forEach(details::doubt);
        heard.told().stream().filter(read -> read.symptom() != symptom)
                .forEach(read -> details.doubts.add(new Heard.Unclear(read.text(), List.of())));
        return new Outcome(List.of(told), details.once(), List.of());
    }

    /**
     * Those symptoms, each with what narrows just that for sure.
     *
     * @param named the words that narrow and are named somewhere: those of a kind that is not taken are not swallowed
     */
    static Outcome of(Impression impression, Set<String> symptoms, List<Word> named) {
        Details details = new Details(impression);
        List<Told> told = new ArrayList<>();
        for (String symptom : symptoms) {
            Symptom one = Word.of(Symptom.class, symptom);
            told.add(new Told(one, details.ofSeveral(one, List.of()), List.of()));
        }
        named.stream().filter(word -> told.stream().noneMatch(one -> one.word(word.getClass()).isPresent()))
                .forEach(details::doubt);
        return new Outcome(told, details.once(), List.of());
    }

    /**
     * What the grammar reads, whose symptoms are the right ones.
     *
     * @param phrased the words that phrases mean which tell a complaint whole: who wrote those knows what they mean
     */
    static Outcome of(Impression impression, Heard heard, List<Word> phrased) {
        Details details = new Details(impression);
        details.phrased.addAll(phrased);
        boolean exact = heard.unclear().isEmpty() && heard.notUnderstood().isEmpty();
        List<Told> parts = new ArrayList<>();
        for (Told told : heard.told()) {
            boolean twice = heard.told().stream().filter(it -> it.symptom() == told.symptom()).count() > 1;
            parts.add(heard.told().size() == 1 ? details.alone(told, exact, takenBack(told, heard))
                    : details.amongOthers(told, exact ? KEPT_OF_ALL : twice ? KEPT_TWICE : KEPT));
        }
        List<Told> told = united(parts);
        List<String> rest = new ArrayList<>(heard.notUnderstood());
        // What else the grammar makes of some of the words is no suggestion: the whole is understood.
        heard.unclear().stream().map(Heard.Unclear::words).filter(words -> !rest.contains(words)).forEach(rest::add);
        return new Outcome(told, details.once(), rest);
    }

    /** The complaint with what narrows it for sure. */
    private Told told(Symptom symptom) {
        List<Word> words = new ArrayList<>();
        for (Class<? extends Word> kind : KINDS) {
            Optional<Word> likeliest = likeliest(kind, symptom);
            double likely = likeliest.map(word -> impression.likely(symptom, word)).orElse(0.0);
            boolean only = likeliest.filter(word -> only(symptom, word)).isPresent();
            if (likely >= (only ? NAMED : TAKEN) && second(kind, symptom, likeliest.get()) < RIVAL) {
                words.add(likeliest.get());
            } else if (likely >= NAMED) {
                doubt(likeliest.get());
            }
        }
        if (words.contains(Phase.STRAIGHT)) {
            // Speed on a straight is no speed of a corner.
            words.removeIf(word -> word instanceof CornerSpeed || word instanceof CornerKind);
        }
        return new Told(symptom, words, List.of());
    }

    /** The grammar's one complaint: what it reads is kept if it is likely, what it does not is taken if it is sure. */
    private Told alone(Told read, boolean exact, boolean takenBack) {
        List<Word> words = new ArrayList<>();
        for (Class<? extends Word> kind : KINDS) {
            Optional<Word> said = read.word(kind).map(Word.class::cast);
            Optional<Word> likeliest = likeliest(kind, read.symptom());
            double likely = likeliest.map(word -> impression.likely(read.symptom(), word)).orElse(0.0);
            double enough = kind == Severity.class ? KEPT_DEGREE : exact ? KEPT_OF_ALL : KEPT;
            if (said.filter(word -> impression.likely(read.symptom(), word) >= enough || bound(read, word)).isPresent()) {
                words.add(said.get());
            } else if (likely >= (exact ? TAKEN_BESIDES : TAKEN) && !unsaid(read.symptom(), likeliest.get())
                    && !(kind == Phase.class && takenBack) && second(kind, read.symptom(), likeliest.get()) < RIVAL
                    && !read.notIn().contains(likeliest.get())) {
                words.add(likeliest.get());
            } else if (said.isPresent()) {
                doubt(said.get());
            } else if (likely >= NAMED && !read.notIn().contains(likeliest.get())
                    && !unsaid(read.symptom(), likeliest.get())) {
                doubt(likeliest.get());
            }
        }
        return new Told(read.symptom(), words, without(read.notIn(), words));
    }

    /** Whether the grammar read a phase in which nobody can mean that: then no other is put in its place. */
    private static boolean takenBack(Told told, Heard heard) {
        return Word.all(Phase.class).stream().flatMap(phase -> told.symptom().senseless(phase).stream())
                .anyMatch(reason -> heard.notUnderstood().stream().anyMatch(words -> words.endsWith(reason)));
    }

    /** What narrows just that one of several for sure, of the kinds that no word is known of. */
    private List<Word> ofSeveral(Symptom symptom, List<Word> known) {
        List<Word> words = new ArrayList<>();
        for (Class<? extends Word> kind : KINDS) {
            for (Word word : Word.all(kind)) {
                boolean free = known.stream().noneMatch(it -> it.getClass() == kind)
                        && words.stream().noneMatch(it -> it.getClass() == kind);
                if (free && sense(symptom, word) && !unsaid(symptom, word) && impression.pairs(symptom, word)) {
                    double likely = impression.likelyOf(symptom, word);
                    if (likely >= FAR) {
                        words.add(word);
                    } else if (likely >= RIVAL) {
                        doubt(word);
                    }
                }
            }
        }
        return words;
    }

    /** One complaint of several: what the grammar reads of it, and what sounds sure to belong to just that. */
    private Told amongOthers(Told read, double enough) {
        List<Word> words = new ArrayList<>();
        for (Word word : read.words()) {
            double least = word instanceof Severity ? KEPT_DEGREE : enough;
            if (impression.likelyOf(read.symptom(), word) >= least || bound(read, word)) {
                words.add(word);
            } else {
                doubt(word);
            }
        }
        List<Word> known = new ArrayList<>(read.words());
        known.addAll(read.notIn());
        words.addAll(ofSeveral(read.symptom(), known));
        return new Told(read.symptom(), words, without(read.notIn(), words));
    }

    private static List<Word> without(List<Word> not, List<Word> words) {
        return not.stream().filter(word -> !words.contains(word)).toList();
    }

    private void doubt(Word word) {
        doubts.add(new Heard.Unclear(word instanceof Phase phase ? phase.at() : word.spoken(), List.of()));
    }

    private List<Heard.Unclear> once() {
        return doubts.stream().distinct().toList();
    }

    /** Complaints of one symptom that have no two words of a kind between them are one. */
    private static List<Told> united(List<Told> parts) {
        List<Told> united = new ArrayList<>();
        for (Told part : parts) {
            Optional<Told> same = united.stream()
                    .filter(before -> before.symptom() == part.symptom() && fit(before, part)).findFirst();
            if (same.isEmpty()) {
                united.add(part);
            } else {
                united.set(united.indexOf(same.get()), new Told(part.symptom(), both(same.get().words(), part.words()),
                        both(same.get().notIn(), part.notIn())));
            }
        }
        return united;
    }

    private static boolean fit(Told one, Told other) {
        return other.words().stream().allMatch(word -> one.words().contains(word)
                || one.words().stream().noneMatch(it -> it.getClass() == word.getClass()));
    }

    private static List<Word> both(List<Word> some, List<Word> more) {
        List<Word> both = new ArrayList<>(some);
        more.stream().filter(word -> !both.contains(word)).forEach(both::add);
        return both;
    }

    /** Whether a word is meant by a phrase, or goes with another that was told: a hairpin is slow. */
    private boolean bound(Told told, Word word) {
        return phrased.contains(word) || word == CornerSpeed.SLOW && told.words().contains(CornerKind.HAIRPIN);
    }

    /** Whether it goes without saying: the one phase in which that symptom can be, and that a wheel locks on the brakes. */
    private static boolean unsaid(Symptom symptom, Word word) {
        return only(symptom, word)
                || word == Phase.BRAKING && (symptom == Symptom.FRONT_LOCKING || symptom == Symptom.REAR_LOCKING);
    }

    /** Whether that can narrow it: a phase in which it can be, and no place of what is at one end of the car anyway. */
    private static boolean sense(Symptom symptom, Word word) {
        return word instanceof Phase phase ? symptom.senseless(phase).isEmpty()
                : !(word instanceof Place place) || symptom.axle().isEmpty()
                        || !symptom.ofBalance() && !place.id().equals(symptom.axle().get().id());
    }

    /** Whether it is the one phase in which that symptom can be. */
    private static boolean only(Symptom symptom, Word word) {
        return word instanceof Phase && Word.all(Phase.class).stream().filter(it -> symptom.senseless(it).isEmpty()).count() == 1;
    }

    /** How likely the second of a kind is. */
    private double second(Class<? extends Word> kind, Symptom symptom, Word first) {
        return Word.all(kind).stream().filter(word -> word != first).mapToDouble(word -> impression.likely(symptom, word)).max()
                .orElse(0);
    }

    private Optional<Word> likeliest(Class<? extends Word> kind, Symptom symptom) {
        Word likeliest = null;
        for (Word word : Word.all(kind)) {
            if (sense(symptom, word) && (likeliest == null
                    || impression.likely(symptom, word) > impression.likely(symptom, likeliest))) {
                likeliest = word;
            }
        }
        return Optional.ofNullable(likeliest);
    }
}
