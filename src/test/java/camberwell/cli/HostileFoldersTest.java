package camberwell.cli;

import static camberwell.cli.Bench.note;
import static camberwell.cli.Bench.rule;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * A rule folder is read from strangers. Each folder here tries to get something of its own run; the mark that it would
 * leave is looked for, and so is the compiler's output.
 */
@DisplayName("A hostile folder is refused before anything of it is compiled")
class HostileFoldersTest {

    private static final String MARK = "camberwell.test.hostile";
    private static final String RUN = "System.setProperty(\"" + MARK + "\", \"ran\");";
    private static final String KERBS = "the driver reports kerb-instability";
    private static final String SOFTER = "propose front-bump softer with certainty 0.35";
    private static final String SOUND = rule("Kerbs: softer", KERBS, SOFTER);
    private static final String DSLR = "mine/3-changes/kerbs.dslr";

    @TempDir
    private Path directory;

    @BeforeEach
    @AfterEach
    void clear() {
        System.clearProperty(MARK);
    }

    private interface Making {
        void make(Bench bench) throws IOException;
    }

    private record Hostile(String what, Making making, String says) {
    }

    private static Hostile text(String what, String text, String says) {
        return new Hostile(what, bench -> bench.file(DSLR, text), DSLR + says);
    }

    private static Hostile file(String what, String path, String text, String says) {
        return new Hostile(what, bench -> bench.file(DSLR, SOUND).file("mine/" + path, text), "mine/" + path + says);
    }

    private static String raw(int line, int column, String text) {
        return ":" + line + ":" + column + ": raw Drools is not allowed here, only sentences of the dictionary: "
                + text;
    }

