package camberwell.cases;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static java.util.stream.Collectors.toCollection;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.ArchConfiguration;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Data flow one way: the arrows of the house are those of the table in DEVELOPERS.md")
class PackageArrowsTest {

    private static final Path TABLE = Path.of("DEVELOPERS.md");
    private static final Pattern ROW = Pattern.compile("\\| `([a-z]+)` \\|([^|]+)\\|([^|]+)\\|");
    private static final Pattern NAME = Pattern.compile("`([a-z]+)`");
    private static final String OURS = "camberwell.";

    private static final JavaClasses HOUSE = house();

    /** Without the thousands of classes that are made from the rules. */
    private static JavaClasses house() {
        ArchConfiguration.get().setResolveMissingDependenciesFromClassPath(false);
        return new ClassFileImporter().withImportOption(location -> !location.contains("/rulebase/"))
                .importPath(Path.of("target/classes/camberwell"));
    }

    /** What each package is said to use; {@code null} for everything. */
    private static Map<String, Set<String>> said() throws IOException {
        Map<String, Set<String>> said = new TreeMap<>();
        ROW.matcher(Files.readString(TABLE)).results().forEach(row -> said.put(row.group(1),
                row.group(3).strip().equals("everything") ? null : NAME.matcher(row.group(3)).results()
                .map(MatchResult::group).map(name -> name.substring(1, name.length() - 1))
                .collect(toCollection(TreeSet::new))));
        return said;
    }

    /** What each package uses. */
    private static Map<String, Set<String>> used() {
        Map<String, Set<String>> used = new TreeMap<>();
        for (JavaClass one : HOUSE) {
            if (packageOf(one).isEmpty()) {
                continue;
            }
            Set<String> uses = used.computeIfAbsent(packageOf(one), key -> new TreeSet<>());
            for (Dependency dependency : one.getDirectDependenciesFromSelf()) {
                uses.add(packageOf(dependency.getTargetClass().getBaseComponentType()));
            }
            uses.remove("");
            uses.remove(packageOf(one));
        }
        return used;
    }

    private static String packageOf(JavaClass one) {
        String name = one.getPackageName();
        return name.startsWith(OURS) && !name.startsWith(OURS + "rulebase")
                ? name.substring(OURS.length()).replaceAll("\\..*", "") : "";
    }

    @Test
    @DisplayName("the house is looked at as a whole")
    void whole() {
        assertTrue(HOUSE.contain("camberwell.cli.Main") && HOUSE.contain("camberwell.engine.RuleBase")
                && HOUSE.contain("camberwell.physics.GasLaw"), "compile first");
    }

    @Test
    @DisplayName("each package uses what its row says, and no row says more")
    void arrowsAreThoseOfTheTable() throws IOException {
        Map<String, Set<String>> said = said();
        Map<String, Set<String>> used = used();
        List<String> wrong = new ArrayList<>();
        used.keySet().stream().filter(name -> !said.containsKey(name))
                .forEach(name -> wrong.add("the table has no row for `" + name + "`"));
        said.keySet().stream().filter(name -> !used.containsKey(name))
                .forEach(name -> wrong.add("the table has a row for `" + name + "`, and there is no such package"));
        said.forEach((name, words) -> {
            Set<String> there = used.getOrDefault(name, Set.of());
            if (words != null) {
                there.stream().filter(other -> !words.contains(other)).forEach(other -> wrong.add("`" + name
                        + "` uses `" + other + "`, which its row does not say"));
                words.stream().filter(other -> !there.contains(other)).forEach(other -> wrong.add("`" + name
                        + "` does not use `" + other + "`, which its row says"));
            }
        });
        assertEquals(List.of(), wrong);
    }

    @Test
    @DisplayName("the command line alone may use everything, and nothing uses it")
    void onlyTheCommandLineUsesEverything() throws IOException {
        List<String> unbound = said().entrySet().stream().filter(row -> row.getValue() == null).map(Map.Entry::getKey)
                .toList();
        assertEquals(List.of("cli"), unbound);
        check(noClasses().that().resideOutsideOfPackage("camberwell.cli..")
            .should().dependOnClassesThat().resideInAnyPackage("camberwell.cli..", "picocli.."));
    }

    @Test
    @DisplayName("only the engine knows Drools")
    void onlyTheEngineKnowsDrools() {
        check(noClasses().that().resideOutsideOfPackages("camberwell.engine..",
            "camberwell.rulebase..").should().dependOnClassesThat().resideInAnyPackage("org.drools..", "org.kie.."));
    }

    @Test
    @DisplayName("only what reads and writes YAML knows the library that parses it")
    void onlyYamlKnowsItsParser() {
        check(noClasses().that().resideOutsideOfPackages("camberwell.yaml..", "camberwell.input..").should()
            .dependOnClassesThat().resideInAnyPackage("org.yaml.."));
    }

    @Test
    @DisplayName("nothing below a command prints")
    void nothingBelowACommandPrints() {
        check(noClasses().that().resideOutsideOfPackage("camberwell.cli..")
            .should().accessField(System.class, "out").orShould().accessField(System.class, "err"));
    }

    @Test
    @DisplayName("physics knows numbers")
    void physicsIsPure() {
        check(noClasses().that().resideInAPackage("camberwell.physics..").should()
            .dependOnClassesThat().resideOutsideOfPackages("java..", "camberwell.physics..", "org.hipparchus.."));
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
