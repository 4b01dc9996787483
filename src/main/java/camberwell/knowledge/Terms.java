package camberwell.knowledge;

import camberwell.problem.ProblemsException;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import camberwell.yaml.Document;
import camberwell.yaml.Fields;
import camberwell.yaml.Problems;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The trade's vocabulary in plain words, from {@code knowledge-notes/terms.yaml}. */
public final class Terms {

    private final Map<String, Term> terms;

    private Terms(Map<String, Term> terms) {
        this.terms = Collections.unmodifiableMap(terms);
    }

    /**
     * Reads the file: groups of words, each a line or a map with {@code meaning}, {@code felt}, {@code see} and
     * {@code drawing}, which names one of the group {@code drawings}.
     *
     * @throws ProblemsException with everything that is wrong with it
     */
    public static Terms read(Path file) {
        Problems problems = new Problems();
        Map<String, Term> terms = new LinkedHashMap<>();
        Document.load(file, problems).ifPresent(document -> groups(document.fields("group"), terms));
        problems.warningsOrFail();
        return new Terms(terms);
    }

    /** These and others, which do not take the place of a word that is here. */
    public Terms with(List<Term> more) {
        Map<String, Term> all = new LinkedHashMap<>(terms);
        more.forEach(term -> all.putIfAbsent(term.name(), term));
        return new Terms(all);
    }

    private static void groups(Fields root, Map<String, Term> terms) {
        Map<String, List<String>> drawings = new HashMap<>();
        root.map("drawings", "drawing").ifPresent(fields -> fields.keys().forEach(name ->
                fields.drawing(name).ifPresent(lines -> drawings.put(name, lines))));
        for (String group : root.keys()) {
            if (!group.equals("drawings")) {
                root.map(group, "word").ifPresent(words -> words.keys().forEach(word ->
                        term(word, group, words, drawings).ifPresent(term -> enter(term, words, terms))));
            }
        }
    }

    private static void enter(Term term, Fields words, Map<String, Term> terms) {
        Term first = terms.putIfAbsent(term.name(), term);
        if (first != null) {
            words.errorAtKey(term.name(), "\"" + term.name() + "\" is explained a second time; the first is among \""
                    + first.group() + "\"");
        }
    }

    private static Optional<Term> term(String name, String group, Fields words, Map<String, List<String>> drawings) {
        if (!words.holdsMap(name)) {
            return words.prose(name).map(meaning -> new Term(name, group, meaning, Optional.empty(), List.of(),
                    List.of()));
        }
        return words.map(name, "key").flatMap(fields -> {
            fields.require("meaning");
            Optional<String> meaning = fields.prose("meaning");
            Optional<String> felt = fields.prose("felt");
            List<String> see = fields.texts("see");
            Optional<String> drawing = fields.choice("drawing", drawings.keySet().stream().sorted().toList());
            fields.done();
            return meaning.map(it -> new Term(name, group, it, felt, see,
                    drawing.map(drawings::get).orElse(List.of())));
        });
    }

    /** Every word, in the file's order. */
    public List<Term> all() {
        return List.copyOf(terms.values());
    }

    /** The word of that name, written with hyphens or spaces. */
    public Optional<Term> find(String name) {
        return Optional.ofNullable(terms.get(name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", "-")));
    }

    /** The word that was most likely meant. */
    public Optional<String> nearest(String name) {
        return Nearest.to(name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", "-"), terms.keySet());
    }

    /** A complaint that a pack brought is told in its author's words. */
    private static String said(Word word) {
        if (!(word instanceof Symptom)) {
            return word.spoken();
        }
        String felt = word.felt().strip();
        return Character.toUpperCase(felt.charAt(0)) + felt.substring(1) + (felt.endsWith(".") ? "" : ".");
    }

    /** How a newcomer is told of a word of the vocabulary. */
    public String felt(Word word) {
        return find(word.id()).flatMap(Term::felt).orElseGet(() -> said(word));
    }
}
