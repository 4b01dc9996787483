package camberwell.saying;

import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Severity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Covers a sentence with phrases, as much of it as can be with as few and long phrases as will do. How bad and how often
 * may stand in the middle of a phrase: "the rear sometimes steps out".
 */
final class Cover {

    private static final int MOST_SKIPPED = 4;
    private static final int WORD = 10;
    private static final int NEXT_WORD = 3;
    private static final int WITHIN = 8;

    private final Sayings sayings;
    private final List<Token> sentence;
    private final PhraseTree.Node start;
    private final Map<Integer, Atom> adverbs = new HashMap<>();
    private final List<List<Atom>> found = new ArrayList<>();

    private Cover(Sayings sayings, List<Token> sentence, PhraseTree.Node start) {
        this.sayings = sayings;
        this.sentence = sentence;
        this.start = start;
    }

    /** The phrases of all sentences of what was said, in its order. */
    static List<Atom> ofAll(Sayings sayings, String said) {
        List<Atom> atoms = new ArrayList<>();
        sayings.sentences(said).forEach(sentence -> atoms.addAll(of(sayings, sentence)));
        return atoms;
    }

    /** The phrases of a sentence, in its order; no two overlap. */
    static List<Atom> of(Sayings sayings, List<Token> sentence) {
        return of(sayings, sentence, sayings.phrases());
    }

    /** Those phrases of a tree that a sentence is covered by. */
    static List<Atom> of(Sayings sayings, List<Token> sentence, PhraseTree.Node tree) {
        Cover cover = new Cover(sayings, sentence, tree);
        for (int from = 0; from < sentence.size(); from++) {
            List<Atom> atoms = cover.from(from);
            for (Atom atom : atoms) {
                if (adverb(atom) && (!cover.adverbs.containsKey(from) || cover.adverbs.get(from).words() < atom.words())) {
                    cover.adverbs.put(from, atom);
                }
            }
        }
        for (int from = 0; from < sentence.size(); from++) {
            cover.found.add(cover.from(from));
        }
        return cover.best();
    }

    private static boolean adverb(Atom atom) {
        return atom.is(Meaning.Sign.SUDDENLY) || atom.as(Meaning.Circumstance.class)
                .filter(it -> it.words().get(0) instanceof Severity || it.words().get(0) instanceof Occurrence).isPresent();
    }

    private List<Atom> from(int from) {
        List<Atom> atoms = new ArrayList<>();
        walk(start, true, from, from, 0, 0, List.of(), atoms);
        PhraseTree.Node first = start.next.get("^");
        if (first != null && (from == 0 || boundary(from - 1))) {
            walk(first, true, from, from, 0, 0, List.of(), atoms);
        }
        return atoms;
    }

    private boolean boundary(int at) {
        return boundary(sentence.get(at));
    }

    /** Whether a clause may end or begin there. */
    static boolean boundary(Token token) {
        String stem = token.stem();
        return token.comma() || stem.equals("and") || stem.equals("but") || stem.equals("then");
    }

    /** @param arrived whether the node was just come to; what goes on from the same place is walked then, and not again */
    private void walk(PhraseTree.Node node, boolean arrived, int from, int at, int words, int skipped, List<Atom> within,
            List<Atom> into) {
        if (arrived) {
            for (PhraseTree.Node other : node.also) {
                walk(other, true, from, at, words, skipped, within, into);
            }
        }
        boolean last = at == sentence.size();
        if (words > 0 && (last || boundary(at))) {
            PhraseTree.Node end = node.next.get("$");
            if (end != null && !end.meanings.isEmpty()) {
                into.add(new Atom(from, at, words, end.meanings, within));
            }
        }
        if (last) {
            return;
        }
        PhraseTree.Node next = node.next.get(sentence.get(at).stem());
        if (next != null) {
            step(next, from, at + 1, words + 1, skipped, within, into);
        }
        for (Sayings.StandIn other : sayings.standIns(sentence.get(at).stem())) {
            PhraseTree.Node meant = node.next.get(other.meant());
            int to = at + other.words().size();
            if (meant != null && stands(other.words(), at)) {
                step(meant, from, to, words + other.words().size(), skipped, within, into);
            }
        }
        if (words > 0 && skipped < MOST_SKIPPED) {
            if (sayings.skipped(sentence.get(at).stem())) {
                walk(node, false, from, at + 1, words, skipped + 1, within, into);
            }
            Atom adverb = adverbs.get(at);
            if (adverb != null && within.size() < 2) {
                List<Atom> more = new ArrayList<>(within);
                more.add(adverb);
                walk(node, false, from, adverb.to(), words, skipped, List.copyOf(more), into);
            }
        }
    }

    /** Comes to the next place of a phrase. */
    private void step(PhraseTree.Node next, int from, int to, int words, int skipped, List<Atom> within, List<Atom> into) {
        List<Meaning> ends = next.ends();
        if (!ends.isEmpty() && (within.isEmpty() || !onlyNarrows(ends))) {
            into.add(new Atom(from, to, words, ends, within));
        }
        walk(next, true, from, to, words, skipped, within, into);
    }

    /** Whether these words stand there. */
    private boolean stands(List<String> words, int at) {
        if (at + words.size() > sentence.size()) {
            return false;
        }
        for (int i = 0; i < words.size(); i++) {
            if (!words.get(i).equals(sentence.get(at + i).stem())) {
                return false;
            }
        }
        return true;
    }

    /** Where and when is said in one breath: "gets really heavy in fast bends" has no "getting in" in it. */
    private static boolean onlyNarrows(List<Meaning> meanings) {
        return meanings.stream().allMatch(Meaning.Circumstance.class::isInstance);
    }

    private static int weight(Atom atom) {
        int within = atom.within().stream().mapToInt(it -> WITHIN * it.words()).sum();
        if (atom.is(Meaning.Sign.PLAIN) && atom.words() == 1 && atom.meanings().size() == 1) {
            return 1;
        }
        return atom.words() * WORD + (atom.words() - 1) * NEXT_WORD + within;
    }

    private List<Atom> best() {
        int[] best = new int[sentence.size() + 1];
        Atom[] chosen = new Atom[sentence.size()];
        for (int from = sentence.size() - 1; from >= 0; from--) {
            best[from] = best[from + 1];
            for (Atom atom : found.get(from)) {
                int weight = weight(atom) + best[atom.to()];
                if (weight > best[from]) {
                    best[from] = weight;
                    chosen[from] = atom;
                }
            }
        }
        List<Atom> atoms = new ArrayList<>();
        for (int at = 0; at < sentence.size();) {
            if (chosen[at] == null) {
                at++;
            } else {
                atoms.add(chosen[at]);
                at = chosen[at].to();
            }
        }
        return atoms;
    }
}
