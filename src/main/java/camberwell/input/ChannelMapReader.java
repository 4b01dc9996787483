package camberwell.input;

import camberwell.channel.Channel;
import camberwell.channel.ChannelMap;
import camberwell.channel.Kind;
import camberwell.channel.LoggedUnit;
import camberwell.problem.ProblemsException;
import camberwell.problem.Text;
import camberwell.yaml.Document;
import camberwell.yaml.Fields;
import camberwell.yaml.Problems;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;

/**
 * Reads what a person says of the columns of a log: {@code yaw-rate: {column: gyro z, unit: deg/s, sign: -1}}, or short
 * {@code yaw-rate: gyro z}; {@code lap: none} where the log has no such channel.
 */
public final class ChannelMapReader {

    private static final String NONE = "none";
    private static final double LEAST_RATIO = 0.5;
    private static final double MOST_RATIO = 40;
    private static final double SLOWEST = 4;
    private static final double FASTEST = 2000;

    private ChannelMapReader() {
    }

    /**
     * Reads the file.
     *
     * @throws ProblemsException with all that is wrong with it
     */
    public static ChannelMap read(Path file) {
        Problems problems = new Problems();
        Optional<ChannelMap> map = Document.load(file, problems).map(it -> map(it, file));
        problems.warningsOrFail();
        return map.orElseThrow();
    }

    private static ChannelMap map(Document in, Path file) {
        Fields fields = new Fields(in.root(), in, "channel");
        Map<Channel, ChannelMap.Column> columns = new HashMap<>();
        OptionalDouble ratio = ratio(fields, "steering-ratio");
        for (Channel channel : Channel.known()) {
            Optional<Node> node = fields.node(channel.id());
            if (node.isPresent()) {
                if (channel.kind() == Kind.STEERING && node.get() instanceof MappingNode map) {
                    ratio = ratio.isPresent() ? ratio : ratio(new Fields(map, in, "key"), "ratio");
                }
                column(channel, node.get(), in).ifPresent(column -> columns.put(channel, column));
            }
        }
        OptionalDouble rate = rate(fields);
        fields.done();
        return new ChannelMap(file.toString(), columns, rate, ratio);
    }

    private static Optional<ChannelMap.Column> column(Channel channel, Node node, Document in) {
        int line = node.getStartMark().getLine() + 1;
        int position = node.getStartMark().getColumn() + 1;
        if (node instanceof ScalarNode scalar) {
            Optional<String> name = Optional.of(scalar.getValue()).filter(it -> !it.equals(NONE));
            return Optional.of(new ChannelMap.Column(name, Optional.empty(), Optional.empty(), line, position));
        }
        Optional<Fields> found = Fields.map(node, channel.id(), in, "key");
        if (found.isEmpty()) {
            return Optional.empty();
        }
        Fields fields = found.get();
        fields.require("column");
        Optional<String> name = fields.text("column");
        Optional<LoggedUnit> unit = fields.text("unit").flatMap(text -> unit(text, channel, fields));
        Optional<Integer> sign = fields.choice("sign", List.of("1", "-1", "+1")).map(Integer::valueOf);
        if (channel.kind() == Kind.STEERING) {
            fields.node("ratio");
        }
        fields.done();
        return name.map(it -> new ChannelMap.Column(Optional.of(it), unit, sign, line, position));
    }

    private static Optional<LoggedUnit> unit(String text, Channel channel, Fields fields) {
        Optional<LoggedUnit> unit = LoggedUnit.find(text, channel.kind().scales());
        if (unit.isEmpty()) {
            fields.error("unit", Text.quoted(text) + " is no unit of the " + channel.spoken() + "; it is "
                    + Text.oneOf(LoggedUnit.symbols(channel.kind().scales())));
        }
        return unit;
    }

    /** Rows a second: a bare number, or one of hertz. */
    private static OptionalDouble rate(Fields fields) {
        Optional<String> text = fields.text("sample-rate");
        if (text.isPresent()) {
            String bare = text.get().replaceFirst("(?i)\\s*hz$", "").strip();
            double rate = bare.matches("[0-9]{1,5}(\\.[0-9]+)?") ? Double.parseDouble(bare) : 0;
            if (rate >= SLOWEST && rate <= FASTEST) {
                return OptionalDouble.of(rate);
            }
            fields.error("sample-rate", Text.quoted(text.get()) + " will not do: \"sample-rate\" is so many rows a second, "
                    + "from 4 Hz to 2000 Hz");
        }
        return OptionalDouble.empty();
    }

    private static OptionalDouble ratio(Fields fields, String key) {
        return fields.number(key, LEAST_RATIO, MOST_RATIO).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
