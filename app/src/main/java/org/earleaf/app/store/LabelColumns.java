// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.earleaf.farm.Product;
import org.earleaf.farm.ProductKind;
import org.earleaf.farm.ProductLabel;
import org.earleaf.weather.LabelLimit;
import org.earleaf.weather.SprayLabel;

/** The label's part of a product's row. */
final class LabelColumns {
    private static final Map<String, Limit> LIMITS = new LinkedHashMap<>();

    static {
        limit("label_wind_min_m_s", "least wind of the label", Shown.WIND, l -> l.weather()
                .windMin_ms());
        limit("label_wind_max_m_s", "greatest wind of the label", Shown.WIND, l -> l.weather()
                .windMax_ms());
        limit("label_air_max_c", "greatest temperature of the label", Shown.TEMPERATURE, l -> l.weather()
                .airMax_C());
        limit("label_rainfast_h", "hours to rainfast of the label", Shown.PLAIN, l -> l.weather()
                .rainfast_h());
        limit(
                "label_droplet_min",
                "finest droplets of the label (0 XF to 7 UC)",
                Shown.PLAIN,
                ProductLabel::droplet_class);
        limit("label_pre_harvest_d", "days before harvest of the label", Shown.PLAIN, ProductLabel::preHarvest_d);
        limit("label_stage_first", "earliest stage of the label (VT 30, R1 31)", Shown.PLAIN, ProductLabel::firstStage);
        limit("label_stage_last", "latest stage of the label (VT 30, R1 31)", Shown.PLAIN, ProductLabel::lastStage);
    }

    private LabelColumns() {}

    private record Limit(String label, Shown shown, Function<ProductLabel, LabelLimit> of) {}

    private static void limit(String column, String label, Shown shown, Function<ProductLabel, LabelLimit> of) {
        LIMITS.put(column, new Limit(label, shown, of));
    }

    static Table.Builder<Product> add(Table.Builder<Product> table) {
        table.text("kind", "kind", p -> p.label().kind())
                .text(
                        "mode_groups",
                        "mode-of-action groups",
                        p -> String.join("+", p.label().groups()))
                .text(
                        "label_inversion_ban",
                        "inversions forbidden by the label",
                        p -> yesNo(p.label().weather().inversionBan()))
                .text(
                        "label_by_air",
                        "allowed from the air by the label",
                        p -> yesNo(p.label().byAir()));
        LIMITS.forEach((column, limit) -> table.number(
                column, limit.label(), p -> limit.of().apply(p.label()).or(Double.NaN), limit.shown()));
        return table.text("label_states_none", "limits that the label states none of", LabelColumns::statedNone);
    }

    private static String statedNone(Product p) {
        return LIMITS.entrySet().stream()
                .filter(e -> e.getValue().of().apply(p.label()).state() == LabelLimit.State.NONE_STATED)
                .map(Map.Entry::getKey)
                .collect(Collectors.joining(" "));
    }

    static ProductLabel read(Row r) {
        List<String> groups = Arrays.stream(r.text("mode_groups").split("\\+"))
                .filter(g -> !g.isEmpty())
                .toList();
        Optional<Boolean> ban = yesNo(r, "label_inversion_ban");
        return new ProductLabel(
                r.word(ProductKind.class, "kind"),
                groups,
                new SprayLabel(
                        limit(r, "label_wind_min_m_s"),
                        limit(r, "label_wind_max_m_s"),
                        limit(r, "label_air_max_c"),
                        limit(r, "label_rainfast_h"),
                        ban),
                limit(r, "label_droplet_min"),
                limit(r, "label_pre_harvest_d"),
                limit(r, "label_stage_first"),
                limit(r, "label_stage_last"),
                yesNo(r, "label_by_air"));
    }

    private static Optional<Boolean> yesNo(Row r, String column) {
        return r.findText(column).filter(word -> !word.isEmpty()).map("yes"::equals);
    }

    private static String yesNo(Optional<Boolean> entered) {
        return entered.map(yes -> yes ? "yes" : "no").orElse("");
    }

    private static LabelLimit limit(Row r, String column) {
        double value = r.number(column);
        if (!Double.isNaN(value)) {
            return LabelLimit.of(value);
        }
        boolean none = List.of(r.text("label_states_none").split(" ")).contains(column);
        return none ? LabelLimit.noneStated() : LabelLimit.notEntered();
    }
}
