package camberwell.model;

import camberwell.physics.AxleEnd;
import camberwell.physics.CornerPhase;
import camberwell.physics.Toe;
import camberwell.physics.Wheels;
import camberwell.vocabulary.Adjuster;
import java.util.Optional;

/**
 * What the handling model predicts of a change: how the car behaves before and after it, asked to do the same. In a
 * left turn; a right turn is its mirror image, as the model's car is alike on both sides.
 *
 * @param adjuster what was changed
 * @param phase part of the corner
 * @param before the car as it stands
 * @param after the car with the change made
 * @param lent what a class of car lent that the car's file leaves out
 */
public record Prediction(Adjuster adjuster, CornerPhase phase, Behaviour before, Behaviour after,
        Optional<Lent> lent) {

    /** Less than this is nothing: a part of the limit balance, and degrees per g. */
    private static final double LEAST_BALANCE = 0.0005;
    private static final double LEAST_GRADIENT = 0.005;

    /** Which way the balance goes. */
    public enum Way {
        UNDERSTEER, OVERSTEER, NEITHER,
        /** One way near the limit and the other way below it. */
        UNCLEAR;

        private static Way of(double shift, double least) {
            return shift > least ? UNDERSTEER : shift < -least ? OVERSTEER : NEITHER;
        }
    }

    /** Change of the understeer gradient, degrees per g; positive is towards understeer. */
    public double understeerGradientShift() {
        return after.understeerGradient() - before.understeerGradient();
    }

    /** Change of the limit balance, a part of the grip; positive is towards understeer. */
    public double limitBalanceShift() {
        return after.limitBalance() - before.limitBalance();
    }

    /**
     * Which way the balance goes: by what gives up first near the limit, unless the understeer gradient below it says
     * the opposite. By the gradient alone where the limit does not tell: where a wheel hangs in the air, and for toe,
     * camber and caster, which move the peaks of the inner and the outer tyre against each other; see
     * {@link camberwell.physics.HandlingModel}.
     */
    public Way way() {
        boolean angle = switch (adjuster.kind()) {
            case TOE, CAMBER, CASTER -> true;
            default -> false;
        };
        Way below = Way.of(understeerGradientShift(), LEAST_GRADIENT);
        if (angle || before.wheelHangs() || after.wheelHangs()) {
            return below;
        }
        Way atLimit = Way.of(limitBalanceShift(), LEAST_BALANCE);
        boolean opposite = atLimit != below && atLimit != Way.NEITHER && below != Way.NEITHER;
        return opposite ? Way.UNCLEAR : atLimit == Way.NEITHER ? below : atLimit;
    }

    /** Change of each wheel's load near the limit, N. */
    public Wheels loadShift() {
        Wheels from = before.near().load();
        Wheels to = after.near().load();
        return new Wheels(to.frontLeft() - from.frontLeft(), to.frontRight() - from.frontRight(),
                to.rearLeft() - from.rearLeft(), to.rearRight() - from.rearRight());
    }

    /** Change of the scrub power of an axle's tyres near the limit, W. */
    public double scrubShift(AxleEnd end) {
        return after.near().scrubPower().sum(end) - before.near().scrubPower().sum(end);
    }

    /** Change of the drag of static toe on the straight at the corner's speed, N; see {@link Toe#drag}. */
    public double toeDragShift() {
        return after.near().toeDrag() - before.near().toeDrag();
    }
}
