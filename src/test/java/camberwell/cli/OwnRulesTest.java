package camberwell.cli;

import static camberwell.cli.Bench.rule;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.pack.RulePack;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("An instructor's own rules beside the built-in ones")
class OwnRulesTest {

    private static final String KERBS = "the driver reports kerb-instability";
    private static final String BUILT_IN = "Kerbs unsettle the car: take less of them";

    @TempDir
    private Path directory;
    private Bench bench;

    @BeforeEach
    void open() {
        bench = new Bench(directory).file("case.yaml", Bench.kerbCase());
    }

    private JsonNode advice(String... more) throws IOException {
        List<String> arguments = new ArrayList<>(List.of("advise", "--format", "json", "case.yaml"));
        arguments.addAll(List.of(more));
        Bench.Run run = bench.run(arguments.toArray(String[]::new));
        assertEquals(0, run.code(), run.err());
        return new ObjectMapper().readTree(run.out());
    }

    private static List<String> drivingRules(JsonNode advice) {
        List<String> rules = new ArrayList<>();
        advice.get("driving").forEach(driving -> driving.get("rules").forEach(rule -> rules.add(rule.asText())));
        return rules;
    }

    @Test
    void aRuleOfOnesOwnIsAddedToTheBuiltInOnes() throws IOException {
        bench.file("mine/3-changes/kerbs.dslr", rule("Kerbs: softer", KERBS,
                "propose front-bump softer with certainty 0.6"));
        double alone = advice().get("changes").get(0).get("certainty").asDouble();
        JsonNode first = advice("--rules", "mine").get("changes").get(0);
        assertEquals("front-bump", first.get("adjuster").asText());
        assertTrue(first.get("rules").toString().contains("Kerbs: softer"));
        // EMYCIN: x + y - xy (Buchanan and Shortliffe, 1984).
        assertEquals(alone + 0.6 - alone * 0.6, first.get("certainty").asDouble(), 0.011);
    }

    @Test
    @DisplayName("the author is heard where the rule decided, by name and version, and explain is told of the folder")
    void theAuthorIsHeard() throws IOException {
        bench.file("mine/pack.yaml", "name: tall-kerbs\nversion: \"1.2\"\nauthor: A. Tutor\n")
                .file("mine/3-changes/kerbs.dslr", rule("Kerbs: softer", KERBS,
                "propose front-bump softer with certainty 0.6"));
        String words = "The kerb comes faster than the damper lets the wheel move. (from tall-kerbs 1.2, A. Tutor)";
        Bench.Run run = bench.run("advise", "--rules", "mine", "case.yaml");
        assertTrue(run.out().replaceAll("\\s+", " ").contains("Why " + words), run.out());
        assertEquals(words, advice("--rules", "mine").get("changes").get(0).get("authors").get(0).asText());
        assertFalse(advice().get("changes").get(0).has("authors"));
        String printed = run.out().lines().filter(line -> line.contains("camberwell explain")).findFirst().orElseThrow();
        assertTrue(printed.contains("--rules mine"), printed);
        Bench.Run explained = bench.run("explain", "case.yaml", "--rules", "mine", "--change",
                "front-bump softer");
        assertTrue(explained.out().contains("Kerbs: softer"), explained.all());
    }

    @Test
    @DisplayName("a rule on trial says so, and is known by its id")
    void onTrial() {
        bench.file("mine/3-changes/kerbs.dslr", rule("Kerbs: softer", KERBS,
                "propose front-bump softer with certainty 0.6").replace("    @note",
                "    @id(\"TALL-1\")\n    @since(\"1.0\")\n    @status(\"trial\")\n    @note"));
        Bench.Run explained = bench.run("explain", "case.yaml", "--rules", "mine", "--change", "front-bump softer");
        assertTrue(explained.out().replaceAll("\\s+", " ")
                .contains("\"Kerbs: softer\" (TALL-1, mine/3-changes/kerbs.dslr:1, on trial)"), explained.out());
    }

