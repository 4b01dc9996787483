package camberwell.cli;

import camberwell.language.Stage;
import camberwell.pack.RulePack;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;

/** The options {@code --rules} and {@code --trust} of every command that reasons. */
final class RulesOption {

    private final Described<List<String>> folders = Described.texts("--rules", "DIR",
            "Adds the rules of this folder or .zip file to the built-in ones. Can be given again.");
    private final Described<List<String>> trusted = Described.texts("--trust", "DIR",
            "Allows raw Drools in this folder, which must be named with --rules too. Such rules can do anything to your "
            + "computer: trust only what you wrote yourself.");

    /** Gives a command these options, if it has them not yet. */
    void addTo(CommandSpec command) {
        if (command.findOption("--rules") == null) {
            command.addOption(folders.option());
            command.addOption(trusted.option());
        }
    }

    /** {@code engine} with the rules of the folders that were named. */
    Engine on(Engine engine, Console console) {
        List<RulePack> packs = read(folders.value(), trusted.value(), console);
        refuseEmpty(packs);
        return engine.withRules(packs);
    }

    /** @throws ProblemsException if one of {@code packs} has nothing in it: most likely another folder was meant */
    static void refuseEmpty(List<RulePack> packs) {
        List<Problem> empty = packs.stream().filter(RulesOption::empty).map(RulesOption::nothingIn).toList();
        if (!empty.isEmpty()) {
            throw new ProblemsException(empty);
        }
    }

    /**
     * What comes of folders that a command names beside those of {@code --rules}.
     *
     * @param base the engine with the rules of {@code --rules}
     * @param packs the command's own
     */
    record Named(Engine base, List<RulePack> packs) {
    }

    /** {@code engine} with the rules of {@code --rules}, and the packs that the command itself names. */
    Named on(Engine engine, Console console, List<String> named) {
        List<RulePack> read = read(with(named), trusted.value(), console);
        return new Named(engine.withRules(read.subList(0, folders.value().size())),
                read.subList(folders.value().size(), read.size()));
    }

    /** The folders of {@code --rules} and those after them. */
    List<String> with(List<String> named) {
        List<String> all = new ArrayList<>(folders.value());
        all.addAll(named);
        return all;
    }

    /** The folders that may hold raw Drools. */
    List<String> trusted() {
        return trusted.value();
    }

    /** The options as they were typed, for a command that is to come to the same. */
    List<String> typed() {
        List<String> typed = new ArrayList<>();
        folders.value().forEach(folder -> typed.addAll(List.of("--rules", folder)));
        trusted.value().forEach(folder -> typed.addAll(List.of("--trust", folder)));
        return typed;
    }

    /** Whether a folder has neither rules nor notes: most likely another was meant. */
    static boolean empty(RulePack pack) {
        return pack.files().keySet().stream().allMatch(path -> path.equals(RulePack.MANIFEST)
                || path.startsWith(RulePack.CASES + "/")) && pack.files().keySet().stream()
                .noneMatch(path -> path.startsWith(RulePack.QUIZ + "/"));
    }

    static Problem nothingIn(RulePack pack) {
        return Problem.of(pack.name(), "there are no rules and no notes in it; rules lie in its folders "
                + Arrays.stream(Stage.values()).map(Stage::folder).collect(Collectors.joining(", ")) + ", notes in "
                + RulePack.NOTES, Optional.empty());
    }

    /**
     * Reads rule folders.
     *
     * @throws ProblemsException with all that does not belong in them, or if a folder is trusted and not named
     */
    static List<RulePack> read(List<String> folders, List<String> trusted, Console console) {
        List<Problem> problems = new ArrayList<>();
        List<RulePack> packs = readable(folders, trusted, console, problems);
        if (!problems.isEmpty()) {
            throw new ProblemsException(problems);
        }
        return packs;
    }

    /** Reads what can be read of rule folders, to be looked at and not to be used; what is wrong with them is noted. */
    static List<RulePack> readable(List<String> folders, List<String> trusted, Console console, List<Problem> problems) {
        for (String trust : trusted) {
            if (folders.stream().noneMatch(folder -> same(console.path(folder), console.path(trust)))) {
                problems.add(Problem.of("--trust " + trust, "this folder is not among those whose rules are used",
                        Optional.empty()));
            }
        }
        List<RulePack> packs = new ArrayList<>();
        for (String folder : folders) {
            boolean trust = trusted.stream().anyMatch(other -> same(console.path(folder), console.path(other)));
            try {
                packs.add(RulePack.read(console.path(folder), shown(folder), trust, problems));
            } catch (ProblemsException e) {
                problems.addAll(e.problems());
            }
        }
        return packs;
    }

    private static String shown(String folder) {
        return folder.length() > 1 && (folder.endsWith("/") || folder.endsWith("\\"))
                ? folder.substring(0, folder.length() - 1) : folder;
    }

    private static boolean same(Path one, Path other) {
        try {
            return Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other);
        } catch (IOException e) {
            return false;
        }
    }
}
