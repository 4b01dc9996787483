package camberwell.cli;

import camberwell.fact.Thresholds;
import camberwell.knowledge.Effect;
import camberwell.knowledge.Term;
import camberwell.knowledge.When;
import camberwell.language.RuleText;
import camberwell.pack.OwnSymptom;
import camberwell.pack.RulePack;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.report.Voices;
import camberwell.report.Words;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** The words for complaints that packs bring, known as long as the command that uses them runs. */
final class OwnWords implements AutoCloseable {

    /** The word in a phrase, before another word and outside of brackets. */
    private static final Pattern IS = Pattern.compile("(?<!\\S)is(?= [\\p{L}{])(?![^(\\n]*\\))");
    private static final Pattern ARE = Pattern.compile("(?<!\\S)are(?= [\\p{L}{])(?![^(\\n]*\\))");

    private final Map<String, OwnSymptom> known = new LinkedHashMap<>();
    private final Map<String, String> whose = new LinkedHashMap<>();
    private final List<Symptom.Brought> brought = new ArrayList<>();

    /**
     * Makes the words of those packs known.
     *
     * @return the packs
     * @throws ProblemsException if two packs bring one word and mean two things
     */
    synchronized List<RulePack> of(List<RulePack> packs) {
        for (RulePack pack : packs) {
            for (OwnSymptom symptom : pack.symptoms()) {
                OwnSymptom other = known.get(symptom.id());
                if (other != null && !other.equals(symptom)) {
                    throw new ProblemsException(Problem.of(pack.name() + "/" + RulePack.SYMPTOMS, "brings \"" + symptom.id()
                            + "\", which " + whose.get(symptom.id()) + " brings too and means otherwise", Optional.empty()));
                }
                if (other == null) {
                    brought.add(Symptom.bring(symptom.id(), symptom.felt(), symptom.tyre(), symptom.axle()));
                    known.put(symptom.id(), symptom);
                    whose.put(symptom.id(), pack.name());
                }
            }
        }
        return packs;
    }

    /** What changes do to the words of those packs, as the notes would tell it. */
    static Map<Change, List<Effect>> effects(List<RulePack> packs) {
        Map<Change, List<Effect>> effects = new LinkedHashMap<>();
        for (RulePack pack : packs) {
            for (OwnSymptom symptom : pack.symptoms()) {
                Symptom on = Word.of(Symptom.class, symptom.id());
                symptom.helpedBy().forEach((change, effect) -> {
                    add(change, on, effect, effects);
                    add(change.opposite(), on, -effect, effects);
                });
            }
        }
        return effects;
    }

    /** The words of a pack as phrases, each by its name and by what it feels like; empty where it brings none. */
    private static Optional<String> phrases(RulePack pack) {
        if (pack.symptoms().isEmpty()) {
            return Optional.empty();
        }
        StringBuilder text = new StringBuilder("complaints:\n");
        pack.symptoms().forEach(symptom -> text.append("  ").append(symptom.id()).append(": ")
                .append(symptom.id().replace('-', ' ')).append(", ")
                .append(symptom.felt().replaceAll("[^\\p{L}\\p{N}' ]+", " ")).append('\n'));
        return Optional.of(text.toString());
    }

    /** The words of those packs as terms, each explained by what it feels like. */
    static List<Term> terms(List<RulePack> packs) {
        return packs.stream().flatMap(pack -> pack.symptoms().stream().map(symptom -> new Term(symptom.id(),
                "symptoms of " + pack.title(), Words.sentence(symptom.felt()) + (symptom.felt().endsWith(".") ? "" : "."),
                Optional.empty(), symptom.helpedBy().keySet().stream().map(change -> change.adjuster().id()).distinct().toList(),
                List.of()))).toList();
    }

    /** From what on the words of rules hold, with what the packs state otherwise. */
    static Thresholds thresholds(List<RulePack> packs) {
        Thresholds all = Thresholds.BUILT_IN;
        for (RulePack pack : packs) {
            all = pack.thresholds(all);
        }
        return all;
    }

    /** Adds the phrases of a pack, by the files that have them. */
    static void sayings(RulePack pack, Map<String, String> texts) {
        phrases(pack).ifPresent(text -> texts.put(pack.name() + "/" + RulePack.SYMPTOMS, inThePast(text)));
        pack.sayings().ifPresent(text -> texts.put(pack.name() + "/" + RulePack.SAYINGS, inThePast(text)));
    }

    /** A driver who has climbed out says "was" of what a phrase has as "is"; what stands in a choice of its own stays. */
    private static String inThePast(String phrases) {
        return ARE.matcher(IS.matcher(phrases).replaceAll("(is|was)")).replaceAll("(are|were)");
    }

    /** What the authors of {@code packs} say, each by the rule that says it. */
    static Voices voices(List<RulePack> packs, Collection<RuleText> rules) {
        Map<String, String> words = new HashMap<>();
        Map<String, String> titles = new HashMap<>();
        rules.forEach(rule -> packs.stream().filter(pack -> rule.file().startsWith(pack.name() + "/")).findFirst()
                .ifPresent(pack -> {
                    words.put(rule.name(), rule.because() + " (from " + pack.shown() + ")");
                    titles.put(rule.name(), pack.title());
                }));
        return new Voices(words, titles);
    }

    private static void add(Change change, Symptom on, int effect, Map<Change, List<Effect>> effects) {
        effects.computeIfAbsent(change, key -> new ArrayList<>()).add(new Effect(on, Optional.empty(), Optional.empty(),
                Optional.empty(), When.ALWAYS, effect));
    }

    @Override
    public synchronized void close() {
        brought.forEach(Symptom.Brought::close);
        brought.clear();
        known.clear();
        whose.clear();
    }
}
