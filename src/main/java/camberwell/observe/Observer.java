package camberwell.observe;

import camberwell.car.Car;
import camberwell.car.Dimension;
import camberwell.channel.Channel;
import camberwell.channel.ChannelMap;
import camberwell.channel.Kind;
import camberwell.channel.Limits;
import camberwell.channel.Log;
import camberwell.problem.ProblemsException;
import camberwell.run.Report;
import camberwell.units.Figures;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads a run off its log: from motion to laps, corners and phases, and from those to complaints. */
public final class Observer {

    /** Where the car's file says nothing: common practice, no source. */
    private static final double WHEELBASE = 2.6;
    private static final double TRACK = 1.55;
    /** Ratios of a steering that are none: judgement, no source. */
    private static final double LEAST_RATIO = 0.7;
    private static final double MOST_RATIO = 45;

    /** A slide that comes round at least this share as clearly as it slides is a snap: judgement, no source. */
    private static final double SNAPS = 0.4;

    private final Log log;
    private final boolean sidesKnown;
    private final Car car;
    private final ChannelMap channels;
    private final Limits limits;
    private final Trace trace;
    private final Dampers dampers;
    private final ChannelDoubts channelDoubts;
    private final List<String> doubts = new ArrayList<>();

    private Observer(Log log, boolean sidesKnown, Car car, ChannelMap channels, Limits limits) {
        this.log = log;
        this.sidesKnown = sidesKnown;
        this.car = car;
        this.channels = channels;
        this.limits = limits;
        this.trace = together(log, limits);
        this.dampers = new Dampers(trace, limits);
        this.channelDoubts = new ChannelDoubts(trace, limits);
    }

    /** The motion by channels that are on one clock. */
    private static Trace together(Log log, Limits limits) {
        Trace all = new Trace(log);
        Optional<ChannelDoubts.Apart> apart = new ChannelDoubts(all, limits).apart();
        apart.ifPresent(it -> {
            log.doubt(it.doubt());
            log.drop(Channel.of(it.wrong()));
        });
        return apart.isEmpty() ? all : new Trace(log);
    }

    /**
     * What the log shows.
     *
     * @param log with its units and signs settled
     * @param sidesKnown whether left and right are certain
     * @throws ProblemsException if there is no lap or no corner to read anything from
     */
    public static Observed observe(Log log, boolean sidesKnown, Car car, ChannelMap channels, Limits limits) {
        return observe(log, sidesKnown, Optional.empty(), car, channels, limits);
    }

    /**
     * What the log shows, held against an earlier run.
     *
     * @param earlier a log of the same car, circuit and logger, with its units and signs settled
     */
    public static Observed observe(Log log, boolean sidesKnown, Optional<Log> earlier, Car car, ChannelMap channels,
            Limits limits) {
        Optional<MappedRun> before = earlier.map(it -> {
            Observer observer = new Observer(it, sidesKnown, car, channels, limits);
            return observer.mapped(observer.laps(new LapFinder(observer.trace, limits).find()));
        });
        return new Observer(log, sidesKnown, car, channels, limits).observe(before);
    }

    private List<Lap> laps(List<Lap> all) {
        List<Lap> laps = all.stream().filter(Lap::counts).toList();
        if (laps.isEmpty()) {
            throw new ProblemsException(log.problem(all.isEmpty() ? "the log is shorter than five seconds"
                    : "there is no whole lap in it: lap " + all.get(all.size() - 1).number() + " is left out ("
                            + all.get(all.size() - 1).leftOut().orElse("") + "); log at least one lap from line to line"));
        }
        return laps;
    }

