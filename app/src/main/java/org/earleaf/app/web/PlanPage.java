// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.words.Words.tell;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.earleaf.app.desk.Standing;
import org.earleaf.app.store.HandedPlans.Handed;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.view.DaySheetView;
import org.earleaf.app.web.view.HandedView;
import org.earleaf.app.web.view.PlanAsked;
import org.earleaf.app.web.view.PlanView;
import org.earleaf.app.words.Words;
import org.earleaf.exchange.CalendarFeed;
import org.earleaf.week.DaySheet;
import org.earleaf.week.PlanFeed;
import org.earleaf.week.Week;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** The week's plan, the sheet of a rig's day, and the same as dates for a calendar. Changes stand in the address. */
@Controller
class PlanPage {
    private final Desk desk;

    PlanPage(Desk desk) {
        this.desk = desk;
    }

    private Standing standing(PlanAsked asked) {
        return desk.today().get(desk.week(asked.change()));
    }

    /** Names hold commas: values are taken as they stand in the address. */
    @ModelAttribute("asked")
    PlanAsked asked(@RequestParam MultiValueMap<String, String> all) {
        PlanAsked asked = new PlanAsked(all(all, "rain"), all(all, "down"), all(all, "done"), all(all, "pin"));
        String pass = one(all, "pass");
        String rig = one(all, "rig");
        String day = one(all, "day");
        if (rig.isBlank() || day.isBlank()) {
            return asked;
        }
        return pass.isBlank() ? asked.withDown(rig, day) : asked.withPin(pass, rig, day);
    }

    private static List<String> all(MultiValueMap<String, String> all, String name) {
        return all.getOrDefault(name, List.of());
    }

    private static String one(MultiValueMap<String, String> all, String name) {
        return Objects.requireNonNullElse(all.getFirst(name), "");
    }

    @GetMapping("/plan")
    String plan(
            @ModelAttribute(name = "asked", binding = false) PlanAsked asked,
            @ModelAttribute(name = "format", binding = false) Format format,
            Model model) {
        Standing plan = standing(asked);
        model.addAttribute("view", PlanView.of(plan.now(), asked, plan.anew(), format));
        model.addAttribute("handed", handed(plan));
        return "plan";
    }

    private static HandedView handed(Standing plan) {
        return plan.handed().map(h -> HandedView.of(plan.now(), h)).orElse(HandedView.NONE);
    }

    /** Keeps the plan that stands as the one the drivers hold. */
    @PostMapping("/plan/handed")
    ModelAndView handOut(@ModelAttribute(name = "asked", binding = false) PlanAsked asked, @RequestParam String back) {
        Week now = standing(asked).now();
        desk.notebook().handed().keep(new Handed(desk.days().now(), now.told()));
        return new ModelAndView("redirect:" + (back.startsWith("/plan") ? back : "/plan"));
    }

    @GetMapping("/plan/sheet")
    String sheet(
            @RequestParam String of,
            @RequestParam String on,
            @ModelAttribute(name = "asked", binding = false) PlanAsked asked,
            @ModelAttribute(name = "format", binding = false) Format format,
            Model model) {
        Standing plan = standing(asked);
        Week now = plan.now();
        DaySheet sheet = now.all().stream()
                .filter(s -> s.rig().equals(of) && s.date().toString().equals(on))
                .findFirst()
                .flatMap(s -> DaySheet.of(now, s.rig(), s.date()))
                .orElseThrow(() -> new Faults.NotHere(tell("page.plan.by-this-plan-does-nothing", "of", of, "on", on)));
        model.addAttribute("view", DaySheetView.of(now, sheet, asked, format));
        model.addAttribute("handed", handed(plan).of(sheet.rig()));
        model.addAttribute("here", asked.link("/plan/sheet", "of", of, "on", on));
        model.addAttribute("parts", asked.parts());
        return "day-sheet";
    }

    @GetMapping("/plan.ics")
    ResponseEntity<String> feed(@ModelAttribute(name = "asked", binding = false) PlanAsked asked) {
        Week now = standing(asked).now();
        LocalDate on = now.on();
        // A plan of a later day is a later one, and one with more changes too.
        long sequence = 100 * on.toEpochDay() + asked.parts().size();
        Instant made = on.atStartOfDay(now.farm().timeZone()).toInstant();
        String text = CalendarFeed.write(
                tell("page.plan.the-week", "name", now.farm().name()),
                PlanFeed.of(now),
                made,
                sequence,
                Words.here()::say);
        return ResponseEntity.ok()
                .contentType(new MediaType("text", "calendar", java.nio.charset.StandardCharsets.UTF_8))
                .header("Content-Disposition", "inline; filename=\"plan.ics\"")
                .body(text);
    }
}
