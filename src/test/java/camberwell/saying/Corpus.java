package camberwell.saying;

import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.yaml.snakeyaml.Yaml;

/** Sayings with their meaning, and how well they are understood. */
final class Corpus {

    /**
     * One saying.
     *
     * @param reports the words of each complaint, sorted
     * @param surface empty where nothing is said of it
     */
    record Entry(String saying, Set<Set<String>> reports, String surface, boolean fine) {
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
        file.get("complaints").forEach((meaning, phrases) -> {
            for (String phrase : phrases.split(",")) {
                List<String> choices = new ArrayList<>();
                Sayings.expand(phrase.replaceAll("[$^]", "").strip(), choices);
                choices.forEach(choice -> complaints.put(choice, Word.of(Symptom.class, meaning.split(" ")[0])));
            }
        });
        return complaints;
    }

    static List<Entry> read(String name) {
        List<Entry> entries = new ArrayList<>();
        for (String line : text(Path.of("src/test/resources/sayings", name)).lines().toList()) {
            if (line.startsWith("#") || line.isBlank()) {
                continue;
            }
            String[] halves = line.split(" \\| ");
            Set<Set<String>> reports = new HashSet<>();
            String surface = "";
            for (String part : halves[1].strip().split("\\s*;\\s*")) {
                if (part.startsWith("surface: ")) {
                    surface = part.substring("surface: ".length());
                } else if (!part.equals("nothing") && !part.equals("refused")) {
                    reports.add(new TreeSet<>(List.of(part.split(" "))));
                }
            }
            entries.add(new Entry(halves[0], reports, surface, halves[1].strip().equals("nothing")));
        }
        return entries;
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
        Set<Set<String>> reports = reports(heard);
        String surface = heard.surface().map(Word::id).orElse("");
        if (reports.equals(entry.reports()) && surface.equals(entry.surface()) && heard.fine() == entry.fine()) {
            return reports.isEmpty() && !heard.fine() && heard.refused().isEmpty() ? Verdict.SWALLOWED
                    : Verdict.UNDERSTOOD;
        }
        boolean more = !surface.isEmpty() && !surface.equals(entry.surface()) || heard.fine() && !entry.fine()
                || reports.stream().anyMatch(report -> entry.reports().stream().noneMatch(it -> it.containsAll(report)));
        if (more) {
            return Verdict.MISREAD;
        }
        if (heard.refused().isEmpty()) {
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
                failures.add(verdict + ": " + entry.saying() + "\n    meant " + entry.reports() + " " + entry.surface()
                        + (entry.fine() ? "nothing" : "") + "\n    heard " + reports(heard) + " " + heard.surface()
                        + (heard.fine() ? " fine" : "") + " not " + heard.refused() + " loose " + heard.loose());
            }
        }
        return counts;
    }
}
