package camberwell.knowledge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The image of the notes")
class NoteImageTest {

    private final Notes notes = notes();

    private static Notes notes() {
        try {
            return Notes.in(List.of(Path.of(System.getProperty("camberwell.home"), "knowledge-notes")));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    @DisplayName("holds every built-in note, and each says what its file says")
    void same() throws IOException {
        NoteImage image = NoteImage.load();
        List<String> differing = new ArrayList<>();
        for (Note.Kind kind : Note.Kind.values()) {
            for (String name : notes.names(kind)) {
                String text = new String(notes.bytes(name), StandardCharsets.UTF_8);
                Note parsed = new NoteReader(name, name, kind, text).read();
                if (!image.find(name, notes.bytes(name)).equals(Optional.of(parsed))) {
                    differing.add(name);
                }
            }
        }
        assertFalse(notes.names().isEmpty());
        assertEquals(List.of(), differing);
    }

    @Test
    @DisplayName("says nothing of a note whose file was edited since")
    void edited() throws IOException {
        byte[] text = notes.bytes("front-toe");
        byte[] edited = new String(text, StandardCharsets.UTF_8).replace("toe", "Toe").getBytes(StandardCharsets.UTF_8);
        assertEquals(Optional.empty(), NoteImage.load().find("front-toe", edited));
    }
}
