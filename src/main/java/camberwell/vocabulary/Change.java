package camberwell.vocabulary;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** An adjuster and the way it is moved, written {@code front-camber less-negative}. */
public record Change(Adjuster adjuster, Direction direction) implements Comparable<Change> {

    /** @throws IllegalArgumentException if the adjuster does not move that way */
    public Change {
        if (!adjuster.directions().contains(direction)) {
            throw new IllegalArgumentException(adjuster.id() + " moves " + adjuster.directions().get(0).id() + " or "
                    + adjuster.directions().get(1).id() + ", not " + direction.id());
        }
    }

    /** The change written {@code text}, if there is such an adjuster and it moves that way. */
    public static Optional<Change> parse(String text) {
        String[] words = text.trim().split("\\s+");
        if (words.length != 2) {
            return Optional.empty();
        }
        return Word.find(Adjuster.class, words[0]).flatMap(adjuster -> Word.find(Direction.class, words[1])
                .filter(adjuster.directions()::contains).map(direction -> new Change(adjuster, direction)));
    }

    /** Every change that the vocabulary knows, in its order. */
    public static List<Change> all() {
        List<Change> all = new ArrayList<>();
        for (Adjuster adjuster : Adjuster.values()) {
            adjuster.directions().forEach(direction -> all.add(new Change(adjuster, direction)));
        }
        return all;
    }

    /** The same adjuster the other way. */
    public Change opposite() {
        return new Change(adjuster, direction.opposite());
    }

    /** As it is written: {@code front-camber less-negative}. */
    public String id() {
        return adjuster.id() + " " + direction.id();
    }

    @Override
    public int compareTo(Change other) {
        int byAdjuster = adjuster.compareTo(other.adjuster);
        return byAdjuster != 0 ? byAdjuster : direction.compareTo(other.direction);
    }

    @Override
    public int hashCode() {
        return 31 * adjuster.ordinal() + direction.ordinal();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Change change && adjuster == change.adjuster && direction == change.direction;
    }

    @Override
    public String toString() {
        return id();
    }
}
