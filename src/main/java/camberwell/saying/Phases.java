package camberwell.saying;

import camberwell.vocabulary.Phase;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What several phases in one breath mean: "when I lift mid-corner" is lift-off, "on the brakes into the corner" entry. */
final class Phases {

    /** A phase, and those that say no more than where or when it is. */
    private static final Map<Phase, List<Phase>> OVER = Map.of(
            Phase.KERBS, List.of(Phase.ENTRY, Phase.LIFT_OFF, Phase.MID_CORNER, Phase.EXIT, Phase.STRAIGHT),
            Phase.LIFT_OFF, List.of(Phase.ENTRY, Phase.MID_CORNER, Phase.EXIT, Phase.STRAIGHT),
            Phase.EXIT, List.of(Phase.MID_CORNER, Phase.STRAIGHT),
            Phase.ENTRY, List.of(Phase.BRAKING, Phase.STRAIGHT),
            Phase.BRAKING, List.of(Phase.STRAIGHT, Phase.KERBS));

    private Phases() {
    }

    /**
     * The phases that are meant.
     *
     * @param onTheBrakes whether what is told happens on the brakes where those are named at all
     */
    static List<Phase> meant(List<Phase> said, boolean onTheBrakes) {
        return onTheBrakes && said.contains(Phase.BRAKING) ? List.of(Phase.BRAKING) : meant(said);
    }

    /** The phases that are meant, at least one of those that were said. */
    static List<Phase> meant(List<Phase> said) {
        List<Phase> meant = new ArrayList<>();
        for (Phase phase : said) {
            boolean covered = said.stream().anyMatch(other -> other != phase
                    && OVER.getOrDefault(other, List.of()).contains(phase));
            if (!covered && !meant.contains(phase)) {
                meant.add(phase);
            }
        }
        return meant;
    }
}
