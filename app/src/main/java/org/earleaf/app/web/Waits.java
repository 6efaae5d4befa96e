// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.words.Words.tell;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Map;
import org.earleaf.app.store.KeptBriefs;
import org.earleaf.app.web.view.WaitView;
import org.earleaf.app.words.Dates;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.ui.ExtendedModelMap;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.servlet.ModelAndView;

/** What stands already and what is being worked out still, in place of a page that needs an answer not there yet. Before {@link Faults}: to wait is none. */
@ControllerAdvice
@Order(Ordered.HIGHEST_PRECEDENCE)
class Waits {
    private static final String AGAIN_S = "2";
    private static final String RETRY_S = "5";
    private static final List<String> NO_PAGES = List.of(".ics", ".pdf", "/soil");

    private final Frame frame;
    private final Desk desk;

    Waits(Frame frame, Desk desk) {
        this.frame = frame;
        this.desk = desk;
    }

    /** A browser without script asks again by itself. */
    static void lookAgain(HttpServletResponse response) {
        response.setHeader("Refresh", AGAIN_S);
    }

    /**
     * The page as it was last shown.
     *
     * @param says of when it is
     */
    record KeptView(String says, String html) {}

    private KeptView kept(KeptBriefs.Kept k) {
        String made = Dates.stamp(k.made(), desk.today().farm().timeZone());
        boolean today = k.day().equals(desk.today().on());
        return new KeptView(
                today
                        ? tell("page.wait.brief-of-today", "made", made)
                        : tell("page.wait.brief-of-another-day", "day", k.day(), "made", made),
                k.page());
    }

    @ExceptionHandler
    Object notYet(NotYet wait, HttpServletRequest request, HttpServletResponse response) {
        WaitView view = WaitView.of(wait.day(), wait.asked());
        if (NO_PAGES.stream().anyMatch(request.getRequestURI()::endsWith)) {
            return ResponseEntity.status(HttpStatus.SERVICE_UNAVAILABLE)
                    .header(HttpHeaders.RETRY_AFTER, RETRY_S)
                    .contentType(MediaType.TEXT_PLAIN)
                    .body(tell("page.waits.ask-again-in-a-moment", "headline", view.headline()));
        }
        if (PatientDay.isForm(request)) {
            response.setHeader(HttpHeaders.RETRY_AFTER, RETRY_S);
            return Faults.page(
                    HttpStatus.SERVICE_UNAVAILABLE,
                    new Faults.View(view.headline(), List.of(tell("page.waits.what-you-entered-is-not")), Map.of()),
                    request);
        }
        lookAgain(response);
        Model model = new ExtendedModelMap();
        frame.fill(request, model);
        model.addAttribute("view", view);
        if ("/".equals(request.getRequestURI())) {
            KeptMorning.find(desk, Frame.format(request).isMetric())
                    .ifPresent(k -> model.addAttribute("kept", kept(k)));
        }
        return new ModelAndView("wait", model.asMap());
    }
}
