package camberwell.rules;

import camberwell.fact.Day;
import camberwell.fact.Premise;
import camberwell.fact.Reading;
import camberwell.fact.Reported;
import camberwell.fact.Setup;
import camberwell.run.Report;
import camberwell.vocabulary.Axle;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a rule cannot fire without, and what it finds: enough to leave it out of a case that it does not concern.
 *
 * @param rule the rule's name
 * @param needed {@code symptom understeer}, {@code symptom understeer at entry}, {@code reading front even-tread},
 *     {@code drive rear}, {@code surface wet}, {@code finding front-tyres-cold}; where one of several will do, they stand
 *     with {@value #OR} between them
 * @param found the findings that it speaks for
 */
record Needs(String rule, List<String> needed, List<String> found) {

    static final String FINDING = "finding ";
    private static final String SYMPTOM = "symptom ";
    private static final String READING = "reading ";
    private static final String DRIVE = "drive ";
    private static final String DRIVEN = "driven ";
    private static final String SURFACE = "surface ";
    private static final char OR = '|';
    private static final Pattern STATE = Pattern.compile("shows\\(\"([a-z-]+)\"\\)");

    static Needs of(RuleText rule) {
        List<String> needed = new ArrayList<>();
        rule.conditions().stream().filter(condition -> !condition.negative())
                .forEach(condition -> add(condition, needed));
        List<String> found = rule.conclusions().stream().filter(line -> line.sentence().verb().equals("find"))
                .map(line -> line.word("finding")).toList();
        return new Needs(rule.name(), List.copyOf(needed), found);
    }

    private static void add(Condition condition, List<String> needed) {
        String drl = condition.head().sentence().drl();
        Map<String, String> words = condition.head().words();
        Matcher state = STATE.matcher(drl);
        if (words.containsKey("symptom")) {
            String symptom = SYMPTOM + words.get("symptom");
            needed.add(symptom);
            condition.narrowings().forEach(line -> narrow(symptom, line, needed));
        } else if (words.containsKey("finding")) {
            needed.add(FINDING + words.get("finding"));
        } else if (state.find()) {
            needed.add(READING + words.getOrDefault("axle", words.get("wheel")) + " " + state.group(1));
        } else if (drl.contains("(drives(")) {
            needed.add(DRIVE + words.get("drive"));
        } else if (drl.contains("(driven(")) {
            needed.add(DRIVEN + words.get("axle"));
        } else if (drl.contains("(surfaceIs(")) {
            needed.add(SURFACE + words.get("surface"));
        }
    }

    private static void narrow(String symptom, Line dash, List<String> needed) {
        String drl = dash.sentence().drl();
        Map<String, String> words = dash.words();
        if (drl.startsWith("inPhase(")) {
            needed.add(either(symptom + " at ", words.get("phase"), words.get("other")));
        } else if (drl.startsWith("inCorners(")) {
            needed.add(either(symptom + " in ", words.get("speed"), words.get("other")));
        } else if (drl.startsWith("on(")) {
            needed.add(symptom + " on " + words.getOrDefault("axle", words.get("wheel")));
        }
    }

    private static String either(String what, String word, String other) {
        return what + word + (other == null ? "" : OR + what + other);
    }

    /** What {@code premise} gives, in the words that {@link #needed} is written in. */
    static void give(Premise premise, Set<String> there) {
        if (premise instanceof Reported reported) {
            Report report = reported.report();
            String symptom = SYMPTOM + report.symptom().id();
            there.add(symptom);
            report.phase().ifPresent(phase -> there.add(symptom + " at " + phase.id()));
            report.speed().ifPresent(speed -> there.add(symptom + " in " + speed.id()));
            report.where().ifPresent(place -> {
                there.add(symptom + " on " + place.id());
                there.add(symptom + " on " + place.axle().id());
            });
        } else if (premise instanceof Reading reading) {
            there.add(READING + reading.place().id() + " " + reading.state().id());
        } else if (premise instanceof Setup setup) {
            setup.car().drive().ifPresent(drive -> there.add(DRIVE + drive.id()));
            for (Axle axle : Axle.values()) {
                if (setup.driven(axle.id())) {
                    there.add(DRIVEN + axle.id());
                }
            }
        } else if (premise instanceof Day day) {
            there.add(SURFACE + day.conditions().surface().id());
        }
    }

    /** Whether all that it needs is {@code there}. */
    boolean metBy(Set<String> there) {
        for (String need : needed) {
            int or = need.indexOf(OR);
            if (or < 0 ? !there.contains(need)
                    : !there.contains(need.substring(0, or)) && !there.contains(need.substring(or + 1))) {
                return false;
            }
        }
        return true;
    }
}
