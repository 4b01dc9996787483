package camberwell.debrief;

import camberwell.saying.Heard;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** What is answered in a word or two: yes, no, both, so many laps, which way round. */
final class PlainAnswer {

    private static final Pattern NOT_READ = Pattern.compile("\\b(?:no|nobody|no one|not|never|can'?t|cannot|didn'?t"
            + "|don'?t|couldn'?t)\\b"
            + ".*\\b(?:measured?|measuring|read|reading|readings|taken?|took|pyrometer|probe|gauge|checked?)\\b");

    /** Nothing of what was listed. */
    private static final Pattern NONE = Pattern.compile("(?:(?:no|nope|well|sorry|oh)[,. ]+)*(?:none of (?:that|those|these"
            + "|them|it"
            + "|the above)|nothing (?:of|like|on|in) (?:that|those|these|them|it|the sort|the kind|the list)|no such thing"
            + "|neither"
            + "|not (?:one|any|any of (?:that|those|these|them|it)|in the list|on the list|there|listed)|it'?s not (?:there"
            + "|listed"
            + "|in the list|on the list)|something else)");
    /** That nobody looked, or had the time to. */
    private static final Pattern NOT_DONE = Pattern.compile("(?:(?:no|nope|well|sorry|oh)[,. ]+)*(?:not (?:yet|this time|today)"
            + "|(?:there was |we had |had )?no (?:time|chance)\\b.{0,20}|(?:(?:i|we|they|nobody|no one|he|she|it) )?(?:(?:was"
            + "|were|did"
            + "|have|had)(?:n'?t| not)|never)(?: (?:read|measured?|taken?|looked|look(?: at (?:them|it))?|checked?|bother(?:ed)?"
            + "|have (?:the )?time|get (?:round )?to (?:it|that|them)|do (?:it|that|them)|done|any of (?:it|that)))?)"
            + "|nobody (?:looked|did)(?: at (?:them|it))?");
    /** That a tread shows nothing. */
    private static final Pattern NOTHING_SHOWS = Pattern.compile("(?:(?:no|well|yes|they|they'?re|it|it'?s|all|the (?:treads?"
            + "|tyres"
            + "|wear|rubber)|look|looks|looked|is|are|were|was|seem|seemed|pretty|quite|fairly|rather|really|just|a bit|nice and"
            + "|perfectly|reasonably|very)[, ]+)*(?:smooth(?: enough)?|even(?:ly)?(?: enough| worn)?(?: all over| across)?|clean"
            + "|normal(?: wear)?|ok|okay|good|fine|uniform|flat across|like new|as (?:they|it) should|not (?:really |much "
            + "|very )?worn"
            + "|worn (?:evenly|all over|all across)|not that i (?:could|can) see|nothing (?:odd|strange|unusual|special|much))"
            + "(?: to me| i think| really| all (?:over|round))?");

    private PlainAnswer() {
    }

    /**
     * What it answers to that question; empty where it does not by itself.
     *
     * @param all whether "both", or an end of the car, is of that question, and not of what was asked back about
     */
    static Optional<Answer> of(Topic topic, String typed, Debrief debrief, boolean all) throws Reply.NoAnswer {
        String small = typed.strip().toLowerCase(Locale.ROOT).replaceAll("[.!]+$", "");
        if (topic.field() == Field.SIMULATOR && Rig.said(typed, true).isPresent()) {
            return Rig.said(typed, true).map(Answer.Either::new);
        }
        if (topic.field() == Field.CIRCUIT && WayRound.said(typed).isPresent()) {
            return Optional.of(Answer.Said.of(WayRound.said(typed).get()));
        }
        if (all && topic.field() == Field.WHERE && !Ends.said(typed).isEmpty()) {
            return Optional.of(Answer.Said.each(Ends.said(typed)));
        }
        if (topic.field() == Field.DOUBT) {
            return Optional.of(new Answer.Chosen(choice(small)));
        }
        if (topic.field() == Field.CAME && Came.said(typed).isPresent()) {
            return Optional.of(Answer.Said.of(Came.said(typed).get()));
        }
        if (topic.own().isPresent()) {
            return Optional.empty();
        }
        Optional<Answer> laps = laps(topic, typed, debrief);
        if (laps.isPresent()) {
            return laps;
        }
        if (topic.field() == Field.LOOK && Reply.noMore(typed)) {
            // It ends what somebody has to say, and says nothing of the treads.
            return Optional.of(new Answer.Unknown());
        }
        if (topic.field() == Field.DOING && NONE.matcher(small).matches()) {
            throw new Reply.NoAnswer("Then in your own words: what did it do, and where?");
        }
        if ((topic.field() == Field.TYRES || topic.field() == Field.LOOK) && NOT_DONE.matcher(small).matches()
                || topic.field() == Field.TYRES && NONE.matcher(small).matches()) {
            return Optional.of(new Answer.Unknown());
        }
        if (topic.field() == Field.LOOK && (NONE.matcher(small).matches() || NOTHING_SHOWS.matcher(small).matches())) {
            return Optional.of(new Answer.Nothing());
        }
        if (topic.field() == Field.TYRES && NOT_READ.matcher(small).find() && !TyreLine.figures(typed)) {
            return Optional.of(new Answer.Unknown());
        }
        if (Reply.no(typed) || topic.field() == Field.ELSE && Reply.closes(typed)) {
            return Optional.of(no(topic));
        }
        if (Reply.yes(typed) && !(topic.field() == Field.TURN && Word.find(Turn.class, small).isPresent())) {
            return Optional.of(yes(topic));
        }
        boolean every = Reply.all(typed) || topic.field() == Field.WHERE && Reply.bothEnds(typed)
                || topic.field() == Field.PHASE && Reply.wholeCorner(typed);
        if (all && Reply.two(typed) && (topic.field() == Field.PHASE || topic.field() == Field.SPEED)) {
            throw new Reply.NoAnswer("Which two? For instance " + (topic.field() == Field.PHASE ? "entry and exit"
                    : "slow and medium") + "; or all of them.");
        }
        return all && every ? all(topic, debrief) : Optional.empty();
    }

