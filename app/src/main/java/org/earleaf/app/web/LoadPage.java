// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.words.Words.tell;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.store.Ids;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.view.LoadView;
import org.earleaf.app.web.view.LoadsView;
import org.earleaf.decide.Option;
import org.earleaf.field.Pass;
import org.earleaf.field.Zone;
import org.earleaf.record.Account;
import org.earleaf.record.Chain;
import org.earleaf.record.Told;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.CookieValue;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** What goes in the tank for a pass, and the filing of the pass once it is made. */
@Controller
class LoadPage {
    private final Desk desk;

    LoadPage(Desk desk) {
        this.desk = desk;
    }

    @GetMapping("/loads")
    String loads(@ModelAttribute(name = "format", binding = false) Format format, Model model) {
        model.addAttribute(
                "view",
                LoadsView.of(
                        desk.today(),
                        desk.notebook().loads().all(),
                        desk.notebook().jobs().all(),
                        format));
        return "loads";
    }

    @GetMapping("/loads/{place}")
    ModelAndView load(
            @PathVariable String place,
            @RequestParam(defaultValue = "") String choice,
            @RequestParam(defaultValue = "1") int load,
            @CookieValue(name = "person", defaultValue = "") String person,
            @ModelAttribute(name = "format", binding = false) Format format,
            Model model) {
        FarmDay today = desk.today();
        LoadView.Job job = job(today, place, choice, format);
        return page(
                today,
                LoadView.of(today, job, load, format),
                MadeForm.proposed(today, job.option(), job.zone(), person, format),
                List.of(),
                model);
    }

    /** Files the pass; the sheet again, with what is missing, when it cannot be filed. */
    @PostMapping("/loads/{place}")
    ModelAndView file(
            @PathVariable String place,
            @RequestParam(defaultValue = "") String choice,
            MadeForm form,
            @ModelAttribute(name = "format", binding = false) Format format,
            HttpServletResponse response,
            Model model) {
        FarmDay today = desk.today();
        LoadView.Job job = job(today, place, choice, format);
        try {
            Pass made = form.pass(job.option(), today.farm(), today.on());
            Told told = form.told(
                    job.rig().name(), job.option(), today.farm(), desk.days().now());
            Chain.Entry entry =
                    desk.notebook().fileMade(made, kept -> Account.of(Ids.next(), today.farm(), kept, told));
            LookPage.keep(response, "person", ReadingForm.text(form.person()));
            return new ModelAndView("redirect:/records/" + entry.number());
        } catch (EarleafException wrong) {
            ModelAndView again = page(today, LoadView.of(today, job, 1, format), form, wrong.problems(), model);
            again.setStatus(Faults.status(wrong));
            return again;
        }
    }

    private LoadView.Job job(FarmDay today, String place, String choice, Format format) {
        Zone zone = desk.zone(today, place);
        Option option = LoadView.find(today, zone, choice)
                .orElseThrow(
                        () -> new Faults.NotHere(tell("page.load.this-pass-is-not-offered", "label", zone.label())));
        return LoadView.job(today, zone, option, format);
    }

    private static ModelAndView page(FarmDay today, LoadView view, MadeForm form, List<Problem> problems, Model model) {
        model.addAttribute("view", view);
        model.addAttribute("form", form);
        model.addAttribute("today", today.on().toString());
        model.addAttribute("problems", Faults.told(problems));
        model.addAttribute("asks", Faults.asks(problems));
        return new ModelAndView("load", model.asMap());
    }
}
