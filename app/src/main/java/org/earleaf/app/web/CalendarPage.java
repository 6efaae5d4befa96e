// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.desk.Standing;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.view.CalendarView;
import org.earleaf.week.Week;
import org.earleaf.week.WeekChange;
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
            Model model,
            HttpServletResponse response) {
        FarmDay today = desk.today();
        Optional<Week> week = today.find(desk.week(WeekChange.NONE)).map(Standing::now);
        if (week.isEmpty()) {
            Waits.lookAgain(response);
        }
        model.addAttribute("view", CalendarView.of(today, "season".equals(span), week, format));
        return "calendar";
    }
}
