// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.earleaf.week.WeekChange;

/** What an address says has come to pass since the week was planned; every page of the plan hands it on. */
public record PlanAsked(List<String> rain, List<String> down, List<String> done, List<String> pin) {
    public static final PlanAsked NOTHING = new PlanAsked(List.of(), List.of(), List.of(), List.of());

    public PlanAsked {
        rain = filled(rain);
        down = filled(down);
        done = filled(done);
        pin = filled(pin);
    }

    /** A part of an address, and what it says to people. */
    public record Part(String name, String value, String says, PlanAsked without) {}

    private static List<String> filled(List<String> all) {
        return all.stream().filter(v -> !v.isBlank()).distinct().toList();
    }

    public WeekChange change() {
        return new WeekChange(
                rain.stream().map(PlanAsked::day).toList(),
                down.stream().map(WeekChange.Down::parse).toList(),
                done,
                pin.stream().map(WeekChange.PinAt::parse).toList());
    }

    public boolean isNothing() {
        return equals(NOTHING);
    }

    /** With a pass put on a rig and a day; one put somewhere before is taken from there. */
    public PlanAsked withPin(String pass, String rig, String day) {
        List<String> pins = new ArrayList<>(
                pin.stream().filter(p -> !p.startsWith(pass + "=")).toList());
        pins.add(pass + "=" + rig + "@" + day);
        return new PlanAsked(rain, down, done, pins);
    }

    public PlanAsked withDown(String rig, String day) {
        return new PlanAsked(rain, more(down, rig + "@" + day), done, pin);
    }

    private static List<String> more(List<String> all, String one) {
        return Stream.concat(all.stream(), Stream.of(one)).toList();
    }

    private static List<String> less(List<String> all, String one) {
        return all.stream().filter(v -> !v.equals(one)).toList();
    }

    public List<Part> parts() {
        List<Part> all = new ArrayList<>();
        rain.forEach(v -> all.add(new Part(
                "rain",
                v,
                tell("page.plan-asked.rain-on", "day", day(v)),
                new PlanAsked(less(rain, v), down, done, pin))));
        down.forEach(v -> all.add(new Part(
                "down",
                v,
                tell(
                        "page.plan-asked.down-on",
                        "rig",
                        v.substring(0, v.lastIndexOf('@')),
                        "day",
                        day(v.substring(v.lastIndexOf('@') + 1))),
                new PlanAsked(rain, less(down, v), done, pin))));
        done.forEach(v -> all.add(new Part(
                "done", v, tell("page.plan-asked.done", "pass", v), new PlanAsked(rain, down, less(done, v), pin))));
        pin.forEach(v -> all.add(new Part(
                "pin",
                v,
                tell(
                        "page.plan-asked.put-on",
                        "pass",
                        v.substring(0, v.indexOf('=')),
                        "rig",
                        v.substring(v.indexOf('=') + 1, v.lastIndexOf('@')),
                        "day",
                        day(v.substring(v.lastIndexOf('@') + 1))),
                new PlanAsked(rain, down, done, less(pin, v)))));
        return all;
    }

    private static LocalDate day(String iso) {
        try {
            return LocalDate.parse(iso.strip());
        } catch (DateTimeParseException notADay) {
            throw new EarleafException(
                    Problem.of("plan-asked.a-day-as-yyyy-mm", Said.text("day"), Said.text("\"" + iso + "\"")));
        }
    }

    /** An address that says it, with what stands before. */
    public String link(String path, String... more) {
        Stream<String> own = parts().stream().map(p -> p.name() + "=" + encoded(p.value()));
        List<String> others = new ArrayList<>();
        for (int k = 0; k + 1 < more.length; k += 2) {
            others.add(more[k] + "=" + encoded(more[k + 1]));
        }
        String query = Stream.concat(others.stream(), own).collect(Collectors.joining("&"));
        return query.isEmpty() ? path : path + "?" + query;
    }

    private static String encoded(String value) {
        return URLEncoder.encode(value, StandardCharsets.UTF_8);
    }
}
