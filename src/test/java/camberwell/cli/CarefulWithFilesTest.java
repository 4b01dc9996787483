package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import camberwell.input.CaseReader;
import camberwell.observe.MadeLogs;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.run.Case;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Files that are somebody's, strange or without an end")
class CarefulWithFilesTest {

    private static final String CAR = Bench.home().resolve("demo-cases/cars/corvane-coupe.yaml").toString();

    @TempDir
    Path directory;

    private Bench bench() {
        return new Bench(directory);
    }

    private String content(String name) throws IOException {
        return Files.readString(directory.resolve(name));
    }

    @Test
    @DisplayName("a drawing never takes the place of a file that is there, unless that is asked for")
    void drawing() throws IOException {
        Bench bench = bench().file("my-car.yaml", "precious");
        String[] line = {"predict", "--car", CAR, "--change", "rear-toe toe-in 1", "--svg", "my-car.yaml"};
        Bench.Run refused = bench.run(line);
        assertEquals(ExitCode.WRONG_INPUT, refused.code());
        assertEquals("--svg my-car.yaml: is there already; take another name, or give --overwrite\n", refused.err());
        assertEquals("precious", content("my-car.yaml"));
        assertEquals(ExitCode.DONE, bench.run(Stream.concat(Stream.of(line), Stream.of("--overwrite"))
                .toArray(String[]::new)).code());
        assertTrue(content("my-car.yaml").contains("<svg"));
    }

    @Test
    @DisplayName("nor what is found in a log, not even in the place of the log itself")
    void found() throws IOException {
        String log = MadeLogs.twoLaps();
        Bench bench = bench().file("run.csv", log);
        for (String option : List.of("-o", "--svg")) {
            Bench.Run refused = bench.run("observe", "run.csv", "--car", CAR, option, "run.csv");
            assertEquals(ExitCode.WRONG_INPUT, refused.code());
            assertEquals(option + " run.csv: is there already; take another name, or give --overwrite\n", refused.err());
            assertEquals(log, content("run.csv"));
        }
    }

    @Test
    @DisplayName("a folder that is gone when the talk ends is told, and nothing is said to be saved")
    void folderGone() throws IOException {
        Bench bench = bench();
        Problem problem = Problem.unwritable("tonight.yaml", new NoSuchFileException("x"));
        assertEquals("tonight.yaml: cannot be written: its folder is not there", problem.text());
        ProblemsException gone = assertThrows(ProblemsException.class, () -> {
            NewFiles files = new NewFiles();
            Files.writeString(bench.directory.resolve("no-folder"), "");
            files.add(bench.directory.resolve("no-folder/note.md"), new byte[0]);
            files.write();
        });
        assertTrue(gone.getMessage().contains("cannot be written"), gone.getMessage());
    }

    @Test
    @DisplayName("nor does a transcript, or a pack")
    void transcriptAndPack() throws IOException {
        Bench bench = bench().file("notes.md", "precious").file("taxes.zip", "PK\003\004 precious");
        Bench.Run talk = bench.runWith("", "debrief", "--car", CAR, "--transcript", "notes.md");
        assertEquals(ExitCode.WRONG_INPUT, talk.code(), talk.all());
        assertTrue(talk.err().contains("stands there already; take another name, or give --overwrite"), talk.err());
        assertEquals("precious", content("notes.md"));
        Bench.Run over = bench.runWith("it pushes on the way in\nquit\n", "debrief", "--car", CAR, "--overwrite",
                "--transcript", "notes.md");
        assertEquals(ExitCode.DONE, over.code(), over.all());
        assertTrue(content("notes.md").contains("understeer at entry"), content("notes.md"));
        Bench.Run same = bench.runWith("", "debrief", "--car", CAR, "--save", "a.yaml", "--transcript", "./a.yaml");
        assertEquals("--transcript ./a.yaml: is the file of --save, too\n", same.err());
        Bench.Run pack = bench.run("rules", "pack", "mine", "-o", "taxes.zip");
        assertEquals(ExitCode.WRONG_INPUT, pack.code());
        assertTrue(pack.err().contains("is no packed rule folder"), pack.err());
    }

