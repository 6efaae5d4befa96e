// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.picture.Photograph;
import org.earleaf.app.web.drawing.Marks;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
import org.earleaf.brief.Brief;
import org.earleaf.farm.WeatherAge;
import org.earleaf.field.Disease;
import org.earleaf.field.Reading;
import org.earleaf.field.Reading.Kind;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Outlook;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.soil.SoilProfile;
import org.earleaf.soil.SoilTest;
import org.earleaf.units.Said;

/**
 * The page on which a reading is entered.
 *
 * @param because why the morning page asks for this reading; empty when it does not
 * @param kept readings of the last week, newest first
 */
public record WalkView(
        Markup headline,
        String because,
        Where where,
        Box box,
        String howTo,
        Lists lists,
        List<Other> others,
        List<Kept> kept) {
    private static final int KEPT_D = 7;
    private static final int TESTED_LAYERS = 3;

    /**
     * The field that is walked.
     *
     * @param places every field by its place
     */
    public record Where(String place, String name, Map<String, String> places) {}

    /**
     * What is read, and the box that it is written in.
     *
     * @param expected what the model expects to be found, in the unit of the box; empty where it expects nothing
     */
    public record Box(
            String kind, String label, String unit, String step, String expected, boolean ofSoil, boolean stage) {}

    /**
     * What to choose among beside the box.
     *
     * @param found names where plants are counted; empty where they are not
     * @param leaves where lesions are counted
     * @param depths where soil is taken
     */
    public record Lists(Map<String, String> found, List<Leaf> leaves, List<Depth> depths) {}

    /** A leaf counted from the ear leaf. */
    public record Leaf(String value, String label) {}

    /** A depth that soil is taken from. */
    public record Depth(String value, String label) {}

    /** Another kind of reading. */
    public record Other(String name, String link, boolean chosen) {}

    /**
     * @param id by which it can be withdrawn
     */
    public record Kept(
            String id, String date, String field, String what, List<ReadingsView.Picture> pictures, Markup state) {}

    /**
     * @param answered whether a reading has just been kept: then the whole farm's brief, which has to be worked out
     *     anew, is not waited for
     */
    public static WalkView of(
            FarmDay day, Zone zone, Kind kind, boolean answered, List<Photograph.Note> photographs, Format format) {
        Places places = Places.of(day.farm());
        String place = places.of(zone);
        Map<String, String> names = new LinkedHashMap<>();
        places.all().forEach((p, z) -> names.put(p, z.label()));
        return new WalkView(
                new Say()
                        .text(tell("page.walk.at", "headline", ReadingKinds.headline(kind), "label", zone.label()))
                        .done(),
                answered ? "" : because(worthTaking(day), zone, kind, format),
                new Where(place, zone.label(), names),
                box(day, zone, kind, format),
                ReadingKinds.howTo(kind),
                new Lists(found(kind), kind == Kind.LESIONS ? earLeaves() : List.of(), depths(format)),
                ReadingKinds.OFFERED.stream()
                        .map(k -> new Other(
                                ReadingKinds.name(k), "/walk?place=" + place + "&kind=" + k.word(), k == kind))
                        .toList(),
                kept(day, photographs));
    }

    private static Box box(FarmDay day, Zone zone, Kind kind, Format format) {
        String unit = ReadingKinds.unit(kind, format);
        return new Box(
                kind.word(),
                ReadingKinds.name(kind),
                unit,
                ReadingKinds.step(kind, unit),
                expected(day, zone, kind, format),
                kind.isOfSoil(),
                kind == Kind.STAGE);
    }

    private static Map<String, String> found(Kind kind) {
        Map<String, String> found = new LinkedHashMap<>();
        if (kind == Kind.LESIONS) {
            Arrays.stream(Disease.values())
                    .forEach(d -> found.put(d.word(), Words.here().say(d)));
        } else if (kind == Kind.INSECTS) {
            found.put("aphids", tell("page.walk.aphids"));
            found.put("another insect", tell("page.walk.another-insect"));
        }
        return found;
    }

    private static List<Leaf> earLeaves() {
        return List.of(
                new Leaf("2", tell("page.walk.second-above-the-ear-leaf")),
                new Leaf("1", tell("page.walk.first-above")),
                new Leaf("0", tell("page.walk.ear-leaf")),
                new Leaf("-1", tell("page.walk.first-below")),
                new Leaf("-2", tell("page.walk.second-below")),
                new Leaf("-3", tell("page.walk.third-below")),
                new Leaf("-4", tell("page.walk.fourth-below")));
    }

    private static List<Depth> depths(Format format) {
        return format.isMetric()
                ? List.of(
                        new Depth(ReadingKinds.USUAL_DEPTH, tell("page.walk.0-to-30-cm")),
                        new Depth("304.8-609.6", tell("page.walk.30-to-61-cm")),
                        new Depth("0-609.6", tell("page.walk.0-to-61-cm")))
                : List.of(
                        new Depth(ReadingKinds.USUAL_DEPTH, tell("page.walk.0-to-12-in")),
                        new Depth("304.8-609.6", tell("page.walk.12-to-24-in")),
                        new Depth("0-609.6", tell("page.walk.0-to-24-in")));
    }

    /** What the brief would have read; on weather too old for a brief readings are taken all the same. */
    public static List<Brief.ReadingWorthTaking> worthTaking(FarmDay day) {
        return WeatherAge.findRefusal(day.farm(), day.on()).isPresent()
                ? List.of()
                : day.brief().readings();
    }

    private static String because(List<Brief.ReadingWorthTaking> worth, Zone zone, Kind kind, Format format) {
        return worth.stream()
                .filter(r -> r.field().equals(zone.field())
                        && (r.zone().isEmpty() || r.zone().equals(zone.zone()))
                        && r.kind() == kind)
                .map(r -> format.say(r.because()))
                .findFirst()
                .orElse("");
    }

    /** What the likeliest run says today, written as it would be entered. */
    public static String expected(FarmDay day, Zone zone, Kind kind, Format format) {
        if (!zone.isCorn()) {
            return "";
        }
        Outlook o = day.outlook(zone);
        SeasonTrace t = o.trace();
        int k = o.today();
        boolean stands = t.at(k, Daily.COLLARS) > 0;
        return switch (kind) {
            case NITRATE -> ppm(o, Cell.NITRATE);
            case AMMONIUM -> ppm(o, Cell.AMMONIUM);
            case HEIGHT -> stands ? format.length(o.height_cm().p50()) : "";
            case STAGE -> stands ? format.say(o.stage()) : "";
            case STAND -> format.plants(zone.planting().population_m2()).replace(",", "");
            case RAIN -> format.rain(t.at(k, Daily.RAIN));
            default -> "";
        };
    }

    /** Soil test of the top foot that the run would give. */
    private static String ppm(Outlook o, Cell kind) {
        double kgHa = SoilSums.of(o.trace(), o.today(), kind, SeasonTrace.ROW, 0, TESTED_LAYERS)
                + SoilSums.of(o.trace(), o.today(), kind, SeasonTrace.MIDDLE, 0, TESTED_LAYERS);
        double depth_mm = SoilProfile.bottom_mm(TESTED_LAYERS - 1);
        double density = 0;
        for (int layer = 0; layer < TESTED_LAYERS; layer++) {
            density += o.zone().soil().bulkDensity_gcm3().get(layer) * SoilProfile.thickness_mm(layer) / depth_mm;
        }
        return Format.number(SoilTest.mgKg(kgHa, density, depth_mm), 0);
    }

    private static List<Kept> kept(FarmDay day, List<Photograph.Note> photographs) {
        LocalDate from = day.on().minusDays(KEPT_D);
        List<Kept> kept = new ArrayList<>();
        for (Reading r : day.farm().readings()) {
            if (!r.date().isBefore(from) && !r.date().isAfter(day.on())) {
                kept.add(new Kept(
                        r.id(),
                        Dates.brief(r.date()),
                        MorningView.label(r.field(), r.zone()),
                        ReadingKinds.said(r),
                        ReadingsView.pictures(r, photographs),
                        Marks.done(tell("page.walk.on-the-farm-machine"))));
            }
        }
        Collections.reverse(kept);
        return kept;
    }

    /** What the field looks forward to, to be told apart before and after a reading; "never" when nothing is likely. */
    public static String shortOn(Outlook o) {
        return o.nShort().p50().map(LocalDate::toString).orElse("never");
    }

    /**
     * What a kept reading has changed.
     *
     * @param before {@link #shortOn} before it was entered
     * @param expected what had been expected; may be empty
     */
    public static Markup answer(FarmDay day, Zone zone, Reading r, String before, String expected, Format format) {
        String unit = ReadingKinds.unit(r.kind(), format);
        Said kept = Said.of(
                "page.walk.is-kept-for",
                "kind",
                ReadingKinds.name(r.kind()),
                "entered",
                r.entered(),
                "field",
                MorningView.label(r.field(), r.zone()));
        Say say = new Say().markup(format.markup(kept)).text(" ");
        if (!expected.isEmpty()) {
            say.text(tell("page.walk.the-model-had-expected", "expected", (expected + " " + unit).strip()))
                    .text(" ");
        }
        if (!zone.isCorn()) {
            return say.done();
        }
        String now = shortOn(day.outlook(zone));
        say.markup(format.markup(
                now.equals(before)
                        ? Said.of("page.walk.still", "now", spoken(now))
                        : Said.of("page.walk.before-and-now", "before", spoken(before), "now", spoken(now))));
        day.outlook(zone).flags().stream()
                .filter(f -> f.where().equals(r.title()))
                .forEach(f -> say.text(" " + Phrases.capital(format.say(f.what())) + "."));
        return say.done();
    }

    private static Said spoken(String shortOn) {
        return shortOn.matches("\\d{4}-\\d\\d-\\d\\d")
                ? Said.of("page.walk.short-of-nitrogen-about", "day", LocalDate.parse(shortOn))
                : Said.of("page.walk.not-likely-to-run-short");
    }
}
