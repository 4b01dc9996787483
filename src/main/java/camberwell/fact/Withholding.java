package camberwell.fact;

import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Group;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * One rule's word that a change has to wait.
 *
 * @param change the change, or empty for several
 * @param group the adjusters that have to wait, or empty for every balance change
 * @param loading of the balance changes those alone that give the tyres of that axle more to do, which the notes tell
 */
public record Withholding(Optional<Change> change, Optional<Group> group, Optional<Axle> loading, double certainty,
        String rule, List<Premise> premises) implements Conclusion {

    /**
     * Whether {@code other} has to wait for it.
     *
     * @param loads whether {@code other} gives the tyres of an axle more to do
     */
    public boolean holds(Change other, Predicate<Axle> loads) {
        return change.isPresent() ? change.get().equals(other) || isOneWheelOf(change.get(), other)
                : group.isPresent() ? Group.of(other.adjuster()) == group.get()
                : isBalance(other.adjuster()) && (loading.isEmpty() || loads.test(loading.get()));
    }

    /** Whether {@code other} is the same change of camber at one wheel of the axle. */
    private static boolean isOneWheelOf(Change change, Change other) {
        return other.adjuster().adjustment() == Adjustment.CAMBER && other.direction() == change.direction()
                && other.adjuster().ofBothWheels() == change.adjuster();
    }

    /** Whether an adjuster serves the car's balance rather than the tyre. */
    public static boolean isBalance(Adjuster adjuster) {
        return !adjuster.adjustment().ofTyre();
    }

    @Override
    public String about() {
        return change.map(Change::id).or(() -> group.map(Group::id)).or(() -> loading.map(Axle::id)).orElse("");
    }

    @Override
    public int hashCode() {
        return rule.hashCode();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Withholding withholding && Conclusion.sameWord(this, withholding)
                && change.equals(withholding.change)
                && group.equals(withholding.group) && loading.equals(withholding.loading);
    }
}
