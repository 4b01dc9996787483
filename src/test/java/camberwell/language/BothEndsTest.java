package camberwell.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.problem.Problem;
import camberwell.vocabulary.Axle;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A rule that is written once for both ends")
class BothEndsTest {

    private static final String RULE = """
            // The {axle} of a comment is no rule's.
            rule "{Axle} tyres below their window and the {other-axle} inside: the {axle} is cold"
                @id("COLD-7")
                @because("The {axle} does less work than the {other-axle}.")
                @note("{axle}-tyres-cold")
            when
                the {axle} tyres are below their window
                the {other-axle} tyres are inside their window
            then
                find {axle}-tyres-cold with certainty 0.6
            end

            rule "The surface is wet: the front is cold"
                @because("Water cools.")
                @note("front-tyres-cold")
            when
                the surface is wet
            then
                find front-tyres-cold with certainty 0.3
            end
            """;

    private static RuleFileReader reader() {
        try {
            Set<String> names = Set.of("front-tyres-cold", "rear-tyres-cold");
            return new RuleFileReader(
                    Dictionary.read(Path.of(System.getProperty("camberwell.home"), "rules", "dictionary.dsl")),
                    new Names(Set.of(), names, Set.of(), Set.of()), "cold.dslr", Stage.READINGS);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    @DisplayName("is two rules, each at the line where it was written, with an id of its own")
    void twoRules() {
        RuleFileReader reader = reader();
        List<RuleText> rules = reader.read(RULE).rules();
        assertEquals(List.of(), reader.problems());
        assertEquals(List.of("Front tyres below their window and the rear inside: the front is cold",
                "Rear tyres below their window and the front inside: the rear is cold",
                "The surface is wet: the front is cold"), rules.stream().map(RuleText::name).toList());
        assertEquals(List.of(2, 2, 13), rules.stream().map(RuleText::line).toList());
        assertEquals(List.of(Optional.of("COLD-7F"), Optional.of("COLD-7R"), Optional.empty()),
                rules.stream().map(rule -> rule.standing().id()).toList());
        assertEquals("The rear does less work than the front.", rules.get(1).because());
        assertEquals("rear-tyres-cold", rules.get(1).note());
        assertEquals(List.of(new Statement.Find("rear-tyres-cold", 0.6, false)), rules.get(1).statements());
        assertEquals(7, rules.get(1).conditions().get(0).head().line());
    }

    @Test
    @DisplayName("reaches Drools as the two rules that the reader saw")
    void sameForDrools() {
        String written = BothEnds.instantiated(RULE);
        RuleFileReader reader = reader();
        assertEquals(reader().read(RULE).rules().stream().map(RuleText::name).toList(),
                reader.read(written).rules().stream().map(RuleText::name).toList());
        assertTrue(!written.contains("{axle}") || written.startsWith("// The {axle}"), written);
        assertEquals("nothing is open", BothEnds.instantiated("nothing is open"));
    }

    @Test
    @DisplayName("with a fault has one problem, at the column that somebody typed")
    void oneProblem() {
        RuleFileReader reader = reader();
        reader.read(RULE.replace("the {axle} tyres are below their window", "the {axle} tyres are belaw their window"));
        assertEquals(List.of("cold.dslr:7:5: no sentence of the dictionary reads \"the front tyres are belaw their "
                + "window\"; did you mean \"the front tyres are below their window\"?"),
                reader.problems().stream().map(Problem::text).toList());
        RuleFileReader other = reader();
        other.read(RULE.replace("find {axle}-tyres-cold with certainty 0.6",
                "find {axle}-tyres-cold with certainty 7"));
        assertEquals(List.of("cold.dslr:10:43: a certainty lies between 0.01 and 1.0 and has at most two decimals, "
                + "not 7"), other.problems().stream().map(Problem::text).toList());
    }

    @Test
    @DisplayName("says in its name which end it is")
    void namesTheEnd() {
        RuleFileReader reader = reader();
        reader.read(RULE.replace("{Axle} tyres below their window and the {other-axle} inside: the {axle} is cold",
                "Cold"));
        assertEquals(List.of("cold.dslr:2:1: the rule \"Cold\" stands for both ends; write {axle} into its name, or "
                + "{Axle} where it starts"), reader.problems().stream().map(Problem::text).toList());
    }

    @Test
    @DisplayName("knows no other gap")
    void noOtherGap() {
        RuleFileReader reader = reader();
        reader.read(RULE.replace("the {other-axle} tyres are inside", "the {other} tyres are inside"));
        assertEquals(List.of("cold.dslr:8:9: there is no {other}; a rule for both ends has {axle}, {Axle}, "
                + "{other-axle} and {Other-axle}"), reader.problems().stream().map(Problem::text).toList());
    }

    @Test
    @DisplayName("columns are counted in the line as it was written")
    void columns() {
        String line = "the {other-axle} tyres and the {axle} ones";
        String read = BothEnds.at(Axle.FRONT, line);
        assertEquals("the rear tyres and the front ones", read);
        for (String word : List.of("the", "tyres", "and", "ones")) {
            assertEquals(line.indexOf(word) + 1,
                    BothEnds.columnAsWritten(Axle.FRONT, line, read.indexOf(word) + 1), word);
        }
        assertEquals(line.indexOf("{axle}") + 1,
                BothEnds.columnAsWritten(Axle.FRONT, line, read.indexOf("front") + 1));
    }
}
