// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.util.Optional;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.view.CalendarView;
import org.earleaf.app.web.view.PlanAsked;
import org.earleaf.week.Week;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;

/** All fields on one calendar: which field first. */
@Controller
class CalendarPage {
    /** The rigs’ week is drawn if it stands; a page waits no longer for it. */
    private static final long GLANCE_MS = 150;

    private final Desk desk;
    private final Weeks weeks;

    CalendarPage(Desk desk, Weeks weeks) {
        this.desk = desk;
        this.weeks = weeks;
    }

    @GetMapping("/calendar")
    String calendar(
            @RequestParam(defaultValue = "weeks") String span,
            @ModelAttribute(name = "format", binding = false) Format format,
            Model model) {
        model.addAttribute("view", CalendarView.of(desk.today(), "season".equals(span), week(), format));
        return "calendar";
    }

    private Optional<Week> week() {
        return weeks.find(PlanAsked.NOTHING, GLANCE_MS).map(Weeks.Standing::now);
    }
}
