package camberwell.pack;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The table of contents of a zip file (PKWARE's APPNOTE.TXT 6.3, sections 4.3.6 to 4.3.16), where it and the headers of the
 * entries tell one story: entry after entry from the first byte on without a gap, then the table, then the end, each
 * said the same of twice. Programs read a zip file by the one or by the other; of one that is taken all see the same files.
 */
final class ZipContents {

    private static final int LOCAL = 0x04034b50;
    private static final int LOCAL_LENGTH = 30;
    private static final int CENTRAL = 0x02014b50;
    private static final int CENTRAL_LENGTH = 46;
    private static final int DESCRIPTOR = 0x08074b50;
    private static final int END = 0x06054b50;
    private static final int END_LENGTH = 22;
    /** Sizes after the data, how well it was packed, and names in UTF-8; others encrypt or patch. */
    private static final int KNOWN_FLAGS = 0x080e;
    private static final int SIZES_AFTER = 0x0008;
    private static final int STORED = 0;
    private static final int DEFLATED = 8;
    /** Sizes of more than four gigabytes, and another name for the same entry. */
    private static final List<Integer> ODD_EXTRAS = List.of(0x0001, 0x7075);

    private final ByteBuffer zip;
    private final List<Entry> entries = new ArrayList<>();

    /**
     * One entry.
     *
     * @param name as the table has it
     * @param mode what a zip program of Unix says of its kind and permissions; 0 where none made it
     */
    record Entry(String name, int mode) {
    }

    private ZipContents(byte[] whole) {
        zip = ByteBuffer.wrap(whole).order(ByteOrder.LITTLE_ENDIAN);
    }

    /** Its entries in their order; empty where table and entries tell different stories. */
    static Optional<List<Entry>> of(byte[] whole) {
        ZipContents contents = new ZipContents(whole);
        try {
            return contents.read() ? Optional.of(contents.entries) : Optional.empty();
        } catch (IndexOutOfBoundsException e) {
            // Something points behind the end.
            return Optional.empty();
        }
    }

    private boolean read() {
        int end = zip.capacity() - END_LENGTH;
        while (end > 0 && zip.getInt(end) != END) {
            end--;
        }
        int count = two(end + 8);
        int table = zip.getInt(end + 16);
        if (zip.getInt(end) != END || zip.getInt(end + 4) != 0 || two(end + 10) != count
                || table + zip.getInt(end + 12) != end || end + END_LENGTH + two(end + 20) != zip.capacity()) {
            return false;
        }
        int at = table;
        int local = 0;
        for (int i = 0; i < count; i++) {
            if (zip.getInt(at) != CENTRAL || zip.getInt(at + 42) != local || !plain(at + 8, at + CENTRAL_LENGTH
                    + two(at + 28), two(at + 30))) {
                return false;
            }
            local = localEnd(at, local);
            if (local < 0) {
                return false;
            }
            entries.add(new Entry(text(at + CENTRAL_LENGTH, two(at + 28)), zip.getInt(at + 38) >>> 16));
            at += CENTRAL_LENGTH + two(at + 28) + two(at + 30) + two(at + 32);
        }
        return at == end && local == table;
    }

    /** Where the entry ends that begins at {@code local}; -1 if it is not the one that the table has at {@code at}. */
    private int localEnd(int at, int local) {
        int name = two(at + 28);
        int extra = two(local + 28);
        boolean same = zip.getInt(local) == LOCAL && zip.getInt(local + 6) == zip.getInt(at + 8) && two(local + 26) == name
                && text(local + LOCAL_LENGTH, name).equals(text(at + CENTRAL_LENGTH, name))
                && plain(local + 6, local + LOCAL_LENGTH + name, extra);
        if (!same) {
            return -1;
        }
        int data = local + LOCAL_LENGTH + name + extra + zip.getInt(at + 20);
        if (data < local) {
            return -1;
        }
        if ((two(at + 8) & SIZES_AFTER) == 0) {
            return sizes(local + 14, at) ? data : -1;
        }
        int sizes = zip.getInt(data) == DESCRIPTOR ? data + 4 : data;
        return sizes(sizes, at) ? sizes + 12 : -1;
    }

    /** Whether check sum and both sizes stand there as the table has them. */
    private boolean sizes(int there, int at) {
        return zip.getInt(there) == zip.getInt(at + 16) && zip.getInt(there + 4) == zip.getInt(at + 20)
                && zip.getInt(there + 8) == zip.getInt(at + 24);
    }

    /** Whether flags and packing, which stand beside each other, are such as everybody reads, and nothing extra renames it. */
    private boolean plain(int flags, int extras, int length) {
        if ((two(flags) & ~KNOWN_FLAGS) != 0 || two(flags + 2) != STORED && two(flags + 2) != DEFLATED) {
            return false;
        }
        for (int at = extras; at + 4 <= extras + length; at += 4 + two(at + 2)) {
            if (ODD_EXTRAS.contains(two(at))) {
                return false;
            }
        }
        return true;
    }

    private int two(int at) {
        return Short.toUnsignedInt(zip.getShort(at));
    }

    private String text(int at, int length) {
        byte[] bytes = new byte[length];
        zip.get(at, bytes);
        return new String(bytes, StandardCharsets.UTF_8);
    }
}
