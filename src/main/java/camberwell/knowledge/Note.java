package camberwell.knowledge;

import camberwell.vocabulary.Axle;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A knowledge note.
 *
 * @param name the file's name without its ending
 * @param title for people
 * @param statement one sentence: what a finding says, what a caution warns of, what to do; an adjuster's summary
 * @param plain the same for a newcomer; for an adjuster, per direction in {@code ways}
 * @param ways an adjuster's two directions; empty for other kinds
 * @param effort 1 from the cockpit or with a gauge … 5 a garage job
 * @param risk 0 none … 3 can bite
 * @param model why a steady-state model cannot show its effects, if it cannot
 * @param differences where practice and the model differ on one effect or one rule, and why
 * @param showsAs the complaint that a reading or a cause shows as, where there is one
 * @param contested the schools that differ, and the reading that settles it
 * @param practice a driving note's advice for the next lap
 * @param when a caution or a habit applies; a caution that names what is being changed needs no rule to be shown
 * @param order of a caution or a habit among those shown, the smallest number first
 * @param halts whether a caution stands before everything else: nothing is changed and nobody drives until it is settled
 * @param asksNoMore of a caution that halts: that nothing a driver could be asked, or read, changes anything before it is done
 * @param variants other wordings of its texts, for cases of a kind, in the order in which they are tried
 * @param sources at least one; {@code common practice, no source} where there is none to name
 * @param prose the rest of the page
 */
public record Note(String name, Kind kind, String title, String statement, String plain, Map<Direction, Way> ways,
        int effort, int risk, Optional<String> model, List<Difference> differences, Optional<Trouble> showsAs,
        Optional<String> contested, Optional<Practice> practice, When when, int order, boolean halts,
        boolean asksNoMore, List<Variant> variants, List<String> sources, String prose) {

    /** Whether it is a caution that goes with certain changes, whatever the rules say. */
    public boolean goesWithChanges() {
        return kind == Kind.CAUTION && !when.of(Matter.CHANGING).isEmpty();
    }

    /** This note with more effects of its directions. */
    Note with(Map<Direction, List<Effect>> more) {
        Map<Direction, Way> told = new EnumMap<>(Direction.class);
        ways.forEach((direction, way) -> {
            List<Effect> effects = new ArrayList<>(way.effects);
            effects.addAll(more.getOrDefault(direction, List.of()));
            told.put(direction, new Way(List.copyOf(effects), way.rationale, way.plain, way.watch, way.putBack));
        });
        return new Note(name, kind, title, statement, plain, told, effort, risk, model, differences, showsAs, contested,
                practice, when, order, halts, asksNoMore, variants, sources, prose);
    }

    /** This note with each text in the first of its wordings that fits. */
    public Note fitting(Circumstances circumstances) {
        if (variants.isEmpty()) {
            return this;
        }
        Fitting fitting = new Fitting(variants, circumstances);
        Map<Direction, Way> fitted = new EnumMap<>(Direction.class);
        ways.forEach((direction, way) -> fitted.put(direction, fitting.way(direction, way)));
        return new Note(name, kind, title, fitting.text(kind == Kind.ADJUSTMENT ? "summary" : "statement", statement),
                fitting.text("plain", plain), fitted, effort, risk, model, differences, showsAs, contested,
                practice.map(fitting::practice), when, order, halts, asksNoMore, variants, sources,
                prose);
    }

    private record Fitting(List<Variant> variants, Circumstances circumstances) {

        Way way(Direction direction, Way way) {
            Optional<Direction> said = Optional.of(direction);
            return new Way(way.effects, text("rationale", said, way.rationale), text("plain", said, way.plain),
                    text("watch", said, way.watch), text("put-back", said, way.putBack));
        }

        Practice practice(Practice practice) {
            return new Practice(text("try", practice.tryNext), text("feel", practice.feel),
                    text("car-or-driver", practice.carOrDriver));
        }

        String text(String key, String otherwise) {
            return text(key, Optional.empty(), otherwise);
        }

        private String text(String key, Optional<Direction> way, String otherwise) {
            for (Variant variant : variants) {
                if (variant.key().equals(key) && variant.way().equals(way) && variant.when().holds(circumstances)) {
                    return variant.text();
                }
            }
            return otherwise;
        }
    }

    /** What a note is about; each kind has its folder. */
    public enum Kind implements Word {
        ADJUSTMENT("adjustment", "adjustments"), READING("reading", "readings"), CAUSE("cause", "causes"),
        DRIVING("driving", "driving"), CAUTION("caution", "cautions");

        private final String id;
        private final String folder;

        Kind(String id, String folder) {
            this.id = id;
            this.folder = folder;
        }

        @Override
        public String id() {
            return id;
        }

        /** The folder below the notes. */
        public String folder() {
            return folder;
        }
    }

    /**
     * One direction of an adjuster.
     *
     * @param effects of one step
     * @param rationale why it works, in two or three sentences
     * @param plain the same for a newcomer
     * @param watch what to look for in the next run
     * @param putBack the sign that says: put it back
     */
    public record Way(List<Effect> effects, String rationale, String plain, String watch, String putBack) {
    }

    /**
     * A complaint that a reading or a cause shows as. What is left open is any.
     *
     * @param on a {@link camberwell.vocabulary.Symptom} or a {@link camberwell.vocabulary.Quality}
     */
    public record Trouble(Word on, Optional<Phase> phase, Optional<CornerSpeed> speed, Optional<Axle> where) {
    }

    /**
     * Why practice and a steady-state model differ. What is left open is any.
     *
     * @param way the direction of the adjuster
     * @param on the symptom or the quality of the effect
     * @param phase the phase of the effect
     * @param rule the rule that differs, where it is a rule and no effect of the note
     * @param because the reason
     */
    public record Difference(Optional<Direction> way, Optional<Word> on, Optional<Phase> phase, Optional<String> rule,
            String because) {

        /** Whether it speaks of that effect. */
        public boolean explains(Direction direction, Effect effect) {
            return rule.isEmpty() && way.filter(it -> it != direction).isEmpty()
                    && on.filter(it -> it != effect.on()).isEmpty()
                    && (phase.isEmpty() || phase.equals(effect.phase()));
        }

        /** Whether it speaks of that change's effect on that topic, wherever it is claimed. */
        public boolean explains(Direction direction, Word topic, Set<Phase> phases) {
            return rule.isEmpty() && way.filter(it -> it != direction).isEmpty() && on.filter(topic::equals).isPresent()
                    && phase.filter(it -> !phases.contains(it)).isEmpty();
        }

        /** Whether it speaks of that rule's word on that change. */
        public boolean explains(Direction direction, String ruleName) {
            return rule.filter(ruleName::equals).isPresent() && way.filter(it -> it != direction).isEmpty();
        }
    }

    /**
     * How a driver goes about it.
     *
     * @param tryNext what to do on the very next lap
     * @param feel what it feels like when it works
     * @param carOrDriver how to tell the driver from the car
     */
    public record Practice(String tryNext, String feel, String carOrDriver) {
    }
}
