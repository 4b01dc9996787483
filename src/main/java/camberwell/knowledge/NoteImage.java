package camberwell.knowledge;

import camberwell.vocabulary.Axle;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Quality;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32C;

/**
 * The built-in notes as they were when camberwell was built, in a form that costs no parsing. A note whose file has
 * changed since is read from its file: the image is never the truth, only quick.
 */
public final class NoteImage {

    private static final String RESOURCE = "camberwell/knowledge/image";

    private final Map<String, byte[]> notes = new HashMap<>();
    private final Map<String, Long> checks = new HashMap<>();

    private NoteImage() {
    }

    /** The image in camberwell's own jar; empty when it was not packaged or is damaged. */
    static NoteImage load() {
        NoteImage image = new NoteImage();
        try (InputStream resource = NoteImage.class.getClassLoader().getResourceAsStream(RESOURCE)) {
            if (resource == null) {
                return image;
            }
            DataInputStream in = new DataInputStream(new ByteArrayInputStream(resource.readAllBytes()));
            int count = in.readInt();
            for (int i = 0; i < count; i++) {
                String name = in.readUTF();
                image.checks.put(name, in.readLong());
                image.notes.put(name, in.readNBytes(in.readInt()));
            }
            return image;
        } catch (IOException e) {
            return new NoteImage();
        }
    }

