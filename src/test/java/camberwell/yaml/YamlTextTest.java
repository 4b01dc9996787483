package camberwell.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.yaml.snakeyaml.Yaml;

@Label("Texts written as YAML")
class YamlTextTest {

    /** Words that YAML 1.1 (yaml.org/type, bool, int, float, null, timestamp, merge) takes for something else than text. */
    private static final List<String> TAKEN = List.of("yes", "no", "on", "off", "true", "null", "~", "1.30", "012", "0x1F",
            "1_000", "12:30:45", "2026-05-03", "1e3", ".inf", ".nan", "<<", "=", "", " ", "-", "?", ":", "a: b", "a #b", "'a'",
            "\"a\"", "{a", "[a", "&a", "*a", "!a", "|", ">", "%a", "@a", "`a", "--- a", "...", "a\nb", "\n", "a\r\nb", "tab\tb",
            "\u0007", "\u0085", "\u2028", "\ufeff", "\u00e4", "\ud83c\udfce", " a", "a ", "a:", "- a", "92.4 °C", "100 %");

    @Provide
    Arbitrary<String> texts() {
        return Arbitraries.oneOf(Arbitraries.of(TAKEN), Arbitraries.strings().ofMaxLength(40),
                Arbitraries.strings().withChars("ab:-#'\"{}[],&*!|>%@` \n~0.1yno").ofMaxLength(12)).filter(text ->
                text.codePoints().noneMatch(c -> c >= 0xd800 && c <= 0xdfff || c > 0xfffd && c <= 0xffff));
    }

    @Property
    @Label("a text is read back as it was, by a reader that knows nothing of the writer, as a key and as a value")
    void readBack(@ForAll("texts") String key, @ForAll("texts") String value) throws IOException {
        StringWriter text = new StringWriter();
        try (JsonGenerator yaml = YamlText.document(text)) {
            yaml.writeStartObject();
            yaml.writeStringField("x" + key, value);
            yaml.writeArrayFieldStart("list");
            yaml.writeString(value);
            yaml.writeNumber("0.25");
            yaml.writeEndArray();
            yaml.writeEndObject();
        }
        assertEquals(Map.of("x" + key, value, "list", List.of(value, 0.25)), new Yaml().load(text.toString()),
                text::toString);
    }
}
