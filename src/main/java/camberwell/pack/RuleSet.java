package camberwell.pack;

import camberwell.fact.Conclusion;
import camberwell.language.CanonicalRules;
import camberwell.language.Dictionary;
import camberwell.language.Names;
import camberwell.language.RuleFile;
import camberwell.language.RuleFileReader;
import camberwell.language.RuleGraph;
import camberwell.language.RuleText;
import camberwell.language.Stage;
import camberwell.problem.Problem;
import camberwell.vocabulary.Nearest;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The rules as they were read: the built-in ones, and on top of them those of rule folders in the order they were
 * named. Nothing is compiled yet.
 */
public final class RuleSet {

    /** What compares rules with one another takes a time that grows with the square of their number. */
    private static final int MOST_RULES = 2000;

    /** What an id has behind it for each end, and for each way through conditions of which one will do. */
    private static final Pattern MANY = Pattern.compile("[FR]?[a-l]?");

    private final Dictionary dictionary;
    private final List<Source> sources = new ArrayList<>();
    private final List<RuleFile> files = new ArrayList<>();
    private final List<RuleFile> packFiles = new ArrayList<>();
    private final Map<String, RuleText> rules = new LinkedHashMap<>();
    /** The rules that hold by their titles, of one that goes several ways the first way. */
    private final Map<String, RuleText> titles = new HashMap<>();
    private final Map<String, RuleText> ids = new HashMap<>();
    private final Map<RuleText, RuleText> replaced = new LinkedHashMap<>();
    private final List<Problem> builtInProblems = new ArrayList<>();
    private final List<Problem> packProblems = new ArrayList<>();
    private final List<Retired> retired;
    private final Map<RuleText, String> switchedOff = new LinkedHashMap<>();
    /** The files of folders that may replace cautions. */
    private final Set<String> trusted = new HashSet<>();
    private boolean drools;

    private RuleSet(Dictionary dictionary, List<Retired> retired) {
        this.dictionary = dictionary;
        this.retired = retired;
    }

    /**
     * Reads the rules below camberwell's own home and those of {@code packs}.
     *
     * @param names the names of the knowledge notes, those of the packs among them
     */
    public static RuleSet read(Path home, Names names, List<RulePack> packs) throws IOException {
        RuleFolder folder = RuleFolder.builtIn(home);
        List<Problem> inList = new ArrayList<>();
        List<String> symptoms = packs.stream().flatMap(pack -> pack.symptoms().stream()).map(OwnSymptom::id).distinct()
                .toList();
        Map<String, Set<String>> questions = questions(packs);
        Names all = questions.isEmpty() ? names : names.with(questions);
        RuleSet set = new RuleSet(folder.dictionary().with(symptoms), folder.retired(inList));
        set.builtInProblems.addAll(inList);
        // No file needs another to be read: all cores read, and what they read is put together in order.
        List<Built> built = folder.files().parallelStream().map(found -> set.built(names, found)).toList();
        for (Built one : built) {
            set.builtInProblems.addAll(one.problems());
            one.file().ifPresent(set.files::add);
            set.sources.add(new Source(one.found().name(), one.found().text(), one.file().isPresent()));
            one.file().ifPresent(read -> read.rules().forEach(rule -> set.add(rule, set.builtInProblems)));
        }
        List<Manifest> manifests = new ArrayList<>();
        for (RulePack pack : packs) {
            pack.manifest().ifPresent(manifest -> {
                manifest.obstacles(manifests).forEach(obstacle -> set.packProblems.add(inManifest(pack,
                        obstacle.about(), obstacle.told(), Optional.empty())));
                manifests.add(manifest);
            });
            set.switchOff(pack);
            set.add(pack, all);
        }
        set.packProblems.addAll(RuleGraph.of(set.rules().values()).circles(set.packRules()));
        return set;
    }

    /** The follow-up questions of those packs, each with its answers. */
    public static Map<String, Set<String>> questions(List<RulePack> packs) {
        Map<String, Set<String>> questions = new LinkedHashMap<>();
        packs.forEach(pack -> pack.questions().forEach(question -> questions.put(question.id(), question.answers().keySet())));
        return questions;
    }

    /** Takes out the rules that a pack does not want. */
    private void switchOff(RulePack pack) {
        for (String name : pack.manifest().map(Manifest::off).orElse(List.of())) {
            List<RuleText> named = named(name);
            if (named.isEmpty()) {
                packProblems.add(inManifest(pack, name, "\"switch-off\" names \"" + name + "\", "
                        + Retired.named(name, retired).map(one -> "which " + one.told())
                        .orElse("and no earlier folder has a rule of that name"), Nearest.to(name, rules.keySet())));
            }
            for (RuleText rule : named) {
                if (rule.stage() == Stage.CAUTIONS && !pack.trusted()) {
                    packProblems.add(inManifest(pack, name, "\"" + rule.name() + "\" draws a caution; only a folder "
                            + "named with --trust may switch it off", Optional.empty()));
                } else {
                    switchedOff.put(rule, pack.title());
                    remove(rule);
                }
            }
        }
    }

