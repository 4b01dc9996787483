package camberwell.problem;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The bytes of a file as text, or where they are none.
 *
 * @param text of the file, up to the first byte that is none of UTF-8
 * @param problem with the place of that byte; empty where all is text
 */
public record Utf8(String text, Optional<Problem> problem) {

    /** Decodes a file. */
    public static Utf8 of(String file, byte[] bytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        CharBuffer decoded = CharBuffer.allocate(bytes.length + 1);
        boolean broken = decoder.decode(ByteBuffer.wrap(bytes), decoded, true).isError();
        String text = decoded.flip().toString();
        return new Utf8(text, broken ? Optional.of(after(file, text, "is not UTF-8 text; save the file as UTF-8"))
                : Optional.empty());
    }

    /** What is wrong straight after the text before it. */
    public static Problem after(String file, String before, String message) {
        int line = (int) before.chars().filter(character -> character == '\n').count() + 1;
        return Problem.error(file, line, before.length() - before.lastIndexOf('\n'), message);
    }
}
