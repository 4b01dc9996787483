package camberwell.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * The long run of damaged input: prints what was tried, how long it took and every defect. Of debriefs, which are ten lines
 * each, an eighth as many.
 */
public final class LongHardship {

    private LongHardship() {
    }

    /** The distribution's folder, which is not used; a folder to work in; and how many tries a kind, 12 500 if not said. */
    public static void main(String[] arguments) throws IOException {
        int tries = arguments.length > 2 ? Integer.parseInt(arguments[2]) : Integer.getInteger("tries", 12_500);
        long first = System.currentTimeMillis();
        int defects = 0;
        for (Hardship.Kind kind : Hardship.Kind.values()) {
            Path folder = Files.createTempDirectory("hardship");
            Hardship hardship = new Hardship(folder);
            long start = System.nanoTime();
            int wrong = 0;
            int wanted = kind == Hardship.Kind.DEBRIEF ? tries / 8 : tries;
            for (long seed = first; seed < first + wanted; seed++) {
                var defect = hardship.defect(kind, seed);
                if (defect.isPresent()) {
                    wrong++;
                    System.out.println(kind + " seed " + seed + ": " + defect.get());
                }
            }
            System.out.printf(Locale.ROOT, "%-14s %d tried, %d defects, %.0f s%n", kind, wanted, wrong,
                    (System.nanoTime() - start) / 1e9);
            defects += wrong;
        }
        System.out.println(defects + " defects.");
    }
}
