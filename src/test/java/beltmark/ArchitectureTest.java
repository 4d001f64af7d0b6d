package beltmark;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.equivalentTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.conditions.ArchPredicates.are;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.concurrent.ThreadLocalRandom;
import org.jdbi.v3.core.Handle;

/** The directions between packages, as DEVELOPERS.md draws them. */
@AnalyzeClasses(packages = "beltmark", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    private static final String FEATURES =
            "beltmark.(practice|lockout|review|signoff|board|jobcheck|expiry|hardware|glossary|sheet|ownrecord|certificate|bank|procedure)..";

    private static final DescribedPredicate<JavaClass> STORES = DescribedPredicate.describe(
            "stores", type -> outermost(type).getSimpleName().endsWith("Store"));

    private static final DescribedPredicate<JavaClass> ROUTES = DescribedPredicate.describe(
            "routes", type -> outermost(type).getSimpleName().endsWith("Routes"));

    private static final DescribedPredicate<JavaClass> APP = DescribedPredicate.describe(
            "App", type -> outermost(type).getFullName().equals("beltmark.App"));

    private static final DescribedPredicate<JavaClass> HANDLE = equivalentTo(Handle.class);

    @ArchTest
    static final ArchRule coreKnowsOnlyTheJdk = classes()
            .that(resideInAnyPackage("beltmark.core.."))
            .should()
            .onlyDependOnClassesThat(resideInAnyPackage(
                    "beltmark.core..",
                    "java.lang..",
                    "java.util..",
                    "java.math..",
                    "java.time..",
                    "org.jspecify.annotations.."))
            .because("the arithmetic must be readable and testable by itself; map files, rows and forms at the edge");

    @ArchTest
    static final ArchRule coreHasNoClockAndNoRandomnessOfItsOwn = noClasses()
            .that(resideInAnyPackage("beltmark.core.."))
            .should()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(Math.class, "random")
            .orShould()
            .callConstructor(Random.class)
            .orShould()
            .callConstructor(SplittableRandom.class)
            .orShould()
            .dependOnClassesThat(are(equivalentTo(Clock.class)
                    .or(equivalentTo(SecureRandom.class))
                    .or(equivalentTo(ThreadLocalRandom.class))))
            .because("the same seed must give the same problem in ten years; times and seeds are arguments");

    @ArchTest
    static final ArchRule timeComesFromTheClock = noClasses()
            .should()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(Instant.class, "now")
            .orShould()
            .callMethod(LocalDate.class, "now")
            .orShould()
            .callMethod(LocalTime.class, "now")
            .orShould()
            .callMethod(LocalDateTime.class, "now")
            .orShould()
            .callMethod(ZonedDateTime.class, "now")
            .orShould()
            .callMethod(OffsetDateTime.class, "now")
            .because("tests set the clock; take the one that App hands out");

    @ArchTest
    static final ArchRule onlyStoresKnowTheDatabaseLibrary = noClasses()
            .that(areNot(STORES.or(APP).or(resideInAnyPackage("beltmark.db..", "beltmark.recordbook.."))))
            .should()
            .dependOnClassesThat(resideInAnyPackage("org.jdbi..", "java.sql..", "org.sqlite..")
                    .and(not(HANDLE)))
            .because("every statement is in a Store, where it is found and checked against the schema");

    @ArchTest
    static final ArchRule onlyStoresUseAHandle = classes()
            .that(areNot(STORES.or(APP).or(resideInAnyPackage("beltmark.db..", "beltmark.recordbook.."))))
            .should(notCallMethodsOfHandles())
            .because("a feature opens the change and passes its handle on; statements belong into its Store");

    @ArchTest
    static final ArchRule onlyRoutesKnowTheWebLibrary = noClasses()
            .that(areNot(ROUTES.or(APP).or(resideInAnyPackage("beltmark.web.."))))
            .should()
            .dependOnClassesThat(resideInAnyPackage("io.javalin..", "org.eclipse.jetty..", "jakarta.servlet.."))
            .because("Routes turn a request into values and a page into an answer, and decide nothing");

    @ArchTest
    static final ArchRule storesAreUsedByTheirFeatureOnly = classes()
            .that(are(STORES))
            .should(beUsedOnlyInTheirPackage())
            .because("a table has one owner; read another feature's tables with your own statement");

    @ArchTest
    static final ArchRule featuresDoNotUseEachOther = slices().matching(FEATURES)
            .should()
            .notDependOnEachOther()
            .allowEmptyShould(true)
            .because("a feature can then be read, changed or removed by itself");

    @ArchTest
    static final ArchRule lowerPackagesDoNotKnowFeatures = noClasses()
            .that(resideInAnyPackage(
                    "beltmark.db..",
                    "beltmark.recordbook..",
                    "beltmark.web..",
                    "beltmark.content..",
                    "beltmark.qualification..",
                    "beltmark.people.."))
            .should()
            .dependOnClassesThat(resideInAnyPackage(
                    "beltmark.practice..",
                    "beltmark.lockout..",
                    "beltmark.review..",
                    "beltmark.signoff..",
                    "beltmark.board..",
                    "beltmark.jobcheck..",
                    "beltmark.expiry..",
                    "beltmark.hardware..",
                    "beltmark.sheet..",
                    "beltmark.ownrecord..",
                    "beltmark.certificate.."))
            .because("features stand on these, not the other way round");

    @ArchTest
    static final ArchRule packagesHaveNoCycles =
            slices().matching("beltmark.(*)..").should().beFreeOfCycles().because("they are then read in one order");

    @ArchTest
    static final ArchRule corePackagesHaveNoCycles = slices().matching("beltmark.core.(*)..")
            .should()
            .beFreeOfCycles()
            .because("they are then read in one order");

    @ArchTest
    static final ArchRule pagesAreRecords = classes()
            .that()
            .haveSimpleNameEndingWith("Page")
            .and()
            .areNotInterfaces()
            .should()
            .beRecords()
            .allowEmptyShould(true)
            .because("a template shows values that were decided before; its page has nothing else");

    @ArchTest
    static final ArchRule nothingCallsOut = noClasses()
            .should()
            .dependOnClassesThat(resideInAnyPackage("java.net.http..", "java.rmi..", "javax.naming.."))
            .orShould()
            .callMethod(java.net.URL.class, "openConnection")
            .orShould()
            .callMethod(java.net.URL.class, "openStream")
            .because("a server inside a plant has nobody to call");

    private static DescribedPredicate<JavaClass> areNot(DescribedPredicate<JavaClass> predicate) {
        return not(predicate);
    }

    private static DescribedPredicate<JavaClass> not(DescribedPredicate<JavaClass> predicate) {
        return DescribedPredicate.not(predicate);
    }

    private static JavaClass outermost(JavaClass type) {
        return type.getEnclosingClass().map(ArchitectureTest::outermost).orElse(type);
    }

    private static ArchCondition<JavaClass> notCallMethodsOfHandles() {
        return new ArchCondition<>("not call methods of a Handle") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                type.getMethodCallsFromSelf().stream()
                        .filter(call -> call.getTargetOwner().isAssignableTo(Handle.class))
                        .forEach(call -> events.add(SimpleConditionEvent.violated(type, call.getDescription())));
            }
        };
    }

    private static ArchCondition<JavaClass> beUsedOnlyInTheirPackage() {
        return new ArchCondition<>("be used only in their own package and by App") {
            @Override
            public void check(JavaClass store, ConditionEvents events) {
                store.getDirectDependenciesToSelf().stream()
                        .filter(use -> !isAllowed(use))
                        .forEach(use -> events.add(SimpleConditionEvent.violated(store, use.getDescription())));
            }
        };
    }

    private static boolean isAllowed(Dependency use) {
        JavaClass user = use.getOriginClass();
        return user.getPackage().equals(use.getTargetClass().getPackage()) || APP.test(user);
    }
}
