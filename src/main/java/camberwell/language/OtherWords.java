package camberwell.language;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What people write who have not looked the sentence up, and the sentence that says the very same; where none does, what to
 * do. A row changes words, never what is said: that the rest makes a sentence is for the caller to find out.
 */
final class OtherWords {

    private static final String STRONG = "(?:strong|severe|heavy|bad)";
    private static final String SLIGHT = "(?:slight|mild|light|little)";
    private static final String CORNERS = "(hairpin|chicane|sweeper|crest|dip|banking)s?";
    private static final String TIMES = "(?:run|stint|session)";

    /** A line from first to last letter, and what says the same. */
    private static final String[][] CONDITIONS = {
        {"- (?:sometimes|now and then|occasionally|on and off|from time to time)", "- on some laps"},
        {"- (?:always|all the time|lap after lap|(?:on )?(?:each|every) lap|on all laps)", "- on every lap"},
        {"- (?:one time|a single time|once)", "- only once"},
        {"- (?:(?:towards |at |near |by )?the end(?: of the " + TIMES
                + ")?|(?:in|on|over) the (?:last|final) (?:few )?laps?|late(?: on)?|late in the (?:stint|session)|later(?: on)?"
            + "|later in the run)", "- late in the run"},
        {"- (?:(?:at|in|from) the (?:beginning|start)(?: of the " + TIMES
                + ")?|(?:in|on|over|during) the (?:first|opening) (?:few )?laps?"
            + "|early(?: on| in the run)?)", "- from the first laps"},
        {"- (?:the whole run|during the whole run|all run(?: long)?|throughout(?: the run)?)", "- over the whole run"},
        {"- (?:in|into|at|on|over|through|during|out of) (?:the |a |an )?" + CORNERS, "- at a $1"},
        {"- (?:under|on|during|while|when|in) (?:the )?(?:brakes|braking)", "- at braking"},
        {"- (?:(?:on|under|with|in) (?:the |full )?(?:power|throttle|gas|acceleration)|(?:when|while) accelerating"
            + "|out of (?:the )?corners?)", "- at exit"},
        {"- (?:(?:on|at|during|while|when) (?:the )?(?:turn-in|turning in)|into (?:the )?corners?|on the way in)", "- at entry"},
        {"- (?:off (?:the )?(?:throttle|power|gas)|(?:when|while|on) (?:lifting|a lift|the lift)(?: off)?)", "- at lift-off"},
        {"- (?:in the middle(?: of the corner)?|at the apex|in mid-corner)", "- at mid-corner"},
        {"- (?:on|over) (?:the |tall )?kerbs?", "- at kerbs"},
        {"- on (?:the )?straights?", "- at straight"},
        {"- (?:on|in|during) (entry|exit)", "- at $1"},
        {"- in (?:corners that are )?(slow|medium|fast)(?: ones| bends| turns| speed corners)?", "- in $1 corners"},
        {"- in (left|right)(?:-hand|-handed| hand)? (?:corners|turns|bends|ones|handers)", "- in $1 turns"},
        {"- " + STRONG, "- at least strong"},
        {"- " + SLIGHT, "- at most slight"},
        {"- (?:not slight|more than slight)", "- at least clear"},
        {"- not strong", "- less than strong"},
        {"the driver (?:never reports|reports never|reports no|complains of no|never complains (?:of|about)) (.+)",
            "the driver does not report $1"},
        {"(?:nobody|no one|no driver) (?:reports|mentions|complains (?:of|about)) (.+)", "the driver does not report $1"},
        {"there (?:is|was) no (\\S+)", "the driver does not report $1"},
        {"there (?:is|was) (\\S+)", "the driver reports $1"},
        {"(?:the driver|the coach|the pupil|the student|somebody|someone|anybody) (?:reports|feels|has|notices|mentions"
            + "|complains (?:of|about)|suffers from) (.+)", "the driver reports $1"},
        {"the driver reports " + STRONG + " (\\S+)(.*)", "the driver reports $1$2, at least strong"},
        {"the driver reports " + SLIGHT + " (\\S+)(.*)", "the driver reports $1$2, at most slight"},
        {"the driver reports clear (\\S+)(.*)", "the driver reports $1$2, at least clear"},
        {"the driver reports (front|rear) (\\S+)(.*)", "the driver reports $2$3 at the $1 tyres"},
        {"the (front|rear) (?:tyres|tires) are (?:too )?(?:hot|overheated|overheating)", "the $1 tyres are above their window"},
        {"the (front|rear) (?:tyres|tires) are (?:too )?(?:cold|cool)", "the $1 tyres are below their window"},
        {"the (front|rear) (?:hot )?pressures? (?:is|are) (?:too high|above (?:its |their )?target)",
            "the $1 tyres are above their target pressure"},
        {"the (front|rear) (?:hot )?pressures? (?:is|are) (?:too low|below (?:its |their )?target)",
            "the $1 tyres are below their target pressure"},
        {"(?:the (?:track|road|weather|circuit) is|it is) (wet|damp|dry)", "the surface is $1"},
        {"(?:it is raining|it rains|the weather is rainy)", "the surface is wet"},
        {"the car is (?:in |used in )?(?:a |the )?simulator", "the car is one of a simulator"},
        {"the car is (?:a )?real(?: car)?", "the car is no car of a simulator"},
        {"the car is (?:a |an )?(?:formula(?: car)?|open[- ]wheeler)", "the car is a single-seater"},
        {"the car is (?:a )?touring car", "the car is a tourer"},
        {"the car is (?:a )?(?:sports )?prototype(?: car)?", "the car is a prototype"},
        {"the circuit is (?:an )?oval", "the circuit turns one way"},
        {"the driver is (?:a |an )?(newcomer|club|experienced)(?: driver| one)?", "the driver is at $1 level"},
        {"the driver is (?:a )?(?:beginner|novice|rookie)", "the driver is at newcomer level"},
        {"the driver is (?:an? )?(?:expert|pro|professional)", "the driver is at experienced level"},
        {"the driver is not (?:a |an )?(newcomer|club|experienced)(?: driver| one)?", "the driver is not at $1 level"},
        {"the driver is not (?:a )?(?:beginner|novice|rookie)", "the driver is not at newcomer level"},
        {"the tyres are (soft|medium|hard|intermediate|wet)s?", "the tyres are of the $1 compound"},
        {"the tyres are (?:worn(?: out)?|used|not new)", "the tyres are old"},
        {"the last change (?:helped|worked|was good|improved it)", "the last change made it better"},
        {"the last change (?:hurt|was bad|made (?:things|it much) worse)", "the last change made it worse"},
        {"the last change (?:did nothing|changed nothing|had no effect|made it (?:the )?same)",
            "the last change made no difference"},
        {"(\\S+ \\S+) was tried and (?:helped|worked|was better)", "$1 was tried and made it better"},
        {"(\\S+ \\S+) was tried and (?:hurt|was worse)", "$1 was tried and made it worse"},
        {"(\\S+ \\S+) was tried and (?:did nothing|changed nothing|had no effect|made it (?:the )?same)",
            "$1 was tried and made no difference"},
        {"the (front|rear) wheels are toed-(in|out)(.*)", "the $1 wheels are toed $2$3"},
        {"the (front|rear) wheels have toe-(in|out)", "the $1 wheels are toed $2"},
        {"the (front|rear) tyres are (?:over|beyond|hotter than) their window", "the $1 tyres are above their window"},
        {"the (front|rear) tyres are (?:under|cooler than|colder than) their window", "the $1 tyres are below their window"},
        {"the (front|rear) tyres are (?:in|within) their window", "the $1 tyres are inside their window"},
        {"the (track|air) is (?:colder|cooler|less) than (.+)", "the $1 is below $2"},
        {"the (track|air) is (?:hotter|warmer|more) than (.+)", "the $1 is above $2"},
        {"the car (?:weighs over|is heavier than) (.+)", "the car weighs more than $1"},
        {"the car (?:weighs under|is lighter than) (.+)", "the car weighs less than $1"},
        {"(.+) inside edge(.*)", "$1 inner edge$2"},
        {"(.+) outside edge(.*)", "$1 outer edge$2"},
        {"(.+) (?:on|along) the (inner|outer) edge(.*)", "$1 at the $2 edge$3"},
        {"the (\\S+) tread is (?:over|higher than|hotter than|more than) (\\d.*)", "the $1 tread is above $2"},
        {"the (\\S+) tread is (?:under|lower than|cooler than|colder than|less than) (\\d.*)", "the $1 tread is below $2"},
        {"the (\\S+) tread is above the (\\S+) tread by more than (.+)",
                "the $1 tread is hotter than the $2 tread by more than $3"},
        {"(\\S+) is (?:unlikely|improbable)", "$1 is not likely"},
        {"(?:not|no) (\\S+) is likely", "$1 is not likely"},
        {"(\\S+) is (?:probable|found|true|present|possible)", "$1 is likely"},
        {"(\\S+) is (?:very likely|certain|sure|almost certain)", "$1 is nearly certain"},
        {"the (\\S+) (?:cannot|can not|can't|can no longer) (?:go|be made|get) (?:any )?(\\S+?)(?: any ?more)?",
            "the $1 is at its stop towards $2"},
        {"the (?!\\S*pressure)(\\S+) (?:is|are|stand) (?:set )?(above|below) (.+)", "the $1 stands $2 $3"},
        {"the car has (?:a |an )?(\\S+)", "the car has an adjustable $1"},
        {"the car has no (\\S+)", "the car has no adjustable $1"},
        {"the (\\S+) tread is (?:cooler|colder) than the (\\S+) tread by more than (.+)",
            "the $2 tread is hotter than the $1 tread by more than $3"},
        {"the (\\S+) tread is (?:cooler|colder) at the inner edge(.*)", "the $1 tread is hotter at the outer edge$2"},
        {"the (\\S+) tread is (?:cooler|colder) at the outer edge(.*)", "the $1 tread is hotter at the inner edge$2"},
        {"the (\\S+) hot pressure is below the (\\S+) hot pressure by more than (.+)",
            "the $2 hot pressure is above the $1 hot pressure by more than $3"}};

