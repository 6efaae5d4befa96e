// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

/** The rules that no plan may break, each in a sentence. */
public enum Rule {
    ONCE("A job is done once."),
    ABLE("A rig does only what it is built for and may be driven to."),
    RELEASE("No job is done before its first day: stage reached, re-entry past."),
    DEADLINE("No rig does a job after its last day for it: crop too tall, stage or label past."),
    PIN("What was put on a rig and a day by hand stays there."),
    GAP("Between two jobs lie the days that re-entry, a label or their order ask for."),
    SUPPLY("The tenders bring no more in a day than they can carry."),
    WINDOW("A product class is worked only in the hours fit for it."),
    SHIFT("A day's work ends with the shift: weather, light, driver's hours.");

    private final String sentence;

    Rule(String sentence) {
        this.sentence = sentence;
    }

    public String sentence() {
        return sentence;
    }
}
