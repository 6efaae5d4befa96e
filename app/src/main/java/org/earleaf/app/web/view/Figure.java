// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.web.view.WhyInputs.Kind.CHOICE;
import static org.earleaf.app.web.view.WhyInputs.Kind.GROUND;
import static org.earleaf.app.web.view.WhyInputs.Kind.PASSES;
import static org.earleaf.app.web.view.WhyInputs.Kind.PRICES;
import static org.earleaf.app.web.view.WhyInputs.Kind.READINGS;
import static org.earleaf.app.web.view.WhyInputs.Kind.RIGS;
import static org.earleaf.app.web.view.WhyInputs.Kind.STATE;
import static org.earleaf.app.web.view.WhyInputs.Kind.WEATHER;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.earleaf.app.words.Words;
import org.earleaf.decide.Option;
import org.earleaf.season.parameter.Parameter;

/**
 * Every kind of figure that pages show, with what is behind it: what goes in, the equations (by the part of the code
 * they stand above) and the numbers assumed (by their place in the list). Formulas and sources are not repeated here.
 */
public enum Figure {
    WORTH(List.of(CHOICE, PRICES), List.of("NitrogenOptions", "Recourse", "Informed", "RigLoss"), List.of()),
    CHANCE(List.of(CHOICE, PRICES), List.of("NitrogenOptions"), List.of()),
    BAD_CASE(List.of(CHOICE, PRICES), List.of("NitrogenOptions", "Choice"), List.of()),
    BREAK_EVEN(List.of(CHOICE, PRICES), List.of("NitrogenOptions"), List.of()),
    WAIT(List.of(CHOICE, PRICES, WEATHER), List.of("Waiting", "WorkableDays", "Informed"), List.of()),
    CHOICE_MADE(
            List.of(CHOICE, PRICES, STATE, READINGS),
            List.of("NitrogenOptions", "Choice", "Recourse", "Waiting", "Reach", "OverTheTop"),
            List.of(Parameter.STEMFLOW, Parameter.WASH_IN, Parameter.AMMONIA_LOSS)),
    SHORT(
            List.of(STATE, PASSES, READINGS, WEATHER, GROUND),
            List.of("CropNitrogen", "Assimilation", "SoilNitrogen", "ParameterDraws", "ForecastError"),
            List.of(
                    Parameter.LUXURY,
                    Parameter.UPTAKE_MAX,
                    Parameter.NITRATE_UPTAKE,
                    Parameter.MINERALISATION,
                    Parameter.DENITRIFICATION,
                    Parameter.START_NITRATE)),
    CROP_NITROGEN(
            List.of(STATE, PASSES, READINGS, GROUND),
            List.of("CropNitrogen", "Roots"),
            List.of(
                    Parameter.CRITICAL,
                    Parameter.LUXURY,
                    Parameter.ROOT_NITROGEN,
                    Parameter.UPTAKE_MAX,
                    Parameter.NITRATE_UPTAKE,
                    Parameter.AMMONIUM_UPTAKE)),
    SOIL(
            List.of(STATE, PASSES, READINGS, WEATHER, GROUND),
            List.of("SoilNitrogen", "SurfaceNitrogen", "Residue", "SoilWaterFlow", "SoilWater", "Rainfall", "Roots"),
            List.of(
                    Parameter.MINERALISATION,
                    Parameter.NITRIFICATION,
                    Parameter.DENITRIFICATION,
                    Parameter.WASH_IN,
                    Parameter.SOLUTE_MIXED,
                    Parameter.STEMFLOW,
                    Parameter.LATERAL)),
    LEDGER(
            List.of(PASSES, READINGS, WEATHER),
            List.of("SoilNitrogen", "SurfaceNitrogen", "Residue", "SoilWaterFlow", "CropNitrogen"),
            List.of(
                    Parameter.MINERALISATION,
                    Parameter.TAKE_BACK,
                    Parameter.RESIDUE_REACH,
                    Parameter.DENITRIFICATION,
                    Parameter.AMMONIA_LOSS,
                    Parameter.DEPOSIT_NITRATE,
                    Parameter.DEPOSIT_AMMONIUM)),
    YIELD(
            List.of(STATE, PASSES, READINGS, WEATHER, GROUND),
            List.of(
                    "Growth",
                    "CropNitrogen",
                    "Evapotranspiration",
                    "Phenology",
                    "FieldParameters",
                    "PastYields",
                    "FieldLevel",
                    "TrialEffects"),
            List.of(
                    Parameter.RUE,
                    Parameter.RUE_DECLINE,
                    Parameter.CORN_DRAG,
                    Parameter.KERNELS,
                    Parameter.KERNEL_WEIGHT,
                    Parameter.HARVEST_INDEX,
                    Parameter.NITROGEN_HARVEST,
                    Parameter.GRAIN_N_MIN)),
    STAGE(
            List.of(STATE, READINGS, WEATHER, GROUND),
            List.of("Phenology", "Assimilation"),
            List.of(
                    Parameter.EMERGENCE,
                    Parameter.LEAF_EARLY,
                    Parameter.LEAF_LATE,
                    Parameter.SILK_SHIFT,
                    Parameter.HEIGHT_SCALE)),
    REACH(
            List.of(RIGS, STATE, READINGS),
            List.of("Reach", "Phenology"),
            List.of(Parameter.HEIGHT_SCALE, Parameter.LEAF_LATE)),
    WEATHER_AHEAD(
            List.of(WEATHER),
            List.of("ForecastError", "YearLikeness", "WeatherGenerator"),
            List.of(Parameter.RAIN_CATCH)),
    SPRAY(
            List.of(CHOICE, PRICES, READINGS, WEATHER),
            List.of(
                    "ProtectionWorth",
                    "FungicideResponse",
                    "SeverityGrowth",
                    "SeverityLoss",
                    "SiteScore",
                    "InfectionConditions",
                    "TarSpotModel",
                    "AphidModel",
                    "RigLoss",
                    "ScoutingValue"),
            List.of()),
    SPRAY_HOURS(
            List.of(WEATHER),
            List.of(
                    "SprayHours",
                    "SprayBands",
                    "Inversion",
                    "BoomWind.overCrop_ms",
                    "WetBulb",
                    "LeafWetness",
                    "Rainfast"),
            List.of()),
    READING(List.of(STATE, READINGS, PRICES), List.of("ReadingValue", "ScoutingValue", "Assimilation"), List.of()),
    WORKABLE(List.of(WEATHER), List.of("WorkableDays"), List.of()),
    ENTERED(List.of(GROUND, RIGS, PRICES), List.of("SoilWater"), List.of()),
    REMAINDER(List.of(PASSES, WEATHER), List.of("SoilWaterFlow", "SoilNitrogen"), List.of()),
    RUNS(List.of(WEATHER), List.of("ParameterDraws", "NitrogenOptions"), List.of());