    private static final String[][] CONCLUSIONS = {
        {"speak for (\\S+)(.*)", "find $1$2"},
        {"(?:tell|ask|teach|advise) the driver (?:to )?(\\S+)(.*)", "advise the driver $1$2"},
        {"(?:warn(?: of)?|remind of|show the caution) (\\S+)", "caution $1"},
        {"(.+) with (?:a )?(?:confidence|probability|weight|strength|certainty) (?:of )?(\\S+)", "$1 with certainty $2"},
        {"(.+) by (\\S+) (?:clicks?|notch(?:es)?|holes?|positions?)( with certainty .+)", "$1 by $2 steps$3"},
        {"(.+) by (\\d+) with certainty (.+)", "$1 by $2 steps with certainty $3"},
        {"(?:recommend|suggest|advise|try) (\\S+ \\S+)(.*)", "propose $1$2"},
        {"withhold (\\S+ \\S+) with certainty .*", "withhold $1"},
        {"soften (?:the )?(\\S+)", "propose $1 softer with certainty 0.5"},
        {"stiffen (?:the )?(\\S+)", "propose $1 stiffer with certainty 0.5"},
        {"(?:increase|raise) (?:the )?(\\S+)", "propose $1 higher with certainty 0.5"},
        {"(?:increase|raise) (?:the )?(\\S+)", "propose $1 more with certainty 0.5"},
        {"(?:decrease|reduce|lower) (?:the )?(\\S+)", "propose $1 lower with certainty 0.5"},
        {"(?:decrease|reduce|lower) (?:the )?(\\S+)", "propose $1 less with certainty 0.5"}};

