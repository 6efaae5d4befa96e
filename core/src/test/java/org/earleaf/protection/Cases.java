// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.earleaf.farm.Prices;
import org.earleaf.field.Disease;
import org.earleaf.field.DiseaseFacts;
import org.earleaf.field.Drainage;
import org.earleaf.field.Hybrid;
import org.earleaf.field.Incidence;
import org.earleaf.field.Placement;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Tillage;
import org.earleaf.field.Zone;
import org.earleaf.field.ZoneName;
import org.earleaf.pressure.AphidSighting;
import org.earleaf.pressure.CropAhead;
import org.earleaf.pressure.Fungicide;
import org.earleaf.pressure.FungicideKind;
import org.earleaf.pressure.Insecticide;
import org.earleaf.pressure.LesionSighting;
import org.earleaf.pressure.ProtectionAssumption;
import org.earleaf.pressure.ProtectionCase;
import org.earleaf.pressure.ProtectionOption;
import org.earleaf.pressure.ProtectionSettings;
import org.earleaf.pressure.SiteFacts;
import org.earleaf.pressure.StripEvidence;
import org.earleaf.pressure.WeatherRisk;
import org.earleaf.soil.Horizon;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Units;

/** Invented zones and passes: tassel about 12 July, 190 bu/ac, corn at $4.20. */
public final class Cases {
    public static final LocalDate VT = LocalDate.parse("2023-07-12");
    public static final double BU = Units.KGHA_PER_BUAC * Units.DRY_SHARE_OF_TRADE_CORN;

    private ProtectionSettings settings = ProtectionSettings.USUAL;
    private List<LesionSighting> lesions = List.of();
    private Optional<AphidSighting> aphids = Optional.empty();
    private List<LocalDate> made = List.of();
    private Optional<StripEvidence> strips = Optional.empty();
    private SiteFacts site = site(5, PreviousCrop.SOYBEAN, Optional.of(WeatherRisk.MODERATE));
    private int spread_d = 2;
    private double corn = 4.20;

    public static Cases zoneOnItsOwn() {
        return new Cases();
    }

    Cases with(ProtectionAssumption a, double value) {
        settings = settings.with(a, value);
        return this;
    }

    Cases lesions(LesionSighting... seen) {
        lesions = List.of(seen);
        return this;
    }

    public Cases aphids(double perPlant, int plants, double ladyBeetles) {
        aphids = Optional.of(
                new AphidSighting(VT, perPlant, Optional.of(new Incidence(plants, 100)), ladyBeetles, 0, 0));
        return this;
    }

    Cases made(LocalDate... days) {
        made = List.of(days);
        return this;
    }

    Cases strips(StripEvidence own) {
        strips = Optional.of(own);
        return this;
    }

    public Cases site(SiteFacts facts) {
        site = facts;
        return this;
    }

    Cases corn(double usdBu) {
        corn = usdBu;
        return this;
    }

    /** Futures whose stages lie this many days apart to either side. */
    Cases spread(int days) {
        spread_d = days;
        return this;
    }

    public ProtectionCase build() {
        return new ProtectionCase(
                "Home",
                VT.minusDays(2),
                futures(),
                site,
                108,
                new ProtectionCase.SoFar(lesions, aphids, made),
                new Prices(corn, 0, 1, Map.of()),
                strips,
                settings);
    }

    private List<CropAhead> futures() {
        List<CropAhead> futures = new ArrayList<>();
        for (int shift = -spread_d; shift <= spread_d; shift++) {
            futures.add(ahead(VT.plusDays(shift), (190 + 5 * shift) * BU));
        }
        return futures;
    }

    public static CropAhead ahead(LocalDate vt, double yield_kgHa) {
        return new CropAhead(
                yield_kgHa,
                vt.minusDays(25),
                vt,
                vt.plusDays(2),
                vt.plusDays(12),
                vt.plusDays(20),
                vt.plusDays(28),
                vt.plusDays(42));
    }

