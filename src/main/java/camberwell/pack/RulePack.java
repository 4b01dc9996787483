package camberwell.pack;

import camberwell.fact.Thresholds;
import camberwell.language.Characters;
import camberwell.language.Stage;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.problem.Text;
import camberwell.problem.Utf8;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import camberwell.yaml.Problems;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * An instructor's rules and notes, read whole into memory from a folder or from a zip file. What does not belong there
 * is refused before anything of it is used.
 *
 * @param name as the person named it
 * @param manifest what the folder says of itself; empty where it has no {@code pack.yaml}
 * @param trusted whether it may hold DRL, which can do whatever a program can
 * @param files the text of each rule file, note, case and manifest, by its path in the folder
 */
public record RulePack(String name, Optional<Manifest> manifest, boolean trusted, Map<String, String> files) {

    /** The folder of an instructor's own notes. */
    public static final String NOTES = "knowledge-notes";
    /** The file of an instructor's own phrases. */
    public static final String SAYINGS = NOTES + "/sayings.yaml";
    /** The folder of an instructor's own cases. */
    public static final String CASES = "demo-cases";
    /** The folder of an instructor's own cases for a quiz. */
    public static final String QUIZ = "quiz-cases";
    /** The file that tells a folder's name, version, author and needs. */
    public static final String MANIFEST = "pack.yaml";

    /** The file of what a folder states otherwise of from what on words hold. */
    public static final String THRESHOLDS = "thresholds.yaml";

    /** The file of a folder's own words for complaints. */
    public static final String SYMPTOMS = "symptoms.yaml";
    /** The file of a folder's own follow-up questions. */
    public static final String QUESTIONS = "questions.yaml";

    /** What somebody may well call the folder of notes. */
    private static final Set<String> OTHER_NOTES = Set.of("notes", "note", "knowledge", "knowledge-note", "knowledge_notes",
            "causes",
            "cautions", "driving", "adjustments", "readings");
    /** The files of which a folder has one at the most. */
    static final List<String> SINGLE = List.of(MANIFEST, THRESHOLDS, SYMPTOMS, QUESTIONS, SAYINGS);
    private static final List<String> STAGES = Arrays.stream(Stage.values()).map(Stage::folder).toList();
    private static final List<String> NOTE_KINDS =
            List.of("adjustments", "readings", "causes", "driving", "cautions");
    private static final Pattern KEY = Pattern.compile("(?m)^([\\p{L}\\p{N}_-]+)[ \\t]*:");
    private static final String[] PROGRAMS = {".java", ".class", ".jar", ".groovy", ".kts", ".xls", ".xlsx", ".gdst",
        ".rdrl", ".brl", ".rf", ".bpmn", ".bpmn2", ".dmn", ".pmml", ".kmodule"};