    /** A line from first to last letter, and what to do. */
    private static final String[][] ADVICE = {
        {"the driver reports (\\S+) or (\\S+) or (\\S+).*",
                "\"or\" joins two words; write \"either the driver reports $1 or $2\" and "
            + "below it \"or the driver reports $3\""},
        {"- or (\\S+)", "\"or\" joins two words; for a third write a line \"either ...\" and below it \"or ...\""},
        {"the driver reports neither (\\S+) nor (\\S+)",
                "write \"the driver does not report $1\" and below it \"the driver does not "
            + "report $2\""},
        {"the driver does not report (\\S+) (?:or|nor|and) (\\S+)",
                "write \"the driver does not report $1\" and below it \"the driver "
            + "does not report $2\""},
        {"the driver does not report (\\S+) at (\\S+) (?:or|and) (\\S+)",
                "write \"the driver does not report $1 at $2\" and below it "
            + "\"the driver does not report $1 at $3\""},
        {"the driver does not report (\\S+?),? (?!at (?!least|most)|in )(.+)",
                "what is not reported is narrowed by \"at {phase}\" or \"in {speed} "
            + "corners\" alone"},
        {"- at (\\S+?),? and (\\S+)|- at (\\S+), (\\S+)", "a report names one phase: \"or\" lets either pass"},
        {"- (?:everywhere|anywhere|(?:in|at) (?:all|any|every) (?:corners?|phases?|turns?))",
            "leave it out: a report passes wherever it was"},
        {"(.+) is between (\\S+) and (\\S+)( \\S+)?", "write \"$1 is above $2$4\" and below it \"$1 is below $3$4\""},
        {"the car is (?:a )?heavy(?: car| one)?", "write \"the car weighs more than {figure} kg\""},
        {"the car is (?:a )?light(?: car| one)?", "write \"the car weighs less than {figure} kg\""},
        {"the tyres are (?:new|fresh|not old)", "write \"the tyres have done less than {figure} laps\""},
        {"the (\\S+) is at its (?:maximum|minimum|limit|stop|end)", "write \"the $1 is at its stop towards {direction}\""},
        {"the answer to (\\S+) is not (\\S+)",
                "name the answers that are left, in a line \"either ...\" and lines \"or ...\" below it"},
        {"the air is (?:cold|cool)", "write \"the air is below {figure} °C\""},
        {"the air is (?:hot|warm)", "write \"the air is above {figure} °C\""},
        {"(\\S+ \\S+) was not tried", "nothing asks for what was not tried; ask what came of what was"},
        {"the last change was (\\S+ \\S+) and (.+)", "write \"the last change was $1\" and below it \"the last change $2\""},
        {"the track is (?:warm|cool|mild)", "a track is cold or hot; else write \"the track is above {figure} °C\""},
        {"- (?:in|on) (?:the |a )?(wet|damp|dry)(?: track| road| surface)?",
            "write \"the surface is $1\" as a condition of its own, above the report or below its dashes"},
        {"(\\S+) or (\\S+) is likely", "write \"either $1 is likely\" and below it \"or $2 is likely\""}};

