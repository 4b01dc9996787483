package camberwell.vocabulary;

/** What a driver or a coach complains of. */
public enum Symptom implements Word {
    UNDERSTEER("understeer"),
    OVERSTEER("oversteer"),
    SNAP_OVERSTEER("snap-oversteer"),
    WHEELSPIN("wheelspin"),
    FRONT_LOCKING("front-locking"),
    REAR_LOCKING("rear-locking"),
    UNSTABLE_BRAKING("unstable-braking"),
    SLOW_TURN_IN("slow-turn-in"),
    NERVOUS_TURN_IN("nervous-turn-in"),
    WANDERING("wandering"),
    PULLING("pulling"),
    HEAVY_STEERING("heavy-steering"),
    LIGHT_STEERING("light-steering"),
    SLOW_WARM_UP("slow-warm-up"),
    OVERHEATING("overheating"),
    GRAINING("graining"),
    BOTTOMING("bottoming"),
    KERB_INSTABILITY("kerb-instability"),
    HOT_INNER_EDGE("hot-inner-edge"),
    HOT_OUTER_EDGE("hot-outer-edge"),
    HOT_MIDDLE("hot-middle"),
    COLD_MIDDLE("cold-middle");

    private final String id;

    Symptom(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
