package camberwell.advice;

import camberwell.knowledge.Note;
import camberwell.model.CarModel;
import camberwell.model.ProvingGround;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What is left when all that rules propose has been tried, or cannot be made, or would by the driven model of this very car
 * hardly be felt, and something is still complained of: that model is asked which single change does most for it, and leaves
 * the balance alone where nobody complains of it. It stands on the model alone, so it is asked last, and nothing is named that
 * a note says is bad for a complaint. That one looks over the whole set-up sheet when the usual levers are used up is common
 * practice, no source.
 */
final class LastResort {

    /** The name under which it speaks beside the rules. */
    static final String WORD = "What the model of this car says";
    private static final String MOST = "Of all single changes this one does most for it in a "
            + "model of the car that is driven through the corner; nothing but that model speaks for it.";
    /** What acts by less than so many times what counts in the model is a quarter of what a driver notices. */
    private static final double FELT = 15;
    /** What a driver hardly notices of the balance where he does not complain of it: half of what is worth a word. */
    private static final double UNNOTICED = 30;
    private static final List<Phase> BALANCE = List.of(Phase.LIFT_OFF, Phase.MID_CORNER, Phase.EXIT);

    private final CarModel car;
    private final Optional<Forecast> forecast;
    private final ProvingGround track;
    private final List<Complaint> complaints;
    private final Function<Change, Optional<Size>> sizes;
    private final Predicate<Change> open;

    /**
     * @param car as it stands
     * @param forecast of what is left after a change, where the model shows all that is told
     * @param complaints of the case
     * @param sizes how far a change would go; empty where it cannot be made
     * @param open whether nothing speaks against a change
     */
    LastResort(CarModel car, Optional<Forecast> forecast, List<Complaint> complaints, Function<Change, Optional<Size>> sizes,
            Predicate<Change> open) {
        this.car = car;
        this.forecast = forecast;
        this.track = new ProvingGround(car);
        this.complaints = complaints.stream().filter(Complaint::reported).filter(it -> it.phase().isPresent()).toList();
        this.sizes = sizes;
        this.open = open;
    }

    /** When it is asked. */
    enum Asked {
        /** Nothing that rules propose is left. */
        NOTHING_LEFT("No rule has anything left for this. ", "No rule of thumb is left for this. "),
        /** Something is left, after which by the same model hardly less would be complained of. */
        NOTHING_HELPS("What rules still propose for this would hardly be felt, by the model of this car. ",
                "What rules of thumb still say would hardly be felt on your car. ");

        private final String why;
        private final String plain;

        Asked(String why, String plain) {
            this.why = why;
            this.plain = plain;
        }

        /** Why the change is named. */
        String why(Choice choice) {
            return why + (choice.again() ? "This helped in the last run and harmed nothing, and something is left: on with it."
                    : MOST);
        }

        /** What to look for, and when to go back: not what the note says, which speaks of what rules propose the change for. */
        Note.Way told(Choice choice, Note.Way way, List<Complaint> complaints) {
            String felt = complaints.stream().filter(Complaint::reported).map(Complaint::text).distinct()
                    .collect(Collectors.joining(", "));
            return new Note.Way(way.effects(), why(choice), plain + (choice.again()
                    ? "This helped the last time and made nothing worse: once more." : "A computer model of your car says that "
                    + "this change does most for it. Nobody has tried it on your car yet."), "Less of what you told: " + felt
                    + ". Nothing else gets worse.", "What you told has not become less, or the car does something new.");
        }
    }

    /**
     * A change, and how far it goes.
     *
     * @param again whether it is one that helped in the last run
     */
    record Choice(Change change, Size size, boolean again) {
    }

    /** A change that helped, once more; empty where it cannot be made, does not act where something is told, or would do harm. */
    Optional<Choice> again(Change helped) {
        boolean works = complaints.isEmpty() || complaints.stream().anyMatch(it -> acts(helped, it.phase().get()));
        Optional<Size> size = works && CarModel.representsInMotion(helped.adjuster()) && open.test(helped)
                ? sizes.apply(helped) : Optional.empty();
        return size.filter(it -> it.to().isPresent()).filter(it -> forecast.isEmpty()
                || forecast.get().gain(helped, it.to().get()).orElse(0) >= 0).map(it -> new Choice(helped, it, true));
    }

