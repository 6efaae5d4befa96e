// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.desk;

import java.time.LocalDate;
import org.earleaf.farm.Farm;

/** Makes the answers for a farm on a day; with hindsight it may look at weather after that day. */
public interface DayMaker {
    FarmDay day(Farm farm, LocalDate on, boolean hindsight);
}