    @Test
    @DisplayName("a rule for both ends is explained at the end that it fired for, at the line where it stands")
    void bothEnds() {
        bench.file("mine/3-changes/kerbs.dslr", rule("Kerbs: softer at the {axle}", "{axle}-bump", KERBS,
                "propose {axle}-bump softer with certainty 0.6"));
        for (String axle : List.of("front", "rear")) {
            Bench.Run explained = bench.run("explain", "case.yaml", "--rules", "mine", "--change",
                    axle + "-bump softer");
            assertTrue(explained.out().replaceAll("\\s+", " ").contains("\"Kerbs: softer at the " + axle
                    + "\" (mine/3-changes/kerbs.dslr:1)"), explained.all());
        }
    }

    @Test
    @DisplayName("a rule that is replaced by one of the same name neither fires nor is listed")
    void aReplacedRuleIsGone() throws IOException {
        assertTrue(drivingRules(advice()).contains(BUILT_IN));
        bench.file("mine/5-driving/kerbs.dslr", rule(BUILT_IN, "use-less-kerb", KERBS + "\n- only once",
                "advise the driver use-less-kerb with certainty 0.5").replace("when\n", "    @replaces(\"" + BUILT_IN
                + "\")\nwhen\n"));
        assertFalse(drivingRules(advice("--rules", "mine")).contains(BUILT_IN), "the new one asks for more");
        Engine engine = new Engine(Bench.home(), bench.cache).withRules(List.of(
                RulePack.read(directory.resolve("mine"), "mine", false)));
        assertEquals("mine/5-driving/kerbs.dslr", engine.rules().rules().get(BUILT_IN).file());
        assertEquals(new Engine(Bench.home(), bench.cache).rules().rules().size(), engine.rules().rules().size());
    }

    @Test
    void aReplacedRuleOfAnotherNameIsGoneToo() throws IOException {
        bench.file("mine/5-driving/kerbs.dslr", rule("Kerbs: fewer", "use-less-kerb", KERBS,
                "advise the driver use-less-kerb with certainty 0.3").replace("when\n", "    @replaces(\"" + BUILT_IN
                + "\")\nwhen\n"));
        assertEquals(List.of("Kerbs: fewer"), drivingRules(advice("--rules", "mine")));
    }

    @Test
    void aSecondFolderCanReplaceARuleOfTheFirst() throws IOException {
        bench.file("one/5-driving/kerbs.dslr", rule("Kerbs: fewer", "use-less-kerb", KERBS,
                "advise the driver use-less-kerb with certainty 0.3"));
        bench.file("two/5-driving/kerbs.dslr", rule("Kerbs: none", "use-less-kerb", KERBS,
                "advise the driver use-less-kerb with certainty 0.4").replace("when\n",
                "    @replaces(\"Kerbs: fewer\")\nwhen\n"));
        List<String> rules = drivingRules(advice("--rules", "one", "--rules", "two"));
        assertTrue(rules.containsAll(List.of("Kerbs: none", BUILT_IN)) && !rules.contains("Kerbs: fewer"),
                rules::toString);
    }

    @Test
    @DisplayName("try shows what fired, in order and on what, and the advice without and with the folder")
    void tryingAFolder() {
        bench.file("mine/3-changes/kerbs.dslr", rule("Kerbs: softer", KERBS,
                "propose front-bump softer with certainty 0.6")
                + rule("Slides: softer", "the driver reports oversteer",
                "propose front-bump stiffer with certainty 0.3"));
        Bench.Run run = bench.run("rules", "try", "mine", "--case", "case.yaml");
        assertEquals(0, run.code(), run.err());
        List<String> lines = run.out().lines().toList();
        int own = lines.indexOf(lines.stream().filter(line -> line.matches("  \\* \\d+\\. Kerbs: softer")).findFirst()
                .orElseThrow(() -> new AssertionError(run.out())));
        assertEquals("      on strong kerb instability", lines.get(own + 1));
        assertTrue(lines.contains("  * did not fire: Slides: softer"), run.out());
        assertTrue(lines.containsAll(List.of("Without mine", "With mine", "What mine changes",
                "  - Front bump softer moved from number 2 to 1", "  - Rear bump softer moved from number 1 to 2")),
                        run.out());
    }

