// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Limits;
import org.earleaf.exchange.table.Measure;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.farm.DropletClass;
import org.earleaf.farm.ProductKind;
import org.earleaf.farm.ProductLabel;
import org.earleaf.field.Observed;
import org.earleaf.field.Reading;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Units;
import org.earleaf.weather.LabelLimit;
import org.earleaf.weather.SprayLabel;

/**
 * The columns of products.csv that hold what a label says. An empty cell is "not entered", which is neither zero nor "no
 * limit"; {@code none} is "the label was read and states none".
 */
final class LabelColumns {
    private static final String NONE = "none";
    private static final String OR_NONE = ", or none where the label states none";
    private static final List<String> GROUP_SIGNS = List.of("FRAC", "IRAC", "GROUP");

    private final Column kind;
    private final Column group;
    private final Column windMin;
    private final Column windMax;
    private final Column airMax;
    private final Column rainfast;
    private final Column inversion;
    private final Column droplet;
    private final Column preHarvest;
    private final Column firstStage;
    private final Column lastStage;
    private final Column byAir;

    LabelColumns(Sheet sheet) {
        Limits wind = Limits.refuse(0, 40 * Units.MS_PER_MPH);
        kind = sheet.optionalText("kind");
        group = sheet.optionalText("group");
        windMin = sheet.optionalNumber("label_wind_min", Measures.SPEED_MS, wind);
        windMax = sheet.optionalNumber("label_wind_max", Measures.SPEED_MS, wind);
        airMax = sheet.optionalNumber("label_temperature_max", Measures.TEMPERATURE_C, Limits.refuse(0, 55));
        rainfast = sheet.optionalNumber("label_rainfast", Measure.of("h", 1), Limits.refuse(0, 72));
        inversion = sheet.optionalText("label_inversion_ban");
        droplet = sheet.optionalText("label_droplet_min");
        preHarvest = sheet.optionalNumber("label_pre_harvest", Measures.DAYS, Limits.refuse(0, 365));
        firstStage = sheet.optionalText("label_stage_first");
        lastStage = sheet.optionalText("label_stage_last");
        byAir = sheet.optionalText("label_by_air");
    }

    ProductLabel read(Row row) {
        ProductKind what =
                row.word(kind, ProductKind::findByWord, ProductKind.words()).orElse(ProductKind.OTHER);
        SprayLabel weather = new SprayLabel(
                number(row, windMin),
                number(row, windMax),
                number(row, airMax),
                number(row, rainfast),
                row.word(inversion, YesNo::find, YesNo.WORDS));
        ProductLabel label = new ProductLabel(
                what,
                groups(row),
                weather,
                droplets(row),
                number(row, preHarvest),
                stage(row, firstStage),
                stage(row, lastStage),
                row.word(byAir, YesNo::find, YesNo.WORDS));
        refuseTurned(row, windMax, weather.windMin_ms(), weather.windMax_ms());
        refuseTurned(row, lastStage, label.firstStage(), label.lastStage());
        return label;
    }

    private static boolean isNone(Row row, Column column) {
        return row.cell(column).equalsIgnoreCase(NONE);
    }

    private static LabelLimit number(Row row, Column column) {
        if (isNone(row, column)) {
            return LabelLimit.noneStated();
        }
        double value = row.number(column);
        return Double.isNaN(value) ? LabelLimit.notEntered() : LabelLimit.of(value);
    }

    private LabelLimit droplets(Row row) {
        if (isNone(row, droplet)) {
            return LabelLimit.noneStated();
        }
        return row.word(droplet, DropletClass::find, DropletClass.words() + OR_NONE)
                .map(c -> LabelLimit.of(c.ordinal()))
                .orElse(LabelLimit.notEntered());
    }

    private static LabelLimit stage(Row row, Column column) {
        if (row.isEmpty(column) || isNone(row, column)) {
            return row.isEmpty(column) ? LabelLimit.notEntered() : LabelLimit.noneStated();
        }
        try {
            return LabelLimit.of(Observed.inside(Reading.Kind.STAGE, row.cell(column), "", Double.NaN, Double.NaN));
        } catch (EarleafException e) {
            String expected = e.problems().get(0).expected() + OR_NONE;
            row.refuse(column, "\"" + row.cell(column) + "\"", expected, "Write it as on the label, like VT.");
            return LabelLimit.notEntered();
        }
    }

    /** "11+3", "3A", "FRAC 11 and 3". */
    private List<String> groups(Row row) {
        List<String> groups = new ArrayList<>();
        for (String part : row.text(group).toUpperCase(Locale.ROOT).split("[+;,&/\\s]+|AND")) {
            if (part.isEmpty() || GROUP_SIGNS.contains(part)) {
                continue;
            }
            if (!part.matches("\\d{1,2}[A-Z]?|M\\d{1,2}|P\\d{1,2}|BM\\d{1,2}|U\\d{1,2}|UN[A-Z]*|NC")) {
                row.refuse(
                        group,
                        "\"" + row.cell(group) + "\"",
                        "group numbers as printed on the label, parted by +: 11+3, or 3A",
                        "Copy the numbers of the box on the label.");
                return List.of();
            }
            groups.add(part);
        }
        return groups;
    }

    private static void refuseTurned(Row row, Column column, LabelLimit least, LabelLimit most) {
        if (least.or(Double.NEGATIVE_INFINITY) > most.or(Double.POSITIVE_INFINITY)) {
            row.refuse(
                    column,
                    row.cell(column) + ", below the other end",
                    "both ends of the label in order",
                    "Check both.");
        }
    }
}