    private static List<Hostile> folders() {
        String drl = "package x;\nrule \"r\" when then " + RUN + " end\n";
        List<Hostile> all = new ArrayList<>();
        all.add(text("DRL in then", SOUND.replace(SOFTER, RUN), raw(7, 5, RUN)));
        all.add(text("DRL in when", SOUND.replace(KERBS, "$r : Reported(is(\"oversteer\"))"),
                raw(5, 5, "$r : Reported(is(\"oversteer\"))")));
        all.add(text("eval", SOUND.replace(KERBS, KERBS + "\n    eval(System.exit(3) == null)"),
                raw(6, 5, "eval(System.exit(3) == null)")));
        all.add(text("a > line", SOUND.replace(SOFTER, "> " + RUN), raw(7, 5, "> " + RUN)));
        all.add(text("a > line before then", SOUND.replace(KERBS, ">Day( " + RUN + " true)"),
                raw(5, 5, ">Day( " + RUN + " true)")));
        all.add(text("an import", "import java.lang.Runtime;\n" + SOUND, raw(1, 1, "import java.lang.Runtime;")));
        all.add(text("a static import", "import static java.lang.System.exit\n" + SOUND,
                raw(1, 1, "import static java.lang.System.exit")));
        all.add(text("a global", "global java.util.List list\n" + SOUND, raw(1, 1, "global java.util.List list")));
        all.add(text("a function", "function boolean f() { " + RUN + " return true; }\n" + SOUND,
                raw(1, 1, "function boolean f() { " + RUN + " return true; }")));
        all.add(text("a declare", "declare Mine\n" + SOUND, raw(1, 1, "declare Mine")));
        all.add(text("a query", "query \"q\" Day() end\n" + SOUND, raw(1, 1, "query \"q\" Day() end")));
        all.add(text("a package", "package java.lang\n" + SOUND, raw(1, 1, "package java.lang")));
        all.add(text("a dialect", "dialect \"mvel\"\n" + SOUND, raw(1, 1, "dialect \"mvel\"")));
        all.add(text("another dictionary", "expander other.dsl\n" + SOUND, raw(1, 1, "expander other.dsl")));
        all.add(text("a rule unit", "unit Mine\n" + SOUND, raw(1, 1, "unit Mine")));
        all.add(text("an attribute", SOUND.replace("when\n", "salience ( 100 )\nwhen\n"), raw(4, 1,
                "salience ( 100 )")));
        all.add(text("extends", SOUND.replace("softer\"\n", "softer\" extends \"Other\"\n"),
                ":1:1: expected: rule \"its name\""));
        all.add(text("another annotation", SOUND.replace("when\n", "@watch(\"*\")\nwhen\n"),
                ":4:1: no annotation @watch is allowed here"));
        all.add(text("an annotation that computes", SOUND.replace("when\n", "@because(System.exit(3))\nwhen\n"),
                ":4:1: an annotation reads @because(\"...\"), on one line"));
        all.add(text("a quote that ends the reason", SOUND.replace("move.\")", "move.\"); " + RUN + " //\")"),
                ":2:5: an annotation reads @because(\"...\"), on one line"));
        all.add(text("a backslash in the name", SOUND.replace("Kerbs: softer", "Kerbs\\\" + f() + \\\""),
                ":1:12: a backslash has no place in a rule"));
        all.add(text("a unicode escape in the reason", SOUND.replace("move.", "move.\\u0022);"),
                ":2:73: a backslash has no place in a rule"));
        all.add(text("a Java escape in a captured word", SOUND.replace("kerb-instability", "kerb\\u002dinstability"),
                ":5:28: a backslash has no place in a rule"));
        all.add(text("a quote in a captured word", SOUND.replace("kerb-instability", "kerb\")||f(\""),
                ":5:24: \"kerb\")||f(\"\" is no symptom"));
        all.add(text("code in a number", rule("Caster", "the caster is more than f() degrees", SOFTER),
                ":5:29: \"f()\" is not a number"));
        all.add(text("code in a certainty", SOUND.replace("0.35", "0.35);f("),
                ":7:46: a certainty lies between 0.01 and 1.0 and has at most two decimals, not 0.35);f("));
        all.add(text("the end of a comment in the name", SOUND.replace("Kerbs: softer", "Kerbs */ softer"),
                ":1:7: a rule's name is made of letters, numbers and plain punctuation"));
        all.add(text("a template in the name", SOUND.replace("Kerbs: softer", "Kerbs @{softer}"),
                ":1:7: a rule's name is made of letters, numbers and plain punctuation"));
        all.add(text("the word expander in the name", SOUND.replace("Kerbs: softer", "Kerbs expander softer"),
                ":1:7: the word \"expander\" has no place in a rule's name"));
        all.add(text("a carriage return that hides a line", SOUND.replace(KERBS, KERBS + "\r    " + RUN), raw(6, 5,
                RUN)));
        all.add(text("a line separator that hides a line", SOUND.replace(KERBS, KERBS + "\u2028" + RUN),
                ":5:40: a control character has no place in a rule"));
        all.add(text("a text that runs from right to left", SOUND.replace("Kerbs: softer", "Kerbs \u202esofter"),
                ":1:13: a control character has no place in a rule"));
        all.add(text("a null character", SOUND.replace("Kerbs: softer", "Kerbs\u0000softer"),
                ":1:12: a control character has no place in a rule"));
        all.add(text("a block comment", "/* " + SOUND + "*/\n", raw(1, 1, "/* rule \"Kerbs: softer\"")));
        all.add(text("a comment within a rule", SOUND.replace(SOFTER, "// " + RUN + "\n    " + SOFTER), raw(7, 5,
                "// " + RUN)));
        all.add(text("a line longer than any sentence", SOUND.replace("Kerbs: softer", "K".repeat(2000)),
                ":1:1: the line is longer than 1000 characters"));
        all.add(text("two rules that feed each other for ever",
                rule("A", "front-tyres-cold is likely", SOFTER).replace(SOFTER,
                        "find rear-tyres-cold with certainty 0.5"),
                ":7:5: a rule of the stage 3-changes does not find; it belongs into 1-readings or 2-causes"));
        all.add(new Hostile("a chain that loops", bench -> bench.file("mine/2-causes/loop.dslr",
                rule("A", "front-tyres-cold is likely", "find rear-tyres-cold with certainty 0.5")
                + rule("B", "rear-tyres-cold is likely", "find front-tyres-cold with certainty 0.5")),
                "mine/2-causes/loop.dslr:1:1: these rules go round in circles: front-tyres-cold -> rear-tyres-cold "
                        + "(\"A\") -> "
                + "front-tyres-cold (\"B\")"));
        all.add(new Hostile("a rule that feeds itself", bench -> bench.file("mine/2-causes/loop.dslr",
                rule("A", "front-tyres-cold is likely", "find front-tyres-cold with certainty 0.5")),
                "mine/2-causes/loop.dslr:1:1: these rules go round in circles: front-tyres-cold -> "
                        + "front-tyres-cold (\"A\")"));
        all.add(file("a DRL file", "3-changes/run.drl", drl,
                ":1:1: raw Drools is not allowed here; only a folder named with --trust may hold it"));
        all.add(file("a DRL file in capitals", "RUN.DRL", drl,
                ":1:1: raw Drools is not allowed here; only a folder named with --trust may hold it"));
        all.add(file("a dictionary", "dictionary.dsl", "[then]run=" + RUN + "\n",
                ":1:1: a folder has no dictionary of its own: rules are written in the built-in sentences"));
        all.add(file("a class", "knowledge-notes/causes/Run.class", "x",
                ":1:1: a rule folder holds sentences and notes, no programs"));
        all.add(file("a decision table", "3-changes/table.xls", "x",
                ":1:1: a rule folder holds sentences and notes, no programs"));
        all.add(file("a Drools file under another name", "3-changes/kerbs.dslr.txt", drl,
                ":1:1: a folder of rules holds files that end in .dslr and nothing else"));
        all.add(file("a rule file out of place", "6-more/more.dslr", SOUND, ":1:1: rules lie right below 1-readings, "
                + "2-causes, 3-changes, 4-cautions, 5-driving, in files that end in .dslr"));
        all.add(file("a file that is too large", "2-causes/big.dslr", "// x\n".repeat(120_000),
                ":1:1: the file is larger than 512 KiB"));
        all.add(new Hostile("a file that is no text", bench -> {
            bench.file(DSLR, "");
            Files.write(bench.directory.resolve(DSLR), new byte[] {(byte) 0xca, (byte) 0xfe, (byte) 0xba, (byte) 0xbe});
        }, DSLR + ":1:1: is not UTF-8 text; save the file as UTF-8"));
        all.add(new Hostile("a byte that is no text", bench -> {
            bench.file(DSLR, SOUND);
            Files.write(bench.directory.resolve(DSLR), "// one\n// caf\u00e9\n".getBytes(StandardCharsets.ISO_8859_1));
        }, DSLR + ":2:7: is not UTF-8 text; save the file as UTF-8"));
        all.add(new Hostile("a link out of the folder", bench -> {
            bench.file("secret.dslr", SOUND).file(DSLR, SOUND);
            Files.createSymbolicLink(bench.directory.resolve("mine/3-changes/link.dslr"),
                    bench.directory.resolve("secret.dslr"));
        }, "mine/3-changes/link.dslr:1:1: is a link out of the folder"));
        all.add(new Hostile("a linked folder", bench -> {
            bench.file("elsewhere/kerbs.dslr", SOUND).file("mine/readme.txt", "x");
            Files.createSymbolicLink(bench.directory.resolve("mine/3-changes"), bench.directory.resolve("elsewhere"));
        }, "mine/3-changes:1:1: is a link out of the folder"));
        all.add(new Hostile("a note that is a link out of the folder", bench -> {
            bench.file("secret.md", note("cause")).file("mine/knowledge-notes/causes/rims.md", note("cause"));
            Files.createSymbolicLink(bench.directory.resolve("mine/knowledge-notes/causes/link.md"),
                    bench.directory.resolve("secret.md"));
        }, "mine/knowledge-notes/causes/link.md:1:1: is a link out of the folder"));
        all.add(file("a note that steers the screen", "knowledge-notes/causes/rims.md",
                note("cause").replace("Hot rims", "Hot \u001b[2J rims"),
                ":2:12: a control character has no place in a rule folder"));
        all.add(file("a note that steers the screen by an escape", "knowledge-notes/causes/rims.md",
                note("cause").replace("Hot rims", "\"Hot \\e[2J rims\""),
                ":2:13: a backslash has no place in a rule folder"));
        all.add(text("nothing but noise", SOUND.replace(SOFTER, "noise and more noise\n".repeat(20_000)),
                ":106:1: the rest of the file is not read: 100 problems are enough for now"));
        all.add(new Hostile("more files than anybody writes", bench -> {
            for (int i = 0; i < 1001; i++) {
                bench.file("mine/3-changes/" + i + ".dslr", "");
            }
        }, "the folder has more than 1000 files"));
        return all;
    }

