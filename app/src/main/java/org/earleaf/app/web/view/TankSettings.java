// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.words.Amounts;
import org.earleaf.farm.Rig;
import org.earleaf.field.Zone;
import org.earleaf.load.LoadGround;
import org.earleaf.load.LoadSteps;
import org.earleaf.load.TankLoad;
import org.earleaf.rig.FlowPart;
import org.earleaf.rig.PassNeed;
import org.earleaf.rig.RigSetup;
import org.earleaf.rig.Setup;
import org.earleaf.units.EarleafException;

/** How the rig is set for a kept load. */
final class TankSettings {
    private TankSettings() {}

    static List<LoadView.Setting> of(TankLoad load, TankView.Shop shop, Format format) {
        List<LoadView.Setting> all = new ArrayList<>();
        String volume = Amounts.volume(load.volume_m3(), format.isMetric());
        int gap = volume.indexOf(' ');
        all.add(new LoadView.Setting(
                tell("page.tank-settings.tank-to"), volume.substring(0, gap), volume.substring(gap + 1), ""));
        all.add(LoadView.setting(tell("page.tank-settings.rate"), FlowPart.RATE, load.rate_m3m2(), 1, "", format));
        answer(load, shop).flatMap(a -> a.setups().stream().findFirst()).ifPresent(s -> set(all, s, format));
        return all;
    }

    private static void set(List<LoadView.Setting> all, Setup s, Format format) {
        String range = tell(
                "page.tank-settings.to",
                "figure",
                LoadView.figure(FlowPart.SPEED, s.speeds().slowest_ms(), 1, format),
                "figure2",
                LoadView.figure(FlowPart.SPEED, s.speeds().fastest_ms(), 1, format));
        all.add(LoadView.setting(
                tell("page.tank-settings.speed"), FlowPart.SPEED, s.setting().speed_ms(), 1, range, format));
        all.add(LoadView.setting(
                tell("page.tank-settings.pressure"),
                FlowPart.PRESSURE,
                s.setting().pressure_Pa(),
                0,
                tell("page.tank-settings.at-the-outlet"),
                format));
        all.add(LoadView.setting(
                tell("page.tank-settings.each-outlet"),
                FlowPart.FLOW,
                s.setting().flow_m3s(),
                2,
                format.words().say(s.outletSaid()),
                format));
    }

    /** What to mind in setting it, or why it cannot be set. */
    static List<String> notes(TankLoad load, TankView.Shop shop, Format format) {
        Optional<RigSetup.Answer> answer = answer(load, shop);
        if (answer.isEmpty()) {
            return List.of();
        }
        if (answer.get().setups().isEmpty()) {
            return answer.get().reasons().stream()
                    .map(r -> format.words().say(r.said()))
                    .toList();
        }
        List<String> notes = new ArrayList<>();
        answer.get()
                .setups()
                .get(0)
                .remarks()
                .forEach(r -> notes.add(format.words().say(r)));
        if (answer.get().setups().get(0).outletsPerRow() == 0) {
            notes.add(format.words().say("setup.weighs-as-water"));
        }
        return notes;
    }

    private static Optional<RigSetup.Answer> answer(TankLoad load, TankView.Shop shop) {
        LoadGround g = load.grounds().get(0);
        Optional<Rig> rig = shop.day().farm().rigs().stream()
                .filter(r -> r.name().equalsIgnoreCase(load.rig()))
                .findFirst();
        Optional<Zone> zone =
                Places.of(shop.day().farm()).find(Places.of(shop.day().farm()).of(g.field(), g.zone()));
        if (rig.isEmpty() || zone.isEmpty() || shop.job().isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(RigSetup.find(new PassNeed(
                    rig.get(),
                    LoadSteps.liquid(load, shop.day().farm()),
                    load.rate_m3m2(),
                    zone.get().rowSpacing_m(),
                    shop.job().get().placement(),
                    PassNeed.USUAL_NOZZLE_M,
                    load.driving().speed_ms(),
                    Double.NaN)));
        } catch (EarleafException cannot) {
            return Optional.empty();
        }
    }
}
