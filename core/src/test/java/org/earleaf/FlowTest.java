// SPDX-License-Identifier: Apache-2.0
package org.earleaf;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Holds the order of the packages, the purity of core, the size of files and the papers behind the formulas. */
class FlowTest {
    /** In the order data flows. A package uses those before its own line; two on one line do not use each other. */
    private static final List<List<String>> FLOW = List.of(
            List.of("units"),
            List.of("weather", "soil", "label"),
            List.of("field"),
            List.of("farm"),
            List.of("season"),
            List.of("pressure"),
            List.of("protection"),
            List.of("outlook"),
            List.of("decide"),
            List.of("plan"),
            List.of("rig"),
            List.of("spray"),
            List.of("week"),
            List.of("brief"),
            List.of("mix"),
            List.of("load"),
            List.of("record"),
            List.of("entry"),
            List.of("card"),
            List.of("proof"),
            List.of("books"));

    private static final int MOST_LINES = 400;
    private static final String ROOT = "org.earleaf";
    private static final Path HOUSE = Sources.house();
    private static final JavaClasses CORE = new ClassFileImporter()
            .withImportOption(place -> !place.contains("/test-classes/"))
            .importPackages(ROOT);

    @Test
    void no_package_uses_one_that_comes_later() {
        classes().should(useOnlyWhatStandsBefore()).check(CORE);
    }

    @Test
    void no_package_reaches_itself() {
        slices().matching(ROOT + ".(**)")
                .should()
                .beFreeOfCycles()
                .allowEmptyShould(true)
                .check(CORE);
    }

