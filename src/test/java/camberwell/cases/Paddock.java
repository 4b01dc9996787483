package camberwell.cases;

import camberwell.advice.Advice;
import camberwell.advice.Advisor;
import camberwell.advice.Facts;
import camberwell.advice.Weights;
import camberwell.engine.Conclusions;
import camberwell.engine.Consultation;
import camberwell.engine.RuleBase;
import camberwell.fact.Conclusion;
import camberwell.fact.Premise;
import camberwell.input.CaseReader;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.language.Names;
import camberwell.reading.TyreReader;
import camberwell.run.Case;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The invented paddock of the demo cases, with camberwell's own rules, opened once for all tests. */
public final class Paddock {

    /** The folder of the cases. */
    public static final Path CASES = Path.of("demo-cases");

    private static final Paddock OPEN = open();

    private final Notes notes;
    private final Weights weights;
    private final RuleBase rules;
    private final Map<String, Case> cases;

    private Paddock(Notes notes, Weights weights, RuleBase rules, Map<String, Case> cases) {
        this.notes = notes;
        this.weights = weights;
        this.rules = rules;
        this.cases = cases;
    }

    private static Names names(Notes notes) {
        Set<String> findings = new TreeSet<>(notes.names(Note.Kind.READING));
        findings.addAll(notes.names(Note.Kind.CAUSE));
        return new Names(Set.copyOf(notes.names(Note.Kind.ADJUSTMENT)), findings,
                Set.copyOf(notes.names(Note.Kind.DRIVING)), Set.copyOf(notes.names(Note.Kind.CAUTION)));
    }

    /** The names of the built-in notes. */
    public static Names names() {
        return names(OPEN.notes);
    }

    private static Paddock open() {
        Path home = Path.of(System.getProperty("camberwell.home", ""));
        try {
            Notes notes = Notes.in(List.of(home.resolve("knowledge-notes")));
            RuleBase rules = RuleBase.open(home, names(notes), RuleBase.defaultCache());
            return new Paddock(notes, Weights.read(home.resolve("rules/weights.yaml")), rules, read());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<String, Case> read() throws IOException {
        Map<String, Case> cases = new TreeMap<>();
        try (Stream<Path> files = Files.list(CASES)) {
            files.filter(file -> file.toString().endsWith(".yaml")).forEach(file ->
                    cases.put(file.getFileName().toString().replace(".yaml", ""), new CaseReader().read(file).run()));
        }
        return cases;
    }

    /** Every demo case by the name of its file. */
    public static Map<String, Case> cases() {
        return OPEN.cases;
    }

    /** The case of that name. */
    public static Case run(String name) {
        return OPEN.cases.get(name);
    }

    /** Camberwell's own rules. */
    public static RuleBase rules() {
        return OPEN.rules;
    }

    /** Camberwell's own notes. */
    public static Notes notes() {
        return OPEN.notes;
    }

    /** The weights as they are shipped. */
    public static Weights weights() {
        return OPEN.weights;
    }

    /** The advice on a case. */
    public static Advice advise(Case run) {
        return new Advisor(OPEN.rules, OPEN.notes, OPEN.weights).advise(run);
    }

    /** What the rules are told of a case. */
    public static List<Premise> premises(Case run) {
        return Facts.of(run, TyreReader.read(run), OPEN.weights);
    }

    /** What the rules conclude from {@code premises}. */
    public static Conclusions conclude(List<Premise> premises) {
        try (Consultation consultation = OPEN.rules.consult()) {
            premises.forEach(consultation::insert);
            return consultation.conclude();
        }
    }

    /** Every conclusion, the evidence for and against findings among them. */
    public static List<Conclusion> all(Conclusions conclusions) {
        List<Conclusion> all = new ArrayList<>();
        conclusions.findings().forEach(finding -> all.addAll(finding.evidence()));
        all.addAll(conclusions.proposals());
        all.addAll(conclusions.withholdings());
        all.addAll(conclusions.preferences());
        all.addAll(conclusions.driving());
        all.addAll(conclusions.cautions());
        return all;
    }
}
