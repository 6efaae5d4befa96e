// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.util.List;
import org.earleaf.app.web.text.Format;
import org.earleaf.rig.FlowPart;
import org.earleaf.rig.RigSetup;
import org.earleaf.rig.Setup;
import org.earleaf.units.Measure;

/**
 * Outlets that serve, the best first, or why none does.
 *
 * @param more how many serve beside those shown
 * @param notes what to mind with the best
 */
public record FoundView(List<Row> rows, int more, List<String> reasons, List<String> notes) {
    public static final FoundView NONE = new FoundView(List.of(), 0, List.of(), List.of());

    private static final int MOST = 8;

    /** One outlet, with what ends its range. */
    public record Row(String outlet, String pressure, String speeds, String binds, String flow) {}

    public boolean isAsked() {
        return !rows.isEmpty() || !reasons.isEmpty();
    }

    public static FoundView of(RigSetup.Answer answer, Format format) {
        List<Setup> setups = answer.setups();
        return new FoundView(
                setups.stream().limit(MOST).map(s -> row(s, format)).toList(),
                setups.size() > MOST ? setups.size() - MOST : 0,
                answer.reasons().stream().map(r -> format.words().say(r.said())).toList(),
                setups.isEmpty()
                        ? List.of()
                        : setups.get(0).remarks().stream()
                                .map(format.words()::say)
                                .toList());
    }

    private static Row row(Setup s, Format format) {
        boolean metric = format.isMetric();
        String speed = FlowPart.SPEED.text(s.setting().speed_ms(), metric);
        return new Row(
                format.words().say(s.outletSaid()),
                tell(
                        "page.found.at",
                        "pressure",
                        FlowPart.PRESSURE.text(s.setting().pressure_Pa(), metric),
                        "speed",
                        speed),
                tell(
                        "page.found.to",
                        "slow",
                        Measure.SPEED.of(s.speeds().slowest_ms()),
                        "fast",
                        Measure.SPEED.of(s.speeds().fastest_ms())),
                format.words()
                        .say(
                                "setup.ends",
                                "slowest",
                                s.speeds().slowestBinds(),
                                "fastest",
                                s.speeds().fastestBinds()),
                FlowPart.FLOW.text(s.setting().flow_m3s(), metric));
    }
}
