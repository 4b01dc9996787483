package camberwell.engine;

import camberwell.files.WholeFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Rule files compiled earlier, in a folder of the user's own. A cache is never a reason to fail: what cannot be read,
 * is damaged or belongs to somebody else is compiled again, and what cannot be written is done without.
 */
final class RuleCache {

    private static final String ENDING = ".compiled-rules";
    private static final long MOST_BYTES = 64L << 20;
    private static final int OTHERS_WRITE = 022;
    private static final int STICKY = 01000;

    private final Path folder;

    RuleCache(Path folder) {
        this.folder = folder;
    }

    /** The folder that the operating system has for such things: XDG_CACHE_HOME, LOCALAPPDATA, or below the home. */
    static Path defaultFolder(Map<String, String> environment, String userHome) {
        String local = environment.getOrDefault("LOCALAPPDATA", "");
        String xdg = environment.getOrDefault("XDG_CACHE_HOME", "");
        Path base = !xdg.isBlank() && Path.of(xdg).isAbsolute() ? Path.of(xdg)
                : !local.isBlank() ? Path.of(local) : Path.of(userHome, ".cache");
        return base.resolve("camberwell").resolve("rules");
    }

    Optional<CompiledRules> find(String key) {
        Path file = folder.resolve(key + ENDING);
        try {
            if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || Files.size(file) > MOST_BYTES || !mine(file)) {
                return Optional.empty();
            }
            Optional<CompiledRules> found = CompiledRulesFile.read(key, Files.readAllBytes(file));
            if (found.isPresent()) {
                Files.setLastModifiedTime(file, FileTime.from(Instant.now()));
            }
            return found;
        } catch (IOException | SecurityException e) {
            return Optional.empty();
        }
    }

    /** Whether only this user can have written it. */
    private boolean mine(Path file) throws IOException {
        if (!file.getFileSystem().supportedFileAttributeViews().contains("unix")) {
            return true;
        }
        for (Path path : List.of(folder, file)) {
            boolean others = Files.getPosixFilePermissions(path, LinkOption.NOFOLLOW_LINKS).stream()
                    .anyMatch(permission -> permission.name().equals("OTHERS_WRITE")
                            || permission.name().equals("GROUP_WRITE"));
            if (others || !Files.getOwner(path, LinkOption.NOFOLLOW_LINKS).equals(Files.getOwner(ownFile()))) {
                return false;
            }
        }
        for (Path above = folder.toAbsolutePath().getParent(); above != null; above = above.getParent()) {
            if (open(above)) {
                return false;
            }
        }
        return true;
    }

    /** Whether others may swap what lies in a folder: they may write to it, and not their own files alone. */
    private static boolean open(Path folder) throws IOException {
        int mode = (Integer) Files.getAttribute(folder, "unix:mode");
        return (mode & OTHERS_WRITE) != 0 && (mode & STICKY) == 0;
    }

    private static Path ownFile() throws IOException {
        Path self = Path.of("/proc/self");
        return Files.exists(self) ? self : Path.of(System.getProperty("user.home"));
    }

    void keep(CompiledRules compiled) {
        try {
            createFolder();
            WholeFiles.writePrivately(folder.resolve(compiled.key() + ENDING), CompiledRulesFile.write(compiled));
            prune();
        } catch (IOException | SecurityException | UnsupportedOperationException e) {
            // Without a cache the next start is slower, no more.
        }
    }

    private void createFolder() throws IOException {
        if (Files.isDirectory(folder)) {
            return;
        }
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.createDirectories(folder,
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
        } else {
            Files.createDirectories(folder);
        }
    }

    /** Removes what was not used for longest, until the rest is small enough. */
    private void prune() throws IOException {
        List<Path> files = new ArrayList<>();
        try (Stream<Path> listed = Files.list(folder)) {
            listed.filter(file -> file.toString().endsWith(ENDING)).forEach(files::add);
        }
        files.sort(Comparator.comparing(RuleCache::lastUsed).reversed());
        long total = 0;
        for (Path file : files) {
            total += Files.exists(file) ? Files.size(file) : 0;
            if (total > MOST_BYTES) {
                Files.deleteIfExists(file);
            }
        }
    }

    private static FileTime lastUsed(Path file) {
        try {
            return Files.getLastModifiedTime(file);
        } catch (IOException e) {
            return FileTime.fromMillis(0);
        }
    }
}
