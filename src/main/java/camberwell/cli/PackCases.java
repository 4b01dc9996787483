package camberwell.cli;

import camberwell.input.CaseFile;
import camberwell.input.CaseReader;
import camberwell.pack.RulePack;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The cases that travel in a pack, be it a folder or a zip file, and those that somebody names. A case that cannot be read
 * is told and left out: it stands in nobody's way.
 */
final class PackCases {

    private static final String CARS = "/cars/";
    private static final Pattern CAR = Pattern.compile("(?m)^car:[ \\t]*([^\\s{#][^\\r\\n#]*?)[ \\t]*(#[^\\r\\n]*)?$");

    private final Console console;
    private final CaseReader reader;
    private final Path shipped;
    private final List<CaseFile> read = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private final List<Problem> warnings = new ArrayList<>();
    private final boolean tells;
    private boolean namedBroken;

    /** @param shipped where the cases and cars lie that come with camberwell */
    PackCases(Console console, CaseReader reader, Path shipped) {
        this(console, reader, shipped, true);
    }

    /** @param tells whether what is wrong with a case is printed at once */
    PackCases(Console console, CaseReader reader, Path shipped, boolean tells) {
        this.console = console;
        this.tells = tells;
        this.reader = reader;
        this.shipped = shipped;
    }

    /**
     * Adds the cases of a pack; where it is a folder, as its files lie there. They may be a stranger's, and see what is in the
     * pack and what comes with camberwell, unless the pack is trusted.
     */
    PackCases of(RulePack pack, Path place) {
        CaseReader within = pack.trusted() ? reader : reader.within(List.of(place, shipped));
        if (Files.isDirectory(place)) {
            // What an editor left behind is no part of the pack.
            CaseFolder.cases(place.resolve(RulePack.CASES)).stream().filter(file -> pack.files().containsKey(
                    place.relativize(file).toString().replace('\\', '/'))).forEach(file -> add(() -> within.read(file)));
            return this;
        }
        return inside(pack, RulePack.CASES, within);
    }

    /** Adds the cases of one folder of a pack as it was read, be it from a folder or from a zip file. */
    PackCases inside(RulePack pack, String folder) {
        return inside(pack, folder, pack.trusted() ? reader : reader.within(List.of(shipped)));
    }

    private PackCases inside(RulePack pack, String folder, CaseReader within) {
        Map<String, String> texts = new TreeMap<>(pack.files());
        texts.keySet().removeIf(path -> !path.startsWith(folder + "/") || path.startsWith(folder + CARS));
        texts.forEach((path, text) -> add(() -> within.read(pack.name() + "/" + path, new ByteArrayInputStream(
                withCar(text, folder, pack).getBytes(StandardCharsets.UTF_8)), console.path("."))));
        return this;
    }

    /** A car that the case points to stands in the same zip file, where no path leads. */
    private static String withCar(String text, String folder, RulePack pack) {
        Matcher car = CAR.matcher(text);
        if (!car.find()) {
            return text;
        }
        String body = pack.files().get(folder + "/" + car.group(1).replaceAll("^[\"']|[\"']$", ""));
        return body == null ? text : text.substring(0, car.start()) + "car:\n  "
                + body.strip().replace("\n", "\n  ") + text.substring(car.end());
    }

    /** Adds cases that somebody named, by their files. */
    PackCases files(List<Path> files) {
        int before = problems.size();
        files.forEach(file -> add(() -> reader.read(file)));
        namedBroken |= problems.size() > before;
        return this;
    }

    private interface Reading {
        CaseFile read();
    }

    private void add(Reading reading) {
        try {
            CaseFile file = reading.read();
            read.add(file);
            warnings.addAll(file.warnings());
            if (tells) {
                file.warnings().forEach(warning -> console.err().println(warning.text()));
            }
        } catch (ProblemsException e) {
            problems.addAll(e.problems());
            if (tells) {
                e.problems().forEach(problem -> console.err().println(problem.withExcerpt()));
            }
        }
    }

    /** Those that could be read. */
    List<CaseFile> read() {
        return read;
    }

    /** Whether one could not. */
    boolean broken() {
        return !problems.isEmpty();
    }

    /** What a command ends with that used them: a case that somebody named is its input, those of a pack are what it looks at. */
    int code() {
        return namedBroken ? ExitCode.WRONG_INPUT : broken() ? ExitCode.FOUND_WRONG : ExitCode.DONE;
    }

    /** What is wrong with those that could not, and what is odd about the others. */
    List<Problem> problems() {
        return Stream.concat(problems.stream(), warnings.stream()).toList();
    }
}
