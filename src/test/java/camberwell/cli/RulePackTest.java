package camberwell.cli;

import static camberwell.cli.Bench.note;
import static camberwell.cli.Bench.rule;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A rule folder in one file")
class RulePackTest {

    private static final String SOUND = rule("Kerbs: softer", "the driver reports kerb-instability",
            "propose front-bump softer with certainty 0.5");
    private static final String MANIFEST =
            "name: kerb-school\nversion: 1.2\nauthor: A. Tutor\nneeds: [camberwell 0.1.0]\n";

    @TempDir
    private Path directory;
    private Bench bench;

    @BeforeEach
    void open() {
        bench = new Bench(directory).file("case.yaml", Bench.kerbCase());
    }

    @Test
    @DisplayName("a zip file that is missing, empty or none at all is called what it is, with the nearest name")
    void noZip() throws IOException {
        bench.file("kerb-school.zip", "Please find the rules attached.").file("empty.zip", "").file("rules.txt", "-");
        for (String command : new String[] {"advise case.yaml --rules ", "rules check ", "rules compare built-in "}) {
            assertEquals("kerb-scool.zip: there is no such .zip file; did you mean \"kerb-school.zip\"?\n",
                    refused(command + "kerb-scool.zip"));
            assertEquals("kerb-school.zip: ends in .zip and is no zip file; camberwell rules pack makes one of a rule "
                    + "folder\n", refused(command + "kerb-school.zip"));
            assertEquals("empty.zip: is empty\n", refused(command + "empty.zip"));
            assertEquals("rules.txt: is a file; rules come in a folder or in a .zip file\n",
                    refused(command + "rules.txt"));
        }
    }

    @Test
    @DisplayName("packing again takes the place of the old pack, but never of a file that is something else")
    void packsOverPacksOnly() throws IOException {
        bench.file("mine/3-changes/a.dslr", SOUND).file("mine/pack.yaml", MANIFEST).file("taxes.zip", "12 pounds");
        String[] line = {"rules", "pack", "mine", "-o", "mine.zip"};
        assertEquals(ExitCode.DONE, bench.run(line).code());
        assertEquals(ExitCode.DONE, bench.run(line).code());
        assertEquals("-o taxes.zip: is there already and is no packed rule folder; take another name, or give "
                + "--overwrite\n", refused("rules pack mine -o taxes.zip"));
        assertEquals("12 pounds", Files.readString(directory.resolve("taxes.zip")));
    }

    private String refused(String line) {
        Bench.Run run = bench.run(line.split(" "));
        assertEquals(ExitCode.WRONG_INPUT, run.code());
        return run.err();
    }

    private record Entry(String name, byte[] content) {
        Entry(String name, String content) {
            this(name, content.getBytes(StandardCharsets.UTF_8));
        }
    }

