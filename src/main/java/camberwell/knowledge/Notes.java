package camberwell.knowledge;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * The shelf of notes. Names are known from the start; a note is read when it is first asked for, since advice needs few
 * of them. Safe for use by several threads.
 */
public final class Notes {

    private final Map<String, Place> places;
    private final Map<String, Note> read = new ConcurrentHashMap<>();
    private final NoteImage image = NoteImage.load();

    private record Place(Path file, String shown, Note.Kind kind) {
    }

    private Notes(Map<String, Place> places) {
        this.places = places;
    }

    /**
     * The notes below {@code folders}, each of which has a subfolder for each kind; a note of a later folder takes the
     * place of one with the same name.
     */
    public static Notes in(List<Path> folders) throws IOException {
        Map<String, Place> places = new TreeMap<>();
        for (Path folder : folders) {
            for (Note.Kind kind : Note.Kind.values()) {
                Path subfolder = folder.resolve(kind.folder());
                if (!Files.isDirectory(subfolder)) {
                    continue;
                }
                try (Stream<Path> files = Files.list(subfolder)) {
                    files.filter(file -> file.toString().endsWith(".md")).forEach(file -> {
                        String name = file.getFileName().toString();
                        name = name.substring(0, name.length() - ".md".length());
                        places.put(name, new Place(file,
                                folder.getFileName() + "/" + kind.folder() + "/" + name + ".md", kind));
                    });
                }
            }
        }
        return new Notes(places);
    }

    /** The names of all notes of a kind, in alphabetical order. */
    public List<String> names(Note.Kind kind) {
        return places.entrySet().stream().filter(entry -> entry.getValue().kind == kind).map(Map.Entry::getKey)
                .toList();
    }

    /** Every name, in alphabetical order. */
    public List<String> names() {
        return List.copyOf(places.keySet());
    }

    /**
     * The note of that name, if there is one.
     *
     * @throws ProblemsException if its file has a problem
     */
    public Optional<Note> find(String name) {
        Place place = places.get(name);
        return place == null ? Optional.empty() : Optional.of(read.computeIfAbsent(name, key -> read(key, place)));
    }

    /**
     * The note of that name.
     *
     * @throws IllegalArgumentException if there is none
     * @throws ProblemsException if its file has a problem
     */
    public Note get(String name) {
        return find(name).orElseThrow(() -> new IllegalArgumentException("there is no knowledge note " + name));
    }

    /** Everything that is wrong with any note. */
    public List<Problem> problems() {
        List<Problem> problems = new ArrayList<>();
        for (String name : places.keySet()) {
            try {
                get(name);
            } catch (ProblemsException e) {
                problems.addAll(e.problems());
            }
        }
        return problems;
    }

    /** The file of the note of that name, as it stands. */
    byte[] bytes(String name) throws IOException {
        return Files.readAllBytes(places.get(name).file);
    }

    private Note read(String name, Place place) {
        try {
            byte[] bytes = bytes(name);
            Optional<Note> known = image.find(name, bytes);
            return known.isPresent() ? known.get() : new NoteReader(place.shown, name, place.kind,
                    new String(bytes, StandardCharsets.UTF_8)).read();
        } catch (IOException e) {
            throw new ProblemsException(List.of(Problem.error(place.shown, 1, 1, "the note cannot be read")));
        }
    }
}
