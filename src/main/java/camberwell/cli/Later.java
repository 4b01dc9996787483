package camberwell.cli;

import java.util.function.Supplier;

/**
 * A value made when it is first asked for, once, by whichever thread asks.
 *
 * @param <T> the value
 */
final class Later<T> {

    private final Supplier<T> maker;
    private volatile T made;

    Later(Supplier<T> maker) {
        this.maker = maker;
    }

    T get() {
        T ready = made;
        return ready != null ? ready : make();
    }

    private synchronized T make() {
        if (made == null) {
            made = maker.get();
        }
        return made;
    }

    /**
     * Begins on another core what somebody will ask for in a moment.
     *
     * @param name the thread's
     * @param work what is done; whoever asks for what it makes is told what went wrong
     */
    static void ahead(String name, Runnable work) {
        Thread thread = new Thread(() -> {
            try {
                work.run();
            } catch (RuntimeException e) {
                // It is told to whoever asks.
            }
        }, name);
        thread.setDaemon(true);
        thread.start();
    }
}
