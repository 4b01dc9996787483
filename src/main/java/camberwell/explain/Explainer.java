package camberwell.explain;

import camberwell.advice.Advice;
import camberwell.advice.Advisor;
import camberwell.advice.Facts;
import camberwell.advice.Learned;
import camberwell.advice.RankedChange;
import camberwell.advice.Withheld;
import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.engine.Conclusions;
import camberwell.engine.Consultation;
import camberwell.engine.RuleBase;
import camberwell.fact.Certainty;
import camberwell.fact.Conclusion;
import camberwell.fact.Finding;
import camberwell.fact.Premise;
import camberwell.fact.Proposal;
import camberwell.fact.Withholding;
import camberwell.knowledge.Notes;
import camberwell.language.Condition;
import camberwell.language.Line;
import camberwell.language.RuleText;
import camberwell.language.Statement;
import camberwell.language.Trial;
import camberwell.reading.CamberByWheel;
import camberwell.reading.TyreReader;
import camberwell.reading.TyreReadings;
import camberwell.run.Case;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Wheel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;

/** Explains advice: how a change came about, and why another one did not. */
public final class Explainer {

    private final RuleBase rules;
    private final Notes notes;
    private final Advisor advisor;
    private final Map<RuleText, String> gone;

    /** One for rules that are all in use. */
    public Explainer(RuleBase rules, Notes notes, Advisor advisor) {
        this(rules, notes, advisor, Map.of());
    }

    /** @param gone the rules that packs have taken out of use, each with what became of it */
    public Explainer(RuleBase rules, Notes notes, Advisor advisor, Map<RuleText, String> gone) {
        this.rules = rules;
        this.notes = notes;
        this.advisor = advisor;
        this.gone = gone;
    }

    /** Reasons about a case, and keeps all of it. */
    public Reasoning reason(Case run) {
        TyreReadings tyres = TyreReader.read(run);
        List<Premise> typed = Facts.of(run, tyres, advisor.weights());
        try (Consultation consultation = rules.consult()) {
            typed.forEach(consultation::insert);
            Conclusions conclusions = consultation.conclude();
            return new Reasoning(run, typed, conclusions, advisor.weigh(run, tyres, conclusions));
        }
    }

    /** How the change that is asked about was arrived at; empty when no rule spoke for it or against it. */
    public Optional<How> how(Reasoning reasoning, Change asked) {
        Change change = named(reasoning.run(), asked);
        Sum sum = new Teller(reasoning).proposals(change);
        if (sum.steps().isEmpty() && sum.learned().isEmpty()) {
            return Optional.empty();
        }
        Map<String, Derived> findings = new LinkedHashMap<>();
        Set<Premise> typed = new LinkedHashSet<>();
        sum.steps().forEach(step -> new Teller(reasoning).follow(step, findings, typed));
        Optional<RankedChange> ranked = ranked(reasoning.advice(), change);
        return Optional.of(new How(change, reasoning.typed().stream().filter(typed::contains).toList(),
                List.copyOf(findings.values()), sum, ranked, withheld(reasoning.advice(), change),
                ranked.map(RankedChange::note).orElseGet(() -> notes.get(change.adjuster().note())
                        .fitting(reasoning.advice().circumstances()))));
    }

    /** Why the change that is asked about is not advised; where it is, the first reason says so. */
    public WhyNot whyNot(Reasoning reasoning, Change asked) {
        Change change = named(reasoning.run(), asked);
        Teller teller = new Teller(reasoning);
        Sum sum = teller.proposals(change);
        List<Step> withholding = teller.withholding(change);
        List<Silent> silent = teller.silent(teller.proposing(change), sum, true);
        List<WhyNot.Gone> out = new ArrayList<>();
        gone.forEach((rule, fate) -> {
            if (rule.statements().stream().anyMatch(teller.proposing(change))) {
                out.add(new WhyNot.Gone(rule, fate));
            }
        });
        return new WhyNot(change, teller.reasons(change, sum, silent), sum, withholding, silent, out);
    }

    private static Optional<RankedChange> ranked(Advice advice, Change change) {
        return advice.changes().stream().filter(ranked -> ranked.change().equals(change)).findFirst();
    }

    private static Optional<Withheld> withheld(Advice advice, Change change) {
        return advice.withheld().stream().filter(withheld -> withheld.change().equals(change)).findFirst();
    }

    /** What sets one wheel of an axle, or both, where the same is asked of both, or one. */
    private static Optional<RankedChange> ofSameTyres(Advice advice, Change change) {
        Adjuster adjuster = change.adjuster();
        return advice.changes().stream().filter(ranked -> ranked.change().adjuster().adjustment() == adjuster.adjustment()
                && ranked.change().adjuster().axle().equals(adjuster.axle())
                && ranked.change().adjuster().wheel().isEmpty() != adjuster.wheel().isEmpty()).findFirst();
    }

    /** The change as the car makes it: of an axle's camber, where it is set wheel by wheel, that of the loaded wheel. */
    private static Change named(Case run, Change change) {
        Optional<CamberByWheel> camber = CamberByWheel.of(run);
        return camber.isPresent() ? camber.get().named(change) : change;
    }

