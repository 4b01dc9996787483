package camberwell.saying;

import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What is told of a saying so far, clause by clause, and what comes of it once all is heard. */
final class Account {

    final List<Telling> told = new ArrayList<>();
    final Set<Surface> surfaces = new LinkedHashSet<>();
    final List<Heard.Unclear> unclear = new ArrayList<>();
    final List<String> notUnderstood = new ArrayList<>();
    final List<Word> loose = new ArrayList<>();
    /** Whether it was said that all is well. */
    boolean fine;
    /** Whether a problem was named. */
    boolean troubled;
    /** How often something was said of what was told before. */
    int details;

    /** How much there is to tell so far. */
    int weight() {
        return told.size() + surfaces.size() + unclear.size() + notUnderstood.size() + loose.size() + details + (fine ? 1 : 0);
    }

    /** What comes of all that was told. */
    Heard heard(String said) {
        told.forEach(telling -> telling.senseless().ifPresent(notUnderstood::add));
        told.removeIf(Telling::withdrawn);
        atOdds();
        List<Told> all = told.stream().filter(telling -> telling.doubted().isEmpty()).map(Telling::told).distinct().toList();
        doubts(all);
        // What is told twice, the second time with more, is one complaint.
        List<Told> complaints = all.stream().filter(one -> all.stream().noneMatch(other -> one.within(other))).toList();
        Optional<Surface> surface = surfaces.size() == 1 ? Optional.of(surfaces.iterator().next()) : Optional.empty();
        if (surfaces.size() > 1) {
            notUnderstood.add(String.join(" and ", surfaces.stream().map(Surface::id).toList()));
        }
        if (fine && troubled && complaints.isEmpty() && unclear.isEmpty() && notUnderstood.isEmpty()) {
            // "The brakes are fine, I have a problem with what comes after": what that is nobody can make out.
            notUnderstood.add(said.strip());
        }
        boolean allFine = fine && complaints.isEmpty() && unclear.isEmpty() && notUnderstood.isEmpty() && loose.isEmpty();
        return new Heard(said, complaints, surface, allFine, loose, unclear, notUnderstood);
    }

    /** Names what is to be asked about, unless it was told for sure as well. */
    private void doubts(List<Told> sure) {
        told.stream().map(Telling::doubted).filter(words -> !words.isEmpty()).distinct().forEach(words -> {
            List<Told> mayBe = told.stream().filter(telling -> telling.doubted().equals(words)).map(Telling::told).distinct()
                    .filter(one -> sure.stream().noneMatch(it -> it.equals(one) || one.within(it))).toList();
            if (!mayBe.isEmpty()) {
                unclear.add(new Heard.Unclear(words, mayBe));
            }
        });
    }

    /**
     * Doubts that it pushes and is loose at the same place and time, told in two clauses: of "in practice it was loose, in the
     * race it was tight" a coach asks which it is now.
     */
    private void atOdds() {
        for (Telling one : told) {
            for (Telling other : told) {
                if (one.atOddsWith(other)) {
                    boolean first = told.indexOf(one) < told.indexOf(other);
                    one.doubt(first ? one.typed() + ", " + other.typed() : other.typed() + ", " + one.typed());
                    other.doubt(one.doubted());
                }
            }
        }
    }
}