    /** The note whose file holds {@code text}, if the image was made from that very text. */
    Optional<Note> find(String name, byte[] text) {
        if (!checks.containsKey(name) || checks.get(name) != check(text)) {
            return Optional.empty();
        }
        try {
            return Optional.of(read(new DataInputStream(new ByteArrayInputStream(notes.get(name)))));
        } catch (IOException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Of the text, and of how many matters there are: the image counts them, and an older one would count otherwise. */
    private static long check(byte[] text) {
        CRC32C crc = new CRC32C();
        crc.update(text);
        return crc.getValue() << 24 ^ text.length ^ (long) Matter.values().length << 56;
    }

    /** Writes the image of the notes below the folder given first into the classes folder given second. */
    public static void main(String[] arguments) throws IOException {
        Notes notes = Notes.in(List.of(Path.of(arguments[0])));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeInt(notes.names().size());
        for (String name : notes.names()) {
            ByteArrayOutputStream one = new ByteArrayOutputStream();
            write(notes.get(name), new DataOutputStream(one));
            out.writeUTF(name);
            out.writeLong(check(notes.bytes(name)));
            out.writeInt(one.size());
            out.write(one.toByteArray());
        }
        Path file = Path.of(arguments[1]).resolve(RESOURCE);
        Files.createDirectories(file.getParent());
        Files.write(file, bytes.toByteArray());
    }

    private static void write(Note note, DataOutputStream out) throws IOException {
        out.writeUTF(note.name());
        out.writeUTF(note.kind().name());
        out.writeUTF(note.title());
        text(out, note.statement());
        text(out, note.plain());
        out.writeInt(note.ways().size());
        for (Map.Entry<Direction, Note.Way> way : note.ways().entrySet()) {
            out.writeUTF(way.getKey().id());
            out.writeInt(way.getValue().effects().size());
            for (Effect effect : way.getValue().effects()) {
                out.writeUTF(effect.on().id());
                word(out, effect.phase());
                word(out, effect.speed());
                word(out, effect.where());
                when(out, effect.when());
                out.writeInt(effect.effect());
            }
            text(out, way.getValue().rationale());
            text(out, way.getValue().plain());
            text(out, way.getValue().watch());
            text(out, way.getValue().putBack());
        }
        out.writeInt(note.effort());
        out.writeInt(note.risk());
        text(out, note.model().orElse(""));
        out.writeInt(note.differences().size());
        for (Note.Difference difference : note.differences()) {
            word(out, difference.way());
            word(out, difference.on());
            word(out, difference.phase());
            text(out, difference.rule().orElse(""));
            text(out, difference.because());
        }
        out.writeBoolean(note.showsAs().isPresent());
        if (note.showsAs().isPresent()) {
            out.writeUTF(note.showsAs().get().on().id());
            word(out, note.showsAs().get().phase());
            word(out, note.showsAs().get().speed());
            word(out, note.showsAs().get().where());
        }
        text(out, note.contested().orElse(""));
        out.writeBoolean(note.practice().isPresent());
        if (note.practice().isPresent()) {
            text(out, note.practice().get().tryNext());
            text(out, note.practice().get().feel());
            text(out, note.practice().get().carOrDriver());
        }
        when(out, note.when());
        out.writeInt(note.order());
        out.writeBoolean(note.halts());
        out.writeBoolean(note.asksNoMore());
        out.writeInt(note.variants().size());
        for (Variant variant : note.variants()) {
            out.writeUTF(variant.key());
            word(out, variant.way());
            when(out, variant.when());
            text(out, variant.text());
        }
        out.writeInt(note.sources().size());
        for (String source : note.sources()) {
            text(out, source);
        }
        text(out, note.prose());
    }

    private static Note read(DataInputStream in) throws IOException {
        String name = in.readUTF();
        Note.Kind kind = Note.Kind.valueOf(in.readUTF());
        String title = in.readUTF();
        String statement = text(in);
        String plain = text(in);
        Map<Direction, Note.Way> ways = new EnumMap<>(Direction.class);
        int directions = in.readInt();
        for (int i = 0; i < directions; i++) {
            Direction direction = Word.of(Direction.class, in.readUTF());
            List<Effect> effects = new ArrayList<>();
            int count = in.readInt();
            for (int j = 0; j < count; j++) {
                effects.add(new Effect(topic(in.readUTF()), word(in, Phase.class), word(in, CornerSpeed.class),
                        word(in, Axle.class), when(in), in.readInt()));
            }
            ways.put(direction, new Note.Way(List.copyOf(effects), text(in), text(in), text(in), text(in)));
        }
        int effort = in.readInt();
        int risk = in.readInt();
        Optional<String> model = said(in);
        List<Note.Difference> differences = new ArrayList<>();
        int differing = in.readInt();
        for (int i = 0; i < differing; i++) {
            differences.add(new Note.Difference(word(in, Direction.class), topicIfAny(in.readUTF()),
                    word(in, Phase.class), said(in), text(in)));
        }
        Optional<Note.Trouble> showsAs = in.readBoolean() ? Optional.of(new Note.Trouble(topic(in.readUTF()),
                word(in, Phase.class), word(in, CornerSpeed.class), word(in, Axle.class))) : Optional.empty();
        Optional<String> contested = said(in);
        Optional<Note.Practice> practice = in.readBoolean()
                ? Optional.of(new Note.Practice(text(in), text(in), text(in))) : Optional.empty();
        When when = when(in);
        int order = in.readInt();
        boolean halts = in.readBoolean();
        boolean asksNoMore = in.readBoolean();
        List<Variant> variants = new ArrayList<>();
        int wordings = in.readInt();
        for (int i = 0; i < wordings; i++) {
            variants.add(new Variant(in.readUTF(), word(in, Direction.class), when(in), text(in)));
        }
        List<String> sources = new ArrayList<>();
        int count = in.readInt();
        for (int i = 0; i < count; i++) {
            sources.add(text(in));
        }
        return new Note(name, kind, title, statement, plain, ways, effort, risk, model,
                List.copyOf(differences), showsAs, contested, practice, when, order, halts, asksNoMore,
                List.copyOf(variants), List.copyOf(sources), text(in));
    }

    private static void when(DataOutputStream out, When when) throws IOException {
        out.writeByte(when.words().size());
        for (Map.Entry<Matter, List<String>> entry : when.words().entrySet()) {
            out.writeByte(entry.getKey().ordinal());
            out.writeByte(entry.getValue().size());
            for (String word : entry.getValue()) {
                out.writeUTF(word);
            }
        }
    }

    private static When when(DataInputStream in) throws IOException {
        int matters = in.readByte();
        if (matters == 0) {
            return When.ALWAYS;
        }
        Map<Matter, List<String>> words = new EnumMap<>(Matter.class);
        for (int i = 0; i < matters; i++) {
            Matter matter = Matter.values()[in.readByte()];
            String[] said = new String[in.readByte()];
            for (int j = 0; j < said.length; j++) {
                said[j] = in.readUTF();
            }
            words.put(matter, List.of(said));
        }
        return new When(words);
    }

    private static Optional<String> said(DataInputStream in) throws IOException {
        return Optional.of(text(in)).filter(text -> !text.isEmpty());
    }

    private static Optional<Word> topicIfAny(String id) {
        return id.isEmpty() ? Optional.empty() : Optional.of(topic(id));
    }

    private static Word topic(String id) {
        return Word.find(Symptom.class, id).map(Word.class::cast).orElseGet(() -> Word.of(Quality.class, id));
    }

    private static void word(DataOutputStream out, Optional<? extends Word> word) throws IOException {
        out.writeUTF(word.map(Word::id).orElse(""));
    }

    private static <W extends Enum<W> & Word> Optional<W> word(DataInputStream in, Class<W> type) throws IOException {
        return Word.find(type, in.readUTF());
    }

    /** Longer than {@link DataOutputStream#writeUTF} may be. */
    private static void text(DataOutputStream out, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    private static String text(DataInputStream in) throws IOException {
        return new String(in.readNBytes(in.readInt()), StandardCharsets.UTF_8);
    }
}
