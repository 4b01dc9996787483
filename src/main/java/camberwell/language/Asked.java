package camberwell.language;

import camberwell.fact.Day;
import camberwell.fact.Finding;
import camberwell.fact.Passing;
import camberwell.fact.Reading;
import camberwell.fact.Reported;
import camberwell.fact.Setup;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a condition asks of the world rather than of one fact: for each of its properties, the values that it lets pass.
 * Conditions that are about the same thing can so be held against each other.
 *
 * @param about what it is about: of two that differ each can be so
 * @param single whether there is only one of it, so that all conditions about it meet on the same one
 * @param negative whether it asks that there is no such fact
 * @param passes the values that pass, by property
 */
public record Asked(String about, boolean single, boolean negative, Map<String, Passing> passes) {

    /** What {@code condition} asks. */
    public static Asked of(Condition condition) {
        Question question = condition.question();
        Map<String, Passing> passes = new TreeMap<>();
        question.asks().forEach(ask -> passes.merge(ask.attribute().name(), ask.passing(), Passing::and));
        if (question.isAbout(Finding.KIND)) {
            return finding(question, passes);
        }
        if (question.isAbout(Reading.KIND)) {
            return new Asked("reading", true, false, reading(question));
        }
        if (question.isAbout(Setup.KIND)) {
            settings(question, passes);
        }
        return new Asked(question.kind().name(), question.kind().single(), question.negative(), passes);
    }

    /** Whether it is about the car. */
    public boolean ofCar() {
        return about.equals(Setup.KIND.name());
    }

    /** Whether it is about the day. */
    public boolean ofDay() {
        return about.equals(Day.KIND.name());
    }

    /** Whether it is about a complaint. */
    public boolean ofReport() {
        return about.equals(Reported.KIND.name());
    }

    /** Whether it is about what the instruments read. */
    public boolean ofReadings() {
        return about.equals("reading");
    }

    /** That a finding is not likely is said of the finding, which is there or is not. */
    private static Asked finding(Question question, Map<String, Passing> passes) {
        Passing certainty = passes.get("certainty");
        return new Asked("finding " + question.word("finding").orElseThrow(), true, question.negative(),
                Map.of("certainty", question.negative()
                ? Passing.between(-Double.MAX_VALUE, Math.nextUp(certainty.above())) : certainty));
    }

    /** A setting that is asked about is one that the car has. */
    private static void settings(Question question, Map<String, Passing> passes) {
        for (Question.Ask ask : question.asks()) {
            if (ask.attribute().isNumber()) {
                Setup.adjusterOf(ask.attribute().name()).ifPresent(adjuster -> passes.merge(Setup.adjustable(adjuster),
                        Passing.words(List.of("yes")), Passing::and));
            }
        }
    }

    /** All readings are taken as one fact, since some exclude each other, and none is there that was not taken. */
    private static Map<String, Passing> reading(Question question) {
        Place place = Word.of(Place.class, question.word("place").orElseThrow());
        Map<String, Passing> passes = new TreeMap<>();
        question.passing("instrument").ifPresent(passing -> passing.words().forEach(instrument ->
                passes.put(read(place, Word.of(Reading.Instrument.class, instrument)),
                        said(question.negative() ? "no" : "yes"))));
        question.word("shows").map(id -> Word.of(Reading.State.class, id)).ifPresent(state -> {
            passes.put(read(place, state.instrument()), said("yes"));
            passes.put(property(place, state), said(value(place, state)));
        });
        return passes;
    }

    private static Passing said(String word) {
        return Passing.words(List.of(word));
    }

    private static String read(Place place, Reading.Instrument instrument) {
        return place.axle().id() + " " + instrument.id() + " read";
    }

    /** What no two readings with the same value leave room for: one axle is the hotter, one tyre of an axle alone. */
    private static String property(Place place, Reading.State state) {
        return switch (state.topic()) {
            case AXLES -> "hotter axle";
            case ALONE -> place.axle().id() + " alone";
            case WINDOW, TREAD, SIDES, TARGET, MINIMUM, GROWTH -> place.id() + " "
                    + (state.trait().isEmpty() ? state.id() : state.trait());
        };
    }

    private static String value(Place place, Reading.State state) {
        return switch (state.topic()) {
            case AXLES -> place.id();
            case ALONE -> place.id() + " " + state.id();
            case WINDOW, TREAD, SIDES, TARGET, MINIMUM, GROWTH -> state.trait().isEmpty() ? "yes" : state.id();
        };
    }

    /** Whether a fact that it asks for is always one that {@code other} asks for. */
    public boolean within(Asked other) {
        if (negative != other.negative) {
            return false;
        }
        return negative ? other.facts(this) : facts(other);
    }

    /** Whether a fact with what this lets pass always passes {@code other}, signs aside. */
    public boolean facts(Asked other) {
        return about.equals(other.about) && other.passes.entrySet().stream().allMatch(entry ->
                passes.containsKey(entry.getKey()) && passes.get(entry.getKey()).within(entry.getValue()));
    }

    /** Whether nothing can pass. */
    public boolean nothing() {
        return passes.values().stream().anyMatch(Passing::nothing);
    }

    /** What passes both, for two that meet on one fact. */
    public Asked and(Asked other) {
        Map<String, Passing> both = new TreeMap<>(passes);
        other.passes.forEach((property, passing) -> both.merge(property, passing, Passing::and));
        return new Asked(about, single, negative, both);
    }

    /** What {@code rule} asks: conditions that meet on the same fact are taken together. */
    public static List<Asked> together(RuleText rule) {
        List<Asked> merged = new ArrayList<>();
        for (Condition condition : rule.conditions()) {
            Asked asked = of(condition);
            int same = 0;
            while (same < merged.size() && !(asked.single() && merged.get(same).about().equals(asked.about()))) {
                same++;
            }
            if (same < merged.size()) {
                merged.set(same, merged.get(same).and(asked));
            } else {
                merged.add(asked);
            }
        }
        return merged;
    }
}
