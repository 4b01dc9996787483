package camberwell.cli;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Files to be written together: each appears whole or not at all, and when one cannot be written none is. */
final class NewFiles {

    private final Map<Path, byte[]> contents = new LinkedHashMap<>();

    /**
     * Why {@code file} cannot be written, if that can be told before its content is known: a talk of ten minutes should
     * not end with it.
     */
    static Optional<String> obstacle(Path file, Console console) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || Files.isDirectory(file)) {
            return Optional.of("is a folder");
        }
        if (!Files.isDirectory(folder)) {
            return Optional.of("there is no folder " + console.shown(folder.toString()));
        }
        return Files.isWritable(folder) ? Optional.empty() : Optional.of("the folder cannot be written to");
    }

    /** Plans a file that may not be there yet. */
    void add(Path file, byte[] content) {
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) || contents.containsKey(file)) {
            throw new ProblemsException(Problem.of(file.toString(), "is there already, and is not written over",
                    Optional.empty()));
        }
        contents.put(file, content);
    }

    /** Plans a file that takes the place of one that may be there. */
    void replace(Path file, byte[] content) {
        contents.put(file, content);
    }

    /**
     * Writes them.
     *
     * @throws ProblemsException if one of them cannot be written
     */
    void write() {
        try {
            writeAll();
        } catch (IOException e) {
            throw new ProblemsException(Problem.of(contents.keySet().iterator().next().toString(),
                    "cannot be written: " + e.getMessage(), Optional.empty()));
        }
    }

    private void writeAll() throws IOException {
        Map<Path, Path> drafts = new LinkedHashMap<>();
        List<Path> moved = new ArrayList<>();
        try {
            for (Map.Entry<Path, byte[]> file : contents.entrySet()) {
                Path folder = file.getKey().toAbsolutePath().getParent();
                Files.createDirectories(folder);
                String draftOf = "." + file.getKey().getFileName() + ".draft-";
                removeLeftOver(folder, draftOf);
                Path draft = folder.resolve(draftOf + ProcessHandle.current().pid() + "-" + drafts.size());
                drafts.put(file.getKey(), draft);
                Files.write(draft, file.getValue(), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            }
            for (Map.Entry<Path, Path> draft : drafts.entrySet()) {
                boolean fresh = !Files.exists(draft.getKey());
                move(draft.getValue(), draft.getKey());
                if (fresh) {
                    moved.add(draft.getKey());
                }
            }
            moved.clear();
        } finally {
            for (Path draft : drafts.values()) {
                Files.deleteIfExists(draft);
            }
            for (Path file : moved) {
                Files.deleteIfExists(file);
            }
        }
    }

    /** Removes drafts of the same file whose process was ended before it could. */
    private static void removeLeftOver(Path folder, String draftOf) throws IOException {
        try (DirectoryStream<Path> left = Files.newDirectoryStream(folder,
                entry -> entry.getFileName().toString().startsWith(draftOf))) {
            for (Path draft : left) {
                String pid = draft.getFileName().toString().substring(draftOf.length()).replaceFirst("-.*", "");
                if (!pid.matches("[0-9]{1,18}") || ProcessHandle.of(Long.parseLong(pid)).isEmpty()
                        || Long.parseLong(pid) == ProcessHandle.current().pid()) {
                    Files.deleteIfExists(draft);
                }
            }
        }
    }

    private static void move(Path draft, Path file) throws IOException {
        try {
            Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
