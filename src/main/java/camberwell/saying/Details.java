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
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * What narrows a complaint of which the symptom is taken: the words that are likely right, be it that the grammar reads them or
 * that they sound so. What is neither is left out and named: it is better asked than guessed.
 */
final class Details {

    static final List<Class<? extends Word>> KINDS = List.of(Place.class, Phase.class, CornerSpeed.class,
            CornerKind.class, Turn.class, Severity.class, Occurrence.class, Since.class);

    /** How likely right a word has to be, to be taken. */
    private static final double TAKEN = 0.78;
    /** The same where the grammar has a reading of every word without it. */
    private static final double TAKEN_BESIDES = 0.93;
    /** How likely a word has to sound that is in the grammar's reading of every word. */
    private static final double KEPT_OF_ALL = 0.33;
    /** The same for how bad it is, on which people differ. */
    private static final double KEPT_DEGREE = 0.18;
    /** From where on a word that is left out is named; of a less likely one a driver would ask who had said it. */
    private static final double NAMED = 0.3;
    /** How likely a word has to sound, to be weighed though the grammar does not read it. */
    static final double WEIGHED = 0.05;

    private final Judge judge;
    private final WordEvidence weighed;
    private final List<Heard.Unclear> doubts = new ArrayList<>();
    private final List<Word> phrased;

    /**
     * What came of it.
     *
     * @param doubts what is left out
     */
    record Outcome(List<Told> told, List<Heard.Unclear> doubts, List<String> notUnderstood) {
    }

    private Details(Judge judge, Impression impression, Heard heard, Named named, Parts parts, boolean several) {
        this.judge = judge;
        this.weighed = new WordEvidence(impression, heard, named.words(), parts, several);
        this.phrased = named.phrased();
    }

    /**
     * Those symptoms, one or several, of which the grammar reads nothing, or something else. Words that are named somewhere and
     * of a kind that is not taken are not swallowed.
     */
    static Outcome of(Judge judge, Impression impression, Collection<Symptom> symptoms, Heard heard, Named named,
            Parts parts) {
        Details details = new Details(judge, impression, heard, named, parts, symptoms.size() > 1);
        List<Told> told = symptoms.stream().map(symptom -> details.told(symptom, details.read(symptom))).toList();
        named.words().stream().filter(word -> told.stream().noneMatch(one -> one.word(word.getClass()).isPresent()))
                .forEach(details::doubt);
        heard.told().stream().filter(read -> !symptoms.contains(read.symptom()))
                .forEach(read -> details.doubts.add(new Heard.Unclear(read.text(), List.of())));
        return new Outcome(told, details.once(), List.of());
    }

    private Optional<Told> read(Symptom symptom) {
        return weighed.heard().told().stream().filter(told -> told.symptom() == symptom).findFirst();
    }

    /** What the grammar reads, whose symptoms are the right ones. */
    static Outcome of(Judge judge, Impression impression, Heard heard, Named named, Parts parts) {
        Details details = new Details(judge, impression, heard, named, parts, heard.told().size() > 1);
        List<Told> told = united(heard.told().stream().map(read -> details.told(read.symptom(), Optional.of(read))).toList());
        List<String> rest = new ArrayList<>(heard.notUnderstood());
        // What else the grammar makes of some of the words is no suggestion: the whole is understood.
        heard.unclear().stream().map(Heard.Unclear::words).filter(words -> !rest.contains(words)).forEach(rest::add);
        return new Outcome(told, details.once(), rest);
    }

