package camberwell.yaml;

import camberwell.problem.Problem;
import camberwell.problem.Utf8;
import camberwell.problem.Siblings;
import camberwell.problem.Text;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.composer.Composer;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.resolver.Resolver;

/**
 * One YAML file as a tree of nodes that know where they stand. Nothing is ever constructed from a tag, and anchors
 * and aliases are refused, so that a small file cannot stand for a large one.
 */
public final class Document {

    private static final int LARGEST = 1 << 20;
    private static final int DEEPEST = 30;
    private static final String SHIFTED = "this line is not indented like the ones above it";
    private static final Pattern KEY = Pattern.compile("\\s*[\\p{L}\\p{N}_-]+:(\\s|$)");
    /** The parser's time grows with the square of a line's length. */
    private static final int LONGEST_LINE = 10_000;
    private static final Set<Tag> PLAIN_TAGS = Set.of(Tag.MAP, Tag.SEQ, Tag.STR, Tag.INT, Tag.FLOAT, Tag.BOOL,
            Tag.NULL, Tag.TIMESTAMP, Tag.MERGE);

    private final String name;
    private final List<String> lines;
    private final Problems problems;
    private MappingNode root;

    private Document(String name, List<String> lines, Problems problems) {
        this.name = name;
        this.lines = lines;
        this.problems = problems;
    }

    /** Reads a file; empty, with the problem noted, when there is nothing that could be read further. */
    public static Optional<Document> load(Path file, Problems problems) {
        problems.inFile(file.toString());
        Problem problem;
        if (Files.isDirectory(file)) {
            problem = Problem.of(file.toString(), "this is a folder, not a file", Optional.empty());
        } else if (Files.exists(file) && !Files.isRegularFile(file)) {
            // A pipe or a device may never end.
            problem = Problem.of(file.toString(), "this is no plain file", Optional.empty());
        } else {
            try (InputStream in = Files.newInputStream(file)) {
                return load(file.toString(), in, problems);
            } catch (NoSuchFileException e) {
                problem = Problem.missing(file.toString(), Siblings.nearestFile(file));
            } catch (AccessDeniedException e) {
                problem = Problem.of(file.toString(), "the file may not be read", Optional.empty());
            } catch (IOException e) {
                problem = Problem.unreadable(file.toString(), e);
            }
        }
        problems.add(problem);
        return Optional.empty();
    }

    /** Reads a stream to its end; it is not closed. */
    public static Optional<Document> load(String name, InputStream in, Problems problems) throws IOException {
        problems.inFile(name);
        byte[] bytes = in.readNBytes(LARGEST + 1);
        if (bytes.length > LARGEST) {
            problems.add(Problem.of(name, "larger than 1 MiB, so this is no file written by hand", Optional.empty()));
            return Optional.empty();
        }
        Utf8 decoded = Utf8.of(name, bytes);
        decoded.problem().ifPresent(problems::add);
        return decoded.problem().isPresent() ? Optional.empty() : parse(name, decoded.text(), problems);
    }

    /** Reads a text that came from somewhere else, as with a rule folder that was packed. */
    public static Optional<Document> parse(String name, String written, Problems problems) {
        problems.inFile(name);
        String text = written.startsWith("\uFEFF") ? written.substring(1) : written;
        Document document = new Document(name, text.lines().toList(), problems);
        int strange = 0;
        while (strange < text.length() && StreamReader.isPrintable(text.codePointAt(strange))) {
            strange += Character.charCount(text.codePointAt(strange));
        }
        if (strange < text.length()) {
            problems.add(Utf8.after(name, text.substring(0, strange), String.format(
                    "the character U+%04X has no place in a text file", text.codePointAt(strange))));
            return Optional.empty();
        }
        for (int line = 1; line <= document.lines.size(); line++) {
            if (document.lines.get(line - 1).length() > LONGEST_LINE) {
                problems.add(new Problem(name, line, LONGEST_LINE + 1, "the line is longer than " + LONGEST_LINE
                        + " characters", Optional.empty(), false, ""));
                return Optional.empty();
            }
        }
        return document.compose(text) ? Optional.of(document) : Optional.empty();
    }

    private boolean compose(String text) {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(LARGEST);
        options.setNestingDepthLimit(DEEPEST);
        // Aliases and tags are refused below, with their place; here they would end the reading without one.
        options.setMaxAliasesForCollections(Integer.MAX_VALUE);
        options.setTagInspector(tag -> true);
        Parser parser = new ParserImpl(new StreamReader(text), options);
        Composer composer = new Composer(parser, new Resolver(), options);
        try {
            if (!composer.checkNode()) {
                problems.add(problem(1, 1, "the file is empty", Optional.empty(), false));
                return false;
            }
            Node node = composer.getNode();
            if (composer.checkNode()) {
                error(parser.peekEvent().getStartMark(), "a second document starts here; one file holds one");
                return false;
            }
            return accept(node);
        } catch (MarkedYAMLException e) {
            syntax(e);
        } catch (YAMLException e) {
            Event next = parser.peekEvent();
            error(next.getStartMark(), e.getMessage().startsWith("Nesting Depth")
                    ? "nested more than " + DEEPEST + " deep" : "is not YAML: " + Text.line(e.getMessage()));
        }
        return false;
    }

