// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.util.List;
import java.util.Map;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.view.PastView;
import org.earleaf.entry.Draft;
import org.earleaf.entry.PastEntry;
import org.earleaf.entry.Place;
import org.earleaf.entry.Plots;
import org.earleaf.field.Zone;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.util.UriComponentsBuilder;

/** The years of a field before this season; the same form stands on the field's page. */
@Controller
class PastPage {
    private final Desk desk;

    PastPage(Desk desk) {
        this.desk = desk;
    }

    @GetMapping("/field/{place}/past")
    ModelAndView past(
            @PathVariable String place, @ModelAttribute(name = "format", binding = false) Format format, Model model) {
        return page(place, List.of(), format, model);
    }

    @PostMapping("/field/{place}/past")
    ModelAndView keep(
            @PathVariable String place,
            @RequestParam Map<String, String> sent,
            @ModelAttribute(name = "format", binding = false) Format format,
            Model model) {
        Boxes boxes = new Boxes(sent);
        FarmDay today = desk.today();
        Draft draft = draft(desk.zone(today, place), boxes);
        try {
            desk.notebook()
                    .past()
                    .keep(PastEntry.of(draft, Plots.of(today.farm())).orThrow(boxes.says("sure")));
            return new ModelAndView(back(place));
        } catch (EarleafException wrong) {
            model.addAttribute("boxes", boxes);
            ModelAndView again = page(place, wrong.problems(), format, model);
            again.setStatus(Faults.status(wrong));
            return again;
        }
    }

    /** @param zone for which the year was told; empty: the whole field */
    @PostMapping("/field/{place}/past/out")
    String takeOut(@PathVariable String place, @RequestParam String zone, @RequestParam String year) {
        FarmDay today = desk.today();
        Draft named = Draft.of(Place.FIELD, desk.zone(today, place).field(), Place.ZONE, zone, PastEntry.YEAR, year);
        desk.notebook()
                .past()
                .takeOut(PastEntry.named(named, Plots.of(today.farm())).orThrow());
        return back(place);
    }

    private static Draft draft(Zone zone, Boxes boxes) {
        Draft draft = Draft.of(Place.FIELD, zone.field(), Place.ZONE, boxes.says("whole") ? "" : zone.zone());
        for (String part : List.of(
                PastEntry.YEAR,
                PastEntry.CROP,
                PastEntry.YIELD,
                PastEntry.YIELD + PastEntry.UNIT,
                PastEntry.NITROGEN,
                PastEntry.NITROGEN + PastEntry.UNIT)) {
            draft = draft.with(part, boxes.said(part));
        }
        return draft;
    }

    private ModelAndView page(String place, List<Problem> problems, Format format, Model model) {
        FarmDay today = desk.today();
        model.addAttribute("past", PastView.of(today, desk.zone(today, place), format));
        model.addAttribute("problems", Faults.told(problems));
        model.addAttribute("asks", Faults.asks(problems));
        return new ModelAndView("past", model.asMap());
    }

    private static String back(String place) {
        return "redirect:"
                + UriComponentsBuilder.fromPath("/field/{place}/past")
                        .encode()
                        .buildAndExpand(place)
                        .toUriString();
    }
}
