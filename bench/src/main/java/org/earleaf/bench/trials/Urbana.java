// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.earleaf.exchange.StationFile;
import org.earleaf.field.PreviousCrop;
import org.earleaf.soil.Horizon;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Units;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherFill;

/**
 * Corn of the oldest experimental field of the United States beside the model's, 1985 to 1999: planting day and plants as
 * noted there, weather of the station of the town. Nothing in the model was fitted to it.
 */
final class Urbana {
    private static final String STATION = "USC00118740.txt";
    /** Place of the station from memory, .05 degrees either way. */
    private static final Site SITE = new Site(40.08, -88.24, 220);

    /** One plot of one year [kg/ha]. */
    private record Crop(SiteYear at, double nitrogen, double measured, double modelled) {
        double share() {
            return modelled / measured;
        }
    }

    private final List<Crop> all;

    private Urbana(List<Crop> all) {
        this.all = all;
    }

    /** Empty where the records of the station are not beside the measured corn. */
    static Optional<Urbana> find(Path folder) {
        Path station = folder.resolve("../weather").resolve(STATION);
        if (!Files.exists(station)) {
            return Optional.empty();
        }
        TrialFarm farm = new TrialFarm(
                "urbana",
                SITE,
                soil(),
                WeatherFill.fill(StationFile.read(station), SITE, STATION).series());
        return Optional.of(new Urbana(Rows.read(folder, "urbana-long-term.tsv").stream()
                .filter(row -> !row.text("after").equals("hay"))
                .map(row -> crop(farm, row))
                .toList()));
    }

    private static Crop crop(TrialFarm farm, Rows row) {
        Sowing sown = new Sowing(row.day("planted"), row.number("plants_ac") / Units.M2_PER_AC);
        PreviousCrop after = row.text("after").equals("corn") ? PreviousCrop.CORN : PreviousCrop.SOYBEAN;
        double measured = row.number("yield_bu_ac") * Units.KGHA_PER_BUAC * Units.DRY_SHARE_OF_TRADE_CORN;
        SiteYear at = new SiteYear(farm, sown, after, Measured.flat(measured));
        double nitrogen = Units.kgHa(row.number("n_lb_ac"));
        return new Crop(at, nitrogen, measured, Plots.of(at, nitrogen).grain_kgHa()[0]);
    }

    /** A deep prairie silt loam over silty clay loam as under that town; from memory. */
    private static SoilProfile soil() {
        List<Horizon> horizons = List.of(
                new TrialFarm.Earth(6, 25, 3.2, 1.3).between(0, 460),
                new TrialFarm.Earth(6, 36, 1, 1.4).between(460, 1140),
                new TrialFarm.Earth(15, 24, .4, 1.5).between(1140, 1500));
        return SoilProfile.of(horizons, "urbana", new ArrayList<>());
    }

    void print(Told told) {
        for (boolean corn : new boolean[] {true, false}) {
            String after = corn ? "corn" : "soybean";
            told.title("Urbana 1985 to 1999, after " + after);
            List<Crop> rotation =
                    all.stream().filter(c -> c.at().isAfterCorn() == corn).toList();
            print(
                    told,
                    "f2_urbana_" + after,
                    "200 and 300 lb/ac",
                    rotation.stream().filter(c -> c.nitrogen() > 0).toList());
            print(
                    told,
                    "f1_urbana_zero_" + after,
                    "never fertilised",
                    rotation.stream().filter(c -> c.nitrogen() == 0).toList());
        }
    }

    private static void print(Told told, String key, String what, List<Crop> crops) {
        Clusters years = new Clusters(
                crops.stream().map(c -> String.valueOf(c.at().year())).toList());
        told.line(key + "_level", "F2 level, " + what + ", model over measured", years.mean(of(crops, Crop::share)));
        told.line(
                key + "_r",
                "F2 level over the years, " + what + ", r",
                years.correlation(of(crops, Crop::modelled), of(crops, Crop::measured)));
    }

    private static double[] of(List<Crop> crops, ToDoubleFunction<Crop> what) {
        return crops.stream().mapToDouble(what).toArray();
    }
}
