// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.brief.Brief;
import org.earleaf.decide.Option;
import org.earleaf.decide.ProtectionAnswer;
import org.earleaf.farm.Farm;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Outlook;
import org.earleaf.week.Week;

/** The questions that doors (commands and pages) may ask about a farm on a day; the answers come from core. */
public interface FarmDay {
    /** The farm asked about. */
    Farm farm();

    /** The day asked about. */
    LocalDate on();

    /** What to do today and in the next days, over the whole farm. */
    Brief brief();

    /** Where a zone stands and what lies ahead of it. */
    Outlook outlook(Zone zone);

    /** The season of a zone as it would run with one more option carried out. */
    Outlook outlookWith(Zone zone, Option option);

    /** Every option for the next nitrogen pass of a zone, best first. */
    List<Option> options(Zone zone);

    /** Passes against disease and insects on a zone. */
    ProtectionAnswer protection(Zone zone);

    /** What the rigs do in the next seven days; the same seed gives the same plan. */
    Week week(long seed);

    /** How far the search for the week has come; empty: no plan stands yet. Waits for nothing. */
    default Optional<Week.Progress> progress() {
        return Optional.empty();
    }
}
