package camberwell.advice;

import camberwell.engine.Conclusions;
import camberwell.engine.RuleBase;
import camberwell.fact.Certainty;
import camberwell.fact.Preference;
import camberwell.fact.Proposal;
import camberwell.fact.Withholding;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.learning.Trials;
import camberwell.reading.CamberByWheel;
import camberwell.run.Case;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Surface;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;

/** One case's ranking: what the rules propose is scored, sized, ordered or withheld with the reason. */
final class Weighing {

    /** A change on an adjuster that the car lacks is worth a word only when it would have stood this high. */
    private static final int WORTH_A_WORD = 3;
    private static final int COSTS_TOLD = 2;
    private static final Size NONE = new Size(Optional.empty(), Optional.empty(), 0, List.of(), List.of());

    private final Case run;
    private final List<Complaint> complaints;
    private final Conclusions conclusions;
    private final Surroundings surroundings;
    private final Sizer sizer;
    private final Leverage leverage;
    private final Notes notes;
    private final RuleBase rules;
    private final Weights weights;
    private final Optional<Note> halt;
    private final Optional<CamberByWheel> camber;
    private final Map<Change, List<Proposal>> proposals = new TreeMap<>();
    private final Map<Change, Withheld> withheld = new LinkedHashMap<>();
    private final List<RankedChange> ranked = new ArrayList<>();
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
        this.conclusions = conclusions;
        this.surroundings = surroundings;
        this.sizer = sizer;
        this.leverage = leverage;
        this.notes = notes;
        this.rules = rules;
        this.weights = weights;
        this.halt = halt;
        this.camber = CamberByWheel.of(run);
        List<Proposal> said = camber.isPresent() ? camber.get().named(conclusions.proposals()) : conclusions.proposals();
        said.forEach(proposal ->
                proposals.computeIfAbsent(proposal.change(), key -> new ArrayList<>()).add(proposal));
        if (!run.tried().isEmpty()) {
            Trials trials = new Trials(run, weights.learning());
            experience = Experience.of(complaints, proposals, this::worth, weights, trials,
                    new Doubt(trials, change -> notes.get(change.adjuster().note()).ways().get(change.direction())), run.car());
        }
    }

    void rank() {
        List<RankedChange> scored = new ArrayList<>();
        for (Change change : proposals.keySet()) {
            if (experience.objection(change).isPresent()) {
                withhold(change, experience.objection(change).get(), List.of());
                continue;
            }
            double certainty = certainty(change);
            if (certainty >= weights.leastCertainty() && !losesToOpposite(change, certainty)) {
                scored.add(candidate(change, certainty));
            }
        }
        scored.sort(Comparator.comparing((RankedChange change) -> change.firstBy().isEmpty())
                .thenComparingDouble(change -> -StandsOut.worth(run.car(), change))
                .thenComparing(RankedChange::change));
        candidates = List.copyOf(scored);
        int position = 0;
        for (RankedChange candidate : candidates) {
            position++;
            place(candidate, position);
        }
        List<RankedChange> asRanked = List.copyOf(ranked);
        ranked.replaceAll(change -> StandsOut.why(run.car(), asRanked, change).map(change::explained).orElse(change));
        if (!ranked.isEmpty() && ranked.get(0) == asRanked.get(0)) {
            leverage.instead(ranked).ifPresent(choice -> {
                first(choice.change(), choice.why());
                renumber();
            });
        }
        if (run.tried().isEmpty() && !ranked.isEmpty() && leverage.onEdge(ranked.get(0).change(), complaints)) {
            lookAhead(Optional.empty());
            renumber();
        }
        if (!run.tried().isEmpty() && halt.isEmpty()) {
            LastChange last = new LastChange(run, complaints, new Trials(run, weights.learning()), this::worth,
                    leverage);
            if (last.barInVain()) {
                otherMechanism(last);
            } else if (last.unfelt()) {
                leverage.strongest(ranked).ifPresent(choice -> first(choice.change(), choice.why()));
            }
            keepBetween(last);
            undoFirst();
            goOn(last);
            noCoarse(last);
            leaveBalance(last);
            if (ranked.isEmpty() || !putsBack()) {
                lookAhead(Optional.of(last));
            }
            if (ranked.isEmpty() && run.conditions().surface() == Surface.DRY) {
                lastResort(last, LastResort.Asked.NOTHING_LEFT).ifPresent(ranked::add);
            }
            if (ranked.isEmpty()) {
                onceMore(last.balanced());
                ranked.sort(Comparator.comparingDouble(change -> -change.score().total()));
            }
            renumber();
        }
        tellOpposed();
        addConflicts();
    }

    /**
     * What rules propose for a complaint, and others speak against so strongly that nothing is left of it: the reason is
     * told where the complaint would go without an answer else.
     */
    private void tellOpposed() {
        for (Map.Entry<Change, List<Proposal>> entry : proposals.entrySet()) {
            Change change = entry.getKey();
            List<Proposal> against = entry.getValue().stream().filter(proposal -> proposal.certainty() < 0)
                    .filter(proposal -> !proposal.rule().equals(Learned.RULE)).toList();
            List<Proposal> speaking = entry.getValue().stream().filter(proposal -> proposal.certainty() > 0).toList();
            double alone = Certainty.ofRules(speaking);
            if (!against.isEmpty() && alone >= weights.leastCertainty() && certainty(change) < weights.leastCertainty()
                    && worth(change).helps().stream().map(Score.Help::complaint)
                    .anyMatch(complaint -> complaint.reported() && !served(complaint))) {
                Proposal most = against.stream().min(Comparator.comparingDouble(Proposal::certainty)).orElseThrow();
                withheld.putIfAbsent(change, new Withheld(change, "more speaks against it: " + reasonOf(most.rule()),
                        against.stream().map(Proposal::rule).distinct().toList(), speaking));
            }
        }
    }

    private boolean served(Complaint complaint) {
        return candidates.stream().anyMatch(candidate -> helps(candidate, complaint));
    }

    /** Best first. */
    List<RankedChange> changes() {
        ranked.replaceAll(change -> WheelSizes.told(run.car(), change));
        return List.copyOf(ranked);
    }

    /** Every change that was scored, advised or not. */
    List<RankedChange> candidates() {
        return candidates;
    }

    /** In the vocabulary's order. */
    List<Withheld> withheld() {
        return withheld.values().stream().sorted(Comparator.comparing(Withheld::change)).toList();
    }

    List<Conflict> conflicts() {
        return List.copyOf(conflicts);
    }

    List<Change> advised() {
        return ranked.stream().map(RankedChange::change).toList();
    }

    /** What earlier changes taught. */
    Experience experience() {
        return experience;
    }

    /** What made things worse is put back before anything else is tried. */
    private void undoFirst() {
        Undo undo = new Undo(run, complaints, notes, weights);
        List<RankedChange> all = new ArrayList<>(undo.all());
        experience = experience.with(all.stream().map(undo::learned).toList());
        all.forEach(back -> withheld.remove(back.change()));
        ranked.stream().filter(other -> all.stream().noneMatch(back ->
                back.change().adjuster() == other.change().adjuster())).toList().forEach(all::add);
        ranked.clear();
        for (int i = 0; i < all.size(); i++) {
            ranked.add(all.get(i).at(i + 1));
        }
    }

    private boolean putsBack() {
        return !ranked.isEmpty() && experience.of(ranked.get(0).change()).filter(Learned::undo).isPresent();
    }

    /** After what is to be put back: what helped goes on, what went too far goes half way back, or to finer levers. */
    private void goOn(LastChange last) {
        if (putsBack()) {
            return;
        }
        if (last.call() == LastChange.Call.GO_ON) {
            first(last.change(), "it helped in the last run and something of what it helps is left: on with it");
        } else if (last.call() == LastChange.Call.BACK) {
            last.sizeBack().ifPresent(size -> {
                RankedChange back = new Undo(run, complaints, notes, weights).halfBack(last, size);
                ranked.removeIf(other -> other.change().adjuster() == back.change().adjuster());
                withheld.remove(back.change());
                ranked.add(0, back);
                experience = experience.with(List.of(Undo.learned(back, last)));
            });
        } else if (last.call() == LastChange.Call.FINER && !ranked.isEmpty() && !last.fine(ranked.get(0).change())) {
            finer(last);
        }
        renumber();
    }

    private void renumber() {
        for (int i = 0; i < ranked.size(); i++) {
            ranked.set(i, ranked.get(i).at(i + 1));
        }
    }

    /** What is left to finer levers: also those that cost more than they bring, since the others cost more still. */
    private void finer(LastChange last) {
        String why = "a whole step of a stronger lever went too far before: a finer one now";
        Optional<Change> fine = advised().stream().filter(last::fine).filter(this::helpsReported).findFirst();
        fine.ifPresent(change -> first(change, why));
        for (RankedChange candidate : fine.isPresent() ? List.<RankedChange>of() : candidates) {
            if (last.fine(candidate.change()) && helpsReported(candidate.change()) && !candidate.score().worthIt()) {
                take(candidate.change(), certainty(candidate.change()), why);
                first(candidate.change(), "it acts little, and little is left to do");
                break;
            }
        }
    }

    /**
     * What turned the car round in one step, and what moves it as much, is not tried again. Where something is strong, and the
     * model does not know how much they move it, coarse levers stay open.
     */
    private void noCoarse(LastChange last) {
        if (last.overshot().isEmpty()) {
            return;
        }
        for (Change coarse : advised()) {
            boolean back = experience.of(coarse).filter(Learned::undo).isPresent();
            if (!back && (last.strong() ? last.asCoarse(coarse) : Leverage.ofRollStiffness(coarse) && !last.fine(coarse))) {
                ranked.removeIf(other -> other.change().equals(coarse));
                withhold(coarse, "a whole step of such a lever turned the car round before: live with what is left, or look "
                        + "for a finer step", List.of());
            }
        }
    }

    /**
     * A bar or spring did nothing: others of them share out the same load transfer, so what works otherwise comes first, but
     * for one that by the model does much more.
     */
    private void otherMechanism(LastChange last) {
        for (RankedChange change : List.copyOf(ranked)) {
            if (!Leverage.ofRollStiffness(change.change()) && helpsReported(change.change())) {
                boolean stronger = ranked.stream().map(RankedChange::change).filter(Leverage::ofRollStiffness)
                        .anyMatch(other -> leverage.muchStronger(other, last.change()));
                if (!stronger) {
                    first(change.change(), "a bar or spring did nothing for this, and the others do the same work: something "
                            + "that works otherwise");
                }
                return;
            }
        }
    }

    /** Where a bar or spring has put the balance right, another one that is for something else would only upset it. */
    private void leaveBalance(LastChange last) {
        if (!last.balanced()) {
            return;
        }
        for (Change change : advised()) {
            if (Leverage.ofRollStiffness(change) && experience.of(change).filter(Learned::undo).isEmpty()) {
                ranked.removeIf(other -> other.change().equals(change));
                withhold(change, "bars and springs have put the balance right, and this is for something else: look for what "
                        + "leaves the balance alone", List.of());
            }
        }
    }

    private boolean helpsReported(Change change) {
        return worth(change).helps().stream().anyMatch(help -> help.complaint().reported());
    }

    /** What did nothing that was felt, once: when nothing else is left, one more step of it may be felt. */
    private void onceMore(boolean balanced) {
        Change justTried = run.tried().get(run.tried().size() - 1).change();
        List<Change> again = withheld.keySet().stream().filter(experience::onceMore)
                .filter(change -> !balanced || !Leverage.ofRollStiffness(change))
                .filter(change -> candidate(change, before(change)).score().worthIt()).toList();
        for (Change change : again) {
            if (!change.equals(justTried) || again.size() == 1) {
                take(change, before(change), "it did nothing that was felt the first time, and nothing else is left: once more");
            }
        }
    }

    /**
     * Puts the next change to the driven model of this car, on a dry road. What the car itself has said outranks the model: what
     * is put back as it was is not asked about, nor what a rule puts first, and what helped goes on unless it would harm. Before
     * anything was tried, it is only asked about the order, and where all is strong only about the size; after that not at all
     * where all is strong one way, as how far off such a car is nobody has said.
     *
     * @param last what came of the last change; empty where nothing was tried
     */
    private void lookAhead(Optional<LastChange> last) {
        Optional<LookAhead> asked = ranked.isEmpty() || !ranked.get(0).firstBy().isEmpty()
                || run.conditions().surface() != Surface.DRY ? Optional.empty()
                : leverage.forecast(run, complaints).filter(Forecast::shows).map(forecast -> new LookAhead(run, forecast));
        if (asked.isEmpty()) {
            return;
        }
        LookAhead ahead = asked.get();
        if (last.isEmpty()) {
            before(ahead.unturned(Complaint.mostlyStrong(complaints) ? ranked.subList(0, 1) : ranked));
            return;
        }
        if (Complaint.farOff(complaints)) {
            before(putsBack() ? Optional.empty() : TwiceAsFar.of(run, last.get(), ranked.get(0)));
            return;
        }
        boolean goesOn = last.get().call() == LastChange.Call.GO_ON && ranked.get(0).change().equals(last.get().change());
        if (!goesOn || ahead.harms(ranked.get(0))) {
            before(ahead.worthARun(ranked));
        }
        if (!goesOn && !ahead.isWorthARun(ranked.get(0))) {
            before(lastResort(last.get(), LastResort.Asked.NOTHING_HELPS));
        }
        while (!ranked.isEmpty() && leverage.beyondNeutral() && ahead.harms(ranked.get(0))) {
            withhold(ranked.remove(0).change(), "the car is beyond neutral: by the model of it, driven, this would turn it round",
                    List.of());
        }
    }

    private void before(Optional<RankedChange> instead) {
        instead.ifPresent(found -> {
            ranked.removeIf(other -> other.change().equals(found.change()));
            ranked.add(0, found);
        });
    }

    /** What the model of this car does most with, where nothing that rules propose does enough. */
    private Optional<RankedChange> lastResort(LastChange last, LastResort.Asked asked) {
        Predicate<Change> open = change -> !advised().contains(named(change)) && last.open(named(change))
                && holding(change).isEmpty() && last.room(change) > 0 && certainty(named(change)) >= 0
                && worth(change).harmToComplaints() == 0;
        Optional<Forecast> forecast = leverage.forecast(run, complaints).filter(Forecast::shows);
        return leverage.toDrive().map(car -> new LastResort(car, forecast, complaints, this::lastSize, open))
                .flatMap(model -> last.helped().flatMap(model::again).or(() -> model.choice(asked))).map(choice -> {
            Change change = named(choice.change());
            proposals.computeIfAbsent(change, key -> new ArrayList<>())
                    .add(new Proposal(change, weights.leastCertainty(), LastResort.WORD, List.of()));
            withheld.remove(change);
            RankedChange candidate = candidate(change, weights.leastCertainty());
            return new RankedChange(1, change, choice.size(), candidate.score(), candidate.proposals(),
                    Optional.of(asked.why(choice)), List.of(), candidate.note(),
                    asked.told(choice, candidate.way(), complaints));
        });
    }

    private Optional<Size> lastSize(Change change) {
        return sizer.size(change, List.of(), true).filter(Sized.Possible.class::isInstance)
                .map(sized -> ((Sized.Possible) sized).size());
    }

    /** What the rules alone think of a change that was tried. */
    private double before(Change change) {
        return experience.of(change).map(Learned::before).orElseGet(() -> certainty(change));
    }

    /** Takes in what was withheld, if it can be made. */
    private void take(Change change, double certainty, String why) {
        RankedChange candidate = candidate(change, certainty);
        Optional<Sized> sized = sizer.size(change, candidate.score().helps().stream().map(Score.Help::complaint)
                .toList(), true);
        if (sized.isPresent() && sized.get() instanceof Sized.Possible possible
                && candidate.score().certainty() >= weights.leastCertainty()) {
            withheld.remove(change);
            ranked.add(new RankedChange(ranked.size() + 1, change, possible.size(), candidate.score(),
                    candidate.proposals(), candidate.because(), candidate.firstBy(), candidate.note(),
                    candidate.way()).explained(why));
        }
    }

    /** No change goes as far as a setting from which one has come away for the better. */
    private void keepBetween(LastChange last) {
        for (RankedChange change : List.copyOf(ranked)) {
            int room = last.room(change.change());
            if (room == 0) {
                ranked.remove(change);
                withhold(change.change(), "a step of it leads back to a setting that was tried, and no other lies between: "
                        + "look for a finer lever", List.of());
            } else if (room < change.size().steps()) {
                ranked.set(ranked.indexOf(change), change.sized(run.car().setting(change.change().adjuster()).get()
                        .moved(change.change().direction(), room), room, "no further: beyond lies a setting that was tried"));
            }
        }
    }

    private void first(Change change, String why) {
        ranked.stream().filter(other -> other.change().equals(change)).findFirst().ifPresent(found -> {
            ranked.remove(found);
            ranked.add(0, found.explained(why));
        });
    }

    private Score worth(Change change) {
        Note note = notes.get(change.adjuster().note());
        return Score.of(note, note.ways().get(change.direction()), 1, reached(change), surroundings.of(change.adjuster()),
                weights);
    }

    private double certainty(Change change) {
        return Certainty.ofRules(proposals.getOrDefault(change, List.of()));
    }

    /** Of two directions of one adjuster at most one is advised. */
    private boolean losesToOpposite(Change change, double certainty) {
        double opposite = certainty(change.opposite());
        if (opposite < weights.leastCertainty() || certainty - opposite >= weights.clearMajority()) {
            return false;
        }
        boolean clear = opposite - certainty >= weights.clearMajority();
        withheld.put(change, new Withheld(change, clear
                ? "more speaks for the other way, " + change.opposite().direction().id()
                : "as much speaks for " + change.opposite().direction().id() + ": leave it, and look for a lever "
                        + "that serves one complaint alone", List.of(), List.copyOf(proposals.get(change))));
        if (conflicts.stream().noneMatch(conflict -> conflict.changes().contains(change))) {
            conflicts.add(new Conflict("what is complained of pulls the " + change.adjuster().spoken()
                    + " both ways", List.of(change, change.opposite())));
        }
        return true;
    }

    private RankedChange candidate(Change change, double certainty) {
        Note note = notes.get(change.adjuster().note());
        Score score = Score.of(note, note.ways().get(change.direction()), certainty * (1 - held(change)), reached(change),
                surroundings.of(change.adjuster()), weights);
        Note fitting = note.fitting(surroundings.of(change.adjuster(),
                score.helps().stream().map(Score.Help::complaint).toList()));
        List<Proposal> said = List.copyOf(proposals.get(change));
        return new RankedChange(0, change, NONE, score, said, because(said), firstBy(change), fitting,
                fitting.ways().get(change.direction()));
    }

    /** The reason of the rule that speaks for it most. */
    private Optional<String> because(List<Proposal> said) {
        return said.stream().max(Comparator.comparingDouble(Proposal::certainty).thenComparing(Proposal::rule,
                Comparator.reverseOrder())).map(Proposal::rule).flatMap(rules::because);
    }

    /** The rules that put it first, by their names. */
    private List<String> firstBy(Change change) {
        List<String> rules = new ArrayList<>();
        for (Preference preference : conclusions.preferences()) {
            if (named(preference.change()).equals(change) && preference.certainty() >= weights.leastCertainty()
                    && !rules.contains(preference.rule())) {
                rules.add(preference.rule());
            }
        }
        return rules;
    }

    private List<Complaint> reached(Change change) {
        return camber.isEmpty() ? complaints
                : complaints.stream().filter(complaint -> complaint.isWithinReachOf(change.adjuster())).toList();
    }

    private Change named(Change change) {
        return camber.isPresent() ? camber.get().named(change) : change;
    }

    private List<Withholding> holding(Change change) {
        return conclusions.withholdings().stream()
                .filter(withholding -> withholding.certainty() >= weights.leastCertainty())
                .filter(withholding -> withholding.holds(change, axle -> loads(notes, surroundings, change, axle)))
                .toList();
    }

    /** Whether a change gives the tyres of an axle more to do: its note says that it heats them. */
    static boolean loads(Notes notes, Surroundings surroundings, Change change, Axle axle) {
        return notes.get(change.adjuster().note()).ways().get(change.direction()).effects().stream()
                .anyMatch(effect -> effect.on().is("overheating") && effect.effect() < 0
                        && effect.where().filter(where -> where != axle).isEmpty()
                        && effect.when().holds(surroundings.of(change.adjuster())));
    }

    /** How much of its certainty a change loses to what holds it back: from nothing to all, without a threshold. */
    private double held(Change change) {
        double most = holding(change).stream().mapToDouble(Withholding::certainty).max().orElse(0);
        double part = (most - weights.leastCertainty()) / (weights.heldFully() - weights.leastCertainty());
        return Math.max(0, Math.min(1, part));
    }

    private void place(RankedChange candidate, int position) {
        Change change = candidate.change();
        List<String> holding = holding(change).stream().map(Withholding::rule).distinct().toList();
        // One wheel's own pressure is part of mending what halts, and comes after looking for the leak.
        boolean halted = halt.isPresent() && (change.adjuster().wheel().isEmpty()
                || change.adjuster().adjustment() != Adjustment.PRESSURE);
        boolean stays = candidate.score().certainty() < weights.leastCertainty() || halted;
        boolean worth = candidate.score().worthIt() || !candidate.firstBy().isEmpty();
        boolean wanted = !stays && worth;
        Optional<Sized> sized = sizer.size(change, candidate.score().helps().stream().map(Score.Help::complaint)
                .toList(), wanted);
        if (sized.isEmpty()) {
            if (position <= WORTH_A_WORD) {
                withhold(change, run.car().lacking(change.adjuster()), List.of());
            }
        } else if (halted) {
            withhold(change, "not before this: " + halt.get().title().toLowerCase(Locale.ROOT), List.of());
        } else if (stays) {
            withhold(change, reasonOf(holding.get(0)), holding);
        } else if (sized.get() instanceof Sized.Impossible impossible) {
            withhold(change, impossible.reason(), List.of());
        } else if (!worth) {
            withhold(change, notWorthIt(candidate), List.of());
        } else if (sized.get() instanceof Sized.Possible possible && !said(change)) {
            ranked.add(new RankedChange(ranked.size() + 1, change,
                    AmountSizer.size(run, change, candidate.proposals(), possible.size()), candidate.score(),
                    candidate.proposals(), candidate.because(), candidate.firstBy(), candidate.note(), candidate.way()));
        }
    }

    /** Whether a better change sets the same tyres already: an axle's pressure or camber, and one wheel's of it. */
    private boolean said(Change change) {
        Adjuster adjuster = change.adjuster();
        return (adjuster.adjustment() == Adjustment.PRESSURE || adjuster.adjustment() == Adjustment.CAMBER)
                && ranked.stream().map(other -> other.change().adjuster())
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

    /** Raw Drools in a trusted folder has no reason that could be read. */
    private String reasonOf(String rule) {
        return rules.because(rule).orElseGet(() -> "the rule \"" + rule + "\" holds it back");
    }

    private void withhold(Change change, String reason, List<String> by) {
        withheld.putIfAbsent(change, new Withheld(change, reason, by,
                List.copyOf(proposals.getOrDefault(change, List.of()))));
    }

    /**
     * Two complaints of which a change helps one and harms the other ask for opposite things. Only what a driver feels
     * of the balance can conflict; what a tyre shows is a cost.
     */
    private void addConflicts() {
        List<Complaint> felt = complaints.stream()
                .filter(complaint -> complaint.reported() && complaint.where().isEmpty()).toList();
        for (int i = 0; i < felt.size(); i++) {
            for (int j = i + 1; j < felt.size(); j++) {
                Complaint one = felt.get(i);
                Complaint other = felt.get(j);
                List<Change> trading = candidates.stream().filter(candidate -> trades(candidate, one, other))
                        .map(RankedChange::change).toList();
                if (trading.size() > 1 || trading.stream().anyMatch(advised()::contains)) {
                    boolean both = !ranked.isEmpty() && helps(ranked.get(0), one) && helps(ranked.get(0), other);
                    conflicts.add(new Conflict(one.text() + " and " + other.text() + (both
                            ? " agree on some changes and pull apart on others; what helps both comes first"
                            : " ask for opposite changes; what acts on one of them alone comes first"), trading));
                }
            }
        }
    }

    private static boolean trades(RankedChange candidate, Complaint one, Complaint other) {
        return helps(candidate, one) && costs(candidate, other) || helps(candidate, other) && costs(candidate, one);
    }

    private static boolean helps(RankedChange candidate, Complaint complaint) {
        return candidate.score().helps().stream().anyMatch(help -> help.complaint().equals(complaint));
    }

    private static boolean costs(RankedChange candidate, Complaint complaint) {
        return candidate.score().costs().stream().anyMatch(cost -> cost.on().equals(complaint.text()));
    }
}
