package camberwell.cli;

import java.nio.charset.StandardCharsets;
import java.util.Random;

/** What a slip of the hand, a broken disk or a stranger may do to a file or a line. */
final class Damage {

    private static final String[] PIECES = {"\n", "\r\n", "  ", "\t", ":", ": ", "{", "}", "[", "]", ",", ";", "&a", "*a",
        "!!x.y.Z x", "#", "\"", "'", "|", ">", "- ", "? ", "---\n", "...\n", "<<: ", "~", "\uFEFF", "\u0085",
        "\u202e", "\u001b[31m", "\0", "9999999999999999999999", "-1", "1e-301", "0,2", "NaN", "°C", "<script>", "../",
        "\uD83C\uDFCE", "rule", "end", "when", "then", "> System.exit(1);", "eval(", "import x.y.*;", "null", "%s"};

    private Damage() {
    }

    /** {@code text} with one to five faults. */
    static byte[] of(String text, Random random) {
        StringBuilder damaged = new StringBuilder(text);
        for (int i = random.nextInt(5); i >= 0; i--) {
            int at = random.nextInt(damaged.length() + 1);
            int length = Math.min(damaged.length() - at, 1 + random.nextInt(60));
            switch (random.nextInt(6)) {
                case 0, 1 -> damaged.insert(at, PIECES[random.nextInt(PIECES.length)]);
                case 2 -> damaged.delete(at, at + length);
                case 3 -> damaged.insert(at, damaged.substring(at, at + length));
                case 4 -> damaged.setLength(at);
                default -> swapWords(damaged, random);
            }
        }
        byte[] bytes = damaged.toString().getBytes(StandardCharsets.UTF_8);
        if (random.nextInt(8) == 0) {
            return of(bytes, random);
        }
        return bytes;
    }

    /** Bytes with a few of them turned. */
    static byte[] of(byte[] bytes, Random random) {
        byte[] damaged = bytes.clone();
        for (int i = random.nextInt(6); i >= 0 && damaged.length > 0; i--) {
            damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
        }
        return damaged;
    }

    /** A word or a number takes the place of another: a file that parses and is wrong. */
    private static void swapWords(StringBuilder text, Random random) {
        if (text.length() == 0) {
            return;
        }
        int from = start(text, random.nextInt(text.length()));
        String word = text.substring(from, end(text, from));
        int at = start(text, random.nextInt(text.length()));
        text.replace(at, end(text, at), word);
    }

    /** Where the word that begins there ends. */
    private static int end(CharSequence text, int start) {
        int end = start;
        while (end < text.length() && isOfWord(text.charAt(end))) {
            end++;
        }
        return end;
    }

    /** Where the word at that place begins. */
    private static int start(CharSequence text, int place) {
        int start = place;
        while (start > 0 && isOfWord(text.charAt(start - 1))) {
            start--;
        }
        return start;
    }

    private static boolean isOfWord(char letter) {
        return Character.isLetterOrDigit(letter) || letter == '.' || letter == '-';
    }
}