    @Test
    void tryingAsJson() throws IOException {
        bench.file("mine/3-changes/kerbs.dslr", rule("Kerbs: softer", KERBS,
                "propose front-bump softer with certainty 0.6"));
        JsonNode tried = new ObjectMapper().readTree(
                bench.run("rules", "try", "mine", "--case", "case.yaml", "--format", "json").out()).get(0);
        List<String> own = new ArrayList<>();
        tried.get("fired").forEach(fired -> own.add(fired.get("own").asBoolean() ? fired.get("rule").asText() : ""));
        assertTrue(own.contains("Kerbs: softer"), own::toString);
        assertEquals("rear-bump", tried.get("without").get(0).get("adjuster").asText());
        assertEquals("front-bump", tried.get("with").get(0).get("adjuster").asText());
        assertEquals(2, tried.get("difference").get("changes").size());
    }

    @Test
    void tryingWithoutACase() {
        bench.file("mine/3-changes/kerbs.dslr", rule("Kerbs: softer", KERBS,
                "propose front-bump softer with certainty 0.6"));
        Bench.Run run = bench.run("rules", "try", "mine");
        assertEquals("Name a case with --case: mine has none of its own in demo-cases.\n", run.err());
        assertEquals(2, run.code());
    }

    @Test
    @DisplayName("compare tells over many cases which changes appeared, vanished or moved")
    void comparing() throws IOException {
        bench.file("cases/kerbs.yaml", Bench.kerbCase())
                .file("cases/calm.yaml", Bench.kerbCase().replace("kerb-instability", "light-steering"))
                .file("cases/cars/no-case.yaml", "name: x\n");
        bench.file("mine/3-changes/kerbs.dslr",
                rule("Kerbs: softer", KERBS, "oppose rear-bump softer with certainty 0.9"));
        Bench.Run run = bench.run("rules", "compare", "built-in", "mine", "--cases", "cases");
        assertEquals("""
                Kerbs
                  - Front bump softer moved from number 2 to 1
                  - Rear bump softer vanished: was number 1

                2 cases compared; the advice differs on 1
                """, run.out());
        Bench.Run back = bench.run("rules", "compare", "mine", "built-in", "--cases", "cases", "--format", "json");
        JsonNode json = new ObjectMapper().readTree(back.out());
        assertEquals(2, json.get("cases").asInt());
        JsonNode appeared = json.get("differences").get(0).get("changes").get(1);
        assertEquals("rear-bump", appeared.get("adjuster").asText());
        assertFalse(appeared.has("before"));
        assertEquals(1, appeared.get("after").get("rank").asInt());
        assertTrue(bench.run("rules", "compare", "mine", "mine", "--cases", "cases").out()
                .endsWith("2 cases compared; the advice is the same on all of them\n"));
    }

    @Test
    void findingASentence() throws IOException {
        Bench.Run run = bench.run("rules", "sentences", "tread", "middle", "hotter");
        assertEquals("""
                What the pyrometer and the gauge read, as bare numbers; of an axle the mean of its tyres that were
                read
                - the {place} tread is hotter in the middle by more than {figure} K
                    means: middle less the mean of both edges, a bare difference in kelvin
                    for instance: the front-left tread is hotter in the middle by more than 10 K

                What the pyrometer and the gauge show; each is as certain as the reading is clear
                - the {axle} tread is hotter in the middle
                    means: against the mean of both edges; from 3 K on, beyond doubt from 8 K
                    for instance: the front tread is hotter in the middle

                The words that fit
                {place}    front-left, front-right, rear-left, rear-right, front, rear
                {figure}   a number, with a point where it has decimals
                {axle}     front, rear
                """, run.out());
        assertEquals(1, bench.run("rules", "sentences", "carburettor").code());
        JsonNode all = new ObjectMapper().readTree(bench.run("rules", "sentences", "--format", "json").out());
        assertEquals(new Engine(Bench.home(), bench.cache).dictionary().sentences().size(), all.size());
    }

    @Test
    @DisplayName("every sentence's example is a sentence")
    void examplesAreSentences() throws IOException {
        JsonNode all = new ObjectMapper().readTree(bench.run("rules", "sentences", "--format", "json").out());
        for (JsonNode sentence : all) {
            assertTrue(new Engine(Bench.home(), bench.cache).dictionary().match(sentence.get("part").asText()
                    .equals("when"),
                    sentence.get("example").asText()).isPresent(), sentence.toString());
        }
    }

