package camberwell.saying;

import camberwell.classifier.Features;
import java.util.ArrayList;
import java.util.List;

/** What speaks for something and against it, in so many words, for a {@link Judge} to weigh. */
final class Evidence {

    /** A step of the logarithm of odds: what lies within one counts alike. */
    private static final double STEP = 0.5;
    private static final double LEAST = 1e-4;

    private final List<String> all = new ArrayList<>();

    Evidence is(String what) {
        all.add(what);
        return this;
    }

    Evidence is(String what, boolean so) {
        return is(so ? what : "not " + what);
    }

    /** That something is that likely, 0 to 1, by itself and of that sort of thing. */
    Evidence likely(String what, double likely, String sort) {
        double within = Math.min(1 - LEAST, Math.max(LEAST, likely));
        long step = Math.round(StrictMath.log(within / (1 - within)) / STEP);
        return is(what + " " + step).is(sort + " " + what + " " + step);
    }

    /** That something is there that often; more than {@code most} is as much as that. */
    Evidence count(String what, long count, long most) {
        return is(what + " " + Math.min(count, most));
    }

    Evidence all(Evidence other) {
        all.addAll(other.all);
        return this;
    }

    int[] features() {
        return Features.of(List.of(), all, List.of());
    }
}
