package camberwell.saying;


import camberwell.vocabulary.CornerKind;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import camberwell.yaml.Document;
import camberwell.yaml.Fields;
import camberwell.yaml.Problems;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.StringTokenizer;
import java.util.function.Function;

/** The phrases that are known, from {@code knowledge-notes/sayings.yaml} and from packs. */
public final class Sayings {

    /** The file's name, at home and in a pack. */
    public static final String FILE = "sayings.yaml";

    private static final List<Class<? extends Word>> NARROWING =
            List.of(Phase.class, CornerSpeed.class, CornerKind.class, Place.class,
            Severity.class, Occurrence.class, Since.class, Turn.class, Surface.class);

    private static final List<Meaning.Sign> SIGNS = List.of(Meaning.Sign.FINE, Meaning.Sign.NOT, Meaning.Sign.UNREAL,
            Meaning.Sign.OTHERS, Meaning.Sign.PLAIN, Meaning.Sign.GONE, Meaning.Sign.NOW, Meaning.Sign.THAN,
            Meaning.Sign.BETTER);
    private static final List<Meaning.Sign> JOINS = List.of(Meaning.Sign.AND, Meaning.Sign.BUT, Meaning.Sign.EXCEPT,
            Meaning.Sign.THEN, Meaning.Sign.OR);

    /** Where a German clause ends. */
    private static final Set<String> BOUNDS = Set.of(",", Token.ASKED, "und", "aber", "wenn");

    /**
     * Words that may be said in the place of one word of any phrase.
     *
     * @param words as they are compared
     * @param meant the word of the phrases
     */
    record StandIn(List<String> words, String meant) {
    }

    private final PhraseTree phrases = new PhraseTree(this::stems, words -> together(words, Function.identity()));
    /** Phrases that are heard before all others, whatever these make of the same words. */
    private final PhraseTree faults = phrases.beside(this::plainStems);
    private final Map<String, Map<String, List<Meaning.Complaint>>> doings = new LinkedHashMap<>();
    private final Map<String, String> same = new HashMap<>();
    /** Kinds of corners by the one word that names them. */
    private final Map<String, CornerKind> kinds = new HashMap<>();
    private final Set<String> skipped = new HashSet<>();
    private final Map<String, Set<String>> separable = new HashMap<>();
    /** Other words for a word of the phrases, by their first. */
    private final Map<String, List<StandIn>> standIns = new HashMap<>();
    private final Set<String> stems = new HashSet<>();
    private final Set<String> ordinary = new HashSet<>();
    private Spelling spelling;
    /** Every word of the files, as it stands there. */
    private final Set<String> written = new HashSet<>();
    /** Only while the files are read. */
    private final Map<String, List<String>> stemmed = new HashMap<>();

    /** The complaints that phrases of packs mean, each itself and none that is equal. */
    private final Set<Meaning> brought = Collections.newSetFromMap(new IdentityHashMap<>());
    /** Whether the file that is read is not the first. */
    private boolean further;

    private Sayings() {
    }

    /**
     * Reads one text after another; each adds to those before it.
     *
     * @param texts by the name that problems give them
     * @throws camberwell.problem.ProblemsException with everything that is wrong with them
     */
    public static Sayings read(Map<String, String> texts) {
        Sayings sayings = new Sayings();
        Problems problems = new Problems();
        List<Fields> roots = new ArrayList<>();
        texts.forEach((name, text) -> Document.parse(name, text, problems)
                .ifPresent(document -> roots.add(document.fields("part"))));
        roots.forEach(root -> root.map("same", "word").ifPresent(same -> same.keys().forEach(word ->
                same.prose(word).ifPresent(other -> sayings.same.put(word, other)))));
        roots.forEach(sayings::classes);
        for (Fields root : roots) {
            sayings.sections(root);
            sayings.further = true;
        }
        problems.warningsOrFail();
        sayings.stemmed.clear();
        sayings.spelling = new Spelling(sayings.stems, sayings.ordinary, sayings.written);
        return sayings;
    }

    private void classes(Fields root) {
        root.map("words", "class").ifPresent(section -> section.keys().forEach(name -> section.prose(name).ifPresent(text -> {
            List<List<String>> choices = phrases.ofClass(name);
            for (String choice : text.split(",")) {
                choices.add(stems(choice));
            }
        })));
        root.map("instead", "word").ifPresent(section -> section.keys().forEach(word -> section.prose(word).ifPresent(text -> {
            String meant = Tokens.phrase(word, same).get(0);
            for (String other : text.split(",")) {
                List<String> words = List.copyOf(stems(other));
                stems.addAll(words);
                standIns.computeIfAbsent(words.get(0), key -> new ArrayList<>()).add(new StandIn(words, meant));
            }
        })));
        root.map("separable", "verb").ifPresent(section -> section.keys().forEach(verb -> section.prose(verb).ifPresent(text ->
                separable.computeIfAbsent(Tokens.phrase(verb, same).get(0), key -> new HashSet<>())
                        .addAll(stems(text.replace(',', ' '))))));
    }

