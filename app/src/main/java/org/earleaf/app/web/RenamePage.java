// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Fields, rigs and products are called otherwise; the forms stand on their pages. */
@Controller
class RenamePage {
    private final Desk desk;

    RenamePage(Desk desk) {
        this.desk = desk;
    }

    @PostMapping("/fields/rename")
    String field(@RequestParam String name, @RequestParam String other) {
        desk.notebook().renameField(name, other);
        return "redirect:/fields";
    }

    @PostMapping("/rigs/rename")
    String rig(@RequestParam String name, @RequestParam String other) {
        desk.notebook().renameRig(name, other);
        return "redirect:/rigs";
    }

    @PostMapping("/shelf/rename")
    String product(@RequestParam String name, @RequestParam String other) {
        desk.notebook().renameProduct(name, other);
        return "redirect:/shelf";
    }
}