    private MappedRun mapped(List<Lap> laps) {
        CornerMap map = CornerMap.of(trace, laps, limits);
        if (map.corners().isEmpty()) {
            throw new ProblemsException(log.problem("no corner is found in it: nowhere does the path bend so "
                    + "that the car is asked for " + Figures.fixed(limits.of("corners.turn-on"), 0) + " m/s² to the side; "
                    + "are the units of speed, yaw rate and lateral acceleration right?"));
        }
        boolean[] struck = dampers.strikes();
        List<LapPhases> phases = laps.stream()
                .map(lap -> LapPhases.of(trace, map.way(trace, lap, limits), map, struck, limits)).toList();
        return new MappedRun(trace, laps, map, phases, trace.hasSteering() ? line() : Optional.empty(), limits);
    }

    private Observed observe(Optional<MappedRun> earlier) {
        LapFinder finder = new LapFinder(trace, limits);
        List<Lap> all = finder.find();
        List<Lap> laps = laps(all);
        MappedRun run = mapped(laps);
        CornerMap map = run.map();
        List<LapPhases> phases = run.phases();
        Optional<ReferenceLine> line = run.line();
        Slides slides = new Slides(trace, line, phases, map, limits);
        Habits habits = new Habits(new Driving(trace, phases, map, slides.beyond(), limits), laps, map, limits);
        Coverage coverage = new Coverage(trace, phases);
        Complaints complaints = new Complaints(laps, map, sidesKnown, limits, habits, coverage);
        List<Report> reports = new ArrayList<>(balance(slides, complaints));
        WheelSlip slip = new WheelSlip(trace, phases, line, toFront(), track(), limits);
        WheelDoubts wheels = new WheelDoubts(trace, slip, car, limits);
        doubts.addAll(wheels.doubts());
        if (!wheels.late()) {
            reports.addAll(WheelComplaints.of(slip, car, phases, complaints, limits));
        }
        if (dampers.there() && line.isPresent()) {
            reports.addAll(complaints.of(Dampers.kerbs(slides.measure(Symptom.UNDERSTEER)),
                    Dampers.afterStrikes(phases, trace, slides.beyond(), limits)));
        }
        for (Axle axle : Axle.values()) {
            reports.addAll(complaints.of(dampers.bottoming(axle), dampers.stops(axle, phases)));
        }
        Optional<MappedRun> before = earlier.filter(it -> comparable(run, it));
        reports.addAll(answers(run, before, slides, complaints));
        TyreTrace tyres = new TyreTrace(trace, all, limits);
        reports.addAll(tyres.complaints(car));
        reports.sort(Comparator.comparingDouble((Report report) -> -report.measured().orElseThrow().certainty())
                .thenComparing(Report::symptom).thenComparing(Report::text));
        missing(slip, laps);
        doubts.addAll(coverage.doubts());
        doubts.addAll(channelDoubts.zeros(line));
        List<String> told = new ArrayList<>(log.doubts());
        told.addAll(doubts);
        return new Observed(log, all.stream().map(lap -> new Observed.LapTold(lap.number(), lap.seconds(), lap.leftOut()))
                .toList(), finder.how(), map.corners().stream().map(Observer::told).toList(),
                line.map(it -> new Observed.LineTold(it.ratio(), it.gradientDegreesPerG(), Math.toDegrees(it.scatter()),
                        it.wheelbase(), slides.measure(Symptom.UNDERSTEER).starts())),
                reports, habits.found(), tyres.readings(), Cells.of(slides, map, coverage.count(Symptom.UNDERSTEER)), told,
                Drawings.of(reports, slides, phases, map, trace, laps), before.map(Observer::told),
                notJudged(line, wheels, slip.wheels().isEmpty()));
    }

    private static Observed.Against told(MappedRun earlier) {
        return new Observed.Against(earlier.trace().log().name(), earlier.line().map(it ->
                OptionalDouble.of(it.gradientDegreesPerG())).orElse(OptionalDouble.empty()));
    }

    private static Observed.CornerTold told(Corner corner) {
        return new Observed.CornerTold(corner.number(), corner.turn() == Turn.LEFT ? "left" : "right",
                corner.speed().id(), corner.from(), corner.to(), corner.slowest() * 3.6);
    }

