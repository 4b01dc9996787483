package camberwell.cases;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.ArchConfiguration;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Data flow one way: the arrows of the house")
class PackageArrowsTest {

    private static final JavaClasses HOUSE = house();

    /** Without the thousands of classes that are made from the rules. */
    private static JavaClasses house() {
        ArchConfiguration.get().setResolveMissingDependenciesFromClassPath(false);
        return new ClassFileImporter().withImportOption(location -> !location.contains("/rulebase/"))
                .importPath(Path.of("target/classes/camberwell"));
    }

    @Test
    @DisplayName("the house is looked at as a whole")
    void whole() {
        assertTrue(HOUSE.contain("camberwell.cli.Main") && HOUSE.contain("camberwell.rules.RuleBase")
                && HOUSE.contain("camberwell.physics.GasLaw"), "compile first");
    }

    @Test
    @DisplayName("only the rules know Drools")
    void onlyRulesKnowDrools() {
        check(noClasses().that().resideOutsideOfPackages("camberwell.rules..",
            "camberwell.rulebase..").should().dependOnClassesThat().resideInAnyPackage("org.drools..", "org.kie.."));
    }

    @Test
    @DisplayName("nothing needs the command line")
    void nothingNeedsTheCommandLine() {
        check(noClasses().that().resideOutsideOfPackage("camberwell.cli..")
            .should().dependOnClassesThat().resideInAnyPackage("camberwell.cli..", "picocli.."));
    }

    @Test
    @DisplayName("nothing below a command prints; compiling the built-in rules is a build step")
    void nothingBelowACommandPrints() {
        check(noClasses().that().resideOutsideOfPackage("camberwell.cli..")
            .and().doNotHaveSimpleName("BuiltInRules")
            .should().accessField(System.class, "out").orShould().accessField(System.class, "err"));
    }

    @Test
    @DisplayName("advice does not know who reads it, or from which file a case came")
    void adviceDoesNotKnowItsReaders() {
        check(noClasses().that().resideInAnyPackage("camberwell.advice..")
            .should().dependOnClassesThat().resideInAnyPackage("camberwell.report..", "camberwell.debrief..",
                    "camberwell.history..", "camberwell.input.."));
    }

    @Test
    @DisplayName("rules stand below advice and know no notes")
    void rulesStandBelowAdvice() {
        check(noClasses().that().resideInAPackage("camberwell.rules..")
            .should().dependOnClassesThat().resideInAnyPackage("camberwell.advice..", "camberwell.report..",
                    "camberwell.input..", "camberwell.knowledge.."));
    }

    @Test
    @DisplayName("facts know no rules")
    void factsKnowNoRules() {
        check(noClasses().that().resideInAPackage("camberwell.fact..")
            .should().dependOnClassesThat().resideInAnyPackage("camberwell.rules..", "camberwell.advice..",
                    "camberwell.report..", "camberwell.input..", "camberwell.knowledge.."));
    }

    @Test
    @DisplayName("input makes records and nothing else")
    void inputOnlyMakesRecords() {
        check(noClasses().that().resideInAPackage("camberwell.input..")
            .should().dependOnClassesThat().resideInAnyPackage("camberwell.rules..", "camberwell.advice..",
                    "camberwell.report..", "camberwell.fact..", "camberwell.knowledge..", "camberwell.reading.."));
    }

    @Test
    @DisplayName("physics knows cars, runs and numbers")
    void physicsIsPure() {
        check(noClasses().that().resideInAPackage("camberwell.physics..").should()
            .dependOnClassesThat().resideOutsideOfPackages("java..", "camberwell.physics..", "camberwell.car..",
                    "camberwell.run..", "camberwell.units..", "camberwell.vocabulary..", "org.hipparchus.."));
    }

    @Test
    @DisplayName("notes know the vocabulary alone")
    void knowledgeKnowsOnlyWords() {
        check(noClasses().that().resideInAPackage("camberwell.knowledge..")
            .should().dependOnClassesThat().resideInAnyPackage("camberwell.rules..", "camberwell.advice..",
                    "camberwell.report..", "camberwell.input..", "camberwell.fact..", "camberwell.run..",
                    "camberwell.car.."));
    }

    @Test
    @DisplayName("no two packages need each other")
    void noCircles() {
        check(SlicesRuleDefinition.slices().matching("camberwell.(*)..")
            .should().beFreeOfCycles());
    }

    @Test
    @DisplayName("there is no drawer for leftovers")
    void noLeftoversDrawer() {
        check(noClasses().should().resideInAnyPackage("..util..", "..helper..",
            "..misc.."));
    }

    private static void check(ArchRule rule) {
        rule.check(HOUSE);
    }
}
