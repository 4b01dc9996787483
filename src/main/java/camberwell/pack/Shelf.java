package camberwell.pack;

import camberwell.files.WholeFiles;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A person's own packs, whose rules are always on: one zip file a pack in a folder of the user's configuration, and a plain
 * list beside them that says in which order they come and which are off. Packs on the shelf are never trusted: they hold
 * sentences, notes and cases.
 */
public final class Shelf {

    /** The list: a pack's name on a line, in the order in which the packs are read; a minus before it switches it off. */
    static final String LIST = "shelf.txt";
    private static final String OFF = "-";
    private static final String ZIP = ".zip";

    private final Path folder;

    /**
     * One pack on the shelf.
     *
     * @param name the pack's own
     * @param on whether its rules are used
     */
    public record Entry(String name, boolean on) {
    }

    /** @param folder where it is or will be; nothing is made before something is put on it */
    public Shelf(Path folder) {
        this.folder = folder;
    }

    /**
     * The shelf of a user: {@code camberwell/packs} in {@code XDG_CONFIG_HOME}, in {@code APPDATA} on Windows, or in
     * {@code .config} at home.
     */
    public static Shelf of(Map<String, String> environment) {
        String base = Stream.of("XDG_CONFIG_HOME", "APPDATA").map(name -> environment.getOrDefault(name, ""))
                .filter(place -> !place.isEmpty()).findFirst()
                .orElseGet(() -> System.getProperty("user.home", ".") + "/.config");
        return new Shelf(Path.of(base, "camberwell", "packs"));
    }

    /** Where it is. */
    public Path folder() {
        return folder;
    }

    /** Whether nothing was ever put on it: one look at the disk. */
    public boolean isBare() {
        return !Files.exists(folder.resolve(LIST));
    }

    /**
     * What is on it, in the order in which it is read.
     *
     * @throws ProblemsException if the list is there and cannot be read
     */
    public List<Entry> entries() {
        if (isBare()) {
            return List.of();
        }
        try {
            return Files.readAllLines(folder.resolve(LIST)).stream().map(String::strip)
                    .filter(line -> !line.isEmpty()).map(this::entry).toList();
        } catch (IOException e) {
            throw cannot(LIST, "cannot be read");
        }
    }

    private Entry entry(String line) {
        boolean off = line.startsWith(OFF);
        String name = off ? line.substring(OFF.length()).strip() : line;
        if (!Manifest.isName(name)) {
            throw cannot(LIST, "has a line that is no pack's name");
        }
        return new Entry(name, !off);
    }

    /** The pack of that name, if it is on the shelf. */
    public Optional<Entry> find(String name) {
        return entries().stream().filter(entry -> entry.name().equals(name)).findFirst();
    }

    /** The packs that are on, read. */
    public List<RulePack> packs() {
        return entries().stream().filter(Entry::on).map(this::read).toList();
    }

    /** One pack, read; it goes by its own name and version. */
    public RulePack read(Entry entry) {
        RulePack pack = RulePack.read(file(entry.name()), entry.name(), false);
        return pack.manifest().map(manifest -> pack.named(manifest.name() + " " + manifest.version())).orElse(pack);
    }

    /**
     * Puts a pack on it, behind the others, or in the place of another version of it.
     *
     * @throws ProblemsException if the pack has no manifest, or the shelf cannot be written
     */
    public void put(RulePack pack) {
        Manifest manifest = pack.manifest().orElseThrow(() -> new ProblemsException(Problem.of(
                pack.name() + "/" + RulePack.MANIFEST, "is missing: it tells the name, version and author of the rules",
                Optional.empty())));
        List<Entry> entries = new ArrayList<>(entries());
        try {
            write(file(manifest.name()), pack.zip());
        } catch (IOException e) {
            throw cannot(manifest.name() + ZIP, "cannot be written");
        }
        if (entries.stream().noneMatch(entry -> entry.name().equals(manifest.name()))) {
            entries.add(new Entry(manifest.name(), true));
        }
        save(entries);
    }

    /** Takes a pack off; its file goes too. */
    public void remove(String name) {
        List<Entry> entries = new ArrayList<>(entries());
        entries.removeIf(entry -> entry.name().equals(name));
        save(entries);
        try {
            Files.deleteIfExists(file(name));
        } catch (IOException e) {
            throw cannot(name + ZIP, "cannot be removed");
        }
    }

    /** Switches a pack on or off; it keeps its place. */
    public void turn(String name, boolean on) {
        save(entries().stream().map(entry -> entry.name().equals(name) ? new Entry(name, on) : entry).toList());
    }

    /** Puts the packs in that order; those that are not named keep theirs, behind. */
    public void order(List<String> names) {
        List<Entry> entries = new ArrayList<>(entries());
        entries.sort(Comparator.comparingInt(entry -> {
            int place = names.indexOf(entry.name());
            return place < 0 ? Integer.MAX_VALUE : place;
        }));
        save(entries);
    }

    private Path file(String name) {
        return folder.resolve(name + ZIP);
    }

    private void save(List<Entry> entries) {
        StringBuilder text = new StringBuilder();
        entries.forEach(entry -> text.append(entry.on() ? "" : OFF + " ").append(entry.name()).append('\n'));
        try {
            write(folder.resolve(LIST), text.toString().getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw cannot(LIST, "cannot be written");
        }
    }

    private void write(Path file, byte[] bytes) throws IOException {
        Files.createDirectories(folder);
        WholeFiles.write(file, bytes);
    }

    private ProblemsException cannot(String file, String what) {
        return new ProblemsException(Problem.of(folder.resolve(file).toString(), what, Optional.empty()));
    }
}
