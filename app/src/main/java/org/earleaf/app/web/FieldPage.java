// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.List;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.view.FieldLeaf;
import org.earleaf.app.web.view.FieldsView;
import org.earleaf.app.web.view.OtherCropView;
import org.earleaf.app.web.view.PastView;
import org.earleaf.app.web.view.ReadingsView;
import org.earleaf.field.Zone;
import org.jspecify.annotations.Nullable;
import org.springframework.format.annotation.DateTimeFormat;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** Where the nitrogen of a field lies, day by day, and how long it lasts. */
@Controller
class FieldPage {
    private final Desk desk;

    FieldPage(Desk desk) {
        this.desk = desk;
    }

    @GetMapping("/field")
    String fields(@ModelAttribute(name = "format", binding = false) Format format, Model model) {
        model.addAttribute("view", FieldsView.of(desk.today(), format));
        return "fields";
    }

    @GetMapping("/field/{place}")
    String field(
            @PathVariable String place,
            @RequestParam(required = false) @DateTimeFormat(iso = DateTimeFormat.ISO.DATE) @Nullable LocalDate day,
            @RequestParam(required = false) @Nullable Integer index,
            @RequestParam(defaultValue = "false") boolean with,
            @ModelAttribute(name = "format", binding = false) Format format,
            Model model) {
        FarmDay today = desk.today();
        Zone zone = desk.zone(today, place);
        model.addAttribute(
                "readings", ReadingsView.of(today, zone, desk.notebook().photographs()));
        model.addAttribute("past", PastView.of(today, zone, format));
        model.addAttribute("called", List.of(zone.field()));
        if (!zone.isCorn()) {
            model.addAttribute("view", OtherCropView.of(today, zone, format));
            return "other-crop";
        }
        model.addAttribute("view", FieldLeaf.of(today, zone, shown(today, zone, day, index), with, format));
        return "field";
    }

    /** The day's part alone, for the slider. */
    @GetMapping("/field/{place}/soil")
    String soil(
            @PathVariable String place,
            @RequestParam int index,
            @RequestParam(defaultValue = "false") boolean with,
            @ModelAttribute(name = "format", binding = false) Format format,
            Model model) {
        FarmDay today = desk.today();
        Zone zone = desk.zone(today, place);
        if (!zone.isCorn()) {
            throw new Faults.NotHere(tell("page.field.the-season-of-is-not", "crop", zone.crop()));
        }
        model.addAttribute("day", FieldLeaf.day(today, zone, shown(today, zone, null, index), with, format));
        return "soil";
    }

    /** By date, or by place in the run as the slider counts, or today. */
    private static LocalDate shown(FarmDay today, Zone zone, @Nullable LocalDate day, @Nullable Integer index) {
        if (day != null) {
            return day;
        }
        return index == null ? today.on() : today.outlook(zone).trace().first().plusDays(index);
    }
}
