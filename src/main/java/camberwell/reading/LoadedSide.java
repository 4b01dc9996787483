package camberwell.reading;

import camberwell.run.Case;
import camberwell.run.Report;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Wheel;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which turns load the tyres that camber is judged on.
 *
 * @param turns both where nothing tells the sides apart: each tyre is then the loaded one in some turns
 * @param reported whether that follows from complaints of one direction, not from the circuit
 */
public record LoadedSide(Turn turns, boolean reported) {

    /**
     * As the circuit says; on a circuit that turns both ways, as the complaints say if every one that names a direction
     * names the same one.
     */
    static LoadedSide of(Case run) {
        Turn circuit = run.conditions().turns();
        if (circuit.oneSided()) {
            return new LoadedSide(circuit, false);
        }
        Set<Turn> said = run.reports().stream().map(Report::turn).flatMap(turn -> turn.stream())
                .collect(Collectors.toSet());
        return said.size() == 1 && said.iterator().next().oneSided()
                ? new LoadedSide(said.iterator().next(), true) : new LoadedSide(Turn.BOTH, false);
    }

    /** Whether that wheel is on the outside in those turns. */
    public boolean loads(Wheel wheel) {
        return wheel.loadedIn(turns);
    }

    /** In words: {@code judged on the right-hand tyres, outside in the left turns that most turns are}. */
    public String text() {
        if (!turns.oneSided()) {
            return "judged on the tyres of both sides: each is outside in some turns";
        }
        return "judged on the " + (turns == Turn.LEFT ? "right" : "left") + "-hand tyres, outside in the " + turns.id()
                + " turns that " + (reported ? "the complaints are about" : "most turns of the circuit are");
    }
}
