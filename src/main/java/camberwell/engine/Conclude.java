package camberwell.engine;

import camberwell.fact.Amount;
import camberwell.fact.Caution;
import camberwell.fact.Driving;
import camberwell.fact.Evidence;
import camberwell.fact.Preference;
import camberwell.fact.Premise;
import camberwell.fact.Proposal;
import camberwell.fact.Withholding;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Group;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drools.model.Drools;
import org.kie.api.runtime.rule.RuleContext;

/**
 * What a rule can do, called from the dictionary's {@code then} sentences: insert a conclusion logically, with the rule
 * and the premises it stands on. Drools withdraws it when a premise goes.
 */
public final class Conclude {

    private Conclude() {
    }

    /** Evidence for a finding. */
    public static void find(Drools drools, String finding, double strength) {
        Match match = new Match(drools);
        match.insert(new Evidence(finding, match.certainty(strength), match.rule, match.premises));
    }

    /** Evidence for a finding that is told, and from which nothing need follow. */
    public static void diagnose(Drools drools, String finding, double strength) {
        find(drools, finding, strength);
    }

    /** Evidence against a finding. */
    public static void speakAgainst(Drools drools, String finding, double strength) {
        Match match = new Match(drools);
        match.insert(new Evidence(finding, -match.certainty(strength), match.rule, match.premises));
    }

    /** A word for a change. */
    public static void propose(Drools drools, String adjuster, String direction, double strength) {
        Match match = new Match(drools);
        match.insert(new Proposal(change(adjuster, direction), match.certainty(strength), match.rule, match.premises));
    }

    /** A word against a change. */
    public static void oppose(Drools drools, String adjuster, String direction, double strength) {
        Match match = new Match(drools);
        match.insert(new Proposal(change(adjuster, direction), -match.certainty(strength), match.rule, match.premises));
    }

    /** That a change has to wait. */
    public static void withhold(Drools drools, String adjuster, String direction) {
        Match match = new Match(drools);
        match.insert(new Withholding(Optional.of(change(adjuster, direction)), Optional.empty(), Optional.empty(),
                match.certainty(1), match.rule,
                match.premises));
    }

    /** That every balance change has to wait. */
    public static void withholdBalance(Drools drools) {
        Match match = new Match(drools);
        match.insert(new Withholding(Optional.empty(), Optional.empty(), Optional.empty(), match.certainty(1), match.rule,
                match.premises));
    }

    /** That every balance change which gives the tyres of that axle more to do has to wait. */
    public static void withholdLoading(Drools drools, String axle) {
        Match match = new Match(drools);
        match.insert(new Withholding(Optional.empty(), Optional.empty(), Optional.of(Word.of(Axle.class, axle)),
                match.certainty(1),
                match.rule, match.premises));
    }

    /** That every change of a group of adjusters has to wait. */
    public static void withholdGroup(Drools drools, String group) {
        Match match = new Match(drools);
        match.insert(new Withholding(Optional.empty(), Optional.of(Word.of(Group.class, group)), Optional.empty(),
                match.certainty(1), match.rule, match.premises));
    }

    /** That a change comes first. */
    public static void first(Drools drools, String adjuster, String direction) {
        Match match = new Match(drools);
        match.insert(new Preference(change(adjuster, direction), match.certainty(1), match.rule, match.premises));
    }

    /** A word for a change by so many steps, written as digits. */
    public static void proposeBy(Drools drools, String adjuster, String direction, String steps, double strength) {
        propose(drools, adjuster, direction, Amount.steps(steps), strength);
    }

    /** A word for a change to a setting, written {@code 2.1:bar}. */
    public static void proposeTo(Drools drools, String adjuster, String direction, String setting, double strength) {
        propose(drools, adjuster, direction, Amount.to(setting), strength);
    }

    /** A word for a change by so much, written {@code 0.5:deg}. */
    public static void proposeByFigure(Drools drools, String adjuster, String direction, String size, double strength) {
        propose(drools, adjuster, direction, Amount.by(size), strength);
    }

    private static void propose(Drools drools, String adjuster, String direction, Amount amount, double strength) {
        Match match = new Match(drools);
        match.insert(new Proposal(change(adjuster, direction), match.certainty(strength), match.rule, match.premises,
                Optional.of(amount)));
    }

    /** Advice to the driver. */
    public static void advise(Drools drools, String note, double strength) {
        Match match = new Match(drools);
        match.insert(new Driving(note, match.certainty(strength), match.rule, match.premises));
    }

    /** A caution. */
    public static void caution(Drools drools, String note) {
        Match match = new Match(drools);
        match.insert(new Caution(note, match.certainty(1), match.rule, match.premises));
    }

    private static Change change(String adjuster, String direction) {
        return new Change(Word.of(Adjuster.class, adjuster), Word.of(Direction.class, direction));
    }

    /** The rule that fires and what it matched. */
    private static final class Match {
        private final RuleContext context;
        private final String rule;
        private final List<Premise> premises;

        Match(Drools drools) {
            context = (RuleContext) drools;
            rule = context.getRule().getName();
            List<Premise> matched = new ArrayList<>();
            for (Object fact : context.getMatch().getObjects()) {
                if (fact instanceof Premise premise) {
                    matched.add(premise);
                }
            }
            premises = List.copyOf(matched);
        }

        /** A conjunction is as certain as its least certain member; the rule's strength multiplies it (EMYCIN). */
        double certainty(double strength) {
            double least = 1;
            for (Premise premise : premises) {
                least = Math.min(least, premise.certainty());
            }
            return strength * least;
        }

        void insert(Object conclusion) {
            context.insertLogical(conclusion);
        }
    }
}
