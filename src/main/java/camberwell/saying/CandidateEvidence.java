package camberwell.saying;

import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** What speaks for a reading of a whole saying, and against it. */
final class CandidateEvidence {

    private final Heard heard;
    private final Impression impression;
    private final Parts parts;
    private final Set<String> read = new TreeSet<>();
    /** What speaks for or against all readings of that saying alike. */
    private final Evidence ofAll = new Evidence();

    CandidateEvidence(Ear ear, String said, Heard heard, Impression impression, List<Atom> atoms, Parts parts) {
        this.parts = parts;
        this.heard = heard;
        this.impression = impression;
        heard.told().forEach(told -> read.add(told.symptom().id()));
        if (heard.fine()) {
            read.add(Lesson.NOTHING);
        }
        List<String> words = Cues.words(said);
        ofAll.count("words", Math.round(3 * StrictMath.log(1 + words.size())), 12)
                .count("unknown", words.stream().filter(word -> !word.equals(",") && !ear.knows(word)).count(), 3)
                .count("not read", heard.notUnderstood().size(), 4)
                .count("told", heard.told().size(), 3)
                .is("exact", heard.exact())
                .is("either", heard.doubtful().stream().anyMatch(doubt -> doubt.mayBe().size() > 1))
                .is("surface", heard.surface().isPresent()).is("loose", !heard.loose().isEmpty())
                .is("asked", said.contains(Token.ASKED)).is("well", heard.fine());
        Set<Meaning.Sign> signs = new HashSet<>();
        atoms.forEach(atom -> atom.meanings().forEach(meaning -> {
            if (meaning instanceof Meaning.Sign sign && sign != Meaning.Sign.PLAIN && signs.add(sign)) {
                ofAll.is("sign " + sign);
            }
        }));
    }

    /** @param cut how sure two parts of it are together; 0 where it was not cut */
    void add(Candidate candidate, Named named, double cut) {
        Set<String> means = candidate.means();
        String how = read.isEmpty() ? "silent" : read.equals(means) ? "same" : "other";
        String sort = candidate.sort() + " " + how + (heard.exact() ? " exact" : "");
        Evidence evidence = candidate.evidence().all(ofAll).is(candidate.sort().name()).is(how).is(sort);
        means.forEach(evidence::is);
        evidence.likely("sure", impression.sure(means), sort).likely("any", impression.likelyAny(means), sort)
                .likely("least", means.stream().mapToDouble(impression::likely).min().orElse(0), sort)
                .likely("rival", rival(means), sort).likely("several", impression.likelySeveral(), sort)
                .likely("refused", impression.likely(Lesson.REFUSED), sort)
                .likely("nothing", impression.likely(Lesson.NOTHING), sort);
        for (int i = 0; i < impression.members().size(); i++) {
            int member = i;
            evidence.likely("by " + member, means.stream().mapToDouble(it -> impression.by(member, it)).sum(), sort)
                    .likely("several by " + member, impression.by(member, Lesson.SEVERAL), sort);
        }
        if (cut > 0) {
            evidence.likely("parts", cut, sort);
        }
        boolean doubted = heard.doubtful().stream().flatMap(doubt -> doubt.mayBe().stream())
                .anyMatch(told -> means.contains(told.symptom().id()));
        evidence.is(doubted ? "doubted" : heard.doubtful().isEmpty() ? "no doubt" : "another doubted");
        details(candidate, named, sort);
    }

    /** What was come by in two ways: cut in parts it sounds like what the grammar reads of the whole. */
    static void alike(List<Candidate> all) {
        for (Candidate one : all) {
            List<Candidate> same = all.stream().filter(other -> other != one && other.tells().equals(one.tells())).toList();
            same.forEach(other -> one.evidence().is("alike").is(one.sort() + " as " + other.sort()));
            if (same.isEmpty()) {
                one.evidence().is("unlike others").is(one.sort() + " alone of " + all.size());
            }
        }
    }

    /** How likely the words are that narrow it, and how likely others that do not. */
    private void details(Candidate candidate, Named named, String sort) {
        List<Told> told = candidate.heard().told();
        WordEvidence words = new WordEvidence(impression, heard, named.words(), parts, told.size() > 1);
        double all = 1;
        double least = 1;
        double most = 0;
        double none = 1;
        int count = 0;
        for (Told one : told) {
            for (Class<? extends Word> kind : Details.KINDS) {
                Optional<Word> word = one.word(kind).map(Word.class::cast);
                if (word.isPresent()) {
                    double likely = words.likely(one.symptom(), word.get());
                    all *= Math.max(0.01, likely);
                    least = Math.min(least, likely);
                    count++;
                } else {
                    double likeliest = likeliest(words, one.symptom(), kind);
                    none *= Math.max(0.01, 1 - likeliest);
                    most = Math.max(most, likeliest);
                }
            }
        }
        long unplaced = named.words().stream().filter(word -> told.stream().noneMatch(one -> one.words().contains(word))).count();
        candidate.evidence().likely("all words", all, sort).likely("least word", least, sort).likely("no more words", none, sort)
                .likely("most of others", most, sort).count("narrowed", count, 5).count("unplaced", unplaced, 3)
                .count("left out", candidate.heard().unclear().size(), 3).count("tells", told.size(), 3);
        candidate.heard().surface()
                .ifPresent(surface -> candidate.evidence().likely("surface", impression.likely(surface), "day"));
    }

    private static double likeliest(WordEvidence words, Symptom symptom, Class<? extends Word> kind) {
        double likeliest = 0;
        for (Word word : Word.all(kind)) {
            likeliest = Math.max(likeliest, words.likely(symptom, word));
        }
        return likeliest;
    }

    private double rival(Set<String> means) {
        double most = 0;
        for (String other : impression.what().keySet()) {
            most = means.contains(other) ? most : Math.max(most, impression.likely(other));
        }
        return most;
    }
}
