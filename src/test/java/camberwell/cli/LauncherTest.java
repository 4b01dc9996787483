package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shell launcher before a Java that only tells how it was started. */
@DisplayName("The launcher starts the Java that there is, from wherever it is called")
class LauncherTest {

    @TempDir
    private Path directory;
    private Path launcher;
    private Path java;

    /** What a call of the launcher came to. */
    private record Called(int code, String out, String err) {
    }

    @BeforeEach
    void layOut() throws IOException {
        assumeTrue(directory.getFileSystem().supportedFileAttributeViews().contains("posix"));
        launcher = directory.resolve("camberwell \u00e4\u96ea/bin/camberwell");
        Files.createDirectories(launcher.getParent());
        Files.writeString(launcher, Files.readString(Path.of("src/dist/bin/camberwell")).replace("${project.version}", "1"));
        executable(launcher);
        java = directory.resolve("java/bin/java");
        Files.createDirectories(java.getParent());
        Files.writeString(java, """
                #!/bin/sh
                echo "in $PWD"
                echo "letters $LC_ALL"
                for argument in "$@"; do echo "$argument"; done
                """);
        executable(java);
        release("17.0.9");
    }

    private static void executable(Path file) throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    private void release(String version) throws IOException {
        Files.writeString(directory.resolve("java/release"), "JAVA_VERSION=\"" + version + "\"\n");
    }

    private Called call(Map<String, String> environment, String... arguments) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder();
        builder.command().add(launcher.toString());
        builder.command().addAll(List.of(arguments));
        Path out = directory.resolve("out.txt");
        Path err = directory.resolve("err.txt");
        builder.environment().remove("CDPATH");
        builder.environment().put("JAVA_HOME", directory.resolve("java").toString());
        builder.environment().putAll(environment);
        int code = builder.directory(directory.toFile()).redirectOutput(out.toFile()).redirectError(err.toFile()).start()
                .waitFor();
        return new Called(code, Files.readString(out, StandardCharsets.UTF_8), Files.readString(err, StandardCharsets.UTF_8));
    }

    @Test
    @DisplayName("every argument arrives as it was typed, and the folder in which it was typed")
    void arguments() throws Exception {
        Called called = call(Map.of(), "advise", "a case.yaml", "--say", "it \"pushes\" & snaps");
        assertEquals(0, called.code(), called.err());
        assertTrue(called.out().endsWith("camberwell.cli.Main\nadvise\na case.yaml\n--say\nit \"pushes\" & snaps\n"),
                called.out());
        assertTrue(called.out().contains("-Dcamberwell.directory=" + directory.toRealPath() + "\n")
                || called.out().contains("-Dcamberwell.directory=" + directory + "\n"), called.out());
    }

    @Test
    @DisplayName("CDPATH puts no line before the output, and leads nowhere else")
    void cdpath() throws Exception {
        Files.createDirectories(directory.resolve("elsewhere/camberwell \u00e4\u96ea"));
        Called called = call(Map.of("CDPATH", directory.resolve("elsewhere") + ":" + directory), "--version");
        String home = launcher.getParent().getParent().toString();
        assertTrue(called.out().startsWith("in " + home + "\n") || called.out().startsWith("in "
                + launcher.getParent().getParent().toRealPath() + "\n"), called.out());
    }

    @Test
    @DisplayName("where no language is set, letters of every script are read all the same; a language that is set stays")
    void letters() throws Exception {
        assertTrue(call(Map.of("LC_ALL", "C")).out().contains("letters C.UTF-8\n"));
        assertTrue(call(Map.of("LC_ALL", "POSIX")).out().contains("letters C.UTF-8\n"));
        assertTrue(call(Map.of("LC_ALL", "de_DE.UTF-8")).out().contains("letters de_DE.UTF-8\n"));
    }

    @Test
    @DisplayName("without a Java, or with one too old, it says what to install and ends with 2")
    void noJava() throws Exception {
        Called nowhere = call(Map.of("JAVA_HOME", "/nowhere"));
        assertEquals("camberwell: there is no Java in JAVA_HOME, /nowhere; install Java 17 or later, or let JAVA_HOME name the "
                + "folder of one\n", nowhere.err());
        assertEquals(2, nowhere.code());
        release("11.0.21");
        Called old = call(Map.of());
        assertTrue(old.err().endsWith("is version 11.0.21; install Java 17 or later, or let JAVA_HOME name the folder of one\n"),
                old.err());
        assertEquals(2, old.code());
        assertEquals("", old.out());
    }

    @Test
    @DisplayName("a link to it starts it too")
    void link() throws Exception {
        Path real = launcher;
        launcher = Files.createSymbolicLink(directory.resolve("short"), Path.of("camberwell \u00e4\u96ea/bin/camberwell"));
        Called called = call(Map.of(), "--version");
        assertEquals(0, called.code(), called.err());
        assertTrue(called.out().startsWith("in " + real.getParent().getParent().toRealPath()), called.out());
    }
}
