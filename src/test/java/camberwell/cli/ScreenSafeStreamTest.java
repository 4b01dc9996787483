package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ScreenSafeStreamTest {

    private static String shown(String text, boolean styled, int piece) {
        ByteArrayOutputStream screen = new ByteArrayOutputStream();
        try (OutputStream safe = new ScreenSafeStream(screen, styled)) {
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            for (int at = 0; at < bytes.length; at += piece) {
                safe.write(bytes, at, Math.min(piece, bytes.length - at));
            }
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return screen.toString(StandardCharsets.UTF_8);
    }

    @Test
    @DisplayName("what steers a screen is shown as a mark: cursor and title sequences, bells, C1 controls, overrides")
    void steering() {
        assertEquals("a\uFFFD]0;titleb", shown("a\u001b]0;titleb", true, 99));
        assertEquals("\uFFFD[2Jx", shown("\u001b[2Jx", true, 99));
        assertEquals("\uFFFD[31mred", shown("\u001b[31mred", false, 99));
        assertEquals("real\uFFFDfake\r\n", shown("real\rfake\r\n", false, 99));
        assertEquals("\uFFFD\uFFFD\uFFFDx", shown("\u0007\u009b\u202ex", true, 99));
    }

    @Test
    @DisplayName("text, degrees, arrows, line ends and the styles of a styled screen go through, in pieces of any size")
    void text() {
        String text = "\u001b[1mFront camber\u001b[0m: -2.5° → -2.7°\n\tümlaut \uD83C\uDFCE \u2022 \u00a0";
        for (int piece = 1; piece < 12; piece++) {
            assertEquals(text, shown(text, true, piece));
        }
    }

    @Property
    @Label("however it is cut into pieces, the same is shown, and nothing in it steers")
    void pieces(@ForAll String text) {
        String whole = shown(text, true, 9999);
        assertEquals(whole, shown(text, true, 1));
        assertTrue(whole.chars().noneMatch(c -> c < 0x20 && c != '\n' && c != '\t' && c != '\r' && c != 0x1B
                || c >= 0x7F && c < 0xA0 || c >= 0x202A && c <= 0x202E), whole);
    }

    @Test
    @DisplayName("a screen that takes no more is not passed over in silence")
    void lost() {
        PrintStream full = new PrintStream(new OutputStream() {
            @Override
            public void write(int one) throws IOException {
                throw new IOException("no space left");
            }
        });
        PrintStream safe = new PrintStream(new ScreenSafeStream(full, false));
        safe.print("advice");
        assertTrue(safe.checkError());
    }
}
