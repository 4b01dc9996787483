package camberwell.fact;

import camberwell.car.Setting;
import camberwell.run.Case;
import camberwell.run.TyreReading;
import camberwell.units.Figures;
import camberwell.units.Measure;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Word;
import java.util.Arrays;
import java.util.Optional;

/**
 * A bare figure of pyrometer or gauge, by the name that the dictionary asks for it: {@code front:tread in °C},
 * {@code rear-left:inner over outer in K}, {@code front:pressure growth in bar}. Of an axle it is the mean of its tyres
 * that were read. Where a tyre's cold pressure was not read, the car's setting stands for it.
 *
 * @param name as it is asked for
 * @param place the tyres
 * @param of what is read
 * @param against the tyres that it is held against, if there are any
 * @param unit of the answer; {@link Unit#POSITION} stands for kelvin
 */
record TyreFigure(String name, Place place, Of of, Optional<Place> against, Unit unit) {

    private static final String IN = " in ";
    private static final String OVER = " over ";
    private static final String KELVIN = "K";
    private static final Measure DIFFERENCE = Measure.in("a difference of temperature in K", Unit.POSITION, 0, 150);
    private static final Measure RISE = Measure.in("a difference of pressure", Unit.BAR, 0, 3);

    /** What is read off one tyre, and in words. */
    enum Of {
        TREAD("tread", Measure.TREAD), INNER("inner over outer", DIFFERENCE), OUTER("outer over inner", DIFFERENCE),
        MIDDLE("middle over edges", DIFFERENCE), EDGES("edges over middle", DIFFERENCE), SPREAD("spread", DIFFERENCE),
        HOT("hot pressure", Measure.PRESSURE), COLD("cold pressure", Measure.PRESSURE),
        GROWTH("pressure growth", RISE), ABOVE_TARGET("pressure over target", RISE),
        BELOW_TARGET("pressure under target", RISE);

        private final String id;
        private final Measure measure;

        Of(String id, Measure measure) {
            this.id = id;
            this.measure = measure;
        }

        private boolean difference() {
            return measure == DIFFERENCE || measure == RISE;
        }
    }

    /** The figure of that name, if there is one. */
    static Optional<TyreFigure> of(String written) {
        // A gap of the dictionary is followed by a colon: after a space Drools puts another one.
        String name = written.replace(':', ' ');
        int space = name.indexOf(' ');
        int in = name.lastIndexOf(IN);
        if (space < 0 || in < space) {
            return Optional.empty();
        }
        Optional<Place> place = Word.find(Place.class, name.substring(0, space));
        String asked = name.substring(space + 1, in);
        String symbol = name.substring(in + IN.length());
        Optional<Of> of = Arrays.stream(Of.values()).filter(figure -> figure.id.equals(asked)).findFirst();
        Optional<Place> against = Optional.empty();
        boolean compared = of.isEmpty() && asked.contains(OVER);
        if (compared) {
            int over = asked.indexOf(OVER);
            of = Arrays.stream(Of.values()).filter(figure -> figure.id.equals(asked.substring(0, over))).findFirst();
            against = Word.find(Place.class, asked.substring(over + OVER.length()));
        }
        if (place.isEmpty() || of.isEmpty() || compared && against.isEmpty()) {
            return Optional.empty();
        }
        boolean kelvin = symbol.equals(KELVIN);
        boolean warmth = of.get().measure.units().contains(Unit.CELSIUS) || of.get().measure == DIFFERENCE;
        boolean difference = of.get().difference() || compared;
        Optional<Unit> unit = kelvin ? Optional.of(Unit.POSITION) : Unit.withSymbol(symbol)
                .filter(it -> it.dimension() == (warmth ? Unit.Dimension.TEMPERATURE : Unit.Dimension.PRESSURE));
        return unit.isEmpty() || kelvin != (warmth && difference) ? Optional.empty()
                : Optional.of(new TyreFigure(written, place.get(), of.get(), against, unit.get()));
    }

    /** What a run is asked for it by. */
    Attribute attribute() {
        return Attribute.measured(name, unit, against.isPresent() ? unit == Unit.POSITION ? DIFFERENCE : RISE : of.measure);
    }

    /** What {@code run} reads, in the unit; NaN where it was not read. */
    double read(Case run) {
        double here = mean(run, place);
        double si = against.isEmpty() ? here : here - mean(run, against.get());
        return Double.isNaN(si) || unit == Unit.POSITION ? si
                : of.difference() || against.isPresent() ? si / unit.differenceToSi(1) : unit.fromSi(si);
    }

    private double mean(Case run, Place of) {
        double sum = 0;
        int read = 0;
        for (Wheel wheel : Wheel.values()) {
            boolean there = of.wheel().isPresent() ? of.wheel().get() == wheel : of.axle() == wheel.axle();
            double value = there ? one(run, wheel) : Double.NaN;
            if (!Double.isNaN(value)) {
                sum += value;
                read++;
            }
        }
        return read == 0 ? Double.NaN : Math.rint(sum / read * 1e6) / 1e6;
    }

    private double one(Case run, Wheel wheel) {
        TyreReading reading = run.tyres().get(wheel);
        if (of == Of.COLD) {
            return cold(run, wheel, reading);
        }
        if (reading == null) {
            return Double.NaN;
        }
        if (of.measure == Measure.TREAD || of.measure == DIFFERENCE) {
            return reading.hasTread() ? tread(reading.inner().get().si(), reading.middle().get().si(),
                    reading.outer().get().si()) : Double.NaN;
        }
        double hot = si(reading.hotPressure());
        double target = si(run.hotTarget(wheel.axle()));
        return switch (of) {
            case GROWTH -> hot - cold(run, wheel, reading);
            case ABOVE_TARGET -> hot - target;
            case BELOW_TARGET -> target - hot;
            default -> hot;
        };
    }

    private static double cold(Case run, Wheel wheel, TyreReading reading) {
        Optional<Quantity> read = reading == null ? Optional.empty() : reading.coldPressure();
        return si(read.or(() -> run.car().generic() ? Optional.empty() : run.car().pressureSetting(wheel)
                .map(Setting::now).filter(now -> now.unit().dimension() == Unit.Dimension.PRESSURE)));
    }

    private static double si(Optional<Quantity> quantity) {
        return quantity.isPresent() ? quantity.get().si() : Double.NaN;
    }

    private double tread(double inner, double middle, double outer) {
        double edges = (inner + outer) / 2;
        return switch (of) {
            case INNER -> inner - outer;
            case OUTER -> outer - inner;
            case MIDDLE -> middle - edges;
            case EDGES -> edges - middle;
            case SPREAD -> Math.max(inner, Math.max(middle, outer)) - Math.min(inner, Math.min(middle, outer));
            default -> (inner + middle + outer) / 3;
        };
    }

    /** What {@code run} says of it, in words. */
    String says(Case run) {
        double value = read(run);
        String what = "the " + place.id() + " " + of.id + against.map(other -> " over the " + other.id()).orElse("");
        return Double.isNaN(value) ? what + " was not read" : what + " is " + figure(value);
    }

    private String figure(double value) {
        boolean pressure = unit == Unit.BAR;
        return Figures.fixed(value, pressure ? 2 : 0) + " " + (unit == Unit.POSITION ? KELVIN : unit.symbol());
    }
}