    /**
     * The change that does most; empty where none does enough. Where rules propose something, that is what leaves noticeably
     * less of all; where nothing is left, what relieves most of what is told, and if nothing does, what leaves less of all.
     */
    Optional<Choice> choice(Asked asked) {
        Optional<Choice> found = most(asked);
        return found.isEmpty() && forecast.isPresent() && asked == Asked.NOTHING_LEFT ? most(Asked.NOTHING_HELPS) : found;
    }

    private Optional<Choice> most(Asked asked) {
        Choice best = null;
        double most = 0;
        for (Adjuster adjuster : complaints.isEmpty() ? List.<Adjuster>of() : new ArrayList<>(car.car().adjusters().keySet())) {
            for (Change change : CarModel.representsInMotion(adjuster) ? List.of(new Change(adjuster,
                    adjuster.directions().get(0)), new Change(adjuster, adjuster.directions().get(1))) : List.<Change>of()) {
                Optional<Size> size = open.test(change) && complaints.stream().anyMatch(it -> acts(change, it.phase().get()))
                        ? sizes.apply(change) : Optional.empty();
                double worth = size.isPresent() ? worth(change, size.get(), asked) : 0;
                if (worth > most) {
                    most = worth;
                    best = new Choice(change, size.get(), false);
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private double worth(Change change, Size size, Asked asked) {
        if (forecast.isPresent()) {
            double gain = size.to().isEmpty() ? 0 : forecast.get().gain(change, size.to().get()).orElse(0);
            if (asked == Asked.NOTHING_HELPS) {
                // Less where nobody complains is no reason to touch what costs calm: it has to be felt where something is told.
                boolean felt = gain >= forecast.get().noticeable() && forecast.get()
                        .gainWhereTold(change, size.to().get()).orElse(0) >= forecast.get().noticeable() / 2;
                return felt ? gain : 0;
            }
            if (gain < -forecast.get().noticeable()) {
                return 0;
            }
        }
        Optional<CarModel> changed = size.to().flatMap(to -> car.withInMotion(change.adjuster(), to));
        if (changed.isEmpty()) {
            return 0;
        }
        double relief = 0;
        double speed = 0;
        for (Complaint complaint : complaints) {
            speed = Situation.of(change.adjuster(), Optional.of(complaint)).speed().metresPerSecond();
            OptionalDouble gain = track.gain(change.adjuster().adjustment(), changed.get(), complaint.symptom(),
                    complaint.where(), complaint.phase().get(), speed);
            if (gain.isEmpty()) {
                return 0;
            }
            relief += gain.getAsDouble();
        }
        if (relief < FELT) {
            return 0;
        }
        for (Phase phase : BALANCE) {
            if (complaints.stream().noneMatch(complaint -> complaint.symptom().ofBalance() && complaint.phase().get() == phase)) {
                relief -= Math.max(0, Math.abs(track.gain(change.adjuster().adjustment(), changed.get(), Symptom.UNDERSTEER,
                        Optional.empty(), phase, speed).orElse(Double.POSITIVE_INFINITY)) - UNNOTICED);
            }
        }
        return relief;
    }

    /** Whether what a change moves is at work in that phase by itself, and not by what it left behind from one before. */
    private static boolean acts(Change change, Phase phase) {
        boolean off = phase == Phase.BRAKING || phase == Phase.ENTRY || phase == Phase.LIFT_OFF;
        return switch (change.adjuster().adjustment()) {
            case BRAKE_BIAS -> phase == Phase.BRAKING || phase == Phase.ENTRY;
            case DIFFERENTIAL_COAST -> off;
            case DIFFERENTIAL_POWER -> !off;
            case BUMP, REBOUND -> phase != Phase.MID_CORNER;
            default -> true;
        };
    }
}
