package camberwell.cli;

import camberwell.files.WholeFiles;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.LinkedHashMap;
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

    /**
     * Refuses, before anything is computed, a file that cannot be written, or that is there and may not be written over.
     *
     * @param option that names it
     * @param file as it was typed; null where the option was not given
     * @throws ProblemsException if it is refused
     */
    static void check(String option, String file, boolean overwrite, Console console) {
        if (file == null) {
            return;
        }
        Path path = console.path(file);
        obstacle(path, console).or(() -> Files.exists(path) && !overwrite
                ? Optional.of("is there already; take another name, or give --overwrite") : Optional.empty())
                .ifPresent(wrong -> {
                    throw new ProblemsException(Problem.of(option + " " + file, wrong, Optional.empty()));
                });
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
            for (Path file : contents.keySet()) {
                Files.createDirectories(file.toAbsolutePath().getParent());
            }
            WholeFiles.write(contents);
        } catch (IOException e) {
            throw new ProblemsException(Problem.unwritable(contents.keySet().iterator().next().toString(), e));
        }
    }
}
