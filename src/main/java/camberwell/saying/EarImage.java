package camberwell.saying;

import camberwell.files.Mark;
import camberwell.files.WholeFiles;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The ear as it was taught when camberwell was built, in its jar. */
public final class EarImage {

    private static final String RESOURCE = "camberwell/saying/ear";
    private static final String MARK = "camberwell/saying/ear.mark";

    private EarImage() {
    }

    /** The ear in camberwell's own jar, read at its first use and kept; empty where none was packaged, or it is damaged. */
    static Optional<Ear> load() {
        return Kept.EAR;
    }

    /** An ear never changes, so one does for all. */
    private static final class Kept {

        static final Optional<Ear> EAR = read();
    }

    private static Optional<Ear> read() {
        try (InputStream in = EarImage.class.getClassLoader().getResourceAsStream(RESOURCE)) {
            return in == null ? Optional.empty() : Optional.of(Ear.read(ByteBuffer.wrap(in.readAllBytes())));
        } catch (IOException | BufferUnderflowException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** The lessons of each file of a folder, in the order of their names. */
    static List<List<Lesson>> lessons(Path folder) throws IOException {
        List<List<Lesson>> lessons = new ArrayList<>();
        for (Path file : files(folder)) {
            lessons.add(Lesson.read(file.toString(), Files.readString(file)));
        }
        return lessons;
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        }
    }

    /**
     * Teaches an ear the sayings of the folder given first, with the phrases of the file given second, and writes it into the
     * classes folder given third; does nothing where none of them has changed, nor a class that has a part in it.
     *
     * @throws camberwell.problem.ProblemsException with everything that is wrong with a file of either
     */
    public static void main(String[] arguments) throws IOException {
        Path lessons = Path.of(arguments[0]);
        Path phrases = Path.of(arguments[1]);
        Path classes = Path.of(arguments[2]);
        Mark mark = new Mark().add(Files.readAllBytes(phrases));
        for (Path file : files(lessons)) {
            mark.add(Files.readAllBytes(file));
        }
        for (String folder : List.of("camberwell/classifier", "camberwell/saying")) {
            for (Path file : files(classes.resolve(folder))) {
                if (file.toString().endsWith(".class")) {
                    mark.add(Files.readAllBytes(file));
                }
            }
        }
        Path marked = classes.resolve(MARK);
        if (Files.exists(marked) && Files.readString(marked).equals(mark.text())) {
            return;
        }
        Sayings sayings = Sayings.read(new LinkedHashMap<>(Map.of(phrases.toString(), Files.readString(phrases))));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Teaching.of(sayings, lessons(lessons)).write(new DataOutputStream(bytes));
        WholeFiles.write(classes.resolve(RESOURCE), bytes.toByteArray());
        Files.writeString(marked, mark.text());
    }
}
