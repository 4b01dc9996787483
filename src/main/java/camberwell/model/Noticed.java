package camberwell.model;

import camberwell.vocabulary.Symptom;
import java.util.Map;
import java.util.function.ToDoubleBiFunction;

/**
 * What a driver notices of a car that behaves otherwise than before, in words: 1 is just worth one. That is an eighth of a
 * degree of steer beyond the turn's own at the front wheels, a sixteenth more slip of a braked wheel, a sixteenth of the grip
 * more slip of a driven one, and a third of a metre per second squared more of a kick. Common practice, no source.
 */
public final class Noticed {

    private static final double ANGLE = 0.12;
    private static final double BRAKES = 0.06;
    private static final double SPIN = 0.06;
    private static final double KICK = 0.35;
    private static final Map<Symptom, ToDoubleBiFunction<Figures, Figures>> MORE = Map.of(
            Symptom.UNDERSTEER, Noticed::pushes,
            Symptom.OVERSTEER, (was, is) -> -pushes(was, is),
            Symptom.SNAP_OVERSTEER, (was, is) -> -pushes(was, is),
            Symptom.WHEELSPIN, (was, is) -> (is.spinning() - was.spinning()) / SPIN,
            Symptom.FRONT_LOCKING, (was, is) -> (is.frontLocking() / was.frontLocking() - 1) / BRAKES,
            Symptom.REAR_LOCKING, (was, is) -> (is.rearLocking() / was.rearLocking() - 1) / BRAKES,
            Symptom.KERB_INSTABILITY, (was, is) -> (kicked(is) - kicked(was)) / KICK);

    private Noticed() {
    }

    /** Whether the driven model shows a symptom. */
    public static boolean shows(Symptom symptom) {
        return MORE.containsKey(symptom);
    }

    /**
     * How much more there is of a symptom.
     *
     * @param symptom one that is shown
     * @param was before
     * @param is after
     * @return words, negative for less
     */
    public static double more(Symptom symptom, Figures was, Figures is) {
        return MORE.get(symptom).applyAsDouble(was, is);
    }

    private static double pushes(Figures was, Figures is) {
        return (is.understeer() - was.understeer()) / ANGLE;
    }

    private static double kicked(Figures figures) {
        return figures.thrown() + Sensed.SWING * figures.swing();
    }
}
