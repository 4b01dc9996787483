package camberwell.pack;

import camberwell.language.Dictionary;
import camberwell.language.Stage;
import camberwell.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The built-in rules as they lie on the disk: the dictionary, the DRL, a subfolder a stage, a file a topic. */
public final class RuleFolder {

    /** What no sentence can say, in Drools' own language. */
    public static final String COMBINE = "rules/combine.drl";

    private final Dictionary dictionary;
    private final List<Found> files;
    private final Path retired;

    /** A rule file that was found, and its stage; no stage for DRL. */
    record Found(String name, Optional<Stage> stage, String text) {
    }

    private RuleFolder(Dictionary dictionary, List<Found> files, Path retired) {
        this.dictionary = dictionary;
        this.files = files;
        this.retired = retired;
    }

    /** The rules below camberwell's own home. */
    public static RuleFolder builtIn(Path home) throws IOException {
        Path folder = home.resolve("rules");
        Dictionary dictionary = Dictionary.read(folder.resolve("dictionary.dsl"));
        List<Found> files = new ArrayList<>();
        files.add(new Found(COMBINE, Optional.empty(),
                Files.readString(folder.resolve("combine.drl"))));
        for (Stage stage : Stage.values()) {
            for (Path file : list(folder.resolve(stage.folder()))) {
                files.add(new Found("rules/" + stage.folder() + "/" + file.getFileName(), Optional.of(stage),
                        Files.readString(file)));
            }
        }
        return new RuleFolder(dictionary, files, home.resolve(Retired.FILE));
    }

    private static List<Path> list(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> listed = Files.list(folder)) {
            return listed.filter(file -> file.toString().endsWith(".dslr")).sorted().toList();
        }
    }

    /** The sentences that its rules are written in. */
    public Dictionary dictionary() {
        return dictionary;
    }

    List<Found> files() {
        return files;
    }

    /** What there is to compile. */
    public List<Source> sources() {
        return files.stream().map(file ->
                new Source(file.name(), file.text(), file.stage().isPresent())).toList();
    }

    /** The rules that are no more; what is wrong with the list is noted. */
    List<Retired> retired(List<Problem> problems) throws IOException {
        return Files.exists(retired) ? Retired.read(Files.readString(retired), problems) : List.of();
    }
}
