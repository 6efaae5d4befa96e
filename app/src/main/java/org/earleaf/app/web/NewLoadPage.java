// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.words.Words.tell;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.store.LoadJobs;
import org.earleaf.app.store.LoadStore;
import org.earleaf.app.store.LoadStore.Kept;
import org.earleaf.app.store.StaleLoad;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.view.DraftView;
import org.earleaf.app.web.view.LoadView;
import org.earleaf.app.web.view.VersionsView;
import org.earleaf.decide.Option;
import org.earleaf.farm.Recipe;
import org.earleaf.farm.Rig;
import org.earleaf.field.Zone;
import org.earleaf.load.LoadDraft;
import org.earleaf.load.TankLoad;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Units;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.CookieValue;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** Loads made from a recipe or a pass that is proposed, and changed while nothing is in the tank. */
@Controller
class NewLoadPage {
    private final Desk desk;

    NewLoadPage(Desk desk) {
        this.desk = desk;
    }

    @GetMapping("/loads/new")
    ModelAndView blank(
            @RequestParam(defaultValue = "") String recipe,
            @RequestParam(defaultValue = "") String place,
            @RequestParam(defaultValue = "") String rig,
            @CookieValue(name = "person", defaultValue = "") String person,
            @ModelAttribute(name = "format", binding = false) Format format,
            Model model) {
        FarmDay today = desk.today();
        DraftView view = DraftView.blank(today.farm());
        if (recipe.isEmpty() || place.isEmpty() || rig.isEmpty()) {
            model.addAttribute("view", view.chosen(recipe, place, rig));
            return new ModelAndView("newload", model.asMap());
        }
        Recipe named = today.farm().shelf().recipes().stream()
                .filter(r -> r.name().equals(recipe))
                .findFirst()
                .orElseThrow(() -> new Faults.NotHere(tell("page.new-load.there-is-no-recipe-on", "recipe", recipe)));
        Zone zone = desk.zone(today, place);
        Rig machine = today.farm().rigs().stream()
                .filter(r -> r.name().equals(rig))
                .findFirst()
                .orElseThrow(() -> new Faults.NotHere(tell("page.new-load.there-is-no-rig-on", "rig", rig)));
        List<TankLoad> others =
                desk.notebook().loads().all().stream().map(Kept::load).toList();
        return page(
                LoadForm.proposed(today, new LoadForm.Chosen(named, zone, machine), others, person, format),
                "/loads/new",
                List.of(),
                model);
    }

    @PostMapping("/loads/new")
    ModelAndView make(@RequestParam Map<String, String> boxes, HttpServletResponse response, Model model) {
        LoadForm form = new LoadForm(new Boxes(boxes));
        try {
            FarmDay today = desk.today();
            String job = job(form.said("recipe"));
            LoadDraft draft = form.draft(today, desk.notebook().loads().labels(), job, Optional.empty());
            LookPage.keep(response, "person", form.said("person"));
            return keep(draft, new LoadJobs.Job(job, form.said("recipe"), form.placed()));
        } catch (EarleafException wrong) {
            return refused(page(form, "/loads/new", wrong.problems(), model));
        }
    }

    /** Keeps the loads of a nitrogen pass as its sheet shows them. */
    @PostMapping("/loads/{place}/keep")
    ModelAndView keep(
            @PathVariable String place,
            @RequestParam(defaultValue = "") String choice,
            @ModelAttribute(name = "format", binding = false) Format format) {
        FarmDay today = desk.today();
        Zone zone = desk.zone(today, place);
        Option o = LoadView.find(today, zone, choice)
                .orElseThrow(() ->
                        new Faults.NotHere(tell("page.new-load.this-pass-is-not-offered", "label", zone.label())));
        Rig rig = LoadView.job(today, zone, o, format).rig();
        String rate = format.nitrogen(o.nitrogen_kgHa());
        String recipe = o.product() + ", " + rate + format.typed(" lb N/ac", " kg N/ha");
        String job = job(recipe);
        LoadDraft draft = new LoadDraft(
                today.farm(),
                desk.notebook().loads().labels(),
                new LoadDraft.Trip(job, zone, rig, o.date()),
                List.of(LoadDraft.line(today.farm(), o.product(), Units.lbAc(o.nitrogen_kgHa()), "lb N/ac")),
                new LoadDraft.Tanks(
                        Double.NaN,
                        zone.area_ha() * 10_000,
                        rig.tank_m3(),
                        rig.tank().unapplied_m3()),
                LoadDraft.Seen.of(today.outlook(zone).leafCollars(), today.on()));
        return keep(draft, new LoadJobs.Job(job, recipe, o.placement()));
    }

