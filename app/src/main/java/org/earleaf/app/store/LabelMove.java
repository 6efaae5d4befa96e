// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.earleaf.label.CropStages;
import org.earleaf.label.DropletClass;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelFigure;
import org.earleaf.label.LabelItem;
import org.earleaf.units.Said;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.migration.Context;
import org.flywaydb.core.api.migration.JavaMigration;
import org.jspecify.annotations.Nullable;

/**
 * Version 12: what labels say moves from columns of a product to the label entries. Who had entered it was not kept, so
 * that what is moved waits for a second look; nothing is lost and nothing is filled in. Mode-of-action groups stood there
 * without their active ingredient and cannot be moved. Entries made before learn to speak of crops planted after them.
 */
final class LabelMove implements JavaMigration {
    private static final String WHO = "not told; in products.csv of an earlier version";
    private static final Map<String, LabelItem> NUMBERS = Map.of(
            "label_wind_min_m_s", LabelItem.WIND_LEAST,
            "label_wind_max_m_s", LabelItem.WIND_MOST,
            "label_air_max_c", LabelItem.AIR_MOST,
            "label_rainfast_h", LabelItem.RAINFAST,
            "label_droplet_min", LabelItem.FINEST,
            "label_pre_harvest_d", LabelItem.HARVEST,
            "label_stage_first", LabelItem.FIRST_STAGE,
            "label_stage_last", LabelItem.LAST_STAGE);
    private static final Map<String, LabelItem> WORDS =
            Map.of("label_inversion_ban", LabelItem.INVERSION, "label_by_air", LabelItem.BY_AIR);

    @Override
    public MigrationVersion getVersion() {
        return MigrationVersion.fromVersion("12");
    }

    @Override
    public String getDescription() {
        return "labels in one place";
    }

    @Override
    public @Nullable Integer getChecksum() {
        return null;
    }

    @Override
    public boolean canExecuteInTransaction() {
        return true;
    }

    @Override
    public void migrate(Context context) throws SQLException {
        Connection db = context.getConnection();
        try (Statement all = db.createStatement()) {
            // As text: the key stands once in a body, and quotes inside of words are escaped there.
            all.executeUpdate(
                    "update label_entry set body = replace(body, '\"look\":{', '\"plantBack_d\":{},\"look\":{')");
            move(db);
            for (String column : List.of("mode_groups", "label_states_none")) {
                all.executeUpdate("alter table product drop column " + column);
            }
            for (String column : NUMBERS.keySet()) {
                all.executeUpdate("alter table product drop column " + column);
            }
            for (String column : WORDS.keySet()) {
                all.executeUpdate("alter table product drop column " + column);
            }
        }
    }

    private static void move(Connection db) throws SQLException {
        try (Statement read = db.createStatement();
                ResultSet row = read.executeQuery("select * from product order by seq");
                PreparedStatement write = db.prepareStatement("insert into label_entry (seq, product, crop, body)"
                        + " select coalesce(max(seq), 0) + 1, ?, ?, ? from label_entry")) {
            while (row.next()) {
                LabelEntry entry = entry(row);
                if (!entry.figures().isEmpty()) {
                    write.setString(1, entry.product());
                    write.setString(2, entry.crop());
                    write.setString(3, LoadJson.text(entry));
                    write.addBatch();
                }
            }
            write.executeBatch();
        }
    }

    private static LabelEntry entry(ResultSet row) throws SQLException {
        String name = row.getString("name");
        Map<LabelItem, LabelFigure> figures = new EnumMap<>(LabelItem.class);
        List<String> none = List.of(row.getString("label_states_none").split(" "));
        for (var column : NUMBERS.entrySet()) {
            double value = row.getDouble(column.getKey());
            boolean stated = !row.wasNull();
            if (stated || none.contains(column.getKey())) {
                LabelItem item = column.getValue();
                figures.put(item, item.parse(stated ? text(item, value) : "none", false, "corn", Said.text(name)));
            }
        }
        for (var column : WORDS.entrySet()) {
            figures.put(
                    column.getValue(),
                    column.getValue().parse(row.getString(column.getKey()), false, "corn", Said.text(name)));
        }
        boolean dry = org.earleaf.mix.MixForm.find(row.getString("form"))
                .filter(org.earleaf.mix.MixForm::isDry)
                .isPresent();
        return new LabelEntry(
                new LabelEntry.Title(name, "corn", dry, row.getString("registration"), ""),
                LabelEntry.Clock.CROP,
                List.of(),
                figures,
                LabelEntry.InTank.NOTHING,
                Map.of(),
                LabelEntry.Look.first(WHO, Instant.EPOCH));
    }

    private static String text(LabelItem item, double value) {
        return switch (item.kind()) {
            case SPEED -> value + " m/s";
            case TEMPERATURE -> value + " C";
            case DROPLETS -> DropletClass.values()[(int) value].name();
            case STAGE -> CropStages.word("corn", value);
            default -> String.valueOf(value);
        };
    }
}
