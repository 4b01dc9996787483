package camberwell.cli;

import static camberwell.cli.Bench.note;
import static camberwell.cli.Bench.rule;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Packs, cases and logs of strangers that are not what they seem. Each is refused with its name and a reason in words, or
 * shown without doing anything; what lies outside of it is neither read nor changed.
 */
@DisplayName("A stranger's pack, case or log does no harm")
class HostilePacksTest {

    private static final String SECRET = "quite-secret-4711";
    private static final String KERBS = "the driver reports kerb-instability";
    private static final String SOUND = rule("Kerbs: softer", KERBS, "propose front-bump softer with certainty 0.35");
    private static final String MANIFEST = "name: kerb-school\nversion: 1.2\nauthor: A. Tutor\nneeds: [camberwell 0.1.0]\n";
    private static final Pattern JAVA =
            Pattern.compile("Exception|\\bat camberwell\\.|java\\.|(: |\\()null\\b|fasterxml|snakeyaml");
    private static final Pattern STEERS =
            Pattern.compile("[\\u0000-\\u0008\\u000b-\\u001f\\u007f-\\u009f\\u202a-\\u202e\\u2066-\\u2069]");
    private static final Pattern EXCERPT = Pattern.compile("(?m)^ +\\d* \\|.*$|\"[^\"]*\"");
    private static final int END = 22;

    @TempDir
    private Path directory;

    private void harmless(Bench.Run run) throws IOException {
        assertAll(() -> assertTrue(run.code() >= 0 && run.code() <= 2, () -> "exit code " + run.code()),
                () -> assertFalse(JAVA.matcher(EXCERPT.matcher(run.err()).replaceAll("")).find(), run::err),
                () -> assertFalse(STEERS.matcher(run.all()).find(), run::all),
                () -> assertFalse(run.all().contains(SECRET), run::all),
                () -> assertTrue(run.code() == 0 || !run.all().isBlank(), "refused without a word"));
    }

    // Zip files that tell one program this and another that.

    private interface Twist {
        byte[] of(byte[] zip) throws IOException;
    }