    /** A problem at the first place of the manifest that has that text. */
    private static Problem inManifest(RulePack pack, String about, String message, Optional<String> suggestion) {
        List<String> lines = pack.files().getOrDefault(RulePack.MANIFEST, "").lines().toList();
        int line = 0;
        while (line < lines.size() && !lines.get(line).contains(about)) {
            line++;
        }
        boolean found = line < lines.size();
        return new Problem(pack.name() + "/" + RulePack.MANIFEST, found ? line + 1 : 1,
                found ? lines.get(line).indexOf(about) + 1 : 1, message, suggestion, false, found ? lines.get(line) : "");
    }

    /**
     * The rules of that name or id, of those that hold: several where one was written for both ends, and named by its id, or
     * with conditions of which one will do.
     */
    private List<RuleText> named(String name) {
        RuleText alone = rules.get(name);
        return alone != null ? List.of(alone) : rules.values().stream().filter(rule -> Conclusion.voice(rule.name()).equals(name)
                || rule.standing().id().filter(id -> id.startsWith(name) && MANY.matcher(id.substring(name.length())).matches())
                .isPresent()).toList();
    }

    private void add(RulePack pack, Names names) {
        long count = pack.rules().values().stream().flatMap(String::lines)
                .filter(line -> line.stripLeading().startsWith("rule")).count();
        if (count > MOST_RULES) {
            packProblems.add(Problem.of(pack.name(), "has more than " + MOST_RULES + " rules", Optional.empty()));
            return;
        }
        for (Map.Entry<String, String> entry : pack.rules().entrySet()) {
            String name = pack.name() + "/" + entry.getKey();
            Stage stage = Stage.ofFolder(entry.getKey().substring(0, entry.getKey().indexOf('/')));
            if (pack.trusted()) {
                trusted.add(name);
            }
            RuleFile file = file(names, name, stage, entry.getValue(), packProblems);
            packFiles.add(file);
            // What Drools gets is written anew from what was understood, so that it cannot see anything else.
            if (!file.rules().isEmpty()) {
                sources.add(new Source(name, CanonicalRules.of(file.rules()), true));
            }
            file.rules().forEach(rule -> add(rule, packProblems));
        }
        pack.drools().forEach((path, text) -> {
            drools = true;
            sources.add(new Source(pack.name() + "/" + path, text, false));
        });
    }

    /** A built-in file with what was read in it, and the problems met. */
    private record Built(RuleFolder.Found found, Optional<RuleFile> file, List<Problem> problems) {
    }

    private Built built(Names names, RuleFolder.Found found) {
        List<Problem> met = new ArrayList<>();
        return new Built(found, found.stage().map(stage -> file(names, found.name(), stage, found.text(), met)), met);
    }

    private RuleFile file(Names names, String name, Stage stage, String text, List<Problem> problems) {
        RuleFileReader reader = new RuleFileReader(dictionary, names, name, stage);
        RuleFile file = reader.read(text);
        problems.addAll(reader.problems());
        return file;
    }

    private void add(RuleText rule, List<Problem> problems) {
        rule.replaces().ifPresent(old -> replace(old, rule, problems));
        rule.standing().id().ifPresent(id -> identify(id, rule, problems));
        RuleText other = titles.putIfAbsent(title(rule), rule);
        if (other == null || isAnotherWay(rule, other)) {
            rules.put(rule.name(), rule);
        } else {
            boolean mayReplace = isOf(other.file(), files) && isOf(rule.file(), packFiles);
            String title = Conclusion.voice(rule.name());
            Problem problem = Problem.error(rule.file(), rule.line(), 1, "the rule \"" + title
                    + "\" stands already in " + other.file() + ":" + other.line() + (mayReplace
                    ? "; if it is to take its place, say @replaces(\"" + title + "\")" : ""));
            if (!problems.contains(problem)) {
                problems.add(problem);
            }
        }
    }

    /** A rule's title as it is told from others: nobody tells two apart that differ in capitals alone. */
    private static String title(RuleText rule) {
        return Conclusion.voice(rule.name()).toLowerCase(Locale.ROOT);
    }

    /** Whether both are ways of one rule, through conditions of which one will do. */
    private static boolean isAnotherWay(RuleText rule, RuleText other) {
        return !rule.name().equals(other.name()) && rule.file().equals(other.file()) && rule.line() == other.line();
    }

    private void remove(RuleText rule) {
        rules.remove(rule.name());
        titles.remove(title(rule));
    }

