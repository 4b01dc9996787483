package camberwell.cli;

import camberwell.advice.TyreStiffness;
import camberwell.units.Unit;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Cornering stiffness of one tyre, {@code 1100 N/deg} or {@code 63 kN/rad}: no car's file holds one. */
final class Stiffness implements ITypeConverter<TyreStiffness> {

    private static final double LEAST_PER_DEGREE = 50;
    private static final double MOST_PER_DEGREE = 10_000;

    @Override
    public TyreStiffness convert(String text) {
        String compact = text.replace(" ", "").toLowerCase(Locale.ROOT);
        for (String unit : List.of("kn/rad", "n/rad", "n/deg")) {
            if (compact.endsWith(unit)) {
                double factor = unit.equals("n/deg") ? 1 : Unit.DEGREE.toSi(unit.startsWith("k") ? 1000 : 1);
                double perDegree = factor * number(compact.substring(0, compact.length() - unit.length()), text);
                if (!(perDegree >= LEAST_PER_DEGREE && perDegree <= MOST_PER_DEGREE)) {
                    throw new TypeConversionException("\"" + text + "\" is out of range: the cornering "
                            + "stiffness of one tyre lies between 50 N/deg and 10000 N/deg");
                }
                return TyreStiffness.given(Math.toDegrees(perDegree));
            }
        }
        throw wrong(text);
    }

    private static double number(String number, String text) {
        try {
            return Double.parseDouble(number);
        } catch (NumberFormatException e) {
            throw wrong(text);
        }
    }

    private static TypeConversionException wrong(String text) {
        return new TypeConversionException("\"" + text + "\" will not do: a cornering stiffness is a number and a "
                + "unit, N/deg, N/rad or kN/rad");
    }
}
