package camberwell.pack;

import camberwell.language.Characters;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.problem.Siblings;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/**
 * Brings what lies in a rule folder or a zip file into memory, within limits. Nothing is ever unpacked to the disk, and
 * no link is followed out of the folder.
 */
final class PackFiles {

    static final int MOST_FILES = 1000;
    static final int LARGEST_FILE = 512 * 1024;
    static final int LARGEST_PACK = 8 << 20;
    private static final int DEEPEST = 4;
    private static final int LONGEST_PATH = 200;
    /** The kinds of file of POSIX, sys/stat.h, as zip programs write them. */
    private static final int KIND_OF_FILE = 0170000;
    private static final int ORDINARY_FILE = 0100000;
    private static final int FOLDER = 0040000;

    private final String name;
    private final List<Problem> problems;
    private final Map<String, byte[]> files = new TreeMap<>();
    private int seen;
    private long total;

    private PackFiles(String name, List<Problem> problems) {
        this.name = name;
        this.problems = problems;
    }

    /**
     * Every file that matters in a rule pack, by its path with forward slashes; those that do not are there without
     * their content.
     *
     * @throws ProblemsException if there is nothing that could be read
     */
    static Map<String, byte[]> read(Path place, String name, List<Problem> problems) {
        PackFiles read = new PackFiles(name, problems);
        try {
            if (Files.isDirectory(place)) {
                Path root = place.toRealPath();
                read.folder(root, root, 1);
            } else if (Files.isRegularFile(place) && isNamedZip(place)) {
                read.zip(place);
            } else {
                throw new ProblemsException(Files.exists(place)
                        ? Problem.of(name, "is a file; rules come in a folder or in a .zip file", Optional.empty())
                        : Problem.of(name, isNamedZip(place) ? "there is no such .zip file" : "there is no such folder",
                                Siblings.nearest(place, PackFiles::mayBeMeant)
                                        .map(near -> Path.of(name).resolveSibling(near).toString())));
            }
        } catch (IOException e) {
            throw new ProblemsException(Problem.unreadable(name, e));
        }
        return read.files;
    }

    private static boolean isNamedZip(Path place) {
        return place.toString().toLowerCase(Locale.ROOT).endsWith(".zip");
    }

    private static boolean mayBeMeant(Path place) {
        return (Files.isDirectory(place) || isNamedZip(place)) && !place.getFileName().toString().startsWith(".");
    }

