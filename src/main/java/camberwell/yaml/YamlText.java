package camberwell.yaml;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLGenerator.Feature;
import com.fasterxml.jackson.dataformat.yaml.util.StringQuotingChecker;
import java.io.IOException;
import java.io.Writer;
import org.yaml.snakeyaml.nodes.NodeId;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.resolver.Resolver;

/** Writes as YAML what is written as JSON elsewhere: the same fields in the same order, for people and their scripts. */
public final class YamlText {

    private static final YAMLFactory FACTORY = YAMLFactory.builder().enable(Feature.MINIMIZE_QUOTES)
            .enable(Feature.INDENT_ARRAYS_WITH_INDICATOR).disable(Feature.SPLIT_LINES)
            .stringQuotingChecker(new Quotes()).build();

    private YamlText() {
    }

    /**
     * What writes one document, from its {@code ---} on. The writer stays open.
     *
     * @throws IOException if it cannot be written to
     */
    public static JsonGenerator document(Writer out) throws IOException {
        return FACTORY.createGenerator(out).disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
    }

    /**
     * A text that YAML would take for a number, a date or a yes is quoted, so that it is read back as a text; so is one with
     * white space other than blanks, which would be read back as another.
     */
    private static final class Quotes extends StringQuotingChecker {

        private static final long serialVersionUID = 1;
        private static final Resolver RESOLVER = new Resolver();

        @Override
        public boolean needToQuoteName(String name) {
            return needToQuoteValue(name);
        }

        @Override
        public boolean needToQuoteValue(String value) {
            return otherThanText(value) || valueHasQuotableChar(value) || value.chars().anyMatch(Quotes::odd);
        }

        private static boolean odd(int c) {
            return c < ' ' || c >= 0x7f && c <= 0xa0 || c == 0x2028 || c == 0x2029 || c == 0xfeff;
        }

        private static boolean otherThanText(String text) {
            return !RESOLVER.resolve(NodeId.scalar, text, true).equals(Tag.STR);
        }
    }
}
