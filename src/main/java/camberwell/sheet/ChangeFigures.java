package camberwell.sheet;

import camberwell.advice.Advice;
import camberwell.advice.RankedChange;
import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.model.Behaviour;
import camberwell.model.CarModel;
import camberwell.model.Characteristic;
import camberwell.model.ProvingGround;
import camberwell.physics.CornerPhase;
import camberwell.physics.Wheels;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Audience;
import camberwell.vocabulary.Axle;
import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The drawings of one change: its travel, its geometry, its score, and what the handling model says of it. */
final class ChangeFigures {

    /** The speed of the constant-speed test, m/s: 110 km/h, as where nothing else is said. */
    private static final double SPEED = 110 / 3.6;

    private ChangeFigures() {
    }

    static List<DomContent> of(String id, RankedChange change, Advice advice, Audience audience) {
        List<DomContent> drawings = new ArrayList<>();
        Car car = advice.run().car();
        Adjuster adjuster = change.change().adjuster();
        Optional<Quantity> from = change.size().from();
        Optional<Quantity> to = change.size().to();
        Optional<Setting> setting = car.setting(adjuster);
        if (from.isPresent() && to.isPresent()) {
            setting.filter(it -> it.now().unit().dimension() == to.get().unit().dimension()).ifPresent(it -> drawings.add(
                    TravelFigure.of(id + "-travel", adjuster.spoken(), it, from.get(), to.get())));
            if (to.get().unit().dimension() == Unit.DEGREE.dimension()) {
                geometry(id, change, advice, drawings);
            }
        }
        if (audience != Audience.NEWCOMER) {
            drawings.add(ScoreFigure.of(id + "-score", change.score()));
            model(id, change, advice).ifPresent(drawings::add);
            motion(id, change, advice).ifPresent(drawings::add);
        }
        return drawings;
    }

    private static void geometry(String id, RankedChange change, Advice advice, List<DomContent> drawings) {
        Adjuster adjuster = change.change().adjuster();
        Quantity from = change.size().from().orElseThrow();
        Quantity to = change.size().to().orElseThrow();
        if (adjuster.kind() == Adjuster.Kind.TOE) {
            Axle axle = adjuster == Adjuster.FRONT_TOE ? Axle.FRONT : Axle.REAR;
            drawings.add(ToeFigure.of(id + "-toe", axle, from, to, advice.run().car().tyres(axle).rim()));
        } else if (adjuster.kind() == Adjuster.Kind.CAMBER) {
            Axle axle = adjuster.axle().orElseThrow();
            drawings.add(CamberFigure.of(id + "-camber", axle, from, to, corner(axle, change, advice)));
        }
    }

    private static Optional<CamberFigure.InCorner> corner(Axle axle, RankedChange change, Advice advice) {
        return advice.predictions().of(change).map(predicted -> new CamberFigure.InCorner(
                outer(axle, predicted.prediction().before()), outer(axle, predicted.prediction().after())));
    }

    /** The model's turn goes left, so the right wheel is the outer one. */
    private static double outer(Axle axle, Behaviour behaviour) {
        Wheels camber = behaviour.near().camber();
        return Math.toDegrees(axle == Axle.FRONT ? camber.frontRight() : camber.rearRight());
    }

    private static Optional<DomContent> model(String id, RankedChange change, Advice advice) {
        if (advice.predictions().of(change).isEmpty()) {
            return Optional.empty();
        }
        return CarModel.of(advice.run().car(), advice.run().conditions().surface()).flatMap(before ->
                before.with(change.change().adjuster(), change.size().to().orElseThrow()).map(after -> SteerFigure.of(
                        id + "-steer", Characteristic.of(before, CornerPhase.MID_CORNER, SPEED, 0),
                        Characteristic.of(after, CornerPhase.MID_CORNER, SPEED, 0))));
    }

    private static Optional<DomContent> motion(String id, RankedChange change, Advice advice) {
        Optional<Quantity> to = change.size().to();
        return to.isEmpty() ? Optional.empty() : CarModel.of(advice.run().car(), advice.run().conditions().surface())
                .flatMap(before -> before.withInMotion(change.change().adjuster(), to.get()).map(after ->
                        MotionFigure.of(id + "-motion", new ProvingGround(before), after, SPEED)));
    }
}