    private void sections(Fields root) {
        root.map("complaints", "meaning").ifPresent(section -> section.keys().forEach(words ->
                complaint(words, section, words).ifPresent(meaning -> {
                    if (further) {
                        brought.add(meaning);
                    }
                    add(section, words, meaning);
                })));
        root.map("faults", "meaning").ifPresent(section -> section.keys().forEach(words ->
                complaint(words, section, words).ifPresent(meaning -> fault(section.prose(words), meaning, section))));
        root.map("things", "thing").ifPresent(section -> section.keys().forEach(thing -> {
            String[] parts = thing.split(" ");
            add(section, thing, new Meaning.Thing(parts[0], parts.length > 1 ? parts[1] : placed(parts[0])));
        }));
        root.map("doings", "doing").ifPresent(section -> section.keys().forEach(name ->
                section.map(name, "key").ifPresent(doing -> doing(name, doing))));
        circumstances(root, "circumstances", Meaning.Role.PLACE);
        circumstances(root, "acts", Meaning.Role.ACT);
        circumstances(root, "intensifiers", Meaning.Role.RAISES);
        circumstances(root, "towards", Meaning.Role.TOWARDS);
        for (Meaning.Sign sign : SIGNS) {
            String name = sign.name().toLowerCase(Locale.ROOT);
            root.map(name, "key").ifPresent(section -> {
                add(section, "said", sign);
                section.done();
            });
        }
        root.map("joins", "key").ifPresent(section -> {
            for (Meaning.Sign join : JOINS) {
                add(section, join.name().toLowerCase(Locale.ROOT), join);
            }
            section.done();
        });
        root.prose("skip").ifPresent(text -> skipped.addAll(stems(text.replace(',', ' '))));
        root.done();
    }

    private void circumstances(Fields root, String name, Meaning.Role role) {
        root.map(name, "meaning").ifPresent(section -> section.keys().forEach(words -> {
            if (words.equals("suddenly")) {
                add(section, words, Meaning.Sign.SUDDENLY);
            } else {
                narrowing(words, section, List.of(words.split(" "))).ifPresent(narrowing -> {
                    add(section, words, new Meaning.Circumstance(narrowing, role));
                    narrowing.stream().filter(CornerKind.class::isInstance)
                            .forEach(kind -> named((CornerKind) kind, section.prose(words)));
                });
            }
        }));
    }

    private void named(CornerKind kind, Optional<String> said) {
        for (String phrase : said.orElse("").split(",")) {
            List<String> stems = stems(phrase);
            if (stems.size() == 1) {
                kinds.put(stems.get(0), kind);
            }
        }
    }

    /** The kind of corner that a word names; empty for none. */
    Optional<CornerKind> kind(String stem) {
        return Optional.ofNullable(kinds.get(stem));
    }

    private static String placed(String thing) {
        return Word.find(Place.class, thing).map(Place::id).orElse("");
    }

    private void doing(String name, Fields doing) {
        add(doing, "said", new Meaning.Doing(name));
        Map<String, List<Meaning.Complaint>> table = doings.computeIfAbsent(name, key -> new LinkedHashMap<>());
        doing.map("on", "thing").ifPresent(on -> on.keys().forEach(thing -> {
            List<Meaning.Complaint> complaints = new ArrayList<>();
            List<String> meanings = on.holdsList(thing) ? on.texts(thing) : on.prose(thing).stream().toList();
            meanings.forEach(meaning -> complaint(meaning, on, thing).ifPresent(complaints::add));
            table.put(thing, List.copyOf(complaints));
        }));
        doing.done();
    }

    /** The complaint that a few words of the vocabulary mean; empty, with the problem noted, where one is none. */
    private static Optional<Meaning.Complaint> complaint(String meaning, Fields in, String key) {
        String[] words = meaning.split(" ");
        Optional<Symptom> symptom = Word.find(Symptom.class, words[0]);
        if (symptom.isEmpty()) {
            in.errorAtKey(key, "\"" + words[0] + "\" is no symptom"
                    + Nearest.to(words[0], Word.ids(Symptom.class)).map(near -> "; did you mean \"" + near + "\"?").orElse(""));
        }
        return symptom.flatMap(it -> narrowing(key, in, List.of(words).subList(1, words.length))
                .map(narrowing -> new Meaning.Complaint(it, narrowing)));
    }

    private static Optional<List<Word>> narrowing(String key, Fields in, List<String> ids) {
        List<Word> words = new ArrayList<>();
        for (String id : ids) {
            Optional<Word> word = NARROWING.stream().flatMap(kind -> List.of(kind.getEnumConstants()).stream())
                    .filter(it -> it.is(id)).map(Word.class::cast).findFirst();
            if (word.isEmpty()) {
                in.errorAtKey(key, "\"" + id + "\" is no word of the vocabulary");
                return Optional.empty();
            }
            words.add(word.get());
        }
        return Optional.of(List.copyOf(words));
    }

