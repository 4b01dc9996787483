package camberwell.cli;

/** How a result is written: for a person, or, from the same records, for a program. */
enum Format {
    TEXT, JSON, JSONL, YAML;

    /** What the help says of {@code --format}. */
    static final String WRITTEN = "text, json, jsonl (json on one line) or yaml.";
    /** The same for a command that takes several cases. */
    static final String OF_CASES = "text, json (one object, or an array for several cases), jsonl (one line a case) or yaml "
            + "(one document a case).";
}
