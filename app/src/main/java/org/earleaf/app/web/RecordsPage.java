// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.words.Words.tell;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import org.earleaf.app.paper.PostingSheet;
import org.earleaf.app.paper.RecordSheet;
import org.earleaf.app.store.Ids;
import org.earleaf.app.web.view.RecordsView;
import org.earleaf.app.words.Words;
import org.earleaf.farm.Farm;
import org.earleaf.record.Chain;
import org.earleaf.record.FiledRecord;
import org.earleaf.record.RecordCorrection;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.CookieValue;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** What has been filed, whether it still stands as it was filed, and further entries that say what is right. */
@Controller
class RecordsPage {
    private final Desk desk;

    RecordsPage(Desk desk) {
        this.desk = desk;
    }

    @GetMapping("/records")
    String records(Model model) {
        model.addAttribute(
                "view",
                RecordsView.of(desk.notebook().records(), desk.today().farm().timeZone()));
        return "records";
    }

    @GetMapping("/records/{number}")
    String record(@PathVariable String number, Model model) {
        Chain.Entry entry = entry(number);
        Farm farm = desk.today().farm();
        model.addAttribute("view", RecordsView.one(entry, desk.notebook().records(), farm.timeZone()));
        model.addAttribute("sheet", RecordSheet.of(entry, desk.notebook().records(), farm));
        model.addAttribute("posted", PostingSheet.isPosted(entry.record()));
        return "record";
    }

    @GetMapping("/records/{number}/posting")
    String posting(@PathVariable String number, Model model) {
        Chain.Entry entry = entry(number);
        if (!PostingSheet.isPosted(entry.record())) {
            throw new Faults.NotHere(
                    tell("page.records.record-holds-no-product", "number", String.valueOf(entry.number())));
        }
        model.addAttribute(
                "s",
                PostingSheet.of(
                        entry,
                        desk.notebook().records(),
                        desk.notebook().loads().labels(),
                        desk.today().farm()));
        return "posting";
    }

    @GetMapping("/records/{number}/correct")
    ModelAndView correct(
            @PathVariable String number, @CookieValue(name = "person", defaultValue = "") String person, Model model) {
        Chain.Entry entry = newest(entry(number));
        CorrectionForm form =
                CorrectionForm.of(entry.record(), desk.today().farm().timeZone(), person);
        return page(entry, form, List.of(), model);
    }

    @PostMapping("/records/{number}/correct")
    ModelAndView file(
            @PathVariable String number,
            @RequestParam MultiValueMap<String, String> boxes,
            HttpServletResponse response,
            Model model) {
        CorrectionForm form = CorrectionForm.of(boxes);
        Chain.Entry entry = newest(entry(number));
        try {
            Farm farm = desk.today().farm();
            RecordCorrection correction = form.correction(entry.record(), farm);
            FiledRecord right = correction.record(
                    Ids.next(),
                    farm.timeZone(),
                    desk.days().now(),
                    desk.notebook().loads().labels(),
                    Words.US::say);
            Chain.Entry filed = desk.notebook().correct(right, correction.passes(farm));
            LookPage.keep(response, "person", form.box("person").strip());
            return new ModelAndView("redirect:/records/" + filed.number());
        } catch (EarleafException wrong) {
            ModelAndView again = page(entry, form, wrong.problems(), model);
            again.setStatus(Faults.status(wrong));
            return again;
        }
    }

    private static ModelAndView page(Chain.Entry entry, CorrectionForm form, List<Problem> problems, Model model) {
        model.addAttribute("entry", entry.number());
        model.addAttribute("record", entry.record());
        model.addAttribute("form", form);
        model.addAttribute("problems", Faults.told(problems));
        return new ModelAndView("correct", model.asMap());
    }

    /** What corrects a corrected record is the record to correct. */
    private Chain.Entry newest(Chain.Entry entry) {
        return desk.notebook().records().stream()
                .filter(e -> e.record().corrects().equals(entry.record().id()))
                .reduce((before, after) -> after)
                .map(this::newest)
                .orElse(entry);
    }

    private Chain.Entry entry(String number) {
        return desk.notebook()
                .findRecord(number)
                .orElseThrow(() -> new Faults.NotHere(tell("page.records.there-is-no-record", "number", number)));
    }
}