    /** Slides of either axle; a rear that slides and lets go at once is told as the clearer of the two. */
    private List<Report> balance(Slides slides, Complaints complaints) {
        List<Report> slid = complaints.of(slides.measure(Symptom.OVERSTEER), slides.of(Symptom.OVERSTEER));
        List<Report> snapped = complaints.of(slides.measure(Symptom.SNAP_OVERSTEER), slides.of(Symptom.SNAP_OVERSTEER));
        List<Report> reports = new ArrayList<>(complaints.of(slides.measure(Symptom.UNDERSTEER),
                slides.of(Symptom.UNDERSTEER)));
        slid.stream().filter(slide -> snapped.stream().noneMatch(snap -> same(snap, slide)
                && certainty(snap) > SNAPS * certainty(slide))).forEach(reports::add);
        snapped.stream().filter(snap -> slid.stream().noneMatch(slide -> same(snap, slide)
                && certainty(snap) <= SNAPS * certainty(slide))).forEach(reports::add);
        return reports;
    }

    /** Whether an earlier run can be held beside this one; where not, why is told. */
    private boolean comparable(MappedRun run, MappedRun earlier) {
        String name = earlier.trace().log().name();
        long shared = run.map().corners().stream().filter(it -> TurnIn.same(it, earlier).isPresent()).count();
        if (2 * shared < run.map().corners().size()) {
            doubts.add("only " + shared + " of " + run.map().corners().size() + " corners lie where " + name + " has one: is it "
                    + "the same circuit? Nothing is held against it");
            return false;
        }
        if (earlier.line().isEmpty()) {
            doubts.add(name + " does not show the car's own line: nothing is held against it");
        }
        return earlier.line().isPresent();
    }

    /** How it answers to the wheel, and what it does where nobody turns it. */
    private List<Report> answers(MappedRun run, Optional<MappedRun> before, Slides slides, Complaints complaints) {
        List<Report> reports = new ArrayList<>();
        if (run.line().isPresent() && trace.hasSideslip()) {
            TurnIn turnIn = new TurnIn(run, slides.beyond(), slides.measure(Symptom.UNDERSTEER).starts());
            for (Symptom symptom : List.of(Symptom.SLOW_TURN_IN, Symptom.NERVOUS_TURN_IN)) {
                // Against its own other laps, one that differs is no complaint.
                double fewest = before.isPresent() || run.laps().size() < 4 ? 0 : limits.of("grades.once");
                reports.addAll(complaints.of(turnIn.measure(symptom, before).beyond(fewest), turnIn.of(symptom, before)));
            }
        }
        for (StraightRunning.Shown shown : new StraightRunning(run, before).all(sidesKnown)) {
            reports.addAll(complaints.of(shown.measure(), shown.sightings()));
        }
        return reports;
    }

    private static boolean same(Report one, Report other) {
        return one.phase().equals(other.phase()) && one.speed().equals(other.speed());
    }

    private static double certainty(Report report) {
        return report.measured().orElseThrow().certainty();
    }

    private Optional<ReferenceLine> line() {
        double wheelbase = car.dimension(Dimension.WHEELBASE).map(it -> it.si()).orElse(WHEELBASE);
        if (car.dimension(Dimension.WHEELBASE).isEmpty()) {
            doubts.add("the car's file gives no wheelbase; " + Figures.fixed(WHEELBASE, 1) + " m stand for it, and slip "
                    + "angles are wrong by as much as that is");
        }
        OptionalDouble known = channels.steeringRatio();
        Optional<ReferenceLine> line = ReferenceLine.fit(trace, wheelbase, known, limits);
        boolean stated = channels.columns().containsKey(camberwell.channel.Channel.of(Kind.STEERING))
                || known.isPresent();
        if (line.isPresent() && !stated && line.get().ratio() > 0 && line.get().ratio() < LEAST_RATIO) {
            // Radians taken for degrees, or a share of the lock: the ratio takes any of them up.
            log.rescaleSteering(Math.toDegrees(1));
            line = ReferenceLine.fit(trace, wheelbase, known, limits);
        }
        if (line.isEmpty()) {
            doubts.add("too little moderate cornering to find the car's own line: nothing is said of its balance");
        } else if (known.isPresent() && !fits(known.getAsDouble(), wheelbase)) {
            return Optional.empty();
        } else if (!(line.get().ratio() > LEAST_RATIO && line.get().ratio() < MOST_RATIO)) {
            doubts.add("the steering does not turn the car as a steering does (a ratio of "
                    + Figures.fixed(line.get().ratio(), 2) + "): nothing is said of its balance. Is the column right? The "
                    + "ratio can be given as \"steering-ratio: 14\" in a file for --channels");
            return Optional.empty();
        }
        return line;
    }

