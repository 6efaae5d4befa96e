// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.words.Words.tell;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.app.store.Catches.Caught;
import org.earleaf.app.words.Words;
import org.earleaf.entry.Ranges;
import org.earleaf.entry.SetupEntry;
import org.earleaf.farm.Farm;
import org.earleaf.rig.CatchTest;
import org.earleaf.rig.FlowMath;
import org.earleaf.rig.Liquid;
import org.earleaf.rig.NozzleSize;
import org.earleaf.units.Said;
import org.jspecify.annotations.Nullable;

/**
 * A catch test as it stands in the form.
 *
 * @param caught what each outlet gave, one number after the other
 */
public record CatchForm(
        @Nullable String rig,
        @Nullable String size,
        @Nullable String pressure,
        @Nullable String liquid,
        @Nullable String seconds,
        @Nullable String unit,
        @Nullable String caught,
        @Nullable String person) {
    static CatchForm empty(String person, boolean metric) {
        return new CatchForm("", "", metric ? "275 kPa" : "40 psi", "water", "30", metric ? "mL" : "fl oz", "", person);
    }

    Caught caught(Farm farm, Instant now) {
        String machine = SetupEntry.rig(farm.rigs(), ReadingForm.text(rig)).name();

        NozzleSize nozzle = NozzleSize.parse(ReadingForm.text(size), Said.of("where.nozzle-size"));
        double pressure_Pa = Ranges.OUTLET_PRESSURE.read(ReadingForm.text(pressure), "pressure");
        Liquid caughtLiquid = Liquid.parse(ReadingForm.text(liquid), Said.of("where.liquid"));
        double rated_m3s = FlowMath.flowAt_m3s(nozzle.rated_m3s(), pressure_Pa, caughtLiquid.densityFactor());
        double time_s = Ranges.CATCH_TIME.read(ReadingForm.text(seconds), "seconds");
        List<Double> flows = new ArrayList<>();
        for (String each : ReadingForm.text(caught).split("[\\s;]+")) {
            double volume_m3 = Ranges.CATCH_VOLUME.read(
                    each, ReadingForm.text(unit), tell("page.catch.outlet", "value", flows.size() + 1));
            flows.add(CatchTest.flow_m3s(volume_m3, time_s));
        }
        String outlet = Words.here()
                .say(
                        "catch.outlet",
                        "size",
                        nozzle.said(),
                        "pressure",
                        ReadingForm.text(pressure),
                        "liquid",
                        caughtLiquid.name());
        return new Caught(
                machine, now, ReadingForm.text(person), outlet, rated_m3s, flows, caughtLiquid.density_kgM3());
    }
}
