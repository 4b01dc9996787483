package camberwell.cli;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.rules.RulePack;
import camberwell.rules.Stage;
import camberwell.vocabulary.Nearest;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Option;

/** The options {@code --rules} and {@code --trust} of every command that reasons. */
final class RulesOption {

    private static final String ZIP = ".zip";

    @Option(names = "--rules", paramLabel = "DIR",
            description = "Adds the rules of this folder or .zip file to the built-in ones. Can be given again.")
    private List<String> folders = new ArrayList<>();

    @Option(names = "--trust", paramLabel = "DIR", description = {
        "Allows raw Drools in this folder, which must be named with --rules too. Such rules can do anything to your "
        + "computer: trust only what you wrote yourself."})
    private List<String> trusted = new ArrayList<>();

    /** {@code engine} with the rules of the folders that were named. */
    Engine on(Engine engine, Console console) {
        List<RulePack> packs = read(folders, trusted, console);
        List<Problem> empty = packs.stream().filter(RulesOption::empty).map(RulesOption::nothingIn).toList();
        if (!empty.isEmpty()) {
            throw new ProblemsException(empty);
        }
        return engine.withRules(packs);
    }

    /** Whether a folder has neither rules nor notes: most likely another was meant. */
    static boolean empty(RulePack pack) {
        return pack.files().keySet().stream().allMatch(path -> path.equals(RulePack.MANIFEST)
                || path.startsWith(RulePack.CASES + "/"));
    }

    static Problem nothingIn(RulePack pack) {
        return Problem.of(pack.name(), "there are no rules and no notes in it; rules lie in its folders "
                + Arrays.stream(Stage.values()).map(Stage::folder).collect(Collectors.joining(", ")) + ", notes in "
                + RulePack.NOTES, Optional.empty());
    }

    /**
     * Reads rule folders.
     *
     * @throws ProblemsException with all that does not belong in them, or if a folder is trusted and not named
     */
    static List<RulePack> read(List<String> folders, List<String> trusted, Console console) {
        List<Problem> problems = new ArrayList<>();
        for (String trust : trusted) {
            if (folders.stream().noneMatch(folder -> same(console.path(folder), console.path(trust)))) {
                problems.add(Problem.of("--trust " + trust, "this folder is not among those whose rules are used",
                        Optional.empty()));
            }
        }
        List<RulePack> packs = new ArrayList<>();
        for (String folder : folders) {
            boolean trust = trusted.stream().anyMatch(other -> same(console.path(folder), console.path(other)));
            Optional<Problem> none = noPack(console.path(folder), folder);
            if (none.isPresent()) {
                problems.add(none.get());
                continue;
            }
            try {
                packs.add(RulePack.read(console.path(folder), shown(folder), trust));
            } catch (ProblemsException e) {
                problems.addAll(e.problems());
            }
        }
        if (!problems.isEmpty()) {
            throw new ProblemsException(problems);
        }
        return packs;
    }

    /** Why there can be no rules at that place, whatever is in it. */
    private static Optional<Problem> noPack(Path place, String typed) {
        boolean zip = typed.toLowerCase(Locale.ROOT).endsWith(ZIP);
        String name = shown(typed);
        if (!Files.exists(place)) {
            return Optional.of(Problem.of(name, zip ? "there is no such .zip file" : "there is no such folder",
                    nearest(place, typed)));
        }
        if (Files.isDirectory(place)) {
            return Optional.empty();
        }
        if (!zip) {
            return Optional.of(Problem.of(name, "is a file; rules come in a folder or in a .zip file",
                    Optional.empty()));
        }
        try {
            return isZip(place) ? Optional.empty() : Optional.of(Problem.of(name, Files.size(place) == 0 ? "is empty"
                    : "ends in .zip and is no zip file; camberwell rules pack makes one of a rule folder",
                    Optional.empty()));
        } catch (IOException e) {
            return Optional.of(Problem.of(name, "cannot be read", Optional.empty()));
        }
    }

    /** Whether a file begins as a zip file does, empty or not (PKWARE's APPNOTE.TXT, sections 4.3.7 and 4.3.16). */
    static boolean isZip(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] start = in.readNBytes(2);
            return start.length == 2 && start[0] == 'P' && start[1] == 'K';
        }
    }

    /** The folder or zip file beside a missing one that is named most like it, as it would be typed. */
    private static Optional<String> nearest(Path missing, String typed) {
        Path named = Path.of(typed);
        Path folder = missing.toAbsolutePath().normalize().getParent();
        if (folder == null || named.getFileName() == null) {
            return Optional.empty();
        }
        try (Stream<Path> entries = Files.list(folder)) {
            List<String> names = entries.filter(entry -> Files.isDirectory(entry)
                            || entry.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(ZIP))
                    .map(entry -> entry.getFileName().toString()).filter(name -> !name.startsWith(".")).sorted()
                    .toList();
            return Nearest.to(named.getFileName().toString(), names)
                    .map(name -> named.resolveSibling(name).toString());
        } catch (IOException | UncheckedIOException e) {
            // A folder that cannot be listed has nothing to suggest.
            return Optional.empty();
        }
    }

    private static String shown(String folder) {
        return folder.length() > 1 && (folder.endsWith("/") || folder.endsWith("\\"))
                ? folder.substring(0, folder.length() - 1) : folder;
    }

    private static boolean same(Path one, Path other) {
        try {
            return Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other);
        } catch (IOException e) {
            return false;
        }
    }
}
