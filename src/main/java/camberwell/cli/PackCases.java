package camberwell.cli;

import camberwell.input.CaseFile;
import camberwell.input.CaseReader;
import camberwell.pack.RulePack;
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

/**
 * The cases that travel in a pack, be it a folder or a zip file, and those that somebody names. A case that cannot be read
 * is told and left out: it stands in nobody's way.
 */
final class PackCases {

    private static final String CARS = RulePack.CASES + "/cars/";
    private static final Pattern CAR = Pattern.compile("(?m)^car:[ \\t]*([^\\s{#][^\\r\\n#]*?)[ \\t]*(#[^\\r\\n]*)?$");

    private final Console console;
    private final CaseReader reader;
    private final List<CaseFile> read = new ArrayList<>();
    private boolean broken;

    PackCases(Console console, CaseReader reader) {
        this.console = console;
        this.reader = reader;
    }

    /** Adds the cases of a pack; where it is a folder, as its files lie there. */
    PackCases of(RulePack pack, Path place) {
        if (Files.isDirectory(place)) {
            return files(CaseFolder.cases(place.resolve(RulePack.CASES)));
        }
        Map<String, String> texts = new TreeMap<>(pack.files());
        texts.keySet().removeIf(path -> !path.startsWith(RulePack.CASES + "/") || path.startsWith(CARS));
        texts.forEach((path, text) -> add(() -> reader.read(pack.name() + "/" + path, new ByteArrayInputStream(
                withCar(text, pack).getBytes(StandardCharsets.UTF_8)), console.path("."))));
        return this;
    }

    /** A car that the case points to stands in the same zip file, where no path leads. */
    private static String withCar(String text, RulePack pack) {
        Matcher car = CAR.matcher(text);
        if (!car.find()) {
            return text;
        }
        String body = pack.files().get(RulePack.CASES + "/" + car.group(1).replaceAll("^[\"']|[\"']$", ""));
        return body == null ? text : text.substring(0, car.start()) + "car:\n  "
                + body.strip().replace("\n", "\n  ") + text.substring(car.end());
    }

    /** Adds cases by their files. */
    PackCases files(List<Path> files) {
        files.forEach(file -> add(() -> reader.read(file)));
        return this;
    }

    private interface Reading {
        CaseFile read();
    }

    private void add(Reading reading) {
        try {
            read.add(reading.read());
        } catch (ProblemsException e) {
            broken = true;
            e.problems().forEach(problem -> console.err().println(problem.withExcerpt()));
        }
    }

    /** Those that could be read. */
    List<CaseFile> read() {
        return read;
    }

    /** Whether one could not. */
    boolean broken() {
        return broken;
    }
}
