// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Placement;
import org.earleaf.field.Purpose;

/**
 * One thing that could be done to a zone.
 *
 * @param worth over the futures, with what may follow it
 * @param waitCost_usdHaDay what waiting one more day costs [$/ha/d]
 * @param why reasons that render to sentences
 * @param then the pass that may follow it; empty when none adds to its worth or none was looked for
 * @param spray of a pass against disease or insects; empty for nitrogen
 */
public record Option(
        FieldPart part,
        Purpose kind,
        LocalDate date,
        Application application,
        Worth worth,
        double waitCost_usdHaDay,
        List<Reason> why,
        Optional<FollowUp> then,
        Optional<Spray> spray) {
    /**
     * What is put on, how and by what.
     *
     * @param nitrogen_kgHa nitrogen put on [kg N/ha]
     * @param productRate amount of product [L/ha for liquids, kg/ha for dry]
     * @param liquid whether productRate is litres
     * @param rig name of the rig
     */
    public record Application(
            String product,
            Placement placement,
            double nitrogen_kgHa,
            double productRate,
            boolean liquid,
            String rig) {}

    public Option {
        why = List.copyOf(why);
    }

    public String field() {
        return part.field();
    }

    public String zone() {
        return part.zone();
    }

    public String product() {
        return application.product();
    }

    public Placement placement() {
        return application.placement();
    }

    public double nitrogen_kgHa() {
        return application.nitrogen_kgHa();
    }

    public double productRate() {
        return application.productRate();
    }

    public boolean liquid() {
        return application.liquid();
    }

    public String rig() {
        return application.rig();
    }

    /** What it is worth with nothing after it. */
    public Worth alone() {
        return then.map(FollowUp::alone).orElse(worth);
    }

    /** The same with what waiting costs and why. */
    Option with(double wait_usdHaDay, List<Reason> reasons) {
        return new Option(part, kind, date, application, worth, wait_usdHaDay, reasons, then, spray);
    }

    /** The same on another day, as a plan has it that drivers hold. */
    public Option on(LocalDate day) {
        return day.equals(date)
                ? this
                : new Option(part, kind, day, application, worth, waitCost_usdHaDay, why, then, spray);
    }

    public boolean isNitrogen() {
        return spray.isEmpty();
    }

    /** Why it may not be advised; empty: it may. */
    public List<Reason> refusals() {
        return spray.map(Spray::refusals).orElse(List.of());
    }

    public boolean mayBeMade() {
        return refusals().isEmpty();
    }
}
