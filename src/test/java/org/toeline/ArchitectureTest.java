package org.toeline;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** The package table of DEVELOPERS.md as code: who may use whom, and what stays inside. */
@AnalyzeClasses(packages = "org.toeline", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    private static final String ROOT = "org.toeline";

    /** Each package and those it may use directly; what these may use, it may use too. */
    private static final Map<String, Set<String>> MAY_USE = new LinkedHashMap<>();

    static {
        MAY_USE.put("language", Set.of());
        MAY_USE.put("document", Set.of("language"));
        MAY_USE.put("geometry", Set.of("language"));
        MAY_USE.put("video", Set.of("geometry", "document"));
        MAY_USE.put("mark", Set.of("geometry"));
        MAY_USE.put("camera", Set.of("geometry", "mark"));
        MAY_USE.put("posture", Set.of("camera"));
        MAY_USE.put("reading", Set.of("posture"));
        MAY_USE.put("advice", Set.of("reading", "document"));
        MAY_USE.put("flight", Set.of("geometry", "document"));
        MAY_USE.put("ledger", Set.of("mark", "reading", "flight", "document"));
        MAY_USE.put("across", Set.of("advice", "ledger"));
        MAY_USE.put("paint", Set.of("advice", "across", "flight"));
        MAY_USE.put("handout", Set.of("paint", "ledger"));
        MAY_USE.put("assist", Set.of("video", "mark"));
        MAY_USE.put("cli", Set.of("handout", "assist"));
        MAY_USE.put("desk", Set.of("handout", "assist"));
    }

    /** The parts of a stage, and the other parts of it that each may use; what these may use, it may use too. */
    private static final Map<String, Set<String>> PARTS_MAY_USE = new LinkedHashMap<>();

    static {
        PARTS_MAY_USE.put("advice", Set.of());
        PARTS_MAY_USE.put("advice.page", Set.of("advice"));
        PARTS_MAY_USE.put("flight", Set.of());
        PARTS_MAY_USE.put("flight.table", Set.of("flight"));
        PARTS_MAY_USE.put("flight.compare", Set.of("flight"));
        PARTS_MAY_USE.put("ledger", Set.of());
        PARTS_MAY_USE.put("ledger.store.place", Set.of("ledger"));
        PARTS_MAY_USE.put("ledger.store.backup", Set.of("ledger.store.place"));
        PARTS_MAY_USE.put("ledger.store.rows", Set.of("ledger.store.backup"));
        PARTS_MAY_USE.put("ledger.store", Set.of("ledger.store.rows"));
        PARTS_MAY_USE.put("ledger.store.exchange", Set.of("ledger.store"));
        PARTS_MAY_USE.put("assist", Set.of());
        PARTS_MAY_USE.put("assist.learn", Set.of("assist"));
        PARTS_MAY_USE.put("desk.text", Set.of());
        PARTS_MAY_USE.put("desk.look", Set.of());
        PARTS_MAY_USE.put("desk.work", Set.of("desk.text", "desk.look"));
        PARTS_MAY_USE.put("desk.lesson", Set.of());
        PARTS_MAY_USE.put("desk.dialog", Set.of("desk.text", "desk.look"));
        PARTS_MAY_USE.put("desk.keys", Set.of("desk.dialog"));
        PARTS_MAY_USE.put("desk.records", Set.of("desk.dialog", "desk.work"));
        PARTS_MAY_USE.put("desk.screen", Set.of("desk.records", "desk.lesson", "desk.work"));
        PARTS_MAY_USE.put("desk.picture", Set.of("desk.lesson"));
        PARTS_MAY_USE.put("desk.film", Set.of("desk.lesson", "desk.text", "desk.work", "desk.look"));
        PARTS_MAY_USE.put("desk.bodymap", Set.of("desk.lesson", "desk.dialog"));
        PARTS_MAY_USE.put("desk.findings", Set.of("desk.screen"));
        PARTS_MAY_USE.put("desk.across", Set.of("desk.screen"));
        PARTS_MAY_USE.put("desk.players", Set.of("desk.screen"));
        PARTS_MAY_USE.put("desk.ranges", Set.of("desk.screen"));
        PARTS_MAY_USE.put("desk.shots", Set.of("desk.screen"));
        PARTS_MAY_USE.put("desk.handover", Set.of("desk.players", "desk.film"));
        PARTS_MAY_USE.put(
                "desk.sheet",
                Set.of("desk.players", "desk.findings", "desk.bodymap", "desk.picture", "desk.film", "desk.keys"));
        PARTS_MAY_USE.put("desk", Set.of("desk.sheet", "desk.across", "desk.handover", "desk.ranges", "desk.shots"));
    }

    private static String stage(JavaClass c) {
        String name = c.getPackageName();
        if (!name.startsWith(ROOT + ".")) {
            return "";
        }
        String rest = name.substring(ROOT.length() + 1);
        int dot = rest.indexOf('.');
        return dot < 0 ? rest : rest.substring(0, dot);
    }

    private static String part(JavaClass c) {
        String name = c.getPackageName();
        return name.startsWith(ROOT + ".") ? name.substring(ROOT.length() + 1) : "";
    }

    private static Set<String> reach(Map<String, Set<String>> table, String from) {
        Set<String> all = new HashSet<>(Set.of(from));
        table.getOrDefault(from, Set.of()).forEach(s -> all.addAll(reach(table, s)));
        return all;
    }

    @ArchTest
    static final ArchRule EVERY_PACKAGE_IS_IN_THE_TABLE = classes()
            .that(inAStage())
            .should(new ArchCondition<JavaClass>("stand in the table") {
                @Override
                public void check(JavaClass c, ConditionEvents events) {
                    events.add(new SimpleConditionEvent(
                            c,
                            MAY_USE.containsKey(stage(c)),
                            c.getName() + " is in a package the table does not have"));
                }
            });

    @ArchTest
    static final ArchRule ARROWS_POINT_ONE_WAY = classes()
            .that(inAStage())
            .should(new ArchCondition<JavaClass>("use only what the table allows") {
                @Override
                public void check(JavaClass c, ConditionEvents events) {
                    Set<String> allowed = reach(MAY_USE, stage(c));
                    c.getDirectDependenciesFromSelf().forEach(d -> {
                        String other = stage(d.getTargetClass());
                        if (!other.isEmpty() && !allowed.contains(other)) {
                            events.add(SimpleConditionEvent.violated(c, d.getDescription()));
                        }
                    });
                }
            });

    @ArchTest
    static final ArchRule EVERY_PART_IS_IN_ITS_TABLE = classes()
            .that(inAStage())
            .should(new ArchCondition<JavaClass>("stand in the table of parts") {
                @Override
                public void check(JavaClass c, ConditionEvents events) {
                    boolean whole = part(c).equals(stage(c));
                    events.add(new SimpleConditionEvent(
                            c,
                            whole || PARTS_MAY_USE.containsKey(part(c)),
                            c.getName() + " is in a part the table does not have"));
                }
            });

    @ArchTest
    static final ArchRule PARTS_POINT_ONE_WAY = classes()
            .that(inAStage())
            .should(new ArchCondition<JavaClass>("use only the parts the table allows") {
                @Override
                public void check(JavaClass c, ConditionEvents events) {
                    Set<String> allowed = reach(PARTS_MAY_USE, part(c));
                    c.getDirectDependenciesFromSelf().forEach(d -> {
                        JavaClass other = d.getTargetClass();
                        if (stage(other).equals(stage(c)) && !allowed.contains(part(other))) {
                            events.add(SimpleConditionEvent.violated(c, d.getDescription()));
                        }
                    });
                }
            });

    @ArchTest
    static final ArchRule NO_CIRCLES =
            slices().matching(ROOT + ".(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule NO_CIRCLES_OF_PARTS =
            slices().matching(ROOT + ".(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule ONLY_THE_DESK_KNOWS_JAVAFX = noClasses()
            .that()
            .resideOutsideOfPackage(ROOT + ".desk..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javafx..", "atlantafx..");

    @ArchTest
    static final ArchRule THE_STAGES_TOUCH_NO_FILE_CLOCK_OR_DATABASE = noClasses()
            .that()
            .resideInAnyPackage(
                    ROOT + ".geometry..",
                    ROOT + ".mark..",
                    ROOT + ".camera..",
                    ROOT + ".posture..",
                    ROOT + ".reading..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.nio.file..", "java.sql..", "java.time..")
            .orShould()
            .dependOnClassesThat()
            .belongToAnyOf(java.io.File.class, java.io.FileInputStream.class, java.io.FileOutputStream.class);

    @ArchTest
    static final ArchRule NATIVE_TYPES_STAY_INSIDE = classes()
            .that(inAStage())
            .and()
            .haveModifier(JavaModifier.PUBLIC)
            .should(new ArchCondition<JavaClass>("not show native types in public signatures") {
                @Override
                public void check(JavaClass c, ConditionEvents events) {
                    c.getCodeUnits().stream()
                            .filter(u -> u.getModifiers().contains(JavaModifier.PUBLIC))
                            .forEach(u -> {
                                Set<JavaClass> seen = new HashSet<>(u.getRawParameterTypes());
                                seen.add(u.getRawReturnType());
                                seen.stream()
                                        .filter(t -> t.getPackageName().startsWith("org.bytedeco"))
                                        .forEach(t -> events.add(SimpleConditionEvent.violated(
                                                c, u.getFullName() + " shows " + t.getName())));
                            });
                }
            });

    private static DescribedPredicate<JavaClass> inAStage() {
        return DescribedPredicate.describe("in a package of the table", c -> !stage(c).isEmpty());
    }
}
