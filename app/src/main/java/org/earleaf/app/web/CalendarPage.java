// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.view.CalendarView;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;

/** All fields on one calendar: which field first. The rigs’ week is drawn if it stands; the page does not wait for it. */
@Controller
class CalendarPage {
    private final Desk desk;

    CalendarPage(Desk desk) {
        this.desk = desk;
    }

    @GetMapping("/calendar")
    String calendar(
            @RequestParam(defaultValue = "weeks") String span,
            @ModelAttribute(name = "format", binding = false) Format format,
            Model model) {
        model.addAttribute("view", CalendarView.of(desk.today(), "season".equals(span), format));
        return "calendar";
    }
}