    /** The complaint with what narrows it for sure; of each kind that which is likeliest right. */
    private Told told(Symptom symptom, Optional<Told> read) {
        List<Word> words = new ArrayList<>();
        boolean exact = weighed.heard().exact();
        for (Class<? extends Word> kind : KINDS) {
            Optional<Word> said = read.flatMap(told -> told.word(kind));
            boolean lenient = exact || kind == Severity.class;
            if (said.filter(word -> phrased.contains(word) || lenient && keeps(symptom, word)).isPresent()) {
                words.add(said.get());
                continue;
            }
            Word best = null;
            double most = 0;
            for (Word word : weighed(weighed, symptom, kind, read)) {
                boolean may = said.filter(it -> it == word).isPresent()
                        || !(unsaid(symptom, word) && strange() < 2) && !(kind == Phase.class && takenBack(symptom));
                double likely = may ? judge.likely(weighed.of(symptom, word, read)) : 0;
                if (likely > most) {
                    most = likely;
                    best = word;
                }
            }
            if (most >= (exact && !said.equals(Optional.ofNullable(best)) ? TAKEN_BESIDES : TAKEN)) {
                words.add(best);
            } else if (said.isPresent()) {
                doubt(said.get());
            } else if (most >= NAMED && !unsaid(symptom, best)) {
                doubt(best);
            }
        }
        if (words.contains(CornerKind.HAIRPIN) && read.filter(told -> told.words().contains(CornerSpeed.SLOW)).isPresent()
                && !words.contains(CornerSpeed.SLOW)) {
            words.add(CornerSpeed.SLOW);
        }
        if (words.contains(Phase.STRAIGHT)) {
            // Speed on a straight is no speed of a corner.
            words.removeIf(word -> word instanceof CornerSpeed || word instanceof CornerKind);
        }
        return new Told(symptom, words, without(read.map(Told::notIn).orElse(List.of()), words));
    }

    /** How many words the grammar has no reading of, which may say what goes without saying. */
    private int strange() {
        return weighed.heard().notUnderstood().stream().mapToInt(words -> words.split(" ").length).sum()
                + weighed.heard().unclear().stream().mapToInt(doubt -> doubt.words().split(" ").length).sum();
    }

    /** Whether a word stays that is in the grammar's reading of every word. */
    private boolean keeps(Symptom symptom, Word word) {
        // Of several the grammar knows which is narrowed, and the ear that the word is meant at all.
        boolean twice = weighed.heard().told().stream().filter(told -> told.symptom() == symptom).count() > 1;
        double likely = weighed.several() && !twice ? Math.max(weighed.likely(symptom, word), weighed.impression().likely(word))
                : weighed.likely(symptom, word);
        return likely >= (word instanceof Severity ? KEPT_DEGREE : KEPT_OF_ALL);
    }

    /** The words of a kind that are worth weighing: what the grammar reads, and what sounds likely at all. */
    static List<Word> weighed(WordEvidence evidence, Symptom symptom, Class<? extends Word> kind, Optional<Told> read) {
        List<Word> words = new ArrayList<>();
        for (Word word : Word.all(kind)) {
            boolean said = read.filter(told -> told.words().contains(word)).isPresent();
            boolean excluded = read.filter(told -> told.notIn().contains(word)).isPresent();
            if (said || !excluded && sense(symptom, word) && evidence.likely(symptom, word) >= WEIGHED) {
                words.add(word);
            }
        }
        return words;
    }

    /** Whether the grammar read a phase in which nobody can mean that: then no other is put in its place. */
    private boolean takenBack(Symptom symptom) {
        return Word.all(Phase.class).stream().flatMap(phase -> symptom.senseless(phase).stream())
                .anyMatch(reason -> weighed.heard().notUnderstood().stream().anyMatch(words -> words.endsWith(reason)));
    }

    private static List<Word> without(List<Word> not, List<Word> words) {
        return not.stream().filter(word -> !words.contains(word)).toList();
    }

    private void doubt(Word word) {
        doubts.add(new Heard.Unclear(name(word), List.of()));
    }

    /** A word that narrows, as it is named where it is left out. */
    static String name(Word word) {
        return word instanceof Phase phase ? phase.at() : word.spoken();
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

    /** Whether it goes without saying: the one phase that it can be in, that a wheel locks on the brakes, and the like. */
    private static boolean unsaid(Symptom symptom, Word word) {
        return word instanceof Phase && Unsaid.only(symptom).isPresent() || Unsaid.phase(symptom, word)
                || word == Phase.STRAIGHT && symptom == Symptom.WANDERING
                || word == Since.FIRST_LAPS && symptom == Symptom.SLOW_WARM_UP;
    }

    /** Whether that can narrow it: a phase in which it can be, and no place of what is at one end of the car anyway. */
    private static boolean sense(Symptom symptom, Word word) {
        return word instanceof Phase phase ? symptom.senseless(phase).isEmpty()
                : !(word instanceof Place place) || symptom.axle().isEmpty()
                        || !symptom.ofBalance() && !place.id().equals(symptom.axle().get().id());
    }
}
