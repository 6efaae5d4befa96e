// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.earleaf.farm.Farm;
import org.earleaf.farm.ProductKind;
import org.earleaf.field.Disease;
import org.earleaf.field.Pass;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Baseline;
import org.earleaf.outlook.ZoneEnsemble;
import org.earleaf.pressure.ProtectionAssumption;
import org.earleaf.pressure.ProtectionCase;
import org.earleaf.pressure.ProtectionSettings;
import org.earleaf.pressure.Sightings;
import org.earleaf.pressure.SiteFacts;
import org.earleaf.pressure.WeatherRisk;
import org.earleaf.pressure.WeatherRisks;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Daily;

/** What protection needs to know of a zone on a day, gathered from farm and futures. */
final class ProtectionGround {
    private static final int WEEK = 7;
    /** The weather ahead that tells of a disease's risk, too. */
    private static final int FORECAST_D = 2;

    private final ZoneEnsemble futures;
    private final Baseline base;
    private final ProtectionSettings settings;

    ProtectionGround(ZoneEnsemble futures, Baseline base, ProtectionSettings settings) {
        this.futures = futures;
        this.base = base;
        this.settings = settings;
    }

    ProtectionCase facts() {
        Farm farm = futures.farm();
        Zone zone = futures.zone();
        LocalDate on = futures.on();
        return new ProtectionCase(
                zone.label(),
                on,
                base.stages()
                        .ahead(
                                base.yields_kgHa(),
                                base.trace(),
                                futures.season().setup().calendar().silk()),
                site(),
                zone.planting().hybrid().relativeMaturity_d(),
                new ProtectionCase.SoFar(
                        Sightings.lesions(farm.readings(), zone, on, settings),
                        Sightings.aphids(farm.readings(), zone, on, settings),
                        made(farm, zone, on)),
                farm.prices(),
                Optional.empty(),
                settings);
    }

    /** Days of fungicide passes of this season. */
    private static List<LocalDate> made(Farm farm, Zone zone, LocalDate on) {
        return farm.passes().stream()
                .filter(p -> p.isOn(zone) && p.state() == Pass.State.MADE)
                .filter(p -> !p.date().isBefore(zone.planted()) && !p.date().isAfter(on))
                .filter(p -> isFungicide(farm, p))
                .map(Pass::date)
                .sorted()
                .toList();
    }

    /** Days for which a fungicide pass is planned. */
    static List<LocalDate> planned(Farm farm, Zone zone, LocalDate on) {
        return farm.passes().stream()
                .filter(p -> p.isOn(zone)
                        && p.state() == Pass.State.PLANNED
                        && !p.date().isBefore(on))
                .filter(p -> isFungicide(farm, p))
                .map(Pass::date)
                .sorted()
                .toList();
    }

    private static boolean isFungicide(Farm farm, Pass pass) {
        return farm.findProduct(pass.product())
                .filter(p -> p.kind() == ProductKind.FUNGICIDE)
                .isPresent();
    }

    private SiteFacts site() {
        Zone zone = futures.zone();
        boolean late = zone.planted().getDayOfYear() >= settings.of(ProtectionAssumption.LATE_PLANTING);
        return new SiteFacts(
                zone.disease(),
                zone.seedbed().previousCrop(),
                futures.season().setup().lastCrop().cover(),
                late,
                zone.planting().yieldGoal_kgHa(),
                weather(),
                isDry());
    }

    private Map<Disease, WeatherRisk> weather() {
        LocalDate until = futures.on().plusDays(FORECAST_D);
        return WeatherRisks.of(
                futures.farm().weather().hours(),
                until.atStartOfDay(),
                base.trace().isClosed(base.trace().day(futures.on())),
                settings);
    }

    private boolean isDry() {
        SeasonTrace trace = base.trace();
        int today = trace.day(futures.decisionDay());
        double sum = 0;
        int days = 0;
        for (int day = Math.max(0, today - WEEK); day < today; day++) {
            sum += trace.at(day, Daily.WATER_FACTOR);
            days++;
        }
        return days > 0 && sum / days < settings.of(ProtectionAssumption.DRY_CROP);
    }
}
