package camberwell.saying;

import camberwell.vocabulary.CornerKind;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.yaml.snakeyaml.Yaml;

/** Sayings with their meaning, and how well they are understood. */
final class Corpus {

    private static final String FAULT = "mechanical-fault";

    /**
     * One saying.
     *
     * @param meanings what it may mean: each is as right as the others
     */
    record Entry(String saying, List<Meant> meanings) {

        /** Every complaint of every meaning. */
        List<Set<String>> complaints() {
            return meanings.stream().flatMap(it -> it.complaints().stream()).map(Complaint::said).toList();
        }
    }

    /**
     * What a saying means.
     *
     * @param surface empty where nothing is said of it
     * @param fine whether nothing is wrong
     */
    record Meant(List<Complaint> complaints, String surface, boolean fine) {
    }

    /**
     * One complaint.
     *
     * @param said the words that have to be understood
     * @param mayBe those that may be, as people differ on them
     */
    record Complaint(Set<String> said, Set<String> mayBe) {

        boolean is(Set<String> heard) {
            return heard.containsAll(said) && allows(heard);
        }

        boolean allows(Set<String> heard) {
            return heard.stream().allMatch(word -> said.contains(word) || mayBe.contains(word));
        }
    }

    /** How a saying was taken. */
    enum Verdict {
        /** All that was meant and nothing else, or refused aloud where nothing can be meant. */
        UNDERSTOOD,
        /** Less than was meant, and something named. */
        PARTLY,
        /** Nothing, and something named. */
        REFUSED,
        /** Less than was meant, without a word. */
        SWALLOWED,
        /** Something that was not meant. */
        MISREAD
    }

    private Corpus() {
    }