    @TestFactory
    List<DynamicTest> nothingOfItIsCompiledOrRun() {
        List<DynamicTest> tests = new ArrayList<>();
        List<Hostile> all = folders();
        assertTrue(all.size() >= 25);
        for (int i = 0; i < all.size(); i++) {
            Hostile hostile = all.get(i);
            Path place = directory.resolve("hostile-" + i);
            tests.add(DynamicTest.dynamicTest(hostile.what(), () -> refused(hostile, place)));
        }
        return tests;
    }

    private static void refused(Hostile hostile, Path place) throws IOException {
        Files.createDirectories(place);
        Bench bench = new Bench(place);
        hostile.making().make(bench);
        bench.file("case.yaml", Bench.kerbCase());
        Bench.Run advise = bench.run("advise", "--rules", "mine", "case.yaml");
        Bench.Run check = bench.run("rules", "check", "mine");
        assertAll(() -> assertEquals(2, advise.code()),
                () -> assertEquals("", advise.out()),
                () -> assertTrue(advise.err().contains(hostile.says()), () -> hostile.says() + "\nin\n" + advise.err()),
                () -> assertTrue(check.all().contains(hostile.says()), check::all),
                () -> assertEquals(1, check.code()),
                () -> assertFalse(bench.compiled(), "nothing is compiled"),
                () -> assertFalse(System.getProperties().containsKey(MARK), "nothing is run"));
    }