    /** One case's explanations in the making. */
    private final class Teller {
        private final Reasoning reasoning;
        private final Observed observed;

        Teller(Reasoning reasoning) {
            this.reasoning = reasoning;
            this.observed = new Observed(reasoning);
        }

        private Predicate<Statement> proposing(Change change) {
            return said -> said instanceof Statement.Propose propose
                    && named(reasoning.run(), propose.change()).equals(change);
        }

        private Predicate<Statement> weighing(Change change) {
            return said -> proposing(change).test(said) || said instanceof Statement.Oppose oppose
                    && named(reasoning.run(), oppose.change()).equals(change);
        }

        /** What rules said of the change; also of both wheels of an axle where that gives way to what was found of one. */
        private List<Proposal> said(Change change) {
            List<Proposal> counted = counted(change);
            return counted.isEmpty() ? reasoning.conclusions().proposals().stream()
                    .filter(proposal -> named(reasoning.run(), proposal.change()).equals(change)).toList() : counted;
        }

        private List<Proposal> counted(Change change) {
            List<Proposal> all = reasoning.conclusions().proposals();
            return CamberByWheel.of(reasoning.run()).map(camber -> camber.named(all)).orElse(all).stream()
                    .filter(proposal -> proposal.change().equals(change)).toList();
        }

        private boolean gaveWay(Change change) {
            return counted(change).isEmpty() && !said(change).isEmpty();
        }

        Sum proposals(Change change) {
            List<Proposal> proposals = said(change);
            Optional<Learned> learned = reasoning.advice().experience().of(change);
            if (learned.filter(Learned::undo).isPresent()) {
                return new Sum(List.of(), learned.get().after(), learned);
            }
            Sum rulesAlone = sum(proposals, weighing(change));
            return new Sum(rulesAlone.steps(), learned.map(Learned::after).orElse(rulesAlone.certainty()), learned);
        }

        List<Step> withholding(Change change) {
            List<Withholding> holding = reasoning.conclusions().withholdings().stream()
                    .filter(withholding -> advisor.holds(reasoning.advice(), withholding, change)).toList();
            return sum(holding, Statement.Withhold.class::isInstance).steps();
        }

        /** One rule speaks once, through its strongest match. */
        private Sum sum(Collection<? extends Conclusion> conclusions, Predicate<Statement> about) {
            Map<String, Conclusion> strongest = new TreeMap<>();
            conclusions.forEach(conclusion -> strongest.merge(conclusion.rule(), conclusion, (one, other) ->
                    Math.abs(other.certainty()) > Math.abs(one.certainty()) ? other : one));
            List<Step> steps = strongest.values().stream().map(conclusion -> step(conclusion, about)).toList();
            return new Sum(steps, Certainty.ofRules(conclusions));
        }

        private Sum evidence(String finding) {
            return sum(reasoning.finding(finding).map(Finding::evidence).orElse(List.of()), finding(finding));
        }

        private static Predicate<Statement> finding(String finding) {
            return said -> said.aboutFinding().equals(Optional.of(finding));
        }

        private Step step(Conclusion conclusion, Predicate<Statement> about) {
            RuleText rule = rules.rules().get(conclusion.rule());
            Line line = rule.conclusions().stream().filter(said -> about.test(said.statement())
                    && said.statement().speaksFor() == conclusion.certainty() >= 0).findFirst().orElseThrow();
            Statement said = line.statement();
            List<Ground> grounds = new ArrayList<>();
            List<Premise> left = new ArrayList<>(conclusion.premises());
            for (Condition condition : rule.conditions()) {
                Optional<Premise> premise = condition.negative() ? Optional.empty()
                        : Trial.of(condition, left).matches().stream().findFirst();
                premise.ifPresent(left::remove);
                grounds.add(new Ground(condition, premise, observed.held(condition, premise)));
            }
            double least = conclusion.premises().stream().mapToDouble(Premise::certainty).min().orElse(1);
            return new Step(rule, line, said.speaksFor() ? said.certainty() : -said.certainty(), Math.min(1, least), grounds);
        }

        /** Gathers what a step rests on: findings after those that they rest on, and in the end what was typed. */
        void follow(Step step, Map<String, Derived> findings, Set<Premise> typed) {
            for (Ground ground : step.grounds()) {
                if (ground.premise().isEmpty()) {
                    continue;
                }
                if (ground.premise().get() instanceof Finding finding) {
                    if (!findings.containsKey(finding.id())) {
                        Sum sum = sum(finding.evidence(), finding(finding.id()));
                        sum.steps().forEach(below -> follow(below, findings, typed));
                        findings.put(finding.id(), new Derived(finding.id(), sum));
                    }
                } else {
                    typed.add(ground.premise().get());
                }
            }
        }

