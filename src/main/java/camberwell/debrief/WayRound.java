package camberwell.debrief;

import camberwell.vocabulary.Turn;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Which way most turns of a circuit go, as people say it: {@code clockwise}, {@code mostly lefts}, {@code about the same}. */
final class WayRound {

    private static final Set<String> LEFT = Set.of("left", "lefts", "left-hand", "left-hander", "left-handers", "lefthanders",
            "anticlockwise", "anti-clockwise", "counterclockwise", "counter-clockwise");
    private static final Set<String> RIGHT = Set.of("right", "rights", "right-hand", "right-hander", "right-handers",
            "righthanders", "clockwise");
    private static final Set<String> BOTH = Set.of("both", "same", "equal", "equally", "even", "evenly", "either", "half");
    private static final Set<String> ROUND_IT = Set.of("a", "the", "it", "it's", "its", "is", "was", "i", "think", "mostly",
            "mainly", "most", "more", "few", "bit", "than", "go", "goes", "runs", "run", "to", "and", "about", "way", "ways",
            "turns", "turn", "corners", "circuit", "track", "as", "many", "of", "them", "direction", "directions", "just",
            "around", "round", "slightly", "much", "one", "ones");

    private WayRound() {
    }

    /** What these words say of it, if they say nothing else. */
    static Optional<Turn> said(String typed) {
        List<String> words = List.of(typed.strip().toLowerCase(Locale.ROOT).replace("anti clockwise", "anticlockwise")
                .replaceAll("[.,!?]+", " ").strip().split("\\s+"));
        boolean other = words.stream().anyMatch(word -> !LEFT.contains(word) && !RIGHT.contains(word) && !BOTH.contains(word)
                && !ROUND_IT.contains(word));
        Optional<String> first = words.stream().filter(word -> LEFT.contains(word) || RIGHT.contains(word)).findFirst();
        boolean ways = words.stream().anyMatch(LEFT::contains) && words.stream().anyMatch(RIGHT::contains);
        if (other || first.isEmpty() && words.stream().noneMatch(BOTH::contains)) {
            return Optional.empty();
        }
        // Of "more rights than lefts" the first counts, of "lefts and rights" neither.
        boolean even = first.isEmpty() || words.stream().anyMatch(BOTH::contains) || ways && !words.contains("than");
        return Optional.of(even ? Turn.BOTH : LEFT.contains(first.get()) ? Turn.LEFT : Turn.RIGHT);
    }
}
