package camberwell.input;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The folders that the files of a stranger may point into. */
final class Bounds {

    /** What is wrong with a path that leads out of them. */
    static final String OUTSIDE = "lies outside: the cases of a rule folder may point to its own files and to those that come "
            + "with camberwell, unless the folder is trusted";

    private Bounds() {
    }

    /**
     * Whether a path lies in one of the folders, as it is written and, where there is something, when links are followed.
     *
     * @param folders any place will do if there is none
     */
    static boolean hold(List<Path> folders, Path path) {
        if (folders.isEmpty()) {
            return true;
        }
        Path plain = path.toAbsolutePath().normalize();
        for (Path folder : folders) {
            if (plain.startsWith(folder.toAbsolutePath().normalize())) {
                try {
                    return !Files.exists(plain) || plain.toRealPath().startsWith(folder.toRealPath());
                } catch (IOException e) {
                    return false;
                }
            }
        }
        return false;
    }
}