    private static byte[] zip(Entry... entries) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Entry entry : entries) {
                zip.putNextEntry(new ZipEntry(entry.name()));
                zip.write(entry.content());
                zip.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    private void refuses(byte[] zip, String... problems) throws IOException {
        Files.write(directory.resolve("pack.zip"), zip);
        Bench.Run run = bench.run("advise", "--rules", "pack.zip", "case.yaml");
        assertEquals(List.of(problems), run.err().lines().filter(line -> line.startsWith("pack.zip")).toList());
        assertEquals(2, run.code());
        assertEquals("", run.out());
        assertFalse(bench.compiled());
        assertFalse(Files.exists(directory.resolveSibling("outside.dslr")));
    }

    @Test
    void whatIsPackedAdvisesAsTheFolderDoes() throws IOException {
        bench.file("mine/3-changes/kerbs.dslr", SOUND).file("mine/pack.yaml", MANIFEST).file("mine/README.txt", "mine");
        Bench.Run pack = bench.run("rules", "pack", "mine", "-o", "kerbs.zip");
        assertEquals("kerbs.zip: kerb-school 1.2 by A. Tutor, 2 files\n", pack.all());
        byte[] first = Files.readAllBytes(directory.resolve("kerbs.zip"));
        bench.run("rules", "pack", "mine", "-o", "kerbs.zip");
        assertArrayEquals(first, Files.readAllBytes(directory.resolve("kerbs.zip")), "the same folder, the same bytes");
        Bench.Run folder = bench.run("advise", "--format", "json", "--rules", "mine", "case.yaml");
        Bench.Run zip = bench.run("advise", "--format", "json", "--rules", "kerbs.zip", "case.yaml");
        assertEquals(0, folder.code(), folder.err());
        assertTrue(folder.out().contains("Kerbs: softer"));
        assertEquals(folder.out(), zip.out());
    }

    @Test
    void aFolderWithAProblemIsNotPacked() {
        bench.file("mine/3-changes/kerbs.dslr", SOUND.replace("0.5", "5")).file("mine/pack.yaml", MANIFEST);
        assertEquals(1, bench.run("rules", "pack", "mine", "-o", "kerbs.zip").code());
        assertFalse(Files.exists(directory.resolve("kerbs.zip")));
    }

    @Test
    void aFolderWithoutAManifestIsNotPacked() {
        bench.file("mine/3-changes/kerbs.dslr", SOUND);
        Bench.Run run = bench.run("rules", "pack", "mine", "-o", "kerbs.zip");
        assertEquals("mine/pack.yaml: is missing: it tells the name, version and author of the rules\n", run.err());
        assertEquals(2, run.code());
    }

    @Test
    void anEntryThatPointsOutOfTheFile() throws IOException {
        refuses(zip(new Entry("3-changes/../../outside.dslr", SOUND)),
                "pack.zip: the zip file has an entry that points out of it: 3-changes/../../outside.dslr");
        refuses(zip(new Entry("/3-changes/outside.dslr", SOUND)),
                "pack.zip: the zip file has an entry that points out of it: /3-changes/outside.dslr");
        refuses(zip(new Entry("3-changes\\..\\..\\outside.dslr", SOUND)),
                "pack.zip: the zip file has an entry that points out of it: 3-changes\\..\\..\\outside.dslr");
        refuses(zip(new Entry("C:/outside.dslr", SOUND)),
                "pack.zip: the zip file has an entry that points out of it: C:/outside.dslr");
    }

    @Test
    void anEntryThatStandsTwice() throws IOException {
        byte[] zip = zip(new Entry("3-changes/one.dslr", SOUND), new Entry("3-changes/two.dslr", SOUND));
        refuses(replaced(zip, "3-changes/two.dslr", "3-changes/one.dslr"),
                "pack.zip/3-changes/one.dslr:1:1: stands twice in the zip file");
        refuses(zip(new Entry("3-changes/one.dslr", SOUND), new Entry("3-changes/ONE.dslr", SOUND)),
                "pack.zip/3-changes/ONE.dslr:1:1: stands twice in the zip file");
    }

    private static byte[] replaced(byte[] zip, String from, String to) {
        return new String(zip, StandardCharsets.ISO_8859_1).replace(from, to).getBytes(StandardCharsets.ISO_8859_1);
    }

    @Test
    void aFileThatUnpacksToFarMoreThanItSays() throws IOException {
        byte[] zeros = new byte[20 << 20];
        refuses(zip(new Entry("3-changes/bomb.dslr", zeros)),
                "pack.zip/3-changes/bomb.dslr:1:1: the file is larger than 512 KiB");
        refuses(zip(new Entry("unread.bin", zeros)),
                "pack.zip/unread.bin:1:1: with this file it is more than 8 MiB");
    }

    @Test
    void manySmallFiles() throws IOException {
        Entry[] entries = new Entry[1001];
        for (int i = 0; i < entries.length; i++) {
            entries[i] = new Entry("3-changes/" + i + ".dslr", "");
        }
        refuses(zip(entries), "pack.zip: the zip file has more than 1000 entries");
    }

    @Test
    void aLinkInTheFile() throws IOException {
        byte[] zip = zip(new Entry("3-changes/kerbs.dslr", "../../outside.dslr"));
        ByteBuffer bytes = ByteBuffer.wrap(zip).order(ByteOrder.LITTLE_ENDIAN);
        int entry = bytes.getInt(zip.length - 22 + 16);
        bytes.putInt(entry + 38, 0120777 << 16);
        refuses(zip, "pack.zip: the zip file has a link or another odd entry: 3-changes/kerbs.dslr");
    }

    @Test
    void aTableOfContentsThatHidesAFile() throws IOException {
        byte[] zip = zip(new Entry("3-changes/one.dslr", SOUND));
        int last = new String(zip, StandardCharsets.ISO_8859_1).lastIndexOf("one.dslr");
        zip[last] = 'O';
        refuses(zip, "pack.zip: the zip file's table of contents does not tell what is in it");
    }

    @Test
    void aFileThatIsNoZip() throws IOException {
        refuses("rule".getBytes(StandardCharsets.UTF_8),
                "pack.zip: ends in .zip and is no zip file; camberwell rules pack makes one of a rule folder");
    }

    @Test
    void rawDroolsIsRefusedInAZipFileToo() throws IOException {
        refuses(zip(new Entry("own.drl", "package x; rule r when then end")),
                "pack.zip/own.drl:1:1: raw Drools is not allowed here; only a folder named with --trust may hold it");
    }

    @Test
    void aProblemInAPackedRuleHasItsLine() throws IOException {
        refuses(zip(new Entry("3-changes/kerbs.dslr", SOUND.replace("softer with", "softter with"))),
                "pack.zip/3-changes/kerbs.dslr:7:24: front-bump moves softer or stiffer, not softter; did you mean \"softer\"?");
    }

    @Test
    void notesTravelAlong() throws IOException {
        Files.write(directory.resolve("pack.zip"), zip(
                new Entry("knowledge-notes/causes/hot-rims.md", note("cause")),
                new Entry("2-causes/rims.dslr", rule("Rims", "hot-rims", "the driver reports kerb-instability",
                        "find hot-rims with certainty 0.5")),
                new Entry("3-changes/rims.dslr", rule("Rims: softer", "hot-rims is likely",
                        "propose front-bump softer with certainty 0.5"))));
        Bench.Run run = bench.run("advise", "--rules", "pack.zip", "case.yaml");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("The rims are hot."), run.out());
    }
}
