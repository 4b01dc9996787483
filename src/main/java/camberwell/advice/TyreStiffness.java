package camberwell.advice;

import camberwell.car.Car;
import camberwell.car.Dimension;
import camberwell.physics.Bakker1987;
import camberwell.units.Figures;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Axle;
import java.util.Optional;

/**
 * Cornering stiffness of one tyre, for estimates of toe drag.
 *
 * @param newtonsPerRadian at the tyre's load
 * @param source where the number is from, for the computation that is shown
 */
public record TyreStiffness(double newtonsPerRadian, String source) {

    /** A car tyre at 4 kN: E. Bakker, L. Nyborg, H. B. Pacejka, SAE 870421 (1987), rounded from 1027 N/deg. */
    public static final TyreStiffness COMMON = new TyreStiffness(Math.toDegrees(1000),
            "1000 N/deg a tyre, a published car tyre at about 4 kN");

    private static final double GRAVITY = 9.80665;
    /** The published coefficients hold between these loads, N. */
    private static final double LEAST_LOAD = 2000;
    private static final double MOST_LOAD = 8000;

    /** As given. */
    public static TyreStiffness given(double newtonsPerRadian) {
        return new TyreStiffness(newtonsPerRadian, text(newtonsPerRadian) + " a tyre, as given");
    }

    /**
     * Of the published car tyre at that load.
     *
     * @param newtons load of the tyre, taken to the published range of 2 to 8 kN
     */
    public static TyreStiffness atLoad(double newtons) {
        double within = Math.max(LEAST_LOAD, Math.min(MOST_LOAD, newtons));
        double stiffness = Bakker1987.PUBLISHED.at(within, 0).stiffness();
        return new TyreStiffness(stiffness, Figures.fill("%s a tyre, of a published car tyre at %.1f kN",
                text(stiffness), within / 1000));
    }

    /** Of a tyre of that axle at rest; the common one where the car's mass is not known. */
    static TyreStiffness of(Car car, Axle axle) {
        Optional<Quantity> mass = car.dimension(Dimension.MASS);
        Optional<Quantity> front = car.dimension(Dimension.FRONT_WEIGHT);
        if (mass.isEmpty() || front.isEmpty()) {
            return COMMON;
        }
        double share = axle == Axle.FRONT ? front.get().si() : 1 - front.get().si();
        return atLoad(mass.get().si() * GRAVITY * share / 2);
    }

    private static String text(double newtonsPerRadian) {
        return Worked.number(newtonsPerRadian * Unit.DEGREE.toSi(1), 0) + " N/deg";
    }
}
