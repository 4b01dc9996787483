package camberwell.advice;

import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** The order in the making: the changes that are advised, best first, and those that are withheld, each with the reason. */
final class Ranking {

    private final Worth worth;
    private final List<RankedChange> ranked = new ArrayList<>();
    private final Map<Change, Withheld> withheld = new LinkedHashMap<>();

    /** @param worth what is said of each change */
    Ranking(Worth worth) {
        this.worth = worth;
    }

    boolean isEmpty() {
        return ranked.isEmpty();
    }

    /** The best. */
    RankedChange first() {
        return ranked.get(0);
    }

    /** Best first, as it stands now. */
    List<RankedChange> changes() {
        return List.copyOf(ranked);
    }

    /** What is advised, best first. */
    List<Change> advised() {
        return ranked.stream().map(RankedChange::change).toList();
    }

    /** In the vocabulary's order. */
    List<Withheld> withheld() {
        return withheld.values().stream().sorted(Comparator.comparing(Withheld::change)).toList();
    }

    /** What is withheld, in the order in which it was. */
    List<Change> out() {
        return List.copyOf(withheld.keySet());
    }

    /** Adds a change behind all others. */
    void add(RankedChange change) {
        withheld.remove(change.change());
        ranked.add(change.at(ranked.size() + 1));
    }

    /** Puts a change before all others; no other of its adjuster stays, whichever way. */
    void lead(RankedChange change) {
        withheld.remove(change.change());
        drop(change.change().adjuster());
        ranked.add(0, change);
    }

    /** Puts a change that is advised before all others, and says why. */
    void first(Change change, String why) {
        ranked.stream().filter(other -> other.change().equals(change)).findFirst()
                .ifPresent(found -> lead(found.explained(why)));
    }

    /** Takes out every change of an adjuster; nothing is said of why. */
    void drop(Adjuster adjuster) {
        ranked.removeIf(other -> other.change().adjuster() == adjuster);
    }

    /** Changes each as it stands. */
    void replace(UnaryOperator<RankedChange> with) {
        ranked.replaceAll(with);
    }

    /** Orders by worth alone. */
    void byScore() {
        ranked.sort(Comparator.comparingDouble(change -> -change.score().total()));
    }

    /** Withholds a change, advised or not, unless it is already. */
    void withhold(Change change, String reason, List<String> by) {
        withhold(new Withheld(change, reason, by, worth.said(change)));
    }

    /** Withholds a change, advised or not, unless it is already. */
    void withhold(Withheld change) {
        ranked.removeIf(other -> other.change().equals(change.change()));
        withheld.putIfAbsent(change.change(), change);
    }

    /** Gives each its place, from 1. */
    void number() {
        for (int i = 0; i < ranked.size(); i++) {
            ranked.set(i, ranked.get(i).at(i + 1));
        }
    }
}