    private static final String[][] ADVICE_FOR_CONCLUSIONS = {
        {"(?:do not|don't|never) (?:propose|change|move|touch|make) (\\S+ \\S+?)(?: with certainty .*)?|propose not (\\S+ "
                + "\\S+)(?: with .*)?",
            "\"oppose\" speaks against a change, \"withhold\" lets it wait"},
        {"(?:do not|don't|never) (?:propose|change|move|touch) (\\S+)",
                "\"oppose\" speaks against a change, \"withhold\" lets it wait"},
        {"oppose every (\\S+) changes?",
                "\"oppose\" speaks against one change, \"withhold every $1 change\" lets all of them wait"},
        {"put (\\S+ \\S+) (?:second|third|last|before .+|after .+)", "a change can be put first, and nowhere else"},
        {"(propose \\S+ \\S+) (by|to) (-?[0-9.]+) with certainty .*",
                "a number has its unit behind it: \"$1 $2 $3 {unit} with certainty "
            + "{certainty}\""},
        {"(.+) with certainty ([1-9][0-9]) ?%", "a certainty is a share of 1: write \"$1 with certainty 0.$2\""},
        {"(.+) with certainty ([0-9]+) ?%", "a certainty lies between 0.01 and 1.0"},
        {"(propose|oppose) (\\S+) to (.+)", "say also which way it goes: \"$1 $2 {direction} to $3\""},
        {"(.+) with certainty (\\S+) and (.+)", "one sentence a line: what follows \"and\" stands on the next line"}};

    private record Row(Pattern said, String meant) {

        static List<Row> of(String[][] table) {
            List<Row> rows = new ArrayList<>();
            for (String[] row : table) {
                rows.add(new Row(Pattern.compile("\\A(?:" + row[0] + ")\\z"), row[1]));
            }
            return rows;
        }
    }

    private final List<Row> sentences;
    private final List<Row> advice;

    OtherWords(boolean condition) {
        this.sentences = Row.of(condition ? CONDITIONS : CONCLUSIONS);
        this.advice = Row.of(condition ? ADVICE : ADVICE_FOR_CONCLUSIONS);
    }

    /** What says the same as {@code line}, in the words of the dictionary as far as the table goes; the likeliest first. */
    List<String> sentences(String line) {
        List<String> meant = new ArrayList<>();
        for (Row row : sentences) {
            Matcher matcher = row.said().matcher(line);
            if (matcher.matches()) {
                meant.add(matcher.replaceFirst(row.meant()));
            }
        }
        return meant;
    }

    /** What to do where no sentence says that; empty where the table does not know. */
    Optional<String> advice(String line) {
        for (Row row : advice) {
            Matcher matcher = row.said().matcher(line);
            if (matcher.matches()) {
                return Optional.of(matcher.replaceFirst(row.meant()));
            }
        }
        return Optional.empty();
    }
}
