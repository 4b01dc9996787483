package camberwell.saying;

import java.util.List;
import java.util.Set;

/**
 * Whether a complaint rests on too little to be taken without asking back. What a coach would ask about: a word that nobody
 * knows stands straight before the complaint and may turn it round, "explain oversteer"; one everyday word is all there is to
 * it, beside others that are not understood; a second thing happens in the same breath without a join, "cold tyres treacherous".
 */
final class Thin {

    /** Words that are said of a car and of much else. */
    private static final Set<String> EVERYDAY = Set.of("go", "slide", "light", "hard", "free", "nice", "hold", "catch", "move",
            "hit",
            "touch", "drag", "come", "smok", "kick", "jump", "throw", "lead", "swing", "drift", "heavy", "stiff", "slow", "late",
            "dead", "float", "dance", "run", "nothing", "work");

    private final Clause clause;
    private final Reading reading;
    private final List<Token> tokens;

    private Thin(Reading reading, Clause clause, List<Token> tokens) {
        this.reading = reading;
        this.clause = clause;
        this.tokens = tokens;
    }

    /** Whether that complaint of the clause is to be asked about. */
    static boolean is(Narrowing.Head head, Reading reading, Clause clause, List<Token> tokens) {
        Thin thin = new Thin(reading, clause, tokens);
        Atom said = head.said();
        return thin.strangeBefore(said) || thin.everyday(said) && !reading.unknown().isEmpty() || thin.secondWithoutJoin(head);
    }

    private boolean strangeBefore(Atom said) {
        return reading.unknown().stream().anyMatch(atom -> atom.to() == said.from()
                && !tokens.get(atom.from()).stem().equals("#"));
    }

    /** Whether it is one word that is said of much else, and of nothing that is named. */
    private boolean everyday(Atom said) {
        return said.words() == 1 && EVERYDAY.contains(tokens.get(said.from()).stem())
                && clause.atoms().stream().noneMatch(atom -> atom.as(Meaning.Thing.class).filter(it -> !it.name().equals("car")
                        && !it.name().equals("driver")).isPresent());
    }

    /** Whether it is something that is done, straight after another complaint, by nothing that is named in between. */
    private boolean secondWithoutJoin(Narrowing.Head head) {
        int at = reading.heads().indexOf(head);
        if (at < 1 || head.said().as(Meaning.Complaint.class).isPresent()) {
            return false;
        }
        Narrowing.Head before = reading.heads().get(at - 1);
        return !before.complaints().equals(head.complaints()) && before.said().to() < head.said().from()
                && clause.atoms().stream().noneMatch(atom -> atom.from() >= before.said().to() && atom.to() <= head.said().from()
                        && atom.as(Meaning.Thing.class).isPresent());
    }
}
