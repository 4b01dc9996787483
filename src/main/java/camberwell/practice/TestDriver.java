package camberwell.practice;

import camberwell.model.CarModel;
import camberwell.model.Figures;
import camberwell.model.Noticed;
import camberwell.model.ProvingGround;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A driver who knows how a car should feel, and tells what is different now: in slow, medium and fast corners, phase by
 * phase, as soon as it is worth a word ({@link Noticed}).
 */
public final class TestDriver {

    /** Beyond this a slide on the power comes too fast to be called one. */
    private static final double SNAPS = 4;
    /** A car that is lost is worse than any that is not. */
    private static final double LOST = 12;

    private final CarModel good;
    private final ProvingGround track;
    private final Map<Map<Adjuster, Quantity>, List<Felt>> driven = new HashMap<>();

    /** @param good the car as it should be */
    public TestDriver(CarModel good) {
        this.good = good;
        this.track = new ProvingGround(good);
    }

    /** The car as it should be. */
    public CarModel good() {
        return good;
    }

    /**
     * What is worth a word of the car with settings changed, strongest first; what was driven before is remembered.
     *
     * @return empty where the model does not know of one of the settings
     */
    public Optional<List<Felt>> feels(Map<Adjuster, Quantity> settings) {
        List<Felt> known = driven.get(settings);
        if (known != null) {
            return Optional.of(known);
        }
        Optional<List<Felt>> felt = Fault.with(good, settings).map(this::feels);
        felt.ifPresent(it -> driven.put(Map.copyOf(settings), it));
        return felt;
    }

    /** What is worth a word of the car as it is now, strongest first. */
    public List<Felt> feels(CarModel now) {
        return feels(now, Double.POSITIVE_INFINITY).orElseThrow();
    }

    /**
     * What all that is felt of the car with settings changed adds up to, by a driver who comes in as soon as it is no less
     * than it was before: most settings that are tried are no better, and show it in the first corners.
     *
     * @param before what it was
     * @return empty where it is no less, or the model does not know of one of the settings
     */
    Optional<Double> burdenBelow(double before, Map<Adjuster, Quantity> settings) {
        List<Felt> known = driven.get(settings);
        Optional<List<Felt>> felt = known != null ? Optional.of(known)
                : Fault.with(good, settings).flatMap(now -> feels(now, before));
        felt.ifPresent(it -> driven.put(Map.copyOf(settings), it));
        return felt.map(TestDriver::burden).filter(burden -> burden < before);
    }

    /** Empty where he came in before the end, since all that was worth a word together was as much as that. */
    private Optional<List<Felt>> feels(CarModel now, double enough) {
        List<Felt> felt = new ArrayList<>();
        for (CornerSpeed speed : CornerSpeed.values()) {
            for (Phase phase : List.of(Phase.BRAKING, Phase.ENTRY, Phase.LIFT_OFF, Phase.MID_CORNER, Phase.EXIT)) {
                feel(now, phase, speed, felt);
                if (burden(felt) >= enough) {
                    return Optional.empty();
                }
            }
        }
        feel(now, Phase.KERBS, CornerSpeed.MEDIUM, felt);
        felt.sort((one, other) -> Double.compare(other.excess(), one.excess()));
        return Optional.of(List.copyOf(felt));
    }

    /** All that is felt together: 0 for a car as it should be. */
    public static double burden(List<Felt> felt) {
        return felt.stream().mapToDouble(Felt::excess).sum();
    }

    private void feel(CarModel now, Phase phase, CornerSpeed speed, List<Felt> felt) {
        double metresPerSecond = camberwell.physics.CornerSpeed.valueOf(speed.name()).metresPerSecond();
        Optional<Figures> before = track.figures(good, phase, metresPerSecond);
        if (before.isEmpty()) {
            return;
        }
        Optional<Figures> is = track.figures(now, phase, metresPerSecond);
        if (is.isEmpty()) {
            // He was off the road before it came to that, and has said so.
            return;
        }
        if (is.get().lost() && !before.get().lost()) {
            felt.add(new Felt(phase == Phase.EXIT ? Symptom.SNAP_OVERSTEER : Symptom.OVERSTEER, phase, speed, LOST));
            return;
        }
        compare(before.get(), is.get(), phase).forEach((symptom, excess) -> {
            if (!(excess < 1)) {
                felt.add(new Felt(symptom, phase, speed, Math.min(LOST, excess)));
            }
        });
    }

    private static Map<Symptom, Double> compare(Figures was, Figures is, Phase phase) {
        Map<Symptom, Double> excess = new LinkedHashMap<>();
        double pushes = Noticed.more(Symptom.UNDERSTEER, was, is);
        switch (phase) {
            case BRAKING -> {
                excess.put(Symptom.FRONT_LOCKING, Noticed.more(Symptom.FRONT_LOCKING, was, is));
                excess.put(Symptom.REAR_LOCKING, Noticed.more(Symptom.REAR_LOCKING, was, is));
            }
            case KERBS -> excess.put(Symptom.KERB_INSTABILITY, Noticed.more(Symptom.KERB_INSTABILITY, was, is));
            case EXIT -> {
                excess.put(pushes > 0 ? Symptom.UNDERSTEER : -pushes > SNAPS ? Symptom.SNAP_OVERSTEER
                        : Symptom.OVERSTEER, Math.abs(pushes));
                excess.put(Symptom.WHEELSPIN, Noticed.more(Symptom.WHEELSPIN, was, is));
            }
            default -> excess.put(pushes > 0 ? Symptom.UNDERSTEER : Symptom.OVERSTEER, Math.abs(pushes));
        }
        return excess;
    }
}
