package camberwell.cli;

import camberwell.advice.Alignment;
import camberwell.advice.Alignment.Recovery;
import camberwell.advice.TyreStiffness;
import camberwell.advice.Worked;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code camberwell alignment}: toe, camber and caster, each with the line that computed it. */
@Command(name = "alignment", synopsisSubcommandLabel = "COMMAND",
        description = {"Computes toe, camber and caster.", "",
            "Signs as in ISO 8855: toe-in is positive, for one wheel as for the total; camber is negative when the "
                + "wheel's top leans in; caster is positive when the top of the steering axis leans back."},
        footer = {"", "Examples:",
            "  camberwell alignment toe --each 2mm --across 18in",
            "  camberwell alignment steer --caster 7deg --kingpin 12deg --camber -3deg",
            "  camberwell alignment drag --toe 0.2deg --speed 200km/h"})
final class AlignmentCommand implements Runnable {


    private final Console console;

    @Spec
    private CommandSpec spec;

    AlignmentCommand(Console console) {
        this.console = console;
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    @Command(name = "toe", description = {"Toe between degrees and millimetres, per wheel and total.", "",
                "A toe length is the difference between the rear and the front of the wheel, measured across a "
                    + "diameter: toe = diameter x sin(angle) for one wheel, and the sum of both wheels in total. Two "
                    + "traps: a length means nothing without its diameter (1 mm is 9 minutes of arc across a 15 in "
                    + "rim, and less across the tyre), and the rule \"pi x diameter / 360 for one degree\" is the "
                    + "arc at the rim's radius: it makes the angle twice too large."},
            footer = {"", "Examples:",
                "  camberwell alignment toe --each 2mm --across 18in",
                "  camberwell alignment toe --each -0.10deg --across 18in",
                "  camberwell alignment toe --total 4mm --across 650mm",
                "  camberwell alignment toe --left 1.5mm --right 0.5mm --across 17in"})
    int toe(@Option(names = "--each", paramLabel = "TOE", converter = Amount.Toe.class,
                    description = "Toe of each of the two wheels: in deg, mm or in.") Optional<Quantity> each,
            @Option(names = "--total", paramLabel = "TOE", converter = Amount.Toe.class,
                    description = "Toe of both wheels together, shared equally.") Optional<Quantity> total,
            @Option(names = "--left", paramLabel = "TOE", converter = Amount.Toe.class,
                    description = "Toe of the left wheel.") Optional<Quantity> left,
            @Option(names = "--right", paramLabel = "TOE", converter = Amount.Toe.class,
                    description = "Toe of the right wheel.") Optional<Quantity> right,
            @Option(names = "--across", paramLabel = "DIAMETER", converter = Amount.Diameter.class,
                    description = "Diameter that a length is measured across: of the rim, of the tyre, of the toe "
                        + "plates.") Optional<Quantity> across,
            @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT", description = Format.WRITTEN)
            Format format) throws IOException {
        boolean sides = left.isPresent() && right.isPresent();
        if (left.isPresent() != right.isPresent()
                || Stream.of(each.isPresent(), total.isPresent(), sides).filter(given -> given).count() != 1) {
            throw wrong("toe", "give --each, or --total, or --left and --right");
        }
        Optional<Quantity> both = each.or(() -> total.map(sum -> sum.withValue(sum.value() / 2)));
        return print("toe", format, () -> Alignment.toe(both.or(() -> left).orElseThrow(),
                both.or(() -> right).orElseThrow(), across));
    }

    @Command(name = "steer", description = {"Camber of the front wheels in steer, from caster and kingpin inclination.", "",
                "By exact rotation about the steering axis. Caster leans both front wheels into the turn; kingpin "
                    + "inclination takes camber back on the outer wheel, the more the further it is steered."},
            footer = {"", "Examples:",
                "  camberwell alignment steer --caster 7deg --kingpin 12deg --camber -3deg",
                "  camberwell alignment steer --caster 7.5deg --kingpin 12deg --steer 10deg"})
    int steer(@Option(names = "--caster", required = true, paramLabel = "ANGLE", converter = Amount.AxisAngle.class,
                    description = "Caster.") Quantity caster,
            @Option(names = "--kingpin", required = true, paramLabel = "ANGLE", converter = Amount.AxisAngle.class,
                    description = "Kingpin (steering-axis) inclination, positive when the top leans "
                        + "in.") Quantity kingpin,
            @Option(names = "--camber", defaultValue = "0deg", paramLabel = "ANGLE", converter = Amount.Camber.class,
                    description = "Camber straight ahead; 0 if not given.") Quantity camber,
            @Option(names = "--steer", paramLabel = "ANGLE", converter = Amount.Steer.class,
                    description = "Steer of the wheels; 5, 10, 15 and 20 deg if not given.") Optional<Quantity> steer,
            @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT", description = Format.WRITTEN)
            Format format) throws IOException {
        return print("steer", format, () -> Alignment.camberInSteer(caster, kingpin, camber, steer));
    }

    @Command(name = "caster", description = {"Caster from a camber sweep.", "",
                "On turn plates, steer one wheel as far in as out and read its camber at both ends."},
            footer = {"", "Example:",
                "  camberwell alignment caster --turned-in 1.01deg --turned-out -3.78deg"})
    int caster(@Option(names = "--turned-in", required = true, paramLabel = "ANGLE", converter = Amount.Camber.class,
                    description = "Camber with the wheel steered as the inner wheel of a turn (left wheel, left turn).")
            Quantity turnedIn,
            @Option(names = "--turned-out", required = true, paramLabel = "ANGLE", converter = Amount.Camber.class,
                    description = "Camber with the wheel steered as the outer wheel of a turn.") Quantity turnedOut,
            @Option(names = "--sweep", defaultValue = "20deg", paramLabel = "ANGLE", converter = Amount.Steer.class,
                    description = "Steer to either side; 20 deg if not given.") Quantity sweep,
            @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT", description = Format.WRITTEN)
            Format format) throws IOException {
        return print("caster", format, () -> Alignment.casterFromSweep(turnedIn, turnedOut, sweep));
    }

    @Command(name = "roll", description = {"Camber to the road while the body rolls.", "",
                "The body leans out of the turn and takes its wheels along; the suspension gives a part of that "
                    + "back. Give that part, or what the camber does on a jack: its change for a travel in bump, and "
                    + "the track."},
            footer = {"", "Examples:",
                "  camberwell alignment roll --camber -3deg --roll 2.2deg --recovery 30%%",
                "  camberwell alignment roll --camber -3deg --roll 2.2deg \\",
                "      --change -0.5deg --travel 25mm --track 1530mm"})
    int roll(@Option(names = "--camber", required = true, paramLabel = "ANGLE", converter = Amount.Camber.class,
                    description = "Static camber.") Quantity camber,
            @Option(names = "--roll", required = true, paramLabel = "ANGLE", converter = Amount.Roll.class,
                    description = "Roll of the body in the corner.") Quantity roll,
            @Option(names = "--recovery", paramLabel = "SHARE", converter = Amount.Share.class,
                    description = "Part of the roll that the suspension takes back, in per "
                        + "cent.") Optional<Quantity> recovery,
            @Option(names = "--change", paramLabel = "ANGLE", converter = Amount.Camber.class,
                    description = "Camber change in bump, negative on most cars.") Optional<Quantity> change,
            @Option(names = "--travel", paramLabel = "LENGTH", converter = Amount.Travel.class,
                    description = "Travel in bump that --change belongs to.") Optional<Quantity> travel,
            @Option(names = "--track", paramLabel = "WIDTH", converter = Amount.TrackWidth.class,
                    description = "Track width of the axle.") Optional<Quantity> track,
            @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT", description = Format.WRITTEN)
            Format format) throws IOException {
        boolean jacked = change.isPresent() && travel.isPresent() && track.isPresent();
        if (recovery.isPresent() == (change.isPresent() || travel.isPresent() || track.isPresent())
                || recovery.isEmpty() && !jacked) {
            throw wrong("roll", "give either --recovery, or --change, --travel and --track");
        }
        return print("roll", format, () -> Alignment.camberInRoll(camber, roll, recovery.map(Recovery::given)
                .orElseGet(() -> Recovery.fromTravel(change.get(), travel.get(), track.get()))));
    }

    @Command(name = "drag",
            description = {"What toe costs on the straight: drag, power and heat, estimated for both wheels of an "
                + "axle."},
            footer = {"", "Examples:",
                "  camberwell alignment drag --toe 0.2deg --speed 200km/h",
                "  camberwell alignment drag --toe 1mm --across 18in --load 3200N",
                "  camberwell alignment drag --toe 0.25deg --stiffness 1000N/deg"})
    int drag(@Option(names = "--toe", required = true, paramLabel = "TOE", converter = Amount.Toe.class,
                    description = "Toe of one wheel.") Quantity toe,
            @Option(names = "--across", paramLabel = "DIAMETER", converter = Amount.Diameter.class,
                    description = "Diameter that a toe in mm is measured across.") Optional<Quantity> across,
            @Option(names = "--speed", defaultValue = "150km/h", paramLabel = "SPEED", converter = Amount.Speed.class,
                    description = "Speed on the straight; 150 km/h if not given.") Quantity speed,
            @Option(names = "--stiffness", paramLabel = "STIFFNESS", converter = Stiffness.class,
                    description = "Cornering stiffness of one tyre at its load: 1000N/deg or 57kN/rad.")
            Optional<TyreStiffness> stiffness,
            @Option(names = "--load", paramLabel = "FORCE", converter = Amount.Load.class,
                    description = "Load of one tyre, to take the stiffness from a published car tyre.")
            Optional<Quantity> load,
            @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT", description = Format.WRITTEN)
            Format format) throws IOException {
        if (stiffness.isPresent() && load.isPresent()) {
            throw wrong("drag", "give either --stiffness or --load");
        }
        TyreStiffness tyre = stiffness.or(() -> load.map(force -> TyreStiffness.atLoad(force.in(Unit.NEWTON))))
                .orElse(TyreStiffness.COMMON);
        return print("drag", format, () -> Alignment.drag(Alignment.degrees(toe, across), speed, tyre));
    }

    private int print(String command, Format format, Supplier<List<Worked>> figures) throws IOException {
        List<Worked> worked;
        try {
            worked = figures.get();
        } catch (IllegalArgumentException e) {
            throw wrong(command, e.getMessage());
        }
        Output.figures(console, format, worked);
        return ExitCode.DONE;
    }

    private ParameterException wrong(String command, String message) {
        return new ParameterException(spec.commandLine().getSubcommands().get(command), message);
    }
}
