package camberwell.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;

/**
 * Standard output whose failures are not lost: a print stream keeps them to itself. At the first one the command ends,
 * since nobody would see what it goes on to find.
 */
final class Written extends OutputStream {

    /** Nothing more can be written. */
    static final class Lost extends RuntimeException {

        private static final long serialVersionUID = 1;

        private final boolean unwanted;

        private Lost(IOException cause) {
            super(cause.getMessage(), cause, false, false);
            String message = String.valueOf(cause.getMessage()).toLowerCase(Locale.ROOT);
            this.unwanted = message.contains("pipe");
        }

        /** Whether whoever reads it has seen enough, as {@code head} does, and closed the pipe. */
        boolean unwanted() {
            return unwanted;
        }
    }

    private final OutputStream out;

    Written(OutputStream out) {
        this.out = out;
    }

    @Override
    public void write(int one) {
        write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) {
        try {
            out.write(bytes, from, length);
        } catch (IOException e) {
            throw new Lost(e);
        }
    }

    @Override
    public void flush() {
        try {
            out.flush();
        } catch (IOException e) {
            throw new Lost(e);
        }
    }
}