    /** So many laps, where it is asked since when or how often; elsewhere it is asked which. */
    private static Optional<Answer> laps(Topic topic, String typed, Debrief debrief) throws Reply.NoAnswer {
        Optional<? extends Word> said = switch (topic.field()) {
            case SINCE -> Laps.since(typed, debrief.run().reports().get(topic.complaint()).symptom());
            case SEVERITY, OCCURRENCE -> Laps.often(typed);
            default -> Optional.empty();
        };
        if (said.isEmpty() && Laps.are(typed) && !debrief.run().reports().isEmpty()) {
            throw new Reply.NoAnswer("Only in the first of them, or from there on? Type first laps, or late in the run; or some "
                    + "laps, if it comes and goes.");
        }
        return said.map(Answer.Said::of);
    }

    private static Doubt.Choice choice(String typed) throws Reply.NoAnswer {
        return switch (typed) {
            case "1", "figures", "figure", "treads", "readings", "temperatures", "log", "the log", "logger", "data"
                    -> Doubt.Choice.FIGURES;
            case "2", "complaint", "driver", "the driver", "me" -> Doubt.Choice.COMPLAINT;
            case "3", "both", "unknown", "all" -> Doubt.Choice.BOTH;
            default -> throw new Reply.NoAnswer("Type 1, 2 or both.");
        };
    }

    private static Answer no(Topic topic) throws Reply.NoAnswer {
        return switch (topic.field()) {
            case DOING -> new Answer.InWords(new Heard("no", List.of(), Optional.empty(), true, List.of(), List.of(),
                    List.of()));
            case SIMULATOR -> new Answer.Either(false);
            case TURN, CIRCUIT -> Answer.Said.of(Turn.BOTH);
            case OCCURRENCE -> Answer.Said.of(Occurrence.SOME_LAPS);
            case SURFACE -> Answer.Said.of(Surface.DRY);
            case LOOK, ELSE -> new Answer.Nothing();
            case CHANGED -> new Answer.Changed(new Earlier.Changed(Map.of(), List.of()));
            default -> new Answer.Unknown();
        };
    }

    private static Answer yes(Topic topic) throws Reply.NoAnswer {
        return switch (topic.field()) {
            case OCCURRENCE -> Answer.Said.of(Occurrence.EVERY_LAP);
            case SURFACE -> Answer.Said.of(Surface.WET);
            case TYRES -> throw new Reply.NoAnswer("Type the figures, then: 92 84 78, and the next tyre after it.");
            case ELSE -> throw new Reply.NoAnswer("What else? Enter, if what is taken is right and there was nothing else.");
            case TURN, CIRCUIT -> throw new Reply.NoAnswer("Left or right?");
            case SIMULATOR -> throw new Reply.NoAnswer("Car or simulator?");
            case LOOK -> throw new Reply.NoAnswer("What shows, and on which tyres? For instance fronts worn inside.");
            default -> throw new Reply.NoAnswer("Which? Type a number or a word.");
        };
    }

    private static Optional<Answer> all(Topic topic, Debrief debrief) {
        return switch (topic.field()) {
            case WHERE -> Optional.of(Answer.Said.each(List.of(Place.FRONT, Place.REAR)));
            case TURN, CIRCUIT -> Optional.of(Answer.Said.of(Turn.BOTH));
            case SPEED -> Optional.of(Answer.Said.each(List.of(CornerSpeed.values())));
            case PHASE -> Optional.of(Answer.Said.each(debrief.run().reports().get(topic.complaint()).symptom()
                    .senseless(Phase.MID_CORNER).isPresent() ? List.of(Phase.ENTRY)
                    : List.of(Phase.ENTRY, Phase.MID_CORNER, Phase.EXIT)));
            default -> Optional.empty();
        };
    }
}
