package camberwell.debrief;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How people take back what they just said: {@code no, understeer}, {@code scratch that, it pushes}, {@code not oversteer but
 * understeer}, {@code actually it does not wander}. What is corrected by it says {@link Corrections}.
 *
 * @param rest what is said instead
 * @param denied what is said not to be so; empty where that is not named
 * @param how how surely it takes something back
 */
record Correction(String rest, Optional<String> denied, Sureness how) {

    /** How surely a line takes something back by its first words. */
    enum Sureness {
        /** It says so: "scratch that". */
        SAID,
        /** "No, ...", which may answer a question instead. */
        NO,
        /** "Actually ...", which may add something. */
        MAYBE
    }

    private static final Pattern SAID = Pattern.compile("^(?:(?:no|nope|oops|oh|ah|er|erm|well|sorry|wait|hang on|hold on|"
            + "my mistake|i mean|i meant|i meant to say|scratch that|strike that|forget that|correction|correct that|"
            + "(?:change|correct) (?:it|that) to|make that|that should be|it should be|should be|or rather|"
            + "(?:that(?:'s| is| was) )?wrong(?=\\s*[,:;.!-]))\\b[\\s,:;.!-]*)+",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern NO = Pattern.compile("^(?:no|nope)(?:\\s*[,:;.!-]+\\s*|\\s+(?=(?:it|it's|the|she|they|that|i)"
            + "\\b))", Pattern.CASE_INSENSITIVE);
    private static final Pattern MAYBE = Pattern.compile("^(?:actually|in fact|well actually|thinking of it|come to think of it)"
            + "\\b[\\s,:;-]*", Pattern.CASE_INSENSITIVE);
    private static final Pattern NOT_BUT = Pattern.compile("^(?:it(?:'s| is| was)? |that(?:'s| is| was)? )?not (.+?)"
            + "(?: but |, ?(?:but |rather )?)(?:it(?:'s| is| was) |that(?:'s| is| was) )?(.+)$", Pattern.CASE_INSENSITIVE);
    private static final Pattern AND_NOT = Pattern.compile("^(.+?)(?:,| and| -) ?not (.+)$", Pattern.CASE_INSENSITIVE);
    /** Inside a line a bare "no" stands apart, since "there is no grip" takes nothing back. */
    private static final Pattern INSIDE = Pattern.compile("^(.*?\\w)(?:\\s*[,;:.-]+\\s*(?:no(?=[,;:.!]|\\s+(?:it|the|i)\\b)"
            + "|wait|sorry|oops|rather)\\b|\\s*[,;:.-]*\\s+(?:i mean|i meant|no wait|no sorry|or rather|scratch that|correction"
            + "|make that)\\b)"
            + "(?:[,:;. ]*(?:no|wait|sorry|i mean|i meant)\\b)*[,:;. ]*(.+)$", Pattern.CASE_INSENSITIVE);
    private static final Pattern DENIAL = Pattern.compile("^(?:(?:it|the car|she|he|that|this|there)(?:'s)? ?)?(?:does not|"
            + "doesn't|doesnt|did not|didn't|didnt|is not|isn't|isnt|was not|wasn't|wasnt|is no|was no|never|not) "
            + "(?:really |actually )?(.+?)(?: at all| any ?more| after all)?$", Pattern.CASE_INSENSITIVE);
    /** What adds to what was said, rather than taking it back. */
    private static final Pattern ADDS = Pattern.compile("^(?:and|plus)\\b|\\b(?:also|too|as well|besides|another)\\b",
            Pattern.CASE_INSENSITIVE);

    /** What a line takes back; empty where it does not begin or read so. */
    static Optional<Correction> of(String typed) {
        String line = plain(typed);
        Matcher no = NO.matcher(line);
        Matcher said = SAID.matcher(line);
        Matcher maybe = MAYBE.matcher(line);
        Sureness how = Sureness.MAYBE;
        String rest = line;
        // "No grip" takes nothing back, and "no, " by itself may be an answer.
        if (said.find() && !said.group().strip().matches("(?i)(?:no|nope|oh|ah|er|erm|well|wait)[\\s,:;.!-]*")) {
            how = Sureness.SAID;
            rest = line.substring(said.end());
        } else if (no.find()) {
            how = Sureness.NO;
            rest = line.substring(no.end());
        } else if (maybe.find()) {
            rest = line.substring(maybe.end());
        } else if (!NOT_BUT.matcher(line).matches() && !AND_NOT.matcher(line).matches() && denied(line).isEmpty()) {
            return Optional.empty();
        }
        rest = rest.strip();
        if (rest.isEmpty() || ADDS.matcher(rest).find()) {
            return Optional.empty();
        }
        Matcher notBut = NOT_BUT.matcher(rest);
        if (notBut.matches()) {
            return Optional.of(new Correction(notBut.group(2), Optional.of(notBut.group(1)), how));
        }
        Matcher andNot = AND_NOT.matcher(rest);
        return Optional.of(andNot.matches() ? new Correction(andNot.group(1), Optional.of(andNot.group(2)), how)
                : new Correction(rest, Optional.empty(), how));
    }

    /** What a line says is not so, if it says nothing else: {@code it does not wander}. */
    static Optional<String> denied(String typed) {
        Matcher denial = DENIAL.matcher(plain(typed));
        return denial.matches() ? Optional.of(denial.group(1)) : Optional.empty();
    }

    /** A line that corrects itself, {@code on entry, I mean mid corner}: what was said first, and what is meant. */
    static Optional<Correction> inside(String typed) {
        String line = plain(typed);
        Matcher inside = INSIDE.matcher(line);
        return inside.matches()
                ? Optional.of(new Correction(inside.group(2), Optional.of(inside.group(1)), Sureness.SAID)) : Optional.empty();
    }

    private static String plain(String typed) {
        return typed.strip().replace('\u2019', '\'').replaceAll("\\s+", " ").replaceAll("[.!]+$", "");
    }
}
