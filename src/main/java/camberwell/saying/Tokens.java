package camberwell.saying;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.StringTokenizer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes what was said apart: sentences, and their words in small letters without accents. */
final class Tokens {

    private static final Pattern PIECE =
            Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}'’]*|->|\u2192|[,.;!?\\n()\\u2013\\u2014/&+]| - ");
    /** The trade's shorthand, which a comma or small letters would make something else of: "u/s", "US", "o/s", "OS". */
    private static final Pattern UNDERSTEER = Pattern.compile("\\b(?:[uU]/[sS]|US)\\b");
    private static final Pattern OVERSTEER = Pattern.compile("\\b(?:[oO]/[sS](?! *(?:front|rear))|OS)\\b");
    private static final Pattern ACCENT = Pattern.compile("\\p{M}+");
    private static final Set<String> NUMBERS = Set.of("two", "three", "four", "five", "six", "seven", "eight", "nine",
            "ten", "eleven", "twelve", "fifteen", "twenty", "thirty", "zwei", "drei", "vier", "funf", "sechs", "zehn", "deux",
                    "trois", "quatre", "cinq",
            "dix", "dos", "cuatro", "cinco", "diez", "quattro", "cinque", "dieci");

    private static final Set<String> UNITS = Set.of("c", "f", "k", "deg", "degs", "kph", "kmh", "mph", "psi", "bar", "mm", "m",
            "kg");
    private static final Set<String> ABOUT = Set.of("about", "around", "roughly", "like", "nearly", "almost", "some",
            "approximately", "maybe", "circa");
    private static final Set<String> TO_NUMBER = Set.of("or", "to");

    /** Words before a dash that only say where. */
    private static final int LABEL = 2;

    private Tokens() {
    }

    /** The sentences of what was said, each at least one word long. */
    static List<List<Token>> sentences(String said, Map<String, String> same, Spelling spelling) {
        List<List<Token>> sentences = new ArrayList<>();
        List<Token> sentence = new ArrayList<>();
        Matcher pieces = PIECE.matcher(longhand(said));
        while (pieces.find()) {
            String piece = pieces.group().strip();
            // A line's end, which is all white space, ends a sentence too.
            if (piece.isEmpty() || ".;!?".contains(piece)) {
                if (piece.equals("?")) {
                    sentence.add(new Token(piece, Token.ASKED));
                }
                end(sentence, sentences);
                sentence = new ArrayList<>();
            } else if (piece.equals("\u00e8") || piece.equals("\u00c8")) {
                // Italian "is"; without its accent it would be "and".
                continue;
            } else if (Character.isLetterOrDigit(piece.codePointAt(0))) {
                sentence.addAll(word(piece, same, spelling));
            } else if (piece.equals("->") || piece.equals("\u2192")) {
                sentence.add(new Token(piece, "then"));
            } else if (piece.equals("&") || piece.equals("+")) {
                sentence.add(new Token(piece, "and"));
            } else if (!piece.equals("-") || sinceComma(sentence) > LABEL) {
                // "Exit - oversteer" is one statement with its label.
                sentence.add(new Token(piece, ","));
            }
        }
        end(sentence, sentences);
        return sentences;
    }

    /** Makes one number of "eight or nine", "3 - 4", "about ten". */
    private static void numbers(List<Token> sentence) {
        for (int at = 0; at + 1 < sentence.size(); at++) {
            boolean number = number(sentence, at + 1);
            if (number && ABOUT.contains(sentence.get(at).stem()) && (at == 0 || !number(sentence, at - 1))) {
                sentence.set(at + 1, joined(sentence.get(at), sentence.get(at + 1)));
                sentence.remove(at);
                at = Math.max(-1, at - 2);
            } else if (number(sentence, at) && number && !sentence.get(at).typed().isEmpty()
                    && !sentence.get(at + 1).typed().isEmpty()) {
                sentence.set(at, joined(sentence.get(at), sentence.remove(at + 1)));
                at--;
            } else if (number(sentence, at) && number(sentence, at + 2) && TO_NUMBER.contains(sentence.get(at + 1).stem())) {
                sentence.set(at, joined(joined(sentence.get(at), sentence.remove(at + 1)), sentence.remove(at + 1)));
                at--;
            }
        }
    }

    private static boolean number(List<Token> sentence, int at) {
        return at < sentence.size() && sentence.get(at).stem().equals("#");
    }

    private static Token joined(Token one, Token other) {
        return new Token((one.typed() + " " + other.typed()).strip(), other.stem());
    }

    private static String longhand(String said) {
        return said.indexOf('/') < 0 && said.indexOf('S') < 0 ? said
                : OVERSTEER.matcher(UNDERSTEER.matcher(said).replaceAll("understeer")).replaceAll("oversteer");
    }

    private static int sinceComma(List<Token> sentence) {
        int words = 0;
        for (int i = sentence.size() - 1; i >= 0 && !sentence.get(i).comma(); i--) {
            words++;
        }
        return words;
    }

    private static void end(List<Token> sentence, List<List<Token>> sentences) {
        numbers(sentence);
        if (sentence.stream().anyMatch(token -> !token.comma() && !token.asked())) {
            sentences.add(sentence);
        }
    }

    /** One word as typed; a contraction or another spelling may stand for several. */
    private static List<Token> word(String typed, Map<String, String> same, Spelling spelling) {
        List<Token> tokens = new ArrayList<>();
        for (String plain : spelled(plain(typed), same).split(" ")) {
            if (numberedTurn(plain)) {
                tokens.add(new Token(typed, "turn"));
                tokens.add(new Token("", "#"));
                continue;
            }
            String stem = figure(plain) || NUMBERS.contains(plain) ? "#" : Stem.of(plain);
            stem = Stem.of(same.getOrDefault(stem, stem));
            tokens.add(new Token(tokens.isEmpty() ? typed : "", spelling == null ? stem : spelling.right(plain, stem)));
        }
        return tokens;
    }

    /** Whether it is a figure, with its unit written to it or not: "10c", "15mins". */
    private static boolean figure(String plain) {
        int digits = 0;
        while (digits < plain.length() && Character.isDigit(plain.charAt(digits))) {
            digits++;
        }
        return digits > 0 && (digits == plain.length() || UNITS.contains(plain.substring(digits)));
    }

    /** Whether it is "t7", which is turn seven. */
    private static boolean numberedTurn(String plain) {
        return plain.length() > 1 && plain.length() < 4 && plain.charAt(0) == 't'
                && plain.chars().skip(1).allMatch(Character::isDigit);
    }

    /** Some of the words of a sentence, as they were typed. */
    static String typed(List<Token> tokens) {
        StringBuilder text = new StringBuilder();
        for (Token token : tokens) {
            if (!token.typed().isEmpty() && !token.asked()) {
                text.append(text.length() == 0 || token.comma() ? "" : " ").append(token.typed());
            }
        }
        return text.toString();
    }

    /** The words of a phrase of the file, as they are compared. */
    static List<String> phrase(String phrase, Map<String, String> same) {
        List<String> stems = new ArrayList<>();
        for (StringTokenizer words = new StringTokenizer(phrase); words.hasMoreTokens();) {
            String word = words.nextToken();
            if (word.equals("^") || word.equals("$")) {
                stems.add(word);
            } else {
                word(word, same, null).forEach(token -> stems.add(token.stem()));
            }
        }
        return stems;
    }

    private static String spelled(String plain, Map<String, String> same) {
        // "Pushin' on the way in" leaves the last letter out.
        String text = plain.length() > 4 && plain.endsWith("in'") ? plain.substring(0, plain.length() - 1) + "g" : plain;
        if (text.endsWith("n't")) {
            String verb = text.substring(0, text.length() - 3);
            text = (verb.equals("wo") ? "will" : verb.equals("ca") ? "can" : verb) + " not";
        } else if (text.indexOf('\'') > 0) {
            String head = text.substring(0, text.indexOf('\''));
            String tail = text.substring(text.indexOf('\'') + 1);
            text = switch (tail) {
                case "s" -> head + " is";
                case "m", "re" -> head + " are";
                case "ll" -> head + " will";
                case "ve" -> head + " have";
                case "d" -> head + " had";
                case "" -> head;
                default -> head + " " + tail;
            };
        }
        return same.getOrDefault(text, text).replace('-', ' ');
    }

    /** In small letters, without accents and with a plain apostrophe. */
    static String plain(String typed) {
        String small = typed.toLowerCase(Locale.ROOT).replace('’', '\'');
        if (small.chars().allMatch(c -> c < 128)) {
            return small;
        }
        small = small.replace("ß", "ss");
        return ACCENT.matcher(Normalizer.normalize(small, Normalizer.Form.NFD)).replaceAll("");
    }
}
