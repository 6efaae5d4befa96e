// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.words.Words.tell;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.picture.Photograph;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.view.Places;
import org.earleaf.app.web.view.WalkView;
import org.earleaf.brief.Brief;
import org.earleaf.field.Reading;
import org.earleaf.field.Zone;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.util.UriComponentsBuilder;

/** A reading entered in the field. */
@Controller
class WalkPage {
    private final Desk desk;

    WalkPage(Desk desk) {
        this.desk = desk;
    }

    /** Opens on the reading that the morning page asks for, or shows what a kept one has changed. */
    @GetMapping("/walk")
    ModelAndView walk(
            @RequestParam Map<String, String> boxes,
            @ModelAttribute(name = "format", binding = false) Format format,
            Model model) {
        String was = boxes.getOrDefault("was", "");
        String expected = boxes.getOrDefault("expected", "");
        FarmDay today = desk.today();
        today.farm().readings().stream()
                .filter(r -> r.id().equals(boxes.get("kept")))
                .findFirst()
                .ifPresent(r -> {
                    Zone zone = desk.zone(today, Places.of(today.farm()).of(r.field(), r.zone()));
                    model.addAttribute("answer", WalkView.answer(today, zone, r, was, expected, format));
                });
        model.addAttribute("withdrawn", boxes.getOrDefault("withdrawn", ""));
        return page(today, asked(today, new ReadingForm(boxes)), List.of(), format, model);
    }

    @PostMapping("/walk")
    ModelAndView keep(
            @RequestParam Map<String, String> boxes,
            @RequestParam(required = false) @Nullable Integer step,
            @RequestParam(required = false) @Nullable MultipartFile photograph,
            @ModelAttribute(name = "format", binding = false) Format format,
            Model model) {
        ReadingForm form = new ReadingForm(boxes);
        FarmDay today = desk.today();
        Zone zone = desk.zone(today, ReadingForm.text(form.place()));
        String expected = WalkView.expected(today, zone, form.kindRead(), format);
        if (step != null) {
            return page(today, form.stepped(step, expected), List.of(), format, model);
        }
        try {
            String before = zone.isCorn() ? WalkView.shortOn(today.outlook(zone)) : "";
            Reading kept = desk.notebook().enter(form.reading(zone, today.farm(), today.on()), photograph(photograph));
            return new ModelAndView("redirect:"
                    + UriComponentsBuilder.fromPath("/walk")
                            .queryParam("place", "{place}")
                            .queryParam("kept", "{kept}")
                            .queryParam("was", "{was}")
                            .queryParam("expected", "{expected}")
                            .encode()
                            .buildAndExpand(form.place(), kept.id(), before, expected)
                            .toUriString());
        } catch (EarleafException wrong) {
            model.addAttribute("again", photograph != null && !photograph.isEmpty());
            ModelAndView again = page(today, form, wrong.problems(), format, model);
            again.setStatus(Faults.status(wrong));
            return again;
        }
    }

    /** Takes back a reading that was wrong; the right one is entered as any other. */
    @PostMapping("/walk/withdraw")
    String withdraw(@RequestParam String id) {
        Reading gone = desk.notebook()
                .withdraw(id, desk.today().on())
                .orElseThrow(() -> new Faults.NotHere(tell("page.walk.there-is-no-such-reading")));
        return "redirect:"
                + UriComponentsBuilder.fromPath("/walk")
                        .queryParam("place", "{place}")
                        .queryParam("kind", "{kind}")
                        .queryParam("withdrawn", "{what}")
                        .encode()
                        .buildAndExpand(
                                Places.of(desk.today().farm()).of(gone.field(), gone.zone()),
                                gone.kind().word(),
                                gone.entered())
                        .toUriString();
    }

    private static Optional<Photograph> photograph(@Nullable MultipartFile sent) {
        try {
            return sent == null || sent.isEmpty() ? Optional.empty() : Optional.of(Photograph.of(sent.getBytes()));
        } catch (IOException lost) {
            throw new EarleafException(
                    Problem.of("walk.a-whole-file", Said.text("photograph"), Said.of("found.a-file-that-did-not")));
        }
    }

    private ModelAndView page(FarmDay today, ReadingForm form, List<Problem> problems, Format format, Model model) {
        Zone zone = desk.zone(today, ReadingForm.text(form.place()));
        model.addAttribute(
                "view",
                WalkView.of(
                        today,
                        zone,
                        form.kindRead(),
                        model.containsAttribute("answer"),
                        desk.notebook().photographs(),
                        format));
        model.addAttribute("form", form);
        model.addAttribute("today", today.on().toString());
        model.addAttribute("problems", Faults.told(problems));
        model.addAttribute("asks", Faults.asks(problems));
        return new ModelAndView("walk", model.asMap());
    }

    /** The reading asked for in the address; else the first worth the drive; else a nitrate test of the first field. */
    private static ReadingForm asked(FarmDay today, ReadingForm form) {
        if (!ReadingForm.text(form.place()).isEmpty()) {
            return form;
        }
        Places places = Places.of(today.farm());
        List<Brief.ReadingWorthTaking> worth = WalkView.worthTaking(today);
        String first = places.all().keySet().stream().findFirst().orElse("");
        return worth.isEmpty() || !ReadingForm.text(form.kind()).isEmpty()
                ? form.of(first, ReadingForm.text(form.kind()))
                : form.of(
                        places.of(worth.get(0).field(), worth.get(0).zone()),
                        worth.get(0).kind().word());
    }
}
