package camberwell.cli;

import camberwell.engine.RuleBase;
import java.io.File;
import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A class-data archive of the user's own, for a Java or a place that the archive of the distribution does not fit: after
 * a copy, which gives the jars other times, or on a later Java. It is made once, by processes of its own, while nobody
 * waits; the launcher takes it at the next start. Without one a start is slower, no more, so nothing here ever fails.
 */
final class ClassArchive {

    /** Where the launcher will look for it. */
    private static final String WANTED = "camberwell.archive";
    private static final int MOST_ARCHIVES = 3;
    private static final long LEAST_SPACE = 500L << 20;
    /** After this time nobody is at it any more. */
    private static final Duration LONGEST = Duration.ofMinutes(10);
    /** After this time it is worth another try. */
    private static final Duration GIVEN_UP = Duration.ofDays(7);
    private static final String FAILED = "failed";
    private static final String MAKING = ".making";
    private static final String ENDING = ".jsa";

    private final Path target;
    private final Path scratch;

    private ClassArchive(Path target) {
        this.target = target;
        this.scratch = target.resolveSibling(target.getFileName() + MAKING);
    }

    /** Has one made if this start had none that fits. */
    static void makeIfMissing() {
        String wanted = System.getProperty(WANTED, "");
        // A machine that was given an archive that does not fit says that it shares nothing.
        if (wanted.isEmpty() || System.getProperty("java.vm.info", "sharing").contains("sharing")) {
            return;
        }
        try {
            new ClassArchive(Path.of(wanted)).start();
        } catch (IOException | RuntimeException e) {
            // It is slower without, no more.
        }
    }

    private void start() throws IOException {
        if (target.toString().contains(File.pathSeparator) || !begin()) {
            return;
        }
        List<String> command = java();
        command.addAll(List.of("-Xshare:off", "-XX:TieredStopAtLevel=1", "-cp", System.getProperty("java.class.path"),
                ClassArchive.class.getName(), target.toString()));
        if (Files.isExecutable(Path.of("/usr/bin/nice"))) {
            command.addAll(0, List.of("/usr/bin/nice", "-n", "19"));
        }
        new ProcessBuilder(command).redirectInput(nothing()).redirectOutput(Redirect.DISCARD)
                .redirectError(Redirect.DISCARD).start();
    }

    private static Redirect nothing() {
        File nothing = new File("/dev/null");
        return nothing.exists() ? Redirect.from(nothing) : Redirect.PIPE;
    }

    /** Whether it is this process's to make: nobody else is at it, and there is room. */
    private boolean begin() throws IOException {
        Path folder = target.getParent();
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.createDirectories(folder,
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
        } else {
            Files.createDirectories(folder);
        }
        if (Files.getFileStore(folder).getUsableSpace() < LEAST_SPACE) {
            return false;
        }
        if (Files.exists(scratch)) {
            Duration wait = Files.exists(scratch.resolve(FAILED)) ? GIVEN_UP : LONGEST;
            if (Files.getLastModifiedTime(scratch).toInstant().isAfter(Instant.now().minus(wait))) {
                return false;
            }
            remove(scratch);
        }
        Files.createDirectory(scratch);
        return true;
    }

    /** Makes the archive that its argument names, in the folder of the distribution. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        new ClassArchive(Path.of(arguments[0])).make();
    }

    private void make() throws IOException, InterruptedException {
        boolean made = false;
        try {
            Path all = scratch.resolve("all-classes");
            Path chosen = scratch.resolve("classes");
            Path archive = scratch.resolve("archive");
            if (run("-Xshare:off", "-XX:DumpLoadedClassList=" + all,
                    "-Ddrools.externaliseCanonicalModelLambda=false", "-Dcamberwell.home=.", Rehearsal.class.getName())) {
                // JDK 17 crashes on archiving a lambda of these classes, whose interface it cannot verify.
                Files.write(chosen, Files.readAllLines(all).stream()
                        .filter(line -> !line.contains("@lambda-proxy org/drools/ecj/")).toList());
                made = run("-Xshare:dump", "-XX:SharedClassListFile=" + chosen, "-XX:SharedArchiveFile=" + archive);
            }
            if (made) {
                Files.move(archive, target, StandardCopyOption.REPLACE_EXISTING);
                prune();
            }
        } finally {
            remove(scratch);
            if (!made) {
                Files.createFile(Files.createDirectory(scratch).resolve(FAILED));
            }
        }
    }

    private static boolean run(String... options) throws IOException, InterruptedException {
        List<String> command = java();
        command.addAll(List.of("-Xlog:disable", "-XX:+UseSerialGC", "-cp", System.getProperty("java.class.path")));
        command.addAll(List.of(options));
        return new ProcessBuilder(command).redirectInput(nothing()).redirectOutput(Redirect.DISCARD)
                .redirectError(Redirect.DISCARD).start().waitFor() == 0;
    }

    private static List<String> java() {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        return command;
    }

    /** Removes the oldest of too many: each Java and each place has one. */
    private void prune() throws IOException {
        Path root = RuleBase.defaultCache().resolveSibling("classes");
        if (!target.startsWith(root)) {
            return;
        }
        try (Stream<Path> files = Files.walk(root)) {
            List<Path> archives = new ArrayList<>(files.filter(file -> file.toString().endsWith(ENDING)).toList());
            archives.sort(Comparator.comparing((Path file) -> file.toFile().lastModified()).reversed());
            for (Path old : archives.subList(Math.min(MOST_ARCHIVES, archives.size()), archives.size())) {
                Files.deleteIfExists(old);
            }
        }
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        }
    }
}
