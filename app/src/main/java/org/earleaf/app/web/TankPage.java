// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.words.Words.tell;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.store.LoadJobs;
import org.earleaf.app.store.LoadStore;
import org.earleaf.app.store.LoadStore.Kept;
import org.earleaf.app.store.StaleLoad;
import org.earleaf.app.store.Waters;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.view.TankView;
import org.earleaf.app.web.view.VersionsView;
import org.earleaf.load.LoadRules;
import org.earleaf.load.TankLoad;
import org.earleaf.mix.JarResult;
import org.earleaf.record.Chain;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.CookieValue;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.context.request.ServletWebRequest;
import org.springframework.web.servlet.ModelAndView;

/** A kept load from lock to record: each step a form of its own, made on the version that was seen. */
@Controller
class TankPage {
    private final Desk desk;

    TankPage(Desk desk) {
        this.desk = desk;
    }

    @GetMapping("/load/{id}")
    ModelAndView load(
            @PathVariable String id,
            @CookieValue(name = "person", defaultValue = "") String person,
            @ModelAttribute(name = "format", binding = false) Format format,
            HttpServletResponse response,
            Model model) {
        Kept kept = desk.load(id);
        response.setHeader(HttpHeaders.ETAG, kept.tag());
        return page(kept, TankForm.empty(person), List.of(), format, model);
    }

    @PostMapping("/load/{id}/{step:lock|mix|key|mixed|hand|empty|file|drop|note|override}")
    ModelAndView step(
            @PathVariable String id,
            @PathVariable String step,
            @RequestParam Map<String, String> boxes,
            @ModelAttribute(name = "format", binding = false) Format format,
            ServletWebRequest exchange,
            Model model) {
        TankForm form = new TankForm(new Boxes(boxes));
        HttpServletResponse response = Objects.requireNonNull(exchange.getResponse());
        try {
            Version version = Version.of(exchange.getRequest(), form.said("version"));
            try {
                String next = take(id, step, version.number(), form);
                // Two people share one phone at the keys; the name that is kept is of the one who mixes.
                if (!step.equals("key")) {
                    LookPage.keep(response, "person", form.who());
                }
                return new ModelAndView("redirect:" + next);
            } catch (StaleLoad stale) {
                return stale(stale, version, format, response, model);
            }
        } catch (EarleafException wrong) {
            Kept kept = desk.load(id);
            response.setHeader(HttpHeaders.ETAG, kept.tag());
            ModelAndView again = page(kept, form, wrong.problems(), format, model);
            again.setStatus(Faults.status(wrong));
            return again;
        }
    }

    /** Takes one step and says where to go on. */
    private String take(String id, String step, long version, TankForm form) {
        LoadStore loads = desk.notebook().loads();
        Instant now = desk.days().now();
        String here = "/load/" + id;
        switch (step) {
            case "lock" -> loads.reserve(id, version, form.who(), now);
            case "mix" -> {
                TankLoad load = desk.load(id).load();
                Optional<Said> lapsed = desk.lapsed(desk.today(), load, loads.all());
                loads.mixing(id, version, form.start(lapsed), form.who(), now);
            }
            case "key" ->
                loads.key(id, version, form.orderRead(), form.key(desk.load(id).load(), now));
            case "mixed" -> loads.mixed(id, version, desk.days().today(), true, form.who(), now);
            case "hand" -> {
                return "/load/" + hand(id, version, form, now);
            }
            case "empty" -> loads.applied(id, version, form.who(), now);
            case "drop" -> loads.cancel(id, version, form.said("why"), form.who(), now);
            case "note" -> note(id, form, now);
            case "override" -> loads.override(id, version, form.said("rule"), rule -> form.override(rule, now));
            default -> {
                return "/records/" + file(id, version, form, now);
            }
        }
        return here;
    }

    private String hand(String id, long version, TankForm form, Instant now) {
        synchronized (desk.numbers()) {
            return desk.notebook()
                    .loads()
                    .handOver(
                            id,
                            version,
                            form.moved_m3(),
                            new LoadRules.Other(desk.nextLoad(), form.said("rig")),
                            form.who(),
                            now)
                    .get(1)
                    .load()
                    .id();
        }
    }

    private void note(String id, TankForm form, Instant now) {
        LoadStore loads = desk.notebook().loads();
        TankLoad load = desk.load(id).load();
        String said = form.said("said");
        String water = form.said("water");
        switch (form.said("kind")) {
            case "jar" -> {
                JarResult.Outcome outcome = JarResult.Outcome.parse(form.said("outcome"));
                loads.jarTested(load, new JarResult(outcome, now, form.who(), water, said));
            }
            case "water" -> desk.notebook().waters().keep(new Waters.Tested(now, form.who(), water, said));
            default -> loads.cleaned(load.rig(), said, form.who(), now);
        }
    }

    private long file(String id, long version, TankForm form, Instant now) {
        Kept kept = desk.load(id);
        if (kept.version() != version) {
            throw new EarleafException(Problem.of(
                    "tank.the-load-as-it-stands",
                    Said.of("where.load", "id", id),
                    Said.of("found.a-load-that-was-changed")));
        }
        TankLoad load = kept.load();
        LoadJobs.Job job = desk.notebook().jobs().get(load.job());
        List<Chain.Entry> entries =
                desk.notebook().loads().file(id, desk.today().farm(), job.placement(), form.told(load, now));
        return entries.get(0).number();
    }

    private ModelAndView page(Kept kept, TankForm form, List<Problem> problems, Format format, Model model) {
        FarmDay today = desk.today();
        TankLoad load = kept.load();
        TankView view = TankView.of(
                kept, desk.shop(today, load), desk.notebook().loads().gate(load, today.on(), true), format);
        model.addAttribute("view", view);
        model.addAttribute("told", Known.fill(form, load, desk.notebook().records(), today.farm()));
        model.addAttribute("problems", Faults.told(problems));
        return new ModelAndView("tank", model.asMap());
    }

    private ModelAndView stale(
            StaleLoad stale, Version version, Format format, HttpServletResponse response, Model model) {
        response.setHeader(HttpHeaders.ETAG, stale.now().tag());
        model.addAttribute(
                "view", VersionsView.of(stale.seen(), stale.now(), tell("page.tank.the-load-as-you-saw"), format));
        ModelAndView page = new ModelAndView("versions", model.asMap());
        page.setStatus(version.refused());
        return page;
    }
}
