package camberwell.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

@Label("Any text at all as a rule file")
class AnyRuleFileTest {

    private static final String SOUND = """
            rule "Kerbs: softer"
                @because("The kerb comes faster than the damper lets the wheel move.")
                @note("front-bump")
            when
                the driver reports kerb-instability
                - at exit
                the caster is more than 4.5 degrees
            then
                propose front-bump softer with certainty 0.35
            end
            """;
    private static final Names NAMES =
            new Names(Set.of("front-bump"), Set.of("front-tyres-cold"), Set.of("slow-in"),
                    Set.of("wet-track-pressure"));

    private static final Dictionary DICTIONARY = dictionary();

    private static Dictionary dictionary() {
        try {
            return Dictionary.read(Path.of(System.getProperty("camberwell.home"), "rules", "dictionary.dsl"));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A sound rule with a piece of any text put in, or in the place of something. */
    @Provide
    Arbitrary<String> damaged() {
        Arbitrary<String> piece = Arbitraries.oneOf(Arbitraries.strings().ofMaxLength(6), Arbitraries.of("\"", "\\",
                "\n", "\r",
                "end\n", "then\n", "rule \"x\"\n", "*/", "/*", "//", ";", "{", "}", ")", "eval(true)", "\u2028",
                        "\u202e",
                "> x", "$", "@", "- at exit\n", "  "));
        return Combinators.combine(Arbitraries.integers().between(0, SOUND.length()),
                Arbitraries.integers().between(0, 12), piece).as((at, gone, put) ->
                SOUND.substring(0, at) + put + SOUND.substring(Math.min(SOUND.length(), at + gone)));
    }

    @Property(tries = 2000)
    @Label("is read to its end, and what passes is sentences of the dictionary")
    void whatPassesIsSentences(@ForAll("damaged") String text) {
        RuleFileReader reader = new RuleFileReader(DICTIONARY, NAMES, "any.dslr", Stage.CHANGES);
        RuleFile file = reader.read(text);
        for (RuleText rule : file.rules()) {
            String canonical = CanonicalRules.of(List.of(rule));
            for (String line : canonical.lines().filter(line -> line.startsWith("    ")).toList()) {
                assertTrue(DICTIONARY.match(true, line.strip()).isPresent()
                        || DICTIONARY.match(false, line.strip()).isPresent(), line);
            }
            assertTrue(canonical.lines().findFirst().orElseThrow().matches("rule \"[^\"\\\\{}$*@#]+\""), canonical);
            assertEquals(1, canonical.lines().filter(line -> line.startsWith("rule")).count());
        }
    }
}
