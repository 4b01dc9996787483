package camberwell.fact;

/** That evidence about {@code finding} is to be combined, when there is any. */
public record Watched(String finding) {
}
