// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import jakarta.servlet.http.HttpServletResponse;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.store.Catches;
import org.earleaf.app.store.Catches.Caught;
import org.earleaf.app.store.LoadStore;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.view.CatchView;
import org.earleaf.app.web.view.FoundView;
import org.earleaf.app.web.view.Phrases;
import org.earleaf.app.web.view.RigsView;
import org.earleaf.entry.SetupEntry;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Rig;
import org.earleaf.load.Calibrated;
import org.earleaf.load.TankLoad;
import org.earleaf.rig.Liquid;
import org.earleaf.rig.NozzleSize;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.CookieValue;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** The rigs, how they are set for the passes that are proposed, and what their outlets give. */
@Controller
class RigsPage {
    private final Desk desk;

    RigsPage(Desk desk) {
        this.desk = desk;
    }

    /** @param asked what outlets are looked for; without a rig nothing is */
    @GetMapping("/rigs")
    ModelAndView rigs(
            @ModelAttribute("asked") FindForm asked,
            @ModelAttribute(name = "format", binding = false) Format format,
            Model model) {
        Farm farm = desk.today().farm();
        Catches catches = desk.notebook().catches();
        model.addAttribute("view", RigsView.of(desk.today(), format));
        model.addAttribute(
                "catches",
                farm.rigs().stream()
                        .flatMap(r -> catches.findNewest(r.name()).stream())
                        .map(c -> CatchView.of(c, farm.timeZone(), format))
                        .toList());
        model.addAttribute("lapsed", lapsed(farm, catches, format));
        FoundView found = FoundView.NONE;
        HttpStatus status = HttpStatus.OK;
        List<Problem> problems = List.of();
        if (!ReadingForm.text(asked.rig()).isEmpty()) {
            try {
                found = FoundView.of(asked.on(farm), format);
            } catch (EarleafException wrong) {
                problems = wrong.problems();
                status = HttpStatus.BAD_REQUEST;
            }
        }
        model.addAttribute("asked", asked.filled(format.isMetric()));
        model.addAttribute("found", found);
        model.addAttribute("problems", Faults.told(problems));
        ModelAndView page = new ModelAndView("rigs", model.asMap());
        page.setStatus(status);
        return page;
    }

    private List<String> lapsed(Farm farm, Catches catches, Format format) {
        List<TankLoad> loads =
                desk.notebook().loads().all().stream().map(LoadStore.Kept::load).toList();
        Instant now = desk.days().now();
        return farm.rigs().stream()
                .filter(r -> !r.isTender() && !r.isHired())
                .flatMap(r -> Calibrated.lapsed(r.name(), Liquid.WATER, farm, catches, loads, now).stream()
                        .map(why -> format.words().say("calibration.of", "rig", r.name(), "why", why)))
                .map(Phrases::capital)
                .toList();
    }

    /** Nozzles or plates were changed: what was caught before no longer holds. */
    @PostMapping("/rigs/changed")
    String changed(
            @RequestParam String rig,
            @RequestParam(defaultValue = "") String said,
            @RequestParam(defaultValue = "") String person,
            HttpServletResponse response) {
        String name = SetupEntry.rig(desk.today().farm().rigs(), rig).name();
        desk.notebook().catches().changed(name, said, person, desk.days().now());
        LookPage.keep(response, "person", person.strip());
        return "redirect:/rigs";
    }

    @GetMapping("/rigs/catch")
    ModelAndView form(
            @RequestParam(defaultValue = "") String rig,
            @CookieValue(name = "person", defaultValue = "") String person,
            @ModelAttribute(name = "format", binding = false) Format format,
            Model model) {
        Optional<Caught> newest = desk.notebook().catches().findNewest(rig);
        newest.ifPresent(c ->
                model.addAttribute("test", CatchView.of(c, desk.today().farm().timeZone(), format)));
        return page(CatchForm.empty(person, format.isMetric()), rig, List.of(), model);
    }

    @PostMapping("/rigs/catch")
    ModelAndView keep(@ModelAttribute("form") CatchForm form, HttpServletResponse response, Model model) {
        try {
            Caught test = form.caught(desk.today().farm(), desk.days().now());
            desk.notebook().catches().keep(test);
            LookPage.keep(response, "person", ReadingForm.text(form.person()));
            return new ModelAndView(
                    "redirect:/rigs/catch?rig=" + URLEncoder.encode(test.rig(), StandardCharsets.UTF_8));
        } catch (EarleafException wrong) {
            ModelAndView again = page(form, ReadingForm.text(form.rig()), wrong.problems(), model);
            again.setStatus(Faults.status(wrong));
            return again;
        }
    }

    private ModelAndView page(CatchForm form, String rig, List<Problem> problems, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("rig", rig);
        model.addAttribute(
                "rigs",
                desk.today().farm().rigs().stream()
                        .filter(r -> !r.isTender() && !r.isHired())
                        .map(Rig::name)
                        .toList());
        model.addAttribute(
                "sizes", NozzleSize.listAll().stream().map(NozzleSize::number).toList());
        model.addAttribute("problems", Faults.told(problems));
        return new ModelAndView("catch", model.asMap());
    }
}
