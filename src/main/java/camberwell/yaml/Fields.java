package camberwell.yaml;

import camberwell.problem.Text;
import camberwell.units.Measure;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * The keys of one map, asked for one by one. The keys that were asked for are the keys that are known, so the reading
 * code is the only list of them; {@link #done()} notes the others.
 */
public final class Fields {

    private static final int LONGEST_COUNT = 9;
    private static final List<String> YES_NO = List.of("yes", "no", "true", "false");

    private final MappingNode map;
    private final Document in;
    private final String noun;
    private final Map<String, NodeTuple> entries = new LinkedHashMap<>();
    private final Set<String> known = new LinkedHashSet<>();
    private final Set<String> spoiled = new LinkedHashSet<>();

    /** @param noun what the keys are: {@code key}, {@code adjuster}, … */
    public Fields(MappingNode map, Document in, String noun) {
        this.map = map;
        this.in = in;
        this.noun = noun;
        List<NodeTuple> tuples = map.getValue();
        for (int i = 0; i < tuples.size(); i++) {
            NodeTuple tuple = tuples.get(i);
            if (map.getFlowStyle() == FlowStyle.FLOW && i + 1 < tuples.size()
                    && decimalComma(tuple, tuples.get(i + 1))) {
                spoiled.add(key(tuple));
                i++;
            } else {
                enter(tuple);
            }
        }
    }

    /** In {@code {a: 1,7 bar, b: 2}} YAML sees a value of 1 and a key of {@code 7 bar}. */
    private boolean decimalComma(NodeTuple tuple, NodeTuple next) {
        if (tuple.getValueNode() instanceof ScalarNode whole && next.getKeyNode() instanceof ScalarNode rest
                && Document.open(next.getValueNode()) && whole.getValue().matches("[-+\u2212]?[0-9]+")
                && rest.getValue().matches("[0-9]+\\s*\\S*")) {
            in.error(whole, Text.quoted(whole.getValue() + "," + rest.getValue()) + " has a decimal comma",
                    Optional.of(whole.getValue() + "." + rest.getValue()));
            return true;
        }
        return false;
    }

    private void enter(NodeTuple tuple) {
        if (!(tuple.getKeyNode() instanceof ScalarNode)) {
            in.error(tuple.getKeyNode(), "a " + noun + " should be a word, not " + Document.kind(tuple.getKeyNode()));
            return;
        }
        NodeTuple first = entries.putIfAbsent(key(tuple), tuple);
        if (first != null) {
            in.error(tuple.getKeyNode(), Text.quoted(key(tuple)) + " stands here a second time; the first is in line "
                    + Document.lineOf(first.getKeyNode()));
        }
    }

    private static String key(NodeTuple tuple) {
        return tuple.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "";
    }

    /** The value of a key, if there is one; a key whose value is left open is noted. */
    public Optional<Node> node(String key) {
        known.add(key);
        NodeTuple entry = entries.get(key);
        if (entry == null) {
            return Optional.empty();
        }
        if (Document.open(entry.getValueNode())) {
            in.error(entry.getKeyNode(), Text.quoted(key) + " has no value; fill it in or leave the line out");
            return Optional.empty();
        }
        return Optional.of(entry.getValueNode());
    }

    /** Whether the key stands in the map, with or without a value that can be used. */
    public boolean has(String key) {
        return entries.containsKey(key) || spoiled.contains(key);
    }

    /** Whether the key stands in the map with that very word; it is known then. */
    public boolean has(String key, String word) {
        NodeTuple entry = entries.get(key);
        if (entry != null && entry.getValueNode() instanceof ScalarNode scalar && scalar.getValue().equals(word)) {
            known.add(key);
            return true;
        }
        return false;
    }

    /** Every key that stands here, in the file's order; whoever lists them knows them all. */
    public List<String> keys() {
        known.addAll(entries.keySet());
        return List.copyOf(entries.keySet());
    }

    /** Whether no key stands here. */
    public boolean empty() {
        return entries.isEmpty();
    }

    /** Whether the value of a key is a map. */
    public boolean holdsMap(String key) {
        return entries.containsKey(key) && entries.get(key).getValueNode() instanceof MappingNode;
    }

    /** Whether the value of a key is a list. */
    public boolean holdsList(String key) {
        return entries.containsKey(key) && entries.get(key).getValueNode() instanceof SequenceNode;
    }

    /** Whether the key's value is a number without a unit. */
    public boolean bare(String key) {
        NodeTuple entry = entries.get(key);
        return entry != null && entry.getValueNode() instanceof ScalarNode scalar
                && Quantity.parse(scalar.getValue().trim()).filter(it -> it.unit() == Unit.POSITION).isPresent();
    }

    /** Notes that a key is missing when it is. */
    public void require(String key) {
        if (!has(key)) {
            in.error(map, "the " + noun + " \"" + key + "\" is missing");
        }
    }

    /** One line of text. */
    public Optional<String> text(String key) {
        return node(key).flatMap(node -> {
            if (!(node instanceof ScalarNode scalar)) {
                in.error(node, Text.quoted(key) + " should be a text, not " + Document.kind(node));
            } else if (scalar.getValue().isBlank() || !scalar.getValue().equals(Text.line(scalar.getValue()))) {
                in.error(node, Text.quoted(key) + " should be one line of text");
            } else {
                return Optional.of(scalar.getValue());
            }
            return Optional.empty();
        });
    }

    /** One line of text of a certain form: {@code is made of small letters}. */
    public Optional<String> matching(String key, Pattern pattern, String form) {
        return text(key).filter(text -> {
            boolean matches = pattern.matcher(text).matches();
            if (!matches) {
                error(key, Text.quoted(key) + " " + form + ", not " + Text.quoted(text));
            }
            return matches;
        });
    }

    /** A text that may go over several lines, without blanks at its ends. */
    public Optional<String> prose(String key) {
        return node(key).flatMap(node -> prose(node, key));
    }

    private Optional<String> prose(Node node, String key) {
        if (!(node instanceof ScalarNode scalar)) {
            in.error(node, Text.quoted(key) + " should be a text, not " + Document.kind(node));
        } else if (scalar.getValue().isBlank()) {
            in.error(node, Text.quoted(key) + " should be a text, and it is empty");
        } else {
            return Optional.of(scalar.getValue().strip());
        }
        return Optional.empty();
    }

    /** The texts of a list, each of any length; empty when it is not there. */
    public List<String> texts(String key) {
        List<String> texts = new ArrayList<>();
        list(key).forEach(node -> prose(node, key).ifPresent(texts::add));
        return texts;
    }

    /** The lines of a drawing, with their blanks. */
    public Optional<List<String>> drawing(String key) {
        return prose(key).flatMap(text -> node(key)).map(node -> ((ScalarNode) node).getValue().lines().toList());
    }

    /** A number from {@code least} to {@code most}, without a unit. */
    public Optional<Double> number(String key, double least, double most) {
        return node(key).flatMap(node -> {
            String text = node instanceof ScalarNode scalar ? scalar.getValue().strip() : "";
            if (text.matches("[-+]?[0-9]{1,9}(\\.[0-9]{1,9})?")) {
                double number = Double.parseDouble(text);
                if (number >= least && number <= most) {
                    return Optional.of(number);
                }
            }
            boolean comma = text.matches("[-+]?[0-9]{1,9},[0-9]{1,9}");
            in.error(node, comma ? Text.quoted(text) + " has a decimal comma" : Text.quoted(key)
                    + " should be a number from " + shown(least) + " to " + shown(most) + ", not "
                    + Document.kind(node), comma ? Optional.of(text.replace(',', '.')) : Optional.empty());
            return Optional.empty();
        });
    }

    /** A whole number from {@code least} to {@code most}, where it stands. */
    public Optional<Integer> whole(String key, int least, int most) {
        return node(key).flatMap(node -> {
            String text = node instanceof ScalarNode scalar ? scalar.getValue().strip() : "";
            if (text.matches("[-+]?[0-9]{1,9}") && Integer.parseInt(text) >= least && Integer.parseInt(text) <= most) {
                return Optional.of(Integer.parseInt(text));
            }
            in.error(node, Text.quoted(key) + " should be a whole number from " + least + " to " + most + ", not "
                    + Document.kind(node));
            return Optional.empty();
        });
    }

    private static String shown(double number) {
        return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
    }

    /** A word of the vocabulary. */
    public <W extends Word> Optional<W> word(String key, Class<W> type) {
        return choice(key, Word.ids(type)).map(id -> Word.of(type, id));
    }

    /**
     * The same of words of which there may be more than are known here.
     *
     * @param hint where the others come from, for the message about one that is not known
     */
    public <W extends Word> Optional<W> word(String key, Class<W> type, String hint) {
        return node(key).flatMap(node -> choice(node, key, Word.ids(type), "; " + hint)).map(id -> Word.of(type, id));
    }

    /** One of a few words. */
    public Optional<String> choice(String key, List<String> words) {
        return node(key).flatMap(node -> choice(node, key, words, ""));
    }

    /** One of a few words, or a list of them. */
    public List<String> choices(String key, List<String> words) {
        List<String> chosen = new ArrayList<>();
        List<Node> nodes = holdsList(key) ? list(key) : node(key).map(List::of).orElse(List.of());
        nodes.forEach(node -> choice(node, key, words, "").ifPresent(chosen::add));
        return chosen;
    }

    private Optional<String> choice(Node node, String key, List<String> words, String hint) {
        if (!(node instanceof ScalarNode scalar)) {
            in.error(node, Text.quoted(key) + " should be " + Text.oneOf(words) + ", not " + Document.kind(node));
            return Optional.empty();
        }
        if (words.contains(scalar.getValue())) {
            return Optional.of(scalar.getValue());
        }
        Optional<String> meant = Nearest.to(scalar.getValue(), words);
        in.error(node, Text.quoted(key) + " cannot be " + Text.quoted(scalar.getValue())
                + (meant.isPresent() ? "" : "; it is " + Text.oneOf(words) + hint), meant);
        return Optional.empty();
    }

    /** A quantity. */
    public Optional<Quantity> quantity(String key, Measure measure) {
        return node(key).flatMap(node -> Quantities.read(measure, node, in));
    }

    /** A whole number from {@code least} to {@code most}. */
    public Optional<Integer> count(String key, int least, int most) {
        return count(key, least, most, "");
    }

    /** The same of things whose name may stand behind the number. */
    public Optional<Integer> count(String key, int least, int most, String things) {
        return node(key).flatMap(node -> {
            String said = node instanceof ScalarNode scalar ? scalar.getValue().strip() : "";
            String text = !things.isEmpty() && said.endsWith(" " + things)
                    ? said.substring(0, said.length() - things.length() - 1).strip() : said;
            if (!text.isEmpty() && text.length() <= LONGEST_COUNT && text.chars().allMatch(it -> it >= '0' && it <= '9')
                    && Integer.parseInt(text) >= least && Integer.parseInt(text) <= most) {
                return Optional.of(Integer.parseInt(text));
            }
            in.error(node, Text.quoted(key) + " should be a whole number from " + least + " to " + most + ", not "
                    + Document.kind(node));
            return Optional.empty();
        });
    }

    /** Whether the key says yes; no where it is not there. */
    public boolean yes(String key) {
        return choice(key, YES_NO).filter(it -> it.equals("yes") || it.equals("true")).isPresent();
    }

    /** A change, written {@code front-camber less-negative}. */
    public Optional<Change> change(String key) {
        return node(key).flatMap(node -> {
            String text = node instanceof ScalarNode scalar ? scalar.getValue().strip() : "";
            Optional<Change> change = Change.parse(text);
            if (change.isEmpty()) {
                noChange(node, Text.quoted(key) + " cannot be " + Document.kind(node), text);
            }
            return change;
        });
    }

    /** A change that is a key itself. */
    public Optional<Change> changeOfKey(String key) {
        Optional<Change> change = Change.parse(key);
        if (change.isEmpty()) {
            noChange(entries.get(key).getKeyNode(), Text.quoted(key) + " is no change", key);
        }
        return change;
    }

    /** Notes what is no change, with what may stand there: of an adjuster that is known, its own directions. */
    private void noChange(Node node, String message, String text) {
        Optional<Adjuster> adjuster = Word.find(Adjuster.class, text.split("\\s", 2)[0]);
        List<String> known = adjuster.map(it -> it.directions().stream().map(way -> new Change(it, way).id()).toList())
                .orElseGet(() -> Change.all().stream().map(Change::id).toList());
        Optional<String> meant = Nearest.to(text, known);
        in.error(node, message + (meant.isPresent() ? "" : adjuster.isPresent() ? "; it is " + Text.oneOf(known)
                : "; write an adjuster and a direction, like \"rear-wing more\""), meant);
    }

    /** A map below this one. */
    public Optional<Fields> map(String key, String nounOfItsKeys) {
        return node(key).flatMap(node -> map(node, key, in, nounOfItsKeys));
    }

    /** The items of a list; empty when it is not there. */
    public List<Node> list(String key) {
        Optional<Node> found = node(key);
        if (found.isPresent() && found.get() instanceof SequenceNode list) {
            return list.getValue();
        }
        found.ifPresent(node -> in.error(node, Text.quoted(key) + " should be a list, not " + Document.kind(node)));
        return List.of();
    }

    /** The items of a list of maps; empty when it is not there. */
    public List<Fields> maps(String key, String nounOfTheirKeys) {
        List<Fields> maps = new ArrayList<>();
        list(key).forEach(node -> map(node, "an entry of " + key, in, nounOfTheirKeys).ifPresent(maps::add));
        return maps;
    }

    /** A node as a map; empty, with the problem noted, when it is none. */
    public static Optional<Fields> map(Node node, String what, Document in, String noun) {
        if (node instanceof MappingNode map) {
            return Optional.of(new Fields(map, in, noun));
        }
        in.error(node, Text.quoted(what) + " should be keys with values, not " + Document.kind(node));
        return Optional.empty();
    }

    /** Notes an error in the map as a whole. */
    public void error(String message) {
        in.error(map, message);
    }

    /** Notes an error at the value of a key, or at the map where there is none. */
    public void error(String key, String message) {
        error(key, message, Optional.empty());
    }

    /** Notes an error at the value of a key, or at the map where there is none, with what was most likely meant. */
    public void error(String key, String message, Optional<String> suggestion) {
        in.error(entries.containsKey(key) ? entries.get(key).getValueNode() : map, message, suggestion);
    }

    /** Notes an error at the name of a key. */
    public void errorAtKey(String key, String message) {
        in.error(entries.get(key).getKeyNode(), message);
    }

    /** Notes a warning at a key. */
    public void warn(String key, String message) {
        in.warn(entries.get(key).getValueNode(), message);
    }

    /** Notes every key that nobody asked for and that is not among {@code others}, which need not be asked for. */
    public void done(List<String> others) {
        known.addAll(others);
        done();
    }

    /** Notes every key that nobody asked for. */
    public void done() {
        List<String> names = new ArrayList<>(known);
        for (Map.Entry<String, NodeTuple> entry : entries.entrySet()) {
            if (!known.contains(entry.getKey())) {
                Optional<String> meant = Nearest.to(entry.getKey(), names);
                in.error(entry.getValue().getKeyNode(), "unknown " + noun + " " + Text.quoted(entry.getKey())
                        + (meant.isPresent() ? "" : "; here it can be " + Text.oneOf(names)), meant);
            }
        }
    }
}
