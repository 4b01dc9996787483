package camberwell.cli;

/** How a result is written. */
enum Format {
    TEXT, JSON, JSONL
}
