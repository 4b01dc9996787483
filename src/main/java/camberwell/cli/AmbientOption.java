package camberwell.cli;

import camberwell.physics.GasLaw;
import camberwell.units.Quantity;
import picocli.CommandLine.Option;

/** The ambient pressure, one way or the other. */
final class AmbientOption {

    @Option(names = "--altitude", paramLabel = "HEIGHT", converter = Amount.Altitude.class,
            description = "Height of the circuit, for the ambient pressure of the standard atmosphere; sea "
                + "level if not given.")
    private Quantity altitude;

    @Option(names = "--ambient", paramLabel = "PRESSURE", converter = Amount.AmbientPressure.class,
            description = "Ambient pressure as a barometer at the circuit reads it, not reduced to sea level.")
    private Quantity pressure;

    /** In Pa. */
    double pascal() {
        return pressure != null ? pressure.si() : GasLaw.standardPressure(altitude.si());
    }
}
