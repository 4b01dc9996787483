package camberwell.cases;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;

/** Data flow one way: the arrows of the house. */
@AnalyzeClasses(packages = "camberwell", importOptions = ImportOption.DoNotIncludeTests.class)
class PackageArrowsTest {

    @ArchTest
    static final ArchRule ONLY_RULES_KNOW_DROOLS = noClasses().that().resideOutsideOfPackages("camberwell.rules..",
            "camberwell.rulebase..").should().dependOnClassesThat().resideInAnyPackage("org.drools..", "org.kie..");

    @ArchTest
    static final ArchRule NOTHING_NEEDS_THE_COMMAND_LINE = noClasses().that().resideOutsideOfPackage("camberwell.cli..")
            .should().dependOnClassesThat().resideInAnyPackage("camberwell.cli..", "picocli..");

    @ArchTest
    static final ArchRule NOTHING_BELOW_A_COMMAND_PRINTS = noClasses().that().resideOutsideOfPackage("camberwell.cli..")
            .and().haveSimpleNameNotEndingWith("RuleCompiler")
            .should().accessField(System.class, "out").orShould().accessField(System.class, "err");

    @ArchTest
    static final ArchRule ADVICE_DOES_NOT_KNOW_ITS_READERS = noClasses().that().resideInAnyPackage("camberwell.advice..")
            .should().dependOnClassesThat().resideInAnyPackage("camberwell.report..", "camberwell.debrief..",
                    "camberwell.history..", "camberwell.input..");

    @ArchTest
    static final ArchRule RULES_STAND_BELOW_ADVICE = noClasses().that().resideInAPackage("camberwell.rules..")
            .should().dependOnClassesThat().resideInAnyPackage("camberwell.advice..", "camberwell.report..",
                    "camberwell.input..", "camberwell.knowledge..");

    @ArchTest
    static final ArchRule FACTS_KNOW_NO_RULES = noClasses().that().resideInAPackage("camberwell.fact..")
            .should().dependOnClassesThat().resideInAnyPackage("camberwell.rules..", "camberwell.advice..",
                    "camberwell.report..", "camberwell.input..", "camberwell.knowledge..");

    @ArchTest
    static final ArchRule INPUT_ONLY_MAKES_RECORDS = noClasses().that().resideInAPackage("camberwell.input..")
            .should().dependOnClassesThat().resideInAnyPackage("camberwell.rules..", "camberwell.advice..",
                    "camberwell.report..", "camberwell.fact..", "camberwell.knowledge..", "camberwell.reading..");

    @ArchTest
    static final ArchRule PHYSICS_IS_PURE = noClasses().that().resideInAPackage("camberwell.physics..").should()
            .dependOnClassesThat().resideOutsideOfPackages("java..", "camberwell.physics..", "camberwell.car..",
                    "camberwell.run..", "camberwell.units..", "camberwell.vocabulary..", "org.hipparchus..");

    @ArchTest
    static final ArchRule KNOWLEDGE_KNOWS_ONLY_WORDS = noClasses().that().resideInAPackage("camberwell.knowledge..")
            .should().dependOnClassesThat().resideInAnyPackage("camberwell.rules..", "camberwell.advice..",
                    "camberwell.report..", "camberwell.input..", "camberwell.fact..", "camberwell.run..",
                    "camberwell.car..");

    @ArchTest
    static final ArchRule NO_CIRCLES = SlicesRuleDefinition.slices().matching("camberwell.(*)..")
            .should().beFreeOfCycles();

    @ArchTest
    static final ArchRule NO_LEFTOVERS_DRAWER = noClasses().should().resideInAnyPackage("..util..", "..helper..",
            "..misc..");
}
