package camberwell.advice;

import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.model.BrakeBalance;
import camberwell.units.Figures;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Sizes a shift of brake balance: half a per cent to one at a time, either way (common practice, no source). Where the
 * car's file tells, the share of the braking force at the front is held against the share of the load there at hard
 * braking: an axle locks first that has more of the force than of the load (T. D. Gillespie, Fundamentals of Vehicle
 * Dynamics, SAE, 1992, ch. 3, cited from memory), and rearward stops short of a rear axle that does, unless the driver saw the
 * fronts lock.
 */
final class BrakeSizer {

    private static final double LEAST_PERCENT = 0.5;
    private static final double MOST_PERCENT = 1.0;
    private static final double HAIR = 1e-9;

    private final Car car;
    private final Optional<BrakeBalance> balance;

    BrakeSizer(Car car, Surface surface) {
        this.car = car;
        this.balance = BrakeBalance.of(car, surface);
    }

    /** @param again whether it was moved so before, and locks still: half a per cent was too little */
    Sized size(Change change, Setting setting, List<Complaint> helped, boolean again) {
        boolean rearward = change.direction() == Direction.REARWARD;
        List<String> computation = new ArrayList<>();
        // Rear wheels that lock turn a car round, however slightly: the whole of what may be moved at once.
        boolean rearsLock = helped.stream().anyMatch(it -> it.symptom() == Symptom.REAR_LOCKING);
        boolean frontsLock = helped.stream().anyMatch(it -> it.symptom() == Symptom.FRONT_LOCKING && it.reported());
        double aim = Complaint.strong(helped) || rearsLock || again ? MOST_PERCENT : LEAST_PERCENT;
        if (balance.isPresent()) {
            double spare = balance.get().sparePercent();
            // Of rear wheels that were seen to lock the figures say nothing better than the driver.
            boolean frontsFirst = !rearward && !rearsLock && spare > 0;
            computation.add(frontsFirst ? balance.get().text() + ", so in a straight line the fronts lock "
                    + "first: look for what else unsettles the rear" : balance.get().text());
            if (rearward && spare <= 0 && frontsLock) {
                computation.add("by that the rears would lock first, but the fronts were seen to: what the file counts is not "
                        + "what the brakes do, so no more than this, tried in a straight line first");
            } else if (rearward && spare <= 0) {
                return new Sized.Impossible(balance.get().text() + ", so the rear wheels would lock first: check the brake bias "
                        + "in the car's file before any of it is moved rearward");
            }
            double balanced = rearward ? Math.min(spare, spareInTheDry()) : Math.max(aim, -spare);
            boolean seen = rearward && frontsLock && again;
            aim = seen ? aim : Math.max(LEAST_PERCENT, Math.min(MOST_PERCENT, balanced));
        } else if (setting.now().unit().dimension() == Unit.Dimension.RATIO) {
            computation.add(BrakeBalance.unknown(car));
        }
        if (setting.now().unit().dimension() != Unit.Dimension.RATIO) {
            aim = setting.step().value();
        }
        int most = Math.max(1, Bounds.steps(change.adjuster(), setting));
        int steps = Math.min(Math.max(1, Math.min(most, steps(aim, setting))), setting.stepsLeft(change.direction()));
        Quantity to = setting.moved(change.direction(), steps);
        if (rearward && !frontsLock && balance.isPresent() && balance.get().at(to).sparePercent() < 0) {
            return new Sized.Impossible(balance.get().text() + "; a step of " + setting.step() + " rearward would make the "
                    + "rear wheels lock first");
        }
        List<String> extent = new ArrayList<>();
        extent.add(Figures.fill("half a per cent to one at a time, either way: %d step%s of %s", steps, steps == 1 ? "" : "s",
                setting.step()));
        if (rearsLock && !rearward) {
            balance.map(now -> howMany(now, setting, steps)).ifPresent(extent::add);
        }
        computation.addAll(extent);
        return new Sized.Possible(new Size(Optional.of(setting.now()), Optional.of(to), steps, List.of(),
                List.copyOf(computation), List.copyOf(extent)));
    }

    /** What a wet road leaves to spare is gone as it dries: a step on it is no longer than in the dry. */
    private double spareInTheDry() {
        return BrakeBalance.of(car, Surface.DRY).map(BrakeBalance::sparePercent).orElse(Double.POSITIVE_INFINITY);
    }

    /**
     * Where the balance of a car whose rears lock should end up, and in how many such changes. Each is small, since one that
     * goes too far locks the fronts and lengthens the stop; how many there are to be is what the figures are good for.
     */
    private static String howMany(BrakeBalance now, Setting setting, int steps) {
        if (now.sparePercent() >= 0) {
            return "by these figures the fronts would lock first already, but the rears were seen to; the engine's braking and "
                    + "the bite of the pads are not in them. Go on so, a change a run, until the fronts lock first";
        }
        int all = setting.stepsLeft(Direction.FORWARD);
        int needed = 1;
        while (needed < all && now.at(setting.moved(Direction.FORWARD, needed)).sparePercent() < 0) {
            needed++;
        }
        String there = setting.moved(Direction.FORWARD, needed).text(setting.decimals());
        int changes = (needed + steps - 1) / steps;
        String count = changes == 1 ? "this change" : "some " + changes + " such changes";
        return now.at(setting.moved(Direction.FORWARD, needed)).sparePercent() < 0
                ? "by these figures the rears lock first up to " + there + ", where the adjuster ends, " + count + " away: go "
                + "that way a change a run until the fronts lock first, and have the brakes themselves looked at"
                : changes == 1 ? "by these figures the fronts lock first from " + there + " on: this change should do"
                : "by these figures the fronts lock first from " + there + " on, " + count + " away: go that way a change a run, "
                + "and stop as soon as the fronts do lock first";
    }

    /** No more than is aimed at, unless that is less than half a per cent. */
    private static int steps(double aim, Setting setting) {
        double step = setting.step().value();
        int steps = (int) Math.floor(aim / step + HAIR);
        boolean small = setting.now().unit().dimension() == Unit.Dimension.RATIO && steps * step < LEAST_PERCENT - HAIR;
        return small && (steps + 1) * step <= MOST_PERCENT + HAIR ? steps + 1 : steps;
    }
}
