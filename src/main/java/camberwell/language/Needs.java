package camberwell.language;

import camberwell.fact.Attribute;
import camberwell.fact.Kind;
import camberwell.fact.Passing;
import camberwell.fact.Premise;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a rule cannot fire without, what it finds, and its reason: enough to leave it out of a case that it does not
 * concern, and to say why where it does, with the rule itself unread.
 *
 * @param rule the rule's name
 * @param because its author's reason
 * @param needed {@code Day surface wet}, {@code Finding front-tyres-cold}, {@code Reading front shows even-tread},
 *     {@code Reported understeer phase entry}; where one of several will do, they stand with {@value #OR} between them
 * @param asked what it asks of one fact at once, numbers and signs included, as {@link AskedOfFact} writes it: looked at only
 *     where all that is needed is there
 * @param found the findings that it speaks for
 */
public record Needs(String rule, String because, List<String> needed, List<String> asked, List<String> found) {

    private static final char OR = '|';

    /** What {@code rule} needs. */
    public static Needs of(RuleText rule) {
        List<String> needed = new ArrayList<>();
        List<String> asked = new ArrayList<>();
        for (Condition condition : rule.conditions()) {
            if (!condition.negative()) {
                add(condition.question(), needed);
            }
            if (AskedOfFact.tells(condition.question())) {
                asked.add(AskedOfFact.write(condition.question()));
            }
        }
        List<String> found = new ArrayList<>();
        rule.statements().forEach(statement -> {
            if (statement instanceof Statement.Find find) {
                found.add(find.finding());
            }
        });
        return new Needs(rule.name(), rule.because(), List.copyOf(needed), List.copyOf(asked), List.copyOf(found));
    }

    private static void add(Question question, List<String> needed) {
        Kind kind = question.kind();
        String subject = kind.name();
        if (!kind.single()) {
            Optional<Passing> subjects = question.passing(kind.attributes().get(0).name());
            Optional<String> which = question.word(kind.attributes().get(0).name());
            if (which.isEmpty()) {
                // One of several facts, or any of the kind, may meet it.
                subjects.filter(passing -> !passing.words().isEmpty()).ifPresent(passing ->
                        needed.add(oneOf(kind.name() + " ", passing)));
                return;
            }
            subject += " " + which.get();
            needed.add(subject);
        }
        for (Attribute attribute : kind.attributes()) {
            if (tells(kind, attribute)) {
                String begin = subject + " " + attribute.name() + " ";
                question.passing(attribute.name()).ifPresent(passing -> needed.add(oneOf(begin, passing)));
            }
        }
    }

    private static String oneOf(String begin, Passing passing) {
        return String.join(String.valueOf(OR), passing.words().stream().map(begin::concat).toList());
    }

    /** Whether it is a word, and not the one that says which fact is meant. */
    private static boolean tells(Kind kind, Attribute attribute) {
        return !attribute.isNumber() && (kind.single() || attribute != kind.attributes().get(0));
    }

    /** What {@code premise} gives, in the words that {@link #needed} is written in. */
    public static void give(Premise premise, Set<String> there) {
        Kind kind = premise.kind();
        String subject = kind.name();
        if (!kind.single()) {
            subject += " " + premise.word(kind.attributes().get(0).name());
            there.add(subject);
        }
        for (Attribute attribute : kind.attributes()) {
            String word = tells(kind, attribute) ? premise.word(attribute.name()) : null;
            if (word != null) {
                there.add(subject + " " + attribute.name() + " " + word);
            }
        }
    }

    /** What a finding gives, by its name. */
    public static String given(String finding) {
        return "Finding " + finding;
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

    /** Whether what it asks of single facts is so: with {@link #metBy}, all that can be known before it fires. */
    public boolean askedOf(Collection<? extends Premise> premises) {
        for (String question : asked) {
            if (!AskedOfFact.met(AskedOfFact.read(question), premises)) {
                return false;
            }
        }
        return true;
    }
}
