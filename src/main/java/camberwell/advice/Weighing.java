package camberwell.advice;

import camberwell.engine.Conclusions;
import camberwell.engine.RuleBase;
import camberwell.fact.Certainty;
import camberwell.fact.Proposal;
import camberwell.fact.Withholding;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.learning.Trials;
import camberwell.run.Case;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Change;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One case's ranking: what the rules propose is scored, sized, ordered or withheld with the reason. */
final class Weighing {

    /** A change on an adjuster that the car lacks is worth a word only when it would have stood this high. */
    private static final int WORTH_A_WORD = 3;
    private static final int COSTS_TOLD = 2;

    private final Case run;
    private final List<Complaint> complaints;
    private final Sizer sizer;
    private final Leverage leverage;
    private final Notes notes;
    private final Weights weights;
    private final Optional<Note> halt;
    private final Worth worth;
    private final Ranking ranking;
    private final List<Conflict> conflicts = new ArrayList<>();
    private List<RankedChange> candidates = List.of();
    private Experience experience = Experience.NONE;

    /**
     * @param halt the caution that stands before every change, if there is one
     * @param rules for their reasons
     */
    Weighing(Case run, List<Complaint> complaints, Conclusions conclusions, Surroundings surroundings, Sizer sizer,
            Leverage leverage, Notes notes, RuleBase rules, Weights weights, Optional<Note> halt) {
        this.run = run;
        this.complaints = complaints;
        this.sizer = sizer;
        this.leverage = leverage;
        this.notes = notes;
        this.weights = weights;
        this.halt = halt;
        worth = new Worth(run, complaints, conclusions, surroundings, notes, rules, weights);
        ranking = new Ranking(worth);
        if (!run.tried().isEmpty()) {
            Trials trials = new Trials(run, weights.learning());
            experience = Experience.of(complaints, worth.proposals(), worth::score, weights, trials,
                    new Doubt(trials, change -> notes.get(change.adjuster().note()).ways().get(change.direction())), run.car());
        }
    }

    void rank() {
        candidates = scored();
        int position = 0;
        for (RankedChange candidate : candidates) {
            position++;
            place(candidate, position);
        }
        List<RankedChange> asRanked = ranking.changes();
        ranking.replace(change -> StandsOut.why(run.car(), asRanked, change).map(change::explained).orElse(change));
        if (!ranking.isEmpty() && ranking.first() == asRanked.get(0)) {
            leverage.instead(ranking.changes()).ifPresent(choice -> ranking.first(choice.change(), choice.why()));
        }
        if (run.tried().isEmpty() && !ranking.isEmpty()) {
            lookAhead();
        }
        ranking.number();
        if (!run.tried().isEmpty() && halt.isEmpty()) {
            experience = new AfterRuns(run, complaints, worth, ranking, experience, candidates, sizer, leverage, notes, weights)
                    .order();
        }
        tellOpposed();
        conflicts.addAll(Conflicts.among(complaints, candidates, ranking.changes()));
    }

    /** What is proposed with enough certainty, best first. */
    private List<RankedChange> scored() {
        List<RankedChange> scored = new ArrayList<>();
        for (Change change : worth.proposed()) {
            Optional<String> objection = experience.objection(change);
            if (objection.isPresent()) {
                ranking.withhold(change, objection.get() + sizer.stop(change).map(stop -> "; " + stop).orElse(""), List.of());
                continue;
            }
            double certainty = worth.certainty(change);
            if (certainty >= weights.leastCertainty() && !losesToOpposite(change, certainty)) {
                scored.add(worth.candidate(change, certainty));
            }
        }
        experience.leftOn().forEach((change, why) -> ranking.withhold(change, why, List.of()));
        scored.sort(Comparator.comparing((RankedChange change) -> change.firstBy().isEmpty())
                .thenComparingDouble(change -> -StandsOut.worth(run.car(), change))
                .thenComparing(RankedChange::change));
        return List.copyOf(scored);
    }

    /**
     * Before anything was tried: the driven model is asked about the order of a car that a step may turn round, and where rules
     * set two changes little apart; where all is strong, only about the size of the former. It takes its time, so not else.
     */
    private void lookAhead() {
        boolean strong = Complaint.mostlyStrong(complaints);
        List<RankedChange> all = ranking.changes();
        if (leverage.onEdge(ranking.first().change(), complaints) || leverage.looseOffThrottle()) {
            LookAhead.of(run, complaints, leverage, ranking.first())
                    .flatMap(ahead -> ahead.unturned(strong ? all.subList(0, 1) : all)).ifPresent(ranking::lead);
        } else if (!strong && LookAhead.near(all)) {
            LookAhead.of(run, complaints, leverage, ranking.first()).flatMap(ahead -> ahead.worthLeading(all))
                    .ifPresent(ranking::lead);
        }
    }

    /**
     * What rules propose for a complaint, and others speak against so strongly that nothing is left of it: the reason is
     * told where the complaint would go without an answer else.
     */
    private void tellOpposed() {
        for (Map.Entry<Change, List<Proposal>> entry : worth.proposals().entrySet()) {
            Change change = entry.getKey();
            List<Proposal> against = entry.getValue().stream().filter(proposal -> proposal.certainty() < 0)
                    .filter(proposal -> !proposal.rule().equals(Learned.RULE)).toList();
            List<Proposal> speaking = entry.getValue().stream().filter(proposal -> proposal.certainty() > 0).toList();
            double alone = Certainty.ofRules(speaking);
            if (!against.isEmpty() && !ranking.advised().contains(change) && alone >= weights.leastCertainty()
                    && worth.certainty(change) < weights.leastCertainty() && worth.score(change).helped().stream()
                    .anyMatch(complaint -> complaint.reported() && !served(complaint))) {
                Proposal most = against.stream().min(Comparator.comparingDouble(Proposal::certainty)).orElseThrow();
                ranking.withhold(new Withheld(change, "more speaks against it: " + worth.reasonOf(most.rule()),
                        against.stream().map(Proposal::rule).distinct().toList(), speaking));
            }
        }
    }

