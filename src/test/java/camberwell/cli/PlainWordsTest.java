package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("What went wrong is said in words that help")
class PlainWordsTest {

    @TempDir
    private Path directory;

    private void says(String expected, String... line) {
        Bench.Run run = new Bench(directory).run(line);
        assertEquals(expected, run.err().lines().findFirst().orElse(""), String.join(" ", line));
        assertEquals(ExitCode.WRONG_INPUT, run.code(), run.all());
    }

    @Test
    @DisplayName("of a zip file and of a gzip file that are damaged inside")
    void damaged() throws IOException {
        Bench bench = new Bench(directory).file("mine/3-changes/a.dslr", Bench.rule("A", "the driver reports kerb-instability",
                "propose front-bump softer with certainty 0.35")).file("mine/pack.yaml", "name: mine\nversion: 1.0\n"
                + "author: A. Tutor\nneeds: [camberwell 0.1.0]\n");
        assertEquals(ExitCode.DONE, bench.run("rules", "pack", "mine", "-o", "mine.zip").code());
        byte[] whole = Files.readAllBytes(directory.resolve("mine.zip"));
        // Behind the first entry's head and name its packed bytes begin.
        int data = 30 + whole[26];
        Arrays.fill(whole, data, data + 8, (byte) 0xff);
        Files.write(directory.resolve("mine.zip"), whole);
        says("mine.zip: cannot be read: it is damaged", "rules", "check", "mine.zip");
    }

    @Test
    @DisplayName("of words that are missing, and of an option that is not there")
    void missingWords() {
        String two = "camberwell runs compare wants RUN at least 2 times: Numbers of runs, in the order they were driven.";
        says(two, "runs", "compare");
        says(two, "runs", "compare", "6");
        says("camberwell explain has no option --nosuch", "explain", "--nosuch");
        says("camberwell explain has no option --whynot; did you mean --why-not?", "explain", "--whynot=camber");
        says("Missing required parameter: 'CASE'", "explain");
    }

    @Test
    @DisplayName("of a folder where a file is wanted, of a file where a folder is, and of a folder with nothing in it")
    void folders() throws IOException {
        Files.createDirectory(directory.resolve("ada"));
        Files.createDirectory(directory.resolve("empty"));
        Files.writeString(directory.resolve("file"), "");
        says("ada: this is a folder, not a file", "quiz", "report", "ada");
        says("adda.yaml: there is no such file", "quiz", "report", "adda.yaml");
        says("file: is a file; what is watched is a folder", "rules", "watch", "file");
        says("emty: there is no such folder; did you mean \"empty\"?", "rules", "watch", "emty");
        says("empty: there are no rules and no notes in it; rules lie in its folders 1-readings, 2-causes, 3-changes, "
                + "4-cautions, 5-driving, notes in knowledge-notes", "rules", "compare", "built-in", "empty");
    }

    @Test
    @DisplayName("of a name that is no UTF-8 text, in whose place Java has marks")
    void strangeName() {
        String expected = "a\uFFFD.yaml: the file's name is not UTF-8 text, so that it cannot be found; rename it";
        says(expected, "quiz", "report", "a\uFFFD.yaml");
        says(expected, "advise", "a\uFFFD.yaml");
    }

    @Test
    @DisplayName("of more earlier runs than are read, and of one that is named twice")
    void earlierRuns() {
        new Bench(directory).file("first.yaml", Bench.kerbCase())
                .file("twice.yaml", Bench.kerbCase() + "earlier-runs: [first.yaml, ./first.yaml]\n")
                .file("many.yaml", Bench.kerbCase() + "earlier-runs:\n" + "  - first.yaml\n".repeat(60_000));
        says("twice.yaml:11:28: this run stands here a second time; leave it out", "advise", "twice.yaml");
        says("many.yaml:112:5: at most 100 earlier runs are read, and these are 60000; leave the oldest out", "advise",
                "many.yaml");
    }
}
