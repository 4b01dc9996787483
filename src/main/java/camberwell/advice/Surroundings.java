package camberwell.advice;

import camberwell.car.Ordinary;
import camberwell.fact.Finding;
import camberwell.knowledge.Circumstances;
import camberwell.knowledge.Matter;
import camberwell.knowledge.Note;
import camberwell.run.Case;
import camberwell.run.Report;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Group;
import camberwell.vocabulary.Standing;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a case says on the matters that the notes ask about. */
final class Surroundings {

    private final Case run;
    private final Circumstances known;

    /** @param findings those that are likely */
    Surroundings(Case run, Collection<Finding> findings) {
        this.run = run;
        EnumMap<Matter, Set<String>> words = new EnumMap<>(Matter.class);
        run.car().drive().ifPresent(drive -> words.put(Matter.DRIVE, Set.of(drive.id())));
        words.put(Matter.SURFACE, Set.of(run.conditions().surface().id()));
        words.put(Matter.SIMULATOR, Set.of(run.car().simulator() ? Matter.YES : Matter.NO));
        words.put(Matter.CIRCUIT, Set.of(run.conditions().turns().id()));
        Set<String> found = new LinkedHashSet<>();
        findings.forEach(finding -> found.add(finding.id()));
        words.put(Matter.FINDING, found);
        this.known = new Circumstances(words, reports(run.reports()));
    }

    /** The case as a whole. */
    Circumstances all() {
        return known;
    }

    /** The case beside those cautions. */
    Circumstances beside(Collection<Note> cautions) {
        Set<String> names = new LinkedHashSet<>();
        for (Note caution : cautions) {
            names.add(caution.name());
        }
        return known.with(Matter.NO_CAUTION, names);
    }

    /** The case as one adjuster sees it. */
    Circumstances of(Adjuster adjuster) {
        Set<String> standing = new LinkedHashSet<>();
        for (Standing word : Ordinary.standing(run.car(), adjuster)) {
            standing.add(word.id());
        }
        return known.with(Matter.SETTING, standing);
    }

    /** The case as a change sees it that is made for {@code complaints}; for all of them, if for none. */
    Circumstances of(Adjuster adjuster, Collection<Complaint> complaints) {
        List<Map<Matter, Set<String>>> inHand = new ArrayList<>();
        complaints.forEach(complaint -> inHand.add(complaint(complaint)));
        return inHand.isEmpty() ? of(adjuster) : of(adjuster).with(inHand);
    }

    /** The case with those changes advised. */
    Circumstances changing(Collection<Change> changes) {
        Set<String> groups = new LinkedHashSet<>();
        for (Change change : changes) {
            groups.add(Group.of(change.adjuster()).id());
            groups.add(Matter.ANY);
        }
        return known.with(Matter.CHANGING, groups);
    }

    private static Map<Matter, Set<String>> complaint(Complaint complaint) {
        EnumMap<Matter, Set<String>> said = new EnumMap<>(Matter.class);
        said.put(Matter.REPORTED, Set.of(complaint.symptom().id()));
        put(said, Matter.PHASE, complaint.phase());
        put(said, Matter.SPEED, complaint.speed());
        put(said, Matter.WHERE, complaint.where());
        complaint.report().ifPresent(report -> ofReport(report, said));
        return said;
    }

    private static List<Map<Matter, Set<String>>> reports(List<Report> reports) {
        List<Map<Matter, Set<String>>> all = new ArrayList<>();
        for (Report report : reports) {
            EnumMap<Matter, Set<String>> said = new EnumMap<>(Matter.class);
            ofReport(report, said);
            all.add(said);
        }
        return all;
    }

    private static void ofReport(Report report, Map<Matter, Set<String>> said) {
        said.put(Matter.REPORTED, Set.of(report.symptom().id()));
        put(said, Matter.PHASE, report.phase());
        put(said, Matter.SPEED, report.speed());
        report.where().ifPresent(place -> said.put(Matter.WHERE, Set.copyOf(List.of(place.id(), place.axle().id()).stream()
                .distinct().toList())));
        said.put(Matter.SEVERITY, Set.of(report.severity().id()));
        said.put(Matter.OCCURRENCE, Set.of(report.occurrence().id()));
        put(said, Matter.SINCE, report.since());
        put(said, Matter.TURN, report.turn());
    }

    private static void put(Map<Matter, Set<String>> said, Matter matter, Optional<? extends Word> word) {
        if (word.isPresent()) {
            said.put(matter, Set.of(word.get().id()));
        }
    }
}
