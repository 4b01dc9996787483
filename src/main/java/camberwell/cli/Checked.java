package camberwell.cli;

import camberwell.advice.Advisor;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.pack.Misnamed;
import camberwell.pack.RulePack;
import camberwell.pack.RuleSet;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.upkeep.RuleCheck;
import camberwell.upkeep.Unasked;
import camberwell.upkeep.Worth;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;

/**
 * What a check of rules found.
 *
 * @param problems file by file, from top to bottom
 * @param rules how many rules were checked
 * @param notes how many notes were checked
 * @param warnings what is no fault, and what its author will want to know
 */
record Checked(List<Problem> problems, int rules, int notes, List<Problem> warnings) {

    Checked(List<Problem> problems, int rules, int notes) {
        this(problems, rules, notes, List.of());
    }

    String summary() {
        return Counted.of(rules, "rule") + " and " + Counted.of(notes, "note") + " checked: "
                + (problems.isEmpty() ? "all is well" : Counted.of(problems.size(), "problem"))
                + (warnings.isEmpty() ? "" : ", " + Counted.of(warnings.size(), "warning"));
    }

    /** The same, with what is wrong with the program's own files by names that lead there. */
    Checked placed(Home home, Console console) {
        return new Checked(problems.stream().map(problem -> home.placed(problem, console)).toList(), rules, notes, warnings);
    }

    /**
     * Checks folders, or the built-in rules when there are none; what may not be in a folder is a problem like others.
     */
    static Checked of(List<String> folders, List<String> trusted, Console console, Engine engine) {
        if (folders.isEmpty()) {
            return new Untouched(engine.home().folder()).found().orElseGet(() -> builtIn(engine));
        }
        List<Problem> found = new ArrayList<>();
        List<RulePack> packs = RulesOption.readable(folders, trusted, console, found);
        if (found.stream().anyMatch(problem -> problem.line() == 0)) {
            throw new ProblemsException(found);
        }
        List<Problem> nothing = packs.stream().filter(RulesOption::empty).map(RulesOption::nothingIn).toList();
        if (found.isEmpty() && !nothing.isEmpty()) {
            throw new ProblemsException(nothing);
        }
        return new Check(console, engine, found).of(packs);
    }

    /** The check of packs of which that was found already. */
    private record Check(Console console, Engine engine, List<Problem> found) {

        Checked of(List<RulePack> packs) {
            Engine with = engine.withRules(packs);
            Notes notes;
            try {
                notes = with.notes();
            } catch (ProblemsException e) {
                return without(e.problems(), packs);
            }
            Set<String> own = new TreeSet<>();
            packs.forEach(pack -> pack.notes().keySet().forEach(path ->
                    own.add(path.substring(path.indexOf('/') + 1, path.length() - ".md".length()))));
            Set<String> lost = lost(packs);
            List<Problem> more = new ArrayList<>(Checked.problems(with, own, found.isEmpty()));
            more.addAll(ofCases(packs, console, with));
            more.addAll(ofPhrases(packs, with, engine));
            more.stream().filter(problem -> lost.stream().noneMatch(word -> problem.excerpt().contains(word)))
                    .forEach(found::add);
            List<Problem> problems = found.stream().filter(problem -> !problem.warning()).distinct().sorted().toList();
            List<Problem> warnings = new ArrayList<>(found.stream().filter(Problem::warning).toList());
            packs.forEach(pack -> Misnamed.in(pack, console.path(pack.name())).stream().filter(warning ->
                    problems.stream().noneMatch(problem -> problem.file().equals(warning.file()))).forEach(warnings::add));
            if (problems.isEmpty()) {
                packs.forEach(pack -> warnings.addAll(Unasked.in(pack, with.ruleSet())));
                warnings.addAll(new Worth(with.ruleSet(), notes).warnings());
            }
            return new Checked(problems, with.ruleSet().packSize(), own.size(), warnings.stream().sorted().toList());
        }

