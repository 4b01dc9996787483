package camberwell.pack;

import camberwell.language.Stage;
import camberwell.problem.Problem;
import camberwell.vocabulary.Nearest;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Files in a rule folder that nothing reads, though their names say that they were meant to be: {@code threshold.yaml}. */
public final class Misnamed {

    private static final List<String> FOLDERS = Stream.concat(Arrays.stream(Stage.values()).map(Stage::folder),
            Stream.of(RulePack.NOTES, RulePack.CASES, RulePack.QUIZ)).toList();

    private Misnamed() {
    }

    /**
     * A warning for each.
     *
     * @param place where the pack was read from
     */
    public static List<Problem> in(RulePack pack, Path place) {
        List<Problem> warnings = new ArrayList<>();
        // What is wrong with the folder was told when it was read.
        for (String path : PackFiles.read(place, pack.name(), new ArrayList<>()).keySet()) {
            boolean text = path.endsWith(".yaml") || path.endsWith(".yml");
            if (text && !RulePack.matters(path) && !Leftovers.isLeftover(path)) {
                Optional<String> meant = meant(path);
                if (meant.isPresent() || ofThePack(path) && !named(pack, path)) {
                    warnings.add(new Problem(pack.name() + "/" + path, 1, 1, "this file is not read" + (meant.isPresent() ? ""
                            : "; of a folder are " + String.join(", ", RulePack.SINGLE)), meant, true, ""));
                }
            }
        }
        return warnings;
    }

    private static boolean ofThePack(String path) {
        return !path.contains("/") || path.startsWith(RulePack.NOTES + "/");
    }

    /** A car's file, say, that a case of the pack names. */
    private static boolean named(RulePack pack, String path) {
        return pack.files().values().stream().anyMatch(text -> text.contains(path));
    }

    private static Optional<String> meant(String path) {
        String file = path.substring(path.lastIndexOf('/') + 1).replaceFirst("\\.yml$", ".yaml");
        if (ofThePack(path)) {
            return Nearest.to(file, RulePack.SINGLE.stream().map(Misnamed::fileOf).toList()).flatMap(near ->
                    RulePack.SINGLE.stream().filter(single -> fileOf(single).equals(near)).findFirst());
        }
        String folder = path.substring(0, path.indexOf('/'));
        return FOLDERS.contains(folder) ? Optional.empty()
                : Nearest.to(folder, FOLDERS).map(near -> near + path.substring(folder.length()));
    }

    private static String fileOf(String path) {
        return path.substring(path.lastIndexOf('/') + 1);
    }
}
