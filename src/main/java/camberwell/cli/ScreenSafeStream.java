package camberwell.cli;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.util.Arrays;

/**
 * UTF-8 text on its way to a screen, without what would steer it. Names and texts come from strangers' files; a control
 * character, an escape sequence or a bidirectional override in one of them could hide what is printed or forge it. Each is
 * shown as U+FFFD. What remains are line ends, tabs and, on a styled screen, the sequences that set colour and weight
 * (ECMA-48, SGR), which can do no more than that.
 */
final class ScreenSafeStream extends FilterOutputStream {

    private static final byte[] REPLACEMENT = {(byte) 0xEF, (byte) 0xBF, (byte) 0xBD};
    private static final int ESCAPE = 0x1B;
    private static final int LONGEST = 16;

    private final boolean styled;
    /** A sequence that is not whole yet. */
    private final byte[] pending = new byte[LONGEST];
    private int held;

    ScreenSafeStream(OutputStream out, boolean styled) {
        super(out);
        this.styled = styled;
    }

    @Override
    public void write(int one) throws IOException {
        write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        int clean = from;
        for (int i = from; i < from + length; i++) {
            int one = bytes[i] & 0xFF;
            if (held == 0 && !suspicious(one)) {
                continue;
            }
            out.write(bytes, clean, i - clean);
            take(bytes[i]);
            clean = i + 1;
        }
        out.write(bytes, clean, from + length - clean);
    }

    /** Whether a byte is a control character or may begin one, a sequence or an override. */
    private static boolean suspicious(int one) {
        return one < 0x20 && one != '\n' && one != '\t' || one == 0x7F || one == 0xC2 || one == 0xE2;
    }

    private void take(byte one) throws IOException {
        pending[held++] = one;
        int first = pending[0] & 0xFF;
        if (first == '\r') {
            lineEnd(one);
        } else if (first == ESCAPE) {
            escape(one);
        } else if (first == 0xC2 && held == 2) {
            release((one & 0xFF) < 0xA0);
        } else if (first == 0xE2 && held == 3) {
            int second = pending[1] & 0xFF;
            int third = one & 0xFF;
            release(second == 0x80 && third >= 0xAA && third <= 0xAE || second == 0x81 && third >= 0xA6 && third <= 0xA9);
        } else if (first != 0xC2 && first != 0xE2) {
            release(true);
        }
    }

    /** A carriage return alone lets what follows be written over the line. */
    private void lineEnd(byte one) throws IOException {
        if (held == 2) {
            if (one == '\n') {
                release(false);
            } else {
                replaceFirst();
            }
        }
    }

    private void escape(byte one) throws IOException {
        boolean open = held == 1 || held == 2 && one == '['
                || held > 2 && held < LONGEST && (one >= '0' && one <= '9' || one == ';');
        if (!styled) {
            release(true);
        } else if (!open) {
            boolean sets = held > 2 && one == 'm';
            if (sets) {
                release(false);
            } else {
                replaceFirst();
            }
        }
    }

    /** The first byte steers; what is held behind it is looked at anew. */
    private void replaceFirst() throws IOException {
        byte[] rest = Arrays.copyOfRange(pending, 1, held);
        release(true);
        write(rest, 0, rest.length);
    }

    private void release(boolean replaced) throws IOException {
        int length = held;
        held = 0;
        out.write(replaced ? REPLACEMENT : pending, 0, replaced ? REPLACEMENT.length : length);
    }

    /** A print stream keeps its failures to itself; whoever asks this one is told. */
    @Override
    public void flush() throws IOException {
        super.flush();
        if (out instanceof PrintStream print && print.checkError()) {
            throw new IOException("what was printed is lost");
        }
    }

    @Override
    public void close() throws IOException {
        if (held > 0) {
            release(true);
        }
        super.close();
    }
}
