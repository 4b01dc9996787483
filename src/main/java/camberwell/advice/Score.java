package camberwell.advice;

import camberwell.knowledge.Circumstances;
import camberwell.knowledge.Effect;
import camberwell.knowledge.Matter;
import camberwell.knowledge.Note;
import camberwell.vocabulary.Quality;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a change is worth in this case: {@code certainty x (relief - harm) - effort - risk}. Every term can be shown.
 *
 * @param certainty of the rules that speak for and against it
 * @param relief of the complaints, weighted by severity and occurrence
 * @param harmToComplaints what it makes worse that is complained of
 * @param harmToFine what it spoils that nobody complains of
 * @param effort what it takes to make the change
 * @param risk what may go wrong
 * @param helps the complaints that it relieves
 * @param costs what it costs, the complaints first
 */
public record Score(double certainty, double relief, double harmToComplaints, double harmToFine, double effort,
        double risk, List<Help> helps, List<Cost> costs) {

    /** A complaint that the change relieves, by {@code effect} of the note, in [0, 3]. */
    public record Help(Complaint complaint, double effect) {
    }

    /**
     * Something that the change makes worse.
     *
     * @param on what
     * @param effect negative, down to -3
     * @param why whether it is complained of already or is fine now
     */
    public record Cost(String on, double effect, String why) {

        /** In words: {@code may bring understeer at entry}. */
        public String told() {
            if (why.startsWith("complained")) {
                return "makes worse: " + on;
            }
            boolean quality = Arrays.stream(Quality.values()).anyMatch(one -> on.startsWith(one.spoken()));
            return (quality ? "may cost " : "may bring ") + on;
        }
    }

    /** The complaints that it relieves. */
    List<Complaint> helped() {
        return helps.stream().map(Help::complaint).toList();
    }

    /** The sum of the terms, by which changes are ranked. */
    public double total() {
        return certainty * (relief - harmToComplaints - harmToFine) - effort - risk;
    }

    /** Whether it brings more than it costs; the work alone is no reason to leave a fault as it is. */
    public boolean worthIt() {
        return total() + effort > 0;
    }

    static Score of(Note note, Note.Way way, double certainty, List<Complaint> complaints,
            Circumstances circumstances, Weights weights) {
        List<Help> helps = new ArrayList<>();
        Map<String, Cost> costs = new LinkedHashMap<>();
        double relief = 0;
        double harm = 0;
        for (Complaint complaint : complaints) {
            double effect = effectOn(complaint, way.effects(), circumstances, weights);
            if (effect > 0) {
                helps.add(new Help(complaint, effect));
                relief += complaint.weight() * effect / 3;
            } else if (effect < 0) {
                costs.putIfAbsent(complaint.text(), new Cost(complaint.text(), effect, "complained of already"));
                harm += weights.harmToComplaint() * complaint.weight() * -effect / 3;
            }
        }
        Map<Word, Effect> fine = new LinkedHashMap<>();
        for (Effect effect : way.effects()) {
            if (effect.effect() < 0 && effect.when().holds(circumstances)
                    && complaints.stream().noneMatch(complaint -> complaint.symptom() == effect.on()
                            || excludes(complaint, effect))) {
                fine.merge(effect.on(), effect, (one, other) -> other.effect() < one.effect() ? other : one);
            }
        }
        double spoiled = 0;
        for (Effect effect : fine.values()) {
            costs.putIfAbsent(effect.text(), new Cost(effect.text(), effect.effect(), "not complained of now"));
            spoiled += weights.harmToFine() * -effect.effect() / 3;
        }
        helps.sort(Comparator.comparingDouble((Help help) -> help.effect() * help.complaint().weight()).reversed());
        List<Cost> sorted = new ArrayList<>(costs.values());
        sorted.sort(Comparator.comparing((Cost cost) -> cost.why()).thenComparingDouble(Cost::effect));
        return new Score(certainty, Math.max(relief, weights.leastRelief()), harm, spoiled,
                simulated(circumstances) ? 0 : weights.effort() * (note.effort() - 1), weights.risk() * note.risk(),
                        List.copyOf(helps),
                List.copyOf(sorted));
    }

    /** Whether what is complained of cannot be where the effect would show: tyres that overheat are not slow to warm up. */
    private static boolean excludes(Complaint complaint, Effect effect) {
        return (complaint.symptom() == Symptom.OVERHEATING && effect.on() == Symptom.SLOW_WARM_UP
                || complaint.symptom() == Symptom.SLOW_WARM_UP && effect.on() == Symptom.OVERHEATING)
                && complaint.where().isPresent() && complaint.where().equals(effect.where());
    }

    /** In a simulator every change is a key press. */
    private static boolean simulated(Circumstances circumstances) {
        return circumstances.known(Matter.SIMULATOR).contains(Matter.YES);
    }

    /** Of the effects that fit the complaint best the most particular one, times how well it fits. */
    private static double effectOn(Complaint complaint, List<Effect> effects, Circumstances circumstances,
            Weights weights) {
        Optional<Effect> best = effects.stream().filter(effect -> complaint.fit(effect, circumstances, weights) > 0)
                .max(Comparator.comparingDouble((Effect effect) -> complaint.fit(effect, circumstances, weights))
                        .thenComparingInt(Effect::particularity)
                        .thenComparingInt(effect -> Math.abs(effect.effect())));
        return best.map(effect -> effect.effect() * complaint.fit(effect, circumstances, weights)).orElse(0.0);
    }
}
