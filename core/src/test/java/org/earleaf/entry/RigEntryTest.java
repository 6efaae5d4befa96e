// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.groups.Tuple;
import org.earleaf.farm.Rig;
import org.earleaf.field.Placement;
import org.earleaf.units.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RigEntryTest {
    private static final Draft USUAL = Draft.of(
            "rig", "Highboy",
            "kind", "Self-propelled",
            "clearance", "72 in",
            "width", "90 ft",
            "tank", "1000 gal",
            "placements", "row-base dribble; over the top");

    @Test
    void a_rig_is_made_of_what_was_typed_with_the_usual_for_the_rest() {
        Rig rig = RigEntry.of(USUAL).orThrow();
        assertThat(rig.kind()).isEqualTo("self-propelled");
        assertThat(rig.clearance_m()).isCloseTo(1.8288, within(1e-9));
        assertThat(rig.width_m()).isCloseTo(27.432, within(1e-9));
        assertThat(rig.placements()).containsExactlyInAnyOrder(Placement.ROW_BASE, Placement.OVER_THE_TOP);
        assertThat(rig.pace().fieldEfficiency()).isEqualTo(.65);
    }

    @Test
    void a_tender_needs_no_clearance_no_width_and_no_placement() {
        Draft tender = Draft.of("rig", "Truck", "kind", "tender", "tank", "3000 gal");
        assertThat(RigEntry.of(tender).orThrow().isTender()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "rig, '', cell.empty, rig",
        "kind, '', cell.empty, kind",
        "kind, sprayer, word.unknown, kind",
        "clearance, '', cell.empty, clearance",
        "clearance, 72, quantity.unreadable, clearance",
        "clearance, 720 in, number.out-of-range, clearance",
        "width, 90 gal, unit.unknown, width",
        "tank, '1,200 gal', number.comma-unclear, tank",
        "outlets_per_row, 1.5, number.not-whole, outlets_per_row",
        "speed_max, 2 mph, range.turned, speed_max",
        "pressure_max, 10 psi, range.turned, pressure_max",
        "spray_clearance, 60 in, rig.spray-clearance-below-clearance, spray_clearance",
        "field_efficiency, 500 %, number.out-of-range, field_efficiency",
        "placements, beside, placement.unknown, placements"
    })
    void what_breaks_a_rule_is_told_at_its_part(String part, String text, String code, String at) {
        assertThat(RigEntry.of(USUAL.with(part, text)).problems())
                .extracting(Problem::code, Problem::where)
                .containsExactly(Tuple.tuple(code, at));
    }
}