    @Test
    @DisplayName("the mark is found when something does run: the same code in a trusted folder")
    void trustedCodeDoesRun() {
        Bench bench = new Bench(directory).file("case.yaml", Bench.kerbCase())
                .file("mine/own.drl", "package mine;\nimport camberwell.fact.Day;\nrule \"Mark\"\nwhen\n    "
                + "Day()\nthen\n    "
                        + RUN + "\nend\n");
        assertEquals(2, bench.run("advise", "--rules", "mine", "case.yaml").code());
        assertFalse(System.getProperties().containsKey(MARK));
        Bench.Run run = bench.run("advise", "--rules", "mine", "--trust", "mine", "case.yaml");
        assertEquals(0, run.code(), run.err());
        assertTrue(bench.compiled());
        assertEquals("ran", System.getProperty(MARK));
    }

    @Test
    @DisplayName("more rules than anybody writes would take a long time to compare, and are not looked at")
    void tooManyRules() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 2001; i++) {
            text.append("rule \"").append(i).append("\"\n");
        }
        Bench bench = new Bench(directory).file(DSLR, text.toString()).file("case.yaml", Bench.kerbCase());
        Bench.Run run = bench.run("advise", "--rules", "mine", "case.yaml");
        assertEquals("mine: has more than 2000 rules\n", run.err());
        assertEquals(2, run.code());
        assertFalse(bench.compiled());
    }

    @Test
    void trustIsForAFolderThatIsUsed() {
        Bench bench = new Bench(directory).file(DSLR, SOUND).file("other/pack.yaml", "").file("case.yaml",
                Bench.kerbCase());
        Bench.Run run = bench.run("advise", "--rules", "mine", "--trust", "other", "case.yaml");
        assertEquals("--trust other: this folder is not among those whose rules are used\n", run.err());
        assertEquals(2, run.code());
    }

    @Test
    @DisplayName("a trusted rule set that fires without end is stopped, and it is said why")
    void theFiringLimit() {
        Bench bench = new Bench(directory).file("case.yaml", Bench.kerbCase()).file("mine/loop.drl", """
                package mine;
                import camberwell.fact.Day;
                rule "Round and round"
                when
                    $day : Day()
                then
                    delete($day);
                    insert(new Day($day.conditions()));
                end
                """);
        Bench.Run run = bench.run("advise", "--rules", "mine", "--trust", "mine", "case.yaml");
        assertEquals("the rules fired 20000 times and were not done: some of them go round in circles\n", run.err());
        assertEquals(2, run.code());
    }

    @Test
    @DisplayName("every character that a name may have reaches the advice as it was written")
    void namesComeThroughUnharmed() throws IOException {
        String name = "Überkerbs, 100%d; 'quoted' (a/b) + 5°: what?! & %n";
        Bench bench = new Bench(directory).file("case.yaml", Bench.kerbCase()).file(DSLR,
                SOUND.replace("Kerbs: softer", name)
                .replace("The kerb comes", "*/ // ${x} %s \\\\ kerbs come".replace("\\\\", "'")));
        Bench.Run run = bench.run("advise", "--format", "json", "--rules", "mine", "case.yaml");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("\"" + name + "\""), run.out());
        assertTrue(new String(Files.readAllBytes(bench.directory.resolve(DSLR)), StandardCharsets.UTF_8)
                .contains("*/ //"));
    }
}
