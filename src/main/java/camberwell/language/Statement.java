package camberwell.language;

import camberwell.fact.Amount;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Group;
import camberwell.vocabulary.Word;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a rule says when it fires. */
public sealed interface Statement extends Meaning {

    /** That something is the case; alone where it is told and nothing need follow from it. */
    record Find(String finding, double certainty, boolean alone) implements Statement {
    }

    /** That something is not the case. */
    record SpeakAgainst(String finding, double certainty) implements Statement {
    }

    /** A word for a change, and how far it goes, where the rule says so. */
    record Propose(Change change, double certainty, Optional<Amount> amount) implements Statement {
    }

    /** That a change comes before the others. */
    record First(Change change, double certainty) implements Statement {
    }

    /** A word against a change. */
    record Oppose(Change change, double certainty) implements Statement {
    }

    /** That a change has to wait; where none is named a group, every balance change, or those that load an axle's tyres. */
    record Withhold(Optional<Change> change, Optional<Group> group, Optional<Axle> loading,
            double certainty) implements Statement {
    }

    /** Advice to the driver, by the name of its note. */
    record Advise(String driving, double certainty) implements Statement {
    }

    /** A caution, by the name of its note. */
    record Caution(String caution, double certainty) implements Statement {
    }

    /** How sure the rule is of it, in (0, 1], whether it speaks for or against. */
    double certainty();

    /** What kinds of statement there are, as the dictionary calls them by the engine's method. */
    enum Verb {
        FIND("find", "find", 2), DIAGNOSE("diagnose", "diagnose", 2), SPEAK_AGAINST("speakAgainst", "speak against findings", 2),
        PROPOSE("propose", "propose", 3), PROPOSE_BY("proposeBy", "propose", 4),
        PROPOSE_TO("proposeTo", "propose", 4), PROPOSE_BY_FIGURE("proposeByFigure", "propose", 4),
                FIRST("first", "put changes first", 2), OPPOSE("oppose", "oppose", 3), WITHHOLD("withhold", "withhold", 2),
        WITHHOLD_BALANCE("withholdBalance", "withhold", 0), WITHHOLD_LOADING("withholdLoading", "withhold", 1),
        WITHHOLD_GROUP("withholdGroup", "withhold", 1), ADVISE("advise", "advise", 2),
        CAUTION("caution", "caution", 1);

        private final String method;
        private final String spoken;
        private final int arguments;

        Verb(String method, String spoken, int arguments) {
            this.method = method;
            this.spoken = spoken;
            this.arguments = arguments;
        }

        /** What a rule of another stage does not do, in words. */
        public String spoken() {
            return spoken;
        }

        /** How many arguments the call has. */
        int arguments() {
            return arguments;
        }

        /** The verb that the engine's method of that name does, if there is one. */
        static Optional<Verb> of(String method) {
            for (Verb verb : values()) {
                if (verb.method.equals(method)) {
                    return Optional.of(verb);
                }
            }
            return Optional.empty();
        }
    }

    /**
     * The statement that a call makes.
     *
     * @throws IllegalArgumentException if an adjuster does not move that way
     */
    static Statement of(Verb verb, List<String> said) {
        return switch (verb) {
            case FIND -> new Find(said.get(0), Double.parseDouble(said.get(1)), false);
            case DIAGNOSE -> new Find(said.get(0), Double.parseDouble(said.get(1)), true);
            case SPEAK_AGAINST -> new SpeakAgainst(said.get(0), Double.parseDouble(said.get(1)));
            case PROPOSE -> new Propose(change(said), Double.parseDouble(said.get(2)), Optional.empty());
            case PROPOSE_BY -> new Propose(change(said), Double.parseDouble(said.get(3)),
                    Optional.of(Amount.steps(said.get(2))));
            case PROPOSE_TO -> new Propose(change(said), Double.parseDouble(said.get(3)),
                    Optional.of(Amount.to(said.get(2))));
            case PROPOSE_BY_FIGURE -> new Propose(change(said), Double.parseDouble(said.get(3)),
                    Optional.of(Amount.by(said.get(2))));
            case FIRST -> new First(change(said), 1);
            case OPPOSE -> new Oppose(change(said), Double.parseDouble(said.get(2)));
            case WITHHOLD -> new Withhold(Optional.of(change(said)), Optional.empty(), Optional.empty(), 1);
            case WITHHOLD_BALANCE -> new Withhold(Optional.empty(), Optional.empty(), Optional.empty(), 1);
            case WITHHOLD_LOADING -> new Withhold(Optional.empty(), Optional.empty(),
                    Optional.of(Word.of(Axle.class, said.get(0))), 1);
            case WITHHOLD_GROUP -> new Withhold(Optional.empty(), Optional.of(Word.of(Group.class, said.get(0))),
                    Optional.empty(), 1);
            case ADVISE -> new Advise(said.get(0), Double.parseDouble(said.get(1)));
            case CAUTION -> new Caution(said.get(0), 1);
        };
    }