    @Test
    @DisplayName("a new rule comes from the answers, is sound, and fires in the case made for it")
    void writingARule() throws IOException {
        String answers = String.join("\n", "chnages", "changes", "the front tyres are below their window", "caster",
                "2", "4.5",
                "", "wing", "1", "front-wing", "softer", "more", "0.5", "", "Cold \"tyres\"", "Cold tyres want load.",
                        "",
                "", "Cold front tyres want load.", "", "A. Author, Tyres, 1990", "");
        Bench.Run run = bench.runWith(answers, "rules", "new", "Cold and little caster: more wing", "--into", "mine");
        assertEquals(0, run.code(), run.all());
        assertEquals("""
                rule "Cold and little caster: more wing"
                    @because("Cold tyres want load.")
                    @note("cold-and-little-caster-more-wing")
                when
                    the front tyres are below their window
                    the caster is less than 4.5 degrees
                then
                    propose front-wing more with certainty 0.5
                end
                """, Files.readString(directory.resolve("mine/3-changes/cold-and-little-caster-more-wing.dslr")),
                run.out());
        Bench.Run check = bench.run("rules", "check", "mine");
        assertEquals("1 rule and 1 note checked: all is well\n", check.out());
        Bench.Run tried = bench.run("rules", "try", "mine");
        assertTrue(tried.out().matches("(?s).*\\* \\d+\\. Cold and little caster: more wing.*"), tried.out());
        Bench.Run again = bench.runWith(answers, "rules", "new", "Cold and little caster: more wing", "--into", "mine");
        assertEquals("mine/3-changes/cold-and-little-caster-more-wing.dslr: is there already; give the rule "
                + "another name\n",
                again.err());
    }

    @Test
    @DisplayName("when the answers end too early nothing is written")
    void nothingIsWrittenByHalf() {
        Bench.Run run = bench.runWith("changes\n" + KERBS + "\n\n", "rules", "new", "Kerbs: softer", "--into", "mine");
        assertEquals("-: the answers ended at: then>\n", run.err());
        assertEquals(2, run.code());
        assertFalse(Files.exists(directory.resolve("mine")));
    }

    @Test
    @DisplayName("watch checks and tries at once, and again when a file is saved")
    void watching() throws Exception {
        bench.file("mine/3-changes/kerbs.dslr", rule("Kerbs: softer", KERBS,
                "propose front-bump softer with certainty 6"));
        CompletableFuture<Bench.Run> watch =
                CompletableFuture.supplyAsync(() -> bench.run("rules", "watch", "mine", "--case", "case.yaml",
                        "--rounds", "2"));
        // The file is saved until the watch has seen it, since nothing tells when the watch has begun.
        for (int save = 0; save < 300 && !watch.isDone(); save++) {
            TimeUnit.MILLISECONDS.sleep(400);
            if (!watch.isDone() && save % 5 == 0) {
                bench.file("mine/3-changes/kerbs.dslr",
                        rule("Kerbs: softer", KERBS, "propose front-bump softer with certainty 0.6"));
            }
        }
        Bench.Run run = watch.get(60, TimeUnit.SECONDS);
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("What mine changes\n  - Front bump softer moved from number 2 to 1\n"
                + "  - Rear bump softer moved from number 1 to 2\n  - front-bump softer, why: is now"), run.out());
    }

    @Test
    @DisplayName("a new rule is talked over: back takes an answer back, review shows them, quit leaves no trace")
    void talkedOver() throws IOException {
        String answers = String.join("\n", "changes", "the front tyres are above their window", "back",
                "the front tyres are below their window", "review", "help", "", "propose front-wing more with certainty 0.4", "",
                "Cold tyres want load.", "front-wing") + "\n";
        Bench.Run run = bench.runWith(answers, "rules", "new", "Cold fronts: more wing", "--into", "mine");
        assertEquals(0, run.code(), run.all());
        assertTrue(run.out().contains("  when> the front tyres are below their window"), run.out());
        String written = Files.readString(directory.resolve("mine/3-changes/cold-fronts-more-wing.dslr"));
        assertTrue(written.contains("below their window") && !written.contains("above their window"), written);
        Bench.Run left = bench.runWith("changes\nquit\n", "rules", "new", "Another", "--into", "theirs");
        assertEquals(0, left.code(), left.all());
        assertTrue(left.out().endsWith("Nothing was written.\n"), left.out());
        assertFalse(Files.exists(directory.resolve("theirs")));
    }
}
