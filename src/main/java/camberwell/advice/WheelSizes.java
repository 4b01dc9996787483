package camberwell.advice;

import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Wheel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tells of a change of both wheels' camber or pressure, on a car that sets it wheel by wheel, where each wheel goes. */
final class WheelSizes {

    private WheelSizes() {
    }

    /** The change with the figures of each wheel; itself where the car sets both by one adjuster, or it is no such change. */
    static RankedChange told(Car car, RankedChange change) {
        Adjuster adjuster = change.change().adjuster();
        Size size = change.size();
        boolean both = (adjuster.adjustment() == Adjustment.CAMBER || adjuster.adjustment() == Adjustment.PRESSURE)
                && adjuster.wheel().isEmpty() && !car.adjusters().containsKey(adjuster) && size.wheels().isEmpty()
                && size.from().isPresent() && size.to().isPresent();
        if (!both) {
            return change;
        }
        double moved = Math.abs(size.to().get().value() - size.from().get().value());
        List<Size.WheelSize> wheels = new ArrayList<>();
        for (Wheel wheel : Wheel.values()) {
            Optional<Setting> setting = wheel.axle() == adjuster.axle().orElseThrow()
                    ? car.setting(adjuster.ofWheel(wheel)) : Optional.empty();
            if (setting.isPresent()) {
                int steps = (int) Math.max(1, Math.round(moved / setting.get().step().value()));
                Quantity now = setting.get().now();
                wheels.add(new Size.WheelSize(wheel, now, setting.get().moved(change.change().direction(), steps)));
            }
        }
        return change.sized(new Size(size.from(), size.to(), size.steps(), wheels, size.computation(), size.extent()));
    }
}
