package camberwell.model;

import camberwell.physics.motion.Channel;
import camberwell.physics.motion.History;
import camberwell.physics.motion.Manoeuvre;
import camberwell.physics.motion.Measures;
import camberwell.vocabulary.Axle;

/**
 * How a moving car behaved in one phase.
 *
 * @param understeer mean front less mean rear slip angle, degrees: what the driver steers beyond the turn itself;
 *     positive understeers
 * @param frontUse slip of the front tyres over that of their peak, mean
 * @param rearUse the same at the rear
 * @param frontLocking slip of the front wheel that brakes hardest over that of the peak, greatest; at 1 it locks
 * @param rearLocking the same at the rear
 * @param spinning slip of the driven wheel that spins most over that of the peak, greatest
 * @param work way of the steering, to and fro, degrees at the front wheels
 * @param torque mean torque about the steering axes over the mean lateral acceleration, N m per m/s²
 * @param disturbed variation of the yaw rate, degrees a second
 * @param leastLoad least load of a tyre over its load at rest
 * @param swing variation of the tyres' loads over their load at rest
 * @param thrown greatest vertical acceleration of the body, m/s²
 * @param frontTravel farthest that a front wheel comes up towards the body, less what the axle was raised, mm
 * @param rearTravel the same at the rear
 * @param heaved variation of the front and the rear travel together, mm
 * @param frontScrub mean sliding power of the front tyres, W
 * @param rearScrub the same at the rear
 * @param sideslip greatest angle at which the tail is out, degrees
 * @param wide farthest outside the course, m
 * @param lost whether the car was lost in it
 */
public record Figures(double understeer, double frontUse, double rearUse, double frontLocking, double rearLocking,
        double spinning, double work, double torque, double disturbed, double leastLoad, double swing, double thrown,
        double frontTravel, double rearTravel, double heaved, double frontScrub, double rearScrub, double sideslip, double wide,
        boolean lost) {

    static Figures of(CarModel car, History run, Manoeuvre.Part part) {
        double least = Double.POSITIVE_INFINITY;
        double swing = 0;
        for (int wheel = 0; wheel < 4; wheel++) {
            double standing = car.standing(wheel);
            least = Math.min(least, Measures.least(run, part, Channel.load(wheel)) / standing);
            swing += Measures.variation(run, part, Channel.load(wheel)) / standing / 4;
        }
        return new Figures(Math.toDegrees(Measures.mean(run, part, Channel.UNDERSTEER)),
                Measures.mean(run, part, Channel.FRONT_SATURATION), Measures.mean(run, part, Channel.REAR_SATURATION),
                Measures.most(run, part, Channel.FRONT_LOCKING), Measures.most(run, part, Channel.REAR_LOCKING),
                Measures.most(run, part, Channel.SPINNING), Math.toDegrees(Measures.steeringWork(run, part)),
                Measures.mean(run, part, Channel.STEERING_TORQUE)
                        / Math.max(1, Math.abs(Measures.mean(run, part, Channel.LATERAL))),
                Math.toDegrees(Measures.variation(run, part, Channel.YAW_RATE)), least, swing,
                Measures.most(run, part, Channel.VERTICAL),
                1000 * (Measures.most(run, part, Channel.FRONT_TRAVEL) - car.raised(Axle.FRONT)),
                1000 * (Measures.most(run, part, Channel.REAR_TRAVEL) - car.raised(Axle.REAR)),
                1000 * (Measures.variation(run, part, Channel.FRONT_TRAVEL)
                        + Measures.variation(run, part, Channel.REAR_TRAVEL)),
                Measures.mean(run, part, Channel.FRONT_SCRUB),
                Measures.mean(run, part, Channel.REAR_SCRUB),
                -Math.toDegrees(Measures.least(run, part, Channel.SIDESLIP)),
                -Measures.least(run, part, Channel.OFFSET), run.lost() && part.holds(run, run.size() - 1));
    }
}
