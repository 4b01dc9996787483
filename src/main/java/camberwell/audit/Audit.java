package camberwell.audit;

import camberwell.audit.Judgement.Verdict;
import camberwell.audit.Witness.Testimony;
import camberwell.car.Car;
import camberwell.knowledge.Notes;
import camberwell.language.RuleText;
import camberwell.model.CarModel;
import camberwell.vocabulary.Surface;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Compares what notes and rules claim with the handling model, by direction, on every reference car that has the
 * adjuster. A claim that leaves the part of the corner open is held to all three; one that leaves the speed open to a
 * medium one, or to a fast one where it is about the air.
 */
public final class Audit {

    private final Notes notes;
    private final List<Car> cars;

    /**
     * @param notes every note
     * @param cars the reference cars
     * @throws IllegalArgumentException if the dimensions of one do not make a car
     */
    public Audit(Notes notes, List<Car> cars) {
        this.notes = notes;
        this.cars = List.copyOf(cars);
        for (Car car : cars) {
            if (CarModel.of(car, Surface.DRY).isEmpty()) {
                throw new IllegalArgumentException("the reference car " + car.name() + " lacks dimensions");
            }
        }
    }

    /** Judges every effect of every note on an adjustment, and every rule that proposes or opposes a change. */
    public List<Judgement> judge(Collection<RuleText> rules) {
        Claims read = new Claims(notes);
        List<Claim> claims = new ArrayList<>(read.ofNotes());
        claims.addAll(read.ofRules(rules));
        // Each car by itself: a car remembers what it was driven through, and cars do not share.
        List<Map<Claim, Testimony>> testimonies = cars.parallelStream().map(car -> testify(car, claims)).toList();
        return claims.stream().map(claim -> judge(claim, testimonies)).toList();
    }

    private Map<Claim, Testimony> testify(Car car, List<Claim> claims) {
        Map<Surface, Witness> witnesses = new EnumMap<>(Surface.class);
        Map<Claim, Testimony> testimony = new IdentityHashMap<>();
        for (Claim claim : claims) {
            if (unrepresented(claim).isEmpty()) {
                testimony.put(claim, witnesses.computeIfAbsent(claim.surface(), surface -> new Witness(car, surface))
                        .judge(claim));
            }
        }
        return testimony;
    }

    private Optional<String> unrepresented(Claim claim) {
        Optional<String> said = notes.get(claim.change().adjuster().note()).model();
        return said.isPresent() || !claim.troubles().isEmpty() ? said
                : Optional.of("what it is about is no behaviour of the car");
    }

    private Judgement judge(Claim claim, List<Map<Claim, Testimony>> testimonies) {
        Optional<String> unrepresented = unrepresented(claim);
        if (unrepresented.isPresent()) {
            return judgement(claim, Verdict.NOT_REPRESENTED, List.of(), List.of(), unrepresented.get());
        }
        List<String> agreeing = new ArrayList<>();
        List<String> differing = new ArrayList<>();
        for (int i = 0; i < cars.size(); i++) {
            switch (testimonies.get(i).get(claim)) {
                case AGREES -> agreeing.add(cars.get(i).name());
                case DIFFERS -> differing.add(cars.get(i).name());
                case SILENT -> { }
            }
        }
        if (!differing.isEmpty()) {
            return judgement(claim, claim.explanation().isPresent() ? Verdict.EXPLAINED : Verdict.DIFFERS, agreeing,
                    differing, claim.explanation().orElse(null));
        }
        return agreeing.isEmpty() ? judgement(claim, Verdict.NOT_REPRESENTED, agreeing, differing,
                "neither model shows it, or no reference car moves by it")
                : judgement(claim, Verdict.AGREES, agreeing, differing, null);
    }

    private static Judgement judgement(Claim claim, Verdict verdict, List<String> agreeing, List<String> differing,
            String reason) {
        String on = claim.troubles().stream().map(trouble -> trouble.on().spoken()
                + trouble.where().map(axle -> " at the " + axle.id()).orElse("")
                + trouble.phases().stream().map(phase -> " at " + phase.id()).collect(Collectors.joining(" or"))
                + trouble.speeds().stream().map(speed -> " in " + speed.id() + " corners")
                        .collect(Collectors.joining(" or"))).distinct().collect(Collectors.joining("; "));
        return new Judgement(claim.by(), claim.change(), (claim.relieves() ? "against " : "worse for ")
                + (on.isEmpty() ? "the circumstances of the rule" : on), verdict, List.copyOf(agreeing),
                List.copyOf(differing), Optional.ofNullable(reason));
    }
}