    @Test
    void core_stands_on_the_jdk_hipparchus_jts_and_jspecify_alone() {
        classes()
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(
                        ROOT + "..", "java..", "org.hipparchus..", "org.locationtech.jts..", "org.jspecify.."))
                .check(CORE);
    }

    @Test
    void core_reads_no_file_network_or_database() {
        noClasses()
                .should()
                .dependOnClassesThat(
                        resideInAnyPackage("java.nio.file..", "java.nio.channels..", "java.net..", "java.sql..")
                                .or(describe(
                                        "read files",
                                        type -> type.getName().startsWith("java.io.File")
                                                || type.getName().equals("java.io.RandomAccessFile"))))
                .check(CORE);
    }

    @Test
    void core_asks_for_no_clock_environment_or_chance() {
        noClasses()
                .should()
                .accessTargetWhere(describe("asks the machine", FlowTest::asksTheMachine))
                .check(CORE);
    }

    /** On how many threads, or machines, work is done is for those to say who ask for it. */
    @Test
    void core_starts_no_work_of_its_own() {
        noClasses()
                .should()
                .accessTargetWhere(describe("starts work", FlowTest::startsWork))
                .check(CORE);
    }

    private static boolean startsWork(JavaAccess<?> access) {
        String owner = access.getTargetOwner().getName();
        String name = access.getTarget().getName();
        return name.equals("parallelStream")
                || owner.startsWith("java.util.stream.") && name.equals("parallel")
                || owner.equals("java.util.Arrays") && name.startsWith("parallel")
                || owner.equals("java.util.concurrent.CompletableFuture")
                || owner.equals("java.util.concurrent.ForkJoinPool") && !name.equals("invoke")
                || owner.equals("java.util.concurrent.Executors")
                || owner.equals("java.lang.Thread") && !name.equals("currentThread") && !name.equals("interrupted");
    }

    @Test
    void files_stay_small() {
        List<String> tooLong = Sources.files(HOUSE)
                .filter(file -> read(file).lines().count() > MOST_LINES)
                .map(file -> HOUSE.relativize(file) + ": more than " + MOST_LINES + " lines")
                .toList();
        assertThat(tooLong).isEmpty();
    }

    @Test
    void every_formula_names_its_source_and_the_test_that_checks_it() {
        Set<String> tests = Sources.files(HOUSE)
                .filter(file -> file.toString().contains("/src/test/java/"))
                .map(FlowTest::typeName)
                .collect(Collectors.toSet());
        List<String> faults = new ArrayList<>();
        formulas().values().stream().flatMap(List::stream).forEach(block -> {
            if (!block.has("Source")) {
                faults.add(block.title() + ": a Check line without a Source line");
            } else if (block.testsNamed().isEmpty()) {
                faults.add(block.title() + ": a Source line without a Check line that names a test class");
            }
            block.testsNamed().stream()
                    .filter(test -> !tests.contains(test))
                    .forEach(test ->
                            faults.add(block.title() + ": the Check line names " + test + ", which is missing"));
        });
        assertThat(faults).isEmpty();
    }

    @Test
    void the_list_of_equations_is_what_the_code_says() throws IOException {
        Path file = HOUSE.resolve("docs/equations.md");
        String now = equations();
        if (System.getProperty("earleaf.write") != null) {
            Files.createDirectories(file.getParent());
            Files.writeString(file, now);
        }
        assertThat(Files.exists(file) ? Files.readString(file) : "")
                .as("docs/equations.md; write it anew with: mvn -pl core test -Dtest=FlowTest -Dearleaf.write")
                .isEqualTo(now);
    }

    private static ArchCondition<JavaClass> useOnlyWhatStandsBefore() {
        return new ArchCondition<>("use only packages that stand before their own") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                String from = step(type);
                if (type.getSimpleName().equals("package-info")) {
                    return; // the root's names where to start reading
                }
                if (place(from) < 0) {
                    events.add(SimpleConditionEvent.violated(type, type.getName() + " has no place in FlowTest.FLOW"));
                    return;
                }
                for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
                    JavaClass target = dependency.getTargetClass();
                    if (!target.getPackageName().startsWith(ROOT)
                            || step(target).equals(from)) {
                        continue;
                    }
                    if (step(target).isEmpty() || place(step(target)) >= place(from)) {
                        events.add(SimpleConditionEvent.violated(dependency, dependency.getDescription()));
                    }
                }
            }
        };
    }

    /** The package under the root that a class belongs to; empty for the root itself. */
    private static String step(JavaClass type) {
        String name = type.getPackageName();
        return name.equals(ROOT) ? "" : name.substring(ROOT.length() + 1).split("\\.", 2)[0];
    }

    private static int place(String step) {
        for (int i = 0; i < FLOW.size(); i++) {
            if (FLOW.get(i).contains(step)) {
                return i;
            }
        }
        return -1;
    }

    private static boolean asksTheMachine(JavaAccess<?> access) {
        String owner = access.getTargetOwner().getName();
        String name = access.getTarget().getName();
        boolean noArguments = access.getTarget() instanceof CodeUnitAccessTarget unit
                && unit.getRawParameterTypes().isEmpty();
        return switch (owner) {
            case "java.time.Clock",
                    "java.util.Random",
                    "java.util.concurrent.ThreadLocalRandom",
                    "java.security.SecureRandom" -> true;
            case "java.lang.System" ->
                Set.of("currentTimeMillis", "nanoTime", "getenv", "getProperty").contains(name);
            case "java.lang.Math", "java.lang.StrictMath" -> name.equals("random");
            case "java.util.UUID" -> name.equals("randomUUID");
            case "java.util.SplittableRandom", "java.util.Date" -> name.equals("<init>") && noArguments;
            default -> owner.startsWith("java.time.") && name.equals("now");
        };
    }

    /** Per package, in the order of the flow, the Javadoc blocks with a Source or a Check line. */
    private static Map<String, List<JavadocBlocks.Block>> formulas() {
        Map<String, List<JavadocBlocks.Block>> found = new LinkedHashMap<>();
        Path sources = HOUSE.resolve("core/src/main/java/org/earleaf");
        FLOW.stream().flatMap(List::stream).forEach(step -> {
            List<JavadocBlocks.Block> blocks = Sources.files(sources.resolve(step))
                    .flatMap(file -> JavadocBlocks.of(typeName(file), read(file)).stream())
                    .filter(block -> block.has("Source") || block.has("Check"))
                    .toList();
            if (!blocks.isEmpty()) {
                found.put(step, blocks);
            }
        });
        return found;
    }

    private static String equations() {
        StringBuilder page =
                new StringBuilder("# Equations\n\nWritten by FlowTest from the comments in the code: each with"
                        + " its symbols, units, range, source and the test that checks it.\n");
        formulas().forEach((step, blocks) -> {
            page.append("\n## ").append(step).append('\n');
            for (JavadocBlocks.Block block : blocks) {
                page.append("\n### ").append(block.title()).append("\n```text\n");
                block.lines().forEach(line -> page.append(line).append('\n'));
                page.append("```\n");
            }
        });
        return page.toString();
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String typeName(Path file) {
        return file.getFileName().toString().replace(".java", "");
    }
}
