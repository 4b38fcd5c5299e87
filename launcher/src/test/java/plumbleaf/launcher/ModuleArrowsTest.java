package plumbleaf.launcher;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who may import whom: {@code launcher -> web, cli -> documents, jobfile, cutting -> engine}. */
class ModuleArrowsTest {
    private static final JavaClasses ALL = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("plumbleaf");

    private static String in(String module) {
        return "plumbleaf." + module + "..";
    }

    @ParameterizedTest
    @ValueSource(strings = {"documents", "jobfile", "cutting"})
    void theMiddleModulesKnowOnlyTheEngine(String module) {
        for (String other : List.of("documents", "jobfile", "cutting", "web", "cli", "launcher")) {
            if (!other.equals(module))
                noClasses()
                        .that()
                        .resideInAPackage(in(module))
                        .should()
                        .dependOnClassesThat()
                        .resideInAPackage(in(other))
                        .allowEmptyShould(true)
                        .check(ALL);
        }
    }

    @Test
    void theEngineKnowsNobody() {
        for (String other : List.of("documents", "jobfile", "cutting", "web", "cli", "launcher"))
            noClasses()
                    .that()
                    .resideInAPackage(in("engine"))
                    .should()
                    .dependOnClassesThat()
                    .resideInAPackage(in(other))
                    .check(ALL);
    }

    @Test
    void webAndCommandLineDoNotKnowEachOther() {
        noClasses()
                .that()
                .resideInAPackage(in("web"))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(in("cli"), in("launcher"))
                .check(ALL);
        noClasses()
                .that()
                .resideInAPackage(in("cli"))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(in("web"), in("launcher"))
                .allowEmptyShould(true)
                .check(ALL);
    }

    /** What the browser is given is made of these; the compiler that makes it is known to one package and is no part of the program. */
    @Test
    void theBrowserKnowsTheEngineTheJobFileAndPureDrawing() {
        classes()
                .that()
                .resideInAPackage("plumbleaf.browser")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(
                        "plumbleaf.browser",
                        in("engine"),
                        in("cutting"),
                        in("jobfile"),
                        in("documents"),
                        "java..",
                        "org.jspecify..",
                        "org.teavm.jso..")
                .check(ALL);
        noClasses()
                .that()
                .resideOutsideOfPackage(in("browser"))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(in("browser"))
                .check(ALL);
    }

    @Test
    void cuttingKnowsFourPackagesOfTheEngine() {
        classes()
                .that()
                .resideInAPackage(in("cutting"))
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(
                        in("cutting"),
                        in("engine.quantity"),
                        in("engine.money"),
                        in("engine.simplex"),
                        in("engine.bars"),
                        "java..",
                        "org.jspecify..")
                .check(ALL);
    }

    @Test
    void jobfileReadsJsonWithOneLibrary() {
        classes()
                .that()
                .resideInAPackage(in("jobfile"))
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(in("jobfile"), in("engine"), "java..", "org.jspecify..", "com.eclipsesource.json..")
                .check(ALL);
    }

    @Test
    void drawingsAndTheirSvgNeedNoLibrary() {
        classes()
                .that()
                .resideInAnyPackage(in("documents.drawing"), in("documents.view"), in("documents.plot.svg"))
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(
                        in("documents.drawing"),
                        in("documents.view"),
                        in("documents.plot.svg"),
                        in("engine"),
                        "java..",
                        "org.jspecify..")
                .allowEmptyShould(true)
                .check(ALL);
    }

    @ParameterizedTest
    @ValueSource(strings = {"documents", "jobfile", "cutting", "browser", "web", "cli"})
    void noModuleHasACircle(String module) {
        slices().matching("plumbleaf." + module + ".(**)")
                .should()
                .beFreeOfCycles()
                .allowEmptyShould(true)
                .check(ALL);
    }
}
