package camberwell.cli;

import camberwell.engine.RuleBase;
import camberwell.explain.DemoCases;
import java.nio.file.Path;
import java.util.List;

/** A process that does one thing over and over until it is killed, and tells each time once it is done. */
public final class Killed {

    /** What it does. */
    enum Work {
        DEBRIEF("understeer entry slow\ndone\nquit\n",
                "debrief --car car.yaml --save talk-%d.yaml --transcript talk-%d.md --overwrite"),
        NEW_RULE(String.join("\n", "changes", "the driver reports kerb-instability", "", "propose front-bump softer with "
                + "certainty 0.3", "", "Kerbs lift the wheel.", "", "", "", "", "") + "\n", "rules new Kerbs-%d --into mine/%d"),
        PACK("", "rules pack sound -o sound.zip --overwrite"),
        RUN("", "runs add begun.yaml --book book --date 2026-05-03 --laps 92.3");

        private final String typed;
        private final String line;

        Work(String typed, String line) {
            this.typed = typed;
            this.line = line;
        }

        /** Does it for the n-th time; what came of it. */
        Ran once(Path folder, Engine engine, int n) {
            return Ran.in(folder, 80, typed, engine, line.replace("%d", String.valueOf(n)).split(" "));
        }
    }

    private Killed() {
    }

    /** What to do, and where. */
    public static void main(String[] arguments) {
        Work work = Work.valueOf(arguments[0]);
        Path folder = Path.of(arguments[1]);
        Engine engine = new Engine(DemoCases.HOME.toAbsolutePath(), RuleBase.defaultCache());
        for (int n = 0; n < Integer.MAX_VALUE; n++) {
            Ran ran = work.once(folder, engine, work == Work.DEBRIEF ? n % 3 : n);
            if (ran.code() != ExitCode.DONE) {
                System.out.println("failed: " + List.of(arguments) + ran.all());
                return;
            }
            System.out.println("done");
            System.out.flush();
        }
    }
}
