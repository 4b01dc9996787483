package camberwell.debrief;

import camberwell.vocabulary.Outcome;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What came of a change, with what qualifies it: {@code helped a bit}, {@code no different to be honest}. What was there for
 * a while, or helped in one place and harmed in another, is not clear, and so is what nobody could judge: {@code better at
 * first but it came back}, {@code couldn't tell, traffic}. Common practice, no source.
 *
 * @param outcome what came of it
 * @param gone whether nothing is left of the complaint
 * @param rest what else the line says
 */
record OutcomeWords(Outcome outcome, boolean gone, String rest) {

    private static final Pattern UNTOLD = pattern("(?:ca|could|did|do)(?:n'?t|nnot| not) (?:really |quite |honestly )?"
            + "(?:tell|say|judge|know|get a feel)(?: (?:for it|really|yet))?|cannot (?:really )?(?:tell|say|judge)"
            + "|hard to (?:say|tell|judge|know)|not sure|no idea|impossible to (?:say|tell)"
            + "|(?:too much |lots of |because of |there was |in |stuck in |with (?:the )?)*traffic"
            + "|(?:too few|not enough|hardly any) laps|red flags?|safety car|it (?:was raining|rained)|(?:the )?rain came"
            + "|too early to (?:say|tell)|jury(?:'s| is) (?:still )?out|inconclusive|not clear|unclear");
    private static final Pattern SAME = pattern("(?:no|not|never|hardly|barely|not really|n'?t)(?: (?:any|much|that|really"
            + "|been|got"
            + "|get|a lot))* (?:difference|different|change|changed|effect|help|better|improvement|improved|good|worse"
            + "|less of it)"
            + "|no better (?:or|nor|and no|and) (?:no )?worse|neither better nor worse"
            + "|nothing(?: (?:changed|happened|came of it|at all))?|(?:did|does|has|do|have|could)(?:n'?t| not) (?:really "
            + "|much )?"
            + "(?:help|change|do|make|get better|notice|feel|see)(?: (?:it|much|anything|any|a|the|better|worse|difference|change"
            + "|happen))*|never helped|did nothing|(?:much |about |just |exactly |pretty much |more or less )*(?:the )?same"
            + "(?: (?:thing|as before|as ever|again|old))?|unchanged|as (?:it was|before|ever)"
            + "|still (?:there|does it|doing it|the same|as bad|has it|present)|not (?:gone|cured|fixed)"
            + "|without (?:success|effect|any effect)");
    private static final Pattern WORSE = pattern("(?:if anything |even |much |a (?:bit|lot|little|touch|tad|shade) |slightly "
            + "|far "
            + "|made it |got )*worse(?: than (?:ever|before))?|even more of it|more of it");
    private static final Pattern BETTER = pattern("(?:if anything |even |much |a (?:bit|lot|little|touch|tad|shade) "
            + "|slightly |far "
            + "|got |feels |felt )*(?:better|helped|helps|improved|less of it|easier|milder|calmer)(?: (?:a (?:bit|lot|little"
            + "|touch"
            + "|tad)|slightly|somewhat|some))?|(?:almost|nearly|mostly|largely|partly|all but|pretty much|not (?:quite|completely"
            + "|entirely|all)) (?:gone|cured|fixed)|(?:bit|little|lot|much) less(?: of it)?|still there[, ]+(?:but|and"
            + "|only) less");
    private static final Pattern GONE = pattern("(?:completely |all |totally |it's |is |has |went )*gone(?: away)?|cured(?: it)?"
            + "|fixed(?: it)?|disappeared|no longer (?:there|does it)|not there any ?more|does(?:n'?t| not) do (?:it"
            + "|that) any ?more"
            + "|never (?:came back|again)|went away|no more of it");
    private static final Pattern BACK = pattern("(?:(?:it )?(?:then )?(?:soon |later |just |has |all )*(?:came|come|comes"
            + "|coming|crept"
            + "|went|was|is) (?:straight |right )?(?:back|again)(?: (?:again|after .{1,15}|later.{0,15}|towards the end.{0,10}"
            + "|in the (?:second|last).{0,12}))?|returned|(?:did(?:n'?t| not)|not) last|wore off|faded|not for long|short.lived"
            + "|back to (?:how it was|where it was|square one|normal|before))");
    private static final Pattern A_WHILE = pattern("(?:only |just |but )*(?:at first|initially|to begin with|at the (?:start"
            + "|beginning)"
            + "|for (?:a while|a bit)|until .{1,25}|early on|(?:on|for|in) (?:(?:the|a|my) )?(?:first|opening|one|two|three"
            + "|few|couple of|out)"
            + "(?: (?:one|two|three|few|couple of|\\d+))? ?laps?)");
    private static final Set<String> ROUND_IT = Set.of("", "it", "it's", "its", "is", "was", "the", "a", "bit", "little", "so",
            "just", "really", "quite", "maybe", "perhaps", "honestly", "to", "be", "honest", "if", "anything", "i", "think",
            "guess", "would", "i'd", "say", "but", "and", "then", "though", "however", "now", "in", "on", "at", "that", "this",
            "slow", "medium", "fast", "quick", "ones", "corners", "corner", "hairpin", "places", "some", "most", "others",
            "other",
            "everywhere", "all", "lap", "laps", "of", "them", "well", "yes", "no", "yeah", "nope", "definitely", "touch",
            "after", "later", "overall", "still", "only", "there", "with", "because", "for", "me", "feels", "felt", "seems",
            "slightly", "much", "lot", "even", "as", "far", "can", "tell", "or", "like", "got", "made", "makes");

    private static Pattern pattern(String words) {
        return Pattern.compile("(?<![\\w'])(?:" + words + ")(?![\\w'])");
    }

    /** What a line says of it; empty where it says nothing of it. */
    static Optional<OutcomeWords> of(String typed) {
        String line = typed.strip().toLowerCase(Locale.ROOT).replace('\u2019', '\'').replaceAll("\\s+", " ");
        boolean untold = UNTOLD.matcher(line).find();
        String left = UNTOLD.matcher(line).replaceAll(" ");
        boolean partly = BETTER.matcher(left).results().anyMatch(it -> it.group().matches(".*(?:gone|cured|fixed|less).*"));
        left = partly ? BETTER.matcher(left).replaceAll(" ") : left;
        boolean back = BACK.matcher(left).find() && !GONE.matcher(left).results().anyMatch(it -> it.group().startsWith("never"));
        boolean notGone = SAME.matcher(left).results().anyMatch(it -> it.group().startsWith("not "));
        boolean gone = !notGone && GONE.matcher(left).find();
        left = notGone ? left : GONE.matcher(left).replaceAll(" ");
        boolean same = SAME.matcher(left).find();
        left = GONE.matcher(SAME.matcher(left).replaceAll(" ")).replaceAll(" ");
        boolean worse = WORSE.matcher(left).find();
        boolean better = partly || BETTER.matcher(left).find();
        boolean aWhile = A_WHILE.matcher(left).find();
        for (Pattern said : new Pattern[] {WORSE, BETTER, BACK, A_WHILE}) {
            left = said.matcher(left).replaceAll(" ");
        }
        String rest = left.strip();
        boolean good = better || gone;
        boolean onlyAWhile = aWhile && line.contains("only");
        if (untold || onlyAWhile || good && (worse || back || aWhile)) {
            return Optional.of(new OutcomeWords(Outcome.UNCLEAR, false, rest));
        }
        return worse ? Optional.of(new OutcomeWords(Outcome.WORSE, false, rest))
                : good ? Optional.of(new OutcomeWords(Outcome.BETTER, gone && !better && !same, rest))
                : same || back ? Optional.of(new OutcomeWords(Outcome.SAME, false, rest)) : Optional.empty();
    }

    /** Whether the line says nothing else. */
    boolean all() {
        return Stream.of(rest.split("[\\s,;:.!-]+")).allMatch(ROUND_IT::contains);
    }
}
