package camberwell.vocabulary;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a driver or a coach complains of. The words below are built in; an instructor may bring others, which stay known
 * as long as they are {@linkplain #bring brought}. Of one word there is one symptom, so that {@code ==} will do.
 */
public final class Symptom implements Word, Comparable<Symptom> {

    private static final Object BRINGING = new Object();
    private static final Set<Phase> BRAKES = EnumSet.of(Phase.BRAKING, Phase.ENTRY);
    private static final Set<Phase> POWERLESS = EnumSet.of(Phase.BRAKING, Phase.ENTRY, Phase.LIFT_OFF);
    private static final String NOTHING_TURNED =
            "on the straight nothing is turned: that is wandering, pulling or wheelspin";
    private static final String OFF_THE_BRAKES = "off the brakes no wheel locks";
    private static final String ENTRY_ALONE = "turn-in is the entry";
    private static final String KICKS = "over a kerb the wheel kicks; that is instability over kerbs";

    /** All that are known, the built-in ones first; replaced as a whole when words are brought or taken back. */
    private static volatile List<Symptom> known = List.of();

    public static final Symptom UNDERSTEER = car("understeer", Axle.FRONT,
            "the nose runs wide: you turn the wheel, and the car goes on straight")
            .except(EnumSet.of(Phase.STRAIGHT), NOTHING_TURNED).enter();
    public static final Symptom OVERSTEER = car("oversteer", Axle.REAR,
            "the tail steps out, and you steer against it")
            .except(EnumSet.of(Phase.STRAIGHT), NOTHING_TURNED).enter();
    public static final Symptom SNAP_OVERSTEER = car("snap-oversteer", Axle.REAR,
            "the tail comes round at once, without warning")
            .except(EnumSet.of(Phase.STRAIGHT), NOTHING_TURNED).enter();
    public static final Symptom WHEELSPIN = car("wheelspin", null,
            "you press the throttle, the wheels spin and the car hardly goes")
            .except(POWERLESS, "without power no wheel spins").enter();
    public static final Symptom FRONT_LOCKING = car("front-locking", Axle.FRONT,
            "on the brakes a front wheel stops turning: smoke, no steering")
            .only(BRAKES, OFF_THE_BRAKES).enter();
    public static final Symptom REAR_LOCKING = car("rear-locking", Axle.REAR,
            "on the brakes a rear wheel stops turning: the tail goes light")
            .only(BRAKES, OFF_THE_BRAKES).enter();
    public static final Symptom UNSTABLE_BRAKING = car("unstable-braking", null, "the car weaves on the brakes")
            .only(BRAKES, OFF_THE_BRAKES).enter();
    public static final Symptom SLOW_TURN_IN = car("slow-turn-in", Axle.FRONT,
            "you turn the wheel, and the car takes its time")
            .only(EnumSet.of(Phase.ENTRY), ENTRY_ALONE).enter();
    public static final Symptom NERVOUS_TURN_IN = car("nervous-turn-in", null,
            "a touch of the wheel, and the car darts")
            .only(EnumSet.of(Phase.ENTRY), ENTRY_ALONE).enter();
    public static final Symptom WANDERING = car("wandering", null, "it will not run straight by itself")
            .only(EnumSet.of(Phase.STRAIGHT, Phase.BRAKING), "wandering is what a car does while nobody turns it")
            .enter();
    public static final Symptom PULLING = car("pulling", null, "it draws to one side").enter();
    public static final Symptom HEAVY_STEERING = car("heavy-steering", Axle.FRONT, "the wheel takes strength")
            .except(EnumSet.of(Phase.KERBS), KICKS).enter();
    public static final Symptom LIGHT_STEERING = car("light-steering", Axle.FRONT,
            "the wheel goes light and tells you nothing")
            .except(EnumSet.of(Phase.KERBS), KICKS).enter();
    public static final Symptom SLOW_WARM_UP = tyre("slow-warm-up", "the tyres take too long to grip").enter();
    public static final Symptom OVERHEATING = tyre("overheating",
            "the tyres grip less and less as they get hot").enter();
    public static final Symptom GRAINING = tyre("graining", "the tread rolls up into little balls of rubber").enter();
    public static final Symptom BOTTOMING = car("bottoming", null,
            "the floor or the stops hit: a bang, and the car skips").enter();
    public static final Symptom KERB_INSTABILITY = car("kerb-instability", null, "kerbs throw the car")
            .only(EnumSet.of(Phase.KERBS), "a kerb is a kerb, wherever it lies").enter();
    public static final Symptom MECHANICAL_FAULT = car("mechanical-fault", null,
            "something shakes, knocks, smells or smokes, or a wheel or the brake pedal is not as it was").enter();
    public static final Symptom HOT_INNER_EDGE = tyre("hot-inner-edge",
            "the edge of the tread that faces the car is the hot or worn one").enter();
    public static final Symptom HOT_OUTER_EDGE = tyre("hot-outer-edge",
            "the edge of the tread that faces away is the hot or worn one").enter();
    public static final Symptom HOT_MIDDLE = tyre("hot-middle",
            "the middle of the tread is the hot or worn part").enter();
    public static final Symptom COLD_MIDDLE = tyre("cold-middle",
            "the middle of the tread works less than its edges").enter();

    private final String id;
    private final String felt;
    private final boolean ofTyre;
    private final Optional<Axle> axle;
    private final Set<Phase> phases;
    private final String elsewhere;
    private int ordinal;

    private Symptom(String id, String felt, boolean ofTyre, Optional<Axle> axle, Set<Phase> phases,
            String elsewhere) {
        this.id = id;
        this.felt = felt;
        this.ofTyre = ofTyre;
        this.axle = axle;
        this.phases = phases;
        this.elsewhere = elsewhere;
    }

    /** Of the car as a whole. */
    private static Symptom car(String id, Axle axle, String felt) {
        return new Symptom(id, felt, false, Optional.ofNullable(axle), EnumSet.allOf(Phase.class), "");
    }

    private static Symptom tyre(String id, String felt) {
        return new Symptom(id, felt, true, Optional.empty(), EnumSet.allOf(Phase.class), "");
    }

    private Symptom only(Set<Phase> where, String why) {
        return new Symptom(id, felt, ofTyre, axle, where, why);
    }

    private Symptom except(Set<Phase> where, String why) {
        return only(EnumSet.complementOf(EnumSet.copyOf(where)), why);
    }

    private Symptom enter() {
        synchronized (BRINGING) {
            List<Symptom> more = new ArrayList<>(known);
            ordinal = more.isEmpty() ? 0 : more.get(more.size() - 1).ordinal + 1;
            more.add(this);
            known = List.copyOf(more);
        }
        return this;
    }

    /** A word that was brought, as long as it is wanted. */
    public interface Brought extends AutoCloseable {

        /** The symptom. */
        Symptom symptom();

        /** Forgets the word. */
        @Override
        void close();
    }

    /**
     * Makes another symptom known.
     *
     * @param id in kebab-case
     * @param felt what it feels like, to choose from a list: {@code the nose runs wide}
     * @param ofTyre whether it is bound to an axle or a wheel
     * @param axle the end of the car that it is about, where that is always the same one
     * @throws IllegalArgumentException if the word is not in kebab-case or is known already
     */
    public static Brought bring(String id, String felt, boolean ofTyre, Optional<Axle> axle) {
        synchronized (BRINGING) {
            if (!id.matches("[a-z][a-z0-9]*(-[a-z0-9]+)*")) {
                throw new IllegalArgumentException("\"" + id + "\" is not in kebab-case");
            }
            if (Word.find(Symptom.class, id).isPresent()) {
                throw new IllegalArgumentException("\"" + id + "\" is a symptom already");
            }
            Symptom symptom = new Symptom(id, felt, ofTyre, axle, EnumSet.allOf(Phase.class), "").enter();
            return new Brought() {
                @Override
                public Symptom symptom() {
                    return symptom;
                }

                @Override
                public void close() {
                    symptom.leave();
                }
            };
        }
    }

    /** Whether a word was brought rather than built in. */
    public static boolean isBrought(Symptom symptom) {
        return symptom.ordinal > COLD_MIDDLE.ordinal;
    }

    private void leave() {
        synchronized (BRINGING) {
            List<Symptom> fewer = new ArrayList<>(known);
            fewer.remove(this);
            known = List.copyOf(fewer);
        }
    }

    /** Every symptom that is known, the built-in ones first. */
    public static Symptom[] values() {
        return known.toArray(new Symptom[0]);
    }

    @Override
    public String id() {
        return id;
    }

    /** Its place among the symptoms. */
    public int ordinal() {
        return ordinal;
    }

    @Override
    public String felt() {
        return felt;
    }

    /** Whether it is a tyre's, so that a report of it says where: at an axle or at one wheel. */
    public boolean ofTyre() {
        return ofTyre;
    }

    /** Whether it is about which end of the car lets go first. */
    public boolean ofBalance() {
        return this == UNDERSTEER || loose();
    }

    /** Whether the rear lets go first, at once or by and by. */
    public boolean loose() {
        return this == OVERSTEER || this == SNAP_OVERSTEER;
    }

    /** The end of the car that it is about, where that is always the same one. */
    public Optional<Axle> axle() {
        return axle;
    }

    /** Why nobody can mean it there; empty where the complaint makes sense. */
    public Optional<String> senseless(Phase phase) {
        return phases.contains(phase) ? Optional.empty() : Optional.of(elsewhere);
    }

    @Override
    public int compareTo(Symptom other) {
        return Integer.compare(ordinal, other.ordinal);
    }

    @Override
    public int hashCode() {
        return id.hashCode();
    }

    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public String toString() {
        return id;
    }
}
