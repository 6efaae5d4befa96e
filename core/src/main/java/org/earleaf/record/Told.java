// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import java.time.Instant;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What only a person knows of a pass made.
 *
 * @param location where the field lies, as the rule allows; empty: not told
 * @param registration number on the product's label where the shelf does not say it; empty: not told
 * @param area ground treated; empty: the whole field or zone
 * @param amount total of the product; empty: rate times area
 * @param extras wind, temperature, note ...
 * @param filed instant of filing
 */
public record Told(
        Applicator applicator,
        String location,
        String registration,
        String rig,
        Optional<Amount> area,
        Optional<Amount> amount,
        Hours hours,
        SortedMap<String, String> extras,
        Instant filed) {
    public Told {
        extras = Collections.unmodifiableSortedMap(new TreeMap<>(extras));
    }

    /** Nothing more than who did it. */
    public static Told by(String person, Instant filed) {
        return new Told(
                Applicator.onOwnGround(person, ""),
                "",
                "",
                "",
                Optional.empty(),
                Optional.empty(),
                Hours.NOT_TOLD,
                new TreeMap<>(),
                filed);
    }
}
