// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.time.Instant;
import org.earleaf.mix.MixRules;
import org.earleaf.units.EarleafException;

/**
 * A stop that a named person has set aside for one load, with the reason; it stays with the load and its record.
 *
 * @param rule "C02", or {@link #CALIBRATION}
 * @param role in which the person did so; empty where none is asked for
 */
public record Overridden(String rule, String person, String role, String reason, Instant at) {
    /** The rig goes out on a calibration that has run out. */
    public static final String CALIBRATION = "calibration";

    /** A rule of mixing, set aside by whom its table lets; refused with what is missing. */
    public static Overridden of(MixRules.Found rule, String person, String role, String reason, Instant at) {
        String where = "override of rule " + rule.id();
        if (rule.mayOverride().isEmpty()) {
            throw EarleafException.of(
                    where, "a rule that nobody may set aside", "another mix", "Change the load or drop it.");
        }
        if (!LoadLine.same(rule.mayOverride(), role)) {
            throw EarleafException.of(
                    where,
                    role.isBlank() ? "nobody's role" : role.strip(),
                    "the " + rule.mayOverride() + ", by name",
                    "Ask the " + rule.mayOverride() + ", or change the load.");
        }
        if (person.isBlank() || reason.isBlank()) {
            throw EarleafException.of(
                    where,
                    person.isBlank() ? "nobody named" : "no reason",
                    "the name of the " + rule.mayOverride() + " and the reason",
                    "Write both: they stay with the load and its record.");
        }
        return new Overridden(rule.id(), person.strip(), rule.mayOverride(), reason.strip(), at);
    }

    /** "Rule C02 set aside by B. Adviser, agronomist: only 2 of 30 rows", as sheets and records say it. */
    public String sentence() {
        boolean calibration = rule.equals(CALIBRATION);
        String by = role.isEmpty() ? person : person + ", " + role;
        return (calibration ? "Without a calibration that holds, by " : "Rule " + rule + " set aside by ") + by + ": "
                + reason;
    }
}
