// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Holds the order of the app's packages, as the flow test holds that of core. */
class AppFlowTest {
    private static final String ROOT = "org.earleaf.app";
    /** A package uses those before it alone; the root, where the program begins, stands last. */
    private static final List<String> FLOW = List.of(
            ".words",
            ".picture",
            ".store",
            ".desk",
            ".paper",
            ".web.text",
            ".web.drawing",
            ".web.view",
            ".web.server",
            ".web",
            ".cli",
            "");

    private static final JavaClasses APP = new ClassFileImporter()
            .withImportOption(place -> !place.contains("/test-classes/"))
            .importPackages(ROOT);

    @Test
    void no_package_of_the_app_uses_one_that_comes_later() {
        classes().should(useOnlyWhatStandsBefore()).check(APP);
    }

    @Test
    void every_package_has_its_place_and_the_root_holds_the_beginning_alone() {
        assertThat(APP.stream()
                        .map(JavaClass::getPackageName)
                        .map(AppFlowTest::place)
                        .collect(Collectors.toSet()))
                .containsExactlyInAnyOrderElementsOf(FLOW);
        assertThat(APP.stream()
                        .filter(type -> type.getPackageName().equals(ROOT) && type.isTopLevelClass())
                        .map(JavaClass::getSimpleName)
                        .filter(name -> !name.equals("package-info"))
                        .collect(Collectors.toSet()))
                .isEqualTo(Set.of("Main"));
    }

    private static String place(String inPackage) {
        return inPackage.substring(ROOT.length());
    }

    private static ArchCondition<JavaClass> useOnlyWhatStandsBefore() {
        return new ArchCondition<>("use only what stands before") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                for (Dependency each : type.getDirectDependenciesFromSelf()) {
                    JavaClass used = each.getTargetClass().getBaseComponentType();
                    if (used.getPackageName().startsWith(ROOT) && isBefore(type, used)) {
                        events.add(SimpleConditionEvent.violated(each, each.getDescription()));
                    }
                }
            }
        };
    }

    private static boolean isBefore(JavaClass type, JavaClass used) {
        return FLOW.indexOf(place(type.getPackageName())) < FLOW.indexOf(place(used.getPackageName()));
    }
}
