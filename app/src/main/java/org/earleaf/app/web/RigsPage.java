// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.view.RigsView;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;

/** The rigs, and how they are set for the passes that are proposed. */
@Controller
class RigsPage {
    private final Desk desk;

    RigsPage(Desk desk) {
        this.desk = desk;
    }

    @GetMapping("/rigs")
    String rigs(@ModelAttribute(name = "format", binding = false) Format format, Model model) {
        model.addAttribute("view", RigsView.of(desk.today(), format));
        return "rigs";
    }
}
