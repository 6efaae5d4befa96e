// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

/** The rules that no plan may break; the catalogue says each in a sentence. */
public enum Rule {
    /** A job is done once. */
    ONCE,
    /** A rig does only what it is built for and may be driven to. */
    ABLE,
    /** No job is done before its first day: stage reached, re-entry past. */
    RELEASE,
    /** No rig does a job after its last day for it: crop too tall, stage or label past. */
    DEADLINE,
    /** What was put on a rig and a day by hand stays there. */
    PIN,
    /** Between two jobs lie the days that re-entry, a label or their order ask for. */
    GAP,
    /** The tenders bring no more in a day than they can carry. */
    SUPPLY,
    /** A product class is worked only in the hours fit for it. */
    WINDOW,
    /** A day's work ends with the shift: weather, light, driver's hours. */
    SHIFT
}
