package camberwell.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Writes files that appear whole or not at all. Each is written beside its place, brought to the disk and moved there; a
 * draft carries the number of its process, and those of processes that are gone are cleared away by the next one that
 * writes into the folder. Safe for several threads and processes.
 */
public final class WholeFiles {

    private static final String DRAFT = ".camberwell-draft-";
    private static final int LONGEST_PROCESS = 18;
    private static final Set<PosixFilePermission> OWNER = PosixFilePermissions.fromString("rw-------");
    private static final AtomicInteger DRAFTS = new AtomicInteger();

    private WholeFiles() {
    }

    /**
     * Writes one file, in the place of one that may be there, whose permissions it takes over; a link is followed.
     *
     * @throws IOException if it cannot be written; then nothing has changed
     */
    public static void write(Path file, byte[] content) throws IOException {
        write(Map.of(file, content));
    }

    /**
     * Writes files that belong together, in the order of the map: when one cannot be written, those that were not there
     * before are not there afterwards. A process that is killed leaves the first of them, or none.
     *
     * @throws IOException if one of them cannot be written
     */
    public static void write(Map<Path, byte[]> contents) throws IOException {
        Map<Path, Path> drafts = new LinkedHashMap<>();
        List<Path> fresh = new ArrayList<>();
        try {
            for (Map.Entry<Path, byte[]> entry : contents.entrySet()) {
                Path file = Files.exists(entry.getKey()) ? entry.getKey().toRealPath() : entry.getKey().toAbsolutePath();
                sweep(file.getParent());
                drafts.put(file, draft(file.getParent(), entry.getValue()));
                if (Files.exists(file) && posix(file)) {
                    Files.setPosixFilePermissions(drafts.get(file), Files.getPosixFilePermissions(file));
                }
            }
            for (Map.Entry<Path, Path> draft : drafts.entrySet()) {
                boolean isNew = !Files.exists(draft.getKey());
                move(draft.getValue(), draft.getKey());
                if (isNew) {
                    fresh.add(draft.getKey());
                }
            }
            fresh.clear();
        } finally {
            for (Path draft : drafts.values()) {
                Files.deleteIfExists(draft);
            }
            for (Path file : fresh) {
                Files.deleteIfExists(file);
            }
        }
    }

    /** Writes one file that nobody else can read or write, where the file system knows of others. */
    public static void writePrivately(Path file, byte[] content) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        sweep(folder);
        Path draft = draft(folder, content);
        try {
            if (posix(draft)) {
                Files.setPosixFilePermissions(draft, OWNER);
            }
            move(draft, file);
        } finally {
            Files.deleteIfExists(draft);
        }
    }

    /** Removes from a folder what processes left there that were killed as they wrote. */
    public static void sweep(Path folder) throws IOException {
        try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, DRAFT + "*")) {
            for (Path draft : left) {
                if (abandoned(draft.getFileName().toString().substring(DRAFT.length()))) {
                    Files.deleteIfExists(draft);
                }
            }
        }
    }

    private static boolean abandoned(String numbers) {
        int dash = numbers.indexOf('-');
        String process = dash < 0 ? "" : numbers.substring(0, dash);
        return !process.isEmpty() && process.length() <= LONGEST_PROCESS
                && process.chars().allMatch(it -> it >= '0' && it <= '9')
                && ProcessHandle.of(Long.parseLong(process)).filter(ProcessHandle::isAlive).isEmpty();
    }

    private static Path draft(Path folder, byte[] content) throws IOException {
        while (true) {
            Path draft = folder.resolve(DRAFT + ProcessHandle.current().pid() + "-" + DRAFTS.incrementAndGet());
            try (FileChannel out = FileChannel.open(draft, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                ByteBuffer bytes = ByteBuffer.wrap(content);
                while (bytes.hasRemaining()) {
                    out.write(bytes);
                }
                out.force(true);
                return draft;
            } catch (FileAlreadyExistsException e) {
                // Left by an earlier process of the same number: the next name is free.
                continue;
            } catch (IOException e) {
                Files.deleteIfExists(draft);
                throw e;
            }
        }
    }

    private static boolean posix(Path file) {
        return Files.getFileAttributeView(file, PosixFileAttributeView.class) != null;
    }

    private static void move(Path draft, Path file) throws IOException {
        try {
            Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