    private void folder(Path root, Path folder, int depth) throws IOException {
        List<Path> entries;
        try (Stream<Path> listed = Files.list(folder)) {
            entries = listed.sorted().limit(MOST_FILES + 1L).toList();
        }
        for (Path entry : entries) {
            String path = root.relativize(entry).toString().replace('\\', '/');
            if (entry.getFileName().toString().startsWith(".")) {
                continue;
            }
            if (++seen > MOST_FILES) {
                if (seen == MOST_FILES + 1) {
                    problem(path, "the folder has more than " + MOST_FILES + " files");
                }
                return;
            }
            if (Files.isSymbolicLink(entry)) {
                link(root, entry, path);
            } else if (Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS)) {
                if (depth < DEEPEST) {
                    folder(root, entry, depth + 1);
                }
            } else if (Files.isRegularFile(entry, LinkOption.NOFOLLOW_LINKS)) {
                file(entry, path);
            } else if (RulePack.matters(path)) {
                problem(path, "is no ordinary file");
            }
        }
    }

    private void link(Path root, Path entry, String path) throws IOException {
        if (!Files.exists(entry)) {
            problem(path, "is a link to nothing");
            return;
        }
        Path target = entry.toRealPath();
        if (!target.startsWith(root)) {
            problem(path, "is a link out of the folder");
        } else if (!Files.isRegularFile(target)) {
            problem(path, "is a link to a folder; put the folder itself there");
        } else {
            file(target, path);
        }
    }

    private void file(Path file, String path) throws IOException {
        if (!RulePack.matters(path)) {
            files.put(path, new byte[0]);
            return;
        }
        try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
            keep(path, in);
        }
    }

    private void keep(String path, InputStream in) throws IOException {
        byte[] bytes = in.readNBytes(LARGEST_FILE + 1);
        total += bytes.length;
        if (bytes.length > LARGEST_FILE) {
            problem(path, "the file is larger than " + LARGEST_FILE / 1024 + " KiB");
        } else if (total > LARGEST_PACK) {
            problem(path, "with this file it is more than " + (LARGEST_PACK >> 20) + " MiB");
        } else {
            files.put(path, bytes);
        }
    }

    /**
     * Reads the zip from front to back, as it was written; then holds it against its own table of contents, so that
     * what was looked at is what any other program would see.
     */
    private void zip(Path place) throws IOException {
        if (Files.size(place) > LARGEST_PACK) {
            throw new ProblemsException(Problem.of(name, "the zip file is larger than " + (LARGEST_PACK >> 20)
                    + " MiB", Optional.empty()));
        }
        if (!RulePack.isZip(place)) {
            throw new ProblemsException(Problem.of(name, Files.size(place) == 0 ? "is empty"
                    : "ends in .zip and is no zip file; camberwell rules pack makes one of a rule folder",
                    Optional.empty()));
        }
        byte[] whole = Files.readAllBytes(place);
        List<String> names = new ArrayList<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(whole), StandardCharsets.UTF_8)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                names.add(entry.getName());
                if (!entry(entry, zip)) {
                    return;
                }
            }
        } catch (IllegalArgumentException e) {
            problem("", "is no zip file that can be read: it is damaged, or the names in it are not UTF-8 text");
            return;
        }
        names.sort(null);
        if (names.isEmpty() || !names.equals(listed(whole))) {
            problem("", "the zip file's table of contents does not tell what is in it");
        }
    }

    /** The names in the table of contents, sorted; none where it does not go with the entries. */
    private List<String> listed(byte[] whole) {
        List<String> listed = new ArrayList<>();
        for (ZipContents.Entry entry : ZipContents.of(whole).orElse(List.of())) {
            listed.add(entry.name());
            int kind = entry.mode() & KIND_OF_FILE;
            if (kind != 0 && kind != ORDINARY_FILE && kind != FOLDER) {
                problem("", "the zip file has a link or another odd entry: " + printable(entry.name()));
            }
        }
        listed.sort(null);
        return listed;
    }

    /** Whether to go on reading. */
    private boolean entry(ZipEntry entry, InputStream in) throws IOException {
        String path = entry.getName();
        if (++seen > MOST_FILES) {
            problem("", "the zip file has more than " + MOST_FILES + " entries");
            return false;
        }
        if (!safe(path)) {
            problem("", "the zip file has an entry that points out of it: " + printable(path));
            return true;
        }
        if (entry.isDirectory()) {
            return skip(in, path);
        }
        if (files.keySet().stream().anyMatch(other -> other.equalsIgnoreCase(path))) {
            problem(path, "stands twice in the zip file");
            return skip(in, path);
        }
        if (hidden(path) || !RulePack.matters(path)) {
            if (!hidden(path)) {
                files.put(path, new byte[0]);
            }
            return skip(in, path);
        }
        keep(path, in);
        return files.containsKey(path);
    }

    /** Reads past an entry, but no further than a whole pack may be large. */
    private boolean skip(InputStream in, String path) throws IOException {
        byte[] buffer = new byte[8192];
        for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
            total += read;
            if (total > LARGEST_PACK) {
                problem(path, "with this file it is more than " + (LARGEST_PACK >> 20) + " MiB");
                return false;
            }
        }
        return true;
    }

    private static boolean hidden(String path) {
        return path.startsWith(".") || path.contains("/.");
    }

    private static boolean safe(String path) {
        if (path.isEmpty() || path.length() > LONGEST_PATH || path.startsWith("/") || path.contains("\\")
                || path.contains(":") || path.chars().anyMatch(c -> Characters.isControl((char) c))) {
            return false;
        }
        for (String part : path.split("/", -1)) {
            if (part.equals("..") || part.equals(".")) {
                return false;
            }
        }
        return !path.contains("//");
    }

    private static String printable(String path) {
        StringBuilder text = new StringBuilder();
        path.chars().limit(LONGEST_PATH).forEach(c -> text.append(Characters.isControl((char) c) ? '?' : (char) c));
        return text.toString();
    }

    private String shown(String path) {
        return path.isEmpty() ? name : name + "/" + path;
    }

    private void problem(String path, String message) {
        problems.add(path.isEmpty() ? Problem.of(name, message, Optional.empty())
                : Problem.error(shown(path), 1, 1, message));
    }

    /** A zip file of those files, in the order of their paths and with no trace of when or where it was made. */
    static byte[] zipOf(Map<String, String> files) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            for (Map.Entry<String, String> file : new TreeMap<>(files).entrySet()) {
                ZipEntry entry = new ZipEntry(file.getKey());
                entry.setTimeLocal(LocalDateTime.of(2000, 1, 1, 0, 0));
                zip.putNextEntry(entry);
                zip.write(file.getValue().getBytes(StandardCharsets.UTF_8));
                zip.closeEntry();
            }
        }
        return bytes.toByteArray();
    }
}
