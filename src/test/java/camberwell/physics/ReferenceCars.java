package camberwell.physics;

import java.util.List;

/**
 * Open multi-body parameters (CommonRoad vehicle models, TUM, BSD 3-clause) on the full 245/40R18 tyre (Project
 * Chrono, BSD 3-clause). The tyre that comes with the set has no load sensitivity and reversed camber signs and is
 * not used. Camber gain is the camber change per wheel travel times half the track.
 */
final class ReferenceCars {

    static final VehicleModel VEHICLE_1 = new VehicleModel(1225.9, 2.393, 1.509 / 2.393, 0.558, 0.3,
            new SteeringAxis(0, 0), 1, 0.7, axle(1.390, 21_898, 12_880, 65.7, -0.623),
            axle(1.423, 21_898, 0, 65.7, -0.210));
    static final VehicleModel VEHICLE_2 = new VehicleModel(1093.3, 2.579, 0.546, 0.575, 0.3,
            new SteeringAxis(0, 0), 0, 0.7, axle(1.387, 24_453, 6_915, 63.8, -0.394),
            axle(1.364, 19_636, 2_644, 63.8, -0.906));
    static final VehicleModel VEHICLE_3 = new VehicleModel(1478.9, 2.472, 0.531, 0.748, 0.3,
            new SteeringAxis(0, 0), 0.5, 0.7, axle(1.574, 33_577, 33_948, 81.1, -0.328),
            axle(1.544, 39_125, 7_731, 81.1, -0.328));
    static final List<VehicleModel> ALL = List.of(VEHICLE_1, VEHICLE_2, VEHICLE_3);

    private ReferenceCars() {
    }

    private static AxleModel axle(double track, double wheelRate, double bar, double unsprung, double camberPerTravel) {
        double gain = RollCamber.gainFromTravel(camberPerTravel, track);
        return new AxleModel(track, 0, wheelRate, bar, unsprung, 0, 0, gain, 0, 0, Pac2002.ROAD_245_40R18);
    }
}
