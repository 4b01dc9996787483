package camberwell.cli;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.Function;

/** Works on many things with all cores and hands the results on in order, holding only a few of them at a time. */
final class InOrder {

    private static final int AHEAD_PER_CORE = 16;

    private InOrder() {
    }

    /** Applies {@code work} to every item and gives the results to {@code sink}, first item first, on this thread. */
    static <T, R> void forEach(List<T> items, Function<T, R> work, Consumer<R> sink) {
        if (items.size() < 2) {
            items.forEach(item -> sink.accept(work.apply(item)));
            return;
        }
        int cores = Math.min(Runtime.getRuntime().availableProcessors(), items.size());
        ExecutorService pool = Executors.newFixedThreadPool(cores);
        try {
            Deque<Future<R>> ahead = new ArrayDeque<>();
            for (T item : items) {
                if (ahead.size() >= cores * AHEAD_PER_CORE) {
                    sink.accept(result(ahead.removeFirst()));
                }
                ahead.addLast(pool.submit(() -> work.apply(item)));
            }
            while (!ahead.isEmpty()) {
                sink.accept(result(ahead.removeFirst()));
            }
        } finally {
            pool.shutdownNow();
        }
    }

    private static <R> R result(Future<R> future) {
        try {
            return future.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
