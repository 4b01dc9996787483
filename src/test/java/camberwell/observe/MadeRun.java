package camberwell.observe;

import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Phase;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.IntToDoubleFunction;

/**
 * A run on a made-up circuit whose car obeys the line of its understeer angle, with slides put in: what is to be found in
 * it is known. A test of the reading; of the idea it says nothing.
 */
final class MadeRun {

    static final double WHEELBASE = 2.55;
    static final double RATIO = 14;
    /** Understeer gradient, rad per m/s²: 1.50 degrees per g. */
    static final double GRADIENT = Math.toRadians(1.5) / 9.81;
    static final double YAW_DELAY = 0.010;
    private static final double GRIP = 11.5;
    private static final double BRAKING = 9.0;
    private static final double POWER = 4.0;
    private static final double TOP = 58;
    static final double DT = 0.01;

    final Circuit circuit;
    int laps = 8;
    boolean outLap = true;
    double noise = 1;
    long seed = 1;
    double bank;
    IntToDoubleFunction pace = lap -> 1;
    final List<Slide> slides = new ArrayList<>();
    /** Entry speed of a corner in a lap, as a factor. */
    final Map<List<Integer>, Double> entrySpeed = new HashMap<>();
    boolean stabs;
    /** The corner in which the foot comes off the throttle, from 1. */
    int liftIn;
    /** The corner at whose exit the left wheels run over a kerb, from 1. */
    int kerbIn;
    /** Whether the front meets its stops on the straight before the first corner. */
    boolean bottoms;
    double lockRear;
    double lockFront;
    double spinRear;
    /** Degrees of the steering wheel that are held to the left at full brake, against a pull. */
    double pulls;
    /** Degrees a second that the car weaves by on the brakes, and by which it wanders on straights. */
    double weaves;
    double wanders;
    /** Seconds that the steering is ahead of a sound car's. */
    double late;
    /** Understeer gradient, rad per m/s². */
    double gradient = GRADIENT;

    /** What a corner is called by its slowest speed: borders at 81 and 137 km/h. */
    final List<CornerSpeed> speeds = new ArrayList<>();

    MadeRun(Circuit circuit) {
        this.circuit = circuit;
        for (double[] corner : circuit.corners()) {
            double slowest = Math.sqrt(GRIP * corner[2]) * 3.6;
            speeds.add(slowest < 81 ? CornerSpeed.SLOW : slowest < 137 ? CornerSpeed.MEDIUM : CornerSpeed.FAST);
        }
    }

    static MadeRun on(Circuit circuit) {
        return new MadeRun(circuit);
    }

    MadeRun with(Slide slide) {
        slides.add(slide);
        return this;
    }

    /** One sample of everything, in SI units. */
    static final class Sample {
        double t;
        int lap;
        double distance;
        double lapDistance;
        double v;
        double steer;
        double ay;
        double felt;
        double ax;
        double r;
        double throttle;
        double brake;
        double x;
        double y;
        double[] wheels = new double[4];
        double[] extra = new double[16];
        double[] dampers = new double[4];
        double az = 9.81;
    }

