package camberwell.upkeep;

import camberwell.fact.Thresholds;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.language.RuleText;
import camberwell.pack.Manifest;
import camberwell.pack.OwnQuestion;
import camberwell.pack.OwnSymptom;
import camberwell.pack.RulePack;
import camberwell.pack.RuleSet;
import camberwell.pack.ThresholdsFile;
import camberwell.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What one pack brings on top of camberwell's own rules and of the packs before it.
 *
 * @param pack the pack
 * @param rules the names of the rules that it adds, those that take another's place among them
 * @param replaces the rules whose place it takes, each with the rule that takes it
 * @param off the rules that it switches off
 * @param notes the names of its notes
 * @param overrides those of its notes that take another's place, each with the file of the other
 * @param thresholds what it states otherwise of from what on words hold
 * @param words the words for complaints that it brings
 * @param questions the follow-up questions that it brings
 * @param cases how many cases it has
 * @param obstacles why it cannot be used: needs that are not met, and what is wrong with its rules
 */
public record PackSummary(RulePack pack, List<String> rules, Map<String, String> replaces, List<String> off,
        List<String> notes,
        Map<String, String> overrides, List<String> thresholds, List<String> words,
        List<String> questions, int cases, List<String> obstacles) {

    /**
     * Of each pack, in the order in which they are read.
     *
     * @param set the rules with all of the packs on top
     * @param builtIn camberwell's own notes
     */
    public static List<PackSummary> of(List<RulePack> packs, RuleSet set, Notes builtIn) {
        List<PackSummary> summaries = new ArrayList<>();
        Map<String, String> known = new TreeMap<>();
        for (Note.Kind kind : Note.Kind.values()) {
            builtIn.names(kind).forEach(name -> known.put(name, builtIn.file(name)));
        }
        List<Manifest> before = new ArrayList<>();
        Thresholds thresholds = Thresholds.BUILT_IN;
        for (RulePack pack : packs) {
            summaries.add(of(pack, set, known, before, ThresholdsFile.otherwise(pack, thresholds)));
            thresholds = pack.thresholds(thresholds);
            pack.manifest().ifPresent(before::add);
        }
        return summaries;
    }

    private static PackSummary of(RulePack pack, RuleSet set, Map<String, String> known, List<Manifest> before,
            List<String> thresholds) {
        String folder = pack.name() + "/";
        List<String> rules = set.packRules().stream().filter(rule -> rule.file().startsWith(folder))
                .map(RuleText::name).toList();
        Map<String, String> replaces = new TreeMap<>();
        set.replaced().forEach((old, fresh) -> {
            if (fresh.file().startsWith(folder)) {
                replaces.put(old.name(), fresh.name());
            }
        });
        List<String> notes = new ArrayList<>();
        Map<String, String> overrides = new TreeMap<>();
        pack.notes().keySet().forEach(path -> {
            String name = path.substring(path.indexOf('/') + 1, path.length() - ".md".length());
            notes.add(name);
            String other = known.put(name, folder + RulePack.NOTES + "/" + path);
            if (other != null) {
                overrides.put(name, other);
            }
        });
        List<String> obstacles = new ArrayList<>();
        pack.manifest().ifPresent(manifest -> manifest.obstacles(before).forEach(it -> obstacles.add(it.told())));
        set.packProblems().stream().filter(problem -> problem.file().startsWith(folder)
                && !problem.file().equals(folder + RulePack.MANIFEST)).map(Problem::text).forEach(obstacles::add);
        int cases = (int) pack.files().keySet().stream().filter(path -> path.startsWith(RulePack.CASES + "/")).count();
        List<String> off = set.switchedOff().entrySet().stream().filter(entry -> entry.getValue().equals(pack.title()))
                .map(entry -> entry.getKey().name()).toList();
        return new PackSummary(pack, rules, replaces, off, List.copyOf(notes), overrides, thresholds,
                pack.symptoms().stream().map(OwnSymptom::id).toList(), pack.questions().stream().map(OwnQuestion::id).toList(),
                        cases, List.copyOf(obstacles));
    }
}
