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
        String[] words = text.toString().split("[^\\p{L}\\p{N}.-]+");
        if (words.length < 2) {
            return;
        }
        String one = words[random.nextInt(words.length)];
        int at = text.indexOf(one, random.nextInt(text.length() + 1));
        if (at >= 0 && !one.isEmpty()) {
            text.replace(at, at + one.length(), words[random.nextInt(words.length)]);
        }
    }
}
