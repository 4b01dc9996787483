package camberwell.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.advice.RankedChange;
import camberwell.fact.Certainty;
import camberwell.fact.Finding;
import camberwell.fact.Premise;
import camberwell.input.CaseReader;
import camberwell.input.Substitution;
import camberwell.run.Case;
import camberwell.run.Tried;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Outcome;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ExplainerTest {

    private static final double HAIR = 1e-6;

    static Stream<Reasoning> reasoned() {
        return Stream.concat(DemoCases.reasoned(), DemoCases.drawn());
    }

    @ParameterizedTest
    @MethodSource("reasoned")
    @DisplayName("Every advised change explains itself down to what somebody typed")
    void reachesTheInput(Reasoning reasoning) {
        for (RankedChange ranked : reasoning.advice().changes()) {
            How how = DemoCases.EXPLAINER.how(reasoning, ranked.change()).orElseThrow();
            String told = reasoning.run().title() + ", " + ranked.change();
            // The ranking takes off what a hold has on the change; the explanation is of what the rules say.
            assertEquals(Certainty.ofRules(ranked.proposals()), how.sum().certainty(), HAIR, told);
            assertTrue(ranked.score().certainty() <= how.sum().certainty() + HAIR, told);
            assertFalse(how.typed().isEmpty(), told);
            for (Premise premise : how.typed()) {
                assertTrue(reasoning.typed().contains(premise), told);
                assertTrue(reasoning.place(premise).filter(place -> !place.isEmpty()
                        && !place.contains("-1")).isPresent(), told + ": " + premise.statement());
            }
            Set<String> above = new HashSet<>();
            for (Derived derived : how.findings()) {
                derived.sum().steps().forEach(step -> grounded(step, above, how, told));
                above.add(derived.finding());
            }
            how.sum().steps().forEach(step -> grounded(step, above, how, told));
        }
    }

    /** Each sentence that asks for something rests on a fact that stands above it in the explanation. */
    private static void grounded(Step step, Set<String> above, How how, String told) {
        assertEquals(step.rule().conditions().size(), step.grounds().size(), told);
        for (Ground ground : step.grounds()) {
            assertEquals(ground.condition().negative(), ground.premise().isEmpty(), told + ": " + ground.condition());
            ground.premise().ifPresent(premise -> assertTrue(premise instanceof Finding finding
                    ? above.contains(finding.id()) : how.typed().contains(premise), told + ": " + premise));
            assertFalse(ground.observed().isBlank(), told + ": " + ground.condition().text());
        }
    }

    @ParameterizedTest
    @MethodSource("reasoned")
    @DisplayName("Certainties joined two at a time come to the certainty that the rules reached")
    void joins(Reasoning reasoning) {
        for (RankedChange ranked : reasoning.advice().changes()) {
            How how = DemoCases.EXPLAINER.how(reasoning, ranked.change()).orElseThrow();
            Stream.concat(how.findings().stream().map(Derived::sum), Stream.of(how.sum())).forEach(sum -> {
                double last = sum.joined().isEmpty() ? sum.steps().get(0).certainty()
                        : sum.joined().get(sum.joined().size() - 1).result();
                assertEquals(sum.certainty(), last, 2e-3, ranked.change().id());
            });
        }
    }

    @ParameterizedTest
    @MethodSource("reasoned")
    @DisplayName("Every change that is not advised has a sentence, a rule or a reason against it")
    void whyNotIsConcrete(Reasoning reasoning) {
        for (Change change : Change.all()) {
            if (reasoning.advice().changes().stream().anyMatch(ranked -> ranked.change().equals(change))) {
                continue;
            }
            WhyNot why = DemoCases.EXPLAINER.whyNot(reasoning, change);
            String told = reasoning.run().title() + ", " + change;
            assertFalse(why.reasons().isEmpty(), told);
            boolean spokenFor = why.sum().steps().stream().anyMatch(step -> step.certainty() > 0);
            boolean reason = spokenFor || why.reasons().stream().anyMatch(said -> said.startsWith("no rule in"));
            assertTrue(reason || !why.silent().isEmpty(), told + ": " + why.reasons());
            for (Silent silent : why.silent()) {
                assertFalse(silent.failed().isEmpty(), told + ": " + silent.rule().name());
                for (Silent.Asked asked : silent.asked()) {
                    boolean finding = !asked.holds() && asked.condition().head().text().endsWith("is likely")
                            && !asked.condition().negative();
                    assertEquals(finding || asked.doubt().isPresent(), asked.doubt().isPresent(), told);
                }
            }
        }
    }

    @Test
    @DisplayName("A change that is proposed and not advised is never told to be without a rule or a reason")
    void everyProposalIsAccountedFor() {
        reasoned().forEach(reasoning -> reasoning.conclusions().proposals().stream()
                .filter(proposal -> proposal.certainty() > 0).map(proposal -> proposal.change()).distinct()
                .filter(change -> reasoning.advice().changes().stream()
                        .noneMatch(ranked -> ranked.change().equals(change)))
                .forEach(change -> assertFalse(DemoCases.EXPLAINER.whyNot(reasoning, change).reasons().isEmpty(),
                        reasoning.run().title() + ", " + change)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "understeer,phase: entry,speed: slow | front-wing more | the corner was slow, the rule asks for fast",
        "understeer,phase: entry | front-wing more | no corner speed is named, the rule asks for fast",
        "oversteer,phase: exit | rear-toe toe-in | the phase was exit, the rule asks for braking",
        "understeer,phase: mid-corner | brake-bias rearward | nobody reports front locking"})
    @DisplayName("A silent rule says what it asks for and what there is instead")
    void saysWhatIsMissing(String report, String change, String said) {
        Reasoning reasoning = DemoCases.EXPLAINER.reason(single(report));
        WhyNot why = DemoCases.EXPLAINER.whyNot(reasoning, Change.parse(change).orElseThrow());
        List<String> observed = why.silent().stream().flatMap(silent -> Stream.concat(silent.failed().stream(),
                silent.asked().stream().flatMap(asked -> asked.doubt().stream())
                        .flatMap(doubt -> doubt.silent().stream()).flatMap(below -> below.failed().stream())))
                .map(Silent.Sentence::observed).toList();
        assertTrue(observed.contains(said), said + " is not among " + observed);
    }

    @Test
    @DisplayName("A rear wing that stands at its last hole can go no further, and why-not says so")
    void atItsStop() {
        Reasoning reasoning = DemoCases.EXPLAINER.reason(single("understeer", "setup.rear-wing=8"));
        WhyNot why = DemoCases.EXPLAINER.whyNot(reasoning, Change.parse("rear-wing more").orElseThrow());
        assertTrue(why.reasons().contains("it stands at its stop, 8"), why.reasons().toString());
    }

    @Test
    @DisplayName("Nobody can change what the car does not have, and why-not says so")
    void lacksIt() {
        Reasoning reasoning = DemoCases.EXPLAINER.reason(single("understeer"));
        WhyNot why = DemoCases.EXPLAINER.whyNot(reasoning, Change.parse("front-wing more").orElseThrow());
        assertTrue(why.reasons().contains("the car has no adjustable front wing"), why.reasons().toString());
    }

    @Test
    @DisplayName("If the push came on the way out instead, the differential's power side would come up")
    void whatIf() {
        Reasoning before = DemoCases.EXPLAINER.reason(single("understeer,phase: entry"));
        Reasoning after = DemoCases.EXPLAINER.reason(single("understeer,phase: entry", "reports[0].phase=exit"));
        Comparison comparison = Comparison.of(before.advice(), after.advice());
        Set<String> came = comparison.findings().stream().filter(row -> row.before() == 0)
                .map(Comparison.FindingRow::finding).collect(Collectors.toSet());
        assertTrue(came.contains("front-light-on-exit"), came.toString());
        assertTrue(comparison.findings().stream().anyMatch(row ->
                row.finding().equals("front-saturates-on-entry") && row.after() == 0));
        assertEquals(before.advice().changes().size() + after.advice().changes().size()
                - comparison.changes().stream().filter(row -> row.before().isPresent() && row.after().isPresent())
                .count(), comparison.changes().stream().filter(row -> row.before().isPresent()
                || row.after().isPresent()).count());
    }

    /** One complaint about the Corvane coupe, every lap, and nothing measured. */
    private static Case single(String report, String... substitutions) {
        String text = "title: one complaint\ncar: cars/corvane-coupe.yaml\nreports:\n  - {symptom: "
                + report.replace(",", ", ") + "}\n";
        return new CaseReader().read("one.yaml", new ByteArrayInputStream(text.getBytes(
                StandardCharsets.UTF_8)), DemoCases.HOME.resolve("demo-cases"),
                Stream.of(substitutions).map(one -> Substitution.parse("--if", one)).toList()).run();
    }

    @Test
    @DisplayName("What came of a change stands in its explanation, and adds up with what the rules say")
    void whatCameOfIt() {
        Case run = DemoCases.demo().filter(it -> it.title().equals("Two changes later")).findFirst().orElseThrow();
        Reasoning reasoning = DemoCases.EXPLAINER.reason(run);
        for (String text : List.of("rear-toe toe-in", "differential-coast less")) {
            Sum sum = DemoCases.EXPLAINER.how(reasoning, Change.parse(text).orElseThrow()).orElseThrow().sum();
            assertEquals(sum.certainty(), sum.joined().get(sum.joined().size() - 1).result(), HAIR);
            assertEquals(sum.certainty(), sum.learned().orElseThrow().after(), HAIR);
        }
        WhyNot whyNot = DemoCases.EXPLAINER.whyNot(reasoning, Change.parse("differential-coast less").orElseThrow());
        assertTrue(whyNot.reasons().get(0).contains("tried on run 3, 8 laps: no effect on understeer at entry"),
                whyNot.reasons().toString());
    }

    @Test
    @DisplayName("A way back explains itself by what made it necessary")
    void wayBack() {
        Change harmful = Change.parse("rear-toe toe-in").orElseThrow();
        Case run = DemoCases.demo().filter(it -> it.title().equals("Two changes later")).findFirst().orElseThrow()
                .withTried(List.of(Tried.of(harmful, Outcome.WORSE)));
        Reasoning reasoning = DemoCases.EXPLAINER.reason(run);
        assertEquals(harmful.opposite(), reasoning.advice().changes().get(0).change());
        How how = DemoCases.EXPLAINER.how(reasoning, harmful.opposite()).orElseThrow();
        assertEquals(reasoning.advice().changes().get(0).score().certainty(), how.sum().certainty(), HAIR);
        assertTrue(how.sum().learned().orElseThrow().undo());
    }
}
