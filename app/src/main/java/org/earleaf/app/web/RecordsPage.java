// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import org.earleaf.app.web.view.RecordsView;
import org.earleaf.record.Chain;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** What has been filed, and whether it still stands as it was filed. */
@Controller
class RecordsPage {
    private final Desk desk;

    RecordsPage(Desk desk) {
        this.desk = desk;
    }

    @GetMapping("/records")
    String records(Model model) {
        model.addAttribute("view", RecordsView.of(desk.notebook().records()));
        return "records";
    }

    @GetMapping("/records/{number}")
    String record(@PathVariable String number, Model model) {
        Chain.Entry entry = desk.notebook()
                .findRecord(number)
                .orElseThrow(() -> new Faults.NotHere("There is no record \"" + number + "\"."));
        model.addAttribute(
                "view",
                RecordsView.one(
                        entry, desk.notebook().records(), desk.today().farm().timeZone()));
        return "record";
    }
}
