// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.WeakHashMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.earleaf.DaySheet;
import org.earleaf.PlanFeed;
import org.earleaf.Week;
import org.earleaf.WeekChange;
import org.earleaf.app.FarmDay;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.view.DaySheetView;
import org.earleaf.app.web.view.PlanAsked;
import org.earleaf.app.web.view.PlanView;
import org.earleaf.exchange.CalendarFeed;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;

/** The week's plan, the sheet of a rig's day, and the same as dates for a calendar. Changes stand in the address. */
@Controller
class PlanPage {
    private static final long SEED = 1;
    /** Longer than this nobody waits before a page says that work goes on. */
    private static final long PATIENCE_MS = 900;

    private final Desk desk;
    private final Map<FarmDay, Search> running = Collections.synchronizedMap(new WeakHashMap<>());

    PlanPage(Desk desk) {
        this.desk = desk;
    }

    /** A week being worked out. */
    private record Search(Instant since, CompletableFuture<Week> week) {}

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
            Model model,
            HttpServletResponse response) {
        Optional<Week> week = week();
        if (week.isEmpty()) {
            return wait(model, response);
        }
        Optional<WeekChange.Anew> anew = anew(week.get(), asked);
        model.addAttribute("view", PlanView.of(now(week.get(), anew), asked, anew, format));
        return "plan";
    }

    @GetMapping("/plan/sheet")
    String sheet(
            @RequestParam String of,
            @RequestParam String on,
            @ModelAttribute(name = "asked", binding = false) PlanAsked asked,
            @ModelAttribute(name = "format", binding = false) Format format,
            Model model,
            HttpServletResponse response) {
        Optional<Week> week = week();
        if (week.isEmpty()) {
            return wait(model, response);
        }
        Week now = now(week.get(), anew(week.get(), asked));
        DaySheet sheet = now.all().stream()
                .filter(s -> s.rig().equals(of) && s.date().toString().equals(on))
                .findFirst()
                .flatMap(s -> DaySheet.of(now, s.rig(), s.date()))
                .orElseThrow(() -> new Faults.NotHere("By this plan \"" + of + "\" does nothing on " + on + "."));
        model.addAttribute("view", DaySheetView.of(now, sheet, asked, format));
        return "day-sheet";
    }

    @GetMapping("/plan.ics")
    ResponseEntity<String> feed(@ModelAttribute(name = "asked", binding = false) PlanAsked asked) {
        Week week = desk.today().week(SEED);
        Week now = now(week, anew(week, asked));
        LocalDate on = now.on();
        // A plan of a later day is a later one, and one with more changes too.
        long sequence = 100 * on.toEpochDay() + asked.parts().size();
        Instant made = on.atStartOfDay(now.farm().timeZone()).toInstant();
        String text = CalendarFeed.write(now.farm().name() + ", the week", PlanFeed.of(now), made, sequence);
        return ResponseEntity.ok()
                .contentType(new MediaType("text", "calendar", java.nio.charset.StandardCharsets.UTF_8))
                .header("Content-Disposition", "inline; filename=\"plan.ics\"")
                .body(text);
    }

    private static Optional<WeekChange.Anew> anew(Week week, PlanAsked asked) {
        return asked.isNothing() ? Optional.empty() : Optional.of(asked.change().to(week, SEED));
    }

    private static Week now(Week week, Optional<WeekChange.Anew> anew) {
        return anew.map(WeekChange.Anew::now).orElse(week);
    }

    /** Empty: it is still being worked out. */
    private Optional<Week> week() {
        FarmDay today = desk.today();
        Search search = running.computeIfAbsent(
                today, d -> new Search(Instant.now(), CompletableFuture.supplyAsync(() -> d.week(SEED))));
        try {
            return Optional.of(search.week().get(PATIENCE_MS, TimeUnit.MILLISECONDS));
        } catch (TimeoutException still) {
            return Optional.empty();
        } catch (ExecutionException failed) {
            running.remove(today);
            throw failed.getCause() instanceof RuntimeException known ? known : new IllegalStateException(failed);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }

    private String wait(Model model, HttpServletResponse response) {
        Search search = running.get(desk.today());
        long since = search == null
                ? 0
                : java.time.Duration.between(search.since(), Instant.now()).toSeconds();
        response.setHeader("Refresh", "2");
        model.addAttribute("since", since);
        return "plan-wait";
    }
}
