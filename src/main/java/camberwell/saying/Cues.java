package camberwell.saying;

import camberwell.classifier.Features;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.StringTokenizer;
import java.util.function.Predicate;

/**
 * What a saying is taken by as a whole: its words as typed, their stems with slips mended, the phrases in it whatever they are
 * to each other, and what the grammar makes of it.
 */
final class Cues {

    private static final String ENDS = ".,;:!?()";
    private static final String BETWEEN = " \t\r\n\"-\u2013\u2014/";

    private final List<String> words = new ArrayList<>();
    private final List<String> others = new ArrayList<>();
    private final Set<String> strong = new LinkedHashSet<>();

    private Cues() {
    }

    /** Those of a saying, without what the grammar makes of it. */
    static Cues of(Sayings sayings, String said) {
        Cues cues = new Cues();
        cues.split(said);
        for (List<Token> sentence : sayings.sentences(said)) {
            cues.phrases(Cover.of(sayings, sentence));
            sentence.forEach(token -> cues.others.add("stem " + token.stem()));
        }
        return cues;
    }

    /** Those of a saying, with what the grammar makes of it. */
    static Cues of(Sayings sayings, String said, Heard heard) {
        Cues cues = of(sayings, said);
        cues.grammar(heard);
        return cues;
    }

    /** The words of a text alone. */
    static List<String> words(String said) {
        Cues cues = new Cues();
        cues.split(said);
        return cues.words();
    }

    /** To tell symptoms by. */
    int[] ofSymptoms() {
        return Features.of(words, others, List.of());
    }

    /** To tell details by: those that are named count for more. */
    int[] ofDetails() {
        return Features.of(words, others, List.copyOf(strong));
    }

    /** To tell both by at once, with the letters of words that are not common. */
    int[] ofBoth(Predicate<String> common) {
        List<String> all = new ArrayList<>(others);
        all.addAll(strong);
        return Features.withLetters(words, all, common);
    }

    /** The words as typed. */
    List<String> words() {
        return List.copyOf(words);
    }

    private void split(String said) {
        for (StringTokenizer pieces = new StringTokenizer(Tokens.plain(said), BETWEEN + ENDS, true); pieces.hasMoreTokens();) {
            String piece = pieces.nextToken();
            if (ENDS.contains(piece)) {
                if (!words.isEmpty() && !words.get(words.size() - 1).equals(",")) {
                    words.add(piece.equals(Token.ASKED) ? piece : ",");
                }
            } else if (!BETWEEN.contains(piece)) {
                words.add(piece.chars().allMatch(Character::isDigit) ? "#" : piece);
            }
        }
    }

    private void phrases(List<Atom> atoms) {
        String before = "^";
        for (Atom atom : atoms) {
            StringBuilder names = new StringBuilder();
            for (Meaning meaning : atom.meanings()) {
                if (meaning != Meaning.Sign.PLAIN) {
                    others.add(name(meaning));
                    names.append(name(meaning));
                }
                named(meaning);
            }
            atom.within().forEach(inside -> inside.meanings().forEach(this::named));
            if (names.length() > 0) {
                others.add(before + ">" + names);
                before = names.toString();
            }
        }
    }

    private static String name(Meaning meaning) {
        if (meaning instanceof Meaning.Complaint complaint) {
            return "complaint " + complaint.symptom().id();
        }
        if (meaning instanceof Meaning.Thing thing) {
            return "thing " + thing.name();
        }
        if (meaning instanceof Meaning.Doing doing) {
            return "doing " + doing.name();
        }
        if (meaning instanceof Meaning.Circumstance circumstance) {
            return "where " + circumstance.words().get(0).id() + circumstance.role();
        }
        return "sign " + meaning;
    }

    private void named(Meaning meaning) {
        if (meaning instanceof Meaning.Circumstance circumstance) {
            circumstance.words().forEach(word -> strong.add("named " + word.id()));
        } else if (meaning instanceof Meaning.Complaint complaint) {
            complaint.words().forEach(word -> strong.add("named " + word.id()));
        } else if (meaning instanceof Meaning.Thing thing && !thing.place().isEmpty()) {
            strong.add("named " + thing.place());
        }
    }

    private void grammar(Heard heard) {
        boolean whole = heard.notUnderstood().isEmpty() && heard.unclear().isEmpty();
        boolean one = heard.told().size() == 1;
        others.add("told " + heard.told().size() + whole);
        for (Told told : heard.told()) {
            others.add("tells " + told.symptom().id());
            others.add("tells " + told.symptom().id() + whole + one);
            for (Word word : told.words()) {
                others.add("tells " + word.id() + whole + one);
                strong.add("tells " + word.id());
                if (one) {
                    strong.add("tells alone " + word.id());
                }
            }
            told.notIn().forEach(word -> strong.add("not " + word.id()));
        }
        if (heard.told().isEmpty()) {
            for (Heard.Unclear unclear : heard.unclear()) {
                for (Told told : unclear.mayBe()) {
                    others.add("may be " + told.symptom().id());
                    told.words().forEach(word -> others.add("loose " + word.id()));
                }
            }
        }
        heard.loose().forEach(word -> others.add("loose " + word.id()));
        if (heard.fine()) {
            others.add("fine");
        }
        heard.surface().ifPresent(surface -> strong.add("tells " + surface.id()));
    }
}