    private void add(Fields in, String key, Meaning meaning) {
        Set<String> words = meaning == Meaning.Sign.PLAIN || meaning == Meaning.Sign.OTHERS ? ordinary : stems;
        for (StringTokenizer sayings = new StringTokenizer(in.prose(key).orElse(""), ","); sayings.hasMoreTokens();) {
            String phrase = sayings.nextToken();
            if (!phrase.isBlank()) {
                phrases.add(phrase, meaning, words, name -> in.error(key, "\"" + name + "\" is no class of words"));
            }
        }
    }

    /** What is misspelt is met by the other phrases alone: no word is taken for one of these. */
    private void fault(Optional<String> said, Meaning meaning, Fields in) {
        for (String phrase : said.orElse("").split(",")) {
            if (!phrase.isBlank()) {
                faults.add(phrase, meaning, new HashSet<>(), name -> in.error("\"" + name + "\" is no class of words"));
            }
        }
    }

    private List<String> plainStems(String text) {
        List<String> all = new ArrayList<>();
        for (StringTokenizer words = new StringTokenizer(text); words.hasMoreTokens();) {
            all.addAll(Tokens.phrase(words.nextToken(), same));
        }
        return all;
    }

    /** The stems of a few words of the file, in which the same words stand often. */
    private List<String> stems(String text) {
        List<String> all = new ArrayList<>();
        for (StringTokenizer words = new StringTokenizer(text); words.hasMoreTokens();) {
            String word = words.nextToken();
            List<String> known = stemmed.get(word);
            if (known == null) {
                known = Tokens.phrase(word, same);
                stemmed.put(word, known);
                written.add(word);
            }
            all.addAll(known);
        }
        return all;
    }

    /** Whether a phrase of a pack is in it that tells a complaint whole, which no ear has heard. */
    boolean brought(Atom atom) {
        return !brought.isEmpty() && atom.meanings().stream().anyMatch(brought::contains);
    }

    /** The root of the tree of phrases. */
    PhraseTree.Node phrases() {
        return phrases.root();
    }

    /** The root of the tree of those that are heard before all others. */
    PhraseTree.Node faults() {
        return faults.root();
    }

    /** What may be said instead of a word of the phrases and begins with this one. */
    List<StandIn> standIns(String stem) {
        return standIns.getOrDefault(stem, List.of());
    }

    /** Whether a word may stand in the middle of a phrase without a difference. */
    boolean skipped(String stem) {
        return skipped.contains(stem);
    }

    /** The words of what was said. */
    List<List<Token>> sentences(String said) {
        List<List<Token>> sentences = Tokens.sentences(said, same, spelling);
        sentences.forEach(sentence -> {
            together(sentence, Token::stem);
            Homographs.settle(sentence, Stem.of(Stem.of("loose")), "lose");
        });
        return sentences;
    }

    /** Puts the two halves of a German verb together: "das Heck bricht in der Kurve aus". */
    private <T> void together(List<T> words, Function<T, String> stem) {
        for (int verb = 0; verb < words.size(); verb++) {
            Set<String> halves = separable.get(stem.apply(words.get(verb)));
            for (int at = verb + 2; halves != null && at < words.size(); at++) {
                if (BOUNDS.contains(stem.apply(words.get(at - 1)))) {
                    break;
                }
                boolean ends = at + 1 == words.size() || BOUNDS.contains(stem.apply(words.get(at + 1)));
                if (ends && halves.contains(stem.apply(words.get(at)))) {
                    words.add(verb + 1, words.remove(at));
                    break;
                }
            }
        }
    }

    /** What it means that a thing does one of {@code doing} there; empty where that is not known. */
    Optional<List<Meaning.Complaint>> complaints(List<Meaning.Doing> doing, String thing, Optional<Phase> phase) {
        if (phase.isPresent()) {
            for (Meaning.Doing each : doing) {
                List<Meaning.Complaint> there = doings.get(each.name()).get(thing + "@" + phase.get().id());
                if (there != null) {
                    return Optional.of(there);
                }
            }
        }
        for (Meaning.Doing each : doing) {
            List<Meaning.Complaint> there = doings.get(each.name()).get(thing);
            if (there != null) {
                return Optional.of(there);
            }
        }
        return Optional.empty();
    }

    /** Every complaint that one of {@code doing} may be wherever it happens, whatever does it. */
    List<Symptom> mayBe(List<Meaning.Doing> doing) {
        List<Symptom> symptoms = new ArrayList<>();
        for (Meaning.Doing each : doing) {
            doings.get(each.name()).forEach((thing, complaints) -> complaints.stream().map(Meaning.Complaint::symptom)
                    .filter(symptom -> thing.indexOf('@') < 0 && !symptoms.contains(symptom)).forEach(symptoms::add));
        }
        return symptoms;
    }
}
