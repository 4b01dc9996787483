package camberwell.cli;

/** How far a long run is, on standard error, where a person looks at it. */
final class Progress {

    private static final long PATIENCE_NANOS = 2_000_000_000L;
    private static final long EVERY_NANOS = 200_000_000L;

    private final Console console;
    private final int total;
    private final long start = System.nanoTime();
    private long last = start;
    private int count;

    Progress(Console console, int total) {
        this.console = console;
        this.total = total;
    }

    void step() {
        count++;
        long now = System.nanoTime();
        if (console.interactive() && now - start > PATIENCE_NANOS && now - last > EVERY_NANOS) {
            console.err().print("\r" + count + " of " + total);
            last = now;
        }
    }

    void done() {
        if (last != start) {
            console.err().print("\r" + " ".repeat(30) + "\r");
        }
    }
}
