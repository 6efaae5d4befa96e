// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.time.ZoneId;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Setting;
import org.earleaf.farm.Settings;
import org.earleaf.units.Flag;
import org.earleaf.weather.Site;

/** What a farm is called, where it stands, and the prices that have no product. */
record FarmHead(
        String name, Site site, ZoneId timeZone, double corn_usdBu, double harvestCost_usdBu, double nitrogen_usdKg) {
    static final Table<FarmHead> TABLE = Table.named("farm", (FarmHead f) -> "farm", f -> "farm")
            .text("name", "name", FarmHead::name)
            .number("latitude_deg", "latitude", f -> f.site().latitude_deg(), Shown.DEGREES)
            .number("longitude_deg", "longitude", f -> f.site().longitude_deg(), Shown.DEGREES)
            .number("elevation_m", "elevation", f -> f.site().elevation_m(), Shown.ELEVATION)
            .text("time_zone", "time zone", FarmHead::timeZone)
            .number("corn_usd_bu", "corn price", FarmHead::corn_usdBu, Shown.CORN_PRICE)
            .number("harvest_cost_usd_bu", "harvest cost", FarmHead::harvestCost_usdBu, Shown.CORN_PRICE)
            .number("nitrogen_usd_kg", "nitrogen price", FarmHead::nitrogen_usdKg, Shown.NITROGEN_PRICE)
            .inOrderOf(f -> 1)
            .read(r -> new FarmHead(
                    r.text("name"),
                    new Site(r.number("latitude_deg"), r.number("longitude_deg"), r.number("elevation_m")),
                    ZoneId.of(r.text("time_zone")),
                    r.number("corn_usd_bu"),
                    r.number("harvest_cost_usd_bu"),
                    r.number("nitrogen_usd_kg")));

    static final Table<Remark> REMARKS = Table.named("remark", (Remark r) -> "remark", r -> r)
            .key("about", Remark::about)
            .key("place", r -> SaidText.of(r.flag().where()))
            .key("what", r -> SaidText.of(r.flag().what()))
            .read(r -> new Remark(
                    r.text("about"), new Flag(SaidText.read(r.text("place")), SaidText.read(r.text("what")))));

    static final Table<Chosen> SETTINGS = Table.named("setting", (Chosen c) -> "setting " + c.name(), Chosen::name)
            .key("name", Chosen::name)
            .number("amount", "value", Chosen::amount, Shown.PLAIN)
            .read(r -> new Chosen(r.text("name"), r.number("amount")));

    /** A setting that the farm chose. */
    record Chosen(String name, double amount) {
        static List<Chosen> of(Settings settings) {
            return settings.own().entrySet().stream()
                    .map(e -> new Chosen(e.getKey().name(), e.getValue()))
                    .sorted(Comparator.comparing(Chosen::name))
                    .toList();
        }
    }

    /** One that this version does not know is left alone. */
    static Settings settings(List<Chosen> chosen) {
        Map<Setting, Double> own = new EnumMap<>(Setting.class);
        for (Chosen c : chosen) {
            Arrays.stream(Setting.values())
                    .filter(s -> s.name().equals(c.name()))
                    .forEach(s -> own.put(s, c.amount()));
        }
        return new Settings(own);
    }

    /** A flag on the farm's facts or on its forecast; those on observed weather follow from the weather. */
    record Remark(String about, Flag flag) {
        static final String FARM = "farm";
        static final String FORECAST = "forecast";
    }

    static FarmHead of(Farm farm) {
        return new FarmHead(
                farm.name(),
                farm.site(),
                farm.timeZone(),
                farm.prices().corn_usdBu(),
                farm.prices().harvestCost_usdBu(),
                farm.prices().nitrogen_usdKg());
    }
}