    private boolean served(Complaint complaint) {
        return candidates.stream().anyMatch(candidate -> candidate.helps(complaint));
    }

    /** Best first. */
    List<RankedChange> changes() {
        return ranking.changes().stream().map(change -> WheelSizes.told(run.car(), change)).toList();
    }

    /** Every change that was scored, advised or not. */
    List<RankedChange> candidates() {
        return candidates;
    }

    /** In the vocabulary's order. */
    List<Withheld> withheld() {
        return ranking.withheld();
    }

    List<Conflict> conflicts() {
        return List.copyOf(conflicts);
    }

    List<Change> advised() {
        return ranking.advised();
    }

    /** What earlier changes taught. */
    Experience experience() {
        return experience;
    }

    /** Of two directions of one adjuster at most one is advised. */
    private boolean losesToOpposite(Change change, double certainty) {
        double opposite = worth.certainty(change.opposite());
        if (opposite < weights.leastCertainty() || certainty - opposite >= weights.clearMajority()) {
            return false;
        }
        boolean clear = opposite - certainty >= weights.clearMajority();
        boolean ofRules = worth.score(change).helped().isEmpty() || worth.score(change.opposite()).helped().isEmpty();
        ranking.withhold(change, clear
                ? "more speaks for the other way, " + change.opposite().direction().id()
                : "as much speaks for " + change.opposite().direction().id() + ": leave it, and "
                        + (ofRules ? "have the rules put right" : "look for a lever that serves one complaint alone"), List.of());
        if ((ofRules || run.car().has(change.adjuster()))
                && conflicts.stream().noneMatch(conflict -> conflict.changes().contains(change))) {
            conflicts.add(new Conflict(ofRules ? "two rules are at odds: " + strongest(change) + ", and "
                    + strongest(change.opposite()) : "what is complained of pulls the " + change.adjuster().spoken()
                    + " both ways", List.of(change, change.opposite()), ofRules));
        }
        return true;
    }

    /** The rule that is most for a change, and where it stands. */
    private String strongest(Change change) {
        Proposal most = worth.said(change).stream().max(Comparator.comparingDouble(Proposal::certainty)
                .thenComparing(Proposal::rule, Comparator.reverseOrder())).orElseThrow();
        return worth.named(most.rule()) + " is for " + change.adjuster().spoken() + " " + change.direction().spoken();
    }

    private void place(RankedChange candidate, int position) {
        Change change = candidate.change();
        List<String> holding = worth.holding(change).stream().map(Withholding::rule).distinct().toList();
        // One wheel's own pressure is part of mending what halts, and comes after looking for the leak.
        boolean halted = halt.isPresent() && (change.adjuster().wheel().isEmpty()
                || change.adjuster().adjustment() != Adjustment.PRESSURE);
        boolean stays = candidate.score().certainty() < weights.leastCertainty() || halted;
        boolean worthIt = candidate.score().worthIt() || !candidate.firstBy().isEmpty();
        boolean wanted = !stays && worthIt;
        Optional<Sized> sized = sizer.size(change, candidate.score().helped(), wanted);
        Optional<String> stop = sizer.stop(change);
        if (sized.isEmpty()) {
            if (position <= WORTH_A_WORD) {
                ranking.withhold(change, run.car().lacking(change.adjuster()), List.of());
            }
        } else if (stop.isPresent()) {
            // What cannot move waits for nothing.
            ranking.withhold(change, stop.get(), List.of());
        } else if (halted) {
            ranking.withhold(change, "not before this: " + halt.get().title().toLowerCase(Locale.ROOT), List.of());
        } else if (stays) {
            ranking.withhold(change, worth.reasonOf(holding.get(0)), holding);
        } else if (sized.get() instanceof Sized.Impossible impossible) {
            ranking.withhold(change, impossible.reason(), List.of());
        } else if (!worthIt) {
            ranking.withhold(change, notWorthIt(candidate), List.of());
        } else if (sized.get() instanceof Sized.Possible possible && !said(change)) {
            ranking.add(candidate.sized(AmountSizer.size(run, change, candidate.proposals(), possible.size())));
        }
    }

    /** Whether a better change sets the same tyres already: an axle's pressure or camber, and one wheel's of it. */
    private boolean said(Change change) {
        Adjuster adjuster = change.adjuster();
        return (adjuster.adjustment() == Adjustment.PRESSURE || adjuster.adjustment() == Adjustment.CAMBER)
                && ranking.advised().stream().map(Change::adjuster)
                .anyMatch(other -> other.adjustment() == adjuster.adjustment() && other.axle().equals(adjuster.axle())
                        && (other.wheel().isEmpty() || adjuster.wheel().isEmpty()));
    }

    private static String notWorthIt(RankedChange candidate) {
        List<Score.Cost> costs = candidate.score().costs();
        Set<String> told = new LinkedHashSet<>();
        costs.stream().limit(COSTS_TOLD).forEach(cost -> told.add(cost.told()));
        return told.isEmpty() ? "for what it brings in this case it is too much work"
                : "it would cost more than it brings here: it " + String.join("; it ", told);
    }
}
