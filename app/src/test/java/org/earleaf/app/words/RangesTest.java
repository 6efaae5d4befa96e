// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.util.HashSet;
import java.util.Set;
import org.earleaf.entry.Allowed;
import org.earleaf.entry.Ranges;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;

/** Every number with a range has a name for people, and bounds in order. */
class RangesTest {
    @Test
    void every_range_is_named_and_runs_upwards() throws IllegalAccessException {
        Set<String> names = new HashSet<>();
        for (Field field : Ranges.class.getFields()) {
            Allowed allowed = (Allowed) field.get(null);
            assertThat(Words.US.say(Said.of(allowed.what()))).isNotBlank().isNotEqualTo(allowed.what());
            assertThat(allowed.least()).isLessThanOrEqualTo(allowed.low());
            assertThat(allowed.low()).isLessThan(allowed.high());
            assertThat(allowed.high()).isLessThanOrEqualTo(allowed.most());
            names.add(allowed.what());
        }
        assertThat(names).hasSizeGreaterThan(70);
    }
}
