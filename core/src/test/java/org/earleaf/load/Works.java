// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.time.LocalDate;
import java.util.Optional;
import org.earleaf.farm.DropletClass;
import org.earleaf.units.Units;

/** A load like another but for one fact. */
final class Works {
    private Works() {}

    static LabelWork stage(LabelWork w, double stage) {
        return new LabelWork(
                w.job(),
                w.place(),
                w.crop(),
                w.zone_ha(),
                w.area_ha(),
                w.date(),
                w.cropBegins(),
                stage,
                w.height_m(),
                w.harvest(),
                w.carrier_LHa(),
                w.nitrogenCarrier(),
                w.byAir(),
                w.droplets(),
                w.boom_m(),
                w.speed_ms(),
                w.water_m(),
                w.sensitive_m(),
                w.certified(),
                w.parts());
    }

    static LabelWork carrier(LabelWork w, double galAc) {
        return new LabelWork(
                w.job(),
                w.place(),
                w.crop(),
                w.zone_ha(),
                w.area_ha(),
                w.date(),
                w.cropBegins(),
                w.stage(),
                w.height_m(),
                w.harvest(),
                galAc * Units.LHA_PER_GALAC,
                w.nitrogenCarrier(),
                w.byAir(),
                w.droplets(),
                w.boom_m(),
                w.speed_ms(),
                w.water_m(),
                w.sensitive_m(),
                w.certified(),
                w.parts());
    }

    static LabelWork carried(LabelWork w, boolean uan, boolean air) {
        return new LabelWork(
                w.job(),
                w.place(),
                w.crop(),
                w.zone_ha(),
                w.area_ha(),
                w.date(),
                w.cropBegins(),
                w.stage(),
                w.height_m(),
                w.harvest(),
                w.carrier_LHa(),
                uan,
                air,
                w.droplets(),
                w.boom_m(),
                w.speed_ms(),
                w.water_m(),
                w.sensitive_m(),
                w.certified(),
                w.parts());
    }

    static LabelWork droplets(LabelWork w, Optional<DropletClass> c) {
        return new LabelWork(
                w.job(),
                w.place(),
                w.crop(),
                w.zone_ha(),
                w.area_ha(),
                w.date(),
                w.cropBegins(),
                w.stage(),
                w.height_m(),
                w.harvest(),
                w.carrier_LHa(),
                w.nitrogenCarrier(),
                w.byAir(),
                c,
                w.boom_m(),
                w.speed_ms(),
                w.water_m(),
                w.sensitive_m(),
                w.certified(),
                w.parts());
    }

    static LabelWork boom(LabelWork w, double boom_m) {
        return new LabelWork(
                w.job(),
                w.place(),
                w.crop(),
                w.zone_ha(),
                w.area_ha(),
                w.date(),
                w.cropBegins(),
                w.stage(),
                w.height_m(),
                w.harvest(),
                w.carrier_LHa(),
                w.nitrogenCarrier(),
                w.byAir(),
                w.droplets(),
                boom_m,
                w.speed_ms(),
                w.water_m(),
                w.sensitive_m(),
                w.certified(),
                w.parts());
    }

    static LabelWork water(LabelWork w, double water_m) {
        return new LabelWork(
                w.job(),
                w.place(),
                w.crop(),
                w.zone_ha(),
                w.area_ha(),
                w.date(),
                w.cropBegins(),
                w.stage(),
                w.height_m(),
                w.harvest(),
                w.carrier_LHa(),
                w.nitrogenCarrier(),
                w.byAir(),
                w.droplets(),
                w.boom_m(),
                w.speed_ms(),
                water_m,
                w.sensitive_m(),
                w.certified(),
                w.parts());
    }

    static LabelWork harvest(LabelWork w, Optional<LocalDate> harvest) {
        return new LabelWork(
                w.job(),
                w.place(),
                w.crop(),
                w.zone_ha(),
                w.area_ha(),
                w.date(),
                w.cropBegins(),
                w.stage(),
                w.height_m(),
                harvest,
                w.carrier_LHa(),
                w.nitrogenCarrier(),
                w.byAir(),
                w.droplets(),
                w.boom_m(),
                w.speed_ms(),
                w.water_m(),
                w.sensitive_m(),
                w.certified(),
                w.parts());
    }

    static LabelWork uncertified(LabelWork w) {
        return new LabelWork(
                w.job(),
                w.place(),
                w.crop(),
                w.zone_ha(),
                w.area_ha(),
                w.date(),
                w.cropBegins(),
                w.stage(),
                w.height_m(),
                w.harvest(),
                w.carrier_LHa(),
                w.nitrogenCarrier(),
                w.byAir(),
                w.droplets(),
                w.boom_m(),
                w.speed_ms(),
                w.water_m(),
                w.sensitive_m(),
                false,
                w.parts());
    }

    static LabelWork crop(LabelWork w, String crop) {
        return new LabelWork(
                w.job(),
                w.place(),
                crop,
                w.zone_ha(),
                w.area_ha(),
                w.date(),
                w.cropBegins(),
                w.stage(),
                w.height_m(),
                w.harvest(),
                w.carrier_LHa(),
                w.nitrogenCarrier(),
                w.byAir(),
                w.droplets(),
                w.boom_m(),
                w.speed_ms(),
                w.water_m(),
                w.sensitive_m(),
                w.certified(),
                w.parts());
    }
}
