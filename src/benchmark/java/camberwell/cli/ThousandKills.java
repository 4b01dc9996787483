package camberwell.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Locale;
import java.util.Random;

/** Kills a thousand processes as they write, a quarter of each kind, and prints what was found wrong afterwards. */
public final class ThousandKills {

    private ThousandKills() {
    }

    /** Of each kind as many as the system property {@code kills} says, 250 if it does not. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        int kills = Integer.getInteger("kills", 250);
        int defects = 0;
        for (Killed.Work work : Killed.Work.values()) {
            long start = System.nanoTime();
            Killing killing = new Killing(Files.createTempDirectory("killed"), work);
            Random random = new Random();
            int wrong = 0;
            for (int i = 0; i < kills; i++) {
                for (String defect : killing.kill(random)) {
                    wrong++;
                    System.out.println(work + ": " + defect);
                }
            }
            for (String defect : killing.cleanedUp()) {
                wrong++;
                System.out.println(work + ": " + defect);
            }
            System.out.printf(Locale.ROOT, "%-9s %d kills, %d defects, %d drafts left and cleared away, %.0f s%n", work, kills,
                    wrong, killing.left(), (System.nanoTime() - start) / 1e9);
            defects += wrong;
        }
        System.out.println(defects + " defects.");
    }
}
