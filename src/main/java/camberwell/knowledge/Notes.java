package camberwell.knowledge;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Direction;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
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

    private record Place(Source source, String shown, Note.Kind kind) {
    }

    private interface Source {
        byte[] read() throws IOException;
    }

    /** Effects beyond those that the notes tell, by the note's name. */
    private final Map<String, Map<Direction, List<Effect>>> more;

    private Notes(Map<String, Place> places) {
        this(places, Map.of());
    }

    private Notes(Map<String, Place> places, Map<String, Map<Direction, List<Effect>>> more) {
        this.places = places;
        this.more = more;
    }

    /** The same notes, with more effects told of the changes that they are about. */
    public Notes with(Map<Change, List<Effect>> effects) {
        if (effects.isEmpty()) {
            return this;
        }
        Map<String, Map<Direction, List<Effect>>> byNote = new TreeMap<>();
        effects.forEach((change, told) -> byNote.computeIfAbsent(change.adjuster().note(), key -> new EnumMap<>(Direction.class))
                .computeIfAbsent(change.direction(), key -> new ArrayList<>()).addAll(told));
        return new Notes(places, byNote);
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
                        places.put(name, new Place(() -> Files.readAllBytes(file),
                                folder.getFileName() + "/" + kind.folder() + "/" + name + ".md", kind));
                    });
                }
            }
        }
        return new Notes(places);
    }

    /**
     * These notes and those of a rule folder that was read already; a note of the same name takes the place of the one
     * here, unless it is a caution.
     *
     * @param shown how problems name the folder
     * @param files their texts, by kind folder and file name: {@code causes/hot-rims.md}
     * @throws ProblemsException if one of them has the name of a note of another kind, or of a caution
     */
    public Notes with(String shown, Map<String, String> files) {
        Map<String, Place> all = new TreeMap<>(places);
        List<Problem> problems = new ArrayList<>();
        for (Note.Kind kind : Note.Kind.values()) {
            files.forEach((path, text) -> {
                if (path.startsWith(kind.folder() + "/")) {
                    String name = path.substring(kind.folder().length() + 1, path.length() - ".md".length());
                    Place place = new Place(() -> text.getBytes(StandardCharsets.UTF_8), shown + "/" + path, kind);
                    Place other = all.put(name, place);
                    if (other != null && kind == Note.Kind.CAUTION && other.kind == kind) {
                        problems.add(Problem.error(place.shown, 1, 1, "a caution stays as it is, and there is one "
                                + "of that name already: " + other.shown));
                    } else if (other != null && other.kind != kind) {
                        problems.add(Problem.error(place.shown, 1, 1, "there is a note of that name already, of "
                                + "the kind " + other.kind.id() + ": " + other.shown));
                    }
                }
            });
        }
        if (!problems.isEmpty()) {
            throw new ProblemsException(problems);
        }
        return new Notes(all, more);
    }

    /**
     * The file of a note, as problems name it.
     *
     * @throws IllegalArgumentException if there is no such note
     */
    public String file(String name) {
        if (!places.containsKey(name)) {
            throw new IllegalArgumentException("there is no knowledge note " + name);
        }
        return places.get(name).shown;
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
        return place == null ? Optional.empty() : Optional.of(read.computeIfAbsent(name, key -> {
            Note note = read(key, place);
            return more.containsKey(key) ? note.with(more.get(key)) : note;
        }));
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
        return problems(places.keySet());
    }

    /** Everything that is wrong with the notes of those names. */
    public List<Problem> problems(Collection<String> names) {
        List<Problem> problems = new ArrayList<>();
        Set<String> findings = new TreeSet<>(names(Note.Kind.READING));
        findings.addAll(names(Note.Kind.CAUSE));
        Set<String> cautions = new TreeSet<>(names(Note.Kind.CAUTION));
        for (String name : names) {
            try {
                problems.addAll(new WhenCheck(file(name), get(name), findings, cautions).problems());
            } catch (ProblemsException e) {
                problems.addAll(e.problems());
            }
        }
        return problems;
    }

    /** The file of the note of that name, as it stands. */
    byte[] bytes(String name) throws IOException {
        return places.get(name).source.read();
    }

    private Note read(String name, Place place) {
        try {
            byte[] bytes = place.source.read();
            Optional<Note> known = image.find(name, bytes);
            return known.isPresent() ? known.get() : new NoteReader(place.shown, name, place.kind,
                    new String(bytes, StandardCharsets.UTF_8)).read();
        } catch (IOException e) {
            throw new ProblemsException(List.of(Problem.error(place.shown, 1, 1, "the note cannot be read")));
        }
    }
}