    /** Whether a file begins as a zip file does, empty or not (PKWARE's APPNOTE.TXT, sections 4.3.7 and 4.3.16). */
    public static boolean isZip(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] start = in.readNBytes(2);
            return start.length == 2 && start[0] == 'P' && start[1] == 'K';
        }
    }

    /**
     * Reads a folder or a zip file.
     *
     * @param name as the person named it, for messages
     * @throws ProblemsException with everything in it that does not belong there, or if it cannot be read
     */
    public static RulePack read(Path place, String name, boolean trusted) {
        List<Problem> problems = new ArrayList<>();
        RulePack pack = read(place, name, trusted, problems);
        if (!problems.isEmpty()) {
            throw new ProblemsException(problems.stream().sorted().toList());
        }
        return pack;
    }

    /**
     * Reads what can be read of a folder or a zip file, to be looked at and not to be used: what does not belong there, and
     * what cannot be read, is left out of it, so that one fault does not hide the others.
     *
     * @param met where everything goes that is wrong with it
     * @throws ProblemsException if there is nothing that could be read
     */
    public static RulePack read(Path place, String name, boolean trusted, List<Problem> met) {
        List<Problem> problems = new ArrayList<>();
        Map<String, byte[]> found = PackFiles.read(place, name, problems);
        Map<String, String> files = new TreeMap<>();
        found.forEach((path, bytes) -> keep(path, bytes, name, trusted, files, problems));
        Problems inFiles = new Problems();
        Optional<Manifest> manifest = Optional.ofNullable(files.get(MANIFEST))
                .flatMap(text -> Manifest.read(name + "/" + MANIFEST, text, inFiles));
        Optional.ofNullable(files.get(THRESHOLDS)).ifPresent(text ->
                ThresholdsFile.read(name + "/" + THRESHOLDS, text, Thresholds.BUILT_IN, inFiles));
        List<String> symptoms = new ArrayList<>(Word.ids(Symptom.class));
        Optional.ofNullable(files.get(SYMPTOMS)).ifPresent(text -> {
            OwnSymptom.read(name + "/" + SYMPTOMS, text, inFiles).forEach(symptom -> symptoms.add(symptom.id()));
            keys(text).stream().filter(key -> !symptoms.contains(key)).forEach(symptoms::add);
        });
        Optional.ofNullable(files.get(QUESTIONS)).ifPresent(text ->
                OwnQuestion.read(name + "/" + QUESTIONS, text, symptoms, inFiles));
        problems.addAll(inFiles.all());
        met.addAll(problems.stream().sorted().toList());
        return new RulePack(name, manifest, trusted, Map.copyOf(files)).without(problems);
    }

    /** The same without the files that have those problems; of words for complaints and of questions what can be read stays. */
    public RulePack without(List<Problem> problems) {
        Set<String> odd = new HashSet<>();
        problems.forEach(problem -> odd.add(problem.file()));
        return new RulePack(name, manifest, trusted, only(path -> !odd.contains(name + "/" + path)
                || path.equals(SYMPTOMS) || path.equals(QUESTIONS)));
    }

    /** The words that its files of complaints and of questions were meant to bring, and do not, since they cannot be read. */
    public Set<String> lost() {
        Set<String> lost = new HashSet<>(keys(files.getOrDefault(SYMPTOMS, "")));
        lost.addAll(keys(files.getOrDefault(QUESTIONS, "")));
        symptoms().forEach(symptom -> lost.remove(symptom.id()));
        questions().forEach(question -> lost.remove(question.id()));
        lost.removeAll(Word.ids(Symptom.class));
        return lost;
    }

    /** The keys of a file that may be no YAML: what a line begins with, up to a colon. */
    private static List<String> keys(String text) {
        return KEY.matcher(text).results().map(match -> match.group(1)).toList();
    }

    private static void keep(String path, byte[] bytes, String name, boolean trusted, Map<String, String> files,
            List<Problem> problems) {
        String shown = name + "/" + path;
        if (Leftovers.isLeftover(path)) {
            return;
        }
        if (path.chars().anyMatch(c -> Characters.isControl((char) c))) {
            problems.add(Problem.of(name, "a file's name has a control character in it", Optional.empty()));
            return;
        }
        Optional<String> refused = refusal(path, trusted);
        if (refused.isPresent()) {
            problems.add(Problem.error(shown, 1, 1, refused.get()));
            return;
        }
        if (!matters(path)) {
            return;
        }
        Utf8 decoded = Utf8.of(shown, bytes);
        decoded.problem().ifPresent(problems::add);
        if (decoded.problem().isEmpty()) {
            String text = decoded.text();
            files.put(path, text.startsWith("\uFEFF") ? text.substring(1) : text);
            if (path.endsWith(".md") || path.endsWith(".yaml")) {
                oddCharacter(shown, text, problems);
            }
        }
    }

    /** A note goes to the screen, so it may not steer it, neither as it stands nor by an escape in its YAML. */
    private static void oddCharacter(String shown, String text, List<Problem> problems) {
        int number = 0;
        for (String line : text.lines().toList()) {
            number++;
            for (int i = 0; i < line.length(); i++) {
                char c = line.charAt(i);
                if (c == '\\' || c != '\t' && c != '\uFEFF' && Characters.isControl(c)) {
                    problems.add(Problem.error(shown, number, i + 1, c == '\\'
                            ? "a backslash has no place in a rule folder"
                            : "a control character has no place in a rule folder"));
                    return;
                }
            }
        }
    }

    /** Whether a file is read at all: rules, notes, cases and the manifest; anything else lies there unread. */
    static boolean matters(String path) {
        String top = path.contains("/") ? path.substring(0, path.indexOf('/')) : "";
        return SINGLE.contains(path) || STAGES.contains(top) || path.endsWith(".drl")
                || top.equals(NOTES) && path.endsWith(".md")
                || (top.equals(CASES) || top.equals(QUIZ)) && path.endsWith(".yaml");
    }

    private static Optional<String> refusal(String path, boolean trusted) {
        String lower = path.toLowerCase(Locale.ROOT);
        List<String> parts = List.of(path.split("/"));
        if (lower.endsWith(".dsl")) {
            return Optional.of("a folder has no dictionary of its own: rules are written in the built-in sentences");
        }
        if (lower.endsWith(".drl")) {
            return trusted ? Optional.empty()
                    : Optional.of("raw Drools is not allowed here; only a folder named with --trust may hold it");
        }
        if (Stream.of(PROGRAMS).anyMatch(lower::endsWith)) {
            return Optional.of("a rule folder holds sentences and notes, no programs");
        }
        if (lower.endsWith(".dslr")) {
            boolean placed = parts.size() == 2 && STAGES.contains(parts.get(0)) && path.endsWith(".dslr");
            return placed ? Optional.empty() : Optional.of("rules lie right below " + String.join(", ", STAGES)
                    + ", in files that end in .dslr" + Nearest.to(parts.get(0), STAGES)
                    .filter(stage -> !stage.equals(parts.get(0)))
                    .map(stage -> "; did you mean \"" + stage + "\"?").orElse(""));
        }
        String file = parts.get(parts.size() - 1);
        Optional<String> place = SINGLE.stream().filter(one -> one.substring(one.indexOf('/') + 1).equals(file)).findFirst();
        if (place.isPresent() && !SINGLE.contains(path) && (parts.size() == 1 || parts.get(0).equals(NOTES))) {
            return Optional.of("it is read as " + place.get() + " and nowhere else");
        }
        if (parts.size() > 1 && OTHER_NOTES.contains(parts.get(0)) && lower.endsWith(".md")) {
            return Optional.of("notes lie right below " + NOTES + "/" + String.join(", " + NOTES + "/", NOTE_KINDS));
        }
        if (STAGES.contains(parts.get(0)) && parts.size() > 1) {
            int ending = lower.indexOf(".dslr.");
            return Optional.of("a folder of rules holds files that end in .dslr and nothing else" + (ending < 0 ? ""
                    : "; did you mean " + Text.quoted(path.substring(path.lastIndexOf('/') + 1, ending + ".dslr".length()))
                    + "?"));
        }
        if ((lower.equals(MANIFEST) || lower.equals("pack.yml")) && !path.equals(MANIFEST)) {
            return Optional.of("what a folder says of itself stands in " + MANIFEST + ", written so");
        }
        if ((parts.get(0).equals(CASES) || parts.get(0).equals(QUIZ))
                && (lower.endsWith(".yml") || lower.endsWith(".yaml") && !path.endsWith(".yaml"))) {
            return Optional.of("a case ends in .yaml, written so");
        }
        if (parts.get(0).equals(NOTES) && lower.endsWith(".md")
                && !(parts.size() == 3 && NOTE_KINDS.contains(parts.get(1)))) {
            return Optional.of("notes lie right below " + NOTES + "/" + String.join(", " + NOTES + "/", NOTE_KINDS));
        }
        if (parts.get(0).equals(NOTES) && lower.endsWith(".md")
                && !parts.get(2).matches("[a-z][a-z0-9-]*\\.md")) {
            return Optional.of("a note's file name is made of small letters, numbers and dashes, and ends in .md"
                    + Text.spelledPlainly(parts.get(2).substring(0, parts.get(2).length() - ".md".length())));
        }
        return Optional.empty();
    }

    /** The same pack by another name in messages. */
    RulePack named(String other) {
        return new RulePack(other, manifest, trusted, files);
    }

    /** What it is called where its rules are cited: its own name and version, or else as the person named it. */
    public String title() {
        return manifest.map(own -> own.name() + " " + own.version()).orElse(name);
    }

    /** Whose it is, in words: {@code tall-kerbs 1.0, A. Tutor}; the folder where it does not say. */
    public String shown() {
        return manifest.map(it -> it.name() + " " + it.version() + ", " + it.author()).orElse(name);
    }

    /** The rule files, by path. */
    Map<String, String> rules() {
        return only(path -> path.endsWith(".dslr"));
    }

    /** The files of raw Drools, by path; none unless the folder is trusted. */
    Map<String, String> drools() {
        return only(path -> path.endsWith(".drl"));
    }

    /** The notes, by kind folder and file name: {@code causes/hot-rims.md}. */
    public Map<String, String> notes() {
        Map<String, String> notes = new TreeMap<>();
        only(path -> path.startsWith(NOTES + "/") && !path.equals(SAYINGS))
                .forEach((path, text) -> notes.put(path.substring(NOTES.length() + 1), text));
        return notes;
    }

    /** The words for complaints that it brings. */
    public List<OwnSymptom> symptoms() {
        return files.containsKey(SYMPTOMS) ? OwnSymptom.read(name + "/" + SYMPTOMS, files.get(SYMPTOMS), new Problems())
                : List.of();
    }

    /** The follow-up questions that it wants asked. */
    public List<OwnQuestion> questions() {
        if (!files.containsKey(QUESTIONS)) {
            return List.of();
        }
        List<String> known = new ArrayList<>(Word.ids(Symptom.class));
        symptoms().forEach(symptom -> known.add(symptom.id()));
        return OwnQuestion.read(name + "/" + QUESTIONS, files.get(QUESTIONS), known, new Problems());
    }

    /** Whether it is {@code other}, in this version or another. */
    public boolean isVersionOf(RulePack other) {
        return manifest.isPresent() && manifest.map(Manifest::name).equals(other.manifest.map(Manifest::name));
    }

    /** {@code before} with what this pack states otherwise. */
    public Thresholds thresholds(Thresholds before) {
        return files.containsKey(THRESHOLDS) ? ThresholdsFile.read(name + "/" + THRESHOLDS, files.get(THRESHOLDS), before,
                new Problems()) : before;
    }

    /** What drivers say, and what is meant by it, in the form of the built-in file. */
    public Optional<String> sayings() {
        return Optional.ofNullable(files.get(SAYINGS));
    }

    /** All of it as a zip file, the same bytes for the same content. */
    public byte[] zip() throws IOException {
        return PackFiles.zipOf(files);
    }

    private Map<String, String> only(Predicate<String> wanted) {
        Map<String, String> only = new TreeMap<>();
        files.forEach((path, text) -> {
            if (wanted.test(path)) {
                only.put(path, text);
            }
        });
        return only;
    }
}
