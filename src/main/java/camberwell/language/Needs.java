package camberwell.language;

import camberwell.fact.Day;
import camberwell.fact.Premise;
import camberwell.fact.Reading;
import camberwell.fact.Reported;
import camberwell.fact.Setup;
import camberwell.run.Report;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a rule cannot fire without, and what it finds: enough to leave it out of a case that it does not concern.
 *
 * @param rule the rule's name
 * @param needed {@code symptom understeer}, {@code understeer phase entry}, {@code reading front even-tread},
 *     {@code drive rear}, {@code surface wet}, {@code finding front-tyres-cold}; where one of several will do, they
 *     stand with {@value #OR} between them
 * @param found the findings that it speaks for
 */
public record Needs(String rule, List<String> needed, List<String> found) {

    public static final String FINDING = "finding ";
    private static final String SYMPTOM = "symptom ";
    private static final String READING = "reading ";
    private static final String DRIVE = "drive ";
    private static final String SURFACE = "surface ";
    private static final char OR = '|';
    /** Of what a report can say, that which a case's reports differ in most. */
    private static final List<String> CIRCUMSTANCES = List.of("phase", "speed", "where");
    private static final Pattern STATE = Pattern.compile("shows\\(\"([a-z-]+)\"\\)");

    public static Needs of(RuleText rule) {
        List<String> needed = new ArrayList<>();
        rule.conditions().stream().filter(condition -> !condition.negative())
                .forEach(condition -> add(condition, needed));
        List<String> found = rule.conclusions().stream().filter(line -> line.sentence().verb().equals("find"))
                .map(line -> line.word("finding")).toList();
        return new Needs(rule.name(), List.copyOf(needed), found);
    }

    private static void add(Condition condition, List<String> needed) {
        Map<String, String> words = condition.head().words();
        Matcher state = STATE.matcher(condition.head().sentence().drl());
        if (words.containsKey("finding")) {
            needed.add(FINDING + words.get("finding"));
        } else if (state.find()) {
            needed.add(READING + words.getOrDefault("axle", words.get("wheel")) + " " + state.group(1));
        } else if (words.containsKey("symptom")) {
            String symptom = words.get("symptom");
            needed.add(SYMPTOM + symptom);
            Map<String, Asked.Passing> passes = Asked.of(condition).passes();
            CIRCUMSTANCES.forEach(property ->
                    one(symptom + " " + property + " ", passes.get(property), needed));
        } else {
            Map<String, Asked.Passing> passes = Asked.of(condition).passes();
            one(DRIVE, passes.get("drive"), needed);
            one(SURFACE, passes.get("surface"), needed);
        }
    }

    /** One of the words that pass; nothing where {@code passing} is not asked about. */
    private static void one(String what, Asked.Passing passing, List<String> needed) {
        if (passing != null) {
            needed.add(String.join(String.valueOf(OR), passing.words().stream().map(what::concat).toList()));
        }
    }

    /** What {@code premise} gives, in the words that {@link #needed} is written in. */
    public static void give(Premise premise, Set<String> there) {
        if (premise instanceof Reported reported) {
            Report report = reported.report();
            String symptom = report.symptom().id();
            there.add(SYMPTOM + symptom);
            for (String property : CIRCUMSTANCES) {
                said(report, property).ifPresent(word -> there.add(symptom + " " + property + " " + word.id()));
            }
        } else if (premise instanceof Reading reading) {
            there.add(READING + reading.place().id() + " " + reading.state().id());
        } else if (premise instanceof Setup setup) {
            setup.car().drive().ifPresent(drive -> there.add(DRIVE + drive.id()));
        } else if (premise instanceof Day day) {
            there.add(SURFACE + day.conditions().surface().id());
        }
    }

    private static Optional<? extends Word> said(Report report, String property) {
        return switch (property) {
            case "phase" -> report.phase();
            case "speed" -> report.speed();
            default -> report.where();
        };
    }

    /** Whether all that it needs is {@code there}. */
    public boolean metBy(Set<String> there) {
        for (String need : needed) {
            int from = 0;
            int or = need.indexOf(OR);
            while (or >= 0 && !there.contains(need.substring(from, or))) {
                from = or + 1;
                or = need.indexOf(OR, from);
            }
            if (or < 0 && !there.contains(need.substring(from))) {
                return false;
            }
        }
        return true;
    }
}
