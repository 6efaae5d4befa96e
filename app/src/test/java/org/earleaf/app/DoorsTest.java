// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import org.junit.jupiter.api.Test;

/** Doors parse, call one thing and format. What they show was computed behind them. */
class DoorsTest {
    private static final String CLI = "org.earleaf.app.cli..";
    private static final String WEB = "org.earleaf.app.web..";
    private static final String DRAWING = "org.earleaf.app.web.drawing..";
    private static final String STORE = "org.earleaf.app.store..";

    private static final JavaClasses APP = new ClassFileImporter()
            .withImportOption(place -> !place.contains("/test-classes/"))
            .importPackages("org.earleaf.app");

    @Test
    void doors_do_no_mathematics_and_only_drawings_place_points() {
        noClasses()
                .that()
                .resideInAnyPackage(CLI, WEB)
                .and()
                .resideOutsideOfPackage(DRAWING)
                .should()
                .accessTargetWhere(describe("does mathematics", DoorsTest::isMathematics))
                .allowEmptyShould(true)
                .check(APP);
    }

    @Test
    void pages_do_not_use_commands_and_the_store_uses_no_door() {
        noClasses()
                .that()
                .resideInAPackage(WEB)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(CLI)
                .allowEmptyShould(true)
                .check(APP);
        noClasses()
                .that()
                .resideInAPackage(STORE)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(CLI, WEB)
                .allowEmptyShould(true)
                .check(APP);
    }

    @Test
    void no_package_reaches_itself() {
        slices().matching("org.earleaf.app.(*)..")
                .should()
                .beFreeOfCycles()
                .allowEmptyShould(true)
                .check(APP);
    }

    private static boolean isMathematics(JavaAccess<?> call) {
        String owner = call.getTargetOwner().getName();
        return owner.equals("java.lang.Math") || owner.equals("java.lang.StrictMath");
    }
}
