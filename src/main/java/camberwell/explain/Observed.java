package camberwell.explain;

import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.fact.Finding;
import camberwell.fact.Premise;
import camberwell.fact.Reading;
import camberwell.fact.Reading.State;
import camberwell.fact.Reported;
import camberwell.language.Condition;
import camberwell.language.Line;
import camberwell.language.Trial;
import camberwell.run.Report;
import camberwell.units.Figures;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Says what there is where a rule asks for something. */
final class Observed {

    private static final Pattern SHOWS = Pattern.compile("shows\\(\"([a-z-]+)\"\\)");
    /** Readings that answer one question between them. */
    private static final List<List<State>> FAMILIES = List.of(
            List.of(State.BELOW_WINDOW, State.INSIDE_WINDOW, State.ABOVE_WINDOW),
            List.of(State.INNER_EDGE_HOT, State.OUTER_EDGE_HOT, State.EVEN_TREAD, State.MIDDLE_HOT,
                    State.MIDDLE_COLD),
            List.of(State.BELOW_TARGET, State.AT_TARGET, State.ABOVE_TARGET),
            List.of(State.BELOW_TARGET_ALONE, State.ABOVE_TARGET_ALONE),
            List.of(State.HOTTER_AXLE), List.of(State.SIDES_DIFFER));

    private final Reasoning reasoning;

    Observed(Reasoning reasoning) {
        this.reasoning = reasoning;
    }

    /** What makes a condition true; {@code premise} is empty where it asks that something is not so. */
    String held(Condition condition, Optional<Premise> premise) {
        if (premise.isPresent()) {
            return premise.get() instanceof Finding ? "found with certainty " + two(premise.get().certainty())
                    : fact(condition.head(), premise.get());
        }
        return switch (Trial.type(condition)) {
            case "Finding" -> suspicion(condition.head().word("finding"));
            case "Reported" -> "no such report";
            default -> "no such reading";
        };
    }

    /** What there is where the first sentence of a condition is not met. */
    String instead(Condition condition) {
        Line head = condition.head();
        Optional<Premise> match = Trial.of(condition, reasoning.premises()).matches().stream().findFirst();
        if (condition.negative()) {
            return match.map(premise -> premise instanceof Finding ? "but it is, with certainty "
                    + two(premise.certainty()) : premise instanceof Reading ? "but they were"
                    : "but the driver does: " + premise.statement()).orElse("");
        }
        return switch (Trial.type(condition)) {
            case "Reported" -> "nobody reports " + Word.of(Symptom.class, head.word("symptom"))
                    .spoken();
            case "Finding" -> suspicion(head.word("finding"));
            case "Reading" -> readings(head);
            default -> reasoning.typed().stream().filter(fact -> fact.getClass().getSimpleName()
                    .equals(Trial.type(condition))).map(fact -> fact(head, fact)).findFirst().orElse("");
        };
    }

    private String suspicion(String finding) {
        return reasoning.finding(finding).map(found -> (found.certainty() < 0 ? "the rules speak against it, certainty "
                : "the rules come to a certainty of only ") + two(found.certainty()))
                .orElse("nothing speaks for it");
    }

    /** What a report says where a dash under it asks for something: {@code the corner was slow, the rule asks …}. */
    static String narrowed(Line dash, Reported reported) {
        Report report = reported.report();
        Map<String, String> words = dash.words();
        String asked = words.values().stream().map(word -> word.equals("mid-corner") ? word : word.replace('-', ' '))
                .collect(Collectors.joining(" or "));
        String not = dash.text().contains("- not ") ? "anything but " : "";
        if (words.containsKey("phase")) {
            return said("the phase was ", report.phase(), "no phase is named", not + asked);
        }
        if (words.containsKey("speed")) {
            return said("the corner was ", report.speed(), "no corner speed is named", asked);
        }
        if (words.containsKey("axle") || words.containsKey("wheel")) {
            return said("it was at the ", report.where(), "no axle or tyre is named", asked);
        }
        if (words.containsKey("severity")) {
            return said("it was ", Optional.of(report.severity()), "", "at least " + asked);
        }
        String wish = dash.text().replaceFirst("-\\s*", "");
        if (dash.text().contains("direction")) {
            return said("it came in turns: ", report.turn(), "no direction of turns is named", wish);
        }
        return dash.text().contains("every lap") || dash.text().contains("once")
                ? said("it came: ", Optional.of(report.occurrence()), "", wish)
                : said("the part of the run was: ", report.since(), "no part of the run is named", wish);
    }

    private static String said(String begin, Optional<? extends Word> word, String open, String asked) {
        return word.map(there -> begin + there.spoken()).orElse(open) + ", the rule asks for " + asked;
    }

    private String readings(Line head) {
        String place = Optional.ofNullable(head.word("axle")).orElseGet(() -> head.word("wheel"));
        Matcher shows = SHOWS.matcher(head.sentence().drl());
        State asked = shows.find() ? Word.of(State.class, shows.group(1)) : State.EVEN_TREAD;
        List<State> family = FAMILIES.stream().filter(states -> states.contains(asked)).findFirst().orElseThrow();
        List<Reading> there = reasoning.typed().stream().filter(Reading.class::isInstance).map(Reading.class::cast)
                .filter(reading -> reading.of(place)).toList();
        List<String> instead = there.stream().filter(reading -> family.contains(reading.state()))
                .map(Premise::statement).distinct().toList();
        boolean temperature = new Reading(Place.FRONT, asked, 1, "").temperature();
        boolean read = there.stream().anyMatch(reading -> reading.temperature() == temperature);
        return !instead.isEmpty() ? String.join("; ", instead)
                : read ? "the readings do not show it"
                : "no " + place + (temperature ? " tread temperatures" : " pressures") + " to tell it from";
    }

    /** What the car or the day is like where a sentence asks about it, or what a report or a reading says. */
    private String fact(Line head, Premise fact) {
        Car car = reasoning.run().car();
        String drl = head.sentence().drl();
        if (drl.startsWith("Setup")) {
            if (head.words().containsKey("adjuster")) {
                Adjuster adjuster = Word.of(Adjuster.class, head.word("adjuster"));
                return car.setting(adjuster).isPresent() ? "the car has an adjustable " + adjuster.spoken()
                        : car.lacking(adjuster);
            }
            if (drl.contains("drive") || drl.contains("driven")) {
                return car.drive().isPresent() ? "the car is " + car.driven() : "which wheels are driven is not known";
            }
            Adjuster adjuster = drl.contains("caster") ? Adjuster.CASTER
                    : drl.contains("toe") ? Adjuster.toeOf(Word.of(Axle.class, head.word("axle")))
                    : Adjuster.camberOf(Word.of(Axle.class, head.word("axle")));
            return car.setting(adjuster).filter(setting -> !car.generic()).map(Setting::now)
                    .map(now -> "the " + adjuster.spoken() + " stands at " + now)
                    .orElse("the " + adjuster.spoken() + " is not known");
        }
        if (drl.contains("Track()")) {
            return reasoning.run().conditions().track().map(track -> "the track is at " + track)
                    .orElse("the track temperature is not given");
        }
        return drl.startsWith("Day") ? "the surface is " + reasoning.run().conditions().surface().id()
                : fact.statement();
    }

    static String two(double number) {
        return Figures.fill("%.2f", number);
    }
}
