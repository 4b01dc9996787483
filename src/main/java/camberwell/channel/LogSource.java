package camberwell.channel;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.problem.Siblings;
import java.io.ByteArrayInputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.zip.GZIPInputStream;

/** A log as it lies there: a file or a stream, packed with gzip or not. Read once, from front to back. */
public final class LogSource implements Closeable {

    private static final int HEAD = 1 << 16;
    private static final int BUFFER = 1 << 16;

    private final String name;
    private final byte[] head;
    private final InputStream all;

    private LogSource(String name, InputStream raw) throws IOException {
        this.name = name;
        byte[] magic = raw.readNBytes(2);
        InputStream whole = new SequenceInputStream(new ByteArrayInputStream(magic), raw);
        boolean packed = magic.length == 2 && (magic[0] & 0xff) == 0x1f && (magic[1] & 0xff) == 0x8b;
        InputStream plain = packed ? new GZIPInputStream(whole, BUFFER) : whole;
        head = plain.readNBytes(HEAD);
        all = new SequenceInputStream(new ByteArrayInputStream(head), plain);
    }

    /**
     * Opens a file.
     *
     * @param name how problems name it
     * @throws ProblemsException if it cannot be read
     */
    public static LogSource open(String name, Path file) {
        if (Files.isDirectory(file)) {
            throw problem(name, "this is a folder, not a log", Optional.empty());
        }
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            // A pipe or a device may never end, or never begin.
            throw problem(name, "this is no plain file; a log that another program writes goes in by standard input, named -",
                    Optional.empty());
        }
        try {
            InputStream in = Files.newInputStream(file);
            try {
                return new LogSource(name, in);
            } catch (IOException e) {
                in.close();
                throw e;
            }
        } catch (NoSuchFileException e) {
            throw new ProblemsException(Problem.missing(name, Siblings.nearestFile(file)));
        } catch (AccessDeniedException e) {
            throw problem(name, "the file may not be read", Optional.empty());
        } catch (IOException e) {
            throw broken(name, e);
        }
    }

    /**
     * Reads a stream.
     *
     * @param name how problems name it
     * @throws ProblemsException if it cannot be read
     */
    public static LogSource of(String name, InputStream in) {
        try {
            return new LogSource(name, in);
        } catch (IOException e) {
            throw broken(name, e);
        }
    }

    /** A problem with the bytes themselves. */
    static ProblemsException broken(String name, IOException e) {
        boolean packing = e instanceof java.util.zip.ZipException || e instanceof java.io.EOFException;
        return packing ? problem(name, "the gzip file is damaged or cut off; pack the log anew, or give it unpacked",
                Optional.empty()) : new ProblemsException(Problem.unreadable(name, e));
    }

    private static ProblemsException problem(String name, String message, Optional<String> suggestion) {
        return new ProblemsException(Problem.of(name, message, suggestion));
    }

    /** How problems name it. */
    public String name() {
        return name;
    }

    /** Its first bytes, unpacked. */
    byte[] head() {
        return Arrays.copyOf(head, head.length);
    }

    /** All of it, unpacked; to be asked for once. */
    InputStream stream() {
        return all;
    }

    @Override
    public void close() throws IOException {
        all.close();
    }
}
