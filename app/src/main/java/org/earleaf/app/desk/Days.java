// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.desk;

import java.time.Instant;
import java.time.LocalDate;

/** Gives pages the farm as it stands on a day. Answers for the same day and the same facts may be kept and reused. */
public interface Days {
    /** The day that pages open on. */
    LocalDate today();

    FarmDay day(LocalDate on);

    /** What steps and records are stamped with. */
    Instant now();
}
