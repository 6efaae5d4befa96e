// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import jakarta.servlet.http.HttpServletRequest;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.view.MorningView;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;

/** What to do today and in the next days, over the whole farm. */
@Controller
class MorningPage {
    private final Desk desk;

    MorningPage(Desk desk) {
        this.desk = desk;
    }

    @GetMapping("/")
    String morning(
            @ModelAttribute(name = "format", binding = false) Format format, HttpServletRequest request, Model model) {
        FarmDay today = desk.today();
        model.addAttribute("view", MorningView.of(today, format));
        request.setAttribute(KeptMorning.SHOWN, today.on());
        return "morning";
    }
}
