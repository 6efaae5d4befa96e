// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import org.earleaf.app.FarmDay;
import org.earleaf.app.store.LoadStore.Kept;
import org.earleaf.app.web.view.Places;
import org.earleaf.field.Zone;

/**
 * What every page works with: the farm by day, and the book that things are written in.
 *
 * @param numbers held while a load is numbered and kept
 */
record Desk(Days days, Notebook notebook, Object numbers) {
    Desk(Days days, Notebook notebook) {
        this(days, notebook, new Object());
    }

    FarmDay today() {
        return days.day(days.today());
    }

    /** Number of the next load; the store refuses one that is taken. */
    String nextLoad() {
        return String.valueOf(notebook.loads().all().size() + 1);
    }

    /** The zone that an address names; refused with the list of fields when there is none. */
    Zone zone(FarmDay day, String place) {
        return Places.of(day.farm())
                .find(place)
                .orElseThrow(() -> new Faults.NotHere("There is no field \"" + place + "\" on this farm."));
    }

    /** The kept load that an address names; refused when there is none. */
    Kept load(String id) {
        return notebook.loads()
                .find(id)
                .orElseThrow(() -> new Faults.NotHere("There is no load \"" + id + "\" on this farm."));
    }
}