    public static SiteFacts site(double rating, PreviousCrop before, Optional<WeatherRisk> weather) {
        return facts(rating, before, 0.2, false, false, false, 190 * BU, weather, false);
    }

    /** Alike against and after every disease. */
    public static SiteFacts facts(
            double rating,
            PreviousCrop before,
            double residue,
            boolean wet,
            boolean late,
            boolean history,
            double goal_kgHa,
            Optional<WeatherRisk> weather,
            boolean drought) {
        Map<Disease, WeatherRisk> each = new EnumMap<>(Disease.class);
        weather.ifPresent(w -> List.of(Disease.values()).forEach(d -> each.put(d, w)));
        Set<Disease> known = history ? Set.of(Disease.values()) : Set.of();
        return new SiteFacts(
                new DiseaseFacts(rating, Map.of(), known, wet), before, residue, late, goal_kgHa, each, drought);
    }

    /** A susceptible hybrid after corn, short of water or not. */
    static SiteFacts susceptible(boolean dry) {
        return facts(3, PreviousCrop.CORN, .2, false, false, false, 190 * BU, Optional.of(WeatherRisk.MODERATE), dry);
    }

    public static LesionSighting counted(Disease disease, int of100) {
        return new LesionSighting(
                VT.minusDays(2),
                Optional.of(disease),
                OptionalInt.of(-2),
                Optional.of(new Incidence(of100, 100)),
                Double.NaN);
    }

    public static LesionSighting severity(Disease disease, double share) {
        return new LesionSighting(VT.minusDays(2), Optional.of(disease), OptionalInt.of(0), Optional.empty(), share);
    }

    /** A premix without surfactant at tassel, all costs in $/ac. */
    public static ProtectionOption fungicide(double product_usdAc, double pass_usdAc) {
        return fungicide(VT.plusDays(3), FungicideKind.DMI_QOI, false, product_usdAc, pass_usdAc);
    }

    public static ProtectionOption fungicide(
            LocalDate date, FungicideKind kind, boolean surfactant, double product_usdAc, double pass_usdAc) {
        return new ProtectionOption(
                date,
                Placement.OVER_THE_TOP,
                Optional.of(new Fungicide("Demo fungicide", kind, product_usdAc / Units.HA_PER_AC)),
                Optional.empty(),
                surfactant,
                pass_usdAc / Units.HA_PER_AC,
                0,
                0);
    }

    /** The insecticide of the next method by itself. */
    static ProtectionOption insecticide(LocalDate date, double pass_usdAc) {
        ProtectionOption both =
                with(fungicide(date, FungicideKind.DMI_QOI, false, 22, pass_usdAc), Insecticide.Reach.SELECTIVE, "");
        return new ProtectionOption(
                date, both.placement(), Optional.empty(), both.insecticide(), false, both.passCost_usdHa(), 0, 0);
    }

    public static ProtectionOption with(ProtectionOption o, Insecticide.Reach reach, String reason) {
        return new ProtectionOption(
                o.date(),
                o.placement(),
                o.fungicide(),
                Optional.of(new Insecticide("Demo insecticide", reach, 6 / Units.HA_PER_AC, reason)),
                o.surfactant(),
                o.passCost_usdHa(),
                o.trackShare(),
                o.injuryShare());
    }

    public static Zone zone() {
        return new Zone(
                ZoneName.of("Home", ""),
                40,
                new Zone.Planting("corn", LocalDate.parse("2023-05-01"), Hybrid.ofMaturity(108), 8, 0.76, 190 * BU),
                new Zone.Land(soil(), Drainage.TILED, Double.NaN),
                new Zone.Seedbed(PreviousCrop.SOYBEAN, Tillage.NONE, 0.2),
                DiseaseFacts.NOT_GIVEN);
    }

    private static SoilProfile soil() {
        double nan = Double.NaN;
        Horizon horizon = new Horizon(0, 1500, 30, 25, 3.5, 6.5, nan, Horizon.Measured.NOT_GIVEN);
        return SoilProfile.of(List.of(horizon), "test", new ArrayList<>());
    }
}