    private ModelAndView keep(LoadDraft draft, LoadJobs.Job job) {
        List<Kept> kept = new ArrayList<>();
        synchronized (desk.numbers()) {
            int first = Integer.parseInt(desk.nextLoad());
            int[] next = {first};
            Supplier<String> ids = () -> String.valueOf(next[0]++);
            List<TankLoad> loads = draft.loads(ids);
            desk.notebook().jobs().keep(job);
            loads.forEach(l -> kept.add(desk.notebook().loads().add(l)));
        }
        return new ModelAndView("redirect:/load/" + kept.get(0).load().id());
    }

    /** A name that no other job has. */
    private String job(String recipe) {
        return tell("page.new-load.job", "nextLoad", desk.nextLoad(), "recipe", recipe);
    }

    @GetMapping("/load/{id}/edit")
    ModelAndView edit(
            @PathVariable String id,
            @CookieValue(name = "person", defaultValue = "") String person,
            @ModelAttribute(name = "format", binding = false) Format format,
            HttpServletResponse response,
            Model model) {
        Kept kept = desk.load(id);
        response.setHeader(HttpHeaders.ETAG, kept.tag());
        LoadJobs.Job job = desk.notebook().jobs().get(kept.load().job());
        return page(
                LoadForm.of(kept.load(), job, kept.version(), desk.today(), person, format),
                "/load/" + id + "/edit",
                List.of(),
                model);
    }

    @PostMapping("/load/{id}/edit")
    ModelAndView change(
            @PathVariable String id,
            @RequestParam Map<String, String> boxes,
            @ModelAttribute(name = "format", binding = false) Format format,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        LoadForm form = new LoadForm(new Boxes(boxes));
        LoadStore loads = desk.notebook().loads();
        try {
            Version version = Version.of(request, form.said("version"));
            FarmDay today = desk.today();
            TankLoad was =
                    loads.findVersion(id, version.number()).orElse(desk.load(id).load());
            LoadDraft draft = form.draft(today, loads.labels(), was.job(), Optional.of(was));
            TankLoad plan = draft.loads(() -> id).get(0);
            try {
                String person = form.said("person");
                loads.edit(id, version.number(), plan, person, desk.days().now());
                desk.notebook().jobs().keep(new LoadJobs.Job(was.job(), form.said("recipe"), form.placed()));
                LookPage.keep(response, "person", form.said("person"));
                return new ModelAndView("redirect:/load/" + id);
            } catch (StaleLoad stale) {
                response.setHeader(HttpHeaders.ETAG, stale.now().tag());
                model.addAttribute(
                        "view",
                        VersionsView.of(plan, stale.now(), tell("page.new-load.the-load-as-you-wanted"), format));
                model.addAttribute("form", form);
                ModelAndView both = new ModelAndView("versions", model.asMap());
                both.setStatus(version.refused());
                return both;
            }
        } catch (EarleafException wrong) {
            return refused(page(form, "/load/" + id + "/edit", wrong.problems(), model));
        }
    }

    private ModelAndView page(LoadForm form, String action, List<Problem> problems, Model model) {
        FarmDay today = desk.today();
        model.addAttribute(
                "view", DraftView.of(today.farm(), action, form.said("recipe"), form.said("place"), form.said("rig")));
        model.addAttribute("form", form);
        model.addAttribute("problems", Faults.told(problems));
        return new ModelAndView("newload", model.asMap());
    }

    private static ModelAndView refused(ModelAndView page) {
        page.setStatus(HttpStatus.BAD_REQUEST);
        return page;
    }
}
