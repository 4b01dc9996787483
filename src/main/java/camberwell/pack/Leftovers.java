package camberwell.pack;

import java.util.List;
import java.util.Locale;

/** Files that editors and file managers leave beside those that somebody wrote. */
final class Leftovers {

    private static final List<String> NAMES = List.of("desktop.ini", "thumbs.db", "icon\r");
    private static final List<String> ENDINGS = List.of("~", ".bak", ".swp", ".swo", ".tmp", ".orig", ".old");
    private static final List<String> BEGINNINGS = List.of("~$", "#", ".");

    private Leftovers() {
    }

    /** Whether a file of that path was left there by a program and is meant by nobody. */
    static boolean isLeftover(String path) {
        String name = path.substring(path.lastIndexOf('/') + 1).toLowerCase(Locale.ROOT);
        return NAMES.contains(name) || ENDINGS.stream().anyMatch(name::endsWith)
                || BEGINNINGS.stream().anyMatch(name::startsWith) || path.startsWith("__MACOSX/");
    }
}
