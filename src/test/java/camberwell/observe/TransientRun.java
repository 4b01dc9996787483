package camberwell.observe;

import camberwell.physics.motion.Course;
import camberwell.physics.motion.Driver;
import camberwell.physics.motion.Motion;
import camberwell.physics.motion.MovingCar;
import camberwell.physics.motion.Pace;
import java.util.ArrayList;
import java.util.List;

/**
 * A run of the transient model: four wheels on tyres that saturate, body, dampers and a driver who steers. What slides in
 * it is read off the slip angles of its tyres, which no log has.
 */
final class TransientRun {

    static final double RATIO = 14;

    /** A corner: straight before it, clothoid in, arc, clothoid out, m; positive radii to the left. */
    record Bend(double before, double ease, double arc, double radius) {
    }

    static final List<Bend> SEVEN = List.of(new Bend(320, 22, 26, 27), new Bend(380, 34, 60, -72),
            new Bend(230, 60, 90, 165), new Bend(300, 22, 34, 24), new Bend(240, 36, 62, 78), new Bend(230, 24, 28, -26),
            new Bend(420, 60, 80, -155));

    final List<Bend> bends;
    private final MovingCar car;
    private final int laps;
    private final Pace.Demand demand;
    final List<MadeRun.Sample> samples = new ArrayList<>();
    /** Understeer angle of the tyres themselves: front less rear slip angle, rad, towards the turn. */
    final List<Double> understeer = new ArrayList<>();
    boolean lost;
    double length;

    TransientRun(MovingCar car, int laps, Pace.Demand demand) {
        this(car, laps, demand, SEVEN);
    }

    TransientRun(MovingCar car, int laps, Pace.Demand demand, List<Bend> bends) {
        this.bends = List.copyOf(bends);
        this.car = car;
        this.laps = laps;
        this.demand = demand;
        drive();
    }

    private Course course() {
        List<Double> way = new ArrayList<>();
        List<Double> curvature = new ArrayList<>();
        double s = 0;
        for (int lap = 0; lap < laps; lap++) {
            for (Bend bend : bends) {
                s += bend.before;
                way.add(s);
                curvature.add(0.0);
                way.add(s + bend.ease);
                curvature.add(1 / bend.radius);
                way.add(s + bend.ease + bend.arc);
                curvature.add(1 / bend.radius);
                s += 2 * bend.ease + bend.arc;
                way.add(s);
                curvature.add(0.0);
            }
            s += 150;
            length = lap == 0 ? s : length;
        }
        way.add(s + 50);
        curvature.add(0.0);
        return new Course(way.stream().mapToDouble(it -> it).toArray(),
                curvature.stream().mapToDouble(it -> it).toArray());
    }

    private void drive() {
        Course course = course();
        Pace pace = Pace.of(course, demand, 55, 100);
        Motion motion = new Motion(car, course, 45, new Driver(car, pace));
        double mass = car.vehicle().mass();
        double radius = car.vehicle().wheelRadius();
        int step = 0;
        while (motion.distance() < laps * length && motion.time() < laps * 200 && !lost) {
            if (step++ % 10 == 0) {
                add(motion, mass, radius);
            }
            motion.step();
            lost = Math.abs(motion.sideslip()) > 0.7 || Math.abs(motion.offset()) > 8 || motion.speed() < 5;
        }
    }

    private void add(Motion motion, double mass, double radius) {
        MadeRun.Sample sample = new MadeRun.Sample();
        sample.t = motion.time();
        sample.lap = (int) (motion.distance() / length) + 1;
        sample.distance = motion.distance();
        sample.lapDistance = motion.distance() % length;
        sample.v = motion.speed();
        sample.steer = RATIO * motion.steer();
        sample.ay = motion.lateral();
        sample.felt = motion.lateral();
        sample.ax = motion.longitudinal();
        sample.r = motion.yawRate();
        sample.throttle = Math.max(0, Math.min(1, motion.drive() / radius / mass / demand.power()));
        sample.brake = Math.max(0, Math.min(1, motion.brake() / radius / mass / demand.braking()));
        for (int wheel = 0; wheel < 4; wheel++) {
            sample.wheels[wheel] = motion.spin(wheel) * radius;
        }
        samples.add(sample);
        double front = (motion.slip(0) + motion.slip(1)) / 2;
        double rear = (motion.slip(2) + motion.slip(3)) / 2;
        understeer.add(Math.signum(motion.lateral()) * (front - rear));
    }
}
