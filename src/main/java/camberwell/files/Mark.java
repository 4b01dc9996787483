package camberwell.files;

import java.util.zip.Adler32;
import java.util.zip.CRC32;
import java.util.zip.Checksum;

/**
 * By what bytes are known again: two checksums of 32 bits of all that was added. A start has no time for more, and whoever forges
 * a file to be taken for another gets what was kept for the other.
 */
public final class Mark {

    private final Checksum crc = new CRC32();
    private final Checksum adler = new Adler32();

    /** Adds {@code bytes} to what it is the mark of. */
    public Mark add(byte[] bytes) {
        crc.update(bytes, 0, bytes.length);
        adler.update(bytes, 0, bytes.length);
        return this;
    }

    /** Both checksums, in hexadecimal digits. */
    public String text() {
        return Long.toHexString(crc.getValue()) + "-" + Long.toHexString(adler.getValue());
    }
}
