package camberwell.input;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.yaml.Document;
import camberwell.problem.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * One value of a case file read otherwise than it stands there, for instance
 * {@code tyres.front-left.inner=96 °C}, {@code setup.front-camber=-2.0 deg} or {@code reports[0].severity=strong}.
 * A path that begins with {@code car.} reaches into the car, in the case or in the file that it points to.
 *
 * @param place how problems name it: {@code --if "reports[0].severity=strong"}
 * @param steps the keys of the path, with the places in lists, counted from 0, as numbers of their own
 * @param value what is read instead
 */
public record Substitution(String place, List<String> steps, String value) {

    private static final String REPORTS = "reports";
    private static final String SAY = "say";
    private static final Pattern STEP = Pattern.compile("([^.\\[\\]]+)((?:\\[[0-9]{1,4}])*)");

    /** Copies the list. */
    public Substitution {
        steps = List.copyOf(steps);
    }

    /**
     * Reads {@code PATH=VALUE}.
     *
     * @param option the command-line option that it was given with
     * @throws ProblemsException if it is not written like that
     */
    public static Substitution parse(String option, String text) {
        String place = option + " \"" + Text.line(text) + "\"";
        int equals = text.indexOf('=');
        List<String> steps = new ArrayList<>();
        for (String part : text.substring(0, Math.max(0, equals)).strip().split("\\.", -1)) {
            Matcher step = STEP.matcher(part);
            if (!step.matches() || text.substring(equals + 1).isBlank()) {
                throw new ProblemsException(Problem.of(place,
                        "should be PATH=VALUE, like tyres.front-left.inner=96 °C", Optional.empty()));
            }
            steps.add(step.group(1));
            if (!step.group(2).isEmpty()) {
                steps.addAll(List.of(step.group(2).substring(1, step.group(2).length() - 1).split("]\\[")));
            }
        }
        return new Substitution(place, steps, text.substring(equals + 1).strip());
    }

    /** Whether it reaches into the car. */
    boolean inCar() {
        return steps.size() > 1 && steps.get(0).equals("car");
    }

    /** The same substitution seen from inside the car. */
    Substitution fromCar() {
        return new Substitution(place, steps.subList(1, steps.size()), value);
    }

    /** Writes the value into the tree; what does not fit is noted. */
    void apply(MappingNode root, Document in) {
        if (steps.get(0).equals(REPORTS) && child(root, REPORTS) == null && child(root, SAY) != null) {
            in.error(scalar(value), "the complaints of this case are the driver's own words: say them otherwise, with "
                    + "\"say=it pushes on the way in\", or write them under " + REPORTS);
        } else {
            replace(root, 0, in);
        }
    }

    private static Node child(MappingNode map, String key) {
        return map.getValue().stream().filter(it -> it.getKeyNode() instanceof ScalarNode name && name.getValue().equals(key))
                .map(NodeTuple::getValueNode).findFirst().orElse(null);
    }

    /** The node that stands in place of {@code node} ({@code null} where there is none) once the rest is applied. */
    private Node replace(Node node, int done, Document in) {
        if (done == steps.size()) {
            return scalar(value);
        }
        String step = steps.get(done);
        boolean place = step.matches("[0-9]{1,4}");
        if (place && node instanceof SequenceNode list && Integer.parseInt(step) < list.getValue().size()) {
            int index = Integer.parseInt(step);
            list.getValue().set(index, replace(list.getValue().get(index), done + 1, in));
        } else if (place) {
            in.error(scalar(value), node instanceof SequenceNode list
                    ? "there is no [" + step + "]: the list has " + list.getValue().size()
                            + ", counted from 0" : Text.quoted(upTo(done)) + " is no list in this file");
        } else if (node instanceof MappingNode map) {
            enter(map, step, done, in);
        } else if (node == null || Document.open(node)) {
            MappingNode map = new MappingNode(Tag.MAP, true, new ArrayList<>(), mark(), mark(), FlowStyle.BLOCK);
            enter(map, step, done, in);
            return map;
        } else {
            in.error(scalar(value), Text.quoted(upTo(done)) + " is " + Document.kind(node) + " and has no "
                    + Text.quoted(step) + " in it");
        }
        return node == null ? scalar("") : node;
    }

    private void enter(MappingNode map, String key, int done, Document in) {
        List<NodeTuple> entries = map.getValue();
        for (int i = 0; i < entries.size(); i++) {
            NodeTuple entry = entries.get(i);
            if (entry.getKeyNode() instanceof ScalarNode name && name.getValue().equals(key)) {
                entries.set(i, new NodeTuple(name, replace(entry.getValueNode(), done + 1, in)));
                return;
            }
        }
        entries.add(new NodeTuple(scalar(key), replace(null, done + 1, in)));
    }

    private String upTo(int done) {
        return String.join(".", steps.subList(0, done));
    }

    private ScalarNode scalar(String text) {
        return new ScalarNode(text.isEmpty() ? Tag.NULL : Tag.STR, text, mark(), mark(), ScalarStyle.PLAIN);
    }

    /** A place that is no line of the file. */
    private Mark mark() {
        return new Mark(place, 0, -1, -1, new int[0], 0);
    }
}
