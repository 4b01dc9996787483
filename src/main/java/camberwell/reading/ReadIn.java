package camberwell.reading;

import camberwell.run.Case;
import camberwell.run.TyreReading;
import camberwell.units.Figures;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import java.util.stream.Stream;

/**
 * The unit that the pyrometer was read in, so that what is said of a reading answers in it.
 *
 * @param unit of temperatures: that of the first tread that was read, else of the day; °C where nothing was
 */
public record ReadIn(Unit unit) {

    /** As the treads of {@code run} were read. */
    public static ReadIn of(Case run) {
        return new ReadIn(Stream.concat(run.tyres().values().stream().map(TyreReading::middle), Stream.of(
                run.conditions().track(), run.conditions().air())).flatMap(it -> it.stream()).map(Quantity::unit)
                .findFirst().orElse(Unit.CELSIUS));
    }

    /** A temperature to the full degree: {@code 96 °C}. */
    public String temperature(double celsius) {
        return number(celsius) + " " + unit.symbol();
    }

    /** The same without its unit. */
    String number(double celsius) {
        return Figures.fill("%.0f", unit.fromSi(Unit.CELSIUS.toSi(celsius)));
    }

    /** A difference of temperatures: {@code 20 K}, of one who reads in Fahrenheit {@code 36 °F}. */
    public String difference(double kelvin) {
        return unit == Unit.FAHRENHEIT ? Figures.fill("%.0f °F", kelvin / unit.differenceToSi(1))
                : Figures.fill("%.0f K", kelvin);
    }
}
