package camberwell.saying;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * What a question or a wish takes for granted. A question that asks what is or would be, "will it push with more wing?", tells of
 * nothing; one about what to do against a thing takes the thing for granted: "how do I stop it pushing?", "what would make it
 * less loose?", "I wish it did not snap".
 */
final class Question {

    /** A question of no more words than this asks whether it is so. */
    private static final int SHORT = 3;
    private static final Set<String> WHAT = Set.of("what", "which", "who", "where");
    private static final Set<String> WHETHER = Set.of("will", "would", "could", "can", "should", "do", "does", "did", "is", "are",
            "was", "were", "am", "has", "have", "may", "might", "shall", "any");
    private static final Set<String> ASKING = Set.of("how", "what", "can", "could", "is", "any", "do", "help", "which", "tell");
    /** What is done to a thing that is there, and stands straight before it. */
    private static final Set<String> REMEDIES = Set.of("stop", "fix", "cure", "reduc", "prevent", "avoid", "tame", "kill",
            "against", "rid", "minimi", "solv", "resolv", "combat", "lessen", "eliminat");
    /** Of a state that is wanted. */
    private static final Set<String> TO_MAKE = Set.of("make", "get", "keep", "have", "give", "find");
    private static final Set<String> BETTER = Set.of("more", "better", "calmer", "stabler", "quicker", "fast", "sharper");
    private static final int LATEST_WISH = 5;
    private static final Set<String> WISHES = Set.of("wish", "want", "need", "prefer");
    private static final Set<String> WISHERS = Set.of("i", "we", "would", "had", "just", "really", "only");
    private static final Set<String> CONDITIONAL = Set.of("would", "had");
    private static final Token WISH = new Token("", "want");
    /** Words after a remedy that belong to it. */
    private static final Set<String> LINKS = Set.of("of", "from", "that", "it", "for", "if", "to", "against", "when", "about");

    private final List<Token> words;
    private final boolean asked;

    private Question(List<Token> words, boolean asked) {
        this.words = words;
        this.asked = asked;
    }

    /**
     * The words of a sentence that tell something: all, where it asks nothing; none, where it takes nothing for granted.
     */
    static List<Token> told(List<Token> sentence) {
        boolean asked = sentence.get(sentence.size() - 1).asked();
        Question question = new Question(asked ? sentence.subList(0, sentence.size() - 1) : sentence, asked);
        return question.granted();
    }

    private List<Token> granted() {
        int wish = wished();
        if (wish > 0) {
            return words.subList(wish, words.size());
        }
        boolean wishes = stem(0).equals("could") && (stem(1).equals("do") || stem(1).equals("use"));
        boolean asks = ASKING.contains(stem(0)) && !wishes;
        if (asks && words.size() > SHORT) {
            int from = remedied();
            if (from > 0 && from < words.size()) {
                return words.subList(from, words.size());
            }
            int wanted = wanted();
            if (wanted > 0) {
                return wish(wanted);
            }
        }
        if (!asked) {
            return words;
        }
        boolean whether = WHETHER.contains(stem(0)) && (words.size() < 2 || !stem(1).equals("not"));
        return words.size() <= SHORT || WHAT.contains(stem(0)) || whether ? List.of() : words;
    }

    /** "What would make it less loose?" is the wish for less of it. */
    private List<Token> wish(int from) {
        List<Token> state = new ArrayList<>(List.of(WISH));
        state.addAll(words.subList(from, words.size()));
        return state;
    }

    /** Where the thing begins that is wished away, "I wish it did not snap", "I'd like it to stop pushing"; -1 for nowhere. */
    private int wished() {
        for (int at = 0; at < Math.min(LATEST_WISH, words.size()); at++) {
            boolean wishes = WISHES.contains(stem(at)) && (at == 0 || WISHERS.contains(stem(at - 1)))
                    || stem(at).equals("like") && at > 0 && CONDITIONAL.contains(stem(at - 1));
            if (wishes) {
                for (int later = at + 1; later < words.size() && !words.get(later).comma(); later++) {
                    boolean not = stem(later).equals("not") && !stem(later + 1).equals("so") && !stem(later + 1).equals("as");
                    if (not || stem(later).equals("stop")) {
                        return linked(later + 1);
                    }
                }
            }
        }
        return -1;
    }

    /** Where the thing begins that is taken for granted; -1 for nowhere. */
    private int remedied() {
        for (int at = 1; at < words.size(); at++) {
            String stem = stem(at);
            boolean something = stem.equals("about") && (stem(at - 1).equals("something") || stem(at - 1).equals("do"));
            boolean normal = (stem.equals("make") || stem.equals("caus"))
                    && (stem(at - 1).equals("what") || stem(at - 1).equals("that"))
                    || stem.equals("normal") || stem.equals("why") || stem.equals("how") && stem(at - 1).equals("know");
            if (REMEDIES.contains(stem) || something || normal) {
                return linked(at + 1);
            }
            if (words.get(at).typed().equalsIgnoreCase("so")
                    && (stem(at + 1).equals("it") || stem(at + 1).equals("that") || stem(at + 1).equals("the"))) {
                int not = not(at);
                return not < 0 ? -1 : not + 1;
            }
        }
        return -1;
    }

    /** Where the state begins that is asked for, "how can I make the rear more stable"; -1 for nowhere. */
    private int wanted() {
        for (int at = 1; at < words.size(); at++) {
            if (stem(at).equals("less") && at + 1 < words.size()) {
                return at;
            }
            if (TO_MAKE.contains(stem(at)) && words.subList(at, words.size()).stream()
                    .anyMatch(word -> BETTER.contains(word.stem()))) {
                return at + 1;
            }
        }
        return -1;
    }

    /** "So it does not snap": after what is denied there. */
    private int not(int from) {
        for (int at = from; at < words.size(); at++) {
            if (stem(at).equals("not")) {
                return at;
            }
        }
        return -1;
    }

    private int linked(int from) {
        int at = from;
        while (at < words.size() && LINKS.contains(stem(at))) {
            at++;
        }
        return at;
    }

    private String stem(int at) {
        return at < words.size() ? words.get(at).stem() : "";
    }
}
