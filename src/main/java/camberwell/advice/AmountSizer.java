package camberwell.advice;

import camberwell.car.Setting;
import camberwell.fact.Amount;
import camberwell.fact.Proposal;
import camberwell.run.Case;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Direction;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How far a change goes where a rule says so: its word stands above what was computed, and the car's stops above both. */
final class AmountSizer {

    private AmountSizer() {
    }

    /**
     * The size that the surest rule with a word on it gives; {@code computed} where none has, or its word is no way to go
     * from where the car stands.
     */
    static Size size(Case run, Change change, List<Proposal> proposals, Size computed) {
        Proposal surest = null;
        for (Proposal proposal : proposals) {
            if (proposal.amount().isPresent() && (surest == null || proposal.certainty() > surest.certainty())) {
                surest = proposal;
            }
        }
        Optional<Setting> setting = run.car().setting(change.adjuster());
        if (surest == null || setting.isEmpty() || run.car().generic()) {
            return computed;
        }
        int wanted = steps(surest.amount().get(), setting.get(), change.direction());
        int most = most(change, setting.get());
        int steps = Math.min(wanted, most);
        if (steps < 1) {
            return computed;
        }
        List<String> computation = new ArrayList<>(List.of(steps + (steps == 1 ? " step of " : " steps of ")
                + setting.get().step() + ", as the rule \"" + surest.rule() + "\" says"));
        if (steps < wanted) {
            computation.add("the rule says more; its stop leaves no more than that");
        }
        return new Size(Optional.of(setting.get().now()), Optional.of(setting.get().moved(change.direction(), steps)), steps,
                List.of(), computation, computation);
    }

    private static int steps(Amount amount, Setting setting, Direction direction) {
        if (amount instanceof Amount.Steps steps) {
            return steps.count();
        }
        Unit unit = setting.now().unit();
        if (amount instanceof Amount.To to) {
            return to.setting().unit().dimension() == unit.dimension() ? setting.sign(direction) * setting.stepsTo(to.setting())
                    : 0;
        }
        Quantity size = ((Amount.By) amount).size();
        return size.unit().dimension() == unit.dimension()
                ? (int) Math.max(1, Math.round(size.in(unit) / setting.step().value())) : 0;
    }

    /** Rear toe never goes below zero, whatever a rule says. */
    private static int most(Change change, Setting setting) {
        int left = setting.stepsLeft(change.direction());
        boolean towardsZero = change.adjuster() == Adjuster.REAR_TOE && change.direction() == Direction.TOE_OUT
                && setting.now().unit().dimension() != Unit.Dimension.COUNT;
        return towardsZero ? Math.min(left, ToeSizer.stepsToZero(setting)) : left;
    }
}
