// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** A note is for people: whatever somebody writes into one, no answer can depend on it. */
class NoteTest {
    private static final JavaClasses CORE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.earleaf");

    @Test
    void nothing_in_core_reads_the_note_of_a_reading() {
        noClasses()
                .that()
                .areNotAssignableTo(Reading.class)
                .should()
                .callMethod(Reading.class, "note")
                .check(CORE);
    }
}
