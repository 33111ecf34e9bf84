package benchtrue;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Data flows one way, and each library stays behind the packages that need it. */
class ArchitectureTest {
    /** A package may import those to its left, and the common ones. */
    private static final List<String> FLOW = List.of(
            "intake",
            "mapping",
            "reconcile",
            "hours",
            "costing",
            "calendar",
            "findings",
            "revision",
            "answers",
            "tables",
            "breakdown",
            "nightly",
            "charts",
            "workbook",
            "page",
            "command");

    private static final List<String> COMMON = List.of("shop", "format", "settings", "statistics");

    private static final Map<String, Set<String>> COMMON_MAY_IMPORT = Map.of(
            "shop", Set.of(), "statistics", Set.of(), "format", Set.of("shop"), "settings", Set.of("shop", "format"));

    private static final Map<String, Set<String>> LIBRARY_ONLY_IN = Map.ofEntries(
            Map.entry("org.apache.commons.csv", Set.of("intake", "tables")),
            Map.entry("com.google.gson", Set.of("nightly")),
            Map.entry("org.tomlj", Set.of("settings")),
            Map.entry("org.apache.commons.statistics", Set.of("statistics")),
            Map.entry("org.apache.commons.text", Set.of("format")),
            Map.entry("org.ejml", Set.of("statistics")),
            Map.entry("org.jfree", Set.of("charts")),
            Map.entry("org.apache.batik", Set.of("charts")),
            Map.entry("org.apache.poi", Set.of("workbook", "intake")),
            Map.entry("org.apache.commons.compress", Set.of("workbook")),
            Map.entry("gg.jte", Set.of("page")),
            Map.entry("picocli", Set.of("command")),
            Map.entry("tech.tablesaw", Set.of("breakdown")),
            Map.entry("com.univocity", Set.of("breakdown")),
            Map.entry("java.awt", Set.of("charts", "workbook")));

    /** What is used of a package's rooms from outside it: whole rooms by name, else single classes. */
    private static final Set<String> ENTRY_POINTS = Set.of(
            "benchtrue.intake.columns",
            "benchtrue.charts.drawing.Palette",
            "benchtrue.workbook.books.WriteBookSheets",
            "benchtrue.workbook.draft.ReadDecisions",
            "benchtrue.workbook.draft.WriteRevisionWorkbook",
            "benchtrue.workbook.review.WriteWorkbook",
            "benchtrue.workbook.review.WriteBreakdowns",
            "benchtrue.workbook.review.BreakdownSheet");

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .withImportOption(ArchitectureTest::isNotATestJar)
            .importPackages("benchtrue");

    private static boolean isNotATestJar(Location location) {
        return !location.contains("-tests.jar");
    }

    static Stream<String> packages() {
        return Stream.concat(COMMON.stream(), FLOW.stream());
    }

    static Stream<String> libraries() {
        return new TreeSet<>(LIBRARY_ONLY_IN.keySet()).stream();
    }

    @ParameterizedTest
    @MethodSource("packages")
    void aPackageImportsOnlyWhatStandsToItsLeft(String name) {
        classes()
                .that()
                .resideInAPackage(inside(name))
                .should()
                .onlyDependOnClassesThat(notOfTheProjectOr(mayImport(name)))
                .allowEmptyShould(true)
                .check(CLASSES);
    }

    private static Set<String> mayImport(String name) {
        Set<String> allowed = new TreeSet<>(COMMON_MAY_IMPORT.getOrDefault(name, Set.copyOf(COMMON)));
        if (FLOW.contains(name)) {
            allowed.addAll(FLOW.subList(0, FLOW.indexOf(name)));
        }
        allowed.add(name);
        return allowed;
    }

    private static DescribedPredicate<JavaClass> notOfTheProjectOr(Set<String> allowed) {
        return DescribedPredicate.describe(
                "belong to " + allowed,
                used -> !used.getPackageName().startsWith("benchtrue") || allowed.contains(stage(used)));
    }

    private static String stage(JavaClass used) {
        String[] parts = used.getPackageName().split("\\.");
        return parts.length > 1 ? parts[1] : "";
    }

    @ParameterizedTest
    @MethodSource("libraries")
    void aLibraryStaysBehindThePackagesThatNeedIt(String library) {
        String[] allowed = LIBRARY_ONLY_IN.get(library).stream()
                .map(ArchitectureTest::inside)
                .toArray(String[]::new);
        noClasses()
                .that()
                .resideOutsideOfPackages(allowed)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library + "..")
                .check(CLASSES);
    }

    @Test
    void noTwoPackagesNeedEachOther() {
        slices().matching("benchtrue.(**)").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void everyPackageHasItsPlaceInTheFlow() {
        Set<String> found = CLASSES.getPackage("benchtrue").getSubpackages().stream()
                .map(JavaPackage::getRelativeName)
                .collect(Collectors.toSet());
        assertThat(packages().toList()).containsAll(found);
    }

    @Test
    void fromOutsideAPackageOnlyItsEntryPointsAreUsed() {
        Set<String> used = CLASSES.stream()
                .flatMap(user -> user.getDirectDependenciesFromSelf().stream())
                .filter(use -> isRoom(use.getTargetClass())
                        && !stage(use.getOriginClass()).equals(stage(use.getTargetClass())))
                .map(use -> entryPoint(use.getTargetClass()))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(used).containsExactlyInAnyOrderElementsOf(ENTRY_POINTS);
    }

    private static boolean isRoom(JavaClass used) {
        return used.getPackageName().startsWith("benchtrue.")
                && used.getPackageName().split("\\.").length > 2;
    }

    private static String entryPoint(JavaClass used) {
        String top = used.getName().replaceAll("\\$.*|\\[]", "");
        return ENTRY_POINTS.contains(used.getPackageName()) ? used.getPackageName() : top;
    }

    private static String inside(String name) {
        return "benchtrue." + name + "..";
    }
}
