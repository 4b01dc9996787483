package camberwell.pack;

import camberwell.problem.Problem;
import camberwell.yaml.Document;
import camberwell.yaml.Fields;
import camberwell.yaml.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A rule that is no more.
 *
 * @param id its id, which is not given again
 * @param title as it was called last
 * @param version the version of the rule base that does not have it any more
 * @param because why it went
 */
record Retired(String id, String title, String version, String because) {

    /** The file that lists them. */
    static final String FILE = "rules/retired.yaml";

    private static final Pattern ID = Pattern.compile("[A-Z]{2,6}-[0-9]{1,3}[FR]?[a-l]?");
    private static final Pattern VERSION = Pattern.compile("[0-9]{1,4}(\\.[0-9]{1,4}){0,3}");

    /** Reads the list; what is wrong with it is noted. */
    static List<Retired> read(String text, List<Problem> problems) {
        Problems found = new Problems();
        List<Retired> retired = new ArrayList<>();
        Document.parse(FILE, text, found).ifPresent(document -> {
            Fields fields = document.fields("key");
            fields.require("retired");
            fields.maps("retired", "key").forEach(entry -> retired.add(read(entry)));
            fields.done();
        });
        problems.addAll(found.all());
        return List.copyOf(retired);
    }

    private static Retired read(Fields entry) {
        List.of("id", "title", "version", "because").forEach(entry::require);
        Retired retired = new Retired(entry.matching("id", ID, "is capitals, a dash and a number").orElse(""),
                entry.text("title").orElse(""),
                entry.matching("version", VERSION, "is numbers with points between them").orElse(""),
                entry.text("because").orElse(""));
        entry.done();
        return retired;
    }

    /** Whether somebody who names that rule, by its id or its title, means this one. */
    boolean isNamed(String name) {
        return id.equals(name) || title.equals(name);
    }

    /** That it went, in words: {@code was retired in 0.2.0: Why it went} */
    String told() {
        return "was retired in " + version + ": " + (because.endsWith(".") ? because.substring(0, because.length() - 1)
                : because);
    }

    /** The retired rule of that id or title, if there is one. */
    static Optional<Retired> named(String name, List<Retired> all) {
        return all.stream().filter(one -> one.isNamed(name)).findFirst();
    }
}
