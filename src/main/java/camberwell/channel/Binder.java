package camberwell.channel;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.vocabulary.Nearest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Finds the column of each channel: as a map says, else by the headings, and never by a toss-up. */
final class Binder {

    /** Where two columns could be one of these, somebody has to say which. */
    private static final Set<Kind> ASKED = Set.of(Kind.TIME, Kind.LAP, Kind.SPEED, Kind.STEERING,
            Kind.LATERAL_ACCELERATION, Kind.YAW_RATE, Kind.THROTTLE, Kind.BRAKE);
    /** Not needed, and worth naming all the same. */
    private static final List<Kind> WORTH = List.of(Kind.STEERING, Kind.YAW_RATE, Kind.LATERAL_ACCELERATION, Kind.THROTTLE,
            Kind.BRAKE, Kind.LAP);
    /** Guesses nearer to each other than this are a toss-up. */
    private static final int NEAR = 3;

    private final String log;
    private final Layout layout;
    private final ChannelMap map;
    private final List<Problem> problems = new ArrayList<>();
    private final Map<Channel, Binding> bindings = new TreeMap<>();
    private final Set<Integer> taken = new HashSet<>();
    /** Channels that somebody has to say the column of. */
    private final Set<Channel> asked = new HashSet<>();
    /** Of columns that lost to a likelier one, what they could have been. */
    private final Map<Integer, Channel> losers = new HashMap<>();

    private Binder(String log, Layout layout, ChannelMap map) {
        this.log = log;
        this.layout = layout;
        this.map = map;
    }

    /**
     * What became of the columns.
     *
     * @param bindings in the order of the channels
     * @param unused columns that nothing is read from, as they are told to a person
     */
    record Bound(List<Binding> bindings, List<String> unused) {
    }

    /**
     * The columns that channels are read from, and those that none is.
     *
     * @throws ProblemsException if the map names a column that the log has not, a column could be either of two
     *     channels' or two columns one channel's, or what is needed is not there
     */
    static Bound bind(String log, Layout layout, ChannelMap map) {
        Binder binder = new Binder(log, layout, map);
        new TreeMap<>(map.columns()).forEach(binder::named);
        binder.guess();
        binder.require();
        if (!binder.problems.isEmpty()) {
            throw new ProblemsException(binder.problems);
        }
        return new Bound(List.copyOf(binder.bindings.values()), binder.unused());
    }

    private void named(Channel channel, ChannelMap.Column column) {
        if (column.name().isEmpty()) {
            return;
        }
        String name = column.name().get();
        List<Heading> found = layout.headings().stream().filter(heading -> heading.text().equals(name)).toList();
        if (found.isEmpty()) {
            found = layout.headings().stream().filter(heading -> heading.text().equalsIgnoreCase(name)
                    || heading.name().equalsIgnoreCase(name)).toList();
        }
        if (found.isEmpty() && name.matches("[0-9]{1,4}") && Integer.parseInt(name) >= 1
                && Integer.parseInt(name) <= layout.headings().size()) {
            found = List.of(layout.headings().get(Integer.parseInt(name) - 1));
        }
        if (found.size() != 1) {
            List<String> names = layout.headings().stream().map(Heading::text).toList();
            Optional<String> near = found.isEmpty() ? Nearest.to(name, names) : Optional.empty();
            problems.add(Problem.error(map.file(), column.line(), column.position(), found.isEmpty()
                    ? log + " has no column \"" + name + "\"" + (near.isPresent() ? "" : "; it has " + quoted(names))
                    : log + " has " + found.size() + " columns \"" + name + "\"; write the number of the one you mean, "
                            + "counted from 1: " + found.stream().map(it -> String.valueOf(it.index() + 1))
                                    .collect(java.util.stream.Collectors.joining(" or ")), near));
            return;
        }
        Heading heading = found.get(0);
        taken.add(heading.index());
        Optional<LoggedUnit> inLog = LoggedUnit.find(heading.unit(), channel.kind().scales())
                .filter(unit -> !heading.unit().isEmpty());
        bindings.put(channel, new Binding(channel, heading.text(), heading.index(), column.unit().or(() -> inLog),
                column.sign().orElse(1), false));
    }

    private record Candidate(Heading heading, HeadingWords.Guess guess) {
    }

    private void guess() {
        Map<Channel, List<Candidate>> candidates = new TreeMap<>();
        Map<Integer, List<HeadingWords.Guess>> all = new HashMap<>();
        for (Heading heading : layout.headings()) {
            if (!taken.contains(heading.index())) {
                all.put(heading.index(), HeadingWords.guesses(heading));
                // A column counts for what it most likely is, and for nothing else.
                all.get(heading.index()).stream().findFirst().ifPresent(best -> candidates
                        .computeIfAbsent(best.channel(), channel -> new ArrayList<>())
                        .add(new Candidate(heading, best)));
            }
        }
        candidates.forEach((channel, found) -> {
            if (!map.columns().containsKey(channel)) {
                choose(channel, found);
            }
        });
    }

