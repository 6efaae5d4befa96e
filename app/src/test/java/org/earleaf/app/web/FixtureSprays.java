// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.decide.Option;
import org.earleaf.decide.ProtectionAnswer;
import org.earleaf.decide.Reason;
import org.earleaf.decide.Spray;
import org.earleaf.decide.SprayMix;
import org.earleaf.decide.Worth;
import org.earleaf.farm.Product;
import org.earleaf.farm.ProductKind;
import org.earleaf.farm.RateUnit;
import org.earleaf.field.FieldPart;
import org.earleaf.field.NotProposed;
import org.earleaf.field.Placement;
import org.earleaf.field.Purpose;
import org.earleaf.field.Zone;
import org.earleaf.label.LabelLimit;
import org.earleaf.label.ProductLabel;
import org.earleaf.label.SprayLabel;
import org.earleaf.pressure.ProtectionAssumption;
import org.earleaf.spray.Ground;
import org.earleaf.spray.SprayHour;
import org.earleaf.spray.SprayHours;
import org.earleaf.spray.SprayJob;
import org.earleaf.spray.SprayTable;
import org.earleaf.units.Said;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherHour;

/** Invented sprays and hours of the fixture. */
final class FixtureSprays {
    private FixtureSprays() {}

    static SprayTable table() {
        List<WeatherHour> hours = new ArrayList<>();
        LocalDateTime from = Fixture.TODAY.atStartOfDay();
        for (int k = 0; k < 48; k++) {
            double day = Math.max(0, Math.sin(Math.PI * (k % 24 - 6) / 14));
            hours.add(new WeatherHour(
                    from.plusHours(k), 18 + 9 * day, 90 - 35 * day, .8 + 3 * day, 2 + 4 * day, 180, 0, .05, .5));
        }
        SprayJob any =
                new SprayJob(SprayJob.Kind.FOLIAR, 2, true, false, SprayLabel.NONE, Ground.of(Ground.Kind.MEDIUM));
        SprayJob unread = new SprayJob(
                SprayJob.Kind.FOLIAR, 2, true, false, SprayLabel.NOT_ENTERED, Ground.of(Ground.Kind.MEDIUM));
        return new SprayTable(
                Optional.empty(),
                List.of(job(hours, any, "", "any spraying"), job(hours, unread, "Mill Eighty", "fungicide")));
    }

    private static SprayTable.Job job(List<WeatherHour> hours, SprayJob job, String field, String kind) {
        List<SprayHour> judged = SprayHours.of(
                hours,
                job,
                new Site(41.8, -93.4, 300),
                ZoneId.of("America/Chicago"),
                hours.get(0).at());
        String product = field.isEmpty() ? "" : "Demo F1";
        String placement = field.isEmpty() ? "" : "over the top";
        return new SprayTable.Job(
                field, "", Said.text(kind), product, placement, "", judged, SprayHours.windows(judged, 1));
    }

    static ProtectionAnswer answer(Zone zone) {
        Option go = option(zone, "Hired high rig", 27, List.of());
        Option not = option(zone, "highboy", -90, List.of(() -> Said.text("highboy: the crop is too tall.")));
        return new ProtectionAnswer(
                List.of(go, not),
                Optional.of(go),
                List.of(new ProtectionAnswer.LeftOut(
                        Purpose.INSECTICIDE, NotProposed.NOT_JUDGED, Said.text("No aphids were counted."), true)),
                List.of());
    }

    static Option option(Zone zone, String rig, double mean, List<Reason> refusals) {
        ProductLabel label = new ProductLabel(
                List.of("11", "3"),
                SprayLabel.NONE,
                LabelLimit.noneStated(),
                LabelLimit.noneStated(),
                LabelLimit.noneStated(),
                LabelLimit.noneStated(),
                Optional.empty(),
                false);
        Product f1 = new Product("Demo F1", "SC", 1.09, 245, "usd/gal", null, "INVENTED-1", "", ProductKind.FUNGICIDE);
        SprayMix mix = new SprayMix("Tassel", 140.3, List.of(new SprayMix.Part(f1, label, 10, RateUnit.FLOZ_AC)));
        return new Option(
                FieldPart.of(zone),
                mix.kind(),
                Fixture.TODAY.plusDays(3),
                new Option.Application(mix.names(), Placement.OVER_THE_TOP, 0, .73, true, rig),
                new Worth(mean, mean - 110, mean + 110, .6, mean - 125, 4.1, 75, 600, Double.NaN),
                3,
                List.of(() -> Said.text("Northern leaf blight on 71 of 100 plants is above the threshold.")),
                Optional.empty(),
                Optional.of(new Spray(mix, refusals, List.of(ProtectionAssumption.EFFICACY))));
    }
}
