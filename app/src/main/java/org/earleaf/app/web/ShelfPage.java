// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.words.Words.tell;

import org.earleaf.app.store.LoadStore;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.view.ShelfView;
import org.earleaf.label.LabelEntry;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Products with their lots and labels, and the second look at a label by another person. */
@Controller
class ShelfPage {
    private final Desk desk;

    ShelfPage(Desk desk) {
        this.desk = desk;
    }

    @GetMapping("/shelf")
    String shelf(@ModelAttribute(name = "format", binding = false) Format format, Model model) {
        LoadStore loads = desk.notebook().loads();
        model.addAttribute("view", ShelfView.of(desk.today().farm(), loads.labels(), loads.free(), format));
        return "shelf";
    }

    /** The label was held against the entry by another person than the one who made it. */
    @PostMapping("/shelf/look")
    String look(@RequestParam String product, @RequestParam String crop, @RequestParam String person) {
        LoadStore loads = desk.notebook().loads();
        LabelEntry waiting = loads.labels()
                .findWaiting(product, crop)
                .orElseThrow(() ->
                        new Faults.NotHere(tell("page.shelf.no-label-of-on-waits", "product", product, "crop", crop)));
        loads.keep(waiting.checkedBy(person, desk.days().now()));
        return "redirect:/shelf";
    }
}