        /** The same without the files that stand in the way of all others. */
        private Checked without(List<Problem> problems, List<RulePack> packs) {
            found.addAll(problems);
            List<RulePack> rest = packs.stream().map(pack -> pack.without(problems)).toList();
            if (rest.equals(packs) || problems.stream().anyMatch(problem -> problem.line() == 0)) {
                throw new ProblemsException(problems);
            }
            return of(rest);
        }

        /** Names that are missing because of what was found already: whoever uses them has made no further mistake. */
        private Set<String> lost(List<RulePack> packs) {
            Set<String> lost = new TreeSet<>();
            packs.forEach(pack -> lost.addAll(pack.lost()));
            found.stream().map(Problem::file).filter(file -> file.endsWith(".md")).forEach(file ->
                    lost.add(file.substring(file.lastIndexOf('/') + 1, file.length() - ".md".length())));
            return lost;
        }
    }

    /** Checks the built-in rules and notes, touched or not. */
    static Checked builtIn(Engine engine) {
        // The other files take as long as the rules do, and so do the notes; none waits for the other.
        CompletableFuture<List<Problem>> ofOthers = CompletableFuture.supplyAsync(() -> ProgramFiles.problems(engine.home()));
        Notes notes = engine.notes();
        CompletableFuture<List<Problem>> ofNotes = CompletableFuture.supplyAsync(notes::problems);
        RuleSet set = engine.ruleSet();
        List<Problem> problems = new ArrayList<>(ofOthers.join());
        problems.addAll(ofNotes.join());
        try {
            problems.addAll(new RuleCheck(set, Home.names(notes), always(notes), notes::file, engine.weights()).builtIn());
        } catch (ProblemsException e) {
            // Weights that cannot be read, as was found above.
            problems.addAll(e.problems());
        }
        return new Checked(problems.stream().distinct().sorted().toList(), set.rules().size(),
                notes.names().size());
    }

    /** A problem of a case by the name that the folder was given, rather than by the whole path. */
    private static Problem asNamed(Problem problem, List<RulePack> packs, Console console) {
        for (RulePack pack : packs) {
            String place = console.path(pack.name()).toString();
            if (problem.file().startsWith(place)) {
                String file = pack.name() + problem.file().substring(place.length()).replace('\\', '/');
                return problem.inFile(file);
            }
        }
        return problem;
    }

    /** What is wrong with the cases of packs. */
    private static List<Problem> ofCases(List<RulePack> packs, Console console, Engine with) {
        PackCases cases = new PackCases(console, with.cases(), with.home().folder().resolve(RulePack.CASES), false);
        for (RulePack pack : packs) {
            cases.of(pack, console.path(pack.name())).inside(pack, RulePack.QUIZ);
        }
        List<Problem> problems = new ArrayList<>();
        cases.problems().forEach(problem -> problems.add(asNamed(problem, packs, console)));
        return problems;
    }

    /** What is wrong with the drivers' phrases of packs, and what is odd about them. */
    private static List<Problem> ofPhrases(List<RulePack> packs, Engine with, Engine without) {
        if (packs.stream().noneMatch(pack -> pack.sayings().isPresent())) {
            return List.of();
        }
        try {
            return packs.stream().flatMap(pack -> PackPhrases.of(pack, without.listener(), with.listener()).stream()).toList();
        } catch (ProblemsException e) {
            return e.problems();
        }
    }

    /** What is wrong with the rules of the packs that are on, and with the notes of those names. */
    static List<Problem> problems(Engine with, Set<String> own) {
        return problems(with, own, true);
    }

    /** @param whole whether there is nothing else that could not be read */
    private static List<Problem> problems(Engine with, Set<String> own, boolean whole) {
        Notes notes = with.notes();
        List<Problem> problems = new ArrayList<>(new RuleCheck(with.ruleSet(), Home.names(notes), always(notes),
                notes::file, with.weights()).packs(own, whole));
        problems.addAll(notes.problems(own));
        return problems;
    }

    /** The notes that no rule has to ask for; what is wrong with a note is told by itself. */
    private static Set<String> always(Notes notes) {
        try {
            return Set.copyOf(Advisor.generalCautions(notes));
        } catch (ProblemsException e) {
            return Set.copyOf(notes.names(Note.Kind.CAUTION));
        }
    }
}
