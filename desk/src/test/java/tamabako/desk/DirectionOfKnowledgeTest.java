package tamabako.desk;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.Writer;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/// Each module knows only those that the design names after it; the core is pure.
class DirectionOfKnowledgeTest {

    private static final JavaClasses CLASSES =
            new ClassFileImporter()
                    .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                    .withImportOption(place -> !place.contains("/testkit/"))
                    .importPackages("tamabako");

    /// What each module may know, as the table of modules in docs/design.md says.
    private static final Map<String, List<String>> KNOWS =
            Map.of(
                    "frame", List.of(),
                    "problems", List.of("frame"),
                    "insight", List.of("frame", "problems"),
                    "paper", List.of("frame", "problems"),
                    "voice", List.of("problems"),
                    "showing", List.of(),
                    "records", List.of("frame", "problems", "insight"),
                    "desk",
                            List.of(
                                    "frame",
                                    "problems",
                                    "insight",
                                    "paper",
                                    "voice",
                                    "showing",
                                    "records"));

    private static final String[] CORE = {
        "tamabako.frame..",
        "tamabako.problems..",
        "tamabako.insight..",
        "tamabako.showing..",
        "tamabako.voice.number..",
        "tamabako.voice.script..",
        "tamabako.voice.sound.."
    };

    /// Texts as readers and writers, for libraries that ask for them: no input or output.
    private static final Class<?>[] IN_MEMORY = {
        StringReader.class, StringWriter.class, Reader.class, Writer.class
    };

    @Test
    void everyModuleWasFound() {
        for (String module : KNOWS.keySet()) {
            assertThat(CLASSES.stream().filter(resideInAnyPackage("tamabako." + module + "..")))
                    .as(module)
                    .isNotEmpty();
        }
    }

    @Test
    void eachModuleKnowsOnlyItsRow() {
        KNOWS.forEach((module, known) -> {
            DescribedPredicate<JavaClass> others =
                    new DescribedPredicate<>("a module that " + module + " may not know") {
                        @Override
                        public boolean test(JavaClass seen) {
                            String name = seen.getPackageName();
                            return KNOWS.keySet().stream()
                                    .filter(m -> !m.equals(module) && !known.contains(m))
                                    .anyMatch(m -> (name + ".").startsWith("tamabako." + m + "."));
                        }
                    };
            noClasses()
                    .that()
                    .resideInAPackage("tamabako." + module + "..")
                    .should()
                    .dependOnClassesThat(others)
                    .check(CLASSES);
        });
    }

    @Test
    void packagesHaveNoCycles() {
        slices().matching("tamabako.(**)").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void theCoreHasNoInputOutputClockOrHiddenChance() {
        noClasses()
                .that()
                .resideInAnyPackage(CORE)
                .and()
                .haveSimpleNameNotEndingWith("Words")
                .and()
                .haveSimpleNameNotEndingWith("Texts")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.nio.file..", "java.net..", "java.sql..")
                .orShould()
                .dependOnClassesThat(
                        resideInAnyPackage("java.io..")
                                .and(DescribedPredicate.not(belongToAnyOf(IN_MEMORY))))
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.util.Random")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.util.concurrent.ThreadLocalRandom")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.security.SecureRandom")
                .orShould()
                .callMethod(Math.class, "random")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .check(CLASSES);
    }

    @Test
    void onlyTheClassBookTouchesSqlAndOnlyTheDeskTouchesHttp() {
        noClasses()
                .that()
                .resideOutsideOfPackage("tamabako.records..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.sql..", "org.jdbi..", "com.zaxxer..", "org.flywaydb..")
                .check(CLASSES);
        noClasses()
                .that()
                .resideOutsideOfPackage("tamabako.desk..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("io.undertow..", "org.xnio..", "java.net.http..")
                .check(CLASSES);
    }

    @Test
    void noDrawerNames() {
        noClasses()
                .that()
                .resideInAPackage("tamabako..")
                .should()
                .haveSimpleNameEndingWith("Manager")
                .orShould()
                .haveSimpleNameEndingWith("Helper")
                .orShould()
                .haveSimpleNameEndingWith("Util")
                .orShould()
                .haveSimpleNameEndingWith("Utils")
                .orShould()
                .haveSimpleNameEndingWith("Impl")
                .orShould()
                .haveSimpleNameStartingWith("Abstract")
                .check(CLASSES);
    }

    @Test
    void coreTypesAreRecordsEnumsSealedOrFinal() {
        classes()
                .that()
                .resideInAnyPackage(CORE)
                .and()
                .areTopLevelClasses()
                .and()
                .areNotInterfaces()
                .should()
                .haveModifier(JavaModifier.FINAL)
                .orShould()
                .beEnums()
                .check(CLASSES);
    }

    @Test
    void noPublicFieldChangesAndTheCoreHasNoSetters() {
        fields().that()
                .areDeclaredInClassesThat()
                .resideInAPackage("tamabako..")
                .and()
                .arePublic()
                .should()
                .beFinal()
                .check(CLASSES);
        methods()
                .that()
                .areDeclaredInClassesThat()
                .resideInAnyPackage(CORE)
                .and()
                .arePublic()
                .should()
                .haveNameNotMatching("set[A-Z].*")
                .check(CLASSES);
    }

    @Test
    void onlyTheCommandLinePrints() {
        noClasses()
                .that()
                .resideInAPackage("tamabako..")
                .and()
                .resideOutsideOfPackages("tamabako.desk.command..", "tamabako.desk")
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .check(CLASSES);
    }
}
