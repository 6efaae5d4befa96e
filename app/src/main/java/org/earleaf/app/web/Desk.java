// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.words.Words.tell;

import java.util.List;
import java.util.Optional;
import org.earleaf.app.desk.Days;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.desk.Notebook;
import org.earleaf.app.desk.Standing;
import org.earleaf.app.store.LoadStore;
import org.earleaf.app.store.LoadStore.Kept;
import org.earleaf.app.web.view.Places;
import org.earleaf.app.web.view.TankView;
import org.earleaf.field.Zone;
import org.earleaf.load.Calibrated;
import org.earleaf.load.TankLoad;
import org.earleaf.units.Said;
import org.earleaf.week.WeekChange;

/**
 * What every page works with: the farm by day, and the book that things are written in.
 *
 * @param numbers held while a load is numbered and kept
 */
record Desk(Days days, Notebook notebook, Object numbers) {
    Desk(Days days, Notebook notebook) {
        this(days, notebook, new Object());
    }

    /** Today's farm for a page: it waits a little for an answer, then {@link NotYet}. */
    FarmDay today() {
        return new PatientDay(days.day(days.today()), PatientDay.until());
    }

    /** Asks for the week as it stands after a change. */
    Standing.Asked week(WeekChange change) {
        return new Standing.Asked(change, notebook.handed().findNewest());
    }

    /** Number of the next load; the store refuses one that is taken. */
    String nextLoad() {
        return String.valueOf(notebook.loads().all().size() + 1);
    }

    /** The zone that an address names; refused with the list of fields when there is none. */
    Zone zone(FarmDay day, String place) {
        return Places.of(day.farm())
                .find(place)
                .orElseThrow(() -> new Faults.NotHere(tell("page.desk.there-is-no-field-on", "place", place)));
    }

    /** All that a load is looked at with. */
    TankView.Shop shop(FarmDay day, TankLoad load) {
        LoadStore loads = notebook.loads();
        List<Kept> all = loads.all();
        return new TankView.Shop(
                day,
                notebook.jobs().find(load.job()),
                loads.labels(),
                new TankView.Looked(
                        loads.findings(load),
                        loads.quarrels(load),
                        loads.findJar(load),
                        loads.findResidue(load),
                        notebook.waters().findNewest(),
                        lapsed(day, load, all)),
                new TankView.Lots(loads.free(), loads.drawn(load.id())),
                all);
    }

    /** Why the calibration of a load's rig does not hold; empty where it does. */
    Optional<Said> lapsed(FarmDay day, TankLoad load, List<Kept> all) {
        return Calibrated.lapsed(
                load,
                day.farm(),
                notebook.catches(),
                all.stream().map(Kept::load).toList(),
                days.now());
    }

    /** The kept load that an address names; refused when there is none. */
    Kept load(String id) {
        return notebook.loads()
                .find(id)
                .orElseThrow(() -> new Faults.NotHere(tell("page.desk.there-is-no-load-on", "id", id)));
    }
}
