// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.earleaf.field.NotProposed;
import org.earleaf.field.Purpose;
import org.earleaf.field.Reading;
import org.earleaf.units.Said;

/**
 * What is to be said of a zone's passes against disease and insects.
 *
 * @param options those that may be made first, the best first; then those that may not, with why
 * @param proposed the best of the day to go; empty when no day is worth it or nothing may be made
 * @param leftOut kinds of pass that are not proposed, and why
 * @param readings scouting that is due
 */
public record ProtectionAnswer(
        List<Option> options, Optional<Option> proposed, List<LeftOut> leftOut, List<Scouting> readings) {
    public ProtectionAnswer {
        options = List.copyOf(options);
        leftOut = List.copyOf(leftOut);
        readings = List.copyOf(readings);
    }

    /** Of the same products, placement and rig only the best day, in the order of the options. */
    public List<Option> bestOfEach() {
        Map<String, Option> best = new LinkedHashMap<>();
        options.forEach(o -> best.putIfAbsent(o.product() + "|" + o.placement() + "|" + o.rig(), o));
        return List.copyOf(best.values());
    }

    /**
     * A kind of pass that is not proposed.
     *
     * @param answer what that means
     * @param soon whether the morning speaks of it: the crop is near tassel or past it, or something was seen
     */
    public record LeftOut(Purpose kind, NotProposed answer, Said reason, boolean soon) {}

    /**
     * A count that would be worth the walk.
     *
     * @param kind lesions or insects
     * @param worth_usdHa at most; NaN: not computed
     */
    public record Scouting(Reading.Kind kind, Said because, double worth_usdHa) {}
}