    /** Whether slip angles can be made with a stated ratio at all; where the geometry asks for another, that is told. */
    private boolean fits(double stated, double wheelbase) {
        Optional<ReferenceLine> free = ReferenceLine.fit(trace, wheelbase, OptionalDouble.empty(), limits)
                .filter(it -> Math.abs(it.alike()) < limits.of("doubts.ratio-tells"));
        if (free.isEmpty()) {
            return true;
        }
        boolean absurd = channelDoubts.absurd(stated, free.get());
        channelDoubts.ratio(stated, free.get()).ifPresent(doubt -> doubts.add(doubt + (absurd
                ? ": nothing is said of balance" : "; the stated one stands")));
        return !absurd;
    }

    private double toFront() {
        double wheelbase = car.dimension(Dimension.WHEELBASE).map(it -> it.si()).orElse(WHEELBASE);
        double front = car.dimension(Dimension.FRONT_WEIGHT).map(it -> it.si()).orElse(0.5);
        return wheelbase * (1 - front);
    }

    private double track() {
        return car.dimension(Dimension.FRONT_TRACK).or(() -> car.dimension(Dimension.REAR_TRACK)).map(it -> it.si())
                .orElse(TRACK);
    }

    /** What no complaint can be made of, for want of channels. */
    private List<String> notJudged(Optional<ReferenceLine> line, WheelDoubts wheels, boolean none) {
        List<String> not = new ArrayList<>();
        if (line.isEmpty()) {
            not.add("understeer and oversteer");
        }
        if (none || wheels.late()) {
            not.add(Observed.WHEELS);
        } else if (wheels.spinHidden()) {
            not.add("wheelspin");
        }
        if (!dampers.there()) {
            not.add("kerbs and stops");
        }
        return not;
    }

    /** What the log lacks, and what that costs. */
    private void missing(WheelSlip slip, List<Lap> laps) {
        if (!trace.hasSteering()) {
            doubts.add("no steering angle: nothing is said of understeer and oversteer");
        }
        if (!trace.hasSideslip()) {
            doubts.add((log.has(Kind.YAW_RATE) ? "no lateral acceleration: speed times yaw rate" : "no yaw rate: lateral "
                    + "acceleration over speed") + " stands for it, and nothing is said of snap oversteer");
        }
        if (!trace.hasThrottle() || !trace.hasBrake()) {
            doubts.add("no " + (trace.hasThrottle() ? "brake" : trace.hasBrake() ? "throttle" : "throttle and no brake")
                    + ": phases go by the gain and loss of speed" + (trace.hasThrottle() ? "" : ", and lift-off is not told"));
        }
        if (slip.wheels().size() < 4) {
            doubts.add((slip.wheels().isEmpty() ? "no wheel speeds" : "not all wheel speeds")
                    + ": wheelspin and locking are not seen" + (slip.wheels().isEmpty() ? "" : " at every wheel"));
        }
        if (!dampers.there()) {
            doubts.add("no damper travel: kerbs and stops are not seen");
        }
        if (laps.size() < limits.of("grades.fewest-laps")) {
            doubts.add("only " + laps.size() + (laps.size() == 1 ? " lap counts" : " laps count")
                    + ": nothing is certain, and how often it happens cannot be told");
        }
    }
}
