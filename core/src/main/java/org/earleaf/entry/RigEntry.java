// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.earleaf.farm.Rig;
import org.earleaf.farm.RigId;
import org.earleaf.field.Placement;
import org.earleaf.units.Called;
import org.earleaf.units.Units;

/**
 * A rig as a person enters it: rig (its name), kind, clearance and spray_clearance, width, outlets_per_row, pressure_min
 * and pressure_max, tank, heel and prime, speed_min, speed_max and field_efficiency, placements, cost.
 */
public final class RigEntry {
    public static final String NAME = "rig";

    private static final List<String> KINDS = List.of("self-propelled", "pulled", "toolbar", "tender", "hired");

    /** Taken where a part is not given, and said; common practice, no source. */
    private static final double SPEED_MIN_MS = 4 * Units.MS_PER_MPH;

    private static final double SPEED_MAX_MS = 10 * Units.MS_PER_MPH;
    private static final double PRESSURE_MIN_PA = 15 * Units.PA_PER_PSI;
    private static final double PRESSURE_MAX_PA = 60 * Units.PA_PER_PSI;
    private static final double COST_USDHA = 10 / Units.HA_PER_AC;
    private static final double HEEL_M3 = 5 * Units.L_PER_GAL / 1000;
    private static final double PRIME_M3 = 5 * Units.L_PER_GAL / 1000;
    /** A sprayer's share of field time at full width (ASAE D497.7, from memory). */
    private static final double FIELD_EFFICIENCY = 0.65;

    private final Parts parts;
    /** Needs nothing for work of its own. */
    private final boolean tender;

    private RigEntry(Parts parts, boolean tender) {
        this.parts = parts;
        this.tender = tender;
    }

    /** The rig; empty where something is refused. */
    public static Optional<Rig> of(Parts parts, RigId id) {
        String kind = parts.neededWord("kind", RigEntry::findKind, String.join(", ", KINDS))
                .orElse("");
        return new RigEntry(parts, kind.equals("tender")).rig(new Called<>(id, parts.text(NAME)), kind);
    }

    public static Entered<Rig> of(Draft draft) {
        Gathered gathered = new Gathered();
        Parts parts = new DraftParts(draft, gathered);
        Optional<Rig> rig = of(parts, new RigId(parts.filled(NAME)));
        return gathered.with(rig::orElseThrow);
    }

    /**
     * A machine of which only boom, tank and pace are told: width, tank, speeds and pressures, each "4 to 12 mph". It does
     * everything and clears any crop.
     */
    public static Entered<Rig> machine(Draft draft, String name) {
        Gathered gathered = new Gathered();
        double no = Double.NaN;
        double[] none = {no, no};
        Parts parts = new DraftParts(draft, gathered);
        double width_m = parts.needed("width", Ranges.WIDTH);
        double tank_m3 = parts.needed("tank", Ranges.TANK);
        double[] speed_ms = gathered.read(() -> SetupEntry.range(draft.text("speeds"), Ranges.SPEED, "speeds"))
                .orElse(none);
        double[] pressure_Pa = gathered.read(
                        () -> SetupEntry.range(draft.text("pressures"), Ranges.PRESSURE, "pressures"))
                .orElse(none);
        return gathered.with(() -> new Rig(
                new Called<>(new RigId(name), name),
                "self-propelled",
                new Rig.Clearance(no, no),
                new Rig.Boom(width_m, 1, pressure_Pa[0], pressure_Pa[1]),
                new Rig.Tank(tank_m3, 0, 0),
                new Rig.Pace(speed_ms[0], speed_ms[1], no),
                Set.of(Placement.values()),
                no));
    }

    private Optional<Rig> rig(Called<RigId> called, String kind) {
        Rig made = new Rig(
                called,
                kind,
                new Rig.Clearance(
                        number("clearance", Ranges.CLEARANCE), parts.number("spray_clearance", Ranges.SPRAY_CLEARANCE)),
                new Rig.Boom(
                        number("width", Ranges.WIDTH),
                        outlets(),
                        given("pressure_min", Ranges.PRESSURE, PRESSURE_MIN_PA),
                        given("pressure_max", Ranges.PRESSURE, PRESSURE_MAX_PA)),
                new Rig.Tank(
                        parts.needed("tank", Ranges.TANK),
                        given("heel", Ranges.HEEL, HEEL_M3),
                        given("prime", Ranges.PRIME, PRIME_M3)),
                new Rig.Pace(
                        given("speed_min", Ranges.SPEED, SPEED_MIN_MS),
                        given("speed_max", Ranges.SPEED, SPEED_MAX_MS),
                        given("field_efficiency", Ranges.EFFICIENCY, FIELD_EFFICIENCY)),
                placements(),
                given("cost", Ranges.RIG_COST, COST_USDHA));
        refuseTurned(made);
        return parts.isGood() ? Optional.of(made) : Optional.empty();
    }

    /** Fastest above slowest, highest pressure above lowest, and sprays in no lower corn than it clears. */
    private void refuseTurned(Rig rig) {
        if (rig.pace().slowest_ms() > rig.pace().fastest_ms()) {
            parts.refuse("range.turned", "speed_max", parts.text("speed_max"));
        }
        if (rig.boom().lowest_Pa() > rig.boom().highest_Pa()) {
            parts.refuse("range.turned", "pressure_max", parts.text("pressure_max"));
        }
        if (rig.clearance().spray_m() < rig.clearance().row_m()) {
            parts.refuse("rig.spray-clearance-below-clearance", "spray_clearance", parts.text("spray_clearance"));
        }
    }

    private static Optional<String> findKind(String word) {
        String plain = word.toLowerCase(Locale.ROOT);
        return KINDS.contains(plain) ? Optional.of(plain) : Optional.empty();
    }

    private double number(String part, Allowed allowed) {
        return tender ? parts.number(part, allowed) : parts.needed(part, allowed);
    }

    /** What a tender needs for no work of its own is taken without a remark. */
    private double given(String part, Allowed allowed, double usual) {
        return tender && !parts.has(part) ? usual : parts.number(part, allowed, usual);
    }

    private int outlets() {
        double count = given("outlets_per_row", Ranges.OUTLETS_PER_ROW, 1);
        Checks.whole(count, "outlets_per_row").ifPresent(parts::refuse);
        return (int) count;
    }

    private Set<Placement> placements() {
        Set<Placement> all = EnumSet.noneOf(Placement.class);
        String said = tender ? parts.text("placements") : parts.filled("placements");
        for (String word : said.split(";")) {
            if (word.isBlank()) {
                continue;
            }
            Optional<Placement> found = Placement.findByWord(word);
            if (found.isEmpty()) {
                parts.refuse(
                        "placement.unknown",
                        "placements",
                        word,
                        "placements",
                        Stream.of(Placement.values()).map(Placement::word).toList());
            }
            found.ifPresent(all::add);
        }
        return all;
    }
}
