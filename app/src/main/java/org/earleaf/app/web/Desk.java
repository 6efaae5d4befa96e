// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import org.earleaf.app.FarmDay;

/** What every page works with: the farm by day, and the book that things are written in. */
record Desk(Days days, Notebook notebook) {
    FarmDay today() {
        return days.day(days.today());
    }
}
