package camberwell.advice;

import camberwell.engine.Conclusions;
import camberwell.engine.RuleBase;
import camberwell.fact.Certainty;
import camberwell.fact.Finding;
import camberwell.fact.Preference;
import camberwell.fact.Premise;
import camberwell.fact.Proposal;
import camberwell.fact.Withholding;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.reading.CamberByWheel;
import camberwell.run.Case;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Change;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/**
 * What changes are worth in one case: what rules say for and against each, what its note says that it does to what is
 * complained of, and what holds it back.
 */
final class Worth {

    private static final Size NONE = new Size(Optional.empty(), Optional.empty(), 0, List.of(), List.of());

    private final List<Complaint> complaints;
    private final Conclusions conclusions;
    private final Surroundings surroundings;
    private final Notes notes;
    private final RuleBase rules;
    private final Weights weights;
    private final Optional<CamberByWheel> camber;
    private final Map<Change, List<Proposal>> proposals = new TreeMap<>();

    /**
     * @param conclusions of the rules
     * @param rules for their reasons
     */
    Worth(Case run, List<Complaint> complaints, Conclusions conclusions, Surroundings surroundings, Notes notes, RuleBase rules,
            Weights weights) {
        this.complaints = complaints;
        this.conclusions = conclusions;
        this.surroundings = surroundings;
        this.notes = notes;
        this.rules = rules;
        this.weights = weights;
        this.camber = CamberByWheel.of(run);
        List<Proposal> said = camber.isPresent() ? camber.get().named(conclusions.proposals()) : conclusions.proposals();
        said.forEach(this::propose);
    }

    /** One more word for or against a change. */
    void propose(Proposal proposal) {
        proposals.computeIfAbsent(proposal.change(), key -> new ArrayList<>()).add(proposal);
    }

    /** What is said of each change, in the vocabulary's order; what is added here is heard. */
    Map<Change, List<Proposal>> proposals() {
        return proposals;
    }

    /** The changes that anything is said of. */
    Set<Change> proposed() {
        return proposals.keySet();
    }

    /** What is said of a change. */
    List<Proposal> said(Change change) {
        return List.copyOf(proposals.getOrDefault(change, List.of()));
    }

    /** How sure all that is said of a change leaves one of it, -1 to 1. */
    double certainty(Change change) {
        return Certainty.ofRules(proposals.getOrDefault(change, List.of()));
    }

    /** What a change does by its note, were it certain. */
    Score score(Change change) {
        Note note = notes.get(change.adjuster().note());
        return Score.of(note, note.ways().get(change.direction()), 1, reached(change), surroundings.of(change.adjuster()),
                weights);
    }

    /** Whether a change helps something that was reported. */
    boolean helpsReported(Change change) {
        return score(change).helps().stream().anyMatch(help -> help.complaint().reported());
    }

    /** A change with its score, before it has a place or a size. */
    RankedChange candidate(Change change, double certainty) {
        Note note = notes.get(change.adjuster().note());
        Score score = Score.of(note, note.ways().get(change.direction()), certainty * (1 - held(change)), reached(change),
                surroundings.of(change.adjuster()), weights);
        Note fitting = note.fitting(surroundings.of(change.adjuster(), score.helped()));
        List<Proposal> said = said(change);
        return new RankedChange(0, change, NONE, score, said, because(said), firstBy(change), fitting,
                fitting.ways().get(change.direction()));
    }

    /**
     * A change that no rule speaks for, and a model of the car does; it is entered among what is said of changes.
     *
     * @param told what its note says of that way, as it is told here
     */
    RankedChange ofModel(Change change, Size size, String why, UnaryOperator<Note.Way> told) {
        propose(new Proposal(change, weights.leastCertainty(), LastResort.WORD, List.of()));
        RankedChange candidate = candidate(change, weights.leastCertainty());
        return new RankedChange(1, change, size, candidate.score(), candidate.proposals(), Optional.of(why), List.of(),
                candidate.note(), told.apply(candidate.way()));
    }

    /** The reason of the rule that speaks for it most. */
    private Optional<String> because(List<Proposal> said) {
        return said.stream().max(Comparator.comparingDouble(Proposal::certainty).thenComparing(Proposal::rule,
                Comparator.reverseOrder())).map(Proposal::rule).flatMap(rules::because);
    }

    /** A rule by its name, and where it stands. */
    String named(String rule) {
        return "\"" + rule + "\"" + rules.place(rule).map(place -> " (" + place + ")").orElse("");
    }

    /** The rules that put it first, by their names. */
    private List<String> firstBy(Change change) {
        List<String> names = new ArrayList<>();
        for (Preference preference : conclusions.preferences()) {
            if (named(preference.change()).equals(change) && preference.certainty() >= weights.leastCertainty()
                    && !names.contains(preference.rule())) {
                names.add(preference.rule());
            }
        }
        return names;
    }

    private List<Complaint> reached(Change change) {
        return camber.isEmpty() ? complaints
                : complaints.stream().filter(complaint -> complaint.isWithinReachOf(change.adjuster())).toList();
    }

    /** The change as this car makes it: of one wheel's camber where its wheels stand apart. */
    Change named(Change change) {
        return camber.isPresent() ? camber.get().named(change) : change;
    }

    /** What holds a change back, as far as it is sure enough to count. */
    List<Withholding> holding(Change change) {
        return conclusions.withholdings().stream()
                .filter(withholding -> withholding.certainty() >= weights.leastCertainty())
                .filter(withholding -> withholding.holds(change, axle -> loads(notes, surroundings, change, axle)))
                .toList();
    }

    /** Whether rules hold others back until this one is made: what proposes it and what holds those rest on one finding. */
    boolean waitedFor(Change change) {
        Set<Premise> found = new HashSet<>();
        said(change).stream().filter(proposal -> proposal.certainty() > 0).forEach(proposal -> proposal.premises().stream()
                .filter(Finding.class::isInstance).forEach(found::add));
        return holding(change).isEmpty() && conclusions.withholdings().stream()
                .filter(withholding -> withholding.certainty() >= weights.leastCertainty())
                .anyMatch(withholding -> withholding.premises().stream().anyMatch(found::contains));
    }

    /** How much of its certainty a change loses to what holds it back: from nothing to all, without a threshold. */
    private double held(Change change) {
        double most = holding(change).stream().mapToDouble(Withholding::certainty).max().orElse(0);
        double part = (most - weights.leastCertainty()) / (weights.heldFully() - weights.leastCertainty());
        return Math.max(0, Math.min(1, part));
    }

    /** Whether a change gives the tyres of an axle more to do: its note says that it heats them. */
    static boolean loads(Notes notes, Surroundings surroundings, Change change, Axle axle) {
        return notes.get(change.adjuster().note()).ways().get(change.direction()).effects().stream()
                .anyMatch(effect -> effect.on().is("overheating") && effect.effect() < 0
                        && effect.where().filter(where -> where != axle).isEmpty()
                        && effect.when().holds(surroundings.of(change.adjuster())));
    }

    /** Why a rule says what it says. Raw Drools in a trusted folder has no reason that could be read. */
    String reasonOf(String rule) {
        return rules.because(rule).orElseGet(() -> "the rule \"" + rule + "\" holds it back");
    }
}
