package camberwell.language;

import camberwell.vocabulary.Nearest;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The annotations of one rule: its reason, its note, and what it is called and counts. */
final class Annotations {

    private static final Pattern ANNOTATION = Pattern.compile("@(\\w+)\\(\"([^\"]*)\"\\)\\s*");
    private static final Pattern BEGUN = Pattern.compile("@(\\w+)");
    private static final Pattern ID = Pattern.compile("[A-Z]{2,6}-[0-9]{1,3}");
    private static final Pattern VERSION = Pattern.compile("[0-9]{1,4}(\\.[0-9]{1,4}){0,3}");
    private static final String TRIAL = "trial";
    private static final List<String> KNOWN = List.of("because", "note", "replaces", "id", "since", "status");

    private final Names names;
    private final SentenceReader.Problems problems;
    private final Map<String, String> all = new HashMap<>();
    /** Those that somebody meant to write, so that they are not told to be missing as well. */
    private final Set<String> meant = new HashSet<>();

    Annotations(Names names, SentenceReader.Problems problems) {
        this.names = names;
        this.problems = problems;
    }

    /** Reads one line of a rule's head. */
    void read(String text, int number, int column) {
        Matcher matcher = ANNOTATION.matcher(text);
        if (!matcher.matches()) {
            Matcher begun = BEGUN.matcher(text);
            if (begun.lookingAt()) {
                meant(begun.group(1));
            }
            problems.tell(number, column, text.startsWith("@") ? "an annotation reads @because(\"...\"), on one line"
                    : SentenceReader.RAW.matcher(text).matches() ? SentenceReader.raw(text)
                    : "expected @because(\"...\"), @note(\"...\") or when", Optional.empty());
            return;
        }
        String key = matcher.group(1);
        String said = matcher.group(2).strip();
        meant(key);
        if (!KNOWN.contains(key)) {
            problems.tell(number, column, "no annotation @" + key + " is allowed here", Nearest.to(key, KNOWN));
        } else if (all.putIfAbsent(key, said) != null) {
            problems.tell(number, column, "@" + key + " stands twice", Optional.empty());
        } else if (said.isEmpty()) {
            problems.tell(number, column, "@" + key + " is empty", Optional.empty());
        } else {
            wrong(key, said).ifPresent(message -> problems.tell(number, column + matcher.start(2), message,
                    key.equals("note") ? Nearest.to(said, names.all()) : Optional.empty()));
        }
    }

    private void meant(String key) {
        meant.add(Nearest.to(key, KNOWN).orElse(key));
    }

    private Optional<String> wrong(String key, String said) {
        return switch (key) {
            case "note" -> names.hasNote(said) ? Optional.empty()
                    : Optional.of("there is no knowledge note \"" + said + "\"");
            case "id" -> ID.matcher(said).matches() ? Optional.empty()
                    : Optional.of("an id is two to six capitals, a dash and a number, for instance TALL-7, not \"" + said
                    + "\"");
            case "since" -> VERSION.matcher(said).matches() ? Optional.empty()
                    : Optional.of("a version is numbers with points between them, not \"" + said + "\"");
            case "status" -> said.equals(TRIAL) ? Optional.empty()
                    : Optional.of("a rule is on trial, @status(\"trial\"), or it says nothing of it");
            default -> Optional.empty();
        };
    }

    /** Whether somebody meant to write it, however badly. */
    boolean has(String key) {
        return meant.contains(key);
    }

    /** What it says; empty where it is missing. */
    String text(String key) {
        return all.getOrDefault(key, "");
    }

    /**
     * The rule that it takes the place of.
     *
     * @param end the letter of the end that the rule is read for; empty where it is not for both
     */
    Optional<String> replaces(String end) {
        return Optional.ofNullable(all.get("replaces")).map(old -> ID.matcher(old).matches() ? old + end : old);
    }

    /**
     * Its id, and whether it is on trial.
     *
     * @param suffix what tells it from those read from the same lines
     */
    Standing standing(String suffix) {
        return new Standing(Optional.ofNullable(all.get("id")).map(id -> id + suffix), Optional.ofNullable(all.get("since")),
                all.containsKey("status"));
    }
}