    private static byte[] zip(String... namesAndTexts) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (int i = 0; i < namesAndTexts.length; i += 2) {
                zip.putNextEntry(new ZipEntry(namesAndTexts[i]));
                zip.write(namesAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
                zip.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    private static byte[] sound() throws IOException {
        return zip("pack.yaml", MANIFEST, "3-changes/kerbs.dslr", SOUND);
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        Arrays.stream(parts).forEach(all::writeBytes);
        return all.toByteArray();
    }

    private static ByteBuffer little(byte[] zip) {
        return ByteBuffer.wrap(zip).order(ByteOrder.LITTLE_ENDIAN);
    }

    private static int contents(byte[] zip) {
        return little(zip).getInt(zip.length - END + 16);
    }

    /** Sets two bytes, counted from where the table of contents begins or, with {@code local}, from the first entry. */
    private static Twist two(boolean local, int at, int value) {
        return zip -> {
            little(zip).putShort((local ? 0 : contents(zip)) + at, (short) value);
            return zip;
        };
    }

    private static Twist four(boolean local, int at, int value) {
        return zip -> {
            little(zip).putInt((local ? 0 : contents(zip)) + at, value);
            return zip;
        };
    }

    private static Twist end(int at, int value) {
        return zip -> {
            little(zip).putShort(zip.length - END + at, (short) value);
            return zip;
        };
    }

    private static Twist cut(int last) {
        return zip -> Arrays.copyOf(zip, zip.length - last);
    }

    private static byte[] commented(byte[] zip, byte[] comment) {
        little(zip).putShort(zip.length - 2, (short) comment.length);
        return joined(zip, comment);
    }

    private static Map<String, Twist> twists() {
        String other = SOUND.replace("0.35", "0.9");
        Map<String, Twist> all = new LinkedHashMap<>();
        all.put("nothing twisted", zip -> zip);
        all.put("another zip file before it", zip -> joined(zip("3-changes/kerbs.dslr", other), zip));
        all.put("another zip file behind it", zip -> joined(zip, zip("3-changes/kerbs.dslr", other)));
        all.put("text before it", zip -> joined("#!/bin/sh\nexit\n".getBytes(StandardCharsets.US_ASCII), zip));
        all.put("bytes behind it", zip -> joined(zip, new byte[100]));
        all.put("an end in its comment", zip -> commented(zip,
                Arrays.copyOfRange(sound(), sound().length - END, sound().length)));
        all.put("a whole zip file in its comment", zip -> commented(zip, zip("3-changes/kerbs.dslr", other)));
        all.put("a comment that says nothing", zip -> commented(zip, "by A. Tutor".getBytes(StandardCharsets.US_ASCII)));
        all.put("fewer entries than there are, in all", end(10, 1));
        all.put("fewer entries than there are, on this disk", end(8, 1));
        all.put("more entries than there are", end(10, 7));
        all.put("a second disk", end(4, 1));
        all.put("a table that begins elsewhere", zip -> {
            little(zip).putInt(zip.length - END + 16, 0);
            return zip;
        });
        all.put("a table that is shorter than it says", zip -> {
            little(zip).putInt(zip.length - END + 12, 10);
            return zip;
        });
        all.put("an encrypted entry", two(false, 8, 1));
        all.put("an entry that only its own header calls encrypted", two(true, 6, 1));
        all.put("an unknown packing", two(false, 10, 99));
        all.put("a packing that only its own header names", two(true, 8, 0));
        all.put("another check sum", four(false, 16, 12345));
        all.put("another size", four(false, 24, 12));
        all.put("another packed size", four(false, 20, 4));
        all.put("a size of four gigabytes", four(false, 24, -1));
        all.put("an entry that lies at another's place", zip -> {
            int first = contents(zip);
            int second = first + 46 + little(zip).getShort(first + 28);
            little(zip).putInt(second + 42, 0);
            return zip;
        });
        all.put("an entry that lies far behind the end", four(false, 42, 1 << 30));
        all.put("a longer name than there is", two(false, 28, 5000));
        all.put("a name whose own header is shorter", two(true, 26, 4));
        all.put("an entry that the table leaves out", zip -> {
            int table = contents(zip);
            byte[] hidden = zip("3-changes/hidden.dslr", other);
            byte[] local = Arrays.copyOf(hidden, contents(hidden));
            byte[] grown = joined(Arrays.copyOf(zip, table), local, Arrays.copyOfRange(zip, table, zip.length));
            little(grown).putInt(grown.length - END + 16, table + local.length);
            return grown;
        });
        all.put("half of it", zip -> Arrays.copyOf(zip, zip.length / 2));
        all.put("all but its end", cut(END));
        all.put("all but a byte", cut(1));
        all.put("nothing in it", zip -> zip());
        all.put("a folder with something in it", zip -> zip("pack.yaml", MANIFEST, "3-changes/kerbs.dslr", SOUND, "3-changes/x/",
                ""));
        all.put("a zip file in it", zip -> zip("pack.yaml", MANIFEST, "3-changes/kerbs.dslr", SOUND, "more.zip", "PK\003\004"));
        all.put("a name that ends in a dot", zip -> zip("pack.yaml", MANIFEST, "3-changes/kerbs.dslr.", SOUND));
        all.put("a name of a device", zip -> zip("pack.yaml", MANIFEST, "3-changes/con.dslr", SOUND));
        all.put("a name with a stream behind it", zip -> zip("pack.yaml", MANIFEST, "3-changes/kerbs.dslr:hidden", SOUND));
        all.put("a name with a null in it", zip -> zip("pack.yaml", MANIFEST, "3-changes/kerbs.dslr\0.txt", SOUND));
        all.put("a name that turns the line round", zip -> zip("pack.yaml", MANIFEST, "3-changes/\u202ekerbs.dslr", SOUND));
        all.put("a name that clears the screen", zip -> zip("pack.yaml", MANIFEST, "3-changes/\u001b[2Jkerbs.dslr", SOUND));
        all.put("two spellings of one letter", zip -> zip("pack.yaml", MANIFEST, "3-changes/k\u00e9.dslr", SOUND,
                "3-changes/ke\u0301.dslr",
                SOUND.replace("Kerbs: softer", "Kerbs: softer still")));
        all.put("a path with a dot in it", zip -> zip("pack.yaml", MANIFEST, "3-changes/./kerbs.dslr", SOUND));
        all.put("a path with two bars", zip -> zip("pack.yaml", MANIFEST, "3-changes//kerbs.dslr", SOUND));
        all.put("a name of a thousand letters", zip -> zip("pack.yaml", MANIFEST, "3-changes/" + "k".repeat(1000)
                + ".dslr", SOUND));
        return all;
    }

    @TestFactory
    @DisplayName("of a zip file that is taken, everybody sees the same rules")
    List<DynamicTest> zips() {
        List<DynamicTest> tests = new ArrayList<>();
        twists().forEach((name, twist) -> tests.add(DynamicTest.dynamicTest(name, () -> {
            Path place = Files.createDirectories(directory.resolve("zip-" + tests.size() + "-" + name.hashCode()));
            Bench bench = new Bench(place).file("case.yaml", Bench.kerbCase());
            Path file = place.resolve("pack.zip");
            Files.write(file, twist.of(sound()));
            Bench.Run run = bench.run("advise", "--format", "json", "--rules", "pack.zip", "case.yaml");
            harmless(run);
            if (run.code() == 0) {
                assertEquals(byTable(file), byEntry(file), "taken, though two programs see two packs");
            } else {
                assertTrue(run.err().startsWith("pack.zip"), run.err());
                assertFalse(bench.compiled());
            }
        })));
        return tests;
    }

    private static Map<String, String> byTable(Path file) throws IOException {
        Map<String, String> seen = new TreeMap<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry entry : (Iterable<ZipEntry>) zip.stream().map(ZipEntry.class::cast)::iterator) {
                seen.put(entry.getName(), new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return seen;
    }

    private static Map<String, String> byEntry(Path file) throws IOException {
        Map<String, String> seen = new TreeMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(Files.readAllBytes(file)))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                seen.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return seen;
    }

    // Cases that a pack brings along.

    private static String caseWith(String more) {
        return "title: Of a stranger\n" + more + "\nreports:\n  - {symptom: kerb-instability}\n";
    }

    private static Map<String, String> outside() {
        Map<String, String> all = new LinkedHashMap<>();
        for (String car : List.of("../../secret.yaml", "../../../secret.yaml", "DIR/secret.yaml", "../../mine/../secret.yaml",
                "/etc/passwd", "/dev/zero", "/proc/self/environ", "../../nothing-there.yaml", "file:///etc/passwd",
                "link.yaml", "linked/secret.yaml", "..", "/", "'~/.ssh/id_rsa'", "'..\\..\\secret.yaml'")) {
            all.put("a car at " + car, caseWith("car: " + car));
        }
        String own = Bench.kerbCase();
        all.put("an earlier run outside", own + "earlier-runs: [../../secret.yaml]\n");
        all.put("an earlier run of the disk's root", own + "earlier-runs: [/etc/passwd]\n");
        all.put("an earlier run that is a link", own + "earlier-runs: [link.yaml]\n");
        return all;
    }

    @TestFactory
    @DisplayName("its cases see its own files and the cars that come with camberwell, and nothing else")
    List<DynamicTest> cases() {
        List<DynamicTest> tests = new ArrayList<>();
        outside().forEach((name, text) -> tests.add(DynamicTest.dynamicTest(name, () -> {
            Path place = Files.createDirectories(directory.resolve("case-" + Math.abs(name.hashCode())));
            Bench bench = new Bench(place).file("secret.yaml", "password: " + SECRET + "\n")
                    .file("mine/3-changes/kerbs.dslr", SOUND)
                    .file("mine/demo-cases/hostile.yaml", text.replace("DIR", place.toString()));
            Files.createSymbolicLink(place.resolve("mine/demo-cases/link.yaml"), place.resolve("secret.yaml"));
            Files.createSymbolicLink(place.resolve("mine/demo-cases/linked"), place);
            for (String[] line : new String[][] {{"rules", "try", "mine"}, {"rules", "compare", "built-in", "mine"},
                    {"rules", "watch", "mine", "--rounds", "1"}}) {
                Bench.Run run = bench.run(line);
                harmless(run);
                assertTrue(run.code() != 0 || line[1].equals("watch"), run::all);
            }
        })));
        return tests;
    }

    // Texts that are markup elsewhere.

    private static final List<String> MARKUP = List.of("<script>alert(1)</script>", "</text><script>alert(1)</script>",
            "\"><img src=x onerror=alert(1)>", "]]><x/>", "&lt;&amp;&#0;", "<!--", "{{7*7}}", "${jndi:x}", "%n%s%999999999d",
            "'; DROP TABLE cars; --", "javascript:alert(1)", "</style><style>*{display:none}", "\u2028x", "${x}\\\\u0041");

    @TestFactory
    @DisplayName("markup in names and texts is text wherever it is shown")
    List<DynamicTest> markup() {
        return MARKUP.stream().map(text -> DynamicTest.dynamicTest(text, () -> {
            Path place = Files.createDirectories(directory.resolve("markup-" + Math.abs(text.hashCode())));
            String quoted = "'" + text.replace("'", "''").replace("\u2028", "") + "'";
            Bench bench = new Bench(place).file("case.yaml", Bench.kerbCase().replace("title: Kerbs", "title: " + quoted)
                    .replace("name: Practice car", "name: " + quoted)
                    .replace("conditions:", "run: {driver: " + quoted + ", track: "
                    + quoted + "}\nconditions:"));
            for (String line : List.of("advise case.yaml", "advise --for newcomer case.yaml", "advise --format json case.yaml",
                    "advise --format yaml case.yaml", "explain case.yaml", "sheet case.yaml -o page.html",
                    "runs add case.yaml --book book --date 2026-05-03 --laps 92.1", "runs list --book book",
                    "runs draw --book book -o runs.svg")) {
                Bench.Run run = bench.run(line.split(" "));
                assertEquals(0, run.code(), () -> line + ": " + run.err());
                harmless(run);
            }
            for (String file : List.of("page.html", "runs.svg")) {
                String written = Files.readString(place.resolve(file));
                assertFalse(text.contains("<") && written.contains(text), () -> file + " has it as markup");
                assertEquals(0, written.split("<script", -1).length - 1, file);
            }
        })).toList();
    }

    // Words, notes and manifests of a pack.

    private static Map<String, Map<String, String>> packs() {
        Map<String, Map<String, String>> all = new LinkedHashMap<>();
        all.put("a manifest that makes an object", Map.of("pack.yaml", "!!java.lang.ProcessBuilder [[touch, x]]\n"));
        all.put("a manifest that makes a script engine", Map.of("pack.yaml", "name: !!javax.script.ScriptEngineManager []\n"));
        all.put("a manifest of aliases", Map.of("pack.yaml", "a: &a [x,x,x,x,x,x,x,x,x]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a]\nc: &c "
                + "[*b,*b,*b,*b,*b,*b,*b,*b]\nname: [*c,*c,*c,*c,*c]\n"));
        all.put("a manifest a thousand deep", Map.of("pack.yaml", "name: " + "[".repeat(1000) + "]".repeat(1000) + "\n"));
        all.put("a manifest with maps for keys", Map.of("pack.yaml", "{a: b}: c\n? [x]\n: y\n"));
        all.put("a name that leads out", Map.of("pack.yaml", MANIFEST.replace("kerb-school", "../../x")));
        all.put("a version of ten thousand digits", Map.of("pack.yaml", MANIFEST.replace("1.2", "9".repeat(10_000))));
        all.put("needs that nobody has", Map.of("pack.yaml",
                MANIFEST.replace("camberwell 0.1.0", "camberwell 99999999999999999999.1")));
        all.put("an author that steers the screen", Map.of("pack.yaml", MANIFEST.replace("A. Tutor", "\"A\\e[2JT\"")));
        all.put("a note that makes an object", Map.of("knowledge-notes/causes/rims.md",
                note("cause").replace("title: Hot rims", "title: !!java.net.URL [\"http://localhost\"]")));
        all.put("a note with a million blanks", Map.of("knowledge-notes/causes/rims.md", note("cause") + " ".repeat(1_000_000)));
        all.put("a note without an end to its head", Map.of("knowledge-notes/causes/rims.md", "---\ntitle: x\n"));
        all.put("a note named after its folder", Map.of("knowledge-notes/causes/...md", note("cause")));
        all.put("sayings that are a pattern", Map.of("knowledge-notes/sayings.yaml",
                "understeer:\n  - \"(a+)+$\"\n  - \".*\"\n"));
        all.put("sayings of a symptom that nobody has", Map.of("knowledge-notes/sayings.yaml", "wings-fall-off: [flap]\n"));
        all.put("sayings by the ten thousand", Map.of("knowledge-notes/sayings.yaml", "understeer:\n"
                + "  - the nose goes to the moon\n".repeat(10_000)));
        all.put("sayings that make an object", Map.of("knowledge-notes/sayings.yaml", "understeer: !!java.io.File [x]\n"));
        all.put("a term that steers the screen", Map.of("knowledge-notes/terms.yaml", "- {term: \"to\\e[2Je\", plain: x}\n"));
        all.put("weights of its own", Map.of("weights.yaml", "least-certainty: -5\n"));
        all.put("retired rules of its own", Map.of("retired.yaml", "- {id: KERB-1, since: 9, because: x}\n"));
        all.put("observation limits of its own", Map.of("observation.yaml", "corners: {grid: 0}\n"));
        all.put("a rule that takes the place of one it does not know", Map.of("3-changes/kerbs.dslr",
                SOUND.replace("@because", "@replaces(\"no such rule\")\n    @because")));
        all.put("a rule that takes the place of one twice", Map.of("3-changes/kerbs.dslr", SOUND.replace("@because",
                "@replaces(\"KERB-1\")\n    @replaces(\"KERB-1\")\n    @because")));
        all.put("a rule with the number of a built-in one", Map.of("3-changes/kerbs.dslr",
                SOUND.replace("@because", "@id(\"KERB-1\")\n    @because")));
        all.put("ten thousand answers to one question", Map.of("3-changes/kerbs.dslr", SOUND.replace(KERBS,
                KERBS + "\n        - at entry".repeat(10_000))));
        return all;
    }

    @TestFactory
    @DisplayName("whatever else it holds is refused with the place, or does nothing")
    List<DynamicTest> others() {
        List<DynamicTest> tests = new ArrayList<>();
        packs().forEach((name, files) -> tests.add(DynamicTest.dynamicTest(name, () -> {
            Path place = Files.createDirectories(directory.resolve("pack-" + Math.abs(name.hashCode())));
            Bench bench = new Bench(place).file("case.yaml", Bench.kerbCase()).file("mine/3-changes/kerbs.dslr", SOUND)
                    .file("mine/pack.yaml", MANIFEST);
            files.forEach((file, text) -> bench.file("mine/" + file, text));
            Map<String, String> before = files(place);
            for (String line : List.of("rules check mine", "rules list --rules mine", "advise --rules mine case.yaml")) {
                Bench.Run run = bench.run(line.split(" "));
                harmless(run);
                assertTrue(run.code() == 0 || run.all().contains("mine"), run::all);
            }
            assertEquals(before, files(place), "nothing is written but the cache");
        })));
        return tests;
    }

    private static Map<String, String> files(Path place) throws IOException {
        Map<String, String> all = new TreeMap<>();
        try (var walk = Files.walk(place)) {
            for (Path file : walk.filter(Files::isRegularFile).filter(it -> !it.toString().contains(".cache-of")).toList()) {
                all.put(place.relativize(file).toString(), Files.readString(file));
            }
        }
        return all;
    }
}
