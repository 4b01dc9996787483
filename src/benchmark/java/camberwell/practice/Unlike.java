package camberwell.practice;

import camberwell.car.Car;
import camberwell.car.Dimension;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import java.util.EnumMap;
import java.util.Map;
import java.util.Random;

/**
 * A car that is not quite what its file says, as cars are: whoever asks a model of the file for advice asks about another
 * car than the one that is driven. By up to so much common practice holds the figures of a file to be out, no source.
 */
final class Unlike {

    private static final double PART = 0.15;
    /** Weight and drive are weighed and counted. */
    private static final double POINTS = 2;

    private Unlike() {
    }

    /** The car as it is driven, by a seed. */
    static Car of(Car written, long seed) {
        Random luck = new Random(seed);
        Map<Dimension, Quantity> real = new EnumMap<>(Dimension.class);
        written.dimensions().forEach((dimension, said) -> {
            double out = 2 * luck.nextDouble() - 1;
            boolean share = said.unit() == Unit.PERCENT && dimension != Dimension.TYRE_GRIP;
            double value = switch (dimension) {
                case WHEELBASE, MASS, FRONT_DRIVE, FRONT_TRACK, REAR_TRACK -> said.value();
                default -> share ? said.value() + POINTS * out : said.value() * (1 + PART * out);
            };
            real.put(dimension, said.withValue(value));
        });
        return written.withDimensions(real);
    }
}