    private static Change change(List<String> said) {
        return new Change(Word.of(Adjuster.class, said.get(0)), Word.of(Direction.class, said.get(1)));
    }

    /** Whether it speaks for what it is about rather than against it. */
    default boolean speaksFor() {
        return !(this instanceof SpeakAgainst || this instanceof Oppose);
    }

    /** The finding that it speaks for or against, if it does. */
    default Optional<String> aboutFinding() {
        return this instanceof Find find ? Optional.of(find.finding())
                : this instanceof SpeakAgainst against ? Optional.of(against.finding()) : Optional.empty();
    }

    /** The change that it proposes, opposes or withholds, if it names one. */
    default Optional<Change> aboutChange() {
        return this instanceof Propose propose ? Optional.of(propose.change())
                : this instanceof Oppose oppose ? Optional.of(oppose.change())
                : this instanceof First first ? Optional.of(first.change())
                : this instanceof Withhold withhold ? withhold.change() : Optional.empty();
    }

    /** The axle whose load it minds, where it withholds what loads one. */
    private Optional<Axle> loading() {
        return this instanceof Withhold withhold ? withhold.loading() : Optional.empty();
    }

    /** The group of adjusters that it withholds, if it names one. */
    private Optional<Group> group() {
        return this instanceof Withhold withhold ? withhold.group() : Optional.empty();
    }

    /** The names of the notes that it leads to. */
    default Set<String> notes() {
        return this instanceof Advise advise ? Set.of(advise.driving())
                : this instanceof Caution caution ? Set.of(caution.caution())
                : aboutFinding().map(Set::of).orElseGet(() -> aboutChange().map(change -> Set.of(change.adjuster().note()))
                .orElse(Set.of()));
    }

    /** Whether {@code other} says the same, with whatever certainty. */
    default boolean saysSameAs(Statement other) {
        return getClass() == other.getClass() && aboutFinding().equals(other.aboutFinding())
                && aboutChange().equals(other.aboutChange()) && notes().equals(other.notes())
                && loading().equals(other.loading()) && group().equals(other.group());
    }

    /** Whether {@code other} says the contrary: of the same finding, or that the same adjuster goes elsewhere. */
    default boolean isOppositeOf(Statement other) {
        if (aboutFinding().isPresent()) {
            return aboutFinding().equals(other.aboutFinding()) && speaksFor() != other.speaksFor();
        }
        Optional<Change> mine = aboutChange();
        Optional<Change> others = other.aboutChange();
        if (mine.isEmpty() || others.isEmpty()) {
            return false;
        }
        boolean proposes = this instanceof Propose || this instanceof First;
        boolean otherProposes = other instanceof Propose || other instanceof First;
        return mine.equals(others) ? proposes != otherProposes
                : proposes && otherProposes && pullAgainst(mine.get(), others.get());
    }

    /** Whether two changes move the same the other way round: one adjuster, or an axle's pressure and a wheel's of it. */
    private static boolean pullAgainst(Change one, Change other) {
        boolean same = one.adjuster() == other.adjuster() || one.adjuster().note().equals(other.adjuster().note())
                && one.adjuster().wheel().isEmpty() != other.adjuster().wheel().isEmpty();
        return same && one.direction().opposite() == other.direction();
    }
}
