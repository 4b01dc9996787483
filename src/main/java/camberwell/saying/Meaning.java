package camberwell.saying;

import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.List;

/** What a phrase means. */
sealed interface Meaning {

    /** A complaint that is said whole, with words that narrow it. */
    record Complaint(Symptom symptom, List<Word> words) implements Meaning {
    }

    /**
     * What a sentence is about.
     *
     * @param name as the phrases' file has it: {@code car}, {@code rear}, {@code steering}
     * @param place the end of the car that it names besides; empty for none
     */
    record Thing(String name, String place) implements Meaning {
    }

    /** What a thing does; together they make a complaint. */
    record Doing(String name) implements Meaning {
    }

    /**
     * Where, when, how bad or how often.
     *
     * @param role what it is to the words round it
     */
    record Circumstance(List<Word> words, Role role) implements Meaning {

        /** Whether it is something that the driver does. */
        boolean act() {
            return role == Role.ACT;
        }
    }

    /** What a circumstance is to the words round it. */
    enum Role {
        /** Says so by itself. */
        PLACE,
        /** Something that the driver does just then. */
        ACT,
        /** Counts only straight before what it raises: "really". */
        RAISES,
        /** Counts only before a kind of corner: "out of" a hairpin. */
        TOWARDS
    }

    /** A word that changes how the rest is taken. */
    enum Sign implements Meaning {
        /** At once, without warning. */
        SUDDENLY,
        /** Nothing wrong. */
        FINE,
        NOT,
        /** There no more. */
        GONE,
        /** Other than before. */
        NOW,
        /** What follows is only compared with. */
        THAN,
        /** What was not, is wished, asked or feared. */
        UNREAL,
        /** Somebody or something else than the car. */
        OTHERS,
        /** Says nothing by itself. */
        PLAIN,
        /** Not as bad as it was, which tells of no complaint. */
        BETTER,
        AND,
        BUT,
        /** But not there. */
        EXCEPT,
        THEN,
        OR
    }
}
