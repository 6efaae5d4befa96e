// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.words.Words.tell;

import java.util.Optional;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.view.AssumptionsView;
import org.earleaf.app.web.view.Choice;
import org.earleaf.app.web.view.Figure;
import org.earleaf.app.web.view.LoadView;
import org.earleaf.app.web.view.WhyView;
import org.earleaf.decide.Option;
import org.earleaf.field.Zone;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** What is behind a figure, and everything that is assumed. */
@Controller
class WhyPage {
    private final Desk desk;

    WhyPage(Desk desk) {
        this.desk = desk;
    }

    @GetMapping("/why/{key}")
    String why(
            @PathVariable String key,
            @RequestParam(defaultValue = "") String place,
            @RequestParam(defaultValue = "") String choice,
            @ModelAttribute(name = "format", binding = false) Format format,
            Model model) {
        Figure figure = Figure.find(key)
                .orElseThrow(() -> new Faults.NotHere(tell("page.why.there-is-no-figure-that", "key", key)));
        FarmDay today = desk.today();
        model.addAttribute(
                "view", place.isEmpty() ? WhyView.general(today, figure) : of(today, figure, place, choice, format));
        return "why";
    }

    private WhyView of(FarmDay today, Figure figure, String place, String choice, Format format) {
        Zone zone = desk.zone(today, place);
        return zone.isCorn()
                ? WhyView.of(today, zone, figure, choice(today, zone, figure, choice), format)
                : WhyView.general(today, figure);
    }

    /** The one that an address names; without a name the one to make, of the kind that is asked about. */
    private static Optional<Option> choice(FarmDay today, Zone zone, Figure figure, String key) {
        if (key.isEmpty() && figure == Figure.SPRAY) {
            return today.protection(zone).proposed();
        }
        Optional<Option> nitrogen = LoadView.find(today, zone, key);
        return nitrogen.isPresent() || key.isEmpty()
                ? nitrogen
                : Choice.find(today.protection(zone).options(), key);
    }

    @GetMapping("/assumptions")
    String assumptions(@ModelAttribute(name = "format", binding = false) Format format, Model model) {
        model.addAttribute("view", AssumptionsView.of(desk.today(), format));
        return "assumptions";
    }
}
