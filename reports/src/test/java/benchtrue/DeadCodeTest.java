package benchtrue;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaFieldAccess;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What the program does not use does not stand in it: tests alone keep nothing alive. What they need to see of a numeric
 * method stays package-private.
 */
class DeadCodeTest {
    /** Started from outside: by the launcher, and by the build. */
    private static final Set<String> ENTRY_POINTS =
            Set.of("benchtrue.command.Main", "benchtrue.command.WriteHelpFiles");

    /** Read by the proofs over invented shops, which hold how hours are split and slowing is watched. */
    private static final Set<String> READ_BY_PROOFS = Set.of(
            "benchtrue.findings.DriftChart",
            "benchtrue.hours.JobLines.basis()",
            "benchtrue.hours.JobLines.settlingSeconds(int)");

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .withImportOption(location -> !location.contains("-tests.jar"))
            .importPackages("benchtrue");

    @Test
    void everyClassIsUsedByAnother() {
        assertThat(names(CLASSES.stream()
                        .filter(found -> found.isTopLevelClass()
                                && !ENTRY_POINTS.contains(found.getName())
                                && !found.getSimpleName().equals("package-info"))
                        .filter(found ->
                                usedBy(found).noneMatch(user -> !top(user).equals(found)))
                        .map(JavaClass::getName)))
                .isEmpty();
    }

    private static Stream<JavaClass> usedBy(JavaClass found) {
        Stream<JavaClass> whole = Stream.concat(
                Stream.of(found), CLASSES.stream().filter(inner -> inner != found && top(inner) == found));
        return whole.flatMap(part -> part.getDirectDependenciesToSelf().stream().map(use -> use.getOriginClass()));
    }

    private static JavaClass top(JavaClass found) {
        JavaClass at = found;
        while (at.getEnclosingClass().isPresent()) {
            at = at.getEnclosingClass().get();
        }
        return at;
    }

    @Test
    void everyPublicMethodIsCalled() {
        assertThat(names(CLASSES.stream()
                        .flatMap(found -> found.getMethods().stream())
                        .filter(DeadCodeTest::isOurs)
                        .filter(method -> !isCalled(method))
                        .filter(method -> !READ_BY_PROOFS.contains(method.getFullName())
                                && !READ_BY_PROOFS.contains(method.getOwner().getName()))
                        .map(JavaMember::getFullName)))
                .isEmpty();
    }

    private static boolean isOurs(JavaMethod method) {
        JavaClass owner = method.getOwner();
        boolean written = method.getModifiers().contains(JavaModifier.PUBLIC)
                && !method.getModifiers().contains(JavaModifier.SYNTHETIC)
                && !method.getModifiers().contains(JavaModifier.BRIDGE);
        boolean generated = owner.isEnum() && Set.of("values", "valueOf").contains(method.getName())
                || owner.isRecord() && isOfRecord(method)
                || owner.getSimpleName().startsWith("Jte");
        boolean main = method.getName().equals("main") && ENTRY_POINTS.contains(owner.getName());
        return written
                && !generated
                && !main
                && !isOverriding(method)
                && method.getAnnotations().isEmpty();
    }

    /** What a record carries is its own account of a result; the methods that it adds are not. */
    private static boolean isOfRecord(JavaMethod method) {
        return Set.of("equals", "hashCode", "toString").contains(method.getName())
                || method.getRawParameterTypes().isEmpty()
                        && method.getOwner().tryGetField(method.getName()).isPresent();
    }

    private static boolean isOverriding(JavaMethod method) {
        JavaClass owner = method.getOwner();
        return Stream.concat(owner.getAllRawSuperclasses().stream(), owner.getAllRawInterfaces().stream())
                .anyMatch(above -> above.getMethods().stream().anyMatch(same(method)));
    }

    private static Predicate<JavaMethod> same(JavaMethod method) {
        return other -> other.getName().equals(method.getName())
                && other.getRawParameterTypes().size()
                        == method.getRawParameterTypes().size()
                && !other.getModifiers().contains(JavaModifier.PRIVATE);
    }

    /** A method is alive when another one calls it, on its class or on one that inherits it. */
    private static boolean isCalled(JavaMethod method) {
        Stream<JavaCodeUnit> callers = Stream.concat(
                method.getCallsOfSelf().stream().map(call -> call.getOrigin()),
                method.getReferencesToSelf().stream().map(reference -> reference.getOrigin()));
        return callers.anyMatch(caller -> !caller.equals(method));
    }

    @Test
    void everyConstantIsRead() {
        assertThat(names(CLASSES.stream()
                        .filter(found -> !found.isEnum() && !found.isRecord())
                        .flatMap(found -> found.getFields().stream())
                        .filter(field -> !field.getModifiers().contains(JavaModifier.SYNTHETIC)
                                && !field.getModifiers().contains(JavaModifier.FINAL)
                                && field.getAnnotations().isEmpty())
                        .filter(field -> field.getAccessesToSelf().stream()
                                .noneMatch(access -> access.getAccessType() == JavaFieldAccess.AccessType.GET))
                        .map(JavaField::getFullName)))
                .isEmpty();
    }

    private static List<String> names(Stream<String> found) {
        return found.sorted().distinct().toList();
    }
}
