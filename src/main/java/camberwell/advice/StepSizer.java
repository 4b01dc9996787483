package camberwell.advice;

import camberwell.car.Setting;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Sizes what is set in clicks, positions and rates: a modest shift that a driver can feel and that can be taken back.
 * The shifts are common practice, no source.
 */
final class StepSizer {

    private static final int MOST_STEPS = 3;
    private static final double STRONG = 1.5;
    private static final double MODEST_BIAS_PERCENT = 1.0;

    private StepSizer() {
    }

    /** How many of the car's steps a modest shift of brake balance is, rounded down but one at least. */
    static int modestBias(Setting setting) {
        return (int) Math.max(1, Math.floor(MODEST_BIAS_PERCENT / setting.step().value() + 1e-9));
    }

    static Size size(Change change, Setting setting, List<Complaint> complaints) {
        List<String> computation = new ArrayList<>();
        Adjuster adjuster = change.adjuster();
        double aim = switch (adjuster.adjustment()) {
            case BRAKE_BIAS -> MODEST_BIAS_PERCENT;
            case RIDE_HEIGHT -> setting.now().unit() == Unit.INCH ? 0.1 : 2.5;
            case SPRINGS -> setting.now().unit() == Unit.POSITION ? 0 : setting.now().value() / 10;
            default -> 0;
        };
        int modest = adjuster == Adjuster.BRAKE_BIAS ? modestBias(setting)
                : (int) Math.max(1, Math.round(aim / setting.step().value()));
        int steps = aim > 0 ? Math.min(MOST_STEPS, modest) : 1;
        if (aim > 0) {
            computation.add("a modest shift is about " + setting.now().withValue(aim).text(setting.decimals())
                    + "; the car moves in steps of " + setting.step());
        } else if (complaints.stream().anyMatch(complaint -> complaint.weight() >= STRONG)
                && adjuster.adjustment().damping()) {
            steps = 2;
            computation.add("two clicks, since the complaint is strong; one would be hard to feel");
        } else {
            computation.add("one step of the car's own, " + setting.step().text(setting.decimals())
                    + ", then run again");
        }
        steps = Math.min(steps, setting.stepsLeft(change.direction()));
        return new Size(Optional.of(setting.now()), Optional.of(setting.moved(change.direction(), steps)), steps,
                List.of(), computation);
    }
}
