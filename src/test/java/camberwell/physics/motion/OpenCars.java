package camberwell.physics.motion;

import camberwell.physics.AxleModel;
import camberwell.physics.Pac2002;
import camberwell.physics.RollCamber;
import camberwell.physics.SteeringAxis;
import camberwell.physics.VehicleModel;
import java.util.List;

/**
 * The three open multi-body cars (CommonRoad vehicle models, Technical University of Munich, BSD 3-clause), as the
 * reference histories were made with them: tyre force proportional to load, no camber, no relaxation, levers of the
 * sprung mass for the whole car.
 */
final class OpenCars {

    /** PAC2002 with the load sensitivity of friction and stiffness taken out: 21.92 N/rad and 1.0489 N a newton. */
    static final Pac2002 PROPORTIONAL = new Pac2002(3928.5, 1.3507, 1.0489, 0, 0, -0.0074722, -21.92 * 5e5, 1e6, 0, 0,
            0, 0, 1, 1);
    private static final double RADIUS = 0.344;
    private static final double WHEEL_INERTIA = 1.7;

    private OpenCars() {
    }

    /** A car by its number, 1 to 3, on a tyre. */
    static MovingCar car(int number, Pac2002 tyre) {
        return switch (number) {
            case 1 -> car(1225.887847, 0.883920, 1.508760, 0.558, 1094.5, 0.76, 1.0,
                    new Inertia(1538.853, 244, 1342, WHEEL_INERTIA),
                    axle(1.390, 21_898, 12_880, 65.7, tyre, 189_786), axle(1.423, 21_898, 0, 65.7, tyre, 189_786),
                    1459.4, 1459.4);
            case 2 -> car(1093.295233, 1.156196, 1.422717, 0.575, 965.7, 0.66, 0.0,
                    new Inertia(1791.5995, 207, 1566, WHEEL_INERTIA),
                    axle(1.387, 24_453, 6_915, 63.8, tyre, 158_294), axle(1.364, 19_636, 2_644, 63.8, tyre, 158_294),
                    1786.2, 1434.4);
            case 3 -> car(1478.897964, 1.150792, 1.321136, 0.748, 1316.6, 0.64, 0.0,
                    new Inertia(2473.1177, 480, 2204, WHEEL_INERTIA),
                    axle(1.574, 33_577, 33_948, 81.1, tyre, 212_642), axle(1.544, 39_125, 7_731, 81.1, tyre, 212_642),
                    2300, 2300);
            default -> throw new IllegalArgumentException("there are three cars");
        };
    }

    static List<MovingCar> all(Pac2002 tyre) {
        return List.of(car(1, tyre), car(2, tyre), car(3, tyre));
    }

    private static MovingCar car(double mass, double a, double b, double height, double sprung, double brakeFront,
            double driveFront, Inertia inertia, AxleModel front, AxleModel rear, double frontDamper,
            double rearDamper) {
        VehicleModel vehicle = new VehicleModel(mass, a + b, b / (a + b), height, RADIUS, new SteeringAxis(0, 0),
                driveFront, brakeFront, front, rear);
        return new MovingCar(vehicle, inertia, new Damper(frontDamper, frontDamper),
                new Damper(rearDamper, rearDamper), MovingCar.Differentials.OPEN, Relaxation.NONE, 0, 0);
    }

    private static AxleModel axle(double track, double wheelRate, double bar, double unsprung, Pac2002 tyre,
            double tyreRate) {
        return new AxleModel(track, 0, wheelRate, bar, unsprung, 0, 0, 0, 0, 0, tyre, tyreRate);
    }

    /** The camber gains of the open data, for cars on a tyre that feels camber. */
    static MovingCar leaning(MovingCar car, double front, double rear, double gainFront, double gainRear) {
        return car.withVehicle(vehicle -> vehicle
                .withFront(axle -> new AxleModel(axle.track(), axle.rollCentreHeight(), axle.wheelRate(),
                        axle.barRate(), axle.unsprungMass(), axle.toe(), front,
                        RollCamber.gainFromTravel(gainFront, axle.track()), 0, 0, axle.tyre(), axle.tyreRate()))
                .withRear(axle -> new AxleModel(axle.track(), axle.rollCentreHeight(), axle.wheelRate(),
                        axle.barRate(), axle.unsprungMass(), axle.toe(), rear,
                        RollCamber.gainFromTravel(gainRear, axle.track()), 0, 0, axle.tyre(), axle.tyreRate())));
    }
}
