package plumbleaf.engine;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The engine's packages stand in one order, need the JDK alone, and use nothing of it that differs between machines or is missing in a browser. */
class ArrowsTest {
    /** A package may import only those before it. */
    private static final List<String> ORDER = List.of(
            "quantity",
            "money",
            "finding",
            "geometry",
            "simplex",
            "frame",
            "bars",
            "material",
            "section",
            "catalogue",
            "ground",
            "support",
            "job",
            "line",
            "gate",
            "wind",
            "action",
            "footing",
            "strength",
            "sag",
            "rule",
            "takeoff",
            "labour",
            "pricing",
            "schedule",
            "choose",
            "design");

    /** What a browser lacks, what reads a clock or the machine, and what walks in an order of its own. */
    private static final Set<String> FORBIDDEN_CLASSES = Set.of(
            "java.util.HashMap",
            "java.util.HashSet",
            "java.util.IdentityHashMap",
            "java.util.WeakHashMap",
            "java.util.Random",
            "java.util.SplittableRandom",
            "java.util.UUID",
            "java.util.Formatter",
            "java.util.Scanner",
            "java.util.Timer",
            "java.util.Locale$Category",
            "java.security.MessageDigest",
            "java.text.DecimalFormat",
            "java.text.NumberFormat",
            "java.text.SimpleDateFormat",
            "java.lang.Thread",
            "java.lang.Runtime",
            "java.lang.ProcessBuilder",
            "java.lang.ThreadLocal",
            "java.time.Clock",
            "java.time.Instant",
            "java.time.LocalDateTime",
            "java.time.ZonedDateTime",
            "java.time.format.DateTimeFormatter");

    private static final List<String> FORBIDDEN_PACKAGES = List.of(
            "java.io.",
            "java.nio.",
            "java.net.",
            "java.sql.",
            "java.util.concurrent.",
            "java.lang.reflect.",
            "java.lang.invoke.Var",
            "java.util.logging.");

    private static final Set<String> SINES = Set.of(
            "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "exp", "log", "log10", "pow", "cbrt", "sinh", "cosh",
            "tanh", "hypot", "expm1", "log1p", "fma", "random");

    private static final JavaClasses ENGINE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("plumbleaf.engine");

    @Test
    void everyPackageHasItsPlaceInTheOrder() {
        Set<String> found = new TreeSet<>();
        for (JavaClass each : ENGINE) if (!name(each).isEmpty()) found.add(name(each));
        assertThat(ORDER).containsAll(found);
    }

    @Test
    void aPackageImportsOnlyThoseBeforeIt() {
        for (String each : ORDER) {
            List<String> after = ORDER.subList(ORDER.indexOf(each) + 1, ORDER.size());
            noClasses()
                    .that()
                    .resideInAPackage("plumbleaf.engine." + each)
                    .should()
                    .dependOnClassesThat(describe("come later than " + each, other -> after.contains(name(other))))
                    .allowEmptyShould(true)
                    .check(ENGINE);
        }
    }

    @Test
    void packagesMakeNoCircle() {
        slices().matching("plumbleaf.engine.(*)..")
                .should()
                .beFreeOfCycles()
                .allowEmptyShould(true)
                .check(ENGINE);
    }

    @Test
    void theJdkAloneIsNeeded() {
        classes()
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage("plumbleaf.engine..", "java..", "org.jspecify..")
                .check(ENGINE);
    }

    @Test
    void nothingIsUsedThatABrowserLacksOrThatDiffersBetweenMachines() {
        noClasses()
                .should()
                .dependOnClassesThat(
                        describe("differ between machines or are missing in a browser", ArrowsTest::isForbidden))
                .check(ENGINE);
        noClasses()
                .should()
                .accessTargetWhere(
                        describe("differs between machines or is missing in a browser", ArrowsTest::isForbidden))
                .check(ENGINE);
    }

    private static boolean isForbidden(JavaClass used) {
        return FORBIDDEN_CLASSES.contains(used.getName())
                || FORBIDDEN_PACKAGES.stream().anyMatch(used.getName()::startsWith);
    }

    private static boolean isForbidden(JavaAccess<?> access) {
        String owner = access.getTargetOwner().getName();
        String member = access.getTarget().getName();
        return switch (owner) {
            case "java.lang.Math" -> SINES.contains(member);
            case "java.lang.StrictMath" -> member.equals("fma") || member.equals("random");
            case "java.lang.String" -> member.equals("format") || member.equals("formatted");
            case "java.lang.Double", "java.lang.Float" -> member.equals("toString");
            case "java.lang.System" -> !member.equals("arraycopy") && !member.equals("identityHashCode");
            case "java.util.Map", "java.util.Set" ->
                Set.of("of", "copyOf", "ofEntries").contains(member);
            case "java.time.LocalDate" -> member.equals("now") || member.equals("EPOCH");
            default -> false;
        };
    }

    /** {@code gate} for {@code plumbleaf.engine.gate.Leaf}; empty outside. */
    private static String name(JavaClass each) {
        String packageName = each.getPackageName();
        String engine = "plumbleaf.engine.";
        if (!packageName.startsWith(engine)) return "";
        String below = packageName.substring(engine.length());
        int dot = below.indexOf('.');
        return dot < 0 ? below : below.substring(0, dot);
    }
}