    @Test
    @DisplayName("drafts of processes that are gone are cleaned up, those of living ones stay")
    void leftOverDrafts() throws IOException {
        long living = ProcessHandle.allProcesses().mapToLong(ProcessHandle::pid)
                .filter(pid -> pid != ProcessHandle.current().pid()).findFirst().orElse(1);
        bench().file(".camberwell-draft-999999999-0", "").file(".camberwell-draft-" + living + "-0", "");
        assertEquals(ExitCode.DONE, bench().run("predict", "--car", CAR, "--change", "rear-toe toe-in 1", "--svg",
                "steer.svg").code());
        try (Stream<Path> left = Files.list(directory)) {
            assertEquals(List.of(".camberwell-draft-" + living + "-0", "steer.svg"),
                    left.map(file -> file.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    @DisplayName("a pipe or a device is not waited for")
    void noPlainFile() throws IOException, InterruptedException {
        Path pipe = directory.resolve("pipe.yaml");
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/mkfifo")));
        assertEquals(0, new ProcessBuilder("/usr/bin/mkfifo", pipe.toString()).start().waitFor());
        Bench.Run run = assertTimeoutPreemptively(Duration.ofSeconds(30), () -> bench().run("advise", "pipe.yaml"));
        assertEquals("pipe.yaml: this is no plain file\n", run.err());
        assertEquals(ExitCode.WRONG_INPUT, run.code());
        Bench.Run log = assertTimeoutPreemptively(Duration.ofSeconds(30), () ->
                bench().run("observe", "pipe.yaml", "--car", CAR));
        assertEquals("pipe.yaml: this is no plain file; a log that another program writes goes in by standard input, named -\n",
                log.err());
    }

    @Test
    @DisplayName("a name cannot act on the terminal")
    void controlCharacters() {
        Bench.Run run = bench().file("a\u001b[2Jb.yaml", "car: 1\nr\u0007epo: 2\n").run("advise", "a\u001b[2Jb.yaml");
        assertEquals(ExitCode.WRONG_INPUT, run.code());
        assertFalse(run.all().chars().anyMatch(c -> c == 0x1b || c == 7), run.all());
        assertTrue(run.err().startsWith("a [2Jb.yaml:"), run.err());
    }

    @Test
    @DisplayName("a list of arguments is looked for where the person is")
    void listOfArguments() {
        Bench.Run run = bench().file("list.txt", "missing-one.yaml\nmissing-two.yaml\n").run("advise", "@list.txt");
        assertEquals(List.of("missing-one.yaml", "missing-two.yaml"),
                run.err().lines().map(told -> told.substring(0, told.indexOf(':'))).toList());
    }

    @Test
    @DisplayName("of two talks that are kept in one file neither is lost")
    void twoTalks() throws IOException {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(said, true, StandardCharsets.UTF_8);
        Console console = new Console(out, out, new ByteArrayInputStream(new byte[0]), directory, 80, false, false);
        Case run = new CaseReader().read(Bench.home().resolve("demo-cases/pushes-in-snaps-out.yaml")).run();
        Keeping first = new Keeping(console, "tonight.yaml", Optional.empty());
        Keeping second = new Keeping(console, "tonight.yaml", Optional.empty());
        first.keep(run.withTitle("First"));
        second.keep(run.withTitle("Second"));
        first.keep(run.withTitle("First again"));
        second.keep(run.withTitle("Second again"));
        assertTrue(content("tonight.yaml").contains("First again"), content("tonight.yaml"));
        assertTrue(content("tonight-2.yaml").contains("Second again"), content("tonight-2.yaml"));
        assertEquals(Optional.of("tonight-2.yaml"), second.file());
        assertEquals("tonight.yaml: somebody else has written to it meanwhile; this talk is kept in tonight-2.yaml\n",
                said.toString(StandardCharsets.UTF_8));
    }

    @Test
    @DisplayName("a case with an @ before its name is no list of arguments")
    void caseAsList() {
        Bench.Run run = bench().file("case.yaml", Bench.kerbCase()).run("advise", "@case.yaml");
        assertEquals("@case.yaml: is no list of arguments, which an @ before a name asks for; did you mean \"case.yaml\"?\n",
                run.err());
        assertEquals(ExitCode.WRONG_INPUT, run.code());
    }

    @Test
    @DisplayName("a folder and a pipe are no lists of arguments either")
    void folderAsList() throws Exception {
        Files.createDirectory(directory.resolve("folder"));
        Bench.Run run = bench().run("advise", "@folder");
        assertEquals("@folder: is no list of arguments, which an @ before a name asks for: it is a folder\n", run.err());
        assertEquals(ExitCode.WRONG_INPUT, run.code());
        Path pipe = directory.resolve("pipe");
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/mkfifo"))
                && new ProcessBuilder("/usr/bin/mkfifo", pipe.toString()).start().waitFor() == 0);
        Bench.Run piped = assertTimeoutPreemptively(Duration.ofSeconds(60), () -> bench().run("advise", "@pipe"));
        assertEquals("@pipe: is no list of arguments, which an @ before a name asks for: it is no plain file\n", piped.err());
        assertEquals(ExitCode.WRONG_INPUT, piped.code());
    }

    @Test
    @DisplayName("a list of arguments that may not be read is told so")
    void unreadableList() throws IOException {
        Bench bench = bench().file("list.txt", "case.yaml\n");
        Path list = directory.resolve("list.txt");
        assumeTrue(list.toFile().setReadable(false) && !Files.isReadable(list), "somebody who may read all");
        Bench.Run run = bench.run("advise", "@list.txt");
        assertEquals("@list.txt: cannot be read: this user may not read it\n", run.err());
        assertEquals(ExitCode.WRONG_INPUT, run.code());
    }

    @Test
    @DisplayName("an answer without an end is none")
    void endlessLine() {
        String endless = "y".repeat(1_000_000);
        for (String[] line : List.of(new String[] {"quiz", "--seed", "1"}, new String[] {"practise", "--car", CAR},
                new String[] {"rules", "new", "A", "--into", "mine"}, new String[] {"debrief", "--car", CAR, "--format", "jsonl"},
                new String[] {"debrief", "--car", CAR})) {
            Bench.Run run = bench().runWith(endless, line);
            assertEquals(ExitCode.WRONG_INPUT, run.code(), run.err());
            assertEquals("-: a line of more than 10000 characters is no answer\n", run.err());
        }
    }
}
