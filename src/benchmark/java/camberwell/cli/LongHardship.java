package camberwell.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;

/**
 * The long run of damaged input: of each kind one after the other, of debriefs, which are ten lines each, an eighth as many.
 * Prints every defect at once, and at the end what was tried and how long it took.
 */
public final class LongHardship {

    private LongHardship() {
    }

    /** What was tried of one kind. */
    private static final class Count {
        private int tried;
        private int defects;
        private long nanoseconds;
    }

    /**
     * The distribution's folder, which is not used, and a folder to work in. The system property {@code tries} says how many
     * tries a kind, 12 500 if it does not, and {@code minutes} when to stop all the same.
     */
    public static void main(String[] arguments) throws IOException {
        int tries = Integer.getInteger("tries", 12_500);
        long end = System.nanoTime() + Integer.getInteger("minutes", 600) * 60_000_000_000L;
        long first = System.currentTimeMillis();
        Map<Hardship.Kind, Hardship> hardships = new EnumMap<>(Hardship.Kind.class);
        Map<Hardship.Kind, Count> counts = new EnumMap<>(Hardship.Kind.class);
        for (Hardship.Kind kind : Hardship.Kind.values()) {
            hardships.put(kind, new Hardship(Files.createTempDirectory("hardship")));
            counts.put(kind, new Count());
        }
        for (int i = 0; i < tries && System.nanoTime() < end; i++) {
            for (Hardship.Kind kind : Hardship.Kind.values()) {
                if (kind != Hardship.Kind.DEBRIEF || i % 8 == 0) {
                    one(kind, first + i, hardships.get(kind), counts.get(kind));
                }
            }
        }
        int files = 0;
        int defects = 0;
        for (Map.Entry<Hardship.Kind, Count> entry : counts.entrySet()) {
            Count count = entry.getValue();
            System.out.printf(Locale.ROOT, "%-14s %6d tried, %d defects, %.0f s%n", entry.getKey(), count.tried, count.defects,
                    count.nanoseconds / 1e9);
            files += entry.getKey().file() ? count.tried : 0;
            defects += count.defects;
        }
        System.out.println(files + " files, " + defects + " defects.");
    }

    private static void one(Hardship.Kind kind, long seed, Hardship hardship, Count count) {
        long start = System.nanoTime();
        hardship.defect(kind, seed).ifPresent(defect -> {
            count.defects++;
            System.out.println(kind + " seed " + seed + ": " + defect);
        });
        count.tried++;
        count.nanoseconds += System.nanoTime() - start;
    }
}
