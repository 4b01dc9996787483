package camberwell.explain;

/** A finding and the rules that it rests on. */
public record Derived(String finding, Sum sum) {
}
