package camberwell.fact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import camberwell.advice.Complaint;
import camberwell.run.Measured;
import camberwell.run.Report;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.CornerKind;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Group;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Wheel;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Records that state their equality by hand compare everything that they hold")
class StatedEqualityTest {

    private static final List<Change> CHANGES = Change.all();

    @ParameterizedTest(name = "{0}")
    @MethodSource
    @DisplayName("two of the same are equal, and one component makes the difference")
    void eachComponentCounts(String name, Record one, Record other) throws ReflectiveOperationException {
        RecordComponent[] components = one.getClass().getRecordComponents();
        Record again = with(one, one, -1);
        assertEquals(one, again);
        assertEquals(one.hashCode(), again.hashCode());
        for (int i = 0; i < components.length; i++) {
            assertNotEquals(one, with(one, other, i), components[i].getName());
        }
        assertNotEquals(one, name);
    }

    /** {@code one} with component {@code i} of {@code other}. */
    private static Record with(Record one, Record other, int i) throws ReflectiveOperationException {
        RecordComponent[] components = one.getClass().getRecordComponents();
        Object[] values = new Object[components.length];
        for (int j = 0; j < values.length; j++) {
            values[j] = components[j].getAccessor().invoke(j == i ? other : one);
        }
        return one.getClass().getConstructor(Arrays.stream(components).map(RecordComponent::getType).toArray(Class[]::new))
                .newInstance(values);
    }

    static Stream<Object[]> eachComponentCounts() {
        Report report = new Report(Symptom.UNDERSTEER, Optional.empty(), Optional.of(Phase.ENTRY), Optional.empty(),
                Severity.CLEAR, Occurrence.EVERY_LAP, Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty());
        Report otherReport = new Report(Symptom.OVERSTEER, Optional.of(Place.REAR), Optional.of(Phase.EXIT),
                Optional.of(CornerSpeed.FAST), Severity.STRONG, Occurrence.SOME_LAPS, Optional.of(Since.FIRST_LAPS),
                Optional.of(Turn.LEFT), Optional.of(new Measured(0.7, 0.2, "by its slip", List.of())),
                Optional.of(CornerKind.HAIRPIN));
        List<Premise> premises = List.of(new Reported(report, 1));
        List<Premise> others = List.of(new Reported(otherReport, 1));
        return Stream.of(
                        of(report, otherReport),
                        of(new Complaint(Symptom.UNDERSTEER, Optional.empty(), Optional.empty(), Optional.empty(), 1, "push",
                                Optional.empty()), new Complaint(Symptom.OVERSTEER, Optional.of(Axle.REAR),
                                Optional.of(Phase.EXIT), Optional.of(CornerSpeed.SLOW), 1.5, "loose", Optional.of(report),
                                Optional.of(Wheel.REAR_LEFT))),
                        of(new Evidence("hot", 0.5, "a", premises), new Evidence("cold", 0.6, "b", others)),
                        of(new Caution("nuts", 0.5, "a", premises), new Caution("jacks", 0.6, "b", others)),
                        of(new Driving("calm", 0.5, "a", premises), new Driving("late", 0.6, "b", others)),
                        of(new Preference(CHANGES.get(0), 0.5, "a", premises),
                                new Preference(CHANGES.get(1), 0.6, "b", others)),
                        of(new Proposal(CHANGES.get(0), 0.5, "a", premises, Optional.empty()),
                                new Proposal(CHANGES.get(1), 0.6, "b", others, Optional.of(Amount.steps("2")))),
                        of(new Withholding(Optional.empty(), Optional.of(Group.TOE), Optional.empty(), 0.5, "a", premises),
                                new Withholding(Optional.of(CHANGES.get(0)), Optional.of(Group.CAMBER),
                                        Optional.of(Axle.REAR), 0.6, "b", others)));
    }

    private static Object[] of(Record one, Record other) {
        return new Object[] {one.getClass().getSimpleName(), one, other};
    }
}