    private boolean accept(Node node) {
        if (node.getTag().equals(Tag.NULL)) {
            problems.add(problem(1, 1, "the file is empty", Optional.empty(), false));
            return false;
        }
        int before = problems.count();
        refuse(node, Collections.newSetFromMap(new IdentityHashMap<>()));
        if (problems.count() > before) {
            return false;
        }
        if (!(node instanceof MappingNode map)) {
            error(node, "should be keys with values, like \"title: Third run\", not " + kind(node));
            return false;
        }
        root = map;
        return true;
    }

    /** Notes anchors and tags. What hangs on an anchor is not entered, so a bomb is never unfolded. */
    private void refuse(Node node, Set<Node> seen) {
        if (node.getAnchor() != null) {
            if (seen.add(node)) {
                error(node, "anchors and aliases (&" + node.getAnchor() + ", *" + node.getAnchor()
                        + ") are not read here; write the values out");
            }
            return;
        }
        if (!PLAIN_TAGS.contains(node.getTag())) {
            error(node, "tags such as " + Text.quoted(node.getTag().getValue().replace(Tag.PREFIX, "!!"))
                    + " are not read here; leave it out");
            return;
        }
        if (node instanceof MappingNode map) {
            for (NodeTuple entry : map.getValue()) {
                refuse(entry.getKeyNode(), seen);
                refuse(entry.getValueNode(), seen);
            }
        } else if (node instanceof SequenceNode list) {
            list.getValue().forEach(item -> refuse(item, seen));
        }
    }

    /** Says in plain words what the parser found, at the place that a person has to mend. */
    private void syntax(MarkedYAMLException e) {
        String problem = Text.line(e.getProblem());
        if (e.getContextMark() != null && problem.startsWith("could not find expected ':'")) {
            error(e.getContextMark(), "this is no key with a \":\" and a value");
        } else if (e.getContextMark() != null && problem.startsWith("found unexpected end of stream")) {
            error(e.getContextMark(), "this quotation mark is never closed");
        } else {
            int line = e.getProblemMark().getLine();
            boolean shifted = problem.startsWith("mapping values are not allowed") && line > 0 && line < lines.size()
                    && lines.get(line).indexOf(':') == e.getProblemMark().getColumn()
                    && KEY.matcher(lines.get(line)).lookingAt() && KEY.matcher(lines.get(line - 1)).lookingAt()
                    && indent(lines.get(line)) > indent(lines.get(line - 1));
            error(e.getProblemMark(), shifted ? SHIFTED : plainly(problem));
        }
    }

    private static int indent(String line) {
        return line.length() - line.stripLeading().length();
    }

    private static String plainly(String problem) {
        if (problem.contains("TAB")) {
            return "YAML is indented with spaces; here is a tab";
        }
        if (problem.startsWith("mapping values are not allowed")) {
            return "a \": \" too many in this line; put a text with a colon in quotes, or start a new line";
        }
        if (problem.startsWith("expected <block end>")) {
            return SHIFTED;
        }
        if (problem.startsWith("expected ',' or")) {
            return "a \",\" or a closing bracket is missing before this";
        }
        return "is not YAML: " + problem;
    }

    /** The keys at the top of the file, to be asked for one by one. */
    public Fields fields(String noun) {
        return new Fields(root, this, noun);
    }

    /** The keys at the top of the file. */
    public MappingNode root() {
        return root;
    }

    /** The file as it was named. */
    public String name() {
        return name;
    }

    /** Notes an error at a node. */
    public void error(Node at, String message) {
        error(at.getStartMark(), message);
    }

    /** Notes an error at a node, with what was most likely meant. */
    public void error(Node at, String message, Optional<String> suggestion) {
        problems.add(problem(at.getStartMark(), message, suggestion, false));
    }

    /** Notes a warning at a node. */
    public void warn(Node at, String message) {
        problems.add(problem(at.getStartMark(), message, Optional.empty(), true));
    }

    private void error(Mark at, String message) {
        problems.add(problem(at, message, Optional.empty(), false));
    }

    private Problem problem(Mark at, String message, Optional<String> suggestion, boolean warning) {
        return at.getLine() < 0 ? new Problem(at.getName(), 0, 0, message, suggestion, warning, "")
                : problem(at.getLine() + 1, at.getColumn() + 1, message, suggestion, warning);
    }

    private Problem problem(int line, int column, String message, Optional<String> suggestion, boolean warning) {
        String excerpt = line <= lines.size() ? Text.line(lines.get(line - 1)) : "";
        return new Problem(name, line, column, message, suggestion, warning, excerpt);
    }

    /** The line that a node starts in, for a reference from elsewhere. */
    public static int lineOf(Node node) {
        return node.getStartMark().getLine() + 1;
    }

    /** What a node is, for a sentence. */
    public static String kind(Node node) {
        return node instanceof MappingNode ? "keys with values" : node instanceof SequenceNode ? "a list"
                : Text.quoted(((ScalarNode) node).getValue());
    }

    /** Whether somebody wrote a key and left its value open. */
    public static boolean open(Node node) {
        return node.getTag().equals(Tag.NULL);
    }
}
