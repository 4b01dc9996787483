package camberwell.debrief;

import camberwell.run.Report;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Word;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What became of a complaint of the run before. */
enum Came implements Word {
    GONE("gone", "it is not there any more", Outcome.BETTER),
    BETTER("better", "still there, and less", Outcome.BETTER),
    SAME("same", "as it was", Outcome.SAME),
    WORSE("worse", "more of it", Outcome.WORSE),
    UNCLEAR("unclear", "too few laps, or too much else was different", Outcome.UNCLEAR);

    /** How people say it besides; common practice, no source. */
    private static final Map<String, Came> SAID = Map.ofEntries(Map.entry("cured", GONE), Map.entry("fixed", GONE),
            Map.entry("fine", GONE), Map.entry("good", GONE), Map.entry("no more", GONE), Map.entry("none", GONE),
            Map.entry("nothing", GONE), Map.entry("less", BETTER), Map.entry("improved", BETTER),
                    Map.entry("a bit better", BETTER),
            Map.entry("much better", BETTER), Map.entry("a little better", BETTER), Map.entry("yes", BETTER),
            Map.entry("it helped", BETTER), Map.entry("no", SAME), Map.entry("no difference", SAME), Map.entry("no change", SAME),
            Map.entry("no effect", SAME), Map.entry("unchanged", SAME), Map.entry("still there", SAME),
                    Map.entry("as before", SAME),
            Map.entry("more", WORSE), Map.entry("a bit worse", WORSE), Map.entry("much worse", WORSE),
            Map.entry("cannot tell", UNCLEAR), Map.entry("can't tell", UNCLEAR), Map.entry("hard to say", UNCLEAR));

    private final String id;
    private final String felt;
    private final Outcome outcome;

    Came(String id, String felt, Outcome outcome) {
        this.id = id;
        this.felt = felt;
        this.outcome = outcome;
    }

    /** What a line says of it, if that is all that it says. */
    static Optional<Came> said(String typed) {
        String small = typed.strip().toLowerCase(Locale.ROOT).replaceAll("[.!]+$", "")
                .replaceFirst("^(it is|it's|the|it got) ", "");
        return Word.find(Came.class, small).or(() -> Optional.ofNullable(SAID.get(small)))
                .or(() -> OutcomeWords.of(typed).filter(OutcomeWords::all).map(Came::of));
    }

    private static Came of(OutcomeWords said) {
        return said.gone() ? GONE : switch (said.outcome()) {
            case BETTER -> BETTER;
            case SAME -> SAME;
            case WORSE -> WORSE;
            case UNCLEAR -> UNCLEAR;
        };
    }

    /** What it says of the changes before it. */
    Outcome outcome() {
        return outcome;
    }

    /** How bad it is now: a grade up or down. What was slight and is better but not gone stays slight. */
    Severity severity(Report before) {
        int grade = before.severity().ordinal() + (this == BETTER ? -1 : this == WORSE ? 1 : 0);
        return Severity.values()[Math.max(0, Math.min(grade, Severity.values().length - 1))];
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String felt() {
        return felt;
    }
}
