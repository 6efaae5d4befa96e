// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.desk;

import java.time.LocalDate;
import java.util.List;
import org.earleaf.brief.Brief;
import org.earleaf.brief.Morning;
import org.earleaf.decide.NitrogenOptions;
import org.earleaf.decide.Option;
import org.earleaf.decide.Outlooks;
import org.earleaf.farm.Farm;
import org.earleaf.farm.WeatherAge;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Outlook;
import org.earleaf.units.SideBySide;
import org.earleaf.week.Week;

/** The answers as core works them out. */
public record CoreWork(Farm farm, LocalDate on, boolean hindsight, SideBySide how) implements Work {
    @Override
    public NitrogenOptions.Answer answer(Zone zone) {
        WeatherAge.check(farm, on);
        return NitrogenOptions.of(farm, zone, on, hindsight, how);
    }

    @Override
    public Outlook outlook(Zone zone) {
        // Where the crop stands is shown, and readings of it are taken, on old weather too; advice is not given on it.
        return Outlooks.of(farm, zone, on, hindsight);
    }

    @Override
    public Outlook outlookWith(Zone zone, Option option) {
        return Outlooks.with(farm, zone, on, hindsight, option);
    }

    @Override
    public Brief brief(List<NitrogenOptions.Answer> answers, Week week) {
        WeatherAge.check(farm, on);
        return Morning.brief(farm, on, answers, week);
    }

    @Override
    public Week week(List<NitrogenOptions.Answer> answers, List<Week.Told> told, Week.Search search) {
        return Week.of(farm, on, answers, told, search);
    }
}
