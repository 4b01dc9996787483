package camberwell.saying;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * The phrases, word by word. A choice branches the tree, and is not written out before: "(no|little) front (grip|bite)" is five
 * words to compare, not four phrases. So does a class of words, "{front}".
 */
final class PhraseTree {

    /** A place in the tree. */
    static final class Node {
        final Map<String, Node> next = new HashMap<>(2);
        /** Where phrases go on that have a class of words up to here: one place for all of its words. */
        List<Node> also = List.of();
        List<Meaning> meanings = List.of();

        /** What phrases mean that end here. */
        List<Meaning> ends() {
            if (also.isEmpty()) {
                return meanings;
            }
            List<Meaning> all = new ArrayList<>(meanings);
            for (Node other : also) {
                for (Meaning meaning : other.ends()) {
                    if (!all.contains(meaning)) {
                        all.add(meaning);
                    }
                }
            }
            return all;
        }
    }

    private final Node root = new Node();
    private final Map<String, List<List<String>>> classes;
    private final Function<String, List<String>> stems;
    private final Consumer<List<String>> joining;

    /**
     * An empty tree.
     *
     * @param stems the words of a text, as they are compared
     * @param joining puts together what is one word in two places
     */
    PhraseTree(Function<String, List<String>> stems, Consumer<List<String>> joining) {
        this(new HashMap<>(), stems, joining);
    }

    private PhraseTree(Map<String, List<List<String>>> classes, Function<String, List<String>> stems,
            Consumer<List<String>> joining) {
        this.classes = classes;
        this.stems = stems;
        this.joining = joining;
    }

    /** An empty tree with the same classes of words. */
    PhraseTree beside(Function<String, List<String>> itsStems) {
        return new PhraseTree(classes, itsStems, joining);
    }

    Node root() {
        return root;
    }

    /** The words of a class, which may be added to. */
    List<List<String>> ofClass(String name) {
        return classes.computeIfAbsent(name, key -> new ArrayList<>());
    }

    /**
     * Adds a phrase.
     *
     * @param words takes every word of it
     * @param unknown is told the name of each class that there is none of
     */
    void add(String phrase, Meaning meaning, Set<String> words, Consumer<String> unknown) {
        for (Node end : grow(phrase, words, unknown)) {
            if (end.meanings.isEmpty()) {
                end.meanings = new ArrayList<>(1);
            }
            if (!end.meanings.contains(meaning)) {
                end.meanings.add(meaning);
            }
        }
    }

    /** Where a phrase ends in the tree, which grows as far as need be. */
    private List<Node> grow(String phrase, Set<String> words, Consumer<String> unknown) {
        List<Node> ends = List.of(root);
        int at = 0;
        while (at < phrase.length()) {
            int open = opening(phrase, at);
            int close = open < 0 ? -1 : phrase.indexOf(phrase.charAt(open) == '(' ? ')' : '}', open);
            List<String> plain = stems.apply(phrase.substring(at, close < 0 ? phrase.length() : open));
            joining.accept(plain);
            ends = step(ends, List.of(plain), words);
            if (close < 0) {
                break;
            }
            ends = step(ends, choices(phrase.substring(open, close), unknown), words);
            if (phrase.charAt(open) == '{') {
                ends = List.of(together(ends));
            }
            at = close + 1;
        }
        return ends;
    }

    /** One place for all of these: a class of ten words after one of twenty is thirty words in the tree, not two hundred. */
    private static Node together(List<Node> ends) {
        Node one = new Node();
        for (Node end : ends) {
            if (end.also.isEmpty()) {
                end.also = new ArrayList<>(1);
            }
            end.also.add(one);
        }
        return one;
    }

    private static int opening(String phrase, int at) {
        int choice = phrase.indexOf('(', at);
        int named = phrase.indexOf('{', at);
        return choice < 0 ? named : named < 0 ? choice : Math.min(choice, named);
    }

    private List<List<String>> choices(String opened, Consumer<String> unknown) {
        String inside = opened.substring(1);
        if (opened.charAt(0) == '{') {
            List<List<String>> named = classes.get(inside);
            if (named == null) {
                unknown.accept(inside);
            }
            return named == null ? List.of(List.of()) : named;
        }
        List<List<String>> choices = new ArrayList<>();
        for (String choice : inside.split("\\|", -1)) {
            choices.add(stems.apply(choice));
        }
        return choices;
    }

    private static List<Node> step(List<Node> from, List<List<String>> choices, Set<String> words) {
        choices.forEach(words::addAll);
        List<Node> to = new ArrayList<>(from.size() * choices.size());
        for (Node start : from) {
            for (List<String> choice : choices) {
                Node node = start;
                for (String stem : choice) {
                    Node next = node.next.get(stem);
                    if (next == null) {
                        next = new Node();
                        node.next.put(stem, next);
                    }
                    node = next;
                }
                to.add(node);
            }
        }
        return to;
    }
}