    private final List<WhyInputs.Kind> inputs;
    private final List<String> equations;
    private final List<Parameter> assumed;

    Figure(List<WhyInputs.Kind> inputs, List<String> equations, List<Parameter> assumed) {
        this.inputs = inputs;
        this.equations = equations;
        this.assumed = assumed;
    }

    /** How an address names it: "bad-case". */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<Figure> find(String key) {
        return Arrays.stream(values()).filter(f -> f.key().equals(key)).findFirst();
    }

    /** Its address; of a field and a choice where they are not empty. */
    public String link(String place, String choice) {
        String ofPlace = place.isEmpty() ? "" : "?place=" + place;
        return "/why/" + key() + ofPlace + (place.isEmpty() || choice.isEmpty() ? "" : "&choice=" + choice);
    }

    public String title() {
        return Words.here().say(this);
    }

    public String says() {
        return Words.here().say(this, "says");
    }

    List<WhyInputs.Kind> inputs() {
        return inputs;
    }

    /** What stands behind it for a choice: a spray has its own. */
    Figure behind(Optional<Option> choice) {
        return isOfChoice() && choice.filter(o -> !o.isNitrogen()).isPresent() ? SPRAY : this;
    }

    List<Equation> equations() {
        return equations.stream().map(Equation::of).toList();
    }

    List<Parameter> assumed() {
        return assumed;
    }

    /** Whether it belongs to a choice, and not to the field alone. */
    boolean isOfChoice() {
        return inputs.contains(CHOICE);
    }
}