    static Map<String, String> texts() {
        Path file = Path.of("knowledge-notes", Sayings.FILE);
        return new LinkedHashMap<>(Map.of(file.toString(), text(file)));
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Listener listener() {
        return new Listener(Sayings.read(texts()));
    }

    /** The phrases of the file that are said whole, without those that are bound to an end of a clause. */
    static Map<String, Symptom> complaints() {
        Map<String, Symptom> complaints = new LinkedHashMap<>();
        Map<String, Map<String, String>> file = new Yaml().load(texts().values().iterator().next());
        Map<String, String> classes = file.get("words");
        file.get("complaints").forEach((meaning, phrases) -> {
            for (String phrase : phrases.split(",")) {
                List<String> choices = new ArrayList<>();
                inClasses(phrase.replaceAll("[$^]", "").replace('#', '3').strip(), classes).forEach(it -> expand(it, choices));
                choices.forEach(choice -> complaints.put(choice, Word.of(Symptom.class, meaning.split(" ")[0])));
            }
        });
        return complaints;
    }

    /** The phrase with every word of each class in turn, beside the first word of the other classes. */
    private static Set<String> inClasses(String phrase, Map<String, String> classes) {
        Set<String> all = new TreeSet<>();
        int most = classes.values().stream().mapToInt(words -> words.split(",").length).max().orElse(1);
        for (int turn = 0; turn < most; turn++) {
            String said = phrase;
            for (String name : classes.keySet()) {
                String[] words = classes.get(name).split(",");
                said = said.replace("{" + name + "}", words[turn % words.length].strip());
            }
            all.add(said);
        }
        return all;
    }

    /** Every phrase that "(no|little) front (grip|bite)" stands for. */
    private static void expand(String phrase, List<String> into) {
        int open = phrase.indexOf('(');
        int close = phrase.indexOf(')', open);
        if (open < 0 || close < 0) {
            into.add(phrase.strip());
            return;
        }
        for (String choice : phrase.substring(open + 1, close).split("\\|", -1)) {
            expand(phrase.substring(0, open) + choice + phrase.substring(close + 1), into);
        }
    }

    /**
     * A set that was kept aside, or one that the ear has heard. Sets that were written before a saying could name a kind of
     * corner allow any; a set that counts them says so above.
     */
    static List<Entry> read(String name) {
        List<Entry> entries = new ArrayList<>();
        Path aside = Path.of("src/test/resources/sayings", name);
        String text = text(Files.exists(aside) ? aside : Path.of("src/main/sayings", name));
        boolean corners = text.contains("# Kinds of corners count.");
        for (String line : text.lines().toList()) {
            if (line.startsWith("#") || line.isBlank()) {
                continue;
            }
            entries.add(entry(line, corners));
        }
        return entries;
    }

    /** The saying of a line; {@code corners}: whether kinds of corners count. */
    static Entry entry(String line, boolean corners) {
        String[] halves = line.split(" \\| ");
        return new Entry(halves[0], Arrays.stream(halves[1].split(" \\|\\| ")).map(it -> meant(it, corners)).toList());
    }

    private static Meant meant(String text, boolean corners) {
        List<Complaint> complaints = new ArrayList<>();
        String surface = "";
        for (String part : text.strip().split("\\s*;\\s*")) {
            if (part.startsWith("surface: ")) {
                surface = part.substring("surface: ".length());
            } else if (!part.equals("nothing") && !part.equals("refused")) {
                Set<String> said = new TreeSet<>();
                Set<String> mayBe = new TreeSet<>(corners ? List.of() : Word.ids(CornerKind.class));
                for (String word : part.split(" ")) {
                    if (word.endsWith("?")) {
                        mayBe.add(word.substring(0, word.length() - 1));
                    } else {
                        said.add(word);
                    }
                }
                if (said.contains("hairpin") || mayBe.contains("hairpin")) {
                    // By the vocabulary a hairpin is taken in the lowest gear.
                    mayBe.add("slow");
                }
                Word.find(Symptom.class, part.split("[ ?]")[0]).ifPresent(symptom -> {
                    Word.all(Phase.class).stream().filter(phase -> Unsaid.phase(symptom, phase))
                            .forEach(phase -> mayBe.add(phase.id()));
                    // By the vocabulary a turn-in is at entry, and kerbs are kerbs.
                    Unsaid.only(symptom).ifPresent(phase -> said.remove(phase.id()));
                });
                complaints.add(new Complaint(said, mayBe));
            }
        }
        return new Meant(complaints, surface, text.strip().equals("nothing"));
    }

    static Set<Set<String>> reports(Heard heard) {
        Set<Set<String>> reports = new HashSet<>();
        for (Told told : heard.told()) {
            Set<String> words = new TreeSet<>(List.of(told.symptom().id()));
            told.words().forEach(word -> words.add(word.id()));
            reports.add(words);
        }
        return reports;
    }

    static Verdict verdict(Entry entry, Heard heard) {
        return entry.meanings().stream().map(meant -> verdict(meant, heard)).min(Comparator.naturalOrder()).orElseThrow();
    }

    private static Verdict verdict(Meant meant, Heard heard) {
        Set<Set<String>> reports = reports(heard);
        // Sets that are older than that word have it as no complaint; it is told, and so neither swallowed nor misread.
        boolean fault = meant.complaints().stream().noneMatch(it -> it.said().contains(FAULT))
                && reports.removeIf(report -> report.contains(FAULT));
        String surface = heard.surface().map(Word::id).orElse("");
        boolean all = meant.complaints().stream().allMatch(it -> reports.stream().anyMatch(it::is));
        boolean more = reports.stream().anyMatch(report -> meant.complaints().stream().noneMatch(it -> it.allows(report)));
        if (all && !more && surface.equals(meant.surface()) && heard.fine() == meant.fine()) {
            return reports.isEmpty() && !fault && !heard.fine() && heard.refused().isEmpty() ? Verdict.SWALLOWED
                    : Verdict.UNDERSTOOD;
        }
        if (more || !surface.isEmpty() && !surface.equals(meant.surface()) || heard.fine() && !meant.fine()) {
            return Verdict.MISREAD;
        }
        if (heard.refused().isEmpty() && !fault) {
            return Verdict.SWALLOWED;
        }
        return reports.isEmpty() ? Verdict.REFUSED : Verdict.PARTLY;
    }

    static Map<Verdict, Integer> counts(List<Entry> entries, Listener listener, List<String> failures) {
        Map<Verdict, Integer> counts = new LinkedHashMap<>();
        for (Verdict verdict : Verdict.values()) {
            counts.put(verdict, 0);
        }
        for (Entry entry : entries) {
            Heard heard = listener.hear(entry.saying());
            Verdict verdict = verdict(entry, heard);
            counts.merge(verdict, 1, Integer::sum);
            if (verdict != Verdict.UNDERSTOOD) {
                failures.add(verdict + ": " + entry.saying() + "\n    meant " + entry.meanings() + "\n    heard "
                        + reports(heard) + " " + heard.surface()
                        + (heard.fine() ? " fine" : "") + " not " + heard.refused() + " loose " + heard.loose());
            }
        }
        return counts;
    }
}
