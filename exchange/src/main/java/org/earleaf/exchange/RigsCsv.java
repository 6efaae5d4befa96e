// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.earleaf.entry.Checks;
import org.earleaf.entry.Ranges;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Measure;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.farm.Rig;
import org.earleaf.farm.RigId;
import org.earleaf.field.Placement;
import org.earleaf.units.Called;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Said;
import org.earleaf.units.Units;

/** rigs.csv: machines that make passes. */
final class RigsCsv {
    private static final Set<String> KINDS = Set.of("self-propelled", "pulled", "toolbar", "tender", "hired");
    private static final String KIND_WORDS = "self-propelled, pulled, toolbar, tender, hired";

    /** Taken where a cell is empty, and said; common practice, no source. */
    private static final double SPEED_MIN_MS = 4 * Units.MS_PER_MPH;

    private static final double SPEED_MAX_MS = 10 * Units.MS_PER_MPH;
    private static final double PRESSURE_MIN_PA = 15 * Units.PA_PER_PSI;
    private static final double PRESSURE_MAX_PA = 60 * Units.PA_PER_PSI;
    private static final double COST_USDHA = 10 / Units.HA_PER_AC;
    private static final double HEEL_M3 = 5 * Units.L_PER_GAL / 1000;
    private static final double PRIME_M3 = 5 * Units.L_PER_GAL / 1000;
    /** A sprayer's share of field time at full width (ASAE D497.7, from memory). */
    private static final double FIELD_EFFICIENCY = 0.65;

    private final Column name;
    private final Column kind;
    private final Column clearance;
    private final Column width;
    private final Column tank;
    private final Column speedMin;
    private final Column speedMax;
    private final Column pressureMin;
    private final Column pressureMax;
    private final Column outlets;
    private final Column placements;
    private final Column cost;
    private final Column heel;
    private final Column prime;
    private final Column efficiency;
    private final Column sprayClearance;
    private final IdColumn id;

    private RigsCsv(Sheet sheet) {
        name = sheet.text("rig");
        kind = sheet.text("kind");
        clearance = sheet.number("clearance", Measures.LENGTH_M, Ranges.CLEARANCE);
        width = sheet.number("width", Measures.LENGTH_M, Ranges.WIDTH);
        tank = sheet.number("tank", Measures.VOLUME_M3, Ranges.TANK);
        speedMin = sheet.optionalNumber("speed_min", Measures.SPEED_MS, Ranges.SPEED);
        speedMax = sheet.optionalNumber("speed_max", Measures.SPEED_MS, Ranges.SPEED);
        pressureMin = sheet.optionalNumber("pressure_min", Measures.PRESSURE_PA, Ranges.PRESSURE);
        pressureMax = sheet.optionalNumber("pressure_max", Measures.PRESSURE_PA, Ranges.PRESSURE);
        outlets = sheet.optionalNumber("outlets_per_row", Measure.PLAIN, Ranges.OUTLETS_PER_ROW);
        placements = sheet.text("placements");
        cost = sheet.optionalNumber("cost", Measures.USD_HA, Ranges.RIG_COST);
        heel = sheet.optionalNumber("heel", Measures.VOLUME_M3, Ranges.HEEL);
        prime = sheet.optionalNumber("prime", Measures.VOLUME_M3, Ranges.PRIME);
        efficiency = sheet.optionalNumber("field_efficiency", Measures.PLAIN_SHARE, Ranges.EFFICIENCY);
        sprayClearance = sheet.optionalNumber("spray_clearance", Measures.LENGTH_M, Ranges.SPRAY_CLEARANCE);
        id = new IdColumn(sheet, "id");
    }

    static List<Rig> read(Sheet sheet) {
        RigsCsv file = new RigsCsv(sheet);
        List<Rig> rigs = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        if (!sheet.isComplete()) {
            return rigs;
        }
        for (Row row : sheet.rows()) {
            String rig = row.text(file.name);
            if (!seen.add(rig.toLowerCase(Locale.ROOT))) {
                row.refuse("row.twice", file.name, Said.of("found.second-time", "what", rig));
            }
            file.read(row, rig).ifPresent(rigs::add);
        }
        return rigs;
    }

    private Optional<Rig> read(Row row, String rig) {
        String what = row.word(kind, RigsCsv::findKind, KIND_WORDS).orElse("");
        boolean tender = what.equals("tender");
        Rig made = new Rig(
                new Called<>(new RigId(id.of(row, rig)), rig),
                what,
                new Rig.Clearance(
                        row.number(tender ? clearance.emptyAllowed() : clearance), row.number(sprayClearance)),
                new Rig.Boom(
                        row.number(tender ? width.emptyAllowed() : width),
                        outlets(row, tender),
                        given(row, pressureMin, PRESSURE_MIN_PA, tender),
                        given(row, pressureMax, PRESSURE_MAX_PA, tender)),
                new Rig.Tank(row.number(tank), given(row, heel, HEEL_M3, tender), given(row, prime, PRIME_M3, tender)),
                new Rig.Pace(
                        given(row, speedMin, SPEED_MIN_MS, tender),
                        given(row, speedMax, SPEED_MAX_MS, tender),
                        given(row, efficiency, FIELD_EFFICIENCY, tender)),
                placements(row, tender),
                given(row, cost, COST_USDHA, tender));
        row.refuse(Checks.rig(made), speedMax, pressureMax, sprayClearance);
        return row.isGood() ? Optional.of(made) : Optional.empty();
    }

    private static Optional<String> findKind(String word) {
        String plain = word.toLowerCase(Locale.ROOT);
        return KINDS.contains(plain) ? Optional.of(plain) : Optional.empty();
    }

    /** What a tender needs for no work of its own is taken without a remark. */
    private static double given(Row row, Column column, double usual, boolean tender) {
        return tender && row.isEmpty(column) ? usual : row.number(column, usual);
    }

    private int outlets(Row row, boolean tender) {
        double count = given(row, outlets, 1, tender);
        row.refuse(Checks.whole(count, outlets.base()).stream().toList(), outlets);
        return (int) count;
    }

    private Set<Placement> placements(Row row, boolean tender) {
        Set<Placement> all = EnumSet.noneOf(Placement.class);
        String cell = row.text(tender ? placements.emptyAllowed() : placements);
        for (String word : cell.split(";")) {
            if (word.isBlank()) {
                continue;
            }
            Optional<Placement> found = Placement.findByWord(word);
            if (found.isEmpty()) {
                row.refuse(
                        placements,
                        EarleafException.coded(
                                "placement.unknown",
                                placements.base(),
                                word.strip(),
                                "placements",
                                Stream.of(Placement.values())
                                        .map(Placement::word)
                                        .toList()));
            }
            found.ifPresent(all::add);
        }
        return all;
    }
}
