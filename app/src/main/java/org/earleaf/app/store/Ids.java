// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import com.fasterxml.uuid.Generators;
import com.fasterxml.uuid.impl.TimeBasedEpochGenerator;

/** Makes ids of what is made here: UUIDs of version 7 (RFC 9562), which sort by the time at which they were made. */
public final class Ids {
    private static final TimeBasedEpochGenerator MADE = Generators.timeBasedEpochGenerator();

    private Ids() {}

    public static String next() {
        return MADE.generate().toString();
    }
}
