package camberwell.saying;

import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The readings that a saying may have: what the grammar makes of it, and what it sounds like, as one or as several. */
final class Candidates {

    /** How likely a symptom has to sound that is not the likeliest. */
    private static final double SECOND = 0.15;
    /** How likely it has to be that several are told, so that two are weighed. */
    private static final double SEVERAL = 0.2;
    /** How likely a surface has to be that the grammar reads. */
    static final double DAY = 0.4;

    private final Ear ear;
    private final String said;
    private final Heard heard;
    private final Impression impression;
    private final Named named;
    private final Parts parts;
    private final CandidateEvidence evidence;

    private Candidates(Ear ear, String said, Heard heard, Impression impression, List<Atom> atoms, Parts parts) {
        this.ear = ear;
        this.said = said;
        this.heard = heard;
        this.impression = impression;
        this.named = Named.of(atoms);
        this.parts = parts;
        this.evidence = new CandidateEvidence(ear, said, heard, impression, atoms, parts);
    }

    /** Those of a saying of which the grammar makes {@code heard}, with what speaks for each. */
    static List<Candidate> of(Ear ear, String said, Heard heard, Impression impression, List<Atom> atoms, Parts parts) {
        return new Candidates(ear, said, heard, impression, atoms, parts).all();
    }

    private List<Candidate> all() {
        List<Candidate> all = new ArrayList<>();
        Set<Symptom> read = new TreeSet<>();
        heard.told().forEach(told -> read.add(told.symptom()));
        if (!read.isEmpty()) {
            add(all, Candidate.Sort.READ, Details.of(ear.ofWords(), impression, heard, named, parts), 0);
        }
        List<Symptom> symptoms = impression.symptoms();
        for (int i = 0; i < Math.min(2, symptoms.size()); i++) {
            Set<Symptom> just = Set.of(symptoms.get(i));
            if (!read.equals(just) && (i == 0 || impression.likely(symptoms.get(i).id()) >= SECOND)) {
                add(all, i == 0 ? Candidate.Sort.FIRST : Candidate.Sort.SECOND, sounding(just), 0);
            }
        }
        if (impression.likelySeveral() >= SEVERAL && symptoms.size() > 1) {
            Set<Symptom> two = new TreeSet<>(symptoms.subList(0, 2));
            if (!read.equals(two)) {
                add(all, Candidate.Sort.TWO, sounding(two), 0);
            }
        }
        parts.two().ifPresent(it -> add(all, Candidate.Sort.PARTS, new Details.Outcome(it.told(), it.doubts(), List.of()),
                it.sure()));
        Candidate well = Candidate.of(Candidate.Sort.WELL,
                new Heard(said, List.of(), surface(), true, List.of(), List.of(), List.of()));
        evidence.add(well, named, 0);
        all.add(well);
        CandidateEvidence.alike(all);
        return all;
    }

    private Details.Outcome sounding(Set<Symptom> symptoms) {
        return Details.of(ear.ofWords(), impression, symptoms, heard, named, parts);
    }

    private void add(List<Candidate> all, Candidate.Sort sort, Details.Outcome outcome, double sure) {
        Candidate candidate = Candidate.of(sort,
                new Heard(said, outcome.told(), surface(), false, List.of(), outcome.doubts(), outcome.notUnderstood()));
        evidence.add(candidate, named, sure);
        all.add(candidate);
    }

    private Optional<Surface> surface() {
        return heard.surface().filter(surface -> impression.likely(surface) >= DAY);
    }
}
