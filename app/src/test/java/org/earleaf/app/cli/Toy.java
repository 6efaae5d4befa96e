// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.time.LocalDate;
import java.util.List;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.Fixture;
import org.earleaf.brief.Brief;
import org.earleaf.decide.NitrogenOptions;
import org.earleaf.decide.Option;
import org.earleaf.decide.ProtectionAnswer;
import org.earleaf.farm.Farm;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Outlook;
import org.earleaf.week.Week;

/** The fixture's answers for the farm that was asked about. */
record Toy(Farm farm, Fixture day) implements FarmDay {
    @Override
    public LocalDate on() {
        return day.on();
    }

    @Override
    public Brief brief() {
        return day.brief();
    }

    @Override
    public NitrogenOptions.Answer answer(Zone zone) {
        return day.answer(zone);
    }

    @Override
    public Outlook outlook(Zone zone) {
        return day.outlook(zone);
    }

    @Override
    public Outlook outlookWith(Zone zone, Option option) {
        return day.outlookWith(zone, option);
    }

    @Override
    public List<Option> options(Zone zone) {
        return day.options(zone);
    }

    @Override
    public ProtectionAnswer protection(Zone zone) {
        return day.protection(zone);
    }

    @Override
    public Week week(long seed) {
        return day.week(seed);
    }
}