        /** The rules that would have concluded it and did not, those first that lack least. */
        List<Silent> silent(Predicate<Statement> conclusion, Sum spoke, boolean deeper) {
            List<Silent> silent = new ArrayList<>();
            for (RuleText rule : rules.rules().values()) {
                Optional<Line> line = rule.conclusions().stream().filter(said -> said.statement().speaksFor()
                        && conclusion.test(said.statement())).findFirst();
                if (line.isPresent() && spoke.steps().stream().noneMatch(step -> step.rule().equals(rule))) {
                    silent.add(new Silent(rule, line.get(),
                            rule.conditions().stream().map(condition -> asked(condition, deeper)).toList()));
                }
            }
            silent.sort(Comparator.comparingInt((Silent rule) -> rule.failed().size())
                    .thenComparing(rule -> rule.rule().name()));
            return silent;
        }

        private Silent.Asked asked(Condition condition, boolean deeper) {
            Trial trial = Trial.of(condition, reasoning.premises());
            List<Silent.Sentence> sentences = new ArrayList<>();
            boolean headHolds = trial.holds() || !condition.negative() && trial.nearest().isPresent();
            sentences.add(new Silent.Sentence(condition.head(), headHolds, !headHolds ? observed.instead(condition)
                    : observed.held(condition, condition.negative() ? Optional.empty() : trial.nearest())));
            for (Line dash : condition.narrowings()) {
                boolean held = trial.nearest().isPresent() && !trial.failed().contains(dash);
                String said = held || trial.nearest().isEmpty() ? ""
                        : Observed.narrowed(dash, trial.nearest().get());
                sentences.add(new Silent.Sentence(dash, held, said));
            }
            boolean doubtful = deeper && !trial.holds() && !condition.negative()
                    && condition.question().isAbout(Finding.KIND);
            return new Silent.Asked(condition, trial.holds(), sentences, doubtful
                    ? Optional.of(doubt(condition.question().word("finding").orElseThrow())) : Optional.empty());
        }

        private Silent.Doubt doubt(String finding) {
            Sum sum = evidence(finding);
            return new Silent.Doubt(finding, sum, silent(finding(finding), sum, false));
        }

        List<String> reasons(Change change, Sum sum, List<Silent> silent) {
            Advice advice = reasoning.advice();
            List<String> reasons = new ArrayList<>();
            double least = advisor.weights().leastCertainty();
            ranked(advice, change).ifPresent(ranked -> reasons.add("it is advised: number " + ranked.rank() + " of "
                    + advice.changes().size() + (ranked.ofModelAlone() ? ", by the driven model of this car alone, since no "
                    + "rule has anything left that helps" : "")));
            withheld(advice, change).ifPresent(withheld -> reasons.add("it is proposed, and held back: "
                    + withheld.reason()));
            boolean spokenFor = sum.steps().stream().anyMatch(step -> step.certainty() > 0);
            if (spokenFor && sum.certainty() < least) {
                reasons.add("what speaks for it and against it comes to a certainty of "
                        + Observed.two(sum.certainty()) + "; a change is advised from " + Observed.two(least));
            }
            if (gaveWay(change)) {
                reasons.add("what speaks for both wheels gives way to what was found of one of them");
            } else if (!spokenFor) {
                reasons.add(silent.isEmpty() ? "no rule in the rule base ever proposes it"
                        : silent.size() == 1 ? "the one rule that proposes it does not apply here"
                        : silent.size() == 2 ? "neither of the two rules that propose it applies here"
                        : "none of the " + silent.size() + " rules that propose it applies here");
            }
            sum.steps().stream().filter(step -> step.certainty() < 0).findFirst().ifPresent(step ->
                    reasons.add("a rule speaks against it: \"" + step.rule().name() + "\""));
            car(change).ifPresent(reason -> {
                if (reasons.stream().noneMatch(said -> said.endsWith(reason))) {
                    reasons.add(reason);
                }
            });
            if (reasons.isEmpty()) {
                ofSameTyres(advice, change).ifPresent(other -> reasons.add("the same tyres are set by what is advised: "
                        + other.change().id() + ", number " + other.rank()));
            }
            ranked(advice, change.opposite()).ifPresent(other -> reasons.add("the advice goes the other way: "
                    + other.change().id() + ", number " + other.rank()));
            return reasons;
        }

        /** What the car itself has against a change. */
        private Optional<String> car(Change change) {
            Adjuster adjuster = change.adjuster();
            Car car = reasoning.run().car();
            Optional<Setting> setting = car.setting(adjuster).or(() -> adjuster.adjustment() != Adjustment.PRESSURE
                    ? Optional.empty() : Arrays.stream(Wheel.values()).filter(wheel -> adjuster.wheel()
                    .map(wheel::equals).orElse(adjuster.axle().equals(Optional.of(wheel.axle())))).findFirst()
                    .flatMap(car::pressureSetting));
            if (setting.isEmpty()) {
                return Optional.of(car.lacking(adjuster));
            }
            return setting.filter(there -> !car.generic() && there.stepsLeft(change.direction()) == 0)
                    .map(there -> "it stands at its stop, " + there.now());
        }
    }
}
