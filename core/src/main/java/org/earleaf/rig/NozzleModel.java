// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.earleaf.label.DropletClass;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * A nozzle of the farm's with the droplet classes that its maker's sheet names at each pressure, as a person entered
 * them. A class is never derived from a size: it is relative to reference nozzles on the same instrument (ASABE S572.3,
 * ISO 25358:2018).
 *
 * @param classes class by pressure [Pa]; more pressure is never coarser
 */
public record NozzleModel(String name, NozzleSize size, NavigableMap<Double, DropletClass> classes) {
    public NozzleModel {
        classes = Collections.unmodifiableNavigableMap(new TreeMap<>(classes));
        List<Problem> problems = new ArrayList<>();
        if (classes.isEmpty()) {
            problems.add(Problem.of("nozzle.no-class", Said.text(name), Said.of("found.no-class")));
        }
        Map.Entry<Double, DropletClass> before = null;
        for (Map.Entry<Double, DropletClass> at : classes.entrySet()) {
            if (before != null && at.getValue().compareTo(before.getValue()) > 0) {
                problems.add(Problem.of(
                        "nozzle.coarser",
                        Said.text(name),
                        Said.of(
                                "found.coarser",
                                "class",
                                at.getValue().name(),
                                "pressure",
                                FlowPart.PRESSURE.measured(at.getKey()),
                                "classBefore",
                                before.getValue().name(),
                                "pressureBefore",
                                FlowPart.PRESSURE.measured(before.getKey()))));
            }
            before = at;
        }
        if (!problems.isEmpty()) {
            throw new EarleafException(problems);
        }
    }

    /**
     * Class at a pressure: that of the nearest entered pressure that is not lower, which is the finer side; outside what
     * was entered it is not known.
     */
    public Optional<DropletClass> at(double pressure_Pa) {
        boolean below = pressure_Pa < classes.firstKey();
        return below
                ? Optional.empty()
                : Optional.ofNullable(classes.ceilingEntry(pressure_Pa)).map(Map.Entry::getValue);
    }

    /** Pressures at which the class lies between two, both included; empty when it does at none. */
    Optional<Pressures> within(DropletClass finest, DropletClass coarsest) {
        double low_Pa = Double.NaN;
        double high_Pa = Double.NaN;
        double before_Pa = classes.firstKey();
        for (Map.Entry<Double, DropletClass> at : classes.entrySet()) {
            boolean serves =
                    at.getValue().compareTo(finest) >= 0 && at.getValue().compareTo(coarsest) <= 0;
            if (serves) {
                low_Pa = Double.isNaN(low_Pa) ? before_Pa : low_Pa;
                high_Pa = at.getKey();
            }
            before_Pa = at.getKey();
        }
        return Double.isNaN(low_Pa) ? Optional.empty() : Optional.of(new Pressures(low_Pa, high_Pa));
    }

    /** From one pressure to another. */
    record Pressures(double low_Pa, double high_Pa) {}
}