    /** Takes a rule out that another one replaces, by its name or its id. */
    private void replace(String old, RuleText rule, List<Problem> problems) {
        List<RuleText> taken = named(old);
        if (!trusted.contains(rule.file()) && taken.stream().anyMatch(one -> one.stage() == Stage.CAUTIONS)) {
            problems.add(Problem.error(rule.file(), rule.line(), 1, "the rule \"" + rule.name() + "\" replaces \"" + old
                    + "\", which draws a caution; only a folder named with --trust may do so"));
            return;
        }
        if (!taken.isEmpty() && taken.stream().noneMatch(one -> one.file().equals(rule.file()))) {
            taken.forEach(one -> {
                replaced.put(one, rule);
                remove(one);
            });
            return;
        }
        if (replaced.values().stream().anyMatch(other -> other.file().equals(rule.file()) && other.line() == rule.line()
                && other.replaces().equals(rule.replaces()))) {
            return;
        }
        String what = "the rule \"" + rule.name() + "\" replaces \"" + old + "\", ";
        Optional<Retired> gone = Retired.named(old, retired);
        problems.add(Problem.error(rule.file(), rule.line(), 1, what + gone.map(one -> "which " + one.told())
                .orElse("and no earlier folder has a rule of that name"),
                gone.isPresent() ? Optional.empty() : Nearest.to(old, rules.keySet())));
    }

    /** An id is given once, and to nobody again. */
    private void identify(String id, RuleText rule, List<Problem> problems) {
        Retired.named(id, retired).ifPresent(gone -> problems.add(Problem.error(rule.file(), rule.line(), 1,
                "the id " + id + " was that of \"" + gone.title() + "\", which " + gone.told()
                + "; give the rule another")));
        RuleText other = ids.putIfAbsent(id, rule);
        if (other != null) {
            problems.add(Problem.error(rule.file(), rule.line(), 1, "the id " + id + " is that of \"" + other.name()
                    + "\" (" + other.file() + ":" + other.line() + ") already"));
        }
    }

    private static boolean isOf(String name, List<RuleFile> files) {
        return files.stream().anyMatch(file -> file.name().equals(name));
    }

    /** The sentences that rules are written in. */
    public Dictionary dictionary() {
        return dictionary;
    }

    /** Every rule that holds, by its name, in the order of the files; those that another replaces are not there. */
    public Map<String, RuleText> rules() {
        return Collections.unmodifiableMap(rules);
    }

    /** The rules that hold and that stand in a rule folder rather than in the built-in base. */
    public List<RuleText> packRules() {
        return rules.values().stream().filter(rule -> isOf(rule.file(), packFiles)).toList();
    }

    /** How many rules the rule folders have, those with a problem among them. */
    public int packSize() {
        return packFiles.stream().mapToInt(file -> file.rules().size() + file.broken().size()).sum();
    }

    /** The rules that do not hold any more, each with the one that took its place. */
    public Map<RuleText, RuleText> replaced() {
        return Collections.unmodifiableMap(replaced);
    }

    /** The rules that a folder switched off, each with the folder's title. */
    public Map<RuleText, String> switchedOff() {
        return Collections.unmodifiableMap(switchedOff);
    }

    /**
     * The rules that {@code packs} have replaced or switched off, each with what became of it, and by whom.
     *
     * @param packs the folders that it was read with
     */
    public Map<RuleText, String> outOfUse(List<RulePack> packs) {
        Map<RuleText, String> gone = new LinkedHashMap<>();
        replaced.forEach((old, fresh) -> gone.put(old, "replaced by \"" + fresh.name() + "\"" + packs.stream()
                .filter(pack -> fresh.file().startsWith(pack.name() + "/")).findFirst().map(pack -> " of " + pack.title())
                .orElse("")));
        switchedOff.forEach((rule, pack) -> gone.put(rule, "switched off by " + pack));
        return gone;
    }

    /** Whether a trusted folder brings raw Drools, which nothing here can look into. */
    public boolean hasDrools() {
        return drools;
    }

    /** What there is to compile, the built-in files first. */
    public List<Source> sources() {
        return Collections.unmodifiableList(sources);
    }

    /** Everything for which the rules cannot be used: what could not be read, and rules of a folder that would loop. */
    public List<Problem> problems() {
        List<Problem> problems = new ArrayList<>(builtInProblems);
        problems.addAll(packProblems);
        return problems;
    }

    /** The problems of the built-in files alone. */
    public List<Problem> builtInProblems() {
        return builtInProblems;
    }

    /** The problems of the rule folders alone. */
    public List<Problem> packProblems() {
        return packProblems;
    }

    /** The names of the rules that {@code source} has. */
    public List<String> namesIn(Source source) {
        List<RuleFile> all = new ArrayList<>(files);
        all.addAll(packFiles);
        return all.stream().filter(file -> file.name().equals(source.name())).flatMap(file -> file.rules().stream())
                .map(RuleText::name).sorted().toList();
    }
}
