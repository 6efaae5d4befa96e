// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.words.Words.tell;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.app.web.view.AgainView;
import org.earleaf.exchange.TypedLabel;
import org.earleaf.label.LabelEntry;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.CookieValue;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** The second look of one who works alone: the label typed once more, without sight of the first entry. */
@Controller
class AgainPage {
    private final Desk desk;

    AgainPage(Desk desk) {
        this.desk = desk;
    }

    @GetMapping("/shelf/again")
    ModelAndView blank(
            @RequestParam String product,
            @RequestParam String crop,
            @CookieValue(name = "person", defaultValue = "") String person,
            Model model) {
        return page(waiting(product, crop), AgainView.empty(person), List.of(), model);
    }

    @PostMapping("/shelf/again")
    ModelAndView typed(
            @RequestParam String product,
            @RequestParam String crop,
            @RequestParam MultiValueMap<String, String> form,
            HttpServletResponse response,
            Model model) {
        LabelEntry first = waiting(product, crop);
        AgainView.Typed typed = AgainView.Typed.of(form.toSingleValueMap());
        try {
            LabelEntry again = TypedLabel.read(
                    first.product(),
                    first.crop(),
                    desk.today().farm().products(),
                    typed.lines(),
                    typed.person(),
                    desk.days().now());
            desk.notebook().loads().keep(same(first, again));
            LookPage.keep(response, "person", typed.person());
            return new ModelAndView("redirect:/shelf");
        } catch (EarleafException wrong) {
            ModelAndView page = page(first, typed, wrong.problems(), model);
            page.setStatus(HttpStatus.BAD_REQUEST);
            return page;
        }
    }

    /** What differs is named, and what was typed; not the first entry, which would be copied. */
    private static LabelEntry same(LabelEntry first, LabelEntry again) {
        try {
            return first.enteredAgain(again);
        } catch (EarleafException differ) {
            List<Problem> hidden = new ArrayList<>();
            for (Problem p : differ.problems()) {
                hidden.add(Problem.of("label.differs-from-first", p.place(), p.seen()));
            }
            throw new EarleafException(hidden);
        }
    }

    private LabelEntry waiting(String product, String crop) {
        return desk.notebook()
                .loads()
                .labels()
                .findWaiting(product, crop)
                .orElseThrow(() ->
                        new Faults.NotHere(tell("page.again.no-label-of-on-waits", "product", product, "crop", crop)));
    }

    private static ModelAndView page(LabelEntry first, AgainView.Typed typed, List<Problem> problems, Model model) {
        model.addAttribute("view", AgainView.of(first, typed));
        model.addAttribute("problems", Faults.told(problems));
        return new ModelAndView("again", model.asMap());
    }
}