    private void choose(Channel channel, List<Candidate> found) {
        found.sort((one, other) -> other.guess.certainty() - one.guess.certainty());
        Candidate best = found.get(0);
        List<Candidate> rivals = found.stream().filter(it -> best.guess.certainty() - it.guess.certainty() < NEAR)
                .toList();
        found.subList(1, found.size()).forEach(it -> losers.put(it.heading.index(), channel));
        // The same thing in two units is no question.
        boolean alike = rivals.stream().allMatch(it -> it.heading.name().equals(best.heading.name())
                && (it == best || !it.heading.unit().equals(best.heading.unit())));
        if (rivals.size() > 1 && !alike) {
            if (ASKED.contains(channel.kind())) {
                ask(channel, rivals);
            }
            return;
        }
        bindings.put(channel, new Binding(channel, best.heading.text(), best.heading.index(), best.guess.unit(), 1,
                true));
    }

    private void ask(Channel channel, List<Candidate> rivals) {
        asked.add(channel);
        List<String> names = rivals.stream().map(it -> it.heading.text()).toList();
        boolean same = names.stream().distinct().count() < names.size();
        problems.add(Problem.error(log, layout.headingLine(), columnOf(rivals.get(1).heading), quoted(names)
                + " could each be the " + channel.spoken() + "; say which in a file for --channels, with the line  "
                + channel.id() + ": {column: "
                + (same ? rivals.get(0).heading.index() + 1 + "}  (its number, counted from 1)"
                        : "\"" + names.get(0) + "\"}")));
    }

    /** The column that a heading begins at, counted from 1. */
    private int columnOf(Heading wanted) {
        int column = 1;
        for (Heading heading : layout.headings()) {
            if (heading.index() == wanted.index()) {
                return column;
            }
            column += heading.text().length() + 1;
        }
        return column;
    }

    /** All that is missing is told at once: who names one channel after the other has to start anew each time. */
    private void require() {
        List<String> missing = new ArrayList<>();
        List<String> lines = new ArrayList<>();
        boolean wheels = bindings.keySet().stream().filter(it -> it.kind() == Kind.WHEEL_SPEED).count() >= 2;
        if (!has(Kind.SPEED) && !wheels) {
            missing.add("as the speed of the car");
            lines.add("speed: {column: NAME, unit: km/h}");
        }
        if (!has(Kind.LATERAL_ACCELERATION) && !has(Kind.YAW_RATE)) {
            missing.add("as the lateral acceleration or the yaw rate, one of which is needed");
            lines.add("lateral-acceleration: {column: NAME, unit: g}");
        }
        if (!has(Kind.TIME) && map.sampleRate().isEmpty() && layout.sampleRate().isEmpty()
                && !(has(Kind.DISTANCE) && has(Kind.SPEED))) {
            missing.add("as the time");
            lines.add("time: {column: NAME, unit: s}  or  sample-rate: 100 Hz");
        }
        if (missing.isEmpty()) {
            return;
        }
        List<String> worth = WORTH.stream().filter(kind -> !has(kind)).map(Kind::spoken).toList();
        List<String> unused = unused();
        problems.add(Problem.error(log, layout.headingLine(), 1, "none of the columns was recognized "
                + String.join(", and none ", missing) + ". Name " + (lines.size() == 1 ? "it" : "each") + " in a file for "
                + "--channels, with the " + (lines.size() == 1 ? "line  " : "lines  ") + String.join("  and  ", lines)
                + (worth.isEmpty() ? "" : "; no column yet for: " + String.join(", ", worth))
                + (unused.isEmpty() ? "" : "; columns not used: " + String.join(", ", unused))
                + "; all columns: " + quoted(layout.headings().stream().map(Heading::text).toList())));
    }

    private boolean has(Kind kind) {
        Channel channel = Channel.of(kind);
        return bindings.containsKey(channel) || asked.contains(channel)
                || Optional.ofNullable(map.columns().get(channel)).flatMap(ChannelMap.Column::name).isPresent();
    }

    /** The headings of columns that nothing is read from, each with what it could have been. */
    private List<String> unused() {
        Set<Integer> used = new HashSet<>();
        bindings.values().forEach(it -> used.add(it.index()));
        return layout.headings().stream().filter(it -> !used.contains(it.index()) && !it.text().isBlank())
                .map(it -> '"' + it.text() + '"' + (losers.containsKey(it.index()) && bindings.containsKey(losers.get(
                        it.index())) ? " (could be the " + losers.get(it.index()).spoken() + ", as \""
                        + bindings.get(losers.get(it.index())).heading() + "\" was taken to be)" : "")).toList();
    }

    private static String quoted(List<String> names) {
        List<String> some = names.size() > 40 ? names.subList(0, 40) : names;
        return some.stream().map(name -> '"' + name + '"').collect(java.util.stream.Collectors.joining(", "))
                + (some.size() < names.size() ? " and " + (names.size() - some.size()) + " more" : "");
    }
}
