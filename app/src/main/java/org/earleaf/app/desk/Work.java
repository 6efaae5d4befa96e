// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.desk;

import java.util.List;
import org.earleaf.brief.Brief;
import org.earleaf.decide.NitrogenOptions;
import org.earleaf.decide.Option;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Outlook;
import org.earleaf.week.Week;

/** Works out the answers for a farm on a day, anew each time. */
public interface Work {
    NitrogenOptions.Answer answer(Zone zone);

    Outlook outlook(Zone zone);

    Outlook outlookWith(Zone zone, Option option);

    Brief brief(List<NitrogenOptions.Answer> answers, Week week);

    /** @param told the plan that drivers hold; empty: none */
    Week week(List<NitrogenOptions.Answer> answers, List<Week.Told> told, Week.Search search);
}
