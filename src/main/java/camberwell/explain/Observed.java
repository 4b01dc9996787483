package camberwell.explain;

import camberwell.fact.Finding;
import camberwell.fact.Premise;
import camberwell.fact.Reading;
import camberwell.fact.Reported;
import camberwell.language.Condition;
import camberwell.language.Line;
import camberwell.language.Question;
import camberwell.language.Trial;
import camberwell.units.Figures;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.List;
import java.util.Optional;

/** Says what there is where a rule asks for something. */
final class Observed {

    private final Reasoning reasoning;

    Observed(Reasoning reasoning) {
        this.reasoning = reasoning;
    }

    /** What makes a condition true; {@code premise} is empty where it asks that something is not so. */
    String held(Condition condition, Optional<Premise> premise) {
        Question question = condition.question();
        if (premise.isPresent()) {
            return premise.get() instanceof Finding ? "found with certainty " + two(premise.get().certainty())
                    : fact(question, premise.get());
        }
        return question.isAbout(Finding.KIND) ? suspicion(question)
                : question.isAbout(Reported.KIND) ? "no such report" : "no such reading";
    }

    /** What there is where the first sentence of a condition is not met. */
    String instead(Condition condition) {
        Question question = condition.head().question();
        Optional<Premise> match = Trial.of(condition, reasoning.premises()).matches().stream().findFirst();
        if (condition.negative()) {
            return match.map(premise -> premise instanceof Finding ? "but it is, with certainty "
                    + two(premise.certainty()) : premise instanceof Reading ? "but they were"
                    : "but the driver does: " + premise.statement()).orElse("");
        }
        if (question.isAbout(Reported.KIND)) {
            return question.word("symptom").map(symptom -> "nobody reports "
                    + Word.of(Symptom.class, symptom).spoken()).orElse("no complaint is of that kind");
        }
        if (question.isAbout(Finding.KIND)) {
            return suspicion(question);
        }
        if (question.isAbout(Reading.KIND)) {
            return readings(question);
        }
        return reasoning.typed().stream().filter(fact -> question.isAbout(fact.kind()))
                .map(fact -> fact(question, fact)).findFirst().orElse("");
    }

    private String suspicion(Question question) {
        return reasoning.finding(question.word("finding").orElseThrow())
                .map(found -> (found.certainty() < 0 ? "the rules speak against it, certainty "
                : "the rules come to a certainty of only ") + two(found.certainty()))
                .orElse("nothing speaks for it");
    }

    /** What a report says where a dash under it asks for something: {@code the corner was slow, the rule asks …}. */
    static String narrowed(Line dash, Premise reported) {
        return reported.says(dash.question().asks().get(0).attribute().name()) + ", the rule asks for " + dash.wish();
    }

    private String readings(Question question) {
        String place = question.word("place").orElseThrow();
        Reading.State asked = Word.of(Reading.State.class, question.word("shows").orElseThrow());
        List<Reading> there = reasoning.typed().stream().filter(Reading.class::isInstance).map(Reading.class::cast)
                .filter(reading -> reading.place().is(place)).toList();
        List<String> instead = there.stream().filter(reading -> reading.state().topic() == asked.topic())
                .map(Premise::statement).distinct().toList();
        boolean read = there.stream().anyMatch(reading -> reading.state().instrument() == asked.instrument());
        return !instead.isEmpty() ? String.join("; ", instead)
                : read ? "the readings do not show it"
                : "no " + place + " " + asked.instrument().reads() + " to tell it from";
    }

    /** What the car or the day is like where a sentence asks about it, or what a report or a reading says. */
    private static String fact(Question question, Premise fact) {
        return fact.kind().single() ? fact.says(question.asks().get(0).attribute().name()) : fact.statement();
    }

    static String two(double number) {
        return Figures.fill("%.2f", number);
    }
}
