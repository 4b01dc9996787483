package camberwell.input;

import camberwell.channel.Channel;
import camberwell.channel.ChannelMap;
import camberwell.channel.Kind;
import camberwell.channel.LoggedUnit;
import camberwell.problem.ProblemsException;
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
        OptionalDouble ratio = number(fields, "steering-ratio", 0.5, 40, in);
        for (Channel channel : Channel.known()) {
            Optional<Node> node = fields.node(channel.id());
            if (node.isPresent()) {
                if (channel.kind() == Kind.STEERING && node.get() instanceof MappingNode map) {
                    ratio = ratio.isPresent() ? ratio : number(new Fields(map, in, "key"), "ratio", 0.5, 40, in);
                }
                column(channel, node.get(), in).ifPresent(column -> columns.put(channel, column));
            }
        }
        OptionalDouble rate = number(fields, "sample-rate", 4, 2000, in);
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

    /** A bare number, or one of hertz. */
    private static OptionalDouble number(Fields fields, String key, double least, double most, Document in) {
        Optional<String> text = fields.text(key);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        String bare = text.get().replaceFirst("(?i)\\s*hz$", "").strip();
        if (bare.matches("[0-9]+(\\.[0-9]+)?")) {
            double value = Double.parseDouble(bare);
            if (value >= least && value <= most) {
                return OptionalDouble.of(value);
            }
        }
        fields.error(key, Text.quoted(text.get()) + " will not do: \"" + key + "\" is a number between "
                + new camberwell.units.Quantity(least, camberwell.units.Unit.POSITION) + " and "
                + new camberwell.units.Quantity(most, camberwell.units.Unit.POSITION)
                + (key.equals("sample-rate") ? ", of rows a second" : ""));
        return OptionalDouble.empty();
    }
}
