package camberwell.language;

import camberwell.fact.Amount;
import camberwell.units.Quantity;
import camberwell.units.Range;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Typical;
import java.util.Optional;

/** How far a rule may say that a change goes: a setting is one that a car can have, and no change goes across all of them. */
final class HowFar {

    private HowFar() {
    }

    /** What is wrong with it; empty where nothing is. */
    static Optional<String> wrong(Statement.Propose proposed) {
        Adjuster adjuster = proposed.change().adjuster();
        if (proposed.amount().orElse(null) instanceof Amount.To to) {
            return adjuster.measure().range(to.setting().unit()).filter(range -> !range.holds(to.setting()))
                    .map(range -> adjuster.measure().noun() + " lies between " + range + ", not at " + to.setting());
        }
        return proposed.amount().orElse(null) instanceof Amount.By by ? tooFar(adjuster, by.size()) : Optional.empty();
    }

    /** From one end of what is usual to the other at the most; of what has no usual settings in that unit, half of the range. */
    private static Optional<String> tooFar(Adjuster adjuster, Quantity size) {
        Typical usual = adjuster.typical();
        boolean alike = usual.now().unit().dimension() == size.unit().dimension();
        Optional<Range> range = adjuster.measure().range(size.unit());
        Optional<Quantity> most = alike ? Optional.of(new Quantity(usual.max().value() - usual.min().value(), usual.now().unit()))
                : range.map(it -> new Quantity((it.most() - it.least()) / 2, it.units().get(0)));
        return most.filter(it -> size.in(it.unit()) > it.value() * (1 + 1e-9))
                .map(it -> "no change of " + adjuster.id() + " goes by " + size + " at once; the most is " + it);
    }
}
