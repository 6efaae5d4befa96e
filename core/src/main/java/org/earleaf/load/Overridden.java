// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.time.Instant;
import org.earleaf.mix.MixRules;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

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
        Said where = Said.of("where.override", "rule", rule.id());
        String who = rule.mayOverride();
        if (rule.mayOverride().isEmpty()) {
            throw new EarleafException(Problem.of("override.nobody", where, Said.of("found.fixed-rule")));
        }
        if (!LoadLine.same(rule.mayOverride(), role)) {
            Said found = role.isBlank() ? Said.of("found.no-role") : Said.text(role.strip());
            throw new EarleafException(Problem.of("override.other-role", where, found, "role", who));
        }
        if (person.isBlank() || reason.isBlank()) {
            Said found = person.isBlank() ? Said.of("found.no-person") : Said.of("found.no-reason");
            throw new EarleafException(Problem.of("override.incomplete", where, found, "role", who));
        }
        return new Overridden(rule.id(), person.strip(), rule.mayOverride(), reason.strip(), at);
    }

    /** As sheets and records say it. */
    public Said said() {
        if (rule.equals(CALIBRATION)) {
            return Said.of("override.calibration", "person", person, "reason", reason);
        }
        return role.isEmpty()
                ? Said.of("override.rule", "rule", rule, "person", person, "reason", reason)
                : Said.of("override.rule-role", "rule", rule, "person", person, "role", role, "reason", reason);
    }
}