    private double[] profile(double factor, int lap) {
        int n = (int) circuit.length();
        double[] v = new double[2 * n];
        for (int i = 0; i < 2 * n; i++) {
            double k = Math.abs(circuit.curvature(i % n));
            double grip = GRIP;
            for (int c = 0; c < circuit.corners().size(); c++) {
                double[] corner = circuit.corners().get(c);
                if (i % n >= corner[0] - 40 && i % n < corner[1]) {
                    double faster = entrySpeed.getOrDefault(List.of(c + 1, lap), 1.0);
                    grip *= faster * faster;
                }
            }
            v[i] = Math.min(TOP, factor * Math.sqrt(grip / Math.max(1e-6, k)));
        }
        for (int i = 2 * n - 2; i >= 0; i--) {
            v[i] = Math.min(v[i], Math.sqrt(v[i + 1] * v[i + 1] + 2 * BRAKING * factor * 1.0));
        }
        for (int i = 1; i < 2 * n; i++) {
            double left = Math.max(0.25, 1 - v[i - 1] / 75);
            v[i] = Math.min(v[i], Math.sqrt(v[i - 1] * v[i - 1] + 2 * POWER * left));
        }
        double[] lapOnly = new double[n + 1];
        for (int i = 0; i < n; i++) {
            lapOnly[i] = v[n + i];
        }
        lapOnly[n] = lapOnly[0];
        // Smoothed over some metres: no driver goes from brake to throttle at one point.
        double[] smooth = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            double sum = 0;
            for (int k = -6; k <= 6; k++) {
                sum += lapOnly[Math.floorMod(i + k, n)];
            }
            smooth[i] = sum / 13;
        }
        return smooth;
    }

    /** All samples at the inner step of 10 ms. */
    List<Sample> drive() {
        Random random = new Random(seed);
        List<Sample> samples = new ArrayList<>();
        double t = 100;
        double distance = 0;
        double heading = 0;
        double x = 0;
        double y = 0;
        int first = outLap ? 0 : 1;
        double n = circuit.length();
        double lastSlide = 0;
        double lastRear = 0;
        double lastYaw = 0;
        for (int lap = first; lap <= laps; lap++) {
            double factor = pace.applyAsDouble(lap) * (lap == 0 ? 0.72 : 1 + 0.004 * random.nextGaussian());
            double[] v = profile(factor, lap);
            Map<Integer, Boolean> begun = new HashMap<>();
            for (double s = 0; s < n;) {
                int i = (int) s;
                double part = s - i;
                double speed = v[i] * (1 - part) + v[Math.min(i + 1, (int) n)] * part;
                double ax = speed * (v[Math.min(i + 1, (int) n)] - v[i]);
                double kappa = circuit.curvature(s);
                Sample sample = new Sample();
                sample.t = t;
                sample.lap = lap;
                sample.distance = distance + s;
                sample.lapDistance = s;
                sample.v = speed;
                sample.ax = ax;
                double slide = wanted(s, lap, ax, kappa, true);
                double rear = wanted(s, lap, ax, kappa, false);
                lastSlide = follow(lastSlide, slide);
                lastRear = follow(lastRear, rear);
                sample.ay = kappa * speed * speed;
                double turned = Math.signum(kappa);
                double rearRate = 0;
                if (samples.size() > 0) {
                    rearRate = (lastRear - samples.get(samples.size() - 1).extra[0]) / DT;
                }
                sample.extra[0] = lastRear;
                sample.extra[1] = lastSlide;
                sample.r = kappa * speed - turned * rearRate;
                double yawRate = samples.isEmpty() ? 0 : (sample.r - lastYaw) / DT;
                lastYaw = sample.r;
                double lag = kappa * speed;
                // What the tyres carry and an accelerometer feels on a bank: the turn less a share of the weight.
                double carried = sample.ay * Math.cos(bank) - Math.signum(kappa) * 9.81 * Math.sin(bank)
                        * Math.min(1, Math.abs(kappa) * 100);
                double ahead = circuit.curvature(s + speed * late) - kappa;
                double linear = WHEELBASE * (sample.r / speed + ahead) + gradient * (carried + ahead * speed * speed)
                        + YAW_DELAY * clamp((lag - (samples.isEmpty() ? lag : samples.get(samples.size() - 1).extra[2])) / DT);
                sample.extra[2] = lag;
                sample.extra[3] = yawRate;
                sample.steer = RATIO * (linear + turned * (lastSlide + lastRear));
                double pedal = ax + 0.5;
                sample.throttle = Math.max(0, Math.min(1, pedal / (POWER * Math.max(0.25, 1 - speed / 75))));
                sample.brake = Math.max(0, Math.min(1, (-ax - 0.8) / BRAKING));
                if (stabs && lap > 0 && sample.throttle > 0.2 && Math.abs(kappa) > 0.008) {
                    // The foot comes down and off again twice a second.
                    sample.throttle = Math.sin(2 * Math.PI * 1.6 * t) > 0 ? Math.min(1, sample.throttle + 0.5)
                            : Math.max(0, sample.throttle - 0.3);
                }
                double alone = Math.abs(kappa) < 1e-9 ? 1 : 0;
                double restless = alone * (sample.brake > 0.15 ? Math.toRadians(weaves) * Math.sin(2 * Math.PI * 1.1 * t)
                        : sample.brake > 0 ? 0 : Math.toRadians(wanders) * (Math.sin(2 * Math.PI * 0.61 * t)
                                + 0.6 * Math.sin(2 * Math.PI * 1.03 * t + 1)));
                // The driver steers against it, a little late.
                sample.r += restless;
                carried += restless * speed;
                sample.steer += RATIO * Math.toRadians(pulls) / RATIO * sample.brake * alone
                        - RATIO * 0.8 * restless * (WHEELBASE + gradient * speed * speed) / speed;
                sample.felt = carried;
                if (liftIn > 0) {
                    double[] corner = circuit.corners().get(liftIn - 1);
                    double through = (s - corner[0]) / (corner[1] - corner[0]);
                    if (through > 0.05 && through < 0.7) {
                        sample.brake = 0;
                        sample.throttle = through < 0.35 ? 0.6 : 0;
                    }
                }
                heading += kappa * speed * DT;
                x += speed * Math.cos(heading) * DT;
                y += speed * Math.sin(heading) * DT;
                sample.x = x;
                sample.y = y;
                wheels(sample, lap);
                dampers(sample, s);
                samples.add(sample);
                s += speed * DT;
                t += DT;
            }
            distance += n;
        }
        return samples;
    }

    private static double clamp(double rate) {
        return Math.max(-4, Math.min(4, rate));
    }

    private static final double TRACK = 1.53;

    private void wheels(Sample sample, int lap) {
        double half = TRACK / 2;
        sample.wheels[0] = sample.v - sample.r * half;
        sample.wheels[1] = sample.v + sample.r * half;
        sample.wheels[2] = sample.v - sample.r * half;
        sample.wheels[3] = sample.v + sample.r * half;
        if (lockFront > 0 && sample.brake > 0.3 && Math.abs(circuit.curvature(sample.lapDistance)) < 1e-4) {
            sample.wheels[0] *= 1 - lockFront;
            sample.wheels[1] *= 1 - lockFront;
        }
        if (lockRear > 0 && sample.brake > 0.3 && Math.abs(circuit.curvature(sample.lapDistance)) < 1e-4) {
            sample.wheels[2] *= 1 - lockRear;
        }
        double kappa = circuit.curvature(sample.lapDistance);
        if (spinRear > 0 && sample.throttle > 0.4 && Math.abs(kappa) > 1e-3 && sample.v < 25) {
            sample.wheels[kappa > 0 ? 2 : 3] *= 1 + spinRear;
        }
    }

    private void dampers(Sample sample, double s) {
        double kerb = 0;
        double stop = 0;
        if (kerbIn > 0) {
            double[] corner = circuit.corners().get(kerbIn - 1);
            double through = (s - corner[0] - 0.74 * (corner[1] - corner[0])) / sample.v / 0.12;
            kerb = through > 0 && through < 1 ? 16 * Math.pow(Math.sin(Math.PI * through), 2) : 0;
        }
        if (bottoms) {
            double through = (s - 60) / sample.v / 0.25;
            stop = through > 0 && through < 1 ? 60 * Math.sin(Math.PI * through) : 0;
            sample.az = 9.81 * (1 + (through > 0.2 && through < 0.8 ? 2.2 * Math.sin(Math.PI * 8 * through) : 0));
        }
        for (int wheel = 0; wheel < 4; wheel++) {
            boolean left = wheel % 2 == 0;
            double roll = (left ? -0.6 : 0.6) * sample.ay;
            double pitch = (wheel < 2 ? -0.5 : 0.5) * sample.ax;
            sample.dampers[wheel] = Math.min(45, 20 + roll + pitch + (left ? kerb : 0) + (wheel < 2 ? stop : 0));
        }
    }


    private double follow(double is, double wanted) {
        return is + Math.max(-step, Math.min(step, wanted - is));
    }

    private double step = Math.toRadians(6) / 0.5 * DT;

    /** How far a slide is asked for here, rad; negative for the rear. */
    private double wanted(double s, int lap, double ax, double kappa, boolean front) {
        double wanted = 0;
        for (Slide slide : slides) {
            if (slide.degrees() > 0 != front || !slide.laps().test(lap) || lap == 0) {
                continue;
            }
            step = Math.toRadians(Math.abs(slide.degrees())) / slide.seconds() * DT;
            for (int c = 0; c < circuit.corners().size(); c++) {
                double[] corner = circuit.corners().get(c);
                boolean chosen = slide.corners().isEmpty() ? slide.speed() == null || speeds.get(c) == slide.speed()
                        : slide.corners().contains(c + 1);
                if (chosen && s >= corner[0] && s < corner[1] && slide.phase() == phase(s, corner)) {
                    wanted += Math.toRadians(slide.degrees());
                }
            }
        }
        return wanted;
    }

    /** The phase of the corner as the maker of the run sees it: by the way through it, with room between the phases. */
    static Phase phase(double s, double[] corner) {
        double part = (s - corner[0]) / (corner[1] - corner[0]);
        return part < 0.10 || part > 0.94 ? Phase.STRAIGHT : part < 0.22 ? Phase.ENTRY : part < 0.36 ? Phase.KERBS
                : part < 0.56 ? Phase.MID_CORNER : part < 0.72 ? Phase.KERBS : Phase.EXIT;
    }
}
