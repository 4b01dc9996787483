package camberwell.vocabulary;

import java.util.Optional;

/** An axle or a wheel that something is bound to. */
public enum Place implements Word {
    FRONT(Axle.FRONT),
    REAR(Axle.REAR),
    FRONT_LEFT(Wheel.FRONT_LEFT),
    FRONT_RIGHT(Wheel.FRONT_RIGHT),
    REAR_LEFT(Wheel.REAR_LEFT),
    REAR_RIGHT(Wheel.REAR_RIGHT);

    private final String id;
    private final Axle axle;
    private final Optional<Wheel> wheel;

    Place(Axle axle) {
        this.id = axle.id();
        this.axle = axle;
        this.wheel = Optional.empty();
    }

    Place(Wheel wheel) {
        this.id = wheel.id();
        this.axle = wheel.axle();
        this.wheel = Optional.of(wheel);
    }

    @Override
    public String id() {
        return id;
    }

    /** The axle itself, or the axle of the wheel. */
    public Axle axle() {
        return axle;
    }

    /** The wheel, where it is one. */
    public Optional<Wheel> wheel() {
        return wheel;
    }

    /** In words: {@code front tyres}, {@code front-left tyre}. */
    public String tyres() {
        return id + (wheel.isPresent() ? " tyre" : " tyres");
    }

    @Override
    public String felt() {
        return "the " + tyres();
    }
}
