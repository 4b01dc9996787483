package camberwell.pack;

import camberwell.yaml.Document;
import camberwell.yaml.Fields;
import camberwell.yaml.Problems;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What a rule folder says of itself in {@code pack.yaml}.
 *
 * @param name letters, numbers and dashes
 * @param version numbers with points between them
 * @param author whoever answers for the rules
 * @param off the rules of earlier folders or of camberwell's own that it switches off, by name or id
 * @param needs what it builds on: {@code camberwell} or another folder's name, and from which version on
 */
public record Manifest(String name, String version, String author, List<String> off, List<String> needs) {

    /** The version of this camberwell. */
    public static final String CAMBERWELL = "0.1.0";

    private static final int LONGEST_AUTHOR = 100;
    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]{0,59}");
    private static final Pattern VERSION = Pattern.compile("[0-9]{1,4}(\\.[0-9]{1,4}){0,3}");

    /** Reads one; empty, with the problems noted, when something is wrong with it. */
    static Optional<Manifest> read(String file, String text, Problems problems) {
        int before = problems.count();
        return Document.parse(file, text, problems).map(document -> read(document.fields("key")))
                .filter(manifest -> problems.count() == before);
    }

    private static Manifest read(Fields fields) {
        List.of("name", "version", "author").forEach(fields::require);
        String name = fields.matching("name", NAME, "is made of small letters, numbers and dashes").orElse("");
        String version = fields.matching("version", VERSION, "is numbers with points between them").orElse("");
        String author = fields.text("author").orElse("").strip();
        if (author.length() > LONGEST_AUTHOR) {
            fields.error("author", "the author's name is longer than " + LONGEST_AUTHOR + " characters");
        }
        List<String> needs = fields.texts("needs");
        if (!needs.stream().allMatch(Manifest::isNeed)) {
            fields.error("needs", "\"needs\" is a list of names with a version, for instance [camberwell " + CAMBERWELL
                    + "]");
        }
        List<String> off = fields.texts("switch-off");
        fields.done();
        return new Manifest(name, version, author, List.copyOf(off), List.copyOf(needs));
    }

    /** Whether a pack may be called that; such a name is a file's name on every system. */
    static boolean isName(String name) {
        return NAME.matcher(name).matches();
    }

    private static boolean isNeed(String need) {
        String[] words = need.split(" ");
        return words.length <= 2 && NAME.matcher(words[0]).matches()
                && (words.length == 1 || VERSION.matcher(words[1]).matches());
    }

    /**
     * What stands in the way of a pack.
     *
     * @param about the words of its file that it is about
     */
    public record Obstacle(String about, String told) {
    }

    /** What stands in its way beside {@code before}, the packs that are read before it: each need that is not met. */
    public List<Obstacle> obstacles(List<Manifest> before) {
        List<Obstacle> obstacles = new ArrayList<>();
        for (String need : needs) {
            String[] words = need.split(" ");
            String least = words.length > 1 ? words[1] : "0";
            Optional<Manifest> other = before.stream().filter(it -> it.name.equals(words[0])).findFirst();
            if (words[0].equals("camberwell")) {
                if (compare(CAMBERWELL, least) < 0) {
                    obstacles.add(new Obstacle(need, "needs camberwell " + least + ", and this is " + CAMBERWELL
                            + "; install a newer camberwell"));
                }
            } else if (other.isEmpty()) {
                obstacles.add(new Obstacle(need, "needs " + need + ", which is not here; name it with --rules before this one"));
            } else if (compare(other.get().version, least) < 0) {
                obstacles.add(new Obstacle(need, "needs " + need + ", and the one here is " + other.get().version));
            }
        }
        before.stream().filter(other -> other.name.equals(name)).forEach(other -> obstacles.add(new Obstacle(name,
                "is in use twice, in version " + other.version + " and in version " + version + "; take one of them")));
        return obstacles;
    }

    private static int compare(String one, String other) {
        int[] a = Arrays.stream(one.split("\\.")).mapToInt(Integer::parseInt).toArray();
        int[] b = Arrays.stream(other.split("\\.")).mapToInt(Integer::parseInt).toArray();
        return Arrays.compare(Arrays.copyOf(a, 4), Arrays.copyOf(b, 4));
    }
}
