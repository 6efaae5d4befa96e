// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.earleaf.field.Disease;
import org.earleaf.field.DiseaseFacts;
import org.earleaf.field.Drainage;
import org.earleaf.field.Hybrid;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Tillage;
import org.earleaf.field.Zone;
import org.earleaf.field.ZoneName;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Said;

/**
 * A field or zone with its crop of the season as a person enters it: field, zone, area, crop, planted, relative_maturity,
 * population, row_spacing, previous_crop, drainage, tillage, residue_cover, curve_number, hybrid, gdd_silk,
 * gdd_black_layer, yield_goal, and what makes leaf disease likelier. Its soil is entered by itself ({@link SoilEntry}).
 */
public final class FieldEntry {
    /** The model's planting days, 26 March to 29 June; from February to August a date may be meant. */
    private static final int FIRST_DAY = 85;

    private static final int LAST_DAY = 180;

    /** Of corn in the Midwest; common practice, no source. */
    private static final double USUAL_MATURITY_D = 108;

    private static final double USUAL_POPULATION_M2 = 8.0;
    private static final double USUAL_ROW_SPACING_M = 0.762;
    private static final String NONE = "none";

    private final Parts parts;

    /** A zone that still lacks its soil. */
    public record Ground(double area_ha, Function<SoilProfile, Zone> with) {}

    private final String crop;

    private final Optional<LocalDate> planted;

    private FieldEntry(Parts parts) {
        this.parts = parts;
        parts.filled(Place.FIELD);
        crop = parts.filled("crop").toLowerCase(Locale.ROOT);
        planted = plantingDay();
    }

    /** Reads what other entries ask of a field: its crop and the day on which it was planted. */
    public static FieldEntry begin(Parts parts) {
        return new FieldEntry(parts);
    }

    public boolean isCorn() {
        return crop.equals("corn");
    }

    /** Empty where it is refused. */
    public Optional<LocalDate> planted() {
        return planted;
    }

    /** What becomes a zone with its soil; empty where something is refused. */
    public Optional<Ground> zone(ZoneName called) {
        double ha = parts.needed("area", Ranges.FIELD_AREA);
        // Without a good day it is refused below, whatever stands for it until then.
        Zone.Planting planting = planting(planted.orElse(LocalDate.EPOCH));
        Zone.Seedbed bed = seedbed();
        Drainage drainage = parts.word("drainage", Drainage::findByWord, Drainage.words(), Drainage.WELL, "well");
        double curve = parts.number("curve_number", Ranges.CURVE_NUMBER);
        DiseaseFacts disease = disease();
        return parts.isGood() && planted.isPresent()
                ? Optional.of(new Ground(
                        ha, soil -> new Zone(called, ha, planting, new Zone.Land(soil, drainage, curve), bed, disease)))
                : Optional.empty();
    }

    private Zone.Planting planting(LocalDate day) {
        double days = ofCorn("relative_maturity", Ranges.MATURITY, USUAL_MATURITY_D);
        double plants = ofCorn("population", Ranges.POPULATION, USUAL_POPULATION_M2);
        double rows_m = ofCorn("row_spacing", Ranges.ROW_SPACING, USUAL_ROW_SPACING_M);
        Hybrid seed = new Hybrid(
                parts.text("hybrid"),
                days,
                parts.number("gdd_silk", Ranges.HEAT_TO_SILK),
                parts.number("gdd_black_layer", Ranges.HEAT_TO_BLACK_LAYER));
        return new Zone.Planting(crop, day, seed, plants, rows_m, parts.number("yield_goal", Ranges.YIELD_GOAL));
    }

    private Zone.Seedbed seedbed() {
        PreviousCrop before = parts.neededWord("previous_crop", PreviousCrop::findByWord, PreviousCrop.words())
                .orElse(PreviousCrop.OTHER);
        Tillage till = parts.word("tillage", Tillage::findByWord, Tillage.words(), Tillage.REDUCED, "reduced");
        return new Zone.Seedbed(before, till, parts.number("residue_cover", Ranges.RESIDUE_COVER));
    }

    /** What is not given is the usual value for corn, and nothing for another crop; nor do corn's limits bind that. */
    private double ofCorn(String part, Allowed allowed, double usual) {
        return isCorn() ? parts.number(part, allowed, usual) : parts.number(part, Allowed.NOT_NEGATIVE);
    }

    private Optional<LocalDate> plantingDay() {
        Optional<LocalDate> date = parts.filled("planted").isEmpty() ? Optional.empty() : parts.date("planted");
        if (!isCorn() || date.isEmpty()) {
            return date;
        }
        LocalDate day = date.get();
        if (Checks.planting(day).isPresent()) {
            Checks.planting(day).ifPresent(parts::refuse);
            return date;
        }
        int of = day.getDayOfYear();
        int in = Math.max(FIRST_DAY, Math.min(LAST_DAY, of));
        if (in == of) {
            return date;
        }
        LocalDate taken = LocalDate.ofYearDay(day.getYear(), in);
        parts.remark("planted", Said.of("field.planting-brought-in", "day", day, "taken", taken));
        return Optional.of(taken);
    }

    private DiseaseFacts disease() {
        Map<Disease, Double> byDisease = new EnumMap<>(Disease.class);
        for (Disease disease : Disease.values()) {
            double value = parts.number(rating(disease), Ranges.DISEASE_RATING);
            if (!Double.isNaN(value)) {
                byDisease.put(disease, value);
            }
        }
        boolean wet = parts.word("wet_place", YesNo::find, YesNo.WORDS).orElse(false);
        return new DiseaseFacts(parts.number("disease_rating", Ranges.DISEASE_RATING), byDisease, knownDiseases(), wet);
    }

    /** The part that says how the hybrid stands up to a disease. */
    public static String rating(Disease disease) {
        return disease.word().replace(' ', '_') + "_rating";
    }

    private Set<Disease> knownDiseases() {
        Set<Disease> all = EnumSet.noneOf(Disease.class);
        String said = parts.text("disease_history");
        for (String word : said.equalsIgnoreCase(NONE) ? new String[0] : said.split(";")) {
            if (word.isBlank()) {
                continue;
            }
            Optional<Disease> disease = Disease.find(word);
            if (disease.isEmpty()) {
                parts.refuse(
                        "disease.unknown",
                        "disease_history",
                        word.strip(),
                        "diseases",
                        Stream.of(Disease.values()).map(Disease::word).toList());
            }
            disease.ifPresent(all::add);
        }
        return all;
    }
}
