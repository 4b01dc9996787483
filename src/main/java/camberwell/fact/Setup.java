package camberwell.fact;

import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Word;
import java.util.Optional;

/** The car as it ran, as the rules ask about it. A question about what is not known of it is answered no. */
public record Setup(Car car) implements Premise {

    public boolean drives(String drive) {
        return car.drive().filter(wheels -> wheels.is(drive)).isPresent();
    }

    public boolean drivesOtherThan(String drive) {
        return car.drive().filter(wheels -> !wheels.is(drive)).isPresent();
    }

    public boolean driven(String axle) {
        return car.drive().filter(wheels -> wheels.drives(Word.of(Axle.class, axle))).isPresent();
    }

    public boolean undriven(String axle) {
        return car.drive().filter(wheels -> !wheels.drives(Word.of(Axle.class, axle))).isPresent();
    }

    public boolean adjusts(String adjuster) {
        return car.setting(Word.of(Adjuster.class, adjuster)).isPresent();
    }

    /** Of a car of which not even the driven wheels are known, nobody knows what it lacks. */
    public boolean lacks(String adjuster) {
        return !adjusts(adjuster) && car.drive().isPresent();
    }

    public boolean toedIn(String axle) {
        return toe(axle).filter(toe -> toe.value() > 0).isPresent();
    }

    public boolean toedOut(String axle) {
        return toe(axle).filter(toe -> toe.value() < 0).isPresent();
    }

    /** Whether the static camber is known and more negative than {@code degrees} (given as a positive number). */
    public boolean camberBeyond(String axle, double degrees) {
        return camber(axle).filter(camber -> -camber.value() > degrees).isPresent();
    }

    /** Whether the static camber is known and less negative than {@code degrees} (given as a positive number). */
    public boolean camberShortOf(String axle, double degrees) {
        return camber(axle).filter(camber -> -camber.value() < degrees).isPresent();
    }

    public boolean casterAbove(double degrees) {
        return now(Adjuster.CASTER).filter(Setup::angle).filter(caster -> caster.value() > degrees).isPresent();
    }

    public boolean casterBelow(double degrees) {
        return now(Adjuster.CASTER).filter(Setup::angle).filter(caster -> caster.value() < degrees).isPresent();
    }

    private Optional<Quantity> toe(String axle) {
        return now(Adjuster.toeOf(Word.of(Axle.class, axle))).filter(toe -> toe.unit() != Unit.POSITION);
    }

    private Optional<Quantity> camber(String axle) {
        return now(Adjuster.camberOf(Word.of(Axle.class, axle))).filter(Setup::angle);
    }

    /** What is counted in clicks says nothing of the angle. */
    private static boolean angle(Quantity quantity) {
        return quantity.unit().dimension() == Unit.Dimension.ANGLE;
    }

    private Optional<Quantity> now(Adjuster adjuster) {
        return car.generic() ? Optional.empty() : car.setting(adjuster).map(Setting::now);
    }

    /** By the name alone: every conclusion carries its premises and is hashed when it is inserted. */
    @Override
    public int hashCode() {
        return car.name().hashCode();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Setup setup && car.equals(setup.car);
    }

    @Override
    public double certainty() {
        return 1;
    }

    @Override
    public String statement() {
        return car.name() + ", " + car.driven();
    }
}
