// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.view.OptionsView;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;

/** What each choice for the next pass of a field is worth. */
@Controller
class OptionsPage {
    private final Desk desk;

    OptionsPage(Desk desk) {
        this.desk = desk;
    }

    @GetMapping("/field/{place}/options")
    String options(
            @PathVariable String place, @ModelAttribute(name = "format", binding = false) Format format, Model model) {
        FarmDay today = desk.today();
        model.addAttribute("view", OptionsView.of(today, desk.zone(today, place), format));
        return "options";
    }
}
