package camberwell.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.problem.ProblemsException;
import camberwell.run.Case;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The book of runs")
class BookTest {

    /** A thousand take some ten minutes: {@code -DargLine=-Dcamberwell.kills=1000}. */
    private static final int KILLS = Integer.getInteger("camberwell.kills", 8);

    @TempDir
    private Path folder;

    private static final Case RUN = Runs.run(1, Runs.car(4, 4, 4), List.of(), 92.1, 92.2);

    @Test
    @DisplayName("numbers its runs and reads them back")
    void numbers() {
        Book book = Book.in(folder);
        for (int i = 1; i <= 3; i++) {
            Book.Page page = book.add(RUN.withTitle(""));
            assertEquals(i, page.number());
            assertEquals("000" + i + "-test-car.yaml", page.file().getFileName().toString());
            assertEquals("Run " + i, book.read(page).title());
            assertEquals(RUN.driven().laps(), book.read(page).driven().laps());
        }
        assertEquals(List.of(1, 2, 3), book.pages().stream().map(Book.Page::number).toList());
    }

    @Test
    @DisplayName("a run taken back is kept, and its number is free again")
    void takenBack() {
        Book book = Book.in(folder);
        book.add(RUN);
        for (int i = 0; i < 2; i++) {
            Path kept = book.takeBack(book.add(RUN));
            assertTrue(Files.exists(kept));
            assertEquals(1, book.pages().size());
        }
        assertEquals(2, book.add(RUN).number());
    }

    @Test
    @DisplayName("two files of one number are both kept, and told when that number is asked for")
    void merged() throws IOException {
        Book book = Book.in(folder);
        Path first = book.add(RUN).file();
        Files.copy(first, folder.resolve("0001-other.yaml"));
        assertEquals(2, book.pages().size());
        ProblemsException e = assertThrows(ProblemsException.class, () -> book.page(1));
        assertTrue(e.getMessage().contains("run 1 stands there more than once: 0001-other.yaml, 0001-test-car.yaml"),
                e.getMessage());
        assertThrows(ProblemsException.class, () -> book.page(9));
        assertEquals(2, book.add(RUN).number());
    }

    @Test
    @DisplayName("other files in the folder are no runs")
    void otherFiles() throws IOException {
        for (String name : List.of("notes.txt", "7.yaml", "0001.yml", "0001x.yaml", ".0001-a.yaml", "00000000001.yaml")) {
            Files.writeString(folder.resolve(name), "x");
        }
        assertEquals(List.of(), Book.in(folder).pages());
        assertEquals(Optional.empty(), Book.nearest(folder).filter(folder::equals));
    }

    @Test
    @DisplayName("the nearest book is in this folder or one above it, or in their folder runs")
    void nearest() throws IOException {
        Path runs = Files.createDirectories(folder.resolve("season/runs"));
        Path deep = Files.createDirectories(folder.resolve("season/track/day"));
        Book.in(runs).add(RUN);
        assertEquals(Optional.of(runs), Book.nearest(deep));
        assertEquals(Optional.of(runs), Book.nearest(runs));
    }

    @Test
    @DisplayName("several threads and processes write at once, and every run has its own number")
    void atOnce() throws Exception {
        List<Process> writers = List.of(writer(40, ProcessBuilder.Redirect.PIPE),
                writer(40, ProcessBuilder.Redirect.PIPE));
        Set<Integer> mine = new HashSet<>();
        IntStream.range(0, 40).parallel().forEach(i -> {
            int number = Book.in(folder).add(RUN).number();
            synchronized (mine) {
                mine.add(number);
            }
        });
        List<Integer> theirs = new ArrayList<>();
        for (Process process : writers) {
            theirs.addAll(told(process));
            assertEquals(0, process.waitFor());
        }
        mine.addAll(theirs);
        assertEquals(120, mine.size());
        assertEquals(120, Book.in(folder).pages().size());
    }

    @Test
    @DisplayName("killed at any moment, no run that was told of is lost or torn, and nothing is left lying about")
    void killed() throws Exception {
        Random random = new Random(42);
        Set<Integer> told = new HashSet<>();
        Path said = Files.createTempFile("told", ".txt");
        for (int kill = 0; kill < KILLS; kill++) {
            Process process = writer(Integer.MAX_VALUE, ProcessBuilder.Redirect.to(said.toFile()));
            while (Files.size(said) == 0 && process.isAlive()) {
                TimeUnit.MILLISECONDS.sleep(2);
            }
            TimeUnit.MICROSECONDS.sleep(random.nextInt(30_000));
            process.destroyForcibly().waitFor();
            String text = Files.readString(said);
            text.substring(0, text.lastIndexOf('\n') + 1).lines().map(Integer::valueOf).forEach(told::add);
            Files.writeString(said, "");
        }
        Files.delete(said);
        Book book = Book.in(folder);
        int next = book.add(RUN).number();
        Set<Integer> there = new HashSet<>();
        for (Book.Page page : book.pages()) {
            assertTrue(book.read(page).driven().laps().size() >= 2, page.toString());
            assertTrue(there.add(page.number()));
        }
        assertTrue(there.containsAll(told), () -> "lost: " + told.stream().filter(it -> !there.contains(it)).toList());
        assertEquals(next, there.size(), "no number was left out");
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(List.of(".lock"), files.map(file -> file.getFileName().toString())
                    .filter(name -> name.startsWith(".")).toList());
        }
    }

    private Process writer(int most, ProcessBuilder.Redirect said) throws IOException {
        return new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", "-cp", System.getProperty("java.class.path"), Writer.class.getName(),
                folder.toString(), String.valueOf(most)).redirectOutput(said)
                .redirectError(ProcessBuilder.Redirect.DISCARD).start();
    }

    private static List<Integer> told(Process process) throws IOException {
        try (BufferedReader lines = process.inputReader()) {
            return lines.lines().map(Integer::valueOf).toList();
        }
    }
}
