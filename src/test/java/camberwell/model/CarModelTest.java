package camberwell.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Trackside;
import camberwell.car.Car;
import camberwell.car.Dimension;
import camberwell.physics.CornerPhase;
import camberwell.physics.VehicleModel;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Surface;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class CarModelTest {

    private static VehicleModel vehicle(Car car) {
        return CarModel.of(car, Surface.DRY).orElseThrow().vehicle(CornerPhase.MID_CORNER);
    }

    private static Car set(Car car, Adjuster adjuster, String setting) {
        return car.with(Map.of(adjuster, Quantity.parse(setting).orElseThrow()));
    }

    @Test
    @DisplayName("a position of the bar adds what the car's file says that it adds")
    void bar() {
        double perDegree = 180 / Math.PI;
        assertEquals(550 * perDegree, vehicle(DemoCars.CORVANE).front().barRate(), 0.01);
        assertEquals((550 - 2 * 90) * perDegree,
                vehicle(set(DemoCars.CORVANE, Adjuster.FRONT_ANTI_ROLL_BAR, "2")).front().barRate(), 0.01);
        Car thereAndBack = set(set(DemoCars.CORVANE, Adjuster.FRONT_ANTI_ROLL_BAR, "7"), Adjuster.FRONT_ANTI_ROLL_BAR,
                "4");
        assertEquals(550 * perDegree, vehicle(thereAndBack).front().barRate(), 0.01);
    }

    @Test
    @DisplayName("the wheel rate follows the spring, since the motion ratio stays as it is")
    void springs() {
        assertEquals(81_000.0 * 100 / 90,
                vehicle(set(DemoCars.CORVANE, Adjuster.FRONT_SPRINGS, "100 N/mm")).front().wheelRate(), 0.1);
        assertEquals(121_000.0 * 950 / 900,
                vehicle(set(DemoCars.TESSEL, Adjuster.REAR_SPRINGS, "950 lb/in")).rear().wheelRate(), 0.1);
    }

    @Test
    @DisplayName("a hole of the wing adds its load, which grows with the square of the speed")
    void wing() {
        double at200 = Math.pow(200 / 3.6, 2);
        assertEquals(1100, at200 * vehicle(DemoCars.CORVANE).rear().downforce(), 1e-3);
        assertEquals(1100 + 2 * 90,
                at200 * vehicle(set(DemoCars.CORVANE, Adjuster.REAR_WING, "6")).rear().downforce(), 1e-3);
    }

    @Test
    @DisplayName("a differential holds its ramps' torque on the power, and less of it off the power")
    void differential() {
        CarModel car = CarModel.of(DemoCars.CORVANE, Surface.DRY).orElseThrow();
        assertEquals(400, car.vehicle(CornerPhase.EXIT).rear().lockingTorque(), 1e-3);
        assertTrue(car.vehicle(CornerPhase.ENTRY).rear().lockingTorque() < 400);
        CarModel more = car.with(Adjuster.DIFFERENTIAL_COAST, new Quantity(3, Unit.POSITION)).orElseThrow();
        assertEquals(400, more.vehicle(CornerPhase.EXIT).rear().lockingTorque(), 1e-3);
        assertEquals(60, more.vehicle(CornerPhase.ENTRY).rear().lockingTorque()
                - car.vehicle(CornerPhase.ENTRY).rear().lockingTorque(), 1e-3);
        CarModel preloaded = car.with(Adjuster.DIFFERENTIAL_PRELOAD, new Quantity(90, Unit.NEWTON_METRE)).orElseThrow();
        assertEquals(430, preloaded.vehicle(CornerPhase.EXIT).rear().lockingTorque(), 1e-3);
    }

    @Test
    @DisplayName("toe in millimetres at the rim is an angle to the model")
    void toeInMillimetres() {
        // sin(toe) = 0.5 mm over a 13 in rim: 330.2 mm.
        assertEquals(-Math.asin(0.5 / 330.2), vehicle(DemoCars.TESSEL).front().toe(), 1e-12);
    }

    @Test
    @DisplayName("a car's file that is short of dimensions borrows them from a class, and the model says from which")
    void classDefaults() {
        assertTrue(CarModel.of(DemoCars.CORVANE, Surface.DRY).orElseThrow().lent().isEmpty());
        Map<Dimension, Quantity> few = new EnumMap<>(DemoCars.CORVANE.dimensions());
        few.keySet().retainAll(Set.of(Dimension.WHEELBASE, Dimension.MASS, Dimension.FRONT_WEIGHT));
        CarModel model = CarModel.of(DemoCars.CORVANE.withDimensions(few), Surface.DRY).orElseThrow();
        assertEquals("rear-drive competition car", model.lent().orElseThrow().by());
        assertTrue(model.with(Adjuster.FRONT_ANTI_ROLL_BAR, new Quantity(5, Unit.POSITION)).orElseThrow()
                .vehicle(CornerPhase.MID_CORNER).front().barRate()
                > model.vehicle(CornerPhase.MID_CORNER).front().barRate());
    }

    private static String lentTo(String adjusters, String tyres, String dimensions) {
        Car car = Trackside.yaml("car: {name: a, drive: all, adjusters: {front-anti-roll-bar: {now: 2, min: 1, max: 5, "
                + "step: 1}" + adjusters + "}, tyres: {front: {" + tyres + "}}, dimensions: {wheelbase: 2.7 m, front-weight: "
                + "56 %, " + dimensions + "}}\n").car();
        return CarModel.of(car, Surface.DRY).orElseThrow().lent().orElseThrow().by();
    }

    /** A bar that can be set makes no racing car: weight, wings and tyres tell what it was built for. */
    @Test
    @DisplayName("a saloon of 1600 kg with a bar to set borrows from road-based cars, on slicks or with a wing from racing ones")
    void roadBased() {
        String road = "all-wheel-drive road-based track car";
        assertEquals(road, lentTo("", "", "mass: 1600 kg"));
        assertEquals(road, lentTo("", "window: [60 °C, 90 °C]", "mass: 980 kg"));
        assertEquals(road, lentTo("", "window: [75 °C, 90 °C]", "mass: 1400 kg, tyre-grip: 115 %"));
        String racing = "all-wheel-drive competition car";
        assertEquals(racing, lentTo("", "window: [80 °C, 105 °C]", "mass: 1300 kg"));
        assertEquals(racing, lentTo("", "", "mass: 1300 kg, tyre-grip: 140 %"));
        assertEquals(racing, lentTo("", "", "mass: 600 kg"));
        assertEquals(racing, lentTo(", rear-wing: {now: 3, min: 1, max: 5, step: 1}", "", "mass: 1400 kg"));
    }

    @Test
    @DisplayName("what was borrowed is told by the words of a car's file")
    void borrowed() {
        Map<Dimension, Quantity> few = new EnumMap<>(DemoCars.CORVANE.dimensions());
        few.keySet().removeAll(Set.of(Dimension.CG_HEIGHT, Dimension.FRONT_TRACK));
        assertEquals("cg-height, front-track", CarModel.of(DemoCars.CORVANE.withDimensions(few), Surface.DRY).orElseThrow()
                .lent().orElseThrow().list());
    }

    @Test
    @DisplayName("without wheelbase, mass or front weight there is no figure")
    void noFigure() {
        for (Dimension needed : new Dimension[] {Dimension.WHEELBASE, Dimension.MASS, Dimension.FRONT_WEIGHT}) {
            Map<Dimension, Quantity> without = new EnumMap<>(DemoCars.CORVANE.dimensions());
            without.remove(needed);
            assertTrue(CarModel.of(DemoCars.CORVANE.withDimensions(without), Surface.DRY).isEmpty(), needed.id());
        }
    }

    @Test
    @DisplayName("axles that weigh more than the car are no car: no figure rather than a wrong one")
    void noCar() {
        Map<Dimension, Quantity> heavy = new EnumMap<>(DemoCars.TESSEL.dimensions());
        heavy.put(Dimension.FRONT_UNSPRUNG, new Quantity(300, Unit.KILOGRAM));
        assertTrue(CarModel.of(DemoCars.TESSEL.withDimensions(heavy), Surface.DRY).isEmpty());
    }

    @Property(tries = 150)
    @Label("whatever plausible dimensions a file gives, the model answers with numbers or not at all")
    void numbersOrNothing(@ForAll("dimensions") Map<Dimension, Quantity> dimensions, @ForAll Drive drive,
            @ForAll CornerPhase phase) {
        Car car = new Car("any", Optional.of(drive), DemoCars.CORVANE.adjusters(), DemoCars.CORVANE.tyres(), dimensions,
                false);
        CarModel.of(car, Surface.DRY).flatMap(model -> Behaviour.Question.about(model, phase, 30)
                .flatMap(question -> Behaviour.of(model, question))).ifPresent(behaviour -> {
                    assertTrue(Double.isFinite(behaviour.limitBalance()));
                    assertTrue(Double.isFinite(behaviour.understeerGradient()));
                    assertTrue(Double.isFinite(behaviour.near().load().sum()));
                });
    }

    @Provide
    Arbitrary<Map<Dimension, Quantity>> dimensions() {
        Arbitrary<Map<Dimension, Quantity>> all = Arbitraries.just(new EnumMap<>(Dimension.class));
        for (Dimension dimension : Dimension.values()) {
            Arbitrary<Double> value = Arbitraries.doubles().between(dimension.least(), dimension.most()).ofScale(3);
            all = Combinators.combine(all, value, Arbitraries.of(true, true, false)).as((map, number, given) -> {
                boolean needed = dimension == Dimension.WHEELBASE || dimension == Dimension.MASS
                        || dimension == Dimension.FRONT_WEIGHT;
                Map<Dimension, Quantity> more = new EnumMap<>(Dimension.class);
                more.putAll(map);
                if (given || needed) {
                    more.put(dimension, new Quantity(number, dimension.unit()));
                }
                return more;
            });
        }
        return all;
    }
}
