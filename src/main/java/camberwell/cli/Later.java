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
}
